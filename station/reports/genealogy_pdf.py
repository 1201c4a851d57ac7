"""The family tree on paper: one page, drawn from the same places as on screen."""

from __future__ import annotations

from reportlab.lib.utils import simpleSplit
from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.platypus import Flowable, Paragraph

from station.core.genealogy import HEADS, Box, Node, Stage, Tree, folded, layout
from station.reports import paper
from station.reports.paper import escape, gap, note

_LARGEST, _SMALLEST, _LEADING = 9.5, 4.0, 1.32
_MOST_HEIGHT, _TALLEST, _HEAD = 560.0, 64.0, 18.0


def genealogy_pdf(tree: Tree) -> bytes:
    """Set a tree on one page; the same tree gives the same bytes."""
    paper.load_faces()
    story: list[Flowable] = [
        Paragraph(escape(f"Genealogy of {tree.asked}"), paper.TITLE),
        Paragraph(escape(tree.answer), paper.UNDER),
        gap(4),
        _Picture(folded(tree)),
        gap(2),
        note("A line joins what could be in one another. A yellow edge: held or set aside."),
    ]
    return paper.write(f"Genealogy of {tree.asked}", f"Genealogy of {tree.asked}", story)


class _Picture(Flowable):  # type: ignore[misc]  # reportlab ships no types
    """The tree, drawn upwards from the foot as paper wants it."""

    def __init__(self, tree: Tree) -> None:
        super().__init__()
        self._tree = tree
        most = max(len(tree.column(stage)) for stage in Stage)
        self.width = paper.WIDTH
        self.height = _HEAD + min(_MOST_HEIGHT, 1.6 * _TALLEST * most)

    def draw(self) -> None:
        """Draw heads, links, nodes."""
        boxes = layout(self._tree, self.width, self.height - _HEAD, _TALLEST)
        canvas = self.canv
        for stage in Stage:
            column = self._tree.column(stage)
            if column:
                canvas.setFont(paper.STRONG, 8)
                canvas.setFillColor(paper.MUTED)
                canvas.drawString(boxes[column[0]].left, self.height - 8, HEADS[stage])
        canvas.setStrokeColor(paper.EDGE)
        canvas.setLineWidth(0.8)
        for one, other in sorted(self._tree.links):
            start, end = boxes[one], boxes[other]
            bend = (end.left - start.right) / 2
            y, to = (self.height - _HEAD - box.middle for box in (start, end))
            canvas.bezier(start.right, y, start.right + bend, y, end.left - bend, to, end.left, to)
        for node, box in zip(self._tree.nodes, boxes, strict=True):
            self._node(node, box, self.height - _HEAD)

    def _node(self, node: Node, box: Box, top: float) -> None:
        canvas, foot = self.canv, top - box.top - box.height
        canvas.setFillColor(paper.QUIET)
        canvas.setStrokeColor(paper.INK if node.asked else paper.EDGE)
        canvas.setLineWidth(2 if node.asked else 0.6)
        canvas.rect(box.left, foot, box.width, box.height, fill=1)
        if node.attend:
            canvas.setFillColor(paper.ATTEND)
            canvas.rect(box.left, foot, 5, box.height, fill=1)
        left, wide = box.left + 9, box.width - 14
        size, rows = _lettering(node, wide, box.height - 6)
        y = top - box.middle + len(rows) * size * _LEADING / 2 - size
        canvas.setFillColor(paper.INK)
        for face, line in rows:
            fits = min(size, size * wide / max(stringWidth(line, face, size), 1))
            canvas.setFont(face, fits)
            canvas.drawString(left, y, line)
            y -= size * _LEADING


def _lettering(node: Node, wide: float, tall: float) -> tuple[float, list[tuple[str, str]]]:
    """Size and lines with their face: the largest at which all of the node lies in its plate."""
    texts = ((paper.STRONG, node.title), *((paper.TEXT, line) for line in node.lines))
    size = _LARGEST
    while True:
        rows = [
            (face, line) for face, text in texts for line in simpleSplit(text, face, size, wide)
        ]
        inside = all(stringWidth(line, face, size) <= wide for face, line in rows)
        if size <= _SMALLEST or (inside and len(rows) * size * _LEADING <= tall):
            return size, rows
        size -= 0.5
