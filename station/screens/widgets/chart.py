"""A chart in the station's type: lines, points, bars and levels; a pointer reads its values.

Each line differs by its strokes and each mark by its shape; colour carries nothing alone.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, timezone, tzinfo
from enum import Enum
from typing import Any

import numpy as np
import pyqtgraph as pg
from pyqtgraph.GraphicsScene.mouseEvents import MouseClickEvent
from PySide6.QtCore import QPointF, QRectF, Qt, Signal, Slot
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QVBoxLayout, QWidget

from station.screens.theme import Face, Palette, Ruler, font_of
from station.screens.tongue import say
from station.screens.widgets.painted import stroke

pg.setConfigOptions(mouseRateLimit=-1)  # the last place of a pointer counts, not one before it

_AXIS_MM = 2.7
_LABEL_MM = 2.7
_LINE_MM = 0.32
_LINE_POINTS = 600
_DAY_S = 86400.0
_REACH_MM = 25.0
"""A pointer farther than this from every value reads none."""


class Strokes(Enum):
    """How a line is drawn: its dashes in widths of the line, none for a whole one."""

    WHOLE = ()
    DASHED = (6.0, 4.0)
    DOTTED = (1.5, 2.5)
    CHAIN = (8.0, 3.0, 1.5, 3.0)


class Mark(Enum):
    """The shape of a point, by the plot library's name."""

    DOT = "o"
    SQUARE = "s"
    DIAMOND = "d"


@dataclass(frozen=True, slots=True)
class Table:
    """The values of a chart.

    Args:
        columns: names with units.
        rows: one a value, as text.
    """

    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...] = ()


