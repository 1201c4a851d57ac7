"""The checks of the scale on record, for ``station scale-check`` without a load."""

from __future__ import annotations

from datetime import timedelta, timezone
from pathlib import Path
from typing import TYPE_CHECKING

from station.cli.answer import Answer, Json, digits
from station.cli.page import Weight, heading, listing
from station.core.checks.scale import check_of, held_true
from station.core.journal import EntryKind

if TYPE_CHECKING:
    from station.core.facts import FactRecord

_MOST = 100
_COLUMNS = ("time", "why", "stage", "load", "error", "may_be", "result", "who")


def recorded_checks(home: Path) -> Answer:
    """Answer with the newest checks, oldest first; no when the last one failed.

    Args:
        home: folder of the record.
    """
    from station.store.facts import facts  # slow to load

    found = facts(home, (EntryKind.SCALE_CHECK,), newest=_MOST)
    failed = bool(found) and not held_true(check_of(found[-1]))
    words = "No check of the scale is on record"
    if found:
        words = "THE LAST CHECK FAILED" if failed else "The last check held"
    rows = [row for one in found for row in _rows(one)]
    page = (
        heading(words, Weight.STOP if failed else Weight.PLAIN),
        listing(_COLUMNS, rows, "load error may_be"),
    )
    return Answer({"checks": [_document(one) for one in found]}, page, yes=not failed)


def _document(record: FactRecord) -> dict[str, Json]:
    made = check_of(record)
    return {
        "uid": record.fact.uid,
        "at": _local(record),
        "who": record.who,
        "run": record.fact.run,
        "scale": made.scale,
        "trigger": str(made.trigger),
        "stage": str(made.check.stage),
        "certificate": made.certificate,
        "verdict": str(made.check.result),
        "unit": str(made.plate.interval.unit),
        "loads": [
            {
                "load": load.mass.digits,
                "weights": [one.digits for one in load.reading.weights.nominals],
                "shown": load.reading.indication.digits,
                "added": digits(load.reading.added),
                "error": load.error.digits,
                "warn_limit": load.warn_beyond.digits,
                "limit": load.fail_beyond.digits,
                "verdict": str(load.result),
            }
            for load in made.check.loads
        ],
    }


def _rows(record: FactRecord) -> list[tuple[str, ...]]:
    made = check_of(record)
    day, clock = _local(record)[:19].split("T")
    said = (f"{day[5:]} {clock}", str(made.trigger), str(made.check.stage))
    return [
        (
            *(said if number == 0 else ("",) * len(said)),
            str(load.mass),
            str(load.error),
            str(load.fail_beyond),
            str(load.result),
            record.who if number == 0 else "",
        )
        for number, load in enumerate(made.check.loads)
    ]


def _local(record: FactRecord) -> str:
    zone = timezone(timedelta(minutes=record.at.offset_minutes))
    return record.at.utc.astimezone(zone).isoformat(timespec="seconds")
