"""What passed over the scale's line, the newest at the foot: time, text, bytes, and what it was."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from drivers.wire_view import WireRow
from station.screens.theme import Face, Palette, font_of
from station.screens.tongue import say
from station.screens.widgets.lettering import draw, fit
from station.screens.widgets.painted import Painted, hatch

_CAP_MM = 2.6
_ROW_MM = 9.6
_GAP_MM = 16.0
_EDGE_MM = 2.4


class WireList(Painted[tuple[WireRow, ...]]):
    """As many of the newest rows as fit; what was no frame has a hatched edge."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, (), parent)

    @property
    def room(self) -> int:
        """How many rows fit."""
        return max(1, int(self.height() // (_ROW_MM * self.unit)))

    @property
    def shown(self) -> tuple[WireRow, ...]:
        """The rows that are painted."""
        return self.view[-self.room :]

    @override
    def set(self, view: tuple[WireRow, ...]) -> None:
        super().set(view)
        self.setAccessibleName("; ".join(f"{row.text} {row.what}" for row in view[-3:]))

    @override
    def paint(self, painter: QPainter) -> None:
        colours, unit = self.colours, self.unit
        painter.fillRect(self.rect(), QColor(colours.paper))
        code, words = font_of(Face.CODE, _CAP_MM * unit), font_of(Face.TEXT, _CAP_MM * unit)
        half = _ROW_MM * unit / 2
        left = (_EDGE_MM + 1.4) * unit
        begin, wide = left + _GAP_MM * unit, self.width() - left - (_GAP_MM + 1) * unit
        for number, row in enumerate(self.shown):
            top = number * 2 * half
            if not row.good and not row.sent:
                edge = QRectF(0, top + 1, _EDGE_MM * unit, 2 * half - 2)
                hatch(painter, edge, colours.attend, colours.on_attend, 2 * unit)
            gap = "" if row.gap_ms is None else f"+{row.gap_ms} ms"
            ink = colours.act if row.sent else colours.ink
            for font, text, colour, box in (
                (words, gap, colours.muted, QRectF(left, top, _GAP_MM * unit, half)),
                (code, row.text.replace(" ", "·"), ink, QRectF(begin, top, wide * 0.56, half)),
                (code, row.hex, colours.muted, QRectF(begin, top + half, wide, half)),
            ):
                painter.setFont(font)
                painter.setPen(QColor(colour))
                painter.drawText(box, _FLAGS, text)
            what = fit(say(row.what), Face.TEXT, _CAP_MM * unit, wide * 0.42, half, least=0.4)
            draw(painter, what, begin + wide * 0.58, top + (half - what.height) / 2, ink)


_FLAGS = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
