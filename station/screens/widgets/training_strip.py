"""The strip over every screen of training: a barred plate with the word, nothing to touch."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.core.training import MARK, NO_PRODUCT
from station.screens.theme import Face, Palette, Ruler
from station.screens.tongue import tr
from station.screens.widgets.lettering import draw, fit
from station.screens.widgets.painted import Painted, hatch

HEIGHT_MM = 14.0
WORD_MM = 8.5
SENTENCE_MM = 5.2
_ENDS_MM = 18.0
"""Least length of the barred ends."""


class TrainingStrip(Painted[tuple[str, str]]):
    """TRAINING in inverse between bars, and what follows from it where there is room."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, (MARK, NO_PRODUCT), parent)
        self.setAccessibleName(f"{MARK}: {NO_PRODUCT}")
        self.setFixedHeight(Ruler.of(self.screen()).touch(HEIGHT_MM))

    @override
    def sizeHint(self) -> QSize:
        return QSize(0, self.height())

    @override
    def paint(self, painter: QPainter) -> None:
        px = Ruler.of(self.screen()).px
        colours, box = self.colours, QRectF(self.rect())
        hatch(painter, box, colours.ink, colours.ground, px(7))
        word, sentence = map(tr, self.view)
        room = box.width() - 2 * px(_ENDS_MM)
        big = fit(word, Face.VERB, px(WORD_MM), room, least=0.3)
        small = fit(sentence, Face.NARROW, px(SENTENCE_MM), room, least=0.8)
        wide = big.width + px(8) + small.width
        if not small.whole or wide > room:
            wide = big.width
        left, pad = (box.width() - wide) / 2, px(5)
        plate = QRectF(left - pad, 0, wide + 2 * pad, box.height())
        painter.fillRect(plate, QColor(colours.ink))
        foot = (box.height() + big.cap) / 2
        draw(painter, big, left, foot - big.cap, colours.on_dark)
        if wide > big.width:
            draw(painter, small, left + wide - small.width, foot - small.cap, colours.on_dark)
