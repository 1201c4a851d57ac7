"""The numbers in words: what the page says of a run's figures, as plain values."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from station.core.mass import Unit
from station.core.metrology.exact import decimal_of
from station.core.metrology.forecast import Outlook
from station.line.fill_target import Advice
from station.line.numbers import BatchFigures, RunFigures

_FINE = {Unit.MILLIGRAM: 0, Unit.GRAM: 2, Unit.KILOGRAM: 5, Unit.POUND: 5, Unit.OUNCE: 4}
"""Decimals of an estimate: about a hundredth of a gram."""
_CHANCE = 4
"""Decimals of a chance, as on the command line."""


@dataclass(frozen=True, slots=True)
class Shown:
    """The plate: the chance and its word.

    Args:
        outlook: None where there is no chance yet.
        chance: its digits; empty where there is none.
        word: SAFE, THIN or FAILING; or that there is no forecast.
        under: which batch, or why there is none.
    """

    outlook: Outlook | None = None
    chance: str = ""
    word: str = "NO FORECAST"
    under: str = "no run yet"


@dataclass(frozen=True, slots=True)
class Row:
    """One figure.

    Args:
        name: what it is.
        value: with its unit.
        note: what it is held against; may be empty.
        weight: height among the rows.
        attend: somebody should look at it.
    """

    name: str
    value: str
    note: str = ""
    weight: float = 1.0
    attend: bool = False


def shown(figures: RunFigures | None) -> Shown:
    """Return the plate of a run's figures."""
    if figures is None:
        return Shown()
    batch = figures.batch
    chance = batch.outlook
    if chance is None:
        return Shown(under=batch.why_none)
    return Shown(
        chance.outlook, f"{chance.passing:.{_CHANCE}f}", str(chance.outlook).upper(), _of(batch)
    )


def _of(batch: BatchFigures) -> str:
    if batch.finished:
        return f"{batch.span}: all {batch.packs.n} bags"
    return f"{batch.span}: {batch.packs.n} of about {batch.expected} bags"


def rows(figures: RunFigures | None, advice: Advice | None) -> tuple[Row, ...]:
    """Return the figures of a run, the weightiest first."""
    if figures is None or figures.given_away is None or figures.batch.packs.n == 0:
        return ()
    batch, limits, given = figures.batch, figures.limits, figures.given_away
    unit = limits.nominal.unit
    light = batch.packs.mean_error < 0
    found = [
        Row(
            "Mean so far",
            f"{_digits(batch.packs.mean, unit)}\u00a0{unit}",
            f"nominal {limits.nominal}",
            1.25,
            light,
        ),
        _needed(figures),
        _t1(batch, str(limits.t1)),
        Row(
            "Given away",
            f"{_digits(given.per_bag_g, Unit.GRAM)}\u00a0g a bag",
            _this_run(figures),
        ),
        _target(figures, advice),
    ]
    found += [
        Row("Same product?", one.words.replace(" g", "\u00a0g"), weight=1.1, attend=True)
        for one in figures.questions
    ]
    return tuple(found)


def _needed(figures: RunFigures) -> Row:
    batch, floor = figures.batch, figures.run.window.floor
    needed, unit = batch.mean_needed, figures.limits.nominal.unit
    if needed is None:
        return Row("Mean needed", "–", "no bag is expected any more", 1.1)
    note = f"on the {batch.expected - batch.packs.n} bags to come"
    if needed <= Fraction(floor.in_unit(unit).amount):
        note += ", any above the floor will do"
    return Row("Mean needed", f"{_digits(needed, unit)}\u00a0{unit}", note, 1.1)


def _t1(batch: BatchFigures, t1: str) -> Row:
    used, left = batch.packs.t1_count, batch.t1_left
    note = f"net below {t1}"
    if batch.packs.t2_count:
        note += f"; {batch.packs.t2_count} below T2"
    if left is None:
        return Row("Below T1", str(used), note, 1.1)
    attend = left < 0 or batch.packs.t2_count > 0
    return Row("Below T1", f"{used} of {used + left} allowed", note, 1.1, attend)


def _this_run(figures: RunFigures) -> str:
    given = figures.given_away
    assert given is not None
    words = f"{given.run_kg:.3f} kg this run".replace("-", "−")
    return words if given.money is None else f"{words}, {given.money:.2f} in money"


def _target(figures: RunFigures, advice: Advice | None) -> Row:
    target = f"{figures.run.window.target} now"
    if advice is None:
        return Row("Target", target, "no proposal worked out yet")
    if advice.proposal is None:
        return Row("Target", target, advice.why_none)
    unit = figures.limits.nominal.unit
    return Row("Target", f"{advice.proposal.target:g}\u00a0{unit} proposed", target)


def advice_words(figures: RunFigures, advice: Advice) -> str:
    """Return a proposal in sentences, with who decides."""
    proposal, unit = advice.proposal, figures.limits.nominal.unit
    if proposal is None:
        return f"No target can be proposed: {advice.why_none}."
    grams, nominal = float(unit.grams), float(figures.limits.nominal.amount)
    now = estimate((advice.mean - nominal) * grams, Unit.GRAM)
    then = estimate(proposal.giveaway * grams, Unit.GRAM)
    return (
        f"Target {proposal.target:g}\u00a0{unit} instead of {advice.target:g}\u00a0{unit}, held up "
        f"by {proposal.governing}: {then} given away a bag instead of {now}. This run stays as "
        "it is. A manager approves a proposal as a new version of the product."
    )


def estimate(value: float, unit: Unit) -> str:
    """Return an estimate with its unit, as fine as it can be meant."""
    return f"{value:.{_FINE[unit]}f}\u00a0{unit}".replace("-", "−")


def _digits(value: Fraction, unit: Unit) -> str:
    """A mean, ten times finer than an estimate."""
    return str(decimal_of(value, _FINE[unit] + 1)).replace("-", "−")
