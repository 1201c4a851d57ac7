"""The gates of a run as a row of seals: whole when signed, broken open by what is wanting."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.line.state import Seal
from station.screens.theme import Face, Palette
from station.screens.tongue import mark, say, tr
from station.screens.widgets.lettering import draw, fit
from station.screens.widgets.painted import Painted, hatch, stroke

_DONE = mark("done")
_LEADING = 1.5
"""From line to line of what is wanting, in heights of a capital: three lines lie in a seal."""
_OPEN_SHARE = 1.8
"""Of the width, against a whole seal: what is wanting takes a sentence, what is done one word."""


class SealStrip(Painted[tuple[Seal, ...]]):
    """A whole seal is a solid plate; an open one is hollow, its left edge torn into bars."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, (), parent)

    @override
    def set(self, view: tuple[Seal, ...]) -> None:
        super().set(view)
        self.setAccessibleName("; ".join(f"{one.name} {one.wanting or _DONE}" for one in view))

    @override
    def paint(self, painter: QPainter) -> None:
        if not self.view:
            return
        gap = 3 * self.unit
        shares = [_OPEN_SHARE if one.wanting else 1.0 for one in self.view]
        wide = (self.width() - gap * (len(self.view) - 1)) / sum(shares)
        left = 0.0
        for seal, share in zip(self.view, shares, strict=True):
            box = QRectF(left, 0, wide * share, self.height())
            left = box.right() + gap
            if seal.wanting:
                self._open(painter, box, seal)
            else:
                self._whole(painter, box, seal)

    def _whole(self, painter: QPainter, box: QRectF, seal: Seal) -> None:
        painter.fillRect(box, QColor(self.colours.ink))
        self._write(painter, box, tr(seal.name), tr(_DONE), self.colours.on_dark)

    def _open(self, painter: QPainter, box: QRectF, seal: Seal) -> None:
        colours, line = self.colours, 0.6 * self.unit
        painter.fillRect(box, QColor(colours.paper))
        edge = QRectF(box.left(), box.top(), 4 * self.unit, box.height())
        hatch(painter, edge, colours.attend, colours.on_attend, 3 * self.unit)
        painter.setPen(stroke(colours.ink, line))
        painter.drawRect(box.adjusted(line / 2, line / 2, -line / 2, -line / 2))
        words = say(seal.wanting).split(":")[0].split("：")[0].strip()
        inner = box.adjusted(edge.width(), 0, 0, 0)
        self._write(painter, inner, tr(seal.name), words, colours.ink)

    def _write(self, painter: QPainter, box: QRectF, name: str, words: str, colour: str) -> None:
        pad = 2.2 * self.unit
        room = box.width() - 2 * pad
        head = fit(name, Face.VERB, 5.0 * self.unit, room, 6.5 * self.unit, least=0.4)
        below = box.height() - 2 * pad - head.height - 1.5 * self.unit
        cap = 3.2 * self.unit
        text = fit(words, Face.NARROW, cap, room, below, least=0.55, leading=_LEADING)
        draw(painter, head, box.left() + pad, box.top() + pad, colour)
        top = box.top() + pad + head.height + 1.5 * self.unit
        draw(painter, text, box.left() + pad, top, colour)
