"""Is this scale fine enough for this product? Asked when a product is set up.

Each finding carries its numbers, so a refusal can be shown as one sentence. The user answers for
the scale's class, verification and use; this is an aid.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from station.core.mass import Mass, Unit
from station.core.metrology.clause import Clause, RuleRefused
from station.core.metrology.exact import EXACT, decimal_of
from station.core.metrology.instrument_errors import (
    ErrorSystem,
    ScaleClass,
    class_limits,
    permissible_error,
)
from station.core.metrology.rule_set import Limits, RuleSet


class Level(StrEnum):
    """Weight of a finding."""

    GOOD = "good"
    WARN = "warn"
    REFUSE = "refuse"


@dataclass(frozen=True, slots=True)
class Scale:
    """What the plate of a scale says, all in one unit.

    Args:
        scale_class: accuracy class.
        interval: verification scale interval e.
        maximum: maximum capacity Max.
        minimum: minimum capacity Min, or ``None`` to take it from the class.
        system: whose limits of error hold.
    """

    scale_class: ScaleClass
    interval: Mass
    maximum: Mass
    minimum: Mass | None = None
    system: ErrorSystem = ErrorSystem.R_76


@dataclass(frozen=True, slots=True)
class Finding:
    """One question put to a scale and its answer, with the numbers."""

    level: Level
    words: str
    clause: Clause


def check_scale(
    scale: Scale, rules: RuleSet, nominal: Mass, tare: Mass, upper: Mass
) -> tuple[Finding, ...]:
    """Check a scale against a product.

    Args:
        scale: the scale.
        rules: rule set of the product.
        nominal: nominal quantity as declared; its unit chooses the column of a table of T.
        tare: tare of the bag.
        upper: highest accepted net.

    Returns:
        Every question asked, good ones too.

    Raises:
        RuleRefused: the nominal quantity is outside the set.
    """
    limits = rules.limits(nominal)
    return (
        _capacity(scale, tare, upper),
        _least_load(scale, nominal),
        _intervals_of_class(scale),
        _against_t(scale, rules, limits, tare),
        *_intervals_in_nominal(scale, rules, nominal),
        *_against_table(scale, rules, nominal),
    )


def worst(findings: tuple[Finding, ...]) -> Level:
    """Weightiest level among findings."""
    order = list(Level)
    return max((finding.level for finding in findings), key=order.index, default=Level.GOOD)


def _level(good: bool) -> Level:
    return Level.GOOD if good else Level.REFUSE


def _capacity(scale: Scale, tare: Mass, upper: Mass) -> Finding:
    gross = EXACT.add(tare.grams, upper.grams)
    good = gross <= scale.maximum.grams
    return Finding(
        _level(good),
        f"heaviest gross {gross} g against Max {scale.maximum}",
        Clause("OIML R 76-1: no load above Max"),
    )


def _least_load(scale: Scale, nominal: Mass) -> Finding:
    clause = Clause("OIML R 76-1 Table 3: Min")
    if scale.minimum is not None:
        least = scale.minimum
    else:
        try:
            least = scale.interval * class_limits(scale.scale_class, scale.interval).least_load
        except RuleRefused as refusal:
            return Finding(Level.REFUSE, str(refusal), clause)
    good = nominal >= least
    return Finding(
        Level.GOOD if good else Level.WARN, f"nominal {nominal} against Min {least}", clause
    )


def _intervals_of_class(scale: Scale) -> Finding:
    clause = Clause("OIML R 76-1 Table 3: number of intervals")
    try:
        limits = class_limits(scale.scale_class, scale.interval)
    except RuleRefused as refusal:
        return Finding(Level.REFUSE, str(refusal), clause)
    count = scale.maximum.grams / scale.interval.grams
    most = limits.most_intervals
    good = count >= limits.least_intervals and (most is None or count <= most)
    return Finding(
        Level.GOOD if good else Level.WARN,
        f"Max / e = {count.normalize():f}, class {scale.scale_class} allows "
        f"{limits.least_intervals} to {most if most is not None else 'any number'}",
        clause,
    )


def _against_t(scale: Scale, rules: RuleSet, limits: Limits, tare: Mass) -> Finding:
    rule = rules.interval_rule
    have, what = scale.interval, "scale interval"
    if not rule.by_interval:
        gross = Mass(EXACT.add(limits.nominal.grams, tare.grams), Unit.GRAM)
        what = f"in-service error at {gross} gross"
        try:
            have = permissible_error(
                gross, scale.interval, scale.scale_class, in_service=True, system=scale.system
            )
        except RuleRefused as refusal:
            return Finding(Level.REFUSE, str(refusal), rule.clause)
    allowed = rule.share_of_t * Fraction(limits.tolerable.grams)
    return Finding(
        _level(Fraction(have.grams) <= allowed),
        f"{what} {have} against {rule.share_of_t} of {limits.tolerable} = "
        f"{decimal_of(allowed, 3)} g",
        rule.clause,
    )


def _intervals_in_nominal(scale: Scale, rules: RuleSet, nominal: Mass) -> tuple[Finding, ...]:
    least = rules.interval_rule.least_intervals
    if not least:
        return ()
    good = nominal.grams >= EXACT.multiply(scale.interval.grams, Decimal(least))
    return (
        Finding(
            _level(good),
            f"nominal {nominal} against {least} intervals of {scale.interval}",
            rules.interval_rule.clause,
        ),
    )


def _against_table(scale: Scale, rules: RuleSet, nominal: Mass) -> tuple[Finding, ...]:
    for row in rules.interval_rule.rows:
        if row.from_g <= nominal.grams < row.below_g:
            return (
                Finding(
                    _level(scale.interval.grams <= row.most_e_g),
                    f"scale interval {scale.interval} against at most {row.most_e_g} g for "
                    f"{nominal}",
                    rules.interval_rule.clause,
                ),
            )
    return ()
