"""``station journal``: whether the record is whole, and its tables built again from its journal."""

from __future__ import annotations

import json
import sys
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Home, home_of
from station.cli.outside import Heads, Key, read_outside
from station.cli.page import Weight, facts, heading, note
from station.cli.progress import progress
from station.core.tree_head import SignedHead, key_id
from station.errors import BadInput, EnvironmentFault

if TYPE_CHECKING:
    from station.store.head_check import Elsewhere
    from station.store.quick_verify import QuickReport
    from station.store.verify import VerifyReport

_QUICK = (
    "The text of older entries and the tables were not read again: the whole verification does."
)
_CAVEAT = (
    "A chain makes a change evident, it does not prevent one: compare the head with the one kept "
    "elsewhere."
)


Quick = Annotated[bool, typer.Option("--quick", help="Only what came since the last signed head.")]
Proof = Annotated[
    Path | None, typer.Option("--proof", metavar="FILE", help="Check a proof instead of a record.")
]


def verify(
    heads: Heads = None,
    key: Key = None,
    quick: Quick = False,
    proof: Proof = None,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Check every entry, head and table; exit 1 at the first that does not hold."""

    def work() -> Answer:
        if proof is not None:
            return _check_proof(proof, read_outside((), key, None, None))
        folder = home_of(home, config)
        outside = read_outside(heads, key, folder, config)
        if quick:
            from station.store.quick_verify import verify_since_head  # slow to load

            return _quick_answer(verify_since_head(folder, outside))
        from station.store.journal import count_entries
        from station.store.verify import verify as verify_record

        total = 0  # of a file that cannot be counted the verification says more
        with suppress(EnvironmentFault):
            total = count_entries(folder)
        quiet = as_json or not sys.stderr.isatty()
        with progress("Checking entries", total, quiet=quiet) as told:
            return _answer(verify_record(folder, outside, told))

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
        "page": report.page,
        "why": report.why,
        "epoch": None if report.epoch is None else str(report.epoch),
        "head_seq": report.head_seq,
        "head": report.head,
        "purged": report.purged,
        "heads": report.heads,
        "signed_head": None if report.signed is None else report.signed.head.size,
        "key": None if report.signed is None else key_id(report.signed.key),
    }
    if report.whole:
        title = heading(f"The journal is whole: {report.entries} entries")
    else:
        place = f"entry {report.first_break}"
        if report.first_break is None:
            place = "a table" if report.page is None else f"page {report.page} of the file"
        title = heading(f"THE RECORD DOES NOT HOLD at {place}: {report.why}", Weight.STOP)
    rows = (
        ("Entries that hold", str(report.entries)),
        *((("Purged of them", str(report.purged)),) if report.purged else ()),
        ("Last of them", f"{report.head_seq} of epoch {report.epoch or '-'}"),
        ("Its hash", report.head),
        ("Heads that fit", str(report.heads)),
        ("Last signed one", _signed(report.signed)),
    )
    return Answer(document, (title, facts(rows), note(_CAVEAT)), yes=report.whole)


def _quick_answer(report: QuickReport) -> Answer:
    signed = report.signed
    document: dict[str, Json] = {
        "whole": report.whole,
        "first_break": report.first_break,
        "why": report.why,
        "signed_head": None if signed is None else signed.head.size,
        "key": None if signed is None else key_id(signed.key),
        "since": report.since,
        "head_seq": report.seq,
    }
    title = (
        heading("Nothing wrong since the last signed head")
        if report.whole
        else heading(f"THE RECORD DOES NOT HOLD: {report.why}", Weight.STOP)
    )
    rows = (("Last signed head", _signed(signed)), ("Entries since", str(report.since)))
    return Answer(document, (title, facts(rows), note(_QUICK)), yes=report.whole)


def _check_proof(path: Path, outside: Elsewhere) -> Answer:
    from station.store.proofs import check_proof  # slow to load

    try:
        document = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError) as fault:
        raise BadInput(f"{path}", f"cannot be read as a proof: {fault}") from fault
    why = check_proof(document, outside.key)
    words = f"THE PROOF DOES NOT HOLD: {why}" if why else f"It holds: {document['what']}"
    page = (
        heading(words, Weight.STOP if why else Weight.PLAIN),
        facts((("Head", str(document.get("words", ""))),)),
        note("" if outside.key else "Whose key it is was not checked: give it with --key."),
    )
    return Answer({"holds": not why, "why": why}, page, yes=not why)


def _signed(head: SignedHead | None) -> str:
    if head is None:
        return "none"
    words, name = head.head.words, key_id(head.key)
    return f"{head.head.size} {words}, {head.at:%Y-%m-%d %H:%M} UTC, key {name}"
