"""Maximum permissible errors of scales and of test weights, as printed.

Sources: OIML R 76-1:2006 Tables 3 and 6 (the NAWI Directive has the same); NIST Handbook 44
section 2.20 Table 6 class III (acceptance is half of maintenance); OIML R 111-1:2004 Table 1. The
10 kg and 20 kg weights are from memory, following the tenfold pattern.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from station.core.mass import Mass
from station.core.metrology.clause import Clause, RuleRefused, Status
from station.core.metrology.exact import EXACT, trimmed


class ErrorSystem(StrEnum):
    """Whose limits of error a scale is held to."""

    R_76 = "R 76"
    HB_44 = "HB 44"


class ScaleClass(StrEnum):
    """Accuracy class of a non-automatic weighing instrument."""

    I = "I"  # noqa: E741 - the class is written so
    II = "II"
    III = "III"
    IIII = "IIII"


class WeightClass(StrEnum):
    """Accuracy class of a test weight."""

    F1 = "F1"
    F2 = "F2"
    M1 = "M1"
    M2 = "M2"


# (system, class) -> (load up to and including, in e; initial error in e); the last row ends at Max
_STEPS: Mapping[tuple[ErrorSystem, ScaleClass], tuple[tuple[int | None, Decimal], ...]] = {
    (ErrorSystem.R_76, ScaleClass.II): (
        (5000, Decimal("0.5")),
        (20000, Decimal(1)),
        (None, Decimal("1.5")),
    ),
    (ErrorSystem.R_76, ScaleClass.III): (
        (500, Decimal("0.5")),
        (2000, Decimal(1)),
        (None, Decimal("1.5")),
    ),
    (ErrorSystem.R_76, ScaleClass.IIII): (
        (50, Decimal("0.5")),
        (200, Decimal(1)),
        (None, Decimal("1.5")),
    ),
    (ErrorSystem.HB_44, ScaleClass.III): (
        (500, Decimal("0.5")),
        (2000, Decimal(1)),
        (4000, Decimal("1.5")),
        (None, Decimal("2.5")),
    ),
}

# class -> rows of (e from g, e below g or None, least n, most n or None, Min in e): R 76-1 Table 3
_CLASS_ROWS: Mapping[ScaleClass, tuple[tuple[str, str | None, int, int | None, int], ...]] = {
    ScaleClass.I: (("0.001", None, 50000, None, 100),),
    ScaleClass.II: (("0.001", "0.1", 100, 100000, 20), ("0.1", None, 5000, 100000, 50)),
    ScaleClass.III: (("0.1", "5", 100, 10000, 20), ("5", None, 500, 10000, 20)),
    ScaleClass.IIII: (("5", None, 100, 1000, 10),),
}

# nominal mass in g -> errors of F1, F2, M1, M2 in mg
_WEIGHTS: Mapping[Decimal, tuple[str, str, str, str]] = {
    Decimal(1): ("0.10", "0.3", "1.0", "3.0"),
    Decimal(2): ("0.12", "0.4", "1.2", "4.0"),
    Decimal(5): ("0.16", "0.5", "1.6", "5.0"),
    Decimal(10): ("0.20", "0.6", "2.0", "6.0"),
    Decimal(20): ("0.25", "0.8", "2.5", "8.0"),
    Decimal(50): ("0.3", "1.0", "3.0", "10"),
    Decimal(100): ("0.5", "1.6", "5.0", "16"),
    Decimal(200): ("1.0", "3.0", "10", "30"),
    Decimal(500): ("2.5", "8.0", "25", "80"),
    Decimal(1000): ("5.0", "16", "50", "160"),
    Decimal(2000): ("10", "30", "100", "300"),
    Decimal(5000): ("25", "80", "250", "800"),
    Decimal(10000): ("50", "160", "500", "1600"),
    Decimal(20000): ("100", "300", "1000", "3000"),
}
_FIRST_REMEMBERED_WEIGHT = Decimal(10000)


@dataclass(frozen=True, slots=True)
class ClassLimits:
    """Limits of an accuracy class at one scale interval.

    Args:
        least_intervals: least Max / e.
        most_intervals: largest Max / e, or ``None``.
        least_load: smallest load (Min), in e.
    """

    least_intervals: int
    most_intervals: int | None
    least_load: int


def permissible_error(
    load: Mass,
    interval: Mass,
    scale_class: ScaleClass,
    *,
    in_service: bool,
    system: ErrorSystem = ErrorSystem.R_76,
) -> Mass:
    """Largest allowed error of a scale at a load, in the unit of the interval, exact.

    In service it is twice the initial one (R 76); HB 44 maintenance is twice acceptance.

    Raises:
        RuleRefused: no errors are transcribed for this class.
    """
    steps = _STEPS.get((system, scale_class))
    if steps is None:
        known = ", ".join(f"{one} of {which}" for which, one in _STEPS)
        raise RuleRefused(
            f"no errors of class {scale_class} of {system} are transcribed: use class {known}"
        )
    times = Decimal(2 if in_service else 1)
    for up_to, error in steps:
        if up_to is None or abs(load) <= interval * up_to:
            return interval * trimmed(EXACT.multiply(error, times))
    raise AssertionError("the last row has no end")


def class_limits(scale_class: ScaleClass, interval: Mass) -> ClassLimits:
    """Limits of an accuracy class at a scale interval e (R 76-1 Table 3).

    Raises:
        RuleRefused: the class has no such interval.
    """
    for from_g, below_g, least, most, load in _CLASS_ROWS[scale_class]:
        reaches = below_g is None or interval.grams < Decimal(below_g)
        if interval.grams >= Decimal(from_g) and reaches:
            return ClassLimits(least, most, load)
    raise RuleRefused(f"class {scale_class} knows no scale interval of {interval} (R 76 Table 3)")


def weight_error(nominal: Mass, weight_class: WeightClass) -> tuple[Mass, Clause]:
    """Largest error of a test weight, with its source.

    Raises:
        RuleRefused: no such weight is transcribed.
    """
    row = _WEIGHTS.get(nominal.grams)
    if row is None:
        raise RuleRefused(
            f"no single test weight of {nominal}: use 1, 2 or 5 times a power of ten from 1 g to "
            "20 kg"
        )
    error = Mass.of(row[list(WeightClass).index(weight_class)], "mg")
    status = Status.MEMORY if nominal.grams >= _FIRST_REMEMBERED_WEIGHT else Status.TEXT
    return error, Clause("OIML R 111-1:2004 Table 1", status)
