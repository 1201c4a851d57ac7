"""``station rejects``: the ledger of a production day's rejects, and decisions about them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Force, Home, home_of, read_day
from station.cli.page import Weight, clock_time, day, heading, listing, note
from station.cli.purged import with_purged
from station.cli.stopped import Settings, Who, Why, packhouse, record, stopped
from station.cli.table_file import Out, write_table
from station.core.dispositions import (
    BinCount,
    Decided,
    Disposition,
    bin_fact,
    check_decision,
    disposition_fact,
)
from station.core.rights import Act
from station.core.shifts import shift_of
from station.errors import BadInput

if TYPE_CHECKING:
    from datetime import time
    from decimal import Decimal
    from pathlib import Path

    from station.core.reject_ledger import BinState, LedgerRow

_Day = Annotated[
    str | None, typer.Option("--day", metavar="YYYY-MM-DD", help="The production day.")
]
_Only = Annotated[str | None, typer.Option(metavar="VALUE", help="Only these.")]
_Serial = Annotated[str, typer.Argument(metavar="SERIAL", help="As printed.")]
_COLUMNS = ("serial", "time", "product", "net", "why", "now", "who")
_SHEET = (
    "serial", "time", "shift", "product", "version", "run", "blend_lot", "use_by", "lots",
    "nominal",
    "floor", "upper", "t1", "t2", "net", "unit", "verdict", "reason", "position", "now",
    "decided_by", "witness", "decision_reason", "new_bag",
)  # fmt: skip
_ENDS = {str(one).replace(" ", "-"): one for one in Disposition if one is not Disposition.REWORK}
_ON_SCREEN = "stop the station, or do it on its screen: RUN, then QUALITY (F10)"


def rejects(
    context: typer.Context,
    asked: _Day = None,
    product: _Only = None,
    run: _Only = None,
    reason: _Only = None,
    position: _Only = None,
    shift: _Only = None,
    only_open: Annotated[bool, typer.Option("--open", help="Only undecided ones.")] = False,
    out: Out = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """List the bags set aside on a production day; exit 1 while one is undecided with --open."""
    if context.invoked_subcommand is not None:
        return

    def work() -> Answer:
        from station.store.ledger import bin_state, ledger  # slow to load: only where it is used
        from station.store.purged import gone_between

        if asked is None:
            raise BadInput("--day", "which production day? Give --day YYYY-MM-DD")
        on, folder = read_day("--day", asked), home_of(home, config)
        starts = _shifts(config)
        wanted = {
            "product": product, "run": run, "reason": reason, "position": position, "shift": shift,
        }  # fmt: skip
        rows = tuple(
            row
            for row in ledger(folder, on)
            if (row.open or not only_open) and _passes(row, starts, wanted)
        )
        cells = (_cells(row, starts) for row in rows)
        gone = gone_between(folder, on, on)
        write_table(out, "Rejects", _SHEET, cells, on, force=force, gone=gone)
        answer = _answer(on, rows, bin_state(folder, on), starts)
        whole = replace(answer, yes=not (only_open and rows))
        return with_purged(whole, gone)

    run_verb(as_json, work)


def decide(
    serial: _Serial,
    end: Annotated[str, typer.Option("--as", help=f"One of {', '.join(_ENDS)}.")],
    who: Who,
    why: Why,
    config: Settings,
    witness: Annotated[str, typer.Option("--witness", metavar="ID", help="Second person.")] = "",
    into: Annotated[str, typer.Option("--into", metavar="SERIAL", help="The new bag.")] = "",
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Say what becomes of a reject, or correct it, on a stopped station; rework is done there."""

    def work() -> Answer:
        from station.core.ids import new_uid
        from station.store.ledger import ledger
        from station.store.queries import trace_pack
        from station.store.stands_for import check_into

        if end not in _ENDS:
            raise BadInput("--as", f"{end!r}: give one of {', '.join(_ENDS)}")
        house, named = packhouse(config), serial.upper()
        with stopped(house, home, who, Act.DISPOSE, _ON_SCREEN, witness) as (store, at, folder):
            bag = trace_pack(folder, named)
            rows = ledger(folder, bag.record.draft.production_day)
            row = next((one for one in rows if one.serial == named), None)
            if row is None:
                raise BadInput(f"bag {named}", f"is {bag.quality}: only a reject is decided")
            corrects = "" if row.decision is None else row.decision.uid
            decided = Decided(named, _ENDS[end], why, witness, into.upper(), corrects)
            try:
                check_decision(decided, who, house.settings.quality.witnessed)
                if into:
                    check_into(folder, row, into.upper())
            except ValueError as refused:
                raise BadInput(f"bag {named}", str(refused)) from refused
            fact = disposition_fact(decided, new_uid(at), row.run)
            record(store, (fact,), at, who, f"bag {named}")
        document: dict[str, Json] = {
            "serial": named, "disposition": str(decided.disposition), "who": who,
            "witness": witness or None, "into": decided.into or None, "corrects": corrects or None,
        }  # fmt: skip
        return Answer(document, (heading(f"Bag {named} is {decided.disposition}"),))

    run_verb(as_json, work)


