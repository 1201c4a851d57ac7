"""The first row past something is found whatever rows are missing."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.store.halving import first_past


@given(st.sets(st.integers(1, 60)), st.integers(0, 61), st.integers(1, 61))
def test_it_is_the_row_that_reading_through_finds(rows, border, high):
    asked = []

    def look(row):
        asked.append(row)
        found = min((one for one in rows if one >= row), default=None)
        return None if found is None else (found, found > border)

    past = [one for one in rows if border < one < high]
    found = first_past(0, high, look)
    assert all(one >= found for one in past)
    assert all(one > border for one in rows if found <= one < high)
    assert len(asked) <= 6
    assert found <= high


@pytest.mark.parametrize("high", [0, 1])
def test_nothing_is_looked_at_where_there_is_no_row(high):
    assert first_past(0, high, lambda row: pytest.fail(f"looked at {row}")) == high
