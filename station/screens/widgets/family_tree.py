"""The picture of a family tree: columns of plates joined by lines; a plate can be touched."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPainterPath
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.core.genealogy import HEADS, Box, Node, Stage, Tree, folded, layout
from station.screens.theme import Face, Palette, Ruler
from station.screens.tongue import say
from station.screens.widgets.lettering import Fitted, draw, fit
from station.screens.widgets.painted import Painted, hatch, stroke

_HEAD_MM, _TALLEST_MM = 8.0, 34.0
_BETWEEN = 0.7
"""Room between two lines, in heights of a capital."""


class FamilyTree(Painted[Tree | None]):
    """Draws a tree to its own size.

    Signals:
        touched: key of the plate that was touched.
    """

    touched = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, None, parent)
        self._shown: Tree | None = None
        self.boxes: tuple[Box, ...] = ()
        self.setAccessibleName("family tree")

    @property
    def shown(self) -> Tree | None:
        """The tree as it is drawn, long columns folded."""
        return self._shown

    @override
    def arrange(self) -> None:
        self._shown, self.boxes = None, ()
        if self.view is None:
            return
        ruler = Ruler.of(self.screen())
        edge, head = ruler.px(1), ruler.px(_HEAD_MM)
        self._shown = folded(self.view)
        wide, tall = self.width() - 2 * edge, self.height() - head - 2 * edge
        placed = layout(self._shown, wide, max(tall, 1.0), ruler.px(_TALLEST_MM))
        self.boxes = tuple(
            Box(box.left + edge, box.top + edge + head, box.width, box.height) for box in placed
        )
        self.setAccessibleDescription(
            "; ".join(f"{node.stage} {node.title}" for node in self._shown.nodes)
        )

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        place = event.position()
        if self._shown is None or event.button() is not Qt.MouseButton.LeftButton:
            return
        for node, box in zip(self._shown.nodes, self.boxes, strict=True):
            if node.key and box.holds(place.x(), place.y()):
                self.touched.emit(node.key)
                return

    @override
    def paint(self, painter: QPainter) -> None:
        tree = self._shown
        if tree is None:
            return
        ruler = Ruler.of(self.screen())
        for stage in Stage:
            if column := tree.column(stage):
                box = self.boxes[column[0]]
                words = fit(say(HEADS[stage]), Face.VERB, ruler.px(3.4), box.width)
                draw(painter, words, box.left, ruler.px(1.5), self.colours.muted)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for link in sorted(tree.links):
            strong = any(tree.nodes[at].asked for at in link)
            colour = self.colours.ink if strong else self.colours.edge
            painter.setPen(stroke(colour, ruler.px(0.7 if strong else 0.4)))
            painter.drawPath(_joined(*(self.boxes[at] for at in link)))
        for node, box in zip(tree.nodes, self.boxes, strict=True):
            self._plate(painter, node, QRectF(box.left, box.top, box.width, box.height), ruler)

    def _plate(self, painter: QPainter, node: Node, box: QRectF, ruler: Ruler) -> None:
        colours = self.colours
        painter.fillRect(box, QColor(colours.paper))
        edge = ruler.px(2.2)
        if node.attend:
            bar = QRectF(box.left(), box.top(), edge, box.height())
            hatch(painter, bar, colours.attend, colours.on_attend, edge)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(stroke(colours.ink if node.asked else colours.edge,
                              ruler.px(0.9 if node.asked else 0.35)))  # fmt: skip
        painter.drawRect(box)
        left, wide = box.left() + edge * 1.7, box.width() - edge * 2.4
        rows = _lettering(node, wide, box.height() - 1.6 * edge, ruler.px(3.6))
        top = box.center().y() - _depth(rows) / 2
        for row in rows:
            title = row is rows[0]
            draw(painter, row, left, top, colours.ink if title else colours.muted)
            top += row.height + row.cap * _BETWEEN


def _lettering(node: Node, wide: float, tall: float, most: float) -> tuple[Fitted, ...]:
    """The title and the facts below it, wrapped, at the largest size that lies in the plate."""
    rows: tuple[Fitted, ...] = ()
    for step in range(100, 32, -4):
        cap = most * step / 100
        rows = tuple(
            fit(say(text), face, size, wide, tall, least=1.0, leading=1 + _BETWEEN)
            for text, face, size in (
                (node.title, Face.VERB, cap * 1.2),
                *((fact, Face.TEXT, cap) for fact in node.lines),
            )
        )
        if all(row.whole for row in rows) and _depth(rows) <= tall:
            break
    return rows


def _depth(rows: tuple[Fitted, ...]) -> float:
    return sum(row.height + row.cap * _BETWEEN for row in rows) - rows[-1].cap * _BETWEEN


def _joined(start: Box, end: Box) -> QPainterPath:
    bend = (end.left - start.right) / 2
    path = QPainterPath(QPointF(start.right, start.middle))
    path.cubicTo(
        QPointF(start.right + bend, start.middle),
        QPointF(end.left - bend, end.middle),
        QPointF(end.left, end.middle),
    )
    return path