def count_bin(
    counted: Annotated[int, typer.Argument(metavar="BAGS", help="Bags counted in the bin.")],
    asked: Annotated[str, typer.Option("--day", metavar="YYYY-MM-DD", help="Production day.")],
    who: Who,
    config: Settings,
    why: Annotated[str, typer.Option("--why", metavar="WORDS", help="Why it differs.")] = "",
    home: Home = None,
    as_json: AsJson = False,
) -> None:
    """Hold a count of the reject bin against the record, on a stopped station."""

    def work() -> Answer:
        from station.core.ids import new_uid
        from station.store.ledger import bin_state

        house, on = packhouse(config), read_day("--day", asked)
        with stopped(house, home, who, Act.DISPOSE, _ON_SCREEN) as (store, at, folder):
            count = BinCount(on, counted, bin_state(folder, on).expected, why)
            try:
                fact = bin_fact(count, new_uid(at))
            except ValueError as refused:
                raise BadInput("the reject bin", str(refused)) from refused
            record(store, (fact,), at, who, "the reject bin")
        words = "agrees with the record" if not count.difference else f"{count.difference:+d}"
        document: dict[str, Json] = {
            "day": on.isoformat(), "counted": counted, "expected": count.expected,
            "difference": count.difference, "explanation": count.explanation or None,
        }  # fmt: skip
        return Answer(document, (heading(f"{counted} bags counted: {words}"),))

    run_verb(as_json, work)


def _shifts(config: Path | None) -> tuple[time, ...]:
    if config is None:
        return ()
    from station.config.load import load_settings  # slow to load

    return load_settings(config).quality.shifts


def _passes(row: LedgerRow, starts: tuple[time, ...], wanted: dict[str, str | None]) -> bool:
    said = {
        "product": (row.product,),
        "run": (row.run, row.blend_lot),
        "reason": (row.reason,),
        "position": (row.operator,),
        "shift": (shift_of(row.at, starts),),
    }
    return all(value is None or value in said[name] for name, value in wanted.items())


def _answer(
    asked: date, rows: tuple[LedgerRow, ...], state: BinState, starts: tuple[time, ...]
) -> Answer:
    still = sum(row.open for row in rows)
    counted = None if state.counted is None else state.counted.counted
    document: dict[str, Json] = {
        "day": asked.isoformat(),
        "count": len(rows),
        "open": still,
        "bin": {"expected": state.expected, "counted": counted},
        "rejects": [_row(row, starts) for row in rows],
    }
    if not rows:
        return Answer(document, (heading(f"Nothing set aside on {day(asked)}"),))
    title = f"{len(rows)} set aside on {day(asked)}, {still} undecided"
    lines = (
        (
            row.serial,
            clock_time(row.at),
            f"{row.name}, {row.window.limits.nominal.digits}\u00a0{row.window.limits.nominal.unit}",
            f"{row.net}",
            _why(row),
            str(row.quality),
            row.operator,
        )
        for row in rows
    )
    words = "not counted" if counted is None else f"{counted} counted"
    return Answer(
        document,
        (
            heading(title, Weight.ATTEND),
            listing(_COLUMNS, lines, "net", "product why"),
            note(f"{state.expected} bags lie in the bin by the record, {words}"),
        ),
    )


def _why(row: LedgerRow) -> str:
    verdict = str(row.verdict)
    return verdict if row.reason == verdict else f"{row.reason} ({verdict})"


def _row(row: LedgerRow, starts: tuple[time, ...]) -> Json:
    limits, decision = row.window.limits, row.decision
    decided: Json = None
    if decision is not None:
        made = decision.decided
        decided = {
            "disposition": str(made.disposition), "who": decision.record.who,
            "witness": made.witness or None, "reason": made.reason, "into": made.into or None,
            "uid": decision.uid, "corrects": made.corrects or None,
        }  # fmt: skip
    return {
        "serial": row.serial,
        "at": row.at.isoformat(),
        "shift": shift_of(row.at, starts) or None,
        "product": row.product,
        "version": row.version,
        "name": row.name,
        "run": row.run,
        "blend_lot": row.blend_lot,
        "use_by": row.use_by.isoformat(),
        "lots": [use.lot for use in row.lots],
        "nominal": limits.nominal.digits,
        "nominal_unit": str(limits.nominal.unit),
        "floor": row.window.floor.digits,
        "upper": row.window.upper.digits,
        "t1": limits.t1.digits,
        "t2": limits.t2.digits,
        "net": row.net.digits,
        "unit": str(row.net.unit),
        "verdict": str(row.verdict),
        "quality": str(row.quality),
        "reason": row.reason,
        "label": str(row.label),
        "operator": row.operator,
        "decision": decided,
    }


def _cells(row: LedgerRow, starts: tuple[time, ...]) -> tuple[str | Decimal, ...]:
    limits, window, decision = row.window.limits, row.window, row.decision
    made = None if decision is None else decision.decided
    return (
        row.serial, row.at.isoformat(timespec="seconds"), shift_of(row.at, starts), row.product,
        f"{row.version}", row.run, row.blend_lot, row.use_by.isoformat(),
        " ".join(use.lot for use in row.lots), limits.nominal.amount, window.floor.amount,
        window.upper.amount, limits.t1.amount, limits.t2.amount, row.net.amount, str(row.net.unit),
        str(row.verdict), row.reason, row.operator, str(row.quality),
        "" if decision is None else decision.record.who, "" if made is None else made.witness,
        "" if made is None else made.reason, "" if made is None else made.into,
    )  # fmt: skip
