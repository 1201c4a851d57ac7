"""The range of a sliding window, against the plain way to work it out."""

import random
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from drivers.spread import Spread

STEPS = st.tuples(st.integers(0, 40), st.integers(-5, 5))


@given(st.lists(STEPS, max_size=60))
def test_it_is_largest_minus_smallest_of_what_lies_in_the_window(steps) -> None:
    spread, seen, now = Spread(100), [], 0
    for passed, value in steps:
        now += passed
        seen.append((now, Decimal(value)))
        within = [one for at, one in seen if at >= now - 100]
        assert spread.add(now, Decimal(value)) == max(within) - min(within)


def test_a_flood_fills_no_memory() -> None:
    spread, chance = Spread(10**9), random.Random(7)
    for n in range(10_000):
        spread.add(n, Decimal(n))
        spread.add(n, Decimal(chance.randrange(n + 1)))
    assert len(spread._falling) + len(spread._rising) <= 4_000
    spread.clear()
    assert spread.add(10_001, Decimal(3)) == 0
