"""The family tree of a bag or a lot, and where each part of its picture lies.

Columns from left to right, as product flows: input lots, blends, runs, bags, and beyond them the
cases, pallets and shipments they went into. The same places serve the screen and the paper; only
pixels and points differ.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

MOST = 6
"""Nodes shown in one column; what is more is counted in the last one."""
_GAP_ACROSS = 0.32
"""Room between columns, as a share of a node's width; links need it to be seen."""
_GAP_DOWN = 0.18
"""Least room between nodes of a column, as a share of their height."""


class Stage(StrEnum):
    """What a node is; also what its key names."""

    LOT = "lot"
    BLEND = "blend"
    RUN = "run"
    BAGS = "bags"
    CASE = "case"
    PALLET = "pallet"
    SHIPMENT = "shipment"


HEADS = {
    Stage.LOT: "INPUT LOTS",
    Stage.BLEND: "BLENDS",
    Stage.RUN: "RUNS",
    Stage.BAGS: "BAGS",
    Stage.CASE: "CASES",
    Stage.PALLET: "PALLETS",
    Stage.SHIPMENT: "CUSTOMERS",
}
"""What stands over each column."""
_ALWAYS = frozenset((Stage.LOT, Stage.BLEND, Stage.RUN, Stage.BAGS))
"""Columns that keep their place where they are empty."""


@dataclass(frozen=True, slots=True)
class Node:
    """One part of the tree.

    Args:
        stage: its column.
        key: what a touch goes on with: lot code, blend lot code, run id, serial, SSCC, number of
            the shipment; empty for none.
        title: its name.
        lines: what is known of it, a line each.
        attend: something of it is held or set aside.
        asked: the tree was asked for it.
    """

    stage: Stage
    key: str
    title: str
    lines: tuple[str, ...] = ()
    attend: bool = False
    asked: bool = False


@dataclass(frozen=True, slots=True)
class Tree:
    """Nodes with links from left to right.

    Args:
        asked: what was asked for.
        nodes: each once, in the order of their column.
        links: pairs of places in ``nodes``.
        answer: how many bags, in words.
    """

    asked: str
    nodes: tuple[Node, ...]
    links: frozenset[tuple[int, int]]
    answer: str = ""

    def column(self, stage: Stage) -> tuple[int, ...]:
        """Places of the nodes of a column."""
        return tuple(at for at, node in enumerate(self.nodes) if node.stage is stage)

    @property
    def columns(self) -> tuple[tuple[int, ...], ...]:
        """The columns of its picture; those beyond the bags only where something is in them."""
        found = ((stage, self.column(stage)) for stage in Stage)
        return tuple(column for stage, column in found if column or stage in _ALWAYS)


@dataclass(frozen=True, slots=True)
class Box:
    """Where a node lies; any unit of length, down from the top."""

    left: float
    top: float
    width: float
    height: float

    @property
    def right(self) -> float:
        """Its right edge."""
        return self.left + self.width

    @property
    def middle(self) -> float:
        """Half its height."""
        return self.top + self.height / 2

    def holds(self, x: float, y: float) -> bool:
        """Whether a point lies in it."""
        return self.left <= x <= self.right and self.top <= y <= self.top + self.height


def folded(tree: Tree, most: int = MOST) -> Tree:
    """Return a tree with at most so many nodes in a column; the last one counts the others."""
    kept: dict[int, int] = {}
    nodes: list[Node] = []
    for stage in Stage:
        column = sorted(tree.column(stage), key=lambda at: not tree.nodes[at].asked)
        shown = column if len(column) <= most else column[: most - 1]
        for at in sorted(shown):
            kept[at] = len(nodes)
            nodes.append(tree.nodes[at])
        rest = [at for at in column if at not in kept]
        if rest:
            held = any(tree.nodes[at].attend for at in rest)
            kept |= dict.fromkeys(rest, len(nodes))
            nodes.append(Node(stage, "", f"and {len(rest)} more", attend=held))
    links = frozenset((kept[one], kept[other]) for one, other in tree.links)
    return replace(tree, nodes=tuple(nodes), links=links)


def layout(tree: Tree, width: float, height: float, tallest: float) -> tuple[Box, ...]:
    """Return the box of each node.

    Args:
        tree: already folded.
        width: of the picture.
        height: of the picture.
        tallest: height no node exceeds, so that a small tree is not drawn huge.
    """
    columns = tree.columns
    across = width / (len(columns) + _GAP_ACROSS * (len(columns) - 1))
    most = max((len(column) for column in columns), default=1) or 1
    tall = min(tallest, height / (most + _GAP_DOWN * (most - 1)))
    boxes: dict[int, Box] = {}
    for place, column in enumerate(columns):
        left = place * across * (1 + _GAP_ACROSS)
        for at, middle in zip(column, _middles(len(column), height, tall), strict=True):
            boxes[at] = Box(left, middle - tall / 2, across, tall)
    return tuple(boxes[at] for at in range(len(tree.nodes)))


def _middles(count: int, height: float, tall: float) -> Sequence[float]:
    """Nodes share the height evenly, but stay close where there are few."""
    step = min(height / max(count, 1), tall * (1 + 3 * _GAP_DOWN))
    first = height / 2 - step * (count - 1) / 2
    return [first + step * at for at in range(count)]
