"""Exact running sums of a batch."""

from decimal import Decimal
from fractions import Fraction
from statistics import mean, variance

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from station.core.mass import Mass, MassError
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.running import RunningBatch

LIMITS = rule_set("eu-76-211").limits(Mass.parse("250 g"))


def tenths(value: int) -> Mass:
    return Mass.of(f"{value // 10}.{value % 10}")


@given(st.lists(st.integers(2000, 3000), min_size=2, max_size=60))
def test_mean_and_variance_are_the_exact_rationals(values):
    batch = RunningBatch(LIMITS).add_all(tenths(value) for value in values)
    exact = [Fraction(value, 10) for value in values]
    assert batch.mean == mean(exact)
    assert batch.variance == variance(exact)
    assert batch.total == Mass.of(str(sum(values) // 10) + f".{sum(values) % 10}")
    assert batch.t1_count == sum(value < 2410 for value in values)
    assert batch.t2_count == sum(value < 2320 for value in values)


@given(st.lists(st.integers(2000, 3000), max_size=30))
def test_one_by_one_is_the_same_as_all_at_once(values):
    one_by_one = RunningBatch(LIMITS)
    for value in values:
        one_by_one = one_by_one.add(tenths(value))
    assert one_by_one == RunningBatch(LIMITS).add_all(tenths(value) for value in values)


@given(st.lists(st.integers(2000, 3000), min_size=1, max_size=30), st.integers(1, 30))
def test_the_mean_needed_on_the_rest_brings_the_batch_to_nominal(values, rest):
    batch = RunningBatch(LIMITS).add_all(tenths(value) for value in values)
    needed = batch.mean_needed(len(values) + rest)
    assert (batch.mean * batch.n + needed * rest) / (batch.n + rest) == 250
    assert batch.mean_needed(batch.n) is None


def test_an_empty_batch_has_no_mean_and_one_pack_no_spread():
    with pytest.raises(ValueError, match="without packs"):
        _ = RunningBatch(LIMITS).mean
    assert RunningBatch(LIMITS).add(Mass.parse("251 g")).variance == 0


def test_a_pack_in_another_unit_is_refused():
    with pytest.raises(MassError, match=r"0\.25 kg cannot join a batch declared in g"):
        RunningBatch(LIMITS).add(Mass.parse("0.25 kg"))


# NIST StRD univariate summary statistics: certified mean and standard deviation
NUM_ACC = {
    1: (["10000001", "10000003", "10000002"], "10000002", "1"),
    2: (["1.2", *["1.1", "1.3"] * 500], "1.2", "0.1"),
    3: (["1000000.2", *["1000000.1", "1000000.3"] * 500], "1000000.2", "0.1"),
    4: (["10000000.2", *["10000000.1", "10000000.3"] * 500], "10000000.2", "0.1"),
}


@pytest.mark.parametrize("number", NUM_ACC)
def test_nist_strd_numacc_is_exact_to_the_last_digit(number):
    """NIST StRD NumAcc1 to NumAcc4: certified mean and standard deviation, without any error.

    The one-pass float formula gives 0.0994 for NumAcc3 and no number at all for NumAcc4.
    """
    values, mean_value, spread = NUM_ACC[number]
    limits = rule_set("oiml-r87-2016").limits(Mass.of("250000"))
    batch = RunningBatch(limits).add_all(Mass.of(value) for value in values)
    assert batch.mean == Fraction(mean_value)
    assert batch.variance == Fraction(spread) ** 2
    assert batch.spread(15) == Decimal(spread)


# NIST StRD Michelso: speed of light in air less 299 000 km/s, in km/s (Michelson 1879)
MICHELSON = """
850 740 900 1070 930 850 950 980 980 880 1000 980 930 650 760 810 1000 1000 960 960
960 940 960 940 880 800 850 880 900 840 830 790 810 880 880 830 800 790 760 800
880 880 880 860 720 720 620 860 970 950 880 910 850 870 840 840 850 840 840 840
890 810 810 820 800 770 760 740 750 760 910 920 890 860 880 720 840 850 850 780
890 840 780 810 760 810 790 810 820 850 870 870 810 740 810 940 950 800 810 870
"""


def test_nist_strd_michelso():
    """NIST StRD Michelso: certified mean 299.8524, standard deviation 0.0790105478190518."""
    limits = rule_set("oiml-r87-2016").limits(Mass.of("300"))
    nets = [Mass.of(f"{Decimal(299) + Decimal(value) / 1000}") for value in MICHELSON.split()]
    batch = RunningBatch(limits).add_all(nets)
    assert batch.n == 100
    assert batch.mean == Fraction("299.8524")
    assert batch.spread(16) == Decimal("0.0790105478190518")


@given(st.lists(st.integers(2000, 2600), min_size=1, max_size=60))
def test_sums_of_the_light_packs_are_kept_apart(values):
    batch = RunningBatch(LIMITS).add_all(tenths(value) for value in values)
    light = [Fraction(value - 2500, 10) for value in values if value < 2410]
    assert Fraction(batch.t1_deviation) == sum(light)
    assert Fraction(batch.t1_squares) == sum(one * one for one in light)


@given(st.lists(st.integers(2000, 3000), min_size=3, max_size=60).filter(lambda v: len(set(v)) > 1))
def test_the_shape_is_that_of_a_reference_library(values):
    skewness, bend = RunningBatch(LIMITS).add_all(tenths(value) for value in values).shape()
    exact = [value / 10 for value in values]
    assert skewness == pytest.approx(stats.skew(exact), rel=1e-4, abs=1e-4)
    assert bend == pytest.approx(stats.kurtosis(exact, fisher=False), rel=1e-4, abs=1e-4)


def test_without_spread_the_shape_is_that_of_a_normal_process():
    assert RunningBatch(LIMITS).shape() == (0.0, 3.0)
    assert RunningBatch(LIMITS).add_all([tenths(2510)] * 5).shape() == (0.0, 3.0)
