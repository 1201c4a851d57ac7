"""The manager's charts: bars, a pareto, a timeline, the empty pan; a pointer reads each value."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, tzinfo

import numpy as np
import pyqtgraph as pg

from station.screens.manager_source import Happening, Pan, Slice
from station.screens.theme import Palette
from station.screens.tongue import say
from station.screens.widgets.chart import Chart, Mark, Strokes, Table

_MOST_SIGNS = 90
"""So many characters stand beside each other under the bars."""
_WEIGHT = 0.05
"""Of the newest reading in the average of the empty pan."""


class BarsChart(Chart):
    """Bars in the order given, with words under as many of them as have room."""

    def __init__(self, palette: Palette) -> None:
        super().__init__(palette, "", "")

    def show_slices(self, slices: Sequence[Slice], words: str, *, together: bool = False) -> None:
        """Draw bars.

        Args:
            slices: in order.
            words: what the values are, with their unit.
            together: also draw the share they come to, one after the other (a pareto).
        """
        self.clear()
        axis = self.view.getAxis("bottom")
        if not slices:
            axis.setTicks(None)
            return
        self.name_axes("", words)
        values = [one.value for one in slices]
        low, high = min(0.0, *values), max(0.0, *values)
        room = 0.1 * ((high - low) or 1.0)
        count = len(slices)
        self.show_range((-0.6, count - 0.4), (low - room * (low < 0), high + room))
        middles = list(range(count))
        self.bars(middles, values, 0.76)
        names = [say(one.name) for one in slices]
        longest = max(map(len, names)) + 2
        every = max(1, -(-count * longest // _MOST_SIGNS))
        axis.setTicks([[(n, names[n]) for n in range(0, count, every)]])
        if together and high > 0:
            whole = sum(values)
            parts = [float(part) / whole * high for part in np.cumsum(values)]
            self.line(middles, parts, Strokes.DASHED, thick=1.4)
            self.points(middles, parts, Mark.DIAMOND, mm=2.0, fill=self.colours.ink)
            self.level(high, "100 % together", Strokes.DOTTED, place=0.98, thick=0.8)
        self.level(0.0, "", thick=0.8)
        self.can_read(middles, values, lambda index: slices[index].words)
        rows = tuple((one.name, f"{one.value:g}", one.words) for one in slices)
        self.table = lambda: Table(("name", words, "in words"), rows)


class TimelineChart(Chart):
    """Checks, lots, stops and holds over time, a row for each kind."""

    def __init__(self, palette: Palette) -> None:
        super().__init__(palette, "time", "", clock=True)

    def show_happenings(self, happenings: Sequence[Happening], zone: tzinfo) -> None:
        """Draw marks: a diamond for a moment, a bar for a span, solid red where it is bad."""
        self.clear()
        self.zone = zone
        axis = self.view.getAxis("left")
        if not happenings:
            axis.setTicks(None)
            return
        rows = list(dict.fromkeys(one.row for one in happenings))
        count = len(rows)
        begin, end = min(one.at for one in happenings), max(one.until for one in happenings)
        wide = max(60.0, end - begin)
        self.show_range((begin - 0.03 * wide, end + 0.03 * wide), (-0.6, count - 0.4))
        axis.setTicks([[(count - 1 - n, say(row)) for n, row in enumerate(rows)]])
        heights = [count - 1 - rows.index(one.row) for one in happenings]
        for level in range(count):
            self.level(float(level), "", Strokes.DOTTED, thick=0.5)
        self._spans([(one, height) for one, height in zip(happenings, heights, strict=True)])
        for bad, mark, fill in ((False, Mark.DIAMOND, self.colours.ink),
                                (True, Mark.SQUARE, self.colours.stop)):  # fmt: skip
            chosen = [
                (one.at, float(height))
                for one, height in zip(happenings, heights, strict=True)
                if one.bad is bad and one.until == one.at
            ]
            if chosen:
                across, up = zip(*chosen, strict=True)
                self.points(across, up, mark, mm=4.4 if bad else 2.4, fill=fill)
        middles = [(one.at + one.until) / 2 for one in happenings]
        self.can_read(middles, heights, lambda index: happenings[index].words)
        table = tuple(
            (
                one.row,
                datetime.fromtimestamp(one.at, zone).isoformat(timespec="seconds"),
                datetime.fromtimestamp(one.until, zone).isoformat(timespec="seconds"),
                "bad" if one.bad else "",
                one.words,
            )
            for one in happenings
        )
        self.table = lambda: Table(("row", "from", "to", "sign", "in words"), table)

    def _spans(self, chosen: Sequence[tuple[Happening, int]]) -> None:
        spans = [(one, height) for one, height in chosen if one.until > one.at]
        if not spans:
            return
        self.view.addItem(
            pg.BarGraphItem(
                x0=[one.at for one, _ in spans],
                x1=[one.until for one, _ in spans],
                y0=[height - 0.22 for _, height in spans],
                y1=[height + 0.22 for _, height in spans],
                brushes=[
                    pg.mkBrush(self.colours.stop if one.bad else self.colours.attend)
                    for one, _ in spans
                ],
                pen=pg.mkPen(self.colours.ink, width=1),
            )
        )


class PanChart(Chart):
    """What the empty pan showed after each bag: a free sensor of the scale's drift."""

    def __init__(self, palette: Palette) -> None:
        super().__init__(palette, "bag of the run", "empty pan")

    def show_pan(self, pan: Pan | None) -> None:
        """Draw readings with their weighted average and the limits of the cycle."""
        self.clear()
        if pan is None or not pan.readings:
            return
        self.name_axes("bag of the run", f"empty pan, {pan.unit}")
        most = max(2.5 * pan.interval, *(abs(one) + pan.interval for one in pan.readings))
        count = len(pan.readings)
        self.show_range((-0.01 * count, 1.08 * count + 1), (-most, most))
        places = [float(n + 1) for n in range(count)]
        self.points(places, pan.readings, fill=self.colours.edge)
        for value, words in ((pan.interval, "wipe"), (2 * pan.interval, "stop")):
            self.level(value, words, Strokes.DASHED, place=0.995, thick=0.8)
            self.level(-value, "", Strokes.DASHED, thick=0.8)
        averages, average = [], 0.0
        for one in pan.readings:
            average += _WEIGHT * (one - average)
            averages.append(average)
        self.line(places, averages, thick=2.0)

        def reading(index: int) -> str:
            shown, mean = pan.readings[index], averages[index]
            return f"before bag {index + 1}: {shown:+g} {pan.unit}, weighted average {mean:+.2f}"

        self.can_read(places, pan.readings, reading)
        rows = tuple(
            (str(n + 1), f"{shown:g}", f"{averages[n]:.4f}") for n, shown in enumerate(pan.readings)
        )
        self.table = lambda: Table(("bag", f"empty_pan_{pan.unit}", "weighted_average"), rows)
