"""Loads of a scale check as written on a command line, and the plate of the scale.

A load is ``MASS=INDICATION``, as in ``250=251``: what was put on, and what the scale showed. The
mass may name its weights, as in ``200+50=251``; without, the usual 1-2-5 set makes it up. A small
weight added until the digits changed stands behind: ``250=251+0.4`` (R 76-1 A.4.4.3, from memory).
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from decimal import Decimal
from typing import TypeVar

from station.core.mass import Mass, MassError, Unit
from station.core.metrology.instrument_errors import ErrorSystem, ScaleClass, WeightClass
from station.core.metrology.scale_check import CheckLoad, CheckReading, TestWeights
from station.core.metrology.scale_suitability import Scale
from station.errors import BadInput

_Known = TypeVar("_Known")

SYSTEMS: Mapping[str, ErrorSystem] = {"r-76": ErrorSystem.R_76, "hb-44": ErrorSystem.HB_44}

_FORM = "write MASS=INDICATION, such as 250=251, 200+50=251 or, with 0.4 added, 250=251+0.4"
_BARE = re.compile(r"[-+]?[0-9]+(\.[0-9]+)?", re.ASCII)
_SET_G = tuple(Decimal(step) * 10**tens for tens in (4, 3, 2, 1, 0) for step in (5, 2, 1))
_HEAVIEST_G = Decimal(20_000)
_MOST_WEIGHTS = 40


def scale_of(unit: str, interval: str, maximum: str, class_: str, system: str) -> Scale:
    """Return the scale that the options describe.

    Raises:
        BadInput: an option is wrong; names it and what is allowed.
    """
    its_unit = _one_of("--unit", unit, {str(one): one for one in Unit})
    scale = Scale(
        scale_class=_one_of("--class", class_, {str(one): one for one in ScaleClass}),
        interval=_mass("--interval", interval, its_unit),
        maximum=_mass("--max", maximum, its_unit),
        system=_one_of("--system", system, SYSTEMS),
    )
    if scale.interval.amount <= 0:
        raise BadInput("--interval", f"{scale.interval} must be above zero")
    if scale.maximum <= scale.interval:
        raise BadInput("--max", f"{scale.maximum} must be above the interval {scale.interval}")
    return scale


def readings_of(loads: Iterable[str], weight_class: str, scale: Scale) -> list[CheckReading]:
    """Return the readings that the options give.

    Raises:
        BadInput: a load is not written so, above Max, or no set of weights makes it up.
    """
    classes = {str(one): one for one in WeightClass}
    made_of = _one_of("--weights", weight_class, classes)
    return [_reading(load, made_of, scale) for load in loads]


def _reading(text: str, weight_class: WeightClass, scale: Scale) -> CheckReading:
    option = f"--load {text}"
    put_on, sign, shown = text.partition("=")
    if not sign or not put_on.strip() or not shown.strip():
        raise BadInput(option, _FORM)
    unit = scale.interval.unit
    parts = [_mass(option, part, unit) for part in put_on.split("+")]
    if any(part.amount < 0 for part in parts):
        raise BadInput(option, "a test weight is not below zero")
    weights = TestWeights(_singles(option, parts), weight_class)
    if weights.total(scale.interval) > scale.maximum:
        raise BadInput(option, f"is above Max {scale.maximum}")
    indication, _, added = shown.partition("+")
    return CheckReading(
        CheckLoad.NOMINAL if weights.nominals else CheckLoad.EMPTY,
        weights,
        _mass(option, indication, unit),
        _mass(option, added, unit) if added else None,
    )


def _singles(option: str, parts: list[Mass]) -> tuple[Mass, ...]:
    """Single weights: as named, or for one mass the fewest of a 1-2-5 set."""
    if len(parts) > 1:
        return tuple(parts)
    left = parts[0].grams
    singles: list[Mass] = []
    for grams in (_HEAVIEST_G, *(one for one in _SET_G if one < _HEAVIEST_G)):
        while left >= grams and len(singles) < _MOST_WEIGHTS:
            singles.append(Mass(grams, Unit.GRAM))
            left -= grams
    if left:
        raise BadInput(
            option,
            f"{parts[0]} is no sum of few weights from 1 g to 20 kg: name them, as in 200+50=251",
        )
    return tuple(singles)


def _mass(option: str, text: str, unit: Unit) -> Mass:
    """A mass in the scale's unit; a bare number is in it already."""
    bare = text.strip()
    try:
        return Mass.parse(f"{bare} {unit}" if _BARE.fullmatch(bare) else bare).in_unit(unit)
    except MassError as fault:
        form = f"; {_FORM}" if option.startswith("--load") else ""
        raise BadInput(
            option, f"{bare!r} is no mass in {unit}: write a number with a decimal point{form}"
        ) from fault


def _one_of(option: str, text: str, known: Mapping[str, _Known]) -> _Known:
    try:
        return known[text]
    except KeyError as fault:
        raise BadInput(option, f"{text!r} is none of {', '.join(known)}") from fault
