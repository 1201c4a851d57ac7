"""Parts of a page as people read it: a heading, facts in two columns, lists as tables.

Colour only means attend or stop; everything it says is said in words too.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date, datetime
from enum import StrEnum

from rich import box
from rich.padding import Padding
from rich.table import Table
from rich.text import Text


class Weight(StrEnum):
    """How much a line asks of the reader."""

    PLAIN = "bold"
    ATTEND = "bold yellow"
    STOP = "bold red"


def heading(words: str, weight: Weight = Weight.PLAIN) -> Padding:
    """One line that says the answer."""
    return Padding(Text(words, style=str(weight)), (1, 0, 0, 1))


def facts(rows: Iterable[tuple[str, str]]) -> Padding:
    """Name and value, a pair a line; long values wrap in their own column."""
    grid = Table.grid(padding=(0, 3))
    grid.add_column(style="dim", no_wrap=True)
    grid.add_column(overflow="fold")
    for name, value in rows:
        grid.add_row(name, Text(value))
    return Padding(grid, (1, 0, 0, 1))


def listing(
    columns: Sequence[str], rows: Iterable[Sequence[str]], right: str = "", wraps: str = ""
) -> Padding:
    """A table.

    Args:
        columns: names at the head, blanks written as underscores.
        rows: cells as text.
        right: names of columns of figures, blanks between the names.
        wraps: names of columns of words that may break into lines; the others never do.
    """
    table = Table(
        box=box.SIMPLE_HEAD,
        show_edge=False,
        pad_edge=False,
        padding=(0, 1, 0, 0),
        header_style="dim",
    )
    for name in columns:
        table.add_column(
            name.replace("_", " "),
            justify="right" if name in right.split() else "left",
            no_wrap=name not in wraps.split(),
            overflow="fold",
        )
    for row in rows:
        table.add_row(*(Text(cell) for cell in row))
    return Padding(table, (1, 0, 0, 1))


def note(words: str) -> Padding:
    """A remark under the answer."""
    return Padding(Text(words, style="dim italic"), (1, 0, 0, 1))


def clock_time(at: datetime) -> str:
    """Time of day with seconds, in the plant's time."""
    return f"{at:%H:%M:%S}"


def day(at: date | None) -> str:
    """A day with its weekday, or a dash."""
    return f"{at:%Y-%m-%d %a}" if at is not None else "–"
