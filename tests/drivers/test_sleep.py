"""The sleep of the computer: Linux, clock_gettime(2), CLOCK_BOOTTIME."""

import time

import pytest

from drivers.sleep import slept_ns


def test_difference_of_two_counts_and_zero_where_one_is_missing(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    before = slept_ns()
    assert before > -1_000_000  # the two counts are read one after the other
    assert abs(slept_ns() - before) < 50_000_000
    monkeypatch.delattr(time, "CLOCK_BOOTTIME", raising=False)
    assert slept_ns() == 0
