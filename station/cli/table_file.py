"""A list as a file: CSV or XLSX by its name, whole or not at all, and no cell ever a formula."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import UTC, datetime, time
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from station.errors import BadInput

if TYPE_CHECKING:
    from datetime import date
    from decimal import Decimal

    from station.store.purged import GoneRun

Out = Annotated[
    Path | None,
    typer.Option("--out", metavar="FILE", help="Also write it as .csv or .xlsx."),
]


def write_table(
    out: Path | None,
    title: str,
    head: Sequence[str],
    rows: Iterable[Sequence[str | Decimal]],
    day: date,
    *,
    force: bool,
    gone: Sequence[GoneRun] = (),
) -> None:
    """Write a list, where a file is asked for.

    Args:
        out: the file; None for none.
        title: what it is.
        head: names of the columns.
        rows: cells; a Decimal is a number, every text is text.
        day: the day it is about, which a workbook says it was made.
        force: whether a file that is there is written over.
        gone: purged runs that would be in the list.

    Raises:
        BadInput: the file is there already, or of another kind.
        EnvironmentFault: the disk does not serve.
    """
    if out is None:
        return
    from station.reports.files import check_free, write_whole  # slow to load
    from station.reports.traceability_sheet import Sheet, csv_of, xlsx
    from station.store.purged import table_notes

    check_free(out, force=force)
    cells = tuple(tuple(row) for row in rows)
    table = Sheet(title.lower(), tuple(head), cells, table_notes(gone))
    if out.suffix == ".csv":
        write_whole(out, csv_of(table))
    elif out.suffix == ".xlsx":
        write_whole(out, xlsx((table,), datetime.combine(day, time(), UTC), title))
    else:
        raise BadInput(f"--out {out}", "a table is a file that ends in .csv or .xlsx")
