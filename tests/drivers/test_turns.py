"""Patience in turns of a second."""

import pytest

from drivers.turns import turns


@pytest.mark.parametrize(
    ("seconds", "lengths"), [(0.25, [0.25]), (1, [1]), (2.5, [1, 1, 0.5]), (0, [])]
)
def test_waits_add_up_to_the_patience(seconds, lengths):
    assert list(turns(seconds)) == lengths
