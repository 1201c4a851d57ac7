"""Products: each contradiction is refused by name, with the value and what is allowed."""

from dataclasses import FrozenInstanceError, replace
from decimal import Decimal, localcontext

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.mass import Mass
from station.core.product import BagItem, Component, ProductError, Share
from tests.station.line.scenario import grams, make_product

LEAF, ROOT, HERB = Component("ROM", "Romaine"), Component("CAR", "Carrot"), Component("DIL", "Dill")


def kilograms(text):
    return Mass.of(text, "kg")


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"version": 0}, "version must be a whole number from 1"),
        ({"life_days": 0}, "life of 0 days must be at least 1"),
        ({"life_days": -2}, "life of -2 days must be at least 1"),
        ({"nominal": grams(0)}, "nominal quantity 0 g must be above zero"),
        ({"nominal": grams(-250)}, "nominal quantity -250 g must be above zero"),
        ({"bag": BagItem("B", "crate", grams(250), "one")}, "tare 250 g of bag B must be below"),
        ({"bag": BagItem("B", "crate", kilograms("0.25"), "one")}, "tare 0.25 kg of bag B must be"),
        ({"floor": kilograms("0.25")}, "floor 0.25 kg must be in g"),
        ({"target": kilograms("0.252")}, "target 0.252 kg must be in g"),
        ({"upper": kilograms("0.262")}, "upper 0.262 kg must be in g"),
        ({"floor": grams(253)}, "must rise in this order"),
        ({"upper": grams(252)}, "must rise in this order"),
        ({"upper": grams(251)}, "must rise in this order"),
        ({"recipe": ()}, "the recipe has no component"),
        ({"recipe": (Share(LEAF, Decimal("99.9")),)}, "the shares add up to 99.9 %"),
        ({"recipe": (Share(LEAF, Decimal(70)), Share(ROOT, Decimal(31)))}, "add up to 101 %"),
        ({"recipe": (Share(LEAF, Decimal(50)),) * 2}, "a component stands twice"),
    ],
)
def test_a_product_that_cannot_be_packed_is_refused(changes, words):
    with pytest.raises(ProductError) as refused:
        make_product(**changes)
    assert str(refused.value).startswith("product HARBOUR-250 version ")
    assert words in str(refused.value)


def test_the_target_may_lie_on_the_floor():
    assert make_product(target=grams(250)).target == grams(250)


@pytest.mark.parametrize("tare", ["0", "-1"])
def test_an_empty_bag_weighs_something(tare):
    with pytest.raises(ProductError, match=rf"bag B6: tare {tare} g must be above zero"):
        BagItem("B6", "retail bag", grams(tare), "mean of 25")


@pytest.mark.parametrize("percent", ["0", "-1", "100.1", "NaN", "Infinity"])
def test_a_share_is_above_nothing_and_at_most_all(percent):
    with pytest.raises(ProductError, match=rf"share of ROM: {percent} % must be above 0"):
        Share(LEAF, Decimal(percent))
    assert Share(LEAF, Decimal(100)).percent == 100


@given(st.permutations([(LEAF, "33.3"), (ROOT, "33.3"), (HERB, "33.4")]))
def test_components_stand_heaviest_first_and_ties_as_given(parts):
    # Regulation (EU) 1169/2011 Article 18(1): ingredients in descending order of weight.
    product = make_product(recipe=tuple(Share(part, Decimal(share)) for part, share in parts))
    ties = [part for part, _ in parts if part is not HERB]
    assert product.components == (HERB, *ties)


@pytest.mark.parametrize("digits", [3, 28])
def test_no_rounding_makes_shares_fit_or_trade_places(digits):
    """Decimal arithmetic rounds to its context, 28 digits unless changed; a recipe is exact."""
    hair = Decimal("1e-30")
    with localcontext() as context:
        context.prec = 60
        more, less = 50 + hair, 50 - hair
    with localcontext() as context:
        context.prec = digits
        with pytest.raises(ProductError, match="the shares add up to"):
            make_product(recipe=(Share(LEAF, more), Share(ROOT, Decimal(50))))
        product = make_product(recipe=(Share(LEAF, less), Share(ROOT, more)))
        assert product.components == (ROOT, LEAF)


def test_a_version_does_not_change():
    product = make_product()
    with pytest.raises(FrozenInstanceError):
        product.life_days = 9
    assert replace(product, version=2) != product
