"""``station journal``: whether the record is whole, and its tables built again from its journal."""

from __future__ import annotations

from typing import TYPE_CHECKING

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home, home_of
from station.cli.page import Weight, facts, heading, note

if TYPE_CHECKING:
    from station.store.verify import VerifyReport

_CAVEAT = (
    "A chain makes a change evident, it does not prevent one: compare the head with the one kept "
    "elsewhere."
)


def verify(home: Home = None, config: Config = None, as_json: AsJson = False) -> None:
    """Check every entry and every table; exit 1 at the first that does not hold."""

    def work() -> Answer:
        from station.store.verify import verify as verify_record  # slow to load

        return _answer(verify_record(home_of(home, config)))

    run_verb(as_json, work)


def rebuild(home: Home = None, config: Config = None, as_json: AsJson = False) -> None:
    """Build the tables of a stopped station again; exit 1 when its journal does not hold."""

    def work() -> Answer:
        from station.store.rebuild import JournalBroken  # slow to load
        from station.store.rebuild import rebuild as rebuild_tables

        try:
            entries = rebuild_tables(home_of(home, config))
        except JournalBroken as broken:
            title = heading(f"{broken.title.upper()}: {broken.detail}", Weight.STOP)
            refused: dict[str, Json] = {"rebuilt": False, "entries": 0, "why": broken.detail}
            return Answer(refused, (title,), yes=False)
        done: dict[str, Json] = {"rebuilt": True, "entries": entries, "why": ""}
        return Answer(done, (heading(f"All tables built again from {entries} journal entries"),))

    run_verb(as_json, work)


def _answer(report: VerifyReport) -> Answer:
    document: dict[str, Json] = {
        "whole": report.whole,
        "entries": report.entries,
        "first_break": report.first_break,
        "why": report.why,
        "epoch": None if report.epoch is None else str(report.epoch),
        "head_seq": report.head_seq,
        "head": report.head,
    }
    if report.whole:
        title = heading(f"The journal is whole: {report.entries} entries")
    else:
        place = "a table" if report.first_break is None else f"entry {report.first_break}"
        title = heading(f"THE RECORD DOES NOT HOLD at {place}: {report.why}", Weight.STOP)
    rows = (
        ("Entries that hold", str(report.entries)),
        ("Last of them", f"{report.head_seq} of epoch {report.epoch or '-'}"),
        ("Its hash", report.head),
    )
    return Answer(document, (title, facts(rows), note(_CAVEAT)), yes=report.whole)
