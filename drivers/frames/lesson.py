"""A person teaches the lines of an unknown scale: what to mark, what follows, a verdict. Pure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import partial

from drivers.frames.described import DescribedParser
from drivers.frames.description import Description, Poll
from drivers.frames.proposal import Mark, MarkedLine, propose, split_lines
from drivers.wire import Passed
from drivers.wire_view import WireRow, rows_of

ASK_EVERY_MS = 200
FIELDS = ("value", "unit", "flag", "sign", "check")
"""What a person may mark; there may be several flags."""
_MS = 1_000_000


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a description makes of a stream, line by line.

    Args:
        rows: the stream as the description reads it.
        read: how many lines are weights.
        refused: how much is none.
    """

    rows: tuple[WireRow, ...]
    read: int
    refused: int

    @property
    def words(self) -> str:
        """The verdict in one sentence."""
        if not self.read:
            return "none of what was heard is a weight by this description"
        if self.refused:
            return f"{self.read} lines are weights, {self.refused} are not: look at each of them"
        return f"all {self.read} lines are weights: compare them with what the scale showed"


def lines_of(passed: Sequence[Passed]) -> tuple[WireRow, ...]:
    """Cut what the scale sent into lines, each with its time; the first and last part are left out.

    Args:
        passed: in order; what was sent to the scale counts for nothing.
    """
    heard = [one for one in passed if not one.sent]
    stream = b"".join(one.data for one in heard)
    ends, times = 0, list[tuple[int, int]]()
    for one in heard:
        ends += len(one.data)
        times.append((ends, one.at_ns))
    rows: list[WireRow] = []
    place, chunk = 0, 0
    for line in split_lines(stream):
        place = stream.index(line, place) + len(line)
        while times[chunk][0] < place:
            chunk += 1
        at_ns = times[chunk][1]
        gap = (at_ns - rows[-1].at_ns) // _MS if rows else None
        rows.append(WireRow(at_ns, gap, line, "", good=True))
    return tuple(rows)


def carried(marks: Sequence[Mark], line: bytes, onto: bytes) -> tuple[Mark, ...]:
    """Return the marks of one line where they most likely stand on another.

    What is before the value keeps its place from the left, what is after it from the right.
    """
    longer = len(onto) - len(line)
    value = next((mark for mark in marks if mark.name == "value"), None)
    if not longer or value is None:
        return tuple(marks) if not longer else ()
    moved = [
        Mark(
            mark.name,
            mark.begin + (longer if mark.begin > value.begin else 0),
            mark.end + (longer if mark.begin >= value.begin else 0),
        )
        for mark in marks
    ]
    fits = all(0 <= mark.begin < mark.end <= len(onto) for mark in moved)
    return tuple(moved) if fits else ()


def with_mark(marks: Sequence[Mark], field: str, begin: int, end: int) -> tuple[Mark, ...]:
    """Return the marks with one more; it takes the place of those it touches.

    A second flag gets a name of its own; any other field stands once.
    """
    left = [mark for mark in marks if mark.end <= begin or mark.begin >= end]
    names = {mark.name for mark in left}
    name = field
    if field == "flag":
        name = next(one for n in range(1, 50) if (one := f"flag{n}") not in names)
    else:
        left = [mark for mark in left if mark.name != field]
    return tuple(sorted((*left, Mark(name, begin, end)), key=lambda mark: mark.begin))


def teach(name: str, lines: Sequence[MarkedLine], request: bytes = b"") -> Description:
    """Return a description that reads every line as the person says.

    Args:
        name: what people call the format.
        lines: marked, two or more, with different weights.
        request: what asks the scale for a line; empty for one that sends by itself.

    Raises:
        DescriptionError: no description does; says what to mark or weigh besides.
    """
    proposed = propose(name, lines)
    return replace(proposed, poll=Poll(request, ASK_EVERY_MS)) if request else proposed


def verdict(description: Description, passed: Sequence[Passed]) -> Verdict:
    """Return what a description makes of what passed."""
    heard = [one for one in passed if not one.sent]
    rows = rows_of(heard, partial(DescribedParser, description))
    read = sum(row.good for row in rows)
    return Verdict(rows, read, len(rows) - read)
