"""Dating a zero step from the readings of the empty scale."""

from datetime import UTC, datetime, timedelta
from random import Random

import pytest

from station.core.mass import Mass
from station.core.metrology.zero_trace import find_step
from station.core.pack import Residue

NINE = datetime(2024, 5, 14, 9, 0, tzinfo=UTC)
INTERVAL = Mass.parse("1 g")


def trace(levels: list[float], seed: int, spread: float = 0.4) -> list[Residue]:
    random = Random(seed)
    return [
        Residue(NINE + timedelta(seconds=6 * n), Mass.of(round(random.gauss(level, spread))))
        for n, level in enumerate(levels)
    ]


@pytest.mark.parametrize("at", [60, 300, 540])
def test_a_step_of_four_grams_is_dated_to_the_pack(at):
    step = find_step(trace([0.0] * at + [4.0] * (600 - at), seed=at), INTERVAL)
    assert step.last_before == NINE + timedelta(seconds=6 * (at - 1))
    assert step.first_after == NINE + timedelta(seconds=6 * at)
    assert step.size == pytest.approx(4.0, abs=0.25)


def test_a_step_below_the_scale_interval_is_seen_by_averaging():
    step = find_step(trace([0.0] * 300 + [0.5] * 300, seed=1), INTERVAL)
    assert abs((step.first_after - NINE).total_seconds() / 6 - 300) < 30
    assert step.size == pytest.approx(0.5, abs=0.15)


def test_steady_traces_seldom_show_a_step():
    """Kolmogorov limit for 1 % (standard tables): 400 steady traces, at most 3 %."""
    found = sum(
        find_step(trace([0.0] * 100, seed=seed, spread=0.8), INTERVAL) is not None
        for seed in range(400)
    )
    assert found <= 12


def test_a_trace_of_zeros_or_too_short_shows_none():
    assert find_step(trace([0.0] * 50, seed=1, spread=0.0), INTERVAL) is None
    assert find_step(trace([0.0, 0.0, 4.0, 4.0], seed=1, spread=0.0), INTERVAL) is None
