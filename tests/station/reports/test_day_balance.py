"""A simulated day: where each gram truly went lies in the span the station states for its lot.

Shares, water and overlaps are drawn within the bounds the recipes and settings state; the day has
an overlap, a clean break, waste, a return, bags set aside, their rework an hour later, and a lot
carried over to another product with another share of it.
"""

import random
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from fractions import Fraction

import pytest

from station.core.balance import Water
from station.core.line_lots import LotMove, Move
from station.core.lot_set import LotUse
from station.core.mass import Mass
from station.core.product import Component, Share
from station.core.receiving import Delivery, delivery_fact
from station.line.lot_change import LotRules
from station.reports.recall import Scope, recall
from station.store.queries import trace_lot, trace_pack
from tests.station.line.lot_rig import LotLine, lot
from tests.station.line.scenario import make_product

ROM, CAR, CAB = (Component(code, code.title()) for code in ("ROM", "CAR", "CAB"))
WATER = Water(Decimal("0.5"), Decimal(3))


def product(code, gtin, *shares):
    recipe = tuple(
        Share(component, Decimal(mid), Decimal(mid - 4), Decimal(mid + 4))
        for component, mid in shares
    )
    return replace(make_product(), code=code, gtin=gtin, recipe=recipe)


MIX = product("HARBOUR-250", "9521234000013", (ROM, 70), (CAR, 30))
SLAW = product("TIDE-250", "9521234000020", (CAR, 60), (CAB, 40))
CAME = {"ROM-A": (ROM, 9), "ROM-B": (ROM, 9), "CAR-A": (CAR, 12), "CAB-A": (CAB, 4)}


class Day:
    """A line with someone who knows what nobody on a real line can: what each bag truly holds."""

    def __init__(self, home, seed):
        self.draw = random.Random(seed)
        self.line = line = LotLine(
            home, products=(MIX, SLAW), lots=(), rules=LotRules(rework=timedelta(hours=2))
        )
        for code, (component, kilograms) in CAME.items():
            came = Delivery(lot(code, component.code), Mass.parse(f"{kilograms} kg"))
            line.store.record((delivery_fact(came, f"d-{code}"),), line.clock.now(), "P01")
            line.book._put(came.lot)
        self.left = {code: Fraction(1000 * kg) for code, (_, kg) in CAME.items()}

    def contents(self, net, product, *lots):
        """True grams of each lot in a bag; in an overlap any part may be of either."""
        dry = net * (1 - Fraction(self.draw.randrange(50, 301), 10_000))
        first, second = (one.component.code for one in product.recipe)
        low, high = product.recipe[0].low, product.recipe[0].high
        share = Fraction(self.draw.randrange(int(low * 100), int(high * 100) + 1), 10_000)
        grams = {first: dry * share, second: dry * (1 - share)}
        held = {}
        for component, amount in grams.items():
            mine = [code for code in lots if CAME[code][0].code == component]
            part = Fraction(self.draw.randrange(0, 101), 100) if len(mine) > 1 else Fraction(1)
            held[mine[0]] = amount * part
            if len(mine) > 1:
                held[mine[1]] = amount * (1 - part)
        return held

    def take(self, held):
        for code, grams in held.items():
            self.left[code] -= grams

    def bags(self, number, product, *lots):
        serials = []
        for _ in range(number):
            net = self.draw.randrange(250, 262)
            self.take(self.contents(net, product, *lots))
            serials.append(self.line.bag(str(net)))
        return serials

    def burst(self, product, *lots):
        self.take(self.contents(252, product, *lots))
        return self.line.bag_aside()

    def move(self, move, code, kilograms=None):
        mass = None if kilograms is None else Mass.parse(f"{kilograms} kg")
        assert self.line.move(LotMove(move, code, quantity=mass)).recorded

    def rework(self, serials, packed_at):
        found = [trace_pack(self.line.home, one) for one in serials]
        members = {LotUse(its.component, its.code) for one in found for its in one.lots}
        draft = found[0].record.draft
        again = LotMove(
            Move.REWORK,
            draft.blend_lot,
            quantity=Mass.parse(f"{252 * len(serials)} g"),
            members=tuple(sorted(members, key=str)),
            use_by=draft.use_by,
            packed_at=packed_at,
            serials=tuple(serials),
        )
        assert self.line.move(again).recorded, self.line.entered[-1].words
        return again.lot


@pytest.mark.parametrize("seed", range(3))
def test_every_gram_of_a_day_lies_within_what_is_stated_of_its_lot(tmp_path, seed):
    day = Day(tmp_path / "home", seed)
    line = day.line
    line.start("ROM-A", "CAR-A", product=MIX)
    day.bags(15, MIX, "ROM-A", "CAR-A")
    began = line.clock.utc
    aside = [day.burst(MIX, "ROM-A", "CAR-A") for _ in range(2)]
    day.move(Move.LOADED, "ROM-B")
    overlap = day.bags(6, MIX, "ROM-A", "ROM-B", "CAR-A")
    day.move(Move.EMPTY, "ROM-A")
    day.move(Move.WASTED, "ROM-B", "0.4")
    day.left["ROM-B"] -= 400
    day.bags(6, MIX, "ROM-B", "CAR-A")
    line.clock.pass_by(3_600_000)
    line.weigh(0)
    reworked = day.rework(aside, began)
    mixed = [line.bag("252") for _ in aside]  # filled with what the burst bags held, and no more
    day.move(Move.EMPTY, reworked)
    day.bags(2, MIX, "ROM-B", "CAR-A")
    line.end()
    line.start("CAR-A", "CAB-A", product=SLAW)
    day.move(Move.RETURNED, "ROM-B", "1.0")
    day.bags(12, SLAW, "CAR-A", "CAB-A")
    found = {code: ask(code, line) for code in CAME}
    for code, one in found.items():
        (its,) = one.lots
        assert its.rest.holds(day.left[code]), (code, float(day.left[code]), its.rest)
        assert its.adds_up
        assert its.rest.high - its.rest.low < Fraction(1, 3) * its.received, "says something"
    assert set(overlap) | set(mixed) <= {one.serial for one in trace_lot(line.home, "ROM-A").packs}
    line.close()


def ask(code, line):
    return recall([line.home], Scope.LOT, code, datetime(2026, 11, 25, 23, tzinfo=UTC), water=WATER)
