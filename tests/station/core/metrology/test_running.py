"""Exact running sums of a batch."""

from fractions import Fraction
from statistics import mean, variance

import pytest
from hypothesis import given
from hypothesis import strategies as st

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
