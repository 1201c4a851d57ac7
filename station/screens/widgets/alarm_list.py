"""The alarms that stand, one below the other; each priority has a shape of its own."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.core.alarms import Priority
from station.screens.theme import Face, Palette, Ruler
from station.screens.tongue import say
from station.screens.widgets.lettering import draw, draw_right, fit
from station.screens.widgets.painted import Painted, barred_frame, hatch, stroke

ROW_MM = 30.0
_EDGE_MM = 7.0


@dataclass(frozen=True, slots=True)
class AlarmRow:
    """One alarm as it is shown.

    Args:
        uid: of the alarm.
        priority: rules its shape.
        name: what it is.
        words: what exactly.
        answer: what to do.
        state: since when, seen by whom, put off until when.
        quiet: somebody has seen it, or it is put off.
    """

    uid: str
    priority: Priority
    name: str
    words: str
    answer: str
    state: str
    quiet: bool


@dataclass(frozen=True, slots=True)
class AlarmsView:
    """What the list shows: rows and which of them is chosen; words where there is none."""

    rows: tuple[AlarmRow, ...] = ()
    chosen: str = ""
    none: str = ""


class AlarmList(Painted[AlarmsView]):
    """High stands in a frame of bars, medium has a hatched edge, low is a plain plate.

    Signals:
        touched: str, uid of the alarm.
    """

    touched = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.boxes: tuple[QRectF, ...] = ()
        super().__init__(palette, AlarmsView(), parent)

    @override
    def set(self, view: AlarmsView) -> None:
        super().set(view)
        said = (f"{row.priority.name.lower()}: {row.name}, {row.state}" for row in view.rows)
        self.setAccessibleName("; ".join(said) or view.none)

    @override
    def arrange(self) -> None:
        ruler = Ruler.of(self.screen())
        tall, gap = ruler.touch(ROW_MM), ruler.touch(6)
        room = self.height() + gap
        fit_in = max(1, int(room // (tall + gap)))
        if len(self.view.rows) > fit_in:  # what does not fit is counted below
            fit_in = max(1, int((room - ruler.px(9)) // (tall + gap)))
        self.boxes = tuple(
            QRectF(0, number * (tall + gap), self.width(), tall)
            for number in range(min(len(self.view.rows), fit_in))
        )

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        for row, box in zip(self.view.rows, self.boxes, strict=False):
            if box.contains(event.position()):
                self.touched.emit(row.uid)

    @override
    def paint(self, painter: QPainter) -> None:
        px = Ruler.of(self.screen()).px
        if not self.view.rows:
            words = fit(say(self.view.none), Face.TEXT, px(6.4), self.width(), px(20))
            draw(painter, words, 0, px(4), self.colours.muted)
        for row, box in zip(self.view.rows, self.boxes, strict=False):
            self._row(painter, row, box)
        if more := len(self.view.rows) - len(self.boxes):
            words = fit(say(f"and {more} more, below these"), Face.NARROW, px(4.4), self.width())
            draw(painter, words, 0, self.boxes[-1].bottom() + px(4), self.colours.ink)

    def _row(self, painter: QPainter, row: AlarmRow, box: QRectF) -> None:
        px = Ruler.of(self.screen()).px
        chosen = row.uid == self.view.chosen
        colours = self.colours
        ink = colours.on_dark if chosen else colours.ink
        painter.fillRect(box, QColor(colours.ink if chosen else colours.paper))
        self._shape(painter, row, box)
        left, right = box.left() + px(2 * _EDGE_MM), box.right() - px(_EDGE_MM)
        room = right - left
        state = fit(say(row.state), Face.NARROW, px(3.6), room * 0.4)
        name = fit(say(row.name), Face.VERB, px(6.4), room * 0.58)
        words = fit(say(row.words), Face.NARROW, px(3.8), room, least=0.7)
        answer = fit(say(row.answer), Face.VERB, px(4.4), room, least=0.7)
        draw(painter, name, left, box.top() + px(5), ink)
        draw_right(painter, state, right, box.top() + px(5) + name.cap - state.cap, ink)
        draw(painter, words, left, box.top() + px(14.4), ink)
        draw(painter, answer, left, box.top() + px(21.6), ink)

    def _shape(self, painter: QPainter, row: AlarmRow, box: QRectF) -> None:
        px = Ruler.of(self.screen()).px
        colours, edge = self.colours, px(_EDGE_MM)
        if row.priority is Priority.HIGH:
            inner = QRectF(box.left(), box.top(), 1.6 * edge, box.height())
            barred_frame(painter, inner, edge / 3, colours.stop, colours.paper)
            mark = fit("!", Face.VERB, px(12), edge)
            draw(
                painter, mark, inner.center().x() - mark.width / 2, box.top() + px(9), colours.stop
            )
        elif row.priority is Priority.MEDIUM:
            strip = QRectF(box.left(), box.top(), edge, box.height())
            hatch(painter, strip, colours.attend, colours.on_attend, px(4))
        line = px(0.3 if row.quiet else 0.9)
        painter.setPen(stroke(colours.edge if row.quiet else colours.ink, line))
        painter.setBrush(QColor(0, 0, 0, 0))
        painter.drawRect(box.adjusted(line / 2, line / 2, -line / 2, -line / 2))
