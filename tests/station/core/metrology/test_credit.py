"""Light credit: never below Qn - T/2, never below the reserve, off by default."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.mass import Mass
from station.core.metrology.credit import LightCredit, credit_floor
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.running import RunningBatch

LIMITS = rule_set("eu-76-211").limits(Mass.parse("250 g"))
STEP = Mass.parse("0.5 g")
ON = LightCredit(enabled=True)


def batch(*groups: tuple[int, str]) -> RunningBatch:
    return RunningBatch(LIMITS).add_all(Mass.of(net) for n, net in groups for _ in range(n))


def test_off_by_default():
    assert credit_floor(batch((500, "255")), STEP, LightCredit()) == Mass.of(250)


def test_a_fresh_batch_has_no_credit():
    assert credit_floor(RunningBatch(LIMITS), STEP, ON) == Mass.of(250)
    assert credit_floor(batch((29, "255")), STEP, ON) == Mass.of(250)


def test_floor_never_goes_below_half_t():
    """T/2 = 4.5 g: however large the surplus, 245.5 g."""
    assert credit_floor(batch((500, "255")), STEP, ON) == Mass.of("245.5")


def test_surplus_less_reserve_is_what_a_bag_may_lack():
    """50 bags at 251 and 50 at 253: surplus 200; s^2 = 100/99, reserve 3 s 10 = 30.151.

    With 14 bags at 248 more: surplus 172, so the credit is worth more than T/2 still; with 99 bags
    at 248.3 the surplus is 31.7 and the next bag may lack a little over 0 g only.
    """
    assert credit_floor(batch((50, "251"), (50, "253")), STEP, ON) == Mass.of("245.5")
    spent = batch((50, "251"), (50, "253"), (99, "248.3"))
    assert credit_floor(spent, STEP, ON) == Mass.of(250)


@given(st.lists(st.integers(2455, 2560), min_size=30, max_size=80))
def test_surplus_stays_above_the_reserve_after_the_lightest_bag(tenths):
    packed = RunningBatch(LIMITS).add_all(Mass.of(f"{t // 10}.{t % 10}") for t in tenths)
    floor = credit_floor(packed, Mass.parse("0.1 g"), ON)
    assert Mass.of("245.5") <= floor <= Mass.of(250)
    if floor < Mass.of(250):
        left = Fraction(packed.deviation) + Fraction(floor.amount) - 250
        assert left >= 0
        assert left * left >= 9 * packed.variance * packed.n


def test_settings_out_of_range_are_refused():
    with pytest.raises(ValueError, match="reserve is not negative"):
        LightCredit(enabled=True, reserve_factor=Decimal(-1))
