"""One line of a scale, a cell for each byte, on which a person marks fields.

Touch or drag over cells, or go with the arrow keys and hold Shift, to choose a stretch of them.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from drivers.frames.proposal import Mark
from drivers.wire_view import text_of
from station.screens.theme import Face, Palette
from station.screens.tongue import say
from station.screens.widgets.lettering import draw_centred, fit
from station.screens.widgets.painted import Painted, stroke

_CELL_MM = 11.0
_NAME_MM = 4.4


@dataclass(frozen=True, slots=True)
class Strip:
    """A line, its marks, and the chosen cells: from ``begin`` up to and without ``end``."""

    line: bytes = b""
    marks: tuple[Mark, ...] = ()
    begin: int = 0
    end: int = 0


class ByteStrip(Painted[Strip]):
    """Paints the cells with the names of the fields below them.

    Signals:
        chosen: int, int: the stretch that is chosen now.
    """

    chosen = Signal(int, int)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, Strip(), parent)
        self._anchor = 0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    @property
    def cell(self) -> float:
        """Width of a cell in pixels."""
        return min(_CELL_MM * self.unit, self.width() / max(1, len(self.view.line)))

    def centre(self, place: int) -> QPointF:
        """The middle of a cell."""
        return QPointF((place + 0.5) * self.cell, (self.height() - _NAME_MM * self.unit) / 2)

    @override
    def set(self, view: Strip) -> None:
        super().set(view)
        named = ", ".join(f"{mark.name} {mark.begin + 1} to {mark.end}" for mark in view.marks)
        self.setAccessibleName(f"line {text_of(view.line)}; fields {named or 'none'}")

    @override
    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.setFocus()
        self._anchor = self._at(event)
        self._choose(self._anchor)

    @override
    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._choose(self._at(event))

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
        step = steps.get(Qt.Key(event.key()))
        if step is None or not self.view.line:
            super().keyPressEvent(event)
            return
        at = self.view.end - 1 if self._anchor <= self.view.begin else self.view.begin
        at = min(max(at + step, 0), len(self.view.line) - 1)
        if not event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self._anchor = at
        self._choose(at)

    def _at(self, event: QMouseEvent) -> int:
        place = int(event.position().x() // self.cell)
        return min(max(place, 0), max(len(self.view.line) - 1, 0))

    def _choose(self, at: int) -> None:
        if not self.view.line:
            return
        begin, end = sorted((self._anchor, at))
        self.set(Strip(self.view.line, self.view.marks, begin, end + 1))
        self.chosen.emit(begin, end + 1)

    @override
    def paint(self, painter: QPainter) -> None:
        colours, unit, cell = self.colours, self.unit, self.cell
        tall = self.height() - _NAME_MM * unit
        marked = {place for mark in self.view.marks for place in range(mark.begin, mark.end)}
        for place, byte in enumerate(self.view.line):
            box = QRectF(place * cell, 0, cell, tall)
            is_chosen = self.view.begin <= place < self.view.end
            ground = colours.act if is_chosen else colours.paper
            painter.fillRect(box, QColor(ground if is_chosen or place in marked else colours.quiet))
            painter.setPen(stroke(colours.edge, 0.2 * unit))
            painter.drawRect(box)
            text = text_of(bytes([byte])).strip("‹›")
            ink = colours.on_dark if is_chosen else colours.ink
            big = fit(text if text != " " else "·", Face.CODE, min(4.0 * unit, cell * 0.6), cell)
            small = fit(f"{byte:02x}", Face.CODE, min(2.4 * unit, cell * 0.34), cell)
            draw_centred(painter, big, QRectF(box.left(), 0, cell, tall * 0.62), ink)
            draw_centred(painter, small, QRectF(box.left(), tall * 0.62, cell, tall * 0.34), ink)
        for mark in self.view.marks:
            wide = (mark.end - mark.begin) * cell
            box = QRectF(mark.begin * cell, tall, wide, _NAME_MM * unit)
            painter.fillRect(box.adjusted(1, 0, -1, -box.height() * 0.8), QColor(colours.ink))
            name = fit(_name(mark), Face.VERB, 2.4 * unit, max(wide, 6 * unit))
            draw_centred(painter, name, box.adjusted(0, box.height() * 0.3, 0, 0), colours.ink)


def _name(mark: Mark) -> str:
    """What a field is called, in the language shown now; a second flag keeps its number."""
    kind = mark.name.rstrip("0123456789")
    return say("plus or minus" if kind == "sign" else kind) + mark.name[len(kind) :]
