"""Charts of a day, a week or a run on paper: giveaway over hours, pareto, timeline, empty pan."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from reportlab.graphics.shapes import Drawing

from station.reports.paper import ACT, ATTEND, EDGE, INK, MUTED, STOP
from station.reports.plot import Level, Plot

_MOST_NAMES = 7
_NAME_SIGNS = 18
_MOST_TICKS = 9
_DASHED = (4.0, 2.5)


def pareto_chart(rows: Sequence[tuple[str, float]], words: str) -> Drawing:
    """Bars from the greatest to the least, with the share they come to together.

    Args:
        rows: name and value, at least one; the greatest first.
        words: what the values are, with their unit.
    """
    shown = list(rows[:_MOST_NAMES])
    rest = sum(value for _, value in rows[_MOST_NAMES:])
    if rest:
        shown.append(("all others", rest))
    whole = sum(value for _, value in shown) or 1.0
    most = max(value for _, value in shown) or 1.0
    plot = Plot((0.0, float(len(shown))), (0.0, 1.12 * most), ("", words), height_mm=50)
    plot.ticks(
        across=[(n + 0.5, name[:_NAME_SIGNS]) for n, (name, _) in enumerate(shown)],
    )
    together, xs, ys = 0.0, [], []
    for n, (_, value) in enumerate(shown):
        plot.bar(n + 0.15, n + 0.85, value, EDGE)
        together += value
        xs.append(n + 0.85)
        ys.append(together / whole * most)
    plot.line(xs, ys, ACT, 1.4)
    plot.dots(xs, ys, ACT, 3.0)
    plot.level(Level(most, "100 % together", MUTED, _DASHED))
    return plot.finished()


def bars_chart(rows: Sequence[tuple[str, float]], words: str, names: str = "") -> Drawing:
    """Bars in the order given, below zero where values are.

    Args:
        rows: name and value, at least one.
        words: what the values are, with their unit.
        names: what the names are.
    """
    values = [value for _, value in rows]
    low, high = min(0.0, *values), max(0.0, *values)
    room = 0.08 * ((high - low) or 1.0)
    plot = Plot(
        (0.0, float(len(rows))),
        (low - room * (low < 0), high + room),
        (names, words),
        height_mm=50,
    )
    every = max(1, -(-len(rows) // _MOST_TICKS))
    plot.ticks(
        across=[(n + 0.5, name[:_NAME_SIGNS]) for n, (name, _) in enumerate(rows) if n % every == 0]
    )
    for n, (_, value) in enumerate(rows):
        plot.block((n + 0.12, n + 0.88), (min(0.0, value), max(0.0, value)), EDGE)
    plot.level(Level(0.0, "", INK, None, 0.8))
    return plot.finished()


@dataclass(frozen=True, slots=True)
class Mark:
    """One thing on a timeline.

    Args:
        row: name of its row.
        at: when, or when it began.
        until: when it ended; None for a moment.
        bad: it failed, stands open, or is no good sign.
        words: what it is about and how it came out.
    """

    row: str
    at: datetime
    until: datetime | None = None
    bad: bool = False
    words: str = ""


def timeline_chart(marks: Sequence[Mark], begin: datetime, end: datetime) -> Drawing:
    """Checks, stops, windows and lots over time, a row for each kind.

    Args:
        marks: at least one; rows stand in the order they come first, from the top.
        begin: left edge, in the plant's time.
        end: right edge.
    """
    rows = list(dict.fromkeys(mark.row for mark in marks))
    hours = max((end - begin).total_seconds() / 3600, 0.01)
    count = len(rows)
    plot = Plot((0.0, hours), (0.0, float(count)), ("", ""), height_mm=24 + 6.5 * count)
    names = [(count - n - 0.5, name[:14]) for n, name in enumerate(rows)]
    plot.ticks(across=_clock_ticks(begin, hours), up=names)
    for mark in marks:
        level = count - rows.index(mark.row) - 1
        x = (mark.at - begin).total_seconds() / 3600
        colour = STOP if mark.bad else INK
        if mark.until is None:
            half = hours / 400
            plot.block((x - half, x + half), (level + 0.2, level + 0.8), colour)
        else:
            to = (mark.until - begin).total_seconds() / 3600
            plot.block((x, to), (level + 0.28, level + 0.72), STOP if mark.bad else ATTEND)
    return plot.finished()


def residue_chart(readings: Sequence[float], unit: str, interval: float) -> Drawing:
    """What the empty pan showed after each bag; a free sensor of the scale's drift.

    Args:
        readings: in order, at least one.
        unit: of the readings.
        interval: the scale interval.
    """
    most = max(2.5 * interval, *(abs(one) + interval for one in readings))
    count = len(readings)
    plot = Plot((0.0, float(count + 1)), (-most, most), ("bag", f"empty pan, {unit}"), height_mm=40)
    plot.ticks()
    every = max(1, count // 1500)
    order = range(0, count, every)
    plot.dots([n + 1 for n in order], [readings[n] for n in order], EDGE, 2.0)
    for value, words in ((interval, "wipe"), (2 * interval, "stop")):
        for sign in (1, -1):
            plot.level(Level(sign * value, words if sign > 0 else "", MUTED, _DASHED))
    averages, so_far = [], 0.0
    for reading in readings:
        so_far += 0.05 * (reading - so_far)
        averages.append(so_far)
    plot.line([float(n + 1) for n in order], [averages[n] for n in order], ACT, 1.4)
    return plot.finished()


def _clock_ticks(begin: datetime, hours: float) -> list[tuple[float, str]]:
    """Full hours, or every few of them, with the time of day."""
    every = next(step for step in (1, 2, 3, 6, 12, 24, 24 * 7) if hours / step <= 10)
    first = begin.replace(minute=0, second=0, microsecond=0)
    ticks = []
    for hour in range(0, int(hours) + 2, every):
        at = (first - begin).total_seconds() / 3600 + hour
        if 0 <= at <= hours:
            clock = (begin.hour + hour) % 24
            ticks.append((at, f"{clock:02d}:00"))
    return ticks
