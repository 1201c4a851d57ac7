"""The lowest long-run mean for a given spread, and the curve it lies on."""

from __future__ import annotations

import re

from station.cli.answer import Answer, Json
from station.cli.limits import limits_of
from station.cli.money import Shift
from station.cli.options import read_mass
from station.cli.page import facts, heading, listing, note
from station.core.mass import MassError
from station.core.metrology.rule_set import Limits
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.target import (
    KneePoint,
    Shares,
    knee_curve,
    knee_point,
    knee_spread,
)
from station.errors import BadInput

_BARE = re.compile(r"[0-9]+(\.[0-9]+)?", re.ASCII)
_CURVE = 12  # points beside zero; the knee lies near the middle
_CAVEAT = "For a normal process: {}. A run's own bags tell more: give --run."


def knee_answer(rules: str | None, nominal: str | None, sigma: str, shift: Shift) -> Answer:
    """Answer for one spread of a normal process.

    Raises:
        BadInput: an option is missing or no mass.
    """
    if rules is None or nominal is None:
        raise BadInput("--sigma", "needs --rules ID and --nominal MASS beside it")
    limits = limits_of(rules, read_mass("--nominal", nominal))
    unit = limits.nominal.unit
    spread = _spread(sigma, limits)
    shares = Shares.of(rule_set(limits.rule_set))
    point = knee_point(limits, spread, shares)
    tolerable = float(limits.tolerable.amount)
    curve = knee_curve(limits, [tolerable * step / _CURVE for step in range(_CURVE + 1)], shares)
    knee = knee_spread(limits, shares)
    over = point.mean - float(limits.nominal.amount)
    given = shift.given_away(over * float(unit.grams))
    document: dict[str, Json] = {
        "rule_set": limits.rule_set,
        "version": limits.version,
        "nominal": limits.nominal.digits,
        "unit": str(unit),
        "sigma": spread,
        "target": round(point.mean, 6),
        "governing": point.governing,
        "knee": round(knee, 6),
        "giveaway": given.document(),
        "curve": [
            {
                "sigma": round(one.spread, 6),
                "target": round(one.mean, 6),
                "governing": one.governing,
            }
            for one in curve
        ],
    }
    page = (
        heading(f"Fill to a mean of {point.mean:.3f} {unit} or more"),
        facts(
            (
                ("Rules", f"{limits.rule_set}, {limits.version}"),
                ("Nominal quantity", f"{limits.nominal}"),
                ("Spread", f"{spread:g} {unit}"),
                ("Held up by", f"the {point.governing} rule"),
                ("Knee", f"above a spread of {knee:.3f} {unit} the mean must rise"),
                ("Given away", str(given)),
            )
        ),
        listing(("spread", "lowest_mean", "rule"), map(_cells, curve), "spread lowest_mean"),
        note(_CAVEAT.format(_allowed(shares))),
    )
    return Answer(document, page)


def _allowed(shares: Shares) -> str:
    t1 = f"{shares.t1 * 100:g} % of bags below T1"
    return f"{t1} at most" if shares.t2 is None else f"{t1} and 1 in 10 000 below T2 at most"


def _cells(point: KneePoint) -> tuple[str, str, str]:
    return (f"{point.spread:.3f}", f"{point.mean:.3f}", point.governing)


def _spread(text: str, limits: Limits) -> float:
    """The spread in the unit of the nominal quantity; a bare number is in it already."""
    unit = limits.nominal.unit
    mass = read_mass("--sigma", f"{text} {unit}" if _BARE.fullmatch(text.strip()) else text)
    try:
        mass = mass.in_unit(unit)
    except MassError as fault:
        raise BadInput("--sigma", f"{fault}: give it in {unit}, as the nominal quantity") from fault
    if mass.amount < 0:
        raise BadInput("--sigma", f"{mass} is below zero: a spread is zero or more")
    return float(mass.amount)
