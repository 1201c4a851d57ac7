"""Check of the scale with test weights: which loads, when due, and what the errors say.

Limits are those of R 76 in service (twice the initial error) or HB 44 maintenance; beyond the
initial error the check warns. A test weight serves when its own error is at most one third of the
scale's error limit (R 76-1 3.7.1, from memory). With a small added weight the rounding of the
digits is taken out: E = I + e/2 - added - L (R 76-1 A.4.4.3, from memory).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import (
    ROUND_CEILING,
    ROUND_HALF_EVEN,
    Context,
    Decimal,
    InvalidOperation,
    Overflow,
)
from enum import StrEnum

from station.core.mass import Mass, Unit
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import EXACT, trimmed
from station.core.metrology.instrument_errors import (
    WeightClass,
    permissible_error,
    weight_error,
)
from station.core.metrology.scale_suitability import Scale

_HALF = Decimal("0.5")
_PLACES = 9
_FINE = Context(prec=60, traps=[InvalidOperation, Overflow])
_WEIGHT_SHARE = 3  # the weight's error may be one third of the scale's


class CheckLoad(StrEnum):
    """Loads of a check."""

    EMPTY = "empty"
    TARE = "near the tare"
    NOMINAL = "nominal"
    MAX = "near Max"


class CheckStage(StrEnum):
    """Before or after an adjustment."""

    AS_FOUND = "as found"
    AS_LEFT = "as left"


class CheckResult(StrEnum):
    """What a check says about the scale."""

    GOOD = "good"
    WARN = "warn"
    FAILED = "failed"


@dataclass(frozen=True, slots=True)
class TestWeights:
    """Weights put on for one load: nominal masses and their class."""

    __test__ = False

    nominals: tuple[Mass, ...]
    weight_class: WeightClass

    def total(self, unit_of: Mass) -> Mass:
        """Sum of the nominal masses, in the unit of ``unit_of``; zero without weights."""
        grams = Decimal(0)
        for one in self.nominals:
            grams = EXACT.add(grams, one.grams)
        return _mass_in(grams, unit_of.unit, ROUND_HALF_EVEN)

    def error_g(self) -> Decimal:
        """Largest error of the weights together, in grams."""
        total = Decimal(0)
        for one in self.nominals:
            total = EXACT.add(total, weight_error(one, self.weight_class)[0].grams)
        return total


@dataclass(frozen=True, slots=True)
class CheckReading:
    """One load of a check.

    Args:
        load: which load.
        weights: test weights on the scale.
        indication: what the scale showed.
        added: small weight added until the digits changed, or ``None``.
    """

    load: CheckLoad
    weights: TestWeights
    indication: Mass
    added: Mass | None = None


@dataclass(frozen=True, slots=True)
class CheckedLoad:
    """One load judged: its error, the limits and the result, all in the scale's unit."""

    reading: CheckReading
    mass: Mass
    error: Mass
    warn_beyond: Mass
    fail_beyond: Mass
    result: CheckResult


@dataclass(frozen=True, slots=True)
class ScaleCheck:
    """A whole check.

    Args:
        at: when it was made.
        stage: before or after an adjustment.
        loads: loads judged, in rising order of mass.
    """

    at: datetime
    stage: CheckStage
    loads: tuple[CheckedLoad, ...]

    @property
    def result(self) -> CheckResult:
        """Worst result of the loads."""
        order = list(CheckResult)
        return max((load.result for load in self.loads), key=order.index)


def judge_check(
    scale: Scale, readings: Sequence[CheckReading], at: datetime, stage: CheckStage
) -> ScaleCheck:
    """Judge the readings of a check.

    Raises:
        RuleRefused: no reading, a weight too coarse for the scale, or an unknown weight.
    """
    if not readings:
        raise RuleRefused("a check needs at least one load: start with the empty pan")
    loads = sorted((_judge_load(scale, one) for one in readings), key=lambda load: load.mass.grams)
    return ScaleCheck(at, stage, tuple(loads))


