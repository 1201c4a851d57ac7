"""A handful is learnt from the steps of topping up, product by product."""

from station.core.handful import FEWEST, USUAL, Handful
from station.core.mass import Mass


def grams(amount):
    return Mass.parse(f"{amount} g")


def learn(handful, product, steps, first_cycle=1):
    for number, step in enumerate(steps, first_cycle):
        handful.see(product, number, grams(200))
        handful.see(product, number, grams(200 + step))


def test_usual_until_enough_steps():
    handful = Handful()
    learn(handful, "A", [30] * (FEWEST - 1))
    assert handful.mass == USUAL
    learn(handful, "A", [30], FEWEST)
    assert handful.mass == grams(30)


def test_middle_step_is_not_moved_by_one_large_one():
    handful = Handful()
    learn(handful, "A", [11, 12, 13, 14, 150])
    assert handful.mass == grams(13)


def test_first_weight_of_a_bag_and_what_is_taken_out_are_no_steps():
    handful = Handful()
    learn(handful, "A", [-20] * 9)
    for number in range(20, 40):
        handful.see("A", number, grams(240))
    assert handful.mass == USUAL


def test_another_product_begins_anew():
    handful = Handful()
    learn(handful, "A", [30] * 9)
    handful.see("B", 99, grams(1))
    assert handful.mass == USUAL


def test_halves():
    handful = Handful()
    assert handful.halves(grams(16)) == 2
    assert handful.halves(grams(20)) == 2
    assert handful.halves(grams(24)) == 3
    assert handful.halves(grams(1)) == 1