class Chart(QWidget):
    """Draws what it is given; nothing in it can be dragged or zoomed by a wet hand.

    Args:
        palette: colours.
        across: name of the horizontal axis, with its unit.
        up: name of the vertical axis, with its unit.
        clock: the horizontal axis is time, in seconds since 1970.

    Signals:
        read: str, the value under the pointer; empty beside all values.
    """

    read = Signal(str)

    def __init__(
        self,
        palette: Palette,
        across: str,
        up: str,
        *,
        clock: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.colours = palette
        self.table: Callable[[], Table] = _no_table
        """Makes the table of the values shown."""
        self.reading: Callable[[int], str] = _no_words
        """Says a value in words, by its place in the order of the values."""
        self._spots = np.empty((0, 2))
        self._px = Ruler.of(self.screen()).px
        self.zone: tzinfo = timezone(timedelta())
        axes = {"bottom": _clock_axis(lambda: self.zone)} if clock else {}
        self.view: Any = pg.PlotWidget(background=palette.paper, axisItems=axes)
        self.view.setFrameShape(self.view.Shape.NoFrame)
        self.view.setMenuEnabled(False)
        self.view.hideButtons()
        self.view.setMouseEnabled(x=False, y=False)
        self.view.setAntialiasing(True)
        self.view.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._dress(across, up)
        self.clear()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.view)
        self.view.scene().sigMouseMoved.connect(self.point_at)
        self.view.scene().sigMouseClicked.connect(self._clicked)

    def _dress(self, across: str, up: str) -> None:
        font = font_of(Face.NARROW, self._px(_AXIS_MM))
        for side in ("bottom", "left"):
            axis = self.view.getAxis(side)
            axis.setStyle(tickFont=font, tickTextOffset=round(self._px(1)))
            axis.setPen(stroke(self.colours.edge, self._px(0.2)))
            axis.setTextPen(self.colours.ink)
            axis.enableAutoSIPrefix(enable=False)
            axis.label.setFont(font)
            axis.label.setDefaultTextColor(QColor(self.colours.ink))
        self.name_axes(across, up)

    def name_axes(self, across: str, up: str) -> None:
        """Name the axes."""
        for side, words in (("bottom", across), ("left", up)):
            self.view.getAxis(side).setLabel(say(words))

    # --- drawing ------------------------------------------------------------------------------

    def clear(self) -> None:
        """Take everything off, the axes too: without values they would measure nothing."""
        self.view.clear()
        self.view.getPlotItem().setVisible(False)
        self.table, self.reading, self._spots = _no_table, _no_words, np.empty((0, 2))
        self.read.emit("")

    def show_range(self, across: tuple[float, float], up: tuple[float, float]) -> None:
        """Show this part of the plane, with its axes."""
        self.view.getPlotItem().setVisible(True)
        self.view.setRange(xRange=across, yRange=up, padding=0.0, disableAutoRange=True)

    def line(
        self,
        across: Sequence[float],
        up: Sequence[float],
        strokes: Strokes = Strokes.WHOLE,
        thick: float = 1.0,
    ) -> None:
        """Draw a line; ``thick`` times the usual width. What no pixel would show is left out."""
        step = max(1, len(across) // _LINE_POINTS)
        places = np.unique(np.append(np.arange(0, len(across), step), len(across) - 1))
        pen = self._pen(strokes, thick)
        self.view.plot(np.asarray(across)[places], np.asarray(up)[places], pen=pen)

    def points(
        self,
        across: Sequence[float],
        up: Sequence[float],
        mark: Mark = Mark.DOT,
        *,
        mm: float = 0.9,
        fill: str = "",
        edge: str = "",
    ) -> None:
        """Draw points; without an edge they are their fill alone."""
        brush = pg.mkBrush(fill) if fill else pg.mkBrush(None)
        pen = pg.mkPen(edge, width=self._px(0.5)) if edge else pg.mkPen(None)
        self.view.addItem(
            pg.ScatterPlotItem(
                x=np.asarray(across),
                y=np.asarray(up),
                symbol=mark.value,
                size=self._px(mm),
                brush=brush,
                pen=pen,
            )
        )

    def bars(self, middles: Sequence[float], heights: Sequence[float], width: float) -> None:
        """Draw upright bars."""
        self.view.addItem(
            pg.BarGraphItem(
                x=np.asarray(middles),
                height=np.asarray(heights),
                width=width,
                brush=self.colours.bar,
                pen=pg.mkPen(self.colours.ink, width=self._px(0.2)),
            )
        )

    def level(
        self,
        value: float,
        words: str,
        strokes: Strokes = Strokes.WHOLE,
        *,
        upright: bool = False,
        place: float = 0.98,
        thick: float = 1.0,
    ) -> None:
        """Draw a line across the chart, or an upright one, with its name beside it.

        Args:
            value: where.
            words: its name; may be empty.
            strokes: how it is drawn.
            upright: it stands on the horizontal axis.
            place: where the name stands along it, from 0 to 1.
            thick: times the usual width.
        """
        item = pg.InfiniteLine(pos=value, angle=90 if upright else 0, pen=self._pen(strokes, thick))
        self.view.addItem(item)
        if not words:
            return
        side = (0.0, 0.5) if upright else (float(place > 0.5), 1.0)
        label = pg.InfLineLabel(
            item, say(words), position=place, anchors=[side, side], color=self.colours.ink,
            fill=pg.mkBrush(self.colours.paper) if upright else None,
        )  # fmt: skip
        label.textItem.setFont(font_of(Face.NARROW, self._px(_LABEL_MM)))
        label.updateTextPos()

    def name_point(self, across: float, up: float, words: str, anchor: tuple[float, float]) -> None:
        """Write words beside a point; the anchor is the part of the words that touches it."""
        text = pg.TextItem(say(words), color=self.colours.ink, anchor=anchor)
        text.setFont(font_of(Face.NARROW, self._px(_LABEL_MM)))
        self.view.addItem(text)
        text.setPos(across, up)

    def _pen(self, strokes: Strokes, thick: float) -> QPen:
        pen = stroke(self.colours.ink, self._px(_LINE_MM) * thick)
        pen.setCosmetic(True)  # its width is of the screen, not of the axes
        if strokes.value:
            pen.setDashPattern(list(strokes.value))
        return pen

    # --- reading ------------------------------------------------------------------------------

    def can_read(
        self, across: Sequence[float], up: Sequence[float], reading: Callable[[int], str]
    ) -> None:
        """Let a pointer near one of these values read it in words."""
        self._spots = np.column_stack((np.asarray(across, float), np.asarray(up, float)))
        self.reading = reading

    @property
    def count(self) -> int:
        """How many values a pointer may read."""
        return len(self._spots)

    def place_of(self, index: int) -> QPointF:
        """Where the value of a reading lies, in pixels of the chart's view."""
        across, up = self._spots[index]
        scene = self.view.getViewBox().mapViewToScene(QPointF(float(across), float(up)))
        return QPointF(self.view.mapFromScene(scene))

    @Slot(object)
    def point_at(self, scene: QPointF) -> None:
        """Read the value nearest to a place of the scene."""
        box = self.view.getViewBox()
        if not len(self._spots) or not box.sceneBoundingRect().contains(scene):
            self.read.emit("")
            return
        here = box.mapSceneToView(scene)
        pixel_across, pixel_up = box.viewPixelSize()
        away = np.hypot(
            (self._spots[:, 0] - here.x()) / pixel_across, (self._spots[:, 1] - here.y()) / pixel_up
        )
        nearest = int(np.argmin(away))
        near = float(away[nearest]) <= self._px(_REACH_MM)
        self.read.emit(self.reading(nearest) if near else "")

    @Slot(object)
    def _clicked(self, click: MouseClickEvent) -> None:
        self.point_at(click.scenePos())

    def paint_on(self, painter: QPainter, box: QRectF) -> None:
        """Paint the chart on another device, into ``box``."""
        self.view.render(painter, box, self.view.viewport().rect())


def _no_table() -> Table:
    return Table(())


def _no_words(_: int) -> str:
    return ""


def _clock_axis(zone: Callable[[], tzinfo]) -> pg.AxisItem:
    """An axis whose values are seconds since 1970 and whose words are the plant's wall clock."""
    axis = pg.AxisItem("bottom")

    def words(values: Sequence[float], scale: float, spacing: float) -> list[str]:
        form = "%H:%M:%S" if spacing < 60 else "%H:%M" if spacing < _DAY_S else "%a %d"
        return [say(format(datetime.fromtimestamp(value, zone()), form)) for value in values]

    def spacing(least: float, most: float, size: float) -> list[tuple[float, float]]:
        wide = max(most - least, 1.0)
        steps = (10, 30, 60, 300, 600, 900, 1800, 3600, 7200, 14400, 28800, 86400)
        fits = [step for step in steps if wide / step <= max(2.0, size / 70)]
        return [(float(fits[0] if fits else 86400), 0.0)]

    axis.tickStrings, axis.tickSpacing = words, spacing
    return axis
