"""``station evidence``: everything about a run or a lot in one folder, for an auditor."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, Config, Force, Home, home_of
from station.cli.outside import key_file
from station.cli.page import Weight, facts, heading, listing, note
from station.cli.progress import long_work
from station.core.journal import JournalError
from station.core.metrology.clause import RuleRefused
from station.core.tree_head import key_id
from station.errors import BadInput, EnvironmentFault
from station.software_id import software_id

if TYPE_CHECKING:
    from station.reports.evidence import Evidence
    from station.store.own_entries import OwnEntries

Run = Annotated[str | None, typer.Option("--run", metavar="UID", help="A run, or `last`.")]
Lot = Annotated[str | None, typer.Option("--lot", metavar="CODE", help="An input lot.")]
WholeJournal = Annotated[
    bool,
    typer.Option("--whole-journal", help="Verify all of the journal too; takes long."),
]
Out = Annotated[
    Path, typer.Option("--out", metavar="DIR", help="Folder of the pack; made where it is missing.")
]


def evidence(
    out: Out,
    run: Run = None,
    lot: Lot = None,
    whole_journal: WholeJournal = False,
    force: Force = False,
    home: Home = None,
    config: Config = None,
    as_json: AsJson = False,
) -> None:
    """Write one PDF and its tables; exit 1 when something is still open."""

    def work() -> Answer:
        folder = home_of(home, config)
        _check_folder(out, force=force)
        from station.reports.evidence_pdf import evidence_pdf  # slow to load
        from station.reports.evidence_sheets import evidence_files
        from station.reports.files import write_whole

        with long_work("Gathering the evidence"):
            found = _found(folder, run, lot, config, whole=whole_journal)
        with long_work("Setting its pages"):
            files = evidence_files(found, evidence_pdf(found))
        try:
            out.mkdir(parents=True, exist_ok=True)
        except OSError as fault:
            raise EnvironmentFault(f"cannot make the folder {out}", str(fault)) from fault
        for name, content in files.items():
            write_whole(out / name, content)
        return _answer(found, out, {name: len(content) for name, content in files.items()})

    run_verb(as_json, work)


def _check_folder(out: Path, *, force: bool) -> None:
    if out.exists() and not out.is_dir():
        raise BadInput(f"--out {out}", "is a file: name a folder")
    if out.is_dir() and any(out.iterdir()) and not force:
        raise BadInput(f"--out {out}", "is not empty: name another folder, or add --force")


def _found(
    home: Path, run: str | None, lot: str | None, config: Path | None, *, whole: bool
) -> Evidence:
    from station.core.balance import Water
    from station.reports.evidence import By, evidence_of_lot, evidence_of_run

    if (run is None) == (lot is None):
        raise BadInput("what the evidence is of", "give one of --run UID or --lot CODE")
    water = Water()
    if config is not None:
        from station.config.load import load_settings

        water = load_settings(config).lots.water
    by = By(key_file(home, config), whole)
    try:
        if run is not None:
            return evidence_of_run(home, run, software_id(), water, by)
        assert lot is not None
        return evidence_of_lot(home, lot, software_id(), water, by)
    except RuleRefused as refused:
        raise BadInput("the rules of a run", str(refused)) from refused
    except JournalError as fault:
        raise EnvironmentFault(
            f"an entry of the record cannot be read: {_which(home, run, fault)}",
            "no evidence can be set; `station journal verify` reads all of the record",
        ) from fault


def _which(home: Path, run: str | None, fault: JournalError) -> str:
    """The entry at fault, where it is one of the run."""
    from station.store.own_entries import own_entries
    from station.store.weighed import LAST

    if run is None or run == LAST:
        return str(fault)
    return own_entries(home, run, (), None).why or str(fault)


def _whole_journal(found: Evidence) -> dict[str, Json]:
    """What verifying all of it found; nulls where nobody asked."""
    whole, last = found.whole, found.last_copy
    return {
        "journal_whole": None if whole is None else whole.whole,
        "journal_entries": None if whole is None else whole.entries,
        "head": None if whole is None else {"seq": whole.head_seq, "hash": whole.head},
        "last_checked_copy": None if last is None else last.at.utc.isoformat(),
    }


def _own(own: OwnEntries) -> dict[str, Json]:
    return {
        "hold": own.holds,
        "why": own.why,
        "first_break": own.first_break,
        "first": own.first,
        "last": own.last,
        "read": own.entries,
        "outside": own.outside,
        "purged": own.purged,
        "bags": own.bags,
        "under": [
            {
                "entries": one.entries,
                "size": one.head.head.size,
                "signed_at": one.head.at.isoformat(),
                "key": key_id(one.head.key),
                "signed_for_this": one.now,
            }
            for one in own.under
        ],
        "under_no_head": own.loose,
        "why_under_none": own.why_loose,
    }


def _answer(found: Evidence, out: Path, files: dict[str, int]) -> Answer:
    from station.reports.evidence_proof import not_proved_words, proved_words

    points = found.open_points
    document: dict[str, Json] = {
        "of": found.asked,
        "folder": str(out),
        "software": {"version": found.software.version, "sha256": found.software.digest},
        **_whole_journal(found),
        "open": list[Json](points),
        "runs": [
            {
                "run": one.record.run.id,
                "product": one.record.run.product.code,
                "version": one.record.run.product.version,
                "packs": len(one.record.bags),
                "not_in_batch": len(one.record.left),
                "accepted": one.record.accepted,
                "entries": len(one.entered),
                "rolls": len(one.rolls),
                "stops": len(one.stops),
                "own_entries": _own(one.own),
                "proofs": {
                    proof.what: proof.file or f"none: {proof.why_not}" for proof in one.proofs
                },
            }
            for one in found.runs
        ],
        "windows": len(found.windows) + len(found.others),
        "lots": [one.lot.code for one in found.trace.receipts],
        "files": dict(files.items()),
    }
    proved = [
        (f"Entries of {one.record.run.blend_lot}", words)
        for one in found.runs
        for words in proved_words(one.own)
    ]
    if found.whole is None:
        proved += [("Not proved", words) for words in not_proved_words(found.last_copy)]
    title = f"{len(points)} POINTS ARE OPEN" if points else "NOTHING IS OPEN"
    page = (
        heading(title, Weight.ATTEND if points else Weight.PLAIN),
        facts([("Evidence of", found.asked), *(("Open", point) for point in points)]),
        facts(proved),
        listing(("file", "bytes"), [(name, str(size)) for name, size in files.items()], "bytes"),
        note(f"Written to {out}. An aid, no official document."),
    )
    return Answer(document, page, yes=not points)
