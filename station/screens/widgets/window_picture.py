"""A suspect window as a picture: the bags over time under both bounds of the scale's error."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPolygonF
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.line.suspected import Suspected
from station.screens.theme import Face, Palette
from station.screens.tongue import say
from station.screens.widgets.lettering import draw, draw_right, fit
from station.screens.widgets.painted import Painted, stroke

_TEXT_MM = 4.0


@dataclass(frozen=True, slots=True)
class WindowView:
    """What is drawn; places are shares of the window's time, 0 at the good check.

    Args:
        bags: where each bag was weighed.
        step: where a dated step lies, or None.
        error: the scale's error near the nominal load, with sign and unit.
        high: the scale read too high.
        opened, closed: the two checks on the clock.
    """

    bags: tuple[float, ...] = ()
    step: float | None = None
    error: str = ""
    high: bool = True
    opened: str = ""
    closed: str = ""


def window_view(suspected: Suspected, zone: tzinfo) -> WindowView:
    """What a window looks like, in the plant's time; floats, for a picture only."""
    window = suspected.window
    whole = (window.closed - window.opened).total_seconds()
    worst = max(suspected.made.check.loads, key=lambda load: abs(load.error))
    packs = (pack for run in suspected.runs for pack in run.packs)
    step = window.step
    return WindowView(
        bags=tuple((pack.at - window.opened).total_seconds() / whole for pack in packs),
        step=None if step is None else (step.last_before - window.opened).total_seconds() / whole,
        error=f"{'+' if worst.error.amount > 0 else ''}{worst.error}",
        high=worst.error.amount >= 0,
        opened=f"{window.opened.astimezone(zone):%H:%M} held",
        closed=f"{window.closed.astimezone(zone):%H:%M} failed",
    )


class WindowPicture(Painted[WindowView]):
    """Between the lines lies what the error may have been; the ticks below are the bags."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, WindowView(), parent)

    @override
    def set(self, view: WindowView) -> None:
        super().set(view)
        self.setAccessibleName(
            f"error up to {view.error}, {view.opened}, {view.closed}, {len(view.bags)} bags"
        )

    @override
    def paint(self, painter: QPainter) -> None:
        view, unit, colours = self.view, self.unit, self.colours
        if not view.error:
            return
        cap = _TEXT_MM * unit
        box = QRectF(self.rect()).adjusted(2 * unit, 3 * cap, -2 * unit, -(2 * cap + 8 * unit))
        zero, top = (box.bottom(), box.top()) if view.high else (box.top(), box.bottom())
        start, end = QPointF(box.left(), zero), QPointF(box.right(), top)
        corner = QPointF(box.left(), top)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(QColor(colours.stop), Qt.BrushStyle.BDiagPattern))
        painter.drawPolygon(QPolygonF([start, corner, end]))
        painter.setPen(stroke(colours.ink, 0.4 * unit))
        painter.drawLine(start, QPointF(box.right(), zero))
        painter.setPen(stroke(colours.stop, 0.9 * unit))
        painter.drawPolyline(QPolygonF([start, corner, end]))
        dashed = stroke(colours.stop, 0.9 * unit)
        dashed.setDashPattern([4.0, 3.0])
        painter.setPen(dashed)
        painter.drawLine(start, end)
        if view.step is not None:
            x = box.left() + box.width() * view.step
            painter.setPen(stroke(colours.act, 1.2 * unit))
            painter.drawPolyline(QPolygonF([start, QPointF(x, zero), QPointF(x, top), end]))
        self._ticks(painter, box)
        self._words(painter, box, cap)

    def _ticks(self, painter: QPainter, box: QRectF) -> None:
        painter.setPen(stroke(self.colours.ink, max(1.0, 0.2 * self.unit)))
        low = box.bottom() + 2 * self.unit
        for share in self.view.bags:
            x = box.left() + box.width() * share
            painter.drawLine(QPointF(x, low), QPointF(x, low + 5 * self.unit))

    def _words(self, painter: QPainter, box: QRectF, cap: float) -> None:
        view, ink = self.view, self.colours.ink
        half = box.width() / 2
        low = self.height() - cap * 1.3
        draw(painter, fit(say(view.opened), Face.NARROW, cap, half), box.left(), low, ink)
        draw_right(painter, fit(say(view.closed), Face.NARROW, cap, half), box.right(), low, ink)
        said = f"solid: {view.error} from the first bag on, dashed: growing"
        if view.step is not None:
            said += ", step: as dated"
        draw(painter, fit(say(said), Face.NARROW, cap, box.width()), box.left(), cap * 0.5, ink)
