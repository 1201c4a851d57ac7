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

_WIDE = 79
"""What stands on a line, where nobody says how wide a line is."""


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
        rows: cells as text; one may have several lines, as its column's name.
        right: names of columns of figures, blanks between the names.
        wraps: names of columns of words that may break into lines, between words where there is
            room for the longest; the others never do.
    """
    told = list(rows)
    table = Table(
        box=box.SIMPLE_HEAD,
        show_edge=False,
        pad_edge=False,
        padding=(0, 1, 0, 0),
        header_style="dim",
    )
    heads = [name.replace("_", " ") for name in columns]
    broken = [name in wraps.split() for name in columns]
    widths = _least(heads, told, broken)
    for name, head, wrap, least in zip(columns, heads, broken, widths, strict=True):
        table.add_column(
            head,
            justify="right" if name in right.split() else "left",
            no_wrap=not wrap,
            overflow="fold",
            min_width=least,
        )
    for row in told:
        table.add_row(*(Text(cell) for cell in row))
    return Padding(table, (1, 0, 0, 1))


def _least(
    heads: Sequence[str], rows: Sequence[Sequence[str]], broken: Sequence[bool]
) -> list[int | None]:
    """Room for the longest word of each column of words, as far as the others leave it."""
    cells = list(zip(heads, *rows, strict=True))
    free = (
        _WIDE
        - 2 * len(heads)
        - sum(
            max(len(line) for cell in column for line in (*cell.splitlines(), ""))
            for column, wrap in zip(cells, broken, strict=True)
            if not wrap
        )
    )
    most = free // max(1, sum(broken))
    longest = [
        max(len(word) for cell in column for word in (*cell.split(), "")) for column in cells
    ]
    return [
        min(most, word) if wrap and most > 0 else None
        for word, wrap in zip(longest, broken, strict=True)
    ]


def note(words: str) -> Padding:
    """A remark under the answer."""
    return Padding(Text(words, style="dim italic"), (1, 0, 0, 1))


def clock_time(at: datetime) -> str:
    """Time of day with seconds, in the plant's time."""
    return f"{at:%H:%M:%S}"


def day(at: date | None) -> str:
    """A day with its weekday, or a dash."""
    return f"{at:%Y-%m-%d %a}" if at is not None else "–"
