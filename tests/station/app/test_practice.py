"""The demo's choices: shares of an order, lots that may be used, what a packer sees."""

from datetime import UTC, datetime

import pytest

from station.app.headless import _share
from station.app.places import demo_settings
from station.app.practice import habits_for, run_choice
from station.app.summary import _quantiles
from station.config.load import load
from station.core.lots import LotStatus
from station.core.product import PackMode
from station.errors import BadInput
from station.line.lot_offer import free_lots

TODAY = datetime.now(UTC).date()  # noqa: TID251  the demo's lots are days old


@pytest.fixture(scope="module")
def house():
    return load(demo_settings(), TODAY)


@pytest.mark.parametrize(("packs", "products"), [(200, 4), (3, 4), (1, 4), (401, 3)])
def test_shares_add_up_to_the_order(packs, products):
    shares = [_share(packs, products, number) for number in range(products)]
    assert sum(shares) == packs
    assert max(shares) - min(shares) <= 1


def test_every_product_can_be_packed_from_lots_that_are_free(house):
    for product in house.products.values():
        chosen = free_lots(product, house.lots, TODAY)
        assert len(chosen) == len(product.components)
        assert all(house.lots[code].status is LotStatus.FREE for code in chosen)


def test_a_component_without_a_usable_lot_is_named(house):
    product = next(iter(house.products.values()))
    component = product.components[0]
    lots = {code: lot for code, lot in house.lots.items() if lot.component != component.code}
    with pytest.raises(BadInput, match=component.name):
        free_lots(product, lots, TODAY)


def test_the_lead_and_the_packer_are_different_people(house):
    product = next(iter(house.products.values()))
    choice = run_choice(house, product, TODAY, 10)
    assert choice.lead != choice.operator


def test_a_sealed_bag_comes_filled_about_the_middle_of_its_window(house):
    product = next(one for one in house.products.values() if one.mode is PackMode.CHECK)
    habits = habits_for(product)
    assert float(product.floor.grams) < habits.target_g < float(product.upper.grams)


def test_quantiles_are_nearest_rank_in_milliseconds():
    nanoseconds = [number * 1_000_000 for number in range(1, 101)]
    assert _quantiles(nanoseconds) == {"p50": 50.0, "p99": 99.0}
    assert _quantiles([]) == {"p50": None, "p99": None}
