"""A start goes through the lots that may still be used; any other is found by its code."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from station.core.product import Component
from station.store.lot_shelf import PAST, SHELF, lot_on_record, lots_on_the_shelf
from tests.station.store.conftest import CRESS, LEAF, LOTS

DAY = date(2026, 3, 4)
LAST = DAY - PAST
DAY_BEFORE = timedelta(days=1)
BEET = Component("BEET", "Beetroot", max_age_days=10)
BULK = replace(LOTS[1], received=DAY - SHELF)  # baby leaf here has no age of its own

KEPT = {
    "received just within the time": BULK,
    "last day just within the time": replace(BULK, use_by=LAST),
    "age just within the time": replace(
        LOTS[1], component="BEET", received=DAY, harvested=LAST - timedelta(days=10)
    ),
    "no harvest: its age counts from receipt": replace(
        LOTS[1], component="BEET", received=LAST - timedelta(days=10)
    ),
}
LEFT_OUT = {
    "received before": replace(BULK, received=DAY - SHELF - DAY_BEFORE),
    "last day before": replace(BULK, use_by=LAST - DAY_BEFORE),
    "age over, by harvest": replace(
        LOTS[1], component="BEET", received=DAY, harvested=LAST - timedelta(days=11)
    ),
    "age over, by receipt": replace(LOTS[1], component="BEET", received=LAST - timedelta(days=11)),
}


def shelf(world, lots, named=()):
    with world.open() as store:
        store.add_lots(lots, world.clock.now(), "p.marsh")
    return lots_on_the_shelf(world.home, DAY, named, (LEAF, CRESS, BEET))


@pytest.mark.parametrize("lot", KEPT.values(), ids=KEPT)
def test_what_may_still_be_used_is_gone_through(world, lot):
    assert shelf(world, [lot]) == (lot,)


@pytest.mark.parametrize("lot", LEFT_OUT.values(), ids=LEFT_OUT)
def test_what_may_not_is_found_by_its_code(world, lot):
    assert shelf(world, [lot]) == ()
    assert lot_on_record(world.home, lot.code) == lot
    assert lots_on_the_shelf(world.home, DAY, [lot.code]) == (lot,)
    assert lots_on_the_shelf(world.home, DAY, ["no such"], (BEET,)) == ()


def test_lots_come_in_the_order_of_their_codes_each_once(world):
    found = shelf(world, LOTS, [LOTS[0].code])
    assert [lot.code for lot in found] == sorted(lot.code for lot in LOTS)
