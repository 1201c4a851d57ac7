"""Waits between tries."""

import random

import pytest

from drivers.backoff import Backoff


def test_waits_grow_to_the_longest_and_start_again() -> None:
    backoff = Backoff(0.2, 5.0, chance=random.Random(1))
    waits = [backoff.next_s() for _ in range(9)]
    for wait, full in zip(waits, [0.2, 0.4, 0.8, 1.6, 3.2, 5, 5, 5, 5], strict=True):
        assert 0.8 * full <= wait <= full
    backoff.reset()
    assert backoff.next_s() <= 0.2


@pytest.mark.parametrize("given", [(0, 5, 2), (6, 5, 2), (1, 5, 0.5)])
def test_refuses_waits_that_make_no_sense(given: tuple[float, float, float]) -> None:
    with pytest.raises(ValueError, match="allowed is"):
        Backoff(*given)
