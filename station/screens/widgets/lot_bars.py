"""The lots on the line as bars: how much is left, and how sure that is; a touch chooses one."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.screens.theme import Face, Palette
from station.screens.tongue import mark, say
from station.screens.widgets.lettering import draw, draw_right, fit
from station.screens.widgets.painted import Painted, barred_frame, hatch, stroke
from station.screens.widgets.pictograms import Picture, draw_picture

_ONE_COLUMN = 3
"""So many lots stand below each other; more stand in two columns."""
_TALLEST_MM = 36.0
_GAP_MM = 4.0
NONE = mark("No lot is on the line: scan one.")


@dataclass(frozen=True, slots=True)
class LotBar:
    """One lot.

    Args:
        lot: its code.
        component: what it is, in words.
        left: in words, such as ``41.3 kg ± 2.0``; or why nobody knows.
        low, likely, high: what is left, as parts of what was loaded, each 0 to 1.
        state: what is to be known of it in a word: ``finishing``, ``HELD``, ``on no label``.
        held: it must not be used.
        attend: somebody should look at it soon.
        chosen: the buttons are about it.
    """

    lot: str
    component: str
    left: str
    low: float
    likely: float
    high: float
    state: str = ""
    held: bool = False
    attend: bool = False
    chosen: bool = False


class LotBars(Painted[tuple[LotBar, ...]]):
    """A cell for each lot.

    Signals:
        touched: str, code of the lot.
    """

    touched = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, (), parent)

    @override
    def set(self, view: tuple[LotBar, ...]) -> None:
        super().set(view)
        said = (f"{one.lot} {one.component} {one.left} {one.state}".strip() for one in view)
        self.setAccessibleName("; ".join(said) or NONE)

    def cells(self) -> tuple[QRectF, ...]:
        """The place of each lot."""
        count = len(self.view)
        columns = 1 if count <= _ONE_COLUMN else 2
        rows = -(-count // columns)
        gap = _GAP_MM * self.unit
        wide = (self.width() - gap * (columns - 1)) / columns
        tall = min((self.height() - gap * (rows - 1)) / max(rows, 1), _TALLEST_MM * self.unit)
        return tuple(
            QRectF(place % columns * (wide + gap), place // columns * (tall + gap), wide, tall)
            for place in range(count)
        )

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        for bar, cell in zip(self.view, self.cells(), strict=True):
            if cell.contains(event.position()):
                self.touched.emit(bar.lot)
                return

    @override
    def paint(self, painter: QPainter) -> None:
        if not self.view:
            words = fit(say(NONE), Face.VERB, 6 * self.unit, self.width())
            draw(painter, words, 0, 4 * self.unit, self.colours.muted)
        for bar, cell in zip(self.view, self.cells(), strict=True):
            self._cell(painter, bar, cell)

    def _cell(self, painter: QPainter, bar: LotBar, cell: QRectF) -> None:
        colours, unit = self.colours, self.unit
        painter.fillRect(cell, QColor(colours.paper))
        if bar.held:
            barred_frame(painter, cell, 2 * unit, colours.stop, colours.paper)
        edge = 2.6 * unit
        inner = cell.adjusted(edge, edge, -edge, -edge)
        cap, pad = inner.height() * 0.27, 1.2 * unit
        words = colours.stop if bar.held else colours.ink
        code = fit(bar.lot, Face.CODE, cap, inner.width() * 0.56)
        left = inner.left()
        if bar.held:
            side = cap * 1.5
            sign = QRectF(left, inner.top() + (cap - side) / 2, side, side)
            draw_picture(painter, Picture.HELD, sign, colours.stop)
            left += side + 2 * unit
            code = fit(bar.lot, Face.CODE, cap, inner.width() * 0.5)
        draw(painter, code, left, inner.top(), words)
        if bar.held:
            middle = inner.top() + code.cap / 2
            painter.setPen(stroke(colours.stop, 0.8 * unit))
            painter.drawLine(round(left), round(middle), round(left + code.width), round(middle))
        state = fit(say(bar.state), Face.VERB, cap, inner.width() * 0.38)
        if bar.attend and bar.state and not bar.held:
            plate = QRectF(inner.right() - state.width, inner.top(), state.width, state.cap)
            painter.setPen(stroke(colours.ink, 0.4 * unit))
            painter.fillRect(plate.adjusted(-pad, -pad, pad, pad), QColor(colours.attend))
            painter.drawRect(plate.adjusted(-pad, -pad, pad, pad))
            draw_right(painter, state, inner.right(), inner.top(), colours.on_attend)
        else:
            draw_right(painter, state, inner.right(), inner.top(), words)
        second = inner.top() + inner.height() * 0.4
        name = fit(bar.component, Face.NARROW, cap * 0.82, inner.width() * 0.5)
        draw(painter, name, inner.left(), second, colours.muted)
        mass = fit(say(bar.left), Face.FIGURES, cap * 0.82, inner.width() * 0.46)
        draw_right(painter, mass, inner.right(), second, words)
        self._bar(painter, bar, inner)
        if bar.chosen:
            painter.setPen(stroke(colours.act, 1.6 * unit))
            inset = 0.8 * unit
            painter.drawRect(cell.adjusted(inset, inset, -inset, -inset))

    def _bar(self, painter: QPainter, bar: LotBar, inner: QRectF) -> None:
        """Solid up to what is surely left, hatched as far as it may reach, a notch where likely."""
        colours, unit = self.colours, self.unit
        box = QRectF(inner.left(), inner.bottom() - inner.height() * 0.26, inner.width(), 0)
        box.setBottom(inner.bottom())
        painter.fillRect(box, QColor(colours.quiet))
        sure = QRectF(box)
        sure.setWidth(box.width() * bar.low)
        painter.fillRect(sure, QColor(colours.ink))
        unsure = QRectF(box)
        unsure.setLeft(sure.right())
        unsure.setRight(box.left() + box.width() * bar.high)
        fill = colours.attend if bar.attend else colours.paper
        if unsure.width() > 0:
            stripe = colours.on_attend if bar.attend else colours.ink
            hatch(painter, unsure, fill, stripe, 2 * unit)
        painter.setPen(stroke(colours.ink, 0.6 * unit))
        painter.drawRect(box)
        x = box.left() + box.width() * bar.likely
        if bar.high > 0:
            painter.setPen(stroke(colours.ink, 1.2 * unit))
            painter.drawLine(round(x), round(box.top() - unit), round(x), round(box.bottom()))
