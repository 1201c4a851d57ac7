"""What should be left of a lot, with its uncertainty."""

import random
from dataclasses import replace
from datetime import UTC, date, datetime
from decimal import Decimal
from fractions import Fraction

import pytest

from station.core.balance import PackedSum, Water, balance, put_back
from station.core.line_lots import LotMove, Move
from station.core.lot_set import LotSet, LotUse
from station.core.mass import Mass
from station.core.product import Component, ProductError, Share
from tests.station.line.scenario import make_product

ROM, CAR = Component("ROM", "Romaine"), Component("CAR", "Carrot")
PRODUCT = replace(
    make_product(),
    recipe=(
        Share(ROM, Decimal(70), Decimal(66), Decimal(74)),
        Share(CAR, Decimal(30), Decimal(26), Decimal(34)),
    ),
)
KG = 10**9
"""Micrograms."""


def lot_set(*romaine):
    return LotSet.of([LotUse("CAR", "CAR-7"), *(LotUse("ROM", lot) for lot in romaine)])


def load(lot, kilograms, move=Move.LOADED):
    return LotMove(move, lot, "ROM", Mass.parse(f"{kilograms} kg"))


def left_of(lot, moves, packed, water=None):
    return balance(lot, "ROM", moves, packed, water or Water()).left


def test_what_is_left_of_one_lot_alone():
    left = left_of("A", [load("A", 100)], [PackedSum(PRODUCT, lot_set("A"), 100 * KG)])
    assert (left.low, left.likely, left.high) == (26_000, 30_000, 34_000)


def test_what_came_off_weighed_is_no_longer_there():
    moves = [load("A", 100), load("A", "2.5", Move.WASTED), load("A", 10, Move.RETURNED)]
    assert balance("A", "ROM", moves, [], Water()).loaded == 87_500


def test_in_an_overlap_a_lot_may_have_given_nothing_or_all():
    left = left_of("A", [load("A", 100)], [PackedSum(PRODUCT, lot_set("A", "B"), 10 * KG)])
    assert (left.low, left.likely, left.high) == (92_600, 96_500, 100_000)


def test_a_bag_that_was_set_aside_may_be_back_in_the_bin():
    left = left_of("A", [load("A", 100)], [PackedSum(PRODUCT, lot_set("A"), 0, 10 * KG)])
    assert (left.low, left.high) == (92_600, 100_000)


def test_water_in_the_net_is_not_taken_from_the_lot():
    water = Water(Decimal("0.5"), Decimal(3))
    left = left_of("A", [load("A", 100)], [PackedSum(PRODUCT, lot_set("A"), 100 * KG)], water)
    assert left.low == 100_000 - Fraction("0.995") * 74_000
    assert left.high == 100_000 - Fraction("0.97") * 66_000


def test_a_load_nobody_weighed_gives_no_balance_and_no_question():
    unweighed = LotMove(Move.LOADED, "A", "ROM")
    found = balance("A", "ROM", [unweighed], [PackedSum(PRODUCT, lot_set("A"), KG)], Water())
    assert (found.left, found.question) == (None, "")


@pytest.mark.parametrize(
    ("kilograms", "words"),
    [(70, ""), (68, "should be empty (2.0 kg over)"), (65, "more was packed from lot A")],
)
def test_too_much_packed_asks_whether_a_change_was_missed(kilograms, words):
    packed = [PackedSum(PRODUCT, lot_set("A"), 100 * KG)]
    question = balance("A", "ROM", [load("A", kilograms)], packed, Water()).question
    assert (words in question) if words else question == ""


@pytest.mark.parametrize("seed", range(5))
def test_every_kilogram_of_a_day_lies_within_its_stated_span(seed):
    """A day of 2000 bags whose true shares and water are drawn within the stated bounds."""
    draw = random.Random(seed)
    water = Water(Decimal("0.5"), Decimal(3))
    order = [f"R{n}" for n in range(6)]
    moves, true_used = [], dict.fromkeys(order, Fraction(0))
    packed = {}
    current, older, overlap = 0, None, 0
    moves.append(load(order[0], 75))
    for bag in range(2000):
        if bag and bag % 350 == 0 and current + 1 < len(order):
            older, current, overlap = current, current + 1, draw.randrange(10, 60)
            moves.append(load(order[current], 75))
        net = Fraction(draw.randrange(250_000_000, 262_000_000))
        share = Fraction(draw.randrange(6600, 7401), 10_000)
        dry = 1 - Fraction(draw.randrange(50, 301), 10_000)
        both = overlap > 0 and older is not None
        of_old = Fraction(draw.randrange(0, 101), 100) if both else Fraction(0)
        grams = net * share * dry / 10**6
        true_used[order[current]] += grams * (1 - of_old)
        if both:
            true_used[order[older]] += grams * of_old
            overlap -= 1
        lots = lot_set(order[current], *([order[older]] if both else []))
        before = packed.get(lots.key) or PackedSum(PRODUCT, lots)
        packed[lots.key] = replace(before, kept=before.kept + int(net))
    for lot in order:
        found = balance(lot, "ROM", moves, packed.values(), water)
        assert found.left.holds(75_000 - true_used[lot]), lot
        assert not found.question


def test_rework_of_a_lot_in_two_products_is_reckoned_by_the_recipe_it_came_from():
    """10 kg of slaw at 60 % carrot come back: 6 kg of the carrot, though the mix has 30 %."""
    slaw = replace(
        PRODUCT, recipe=(Share(CAR, Decimal(60)), Share(Component("CAB", "Cabbage"), Decimal(40)))
    )
    of_slaw = LotSet.of([LotUse("CAR", "CAR-7"), LotUse("CAB", "CAB-1")])
    packed = [
        PackedSum(slaw, of_slaw, kept=20 * KG, rejected=10 * KG, again=10 * KG),
        PackedSum(PRODUCT, lot_set("ROM-1"), kept=10 * KG),
    ]
    found = balance("CAR-7", "CAR", [], packed, Water())
    assert found.used.likely == 12_000 + 6_000 + 3_000 - 6_000


@pytest.mark.parametrize(
    ("move", "component", "kilograms"),
    [
        (Move.REWORK, "", 10),
        (Move.WASTED, "", -10),
        (Move.RETURNED, "", -10),
        (Move.EMPTY, "", 0),
        (Move.WASTED, "ROM", 0),
    ],
)
def test_what_came_off_the_line_out_of_bags_is_not_back_on_it(move, component, kilograms):
    """A move of rework names no component; waste of a lot is no waste of rework."""
    of_bags = {
        "members": lot_set("A").uses,
        "use_by": date(2026, 11, 30),
        "packed_at": datetime(2026, 11, 25, 9, tzinfo=UTC),
    }
    moved = LotMove(move, "L1", component, Mass.parse("10 kg"), **of_bags)
    assert put_back(moved) == kilograms * KG
    assert put_back(replace(moved, quantity=None, move=Move.RETURNED)) == 0


def test_bounds_of_a_share_must_enclose_it():
    with pytest.raises(ProductError, match="must enclose 70 %"):
        Share(ROM, Decimal(70), Decimal(71))
    with pytest.raises(ProductError, match="lie within 0 to 100"):
        Share(ROM, Decimal(70), None, Decimal(101))
    with pytest.raises(ValueError, match="two rising figures"):
        Water(Decimal(3), Decimal(1))
