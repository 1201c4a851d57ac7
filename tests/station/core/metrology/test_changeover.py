"""Missed changeover: a question when a trait leaves its habit."""

from random import Random

from station.core.metrology.changeover import Habit, Trait, ask

HABITS = {
    Trait.FILL: Habit(252.0, 3.0),
    Trait.HANDFUL: Habit(15.0, 4.0),
    Trait.TARE: Habit(7.0, 0.1),
}


def values(mean: float, spread: float, count: int, seed: int) -> list[float]:
    random = Random(seed)
    return [random.gauss(mean, spread) for _ in range(count)]


def test_a_bag_of_another_film_raises_a_question():
    seen = values(7.0, 0.1, 40, 1) + values(7.3, 0.1, 10, 2)
    (question,) = ask(HABITS, {Trait.TARE: seen})
    assert question.trait is Trait.TARE
    assert 37 <= question.since <= 41
    assert question.words == "tare was 7.0 g, now 7.3 g: is this still the same product?"


def test_larger_handfuls_raise_a_question():
    seen = values(15.0, 4.0, 100, 3) + values(27.0, 4.0, 12, 4)
    (question,) = ask(HABITS, {Trait.HANDFUL: seen, Trait.FILL: values(252.0, 3.0, 100, 5)})
    assert question.trait is Trait.HANDFUL


def test_a_fall_is_seen_as_well():
    seen = values(252.0, 3.0, 50, 6) + values(246.0, 3.0, 20, 7)
    (question,) = ask(HABITS, {Trait.FILL: seen})
    assert question.seen < 249


def test_the_usual_product_is_seldom_questioned():
    """A slack of 0.5 and a limit of 8 standard deviations: about once in 10 000 packs."""
    asked = sum(bool(ask(HABITS, {Trait.FILL: values(252.0, 3.0, 200, s)})) for s in range(200))
    assert asked <= 2


def test_a_trait_without_habit_or_values_is_not_asked_about():
    assert ask({}, {Trait.FILL: [1.0]}) == ()
    assert ask(HABITS, {Trait.FILL: []}) == ()
