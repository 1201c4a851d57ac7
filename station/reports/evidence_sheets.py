"""An evidence pack as tables, one file each, and the list of all its files with their digests."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from decimal import Decimal

from station.core.checks.scale import check_of
from station.core.journal import EntryKind
from station.reports.batch_csv import batch_csv
from station.reports.evidence import Evidence, rejects_undecided
from station.reports.traceability_sheet import Cell, Sheet, csv_of, sheets

_ENTRIES = ("run", "entry", "at_utc", "local", "kind", "about", "result", "who", "uid", "details")
_CHECKS = ("run", "entry", "at_utc", "trigger", "stage", "load", "weights", "shown", "error",
           "warns_beyond", "fails_beyond", "result", "who")  # fmt: skip
_ROLLS = ("run", "roll", "issued", "used", "spoiled", "samples", "returned", "difference",
          "explanation")  # fmt: skip
_REJECTS = ("run", "serial", "at", "net", "unit", "quality", "reason", "disposition_missing")
_STOPS = ("run", "reason", "began_utc", "ended_utc", "seconds")
_RESIDUES = ("run", "at_utc", "reading", "unit")


def evidence_files(found: Evidence, pdf: bytes) -> dict[str, bytes]:
    """Return every file of a pack by its name; the last one lists the others.

    Args:
        found: what was gathered.
        pdf: its pages.
    """
    place = f"{found.trace.site} {found.trace.station}"
    tables = (
        *sheets(found.trace, place),
        Sheet("entries", _ENTRIES, _entries(found)),
        Sheet("scale-checks", _CHECKS, _checks(found)),
        Sheet("rolls", _ROLLS, _rolls(found)),
        Sheet("rejects", _REJECTS, _rejects(found)),
        Sheet("stops", _STOPS, _stops(found)),
        Sheet("empty-pan", _RESIDUES, _residues(found)),
    )
    files = {"evidence.pdf": pdf, "bags.csv": batch_csv([run.record for run in found.runs])}
    files |= {f"{table.name}.csv": csv_of(table) for table in tables}
    files |= {
        one.file: (json.dumps(dict(one.document), ensure_ascii=False, indent=2) + "\n").encode()
        for run in found.runs
        for one in run.proofs
        if one.file
    }
    return {**files, "files.csv": csv_of(_index(files))}


def _index(files: Mapping[str, bytes]) -> Sheet:
    rows = tuple(
        (name, Decimal(len(content)), hashlib.sha256(content).hexdigest())
        for name, content in files.items()
    )
    return Sheet("files", ("file", "bytes", "sha256"), rows)


def _entries(found: Evidence) -> tuple[tuple[Cell, ...], ...]:
    return tuple(
        (
            run.record.run.id,
            Decimal(one.seq),
            one.at.utc.isoformat(),
            one.at.utc.astimezone(found.zone).isoformat(),
            str(one.fact.kind),
            one.fact.subject,
            one.fact.result,
            one.who,
            one.fact.uid,
            json.dumps(dict(one.fact.details), ensure_ascii=False, sort_keys=True),
        )
        for run in found.runs
        for one in run.entered
    )


def _checks(found: Evidence) -> tuple[tuple[Cell, ...], ...]:
    return tuple(
        (
            run.record.run.id,
            Decimal(one.seq),
            one.at.utc.isoformat(),
            str(made.trigger),
            str(made.check.stage),
            str(load.mass),
            ", ".join(map(str, load.reading.weights.nominals)),
            str(load.reading.indication),
            str(load.error),
            str(load.warn_beyond),
            str(load.fail_beyond),
            str(load.result),
            one.who,
        )
        for run in found.runs
        for one in run.of(EntryKind.SCALE_CHECK)
        for made in (check_of(one),)
        for load in made.check.loads
    )


def _rolls(found: Evidence) -> tuple[tuple[Cell, ...], ...]:
    rows = []
    for run in found.runs:
        for one in run.rolls:
            count, difference = one.count, one.difference
            counted: tuple[Cell, ...] = ("", "", "")
            if count is not None:
                counted = tuple(map(Decimal, (count.spoiled, count.samples, count.returned)))
            left: Cell = "" if difference is None else Decimal(difference)
            rows.append(
                (run.record.run.id, one.roll, Decimal(one.issued), Decimal(one.used), *counted,
                 left, one.explanation)
            )  # fmt: skip
    return tuple(rows)


def _rejects(found: Evidence) -> tuple[tuple[Cell, ...], ...]:
    rows: list[tuple[Cell, ...]] = []
    for run in found.runs:
        undecided = set(rejects_undecided(run))
        rows += [
            (
                run.record.run.id,
                bag.serial,
                bag.at.isoformat(),
                bag.net.digits,
                str(bag.net.unit),
                str(bag.quality),
                bag.reason,
                "yes" if bag.serial in undecided else "no",
            )
            for bag in run.record.left
        ]
    return tuple(rows)


def _stops(found: Evidence) -> tuple[tuple[Cell, ...], ...]:
    return tuple(
        (
            run.record.run.id,
            str(stop.reason),
            stop.began.isoformat(),
            "" if stop.ended is None else stop.ended.isoformat(),
            "" if stop.ended is None else Decimal(int(stop.took(stop.ended).total_seconds())),
        )
        for run in found.runs
        for stop in run.stops
    )


def _residues(found: Evidence) -> tuple[tuple[Cell, ...], ...]:
    return tuple(
        (
            run.record.run.id,
            one.at.isoformat(),
            one.reading.digits,
            str(one.reading.unit),
        )
        for run in found.runs
        for one in run.residues
    )