def _judge_load(scale: Scale, reading: CheckReading) -> CheckedLoad:
    mass = reading.weights.total(scale.interval)
    initial = permissible_error(
        mass, scale.interval, scale.scale_class, in_service=False, system=scale.system
    )
    in_service = permissible_error(
        mass, scale.interval, scale.scale_class, in_service=True, system=scale.system
    )
    own = reading.weights.error_g()
    if EXACT.multiply(own, Decimal(_WEIGHT_SHARE)) > in_service.grams:
        raise RuleRefused(
            f"test weights of class {reading.weights.weight_class} for {mass} may be wrong by "
            f"{own} g, more than a third of the {in_service} the scale may be: use a finer class"
        )
    error = reading.indication - mass
    if reading.added is not None:
        error = error + scale.interval * _HALF - reading.added
    size = abs(error)
    result = CheckResult.GOOD
    if size > in_service:
        result = CheckResult.FAILED
    elif size > initial:
        result = CheckResult.WARN
    return CheckedLoad(reading, mass, error, initial, in_service, result)


def loads_due(scale: Scale, tare: Mass, nominal: Mass) -> dict[CheckLoad, Mass]:
    """Masses to check at: empty, near the tare, near nominal gross, near Max.

    Tare and gross are rounded to two figures and whole grams, so that a few weights make them up.
    """
    gross = EXACT.add(tare.grams, nominal.grams)
    return {
        CheckLoad.EMPTY: scale.interval * 0,
        CheckLoad.TARE: _round_mass(tare.grams, scale),
        CheckLoad.NOMINAL: _round_mass(gross, scale),
        CheckLoad.MAX: scale.maximum,
    }


def _round_mass(grams: Decimal, scale: Scale) -> Mass:
    place = Decimal(1).scaleb(max(0, grams.adjusted() - 1))
    rounded = EXACT.multiply((grams / place).to_integral_value(), place)
    # Up, so that weights of the whole grams meant still stay at or below it.
    return _mass_in(rounded, scale.interval.unit, ROUND_CEILING)


def _mass_in(grams: Decimal, unit: Unit, rounding: str) -> Mass:
    """Whole or test-weight grams in the scale's unit.

    Grams have no exact value in pounds or ounces: there a billionth of the unit is kept, far below
    any scale interval, and as fine as a mass is read back from the record.
    """
    amount = _FINE.divide(grams, unit.grams)
    billionths = amount.scaleb(_PLACES, _FINE).to_integral_value(rounding, _FINE)
    return Mass(trimmed(billionths.scaleb(-_PLACES, _FINE)), unit)


@dataclass(frozen=True, slots=True)
class CheckSchedule:
    """When a check is due.

    Args:
        every: longest time between checks while packing.
        grace: time after which an overdue check closes acceptance.
    """

    every: timedelta = timedelta(hours=1)
    grace: timedelta = timedelta(minutes=10)


class Due(StrEnum):
    """State of the next check."""

    NOT_YET = "not yet"
    DUE = "due"
    OVERDUE = "overdue"


def check_due(
    now: datetime,
    last_good: datetime | None,
    event_since: bool,
    schedule: CheckSchedule | None = None,
) -> Due:
    """Tell whether a check is due; overdue means no pack may be accepted.

    Args:
        now: time now.
        last_good: time of the last check of this run that did not fail, ``None`` at its start.
        event_since: something happened since (shock, move, wash-down, power, adjustment).
        schedule: times.
    """
    schedule = schedule or CheckSchedule()
    if last_good is None or event_since or now < last_good:
        return Due.OVERDUE
    age = now - last_good
    if age > schedule.every + schedule.grace:
        return Due.OVERDUE
    return Due.DUE if age >= schedule.every else Due.NOT_YET


def serving_classes(scale: Scale, mass: Mass) -> tuple[WeightClass, ...]:
    """Classes of a single test weight good enough for a scale at this mass."""
    allowed = permissible_error(
        mass, scale.interval, scale.scale_class, in_service=True, system=scale.system
    ).grams
    return tuple(
        one
        for one in WeightClass
        if EXACT.multiply(weight_error(mass, one)[0].grams, Decimal(_WEIGHT_SHARE)) <= allowed
    )
