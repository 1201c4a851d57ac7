"""The family tree of a lot, a blend, a run, a bag, a case, a pallet or a shipment on record."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

from station.core.genealogy import Node, Stage, Tree
from station.core.lots import InputLot, LotStatus
from station.core.metrology.exact import plain
from station.core.pack import FREE, Quality
from station.core.shipping import UnitKind
from station.core.shipping_lines import Place, ShipmentLine
from station.reports.recall import MICRO_TO_KILO
from station.reports.serial_scan import is_serial
from station.reports.unit_scan import is_sscc, named_by_scan
from station.store.purged import GoneRun, gone_with_bags, gone_with_lot, purge_words
from station.store.recall import (
    BlendLine,
    PackRow,
    Reach,
    blend_of_pack,
    is_named,
    reach_of_blend,
    reach_of_lot,
    reach_of_run,
    reach_of_serials,
)
from station.store.shipping import places_of
from station.store.unit_contents import contents_of_shipment, contents_of_unit

_REACHES = {"lot": reach_of_lot, "blend": reach_of_blend, "run": reach_of_run}


def tree_of(home: Path, asked: str) -> Tree:
    """Return the tree of whatever a person typed or scanned.

    Raises:
        BadInput: the record has nothing of that name; names what is close to it, or its purge.
    """
    asked = _as_named(home, asked.strip())
    tree = _tree_of(home, asked)
    gone = _gone(home, asked, named_by_scan(asked))
    if not gone:
        return tree
    return replace(tree, answer=f"{tree.answer}; {purge_words(gone)}")


def _as_named(home: Path, asked: str) -> str:
    """What was asked, in capitals where the record knows it only so: codes come as typed."""
    capitals = asked.upper()
    if capitals == asked or is_named(home, asked) or not is_named(home, capitals):
        return asked
    return capitals


def _gone(home: Path, text: str, scanned: str) -> tuple[GoneRun, ...]:
    """Purged runs that belong to a lot, or had bags in a unit or a shipment."""
    if is_named(home, scanned) == "unit":
        return gone_with_bags(home, contents_of_unit(home, scanned).serials)
    if is_named(home, text) == "shipment":
        return gone_with_bags(home, contents_of_shipment(home, text).serials)
    return gone_with_lot(home, text)


def _tree_of(home: Path, asked: str) -> Tree:
    text, scanned = asked.strip(), named_by_scan(asked)
    if (way := _SCANNED.get(is_named(home, scanned))) is not None:
        return way(home, scanned)
    named = is_named(home, text)
    if named in _REACHES:
        reach = _REACHES[named](home, text)
        return _Drawing(text, reach).with_bags(_places(home, reach.packs))
    if named == "shipment":
        return _of_shipment(home, text)
    if is_sscc(scanned):  # nothing of that name: each of these says what is close to it
        contents_of_unit(home, scanned)
    if is_serial(scanned):
        blend_of_pack(home, scanned)
    return _Drawing(text, reach_of_lot(home, text)).with_bags({})


def _of_bag(home: Path, serial: str) -> Tree:
    reach = reach_of_blend(home, blend_of_pack(home, serial))
    return _Drawing(serial, reach).with_bags(places_of(home, (serial,)))


def _of_unit(home: Path, sscc: str) -> Tree:
    held = contents_of_unit(home, sscc)
    drawing, tree = _drawn(home, sscc, held.serials)
    its = held.unit
    if not its.undone:
        return tree
    stage, words = (
        (Stage.CASE, "OPENED") if its.kind is UnitKind.CASE else (Stage.PALLET, "BROKEN UP")
    )
    return drawing.with_former(Node(stage, sscc, _grouped(sscc), (words,), asked=True), held.cases)


def _of_shipment(home: Path, number: str) -> Tree:
    left = contents_of_shipment(home, number)
    drawing, tree = _drawn(home, number, left.serials)
    its = left.shipment
    return tree if its.gone else drawing.with_former(_shipment(its, False, True), left.units)


def _drawn(home: Path, asked: str, serials: Sequence[str]) -> tuple[_Drawing, Tree]:
    """The tree of some bags, and its drawing, to which more may be put."""
    reach = reach_of_serials(home, serials)
    drawing = _Drawing(asked, reach)
    return drawing, drawing.with_bags(_places(home, reach.packs))


_SCANNED = {"pack": _of_bag, "unit": _of_unit}


def _places(home: Path, rows: Sequence[PackRow]) -> Mapping[str, Place]:
    return places_of(home, [row.serial for row in rows])


class _Drawing:
    """Nodes and links as they come, each node once.

    Args:
        asked: serial, code, id, SSCC or number the tree is for.
        reach: its bags, and what they are made of.
    """

    def __init__(self, asked: str, reach: Reach) -> None:
        self._asked, self._reach = asked, reach
        self._packs: dict[int, list[PackRow]] = {one.id: [] for one in reach.blends}
        for row in reach.packs:
            self._packs[row.blend_id].append(row)
        self._alone = next((row.blend_id for row in reach.packs if row.serial == asked), None)
        self._blends = [one for one in reach.blends if self._alone in (None, one.id)]
        self._nodes: list[Node] = []
        self._at: dict[tuple[Stage, object], int] = {}
        self._links: set[tuple[int, int]] = set()
        self._answer = ""

    def with_bags(self, places: Mapping[str, Place]) -> Tree:
        """The tree from the lots to the bags, and as far beyond as they have places."""
        used = {use.lot for one in self._blends for use in one.uses} | {self._asked}
        for lot in self._reach.lots:
            if lot.code in used:
                self._put(lot.code, _lot(lot, lot.code == self._asked))
        for blend in self._blends:
            self._blend(blend)
        self._beyond(places)
        bags = [row for one in self._blends for row in self._packs[one.id]]
        gone = sum(one.shipment is not None for one in places.values())
        self._answer = f"{_count(bags)}, {_kilograms(bags)}"
        if self._alone is not None:
            self._answer = f"one of {self._answer}, {_where(places.get(self._asked))}"
        elif gone:
            self._answer += f", {gone} with customers"
        return self._tree()

    def with_former(self, node: Node, parts: Iterable[str]) -> Tree:
        """The tree with a unit or shipment that is undone, behind what it was made of."""
        self._put(node.key, node)
        units = [(stage, part) for part in parts for stage in (Stage.CASE, Stage.PALLET)]
        there = [one for one in units if one in self._at and one[1] != node.key]
        bags = [(Stage.BAGS, one.id) for one in self._blends]
        for one in there or bags:
            self._link(one, (node.stage, node.key))
        return self._tree()

    def _tree(self) -> Tree:
        return Tree(self._asked, tuple(self._nodes), frozenset(self._links), self._answer)

    def _put(self, name: object, node: Node) -> None:
        if (node.stage, name) not in self._at:
            self._at[node.stage, name] = len(self._nodes)
            self._nodes.append(node)

    def _link(self, one: tuple[Stage, object], other: tuple[Stage, object]) -> None:
        self._links.add((self._at[one], self._at[other]))

    def _blend(self, one: BlendLine) -> None:
        run, asked = one.run, self._asked
        days = (f"use by {one.use_by}", f"packed {one.production_day}")
        self._put(one.id, Node(Stage.BLEND, one.code, one.code, days, asked=one.code == asked))
        facts = (f"line {run.line}", f"{run.started:%Y-%m-%d %H:%M}", f"lead {run.lead}")
        self._put(run.uid, Node(Stage.RUN, run.uid, run.name, facts, asked=run.uid == asked))
        self._put(one.id, _bags(self._packs[one.id], asked))
        for use in one.uses:
            self._link((Stage.LOT, use.lot), (Stage.BLEND, one.id))
        self._link((Stage.BLEND, one.id), (Stage.RUN, run.uid))
        self._link((Stage.RUN, run.uid), (Stage.BAGS, one.id))

    def _beyond(self, places: Mapping[str, Place]) -> None:
        """Cases, pallets and shipments of the bags that have a place."""
        held: dict[tuple[Stage, str], list[PackRow]] = {}
        ways: dict[tuple[tuple[Stage, object], ...], None] = {}
        shipments: dict[str, ShipmentLine] = {}
        for row in (row for blend in self._blends for row in self._packs[blend.id]):
            if (place := places.get(row.serial)) is None:
                continue
            way: list[tuple[Stage, str]] = [(Stage.CASE, place.case)]
            if place.pallet:
                way.append((Stage.PALLET, place.pallet))
            if place.shipment is not None:
                shipments[place.shipment.number] = place.shipment
                way.append((Stage.SHIPMENT, place.shipment.number))
            for one in way:
                held.setdefault(one, []).append(row)
            ways.setdefault(((Stage.BAGS, row.blend_id), *way))
        for (stage, name), rows in held.items():
            asked = name == self._asked
            if stage is Stage.SHIPMENT:
                self._put(name, _shipment(shipments[name], _odd(rows) > 0, asked))
                continue
            facts = ("this bag in it",) if self._alone else (_count(rows), _kilograms(rows))
            self._put(name, Node(stage, name, _grouped(name), facts, _odd(rows) > 0, asked))
        for steps in ways:
            for before, after in pairwise(steps):
                self._link(before, after)


def _where(place: Place | None) -> str:
    if place is None:
        return "in no case"
    return "in the house" if place.shipment is None else f"with {place.shipment.customer.name}"


def _grouped(sscc: str) -> str:
    """An SSCC in two groups of digits, so that it is read off and fits a narrow plate."""
    return f"{sscc[:9]} {sscc[9:]}"


def _lot(lot: InputLot, asked: bool) -> Node:
    lines = (lot.component, lot.supplier, f"received {lot.received}")
    held = lot.status is not LotStatus.FREE
    status = (str(lot.status).upper(),) if held else ()
    return Node(Stage.LOT, lot.code, lot.code, (*status, *lines), held, asked)


def _shipment(gone: ShipmentLine, odd: bool, asked: bool) -> Node:
    state = () if gone.gone else (gone.state.upper(),)
    lines = (*state, gone.number, f"{gone.at:%Y-%m-%d}", gone.reference)
    return Node(Stage.SHIPMENT, gone.number, gone.customer.name, lines, odd, asked)


def _bags(rows: list[PackRow], asked: str) -> Node:
    """The bags of a blend; the bag asked for stands alone among them."""
    own = next((row for row in rows if row.serial == asked), None)
    odd = _odd(rows)
    if own is not None:
        lines = (f"{own.net}", f"{own.quality}, label {own.label}", f"one of {len(rows)} bags")
        return Node(Stage.BAGS, own.serial, own.serial, lines, own.quality not in FREE, True)
    if not rows:
        return Node(Stage.BAGS, "", "no bag")
    lines = (
        _kilograms(rows),
        f"from {rows[0].serial}",
        *([f"{odd} held or set aside"] if odd else ()),
    )
    held = any(row.quality == Quality.HELD for row in rows)
    return Node(Stage.BAGS, rows[0].serial, _count(rows), lines, held)


def _odd(rows: Sequence[PackRow]) -> int:
    return sum(row.quality not in FREE for row in rows)


def _count(rows: Sequence[PackRow]) -> str:
    return "1 bag" if len(rows) == 1 else f"{len(rows)} bags"


def _kilograms(rows: Sequence[PackRow]) -> str:
    return f"{plain(sum(row.net_ug for row in rows) * MICRO_TO_KILO)} kg"
