"""The family tree of a lot, a blend, a run or a bag out of the record, and its paper."""

from __future__ import annotations

from pathlib import Path

from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.platypus import Flowable, Paragraph

from station.core.genealogy import Box, Node, Stage, Tree, folded, layout
from station.core.lots import LotStatus
from station.core.metrology.exact import plain
from station.core.pack import Quality
from station.reports import paper
from station.reports.paper import escape, gap, note
from station.reports.recall import MICRO_TO_KILO
from station.reports.serial_scan import is_serial, serial_of
from station.store.recall import (
    PackRow,
    Reach,
    blend_of_pack,
    is_named,
    reach_of_blend,
    reach_of_lot,
    reach_of_run,
)

_WAYS = {"lot": reach_of_lot, "blend": reach_of_blend, "run": reach_of_run}
_CALM = frozenset(map(str, (Quality.GOOD, Quality.RELEASED)))


def tree_of(home: Path, asked: str) -> Tree:
    """Return the tree of whatever a person typed or scanned.

    Raises:
        BadInput: the record has no such serial, lot, blend or run; names close serials.
    """
    text, serial = asked.strip(), serial_of(asked)
    if is_named(home, serial) == "pack":
        return _tree(reach_of_blend(home, blend_of_pack(home, serial)), serial)
    way = _WAYS.get(is_named(home, text))
    if way is None:  # refused, with what is close to it
        if is_serial(serial):
            blend_of_pack(home, serial)
        way = reach_of_lot
    return _tree(way(home, text), text)


def _tree(reach: Reach, asked: str) -> Tree:
    packs: dict[int, list[PackRow]] = {one.id: [] for one in reach.blends}
    for row in reach.packs:
        packs[row.blend_id].append(row)
    own = [one.id for one in reach.blends if any(row.serial == asked for row in packs[one.id])]
    blends = [one for one in reach.blends if not own or one.id in own]
    used = {use.lot for one in blends for use in one.uses} | {asked}
    nodes: list[Node] = []
    place: dict[tuple[Stage, object], int] = {}

    def put(name: object, node: Node) -> None:
        if (node.stage, name) not in place:
            place[node.stage, name] = len(nodes)
            nodes.append(node)

    for lot in reach.lots:
        if lot.code in used:
            lines = (lot.component, lot.supplier, f"received {lot.received}")
            held = lot.status is not LotStatus.FREE
            status = (str(lot.status).upper(),) if held else ()
            put(lot.code, Node(Stage.LOT, lot.code, lot.code, (*status, *lines), held,
                               lot.code == asked))  # fmt: skip
    for one in blends:
        days = (f"use by {one.use_by}", f"packed {one.production_day}")
        put(one.id, Node(Stage.BLEND, one.code, one.code, days, asked=one.code == asked))
        run = one.run
        put(run.uid, Node(Stage.RUN, run.uid, run.name,
                          (f"line {run.line}", f"{run.started:%Y-%m-%d %H:%M}", f"lead {run.lead}"),
                          asked=run.uid == asked))  # fmt: skip
        put(one.id, _bags(packs[one.id], asked))
    links = {
        link
        for one in blends
        for link in (
            *((place[Stage.LOT, use.lot], place[Stage.BLEND, one.id]) for use in one.uses),
            (place[Stage.BLEND, one.id], place[Stage.RUN, one.run.uid]),
            (place[Stage.RUN, one.run.uid], place[Stage.BAGS, one.id]),
        )
    }
    bags = [row for one in blends for row in packs[one.id]]
    return Tree(asked, tuple(nodes), frozenset(links), f"{len(bags)} bags, {_kilograms(bags)}")


def _bags(rows: list[PackRow], asked: str) -> Node:
    """The bags of a blend; the bag asked for stands alone among them."""
    own = next((row for row in rows if row.serial == asked), None)
    odd = sum(row.quality not in _CALM for row in rows)
    if own is not None:
        lines = (f"{own.net}", f"{own.quality}, label {own.label}", f"one of {len(rows)} bags")
        return Node(Stage.BAGS, own.serial, own.serial, lines, own.quality not in _CALM, True)
    if not rows:
        return Node(Stage.BAGS, "", "no bag")
    lines = (
        _kilograms(rows),
        f"{rows[0].serial} on",
        *([f"{odd} held or set aside"] if odd else ()),
    )
    held = any(row.quality == Quality.HELD for row in rows)
    title = "1 bag" if len(rows) == 1 else f"{len(rows)} bags"
    return Node(Stage.BAGS, rows[0].serial, title, lines, held)


def _kilograms(rows: list[PackRow]) -> str:
    return f"{plain(sum(row.net_ug for row in rows) * MICRO_TO_KILO)} kg"


# --- on paper ---------------------------------------------------------------------------------

_MOST_HEIGHT, _TALLEST, _HEAD = 560.0, 64.0, 18.0
_HEADS = {Stage.LOT: "INPUT LOTS", Stage.BLEND: "BLENDS", Stage.RUN: "RUNS", Stage.BAGS: "BAGS"}


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
                canvas.drawString(boxes[column[0]].left, self.height - 8, _HEADS[stage])
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
        size = min(9.5, box.height / 6.4)
        left, wide, y = box.left + 9, box.width - 14, top - box.top - size * 1.4
        canvas.setFillColor(paper.INK)
        for index, line in enumerate((node.title, *node.lines)):
            face = paper.STRONG if index == 0 else paper.TEXT
            fits = min(size, size * wide / max(stringWidth(line, face, size), 1))
            canvas.setFont(face, fits)
            canvas.drawString(left, y, line)
            y -= size * 1.32
