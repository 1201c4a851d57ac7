"""How much to move, in handfuls: leaves beside the sentence, whole and half, nothing to read."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPixmap
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.screens.theme import Palette
from station.screens.widgets.painted import Painted, hatch, stroke

MOST = 6
"""More leaves are not counted at a glance; so many stand for all that is more."""
WIDE_MM, HIGH_MM = 9.5, 13.0
"""Of one leaf with its air, and of the row."""
_MOST_KEPT = 8
"""Pictures of leaves: whole and half, missing and too much, of two sizes."""


@dataclass(frozen=True, slots=True)
class LeavesView:
    """What the leaves say.

    Args:
        halves: half handfuls, 0 for no leaves.
        over: they are to be taken out.
    """

    halves: int = 0
    over: bool = False

    @property
    def leaves(self) -> int:
        """Leaves drawn, the half one too."""
        return min(MOST, (self.halves + 1) // 2)


class HandfulLeaves(Painted[LeavesView]):
    """Hollow leaves are missing, hatched ones too much; a half leaf is half a handful."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self._kept: dict[tuple[bool, bool, int, int, float], QPixmap] = {}
        super().__init__(palette, LeavesView(), parent)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    @property
    def room(self) -> float:
        """Width that the present leaves take, in pixels."""
        return self.view.leaves * WIDE_MM * self.unit

    @override
    def set(self, view: LeavesView) -> None:
        super().set(view)
        self.setAccessibleName(f"{view.halves / 2:g} handfuls" if view.halves else "")

    @override
    def paint(self, painter: QPainter) -> None:
        view, wide = self.view, WIDE_MM * self.unit
        half = view.halves % 2 == 1 and view.halves < 2 * MOST
        for number in range(view.leaves):
            left = self.width() - (view.leaves - number) * wide
            cut = half and number == view.leaves - 1
            painter.drawPixmap(QPointF(round(left), 0), self._leaf(half=cut))

    def _leaf(self, *, half: bool) -> QPixmap:
        """A leaf with its air, drawn once for a size: the row is painted with every handful."""
        wide, tall, ratio = round(WIDE_MM * self.unit), self.height(), self.devicePixelRatioF()
        key = (half, self.view.over, wide, tall, ratio)
        kept = self._kept.get(key)
        if kept is None:
            if len(self._kept) >= _MOST_KEPT:
                self._kept.clear()
            box = QRectF(0.12 * wide, 0.6 * self.unit, 0.76 * wide, tall * 0.86)
            kept = self._kept[key] = self.drawn(
                QSize(wide, tall), lambda painter: self._draw_leaf(painter, box, half=half)
            )
        return kept

    def _draw_leaf(self, painter: QPainter, box: QRectF, *, half: bool) -> None:
        colours, pen = self.colours, stroke(self.colours.ink, 0.55 * self.unit)
        stem = QLineF(box.center().x(), box.top(), box.center().x(), box.bottom())
        leaf = _outline(box)
        painter.save()
        if half:  # the left side of it
            painter.setClipRect(QRectF(0, 0, stem.x1(), self.height()))
        if self.view.over:
            painter.save()
            painter.setClipPath(leaf, Qt.ClipOperation.IntersectClip)
            hatch(painter, box, colours.paper, colours.ink, box.width() / 2.4)
            painter.restore()
        painter.setPen(pen)
        painter.setBrush(QColor(0, 0, 0, 0) if self.view.over else QColor(colours.paper))
        painter.drawPath(leaf)
        painter.restore()
        painter.setPen(pen)
        painter.drawLine(stem)


def _outline(box: QRectF) -> QPainterPath:
    """A leaf that stands on its stem."""
    middle, wide, tall = box.center().x(), box.width(), box.height()
    foot = QPointF(middle, box.bottom() - 0.14 * tall)
    leaf = QPainterPath(QPointF(middle, box.top()))
    for side in (1, -1):
        leaf.moveTo(middle, box.top())
        leaf.cubicTo(
            QPointF(middle + side * 0.72 * wide, box.top() + 0.3 * tall),
            QPointF(middle + side * 0.62 * wide, foot.y() - 0.08 * tall),
            foot,
        )
    return leaf
