"""Countdown tiles for somebody's first day: what is missing as tiles that vanish, without a scale.

One tile is a quarter of a handful. What is missing stands as hollow tiles left of a mark, what is
too much as hatched tiles right of it, so that nothing need be read. The limits of the law are not
in it: for that the packer has the strip, which comes back when the tiles go.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.core.mass import Mass
from station.line.state import LineState, Verb
from station.screens.theme import Palette
from station.screens.widgets.painted import Painted, hatch, stroke

PER_HANDFUL = 4
MOST = 24
"""More are not drawn: so many say plenty."""
_MARK = 1.6
"""Width of the mark between missing and too much, in layout millimetres."""
_GAP = 0.18
"""Of a tile, between two."""


@dataclass(frozen=True, slots=True)
class TilesView:
    """What the tiles say.

    Args:
        missing: tiles still to be filled, 0 to :data:`MOST`.
        over: tiles too much, 0 to :data:`MOST`.
        shown: whether there is a bag to guide at all.
    """

    missing: int = 0
    over: int = 0
    shown: bool = False


def tiles_view(state: LineState, handful: Mass) -> TilesView:
    """Return the tiles of a state.

    Args:
        state: of the line.
        handful: what one handful of the product weighs, more than nothing.
    """
    if state.amount is None or state.verb not in (Verb.ADD, Verb.TAKE_OUT):
        return TilesView()
    tiles = state.amount.in_unit(handful.unit).amount * PER_HANDFUL / handful.amount
    count = min(MOST, max(1, math.ceil(tiles)))
    if state.verb is Verb.ADD:
        return TilesView(missing=count, shown=True)
    return TilesView(over=count, shown=True)


class CountdownTiles(Painted[TilesView]):
    """Paints a TilesView over the landmarks of the strip."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, TilesView(), parent)

    @override
    def set(self, view: TilesView) -> None:
        super().set(view)
        self.setAccessibleName(f"{view.missing} tiles missing, {view.over} too much")

    @override
    def paint(self, painter: QPainter) -> None:
        view, unit, colours = self.view, self.unit, self.colours
        if not view.shown:
            return
        mark = _MARK * unit
        middle = self.width() * 0.5
        painter.fillRect(QRectF(middle - mark / 2, 0, mark, self.height()), QColor(colours.ink))
        side = min(self.height() * 0.46, (middle - mark) / (MOST / 2) / (1 + _GAP))
        step = side * (1 + _GAP)
        pen = stroke(colours.ink, 0.7 * unit)
        for number in range(view.missing + view.over):
            column, row = divmod(number, 2)
            away = mark / 2 + side * _GAP + column * step
            left = middle - away - side if view.missing else middle + away
            top = self.height() / 2 + (row - 1) * step + side * _GAP / 2
            box = QRectF(left, top, side, side)
            if view.missing:
                painter.fillRect(box, QColor(colours.paper))
            else:
                hatch(painter, box, colours.paper, colours.ink, side / 3)
            painter.setPen(pen)
            painter.drawRect(box)
