"""The loads of a check one below the other: taken, wanted now, still to come."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.core.metrology.scale_check import CheckResult
from station.screens.checks_words import WORDS, LoadRow
from station.screens.theme import Face, Palette
from station.screens.tongue import say
from station.screens.widgets.lettering import Fitted, draw, draw_right, fit
from station.screens.widgets.painted import Painted, barred_frame, hatch, stroke

_LINE_MM = 30.0
_EDGE_MM = 2.5


class LoadList(Painted[tuple[LoadRow, ...]]):
    """A load that fails stands in a frame of bars, one that warns has a hatched edge."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.texts: list[tuple[QRectF, tuple[Fitted, ...]]] = []
        super().__init__(palette, (), parent)

    @override
    def set(self, view: tuple[LoadRow, ...]) -> None:
        super().set(view)
        said = (f"{row.name} {row.shown} {row.error} {_word(row)}".strip() for row in view)
        self.setAccessibleName("; ".join(said))

    @override
    def arrange(self) -> None:
        self.texts = []
        if not self.view or self.size().isEmpty():
            return
        tall = min(self.height() / len(self.view), _LINE_MM * self.unit)
        for number, row in enumerate(self.view):
            box = QRectF(0, number * tall, self.width(), tall - 2 * self.unit)
            room = box.width() - 8 * _EDGE_MM * self.unit
            high = box.height()
            self.texts.append(
                (
                    box,
                    (
                        fit(say(row.name), Face.VERB, high * 0.2, room * 0.43),
                        fit(say(row.weights), Face.NARROW, high * 0.16, room * 0.5),
                        fit(row.shown, Face.FIGURES, high * 0.3, room * 0.26),
                        fit(say(row.error), Face.NARROW, high * 0.15, room * 0.5),
                        fit(say(_word(row)), Face.VERB, high * 0.26, room * 0.3, least=0.4),
                    ),
                )
            )

    @override
    def paint(self, painter: QPainter) -> None:
        for row, (box, texts) in zip(self.view, self.texts, strict=True):
            colour = self._plate(painter, box, row)
            name, weights, shown, error, word = texts
            edge = 2.5 * _EDGE_MM * self.unit
            left, right = box.left() + edge, box.right() - edge
            top, low = box.top() + 0.22 * box.height(), box.bottom() - 0.2 * box.height()
            draw(painter, name, left, top, colour)
            draw(painter, weights, left, low - weights.height, colour)
            draw_right(painter, word, right, top, colour)
            draw_right(painter, shown, right - box.width() * 0.3, top, colour)
            draw_right(painter, error, right, low - error.height, colour)

    def _plate(self, painter: QPainter, box: QRectF, row: LoadRow) -> str:
        """Paint the ground of a row; returns the colour of what stands on it."""
        colours, unit = self.colours, self.unit
        if row.now:
            painter.fillRect(box, QColor(colours.act))
            return colours.on_dark
        if row.result is CheckResult.FAILED:
            barred_frame(painter, box, _EDGE_MM * unit, colours.stop, colours.paper)
            return colours.stop
        painter.fillRect(box, QColor(colours.paper if row.result else colours.ground))
        if row.result is CheckResult.WARN:
            edge = QRectF(box.left(), box.top(), 1.6 * _EDGE_MM * unit, box.height())
            hatch(painter, edge, colours.attend, colours.on_attend, 2.5 * unit)
        painter.setPen(stroke(colours.ink if row.result else colours.edge, 0.3 * unit))
        painter.drawRect(box)
        return colours.ink if row.result else colours.muted


def _word(row: LoadRow) -> str:
    if row.now:
        return "NOW"
    return "" if row.result is None else WORDS[row.result]
