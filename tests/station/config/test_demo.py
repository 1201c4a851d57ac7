"""The demo packhouse: sound in the trade's numbers, and good for showing refusals."""

from collections.abc import Mapping
from datetime import date, timedelta
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from stdnum import ean

from station.config.load import load
from station.config.packhouse import Role
from station.core.dating import DatingError, date_run
from station.core.lot_set import assemble
from station.core.lots import InputLot, LotError
from station.core.metrology.rule_sets.registry import rule_set
from station.core.product import PackMode, Product

DEMO = Path(__file__).parents[3] / "demo_config"
TODAY = date(2026, 11, 25)
HOUSE = load(DEMO, TODAY)
PRODUCTS = sorted(HOUSE.products)

every_product = pytest.mark.parametrize("code", PRODUCTS)


def good_lots(product: Product, lots: Mapping[str, InputLot], today: date) -> list[str]:
    """Every lot of the recipe that is free and not past its day."""
    wanted = {component.code for component in product.components}
    return [
        lot.code
        for lot in lots.values()
        if lot.component in wanted
        and lot.status == "free"
        and not (lot.use_by and lot.use_by < today)
    ]


def test_two_retail_and_two_foodservice_products_in_both_modes():
    grams = sorted(product.nominal.grams for product in HOUSE.products.values())
    assert grams == [200, 340, 907, 2270]
    modes = [product.mode for product in HOUSE.products.values()]
    assert (modes.count(PackMode.FILL), modes.count(PackMode.CHECK)) == (3, 1)
    assert 5 <= len(HOUSE.components) <= 8


@every_product
def test_gtins_are_demo_numbers_with_their_check_digit(code):
    """GS1 prefix 952 is set aside for demonstrations and examples; oracle: python-stdnum."""
    gtin = HOUSE.products[code].gtin
    assert gtin.startswith("952")
    assert ean.is_valid(gtin)


# Tolerable shortage by EU 76/211/EEC Annex I 2.4: 4.5 % from 100 to 200 g, 3 % from 300 to 500 g,
# 15 g from 500 to 1000 g, 1.5 % above, rounded up to 0.1 g.
TOLERABLE_G = {
    "ROCKET-SPINACH-200": "9",
    "SLAW-340": "10.2",
    "LEAF-MIX-907": "15",
    "SOUP-MIX-2270": "34.1",
}


@every_product
def test_limits_of_the_law(code):
    product = HOUSE.products[code]
    limits = rule_set(product.rule_set).limits(product.nominal)
    assert limits.tolerable.grams == Decimal(TOLERABLE_G[code])
    assert product.floor >= product.nominal


@every_product
def test_tares_are_in_the_trades_range(code):
    """Common practice: retail film bags 4-9 g, foodservice bags 14-30 g."""
    product = HOUSE.products[code]
    low, high = (4, 9) if product.nominal.grams < 500 else (14, 30)
    assert low <= product.bag.tare.grams <= high


@every_product
@given(days=st.integers(-3650, 3650))
def test_every_product_can_be_packed_on_any_day(code, days):
    today = TODAY + timedelta(days=days)
    house = load(DEMO, today)
    product = house.products[code]
    lots = good_lots(product, house.lots, today)
    lot_set = assemble(product, lots, house.lots, today)
    dating = date_run(product, [house.lots[use.lot] for use in lot_set.uses], today)
    assert today < dating.use_by <= today + timedelta(days=product.life_days)


def test_one_lot_shortens_a_life():
    product = HOUSE.products["ROCKET-SPINACH-200"]
    lots = good_lots(product, HOUSE.lots, TODAY)
    dating = date_run(product, [HOUSE.lots[code] for code in lots], TODAY)
    assert (dating.shortened_by, dating.use_by) == ("HG-S26328", TODAY + timedelta(days=6))


@pytest.mark.parametrize(
    ("lot", "words"), [("DF-I26328", "is held"), ("DF-C26320", "had its last day on 2026-11-24")]
)
def test_a_held_and_an_expired_lot_are_refused(lot, words):
    product = HOUSE.products["LEAF-MIX-907"]
    lots = [*good_lots(product, HOUSE.lots, TODAY), lot]
    with pytest.raises(LotError, match=words):
        assemble(product, lots, HOUSE.lots, TODAY)
    if HOUSE.lots[lot].use_by is not None:
        with pytest.raises(DatingError, match=words):
            date_run(product, [HOUSE.lots[lot]], TODAY)


def test_people_of_every_role():
    assert {person.role for person in HOUSE.people.values()} == set(Role)


def test_a_price_belongs_to_the_product_that_names_it():
    house = load(DEMO, TODAY)
    assert {code: str(price) for code, price in house.prices.items()} == {
        "ROCKET-SPINACH-200": "6.40"
    }
