"""``station verdict``: one net mass against floor, T1, T2 and upper limit."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

import typer

from station.cli.answer import Answer, Json, digits, run_verb
from station.cli.limits import limits_document, limits_of
from station.cli.options import AsJson, Nominal, Rules, read_mass
from station.cli.page import Weight, facts, heading
from station.core.mass import Mass, MassError, Unit
from station.core.metrology.verdict import (
    Verdict,
    Window,
    WindowError,
    classify,
    to_add_to_floor,
    to_take_out,
)
from station.errors import BadInput

_WEIGHTS = {
    Verdict.BELOW_T2: Weight.STOP,
    Verdict.BELOW_T1: Weight.STOP,
    Verdict.BELOW_FLOOR: Weight.ATTEND,
    Verdict.IN_WINDOW: Weight.PLAIN,
    Verdict.OVER: Weight.ATTEND,
}


def _mass_option(name: str, words: str) -> typer.models.OptionInfo:
    return typer.Option(name, metavar="MASS", help=words)  # type: ignore[no-any-return]


_Net = Annotated[str | None, _mass_option("--net", "Net mass of the bag.")]
_Gross = Annotated[str | None, _mass_option("--gross", "Gross mass, with --tare instead of --net.")]
_Tare = Annotated[str | None, _mass_option("--tare", "Mass of the empty bag.")]
_Floor = Annotated[
    str | None, _mass_option("--floor", "Lowest net accepted; the nominal quantity if not given.")
]
_Target = Annotated[str | None, _mass_option("--target", "Net filled to; the floor if not given.")]
_Upper = Annotated[str | None, _mass_option("--upper", "Highest net accepted; none if not given.")]


@dataclass(frozen=True, slots=True)
class _Bag:
    """What was weighed, in the unit of the nominal quantity."""

    net: Mass
    gross: Mass | None
    tare: Mass | None


def verdict(
    rules: Rules,
    nominal: Nominal,
    net: _Net = None,
    gross: _Gross = None,
    tare: _Tare = None,
    floor: _Floor = None,
    target: _Target = None,
    upper: _Upper = None,
    as_json: AsJson = False,
) -> None:
    """Judge one bag; exit 1 when it is short or over."""

    def work() -> Answer:
        limits = limits_of(rules, read_mass("--nominal", nominal))
        unit = limits.nominal.unit
        bag = _weighed(_given("--net", net, unit), _given("--gross", gross, unit),
                       _given("--tare", tare, unit))  # fmt: skip
        lowest = _given("--floor", floor, unit) or limits.nominal
        aim = _given("--target", target, unit) or lowest
        most = _given("--upper", upper, unit)
        try:
            # Without an upper limit nothing is over: the window reaches up to the bag itself.
            window = Window(lowest, aim, most or max(aim, bag.net), limits)
        except WindowError as refused:
            raise BadInput("--floor, --target, --upper", str(refused)) from refused
        return _answer(bag, window, open_above=most is None)

    run_verb(as_json, work)


def _given(option: str, text: str | None, unit: Unit) -> Mass | None:
    """The mass an option gives, in the unit of the nominal quantity."""
    if text is None:
        return None
    mass = read_mass(option, text)
    try:
        return mass.in_unit(unit)
    except MassError as fault:
        raise BadInput(option, f"{fault}: give it in {unit}, as the nominal quantity") from fault


def _weighed(net: Mass | None, gross: Mass | None, tare: Mass | None) -> _Bag:
    if gross is not None and tare is not None:
        if net is not None and gross - tare != net:
            raise BadInput("--net", f"gross {gross} less tare {tare} is {gross - tare}, not {net}")
        return _Bag(gross - tare, gross, tare)
    if net is None or gross is not None or tare is not None:
        raise BadInput("what to judge", "give --net, or --gross and --tare together")
    return _Bag(net, None, None)


def _answer(bag: _Bag, window: Window, *, open_above: bool) -> Answer:
    found = classify(bag.net, window)
    upper = None if open_above else window.upper
    add, take_out = to_add_to_floor(bag.net, window), to_take_out(bag.net, window)
    document: dict[str, Json] = {
        "verdict": str(found),
        "accepted": found is Verdict.IN_WINDOW,
        "net": bag.net.digits,
        "gross": digits(bag.gross),
        "tare": digits(bag.tare),
        "unit": str(bag.net.unit),
        "floor": window.floor.digits,
        "target": window.target.digits,
        "upper": digits(upper),
        "below_T1": bag.net < window.limits.t1,
        "below_T2": bag.net < window.limits.t2,
        "add_to_floor": add.digits,
        "take_out": take_out.digits,
        "limits": limits_document(window.limits),
    }
    page = (
        heading(f"{str(found).upper()}  {_what_to_do(found, window, add, take_out)}",
                _WEIGHTS[found]),
        facts(_rows(bag, window, upper)),
    )  # fmt: skip
    return Answer(document, page, yes=found is Verdict.IN_WINDOW)


def _what_to_do(found: Verdict, window: Window, add: Mass, take_out: Mass) -> str:
    if found is Verdict.IN_WINDOW:
        return ""
    if found is Verdict.OVER:
        return f"take out {take_out} to come down to the upper limit {window.upper}"
    return f"add {add} to reach the floor {window.floor}"


def _rows(bag: _Bag, window: Window, upper: Mass | None) -> list[tuple[str, str]]:
    rows = [("Net", f"{bag.net}")]
    if bag.gross is not None and bag.tare is not None:
        rows[0] = ("Net", f"{bag.net}  (gross {bag.gross} - tare {bag.tare})")
    return [
        *rows,
        ("Nominal quantity", f"{window.limits.nominal}"),
        ("Upper limit", f"{upper or 'none'}"),
        ("Target", f"{window.target}"),
        ("Floor", f"{window.floor}"),
        ("T1", f"{window.limits.t1}"),
        ("T2", f"{window.limits.t2}"),
        ("Rules", f"{window.limits.rule_set}, {window.limits.version}"),
    ]
