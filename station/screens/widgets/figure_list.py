"""Figures one below the other: what, how much, against what."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.screens.numbers_words import Row
from station.screens.theme import Face, Palette
from station.screens.tongue import say
from station.screens.widgets.lettering import Fitted, draw, draw_right, fit
from station.screens.widgets.painted import Painted, hatch, stroke

_NAME = 0.25
_VALUE = 0.3
_NOTE = 0.2
"""Capitals, of the height of a row."""
_LEAST = 0.4
"""Of their size, what a long name or note may shrink to."""
_PAD = 0.11
_LINE_MM = 20.0
"""Height of a row of weight 1 where there is room for it."""


class FigureList(Painted[tuple[Row, ...]]):
    """Paints rows as high as their weight; what somebody should look at has a hatched edge."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.texts: list[tuple[QRectF, Fitted, Fitted, Fitted]] = []
        super().__init__(palette, (), parent)

    @override
    def set(self, view: tuple[Row, ...]) -> None:
        super().set(view)
        self.setAccessibleName("; ".join(f"{row.name} {row.value} {row.note}" for row in view))

    @override
    def arrange(self) -> None:
        self.texts = []
        weights = sum(row.weight for row in self.view)
        if not weights or self.size().isEmpty():
            return
        share = min(self.height() / weights, _LINE_MM * self.unit)
        top, wide, inset = 0.0, float(self.width()), 4.0 * self.unit
        for row in self.view:
            box = QRectF(0, top, wide, share * row.weight)
            top = box.bottom()
            tall, room = box.height(), wide - (inset if row.attend else 0.0)
            name = fit(say(row.name), Face.NARROW, tall * _NAME, room * 0.34, least=_LEAST)
            note = fit(say(row.note), Face.NARROW, tall * _NOTE, room, least=_LEAST)
            value = fit(
                say(row.value),
                Face.FIGURES,
                tall * _VALUE,
                room * 0.64,
                tall * (0.45 if row.note else 0.8),
            )
            self.texts.append((box, name, value, note))

    @override
    def paint(self, painter: QPainter) -> None:
        for row, (box, name, value, note) in zip(self.view, self.texts, strict=True):
            left = 0.0
            if row.attend:
                edge = QRectF(box.left(), box.top() + 2, 2.5 * self.unit, box.height() - 4)
                hatch(painter, edge, self.colours.attend, self.colours.on_attend, 2.5 * self.unit)
                left = 4.0 * self.unit
            pad = _PAD * box.height()
            value_top = box.top() + pad
            draw_right(painter, value, box.right(), value_top, self.colours.ink)
            # The name stands on the line of its value.
            draw(painter, name, left, value_top + value.cap - name.cap, self.colours.ink)
            if row.note:
                draw_right(
                    painter, note, box.right(), box.bottom() - pad - note.height, self.colours.muted
                )
            painter.setPen(stroke(self.colours.quiet, 0.3 * self.unit))
            painter.drawLine(box.bottomLeft(), box.bottomRight())
        if not self.view:
            painter.fillRect(self.rect(), QColor(self.colours.ground))
