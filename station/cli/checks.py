"""``station checks``: the checks of QA and of the scale on record, newest last."""

from __future__ import annotations

from datetime import timedelta, timezone
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Force, Home, home_of, read_day
from station.cli.page import Weight, heading, listing
from station.cli.table_file import Out, write_table
from station.core.checks.qa import qa_check_of
from station.core.checks.scale import check_of, held_true
from station.core.journal import EntryKind

if TYPE_CHECKING:
    from datetime import datetime

    from station.core.facts import FactRecord

_MOST = 1000
_COLUMNS = ("time", "check", "found", "allowed", "result", "who", "note")
_SHEET = (
    "time", "check", "product", "found", "unit", "allowed", "result", "who", "instrument", "note",
    "action", "run",
)  # fmt: skip


def checks(
    kind: Annotated[
        str | None, typer.Option("--kind", metavar="NAME", help="Only these, such as seal.")
    ] = None,
    run: Annotated[str | None, typer.Option("--run", metavar="ID", help="Only of a run.")] = None,
    asked: Annotated[
        str | None, typer.Option("--day", metavar="YYYY-MM-DD", help="Only of a calendar day.")
    ] = None,
    failed: Annotated[bool, typer.Option("--failed", help="Only failed ones.")] = False,
    out: Out = None,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """List the checks on record; exit 1 while the last one of a kind failed."""

    def work() -> Answer:
        from station.store.facts import facts  # slow to load

        folder = home_of(home, config)
        day = None if asked is None else read_day("--day", asked)
        kinds = (EntryKind.QA_CHECK, EntryKind.SCALE_CHECK)
        every = facts(folder, kinds, run=run, newest=_MOST)
        last = {one.fact.subject: _good(one) for one in every}
        found = [
            one
            for one in every
            if (kind is None or _name(one) == kind)
            and (day is None or _at(one).date() == day)
            and not (failed and _good(one))
        ]
        if out is not None and found:
            cells = (_cells(one) for one in found)
            write_table(out, "Checks", _SHEET, cells, _at(found[-1]).date(), force=force)
        bad = [name for name, good in last.items() if not good]
        words = f"LAST CHECK FAILED: {', '.join(bad)}" if bad else f"{len(found)} checks"
        weight = Weight.STOP if bad else Weight.PLAIN
        page = (heading(words, weight), listing(_COLUMNS, map(_row, found), "", "note allowed"))
        document: dict[str, Json] = {
            "failed_last": list[Json](bad),
            "checks": [_document(one) for one in found],
        }
        return Answer(document, page, yes=not bad)

    run_verb(as_json, work)


def _name(record: FactRecord) -> str:
    return record.fact.subject if record.fact.kind is EntryKind.QA_CHECK else "scale"


def _good(record: FactRecord) -> bool:
    if record.fact.kind is EntryKind.QA_CHECK:
        return qa_check_of(record).good
    return held_true(check_of(record))


def _at(record: FactRecord) -> datetime:
    return record.at.utc.astimezone(timezone(timedelta(minutes=record.at.offset_minutes)))


def _said(record: FactRecord) -> tuple[str, str]:
    """What was found and what was allowed."""
    if record.fact.kind is EntryKind.QA_CHECK:
        made = qa_check_of(record)
        return made.words, str(made.limit)
    worst = max(check_of(record).check.loads, key=lambda load: abs(load.error.amount))
    return f"{worst.error} at {worst.mass}", f"{worst.fail_beyond}"


def _row(record: FactRecord) -> tuple[str, ...]:
    found, allowed = _said(record)
    return (
        f"{_at(record):%m-%d %H:%M}",
        _name(record),
        found,
        allowed,
        record.fact.result,
        record.who,
        _note(record),
    )


def _note(record: FactRecord) -> str:
    if record.fact.kind is not EntryKind.QA_CHECK:
        return ""
    made = qa_check_of(record)
    return "; ".join(filter(None, (made.note, made.action)))


def _document(record: FactRecord) -> Json:
    found, allowed = _said(record)
    document: dict[str, Json] = {
        "uid": record.fact.uid,
        "at": _at(record).isoformat(),
        "check": _name(record),
        "found": found,
        "allowed": allowed,
        "result": record.fact.result,
        "who": record.who,
        "run": record.fact.run or None,
    }
    if record.fact.kind is EntryKind.QA_CHECK:
        made = qa_check_of(record)
        document |= {
            "product": made.product or None,
            "value": None if made.value is None else str(made.value),
            "unit": made.limit.unit or None,
            "instrument": made.instrument or None,
            "note": made.note or None,
            "action": made.action or None,
        }
    return document


def _cells(record: FactRecord) -> tuple[str, ...]:
    found, allowed = _said(record)
    product = unit = instrument = note = action = ""
    if record.fact.kind is EntryKind.QA_CHECK:
        made = qa_check_of(record)
        product, unit = made.product, made.limit.unit
        instrument, note, action = made.instrument, made.note, made.action
    return (
        _at(record).isoformat(timespec="seconds"), _name(record), product, found, unit, allowed,
        record.fact.result, record.who, instrument, note, action, record.fact.run,
    )  # fmt: skip
