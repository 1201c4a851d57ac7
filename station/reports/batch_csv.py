"""A batch record as a table: one row a bag, what judges it in every row, safe to open anywhere."""

from __future__ import annotations

import csv
from collections.abc import Iterator, Sequence
from io import StringIO

from station.core.metrology.exact import plain
from station.core.pack import IN_THE_BATCH
from station.reports.batch import BatchRecord
from station.store.purged import GoneRun, table_notes

COLUMNS = (
    "site", "station", "run", "production_day", "product", "version", "rule_set", "rules_version",
    "unit", "nominal", "T1", "T2", "blend_lot", "use_by", "serial", "at", "gross", "net",
    "below_T1", "below_T2", "in_batch", "quality", "reason",
)  # fmt: skip
_STARTS_A_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def batch_csv(records: Sequence[BatchRecord], gone: Sequence[GoneRun] = ()) -> bytes:
    """Return every bag of the records as CSV in UTF-8 (RFC 4180), a head line first.

    Args:
        records: of the runs.
        gone: purged runs of the same day.
    """
    text = StringIO()
    writer = csv.writer(text)
    writer.writerow(COLUMNS)
    for record in records:
        writer.writerows(_rows(record))
    writer.writerows(note_rows(table_notes(gone), len(COLUMNS)))
    return text.getvalue().encode()


def note_rows(notes: Sequence[str], columns: int) -> Iterator[list[str]]:
    """Rows under a table that say what is not in it; each has as many cells as all others."""
    return ([safe(words), *[""] * (columns - 1)] for words in notes)


def safe(text: str) -> str:
    """A text that no spreadsheet takes for a formula: an apostrophe goes before its first sign."""
    return f"'{text}" if text.startswith(_STARTS_A_FORMULA) else text


def _rows(record: BatchRecord) -> Iterator[list[str]]:
    run, limits = record.run, record.figures.limits
    unit = limits.nominal.unit
    frame = [
        safe(record.evidence.site),
        safe(record.evidence.station),
        run.id,
        run.dating.production_day.isoformat(),
        safe(run.product.code),
        str(run.product.version),
        limits.rule_set,
        safe(limits.version),
        str(unit),
        *(plain(one.amount) for one in (limits.nominal, limits.t1, limits.t2)),
    ]
    use_by = {blend.code: blend.use_by.isoformat() for blend in record.blends}
    for bag in record.bags:
        net = bag.net.in_unit(unit)
        yield [
            *frame,
            safe(bag.blend),
            use_by.get(bag.blend, ""),
            safe(bag.serial),
            bag.at.isoformat(),
            bag.gross.in_unit(unit).digits,
            net.digits,
            str(int(net < limits.t1)),
            str(int(net < limits.t2)),
            str(int(bag.quality in IN_THE_BATCH)),
            str(bag.quality),
            safe(bag.reason),
        ]
