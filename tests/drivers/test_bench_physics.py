"""The simulated pan: mass is kept, the cell swings and comes to rest."""

import random

import pytest

from drivers.bench_physics import Feel, Pan

QUIET = Feel(noise_g=0.0, splash=0.0)


def pan(feel: Feel = QUIET) -> Pan:
    return Pan(feel, random.Random(5))


@pytest.mark.parametrize("over_s", [0.0, 0.1, 1.0, 1.234])
def test_pour_brings_exactly_what_was_poured(over_s: float) -> None:
    bench = pan()
    bench.bag = 6.0
    bench.pour(248.0, over_s)
    bench.advance(2.0)
    assert bench.load == pytest.approx(254.0, abs=1e-9)
    assert bench.signal == pytest.approx(254.0, abs=1e-3)


def test_cell_overshoots_and_settles() -> None:
    bench = pan()
    bench.bag = 250.0
    highest = 0.0
    for n in range(1, 100):
        bench.advance(n * 0.01)
        highest = max(highest, bench.signal)
    # second-order step response, damping 0.7: overshoot exp(-0.7π/√(1-0.49)) = 4.6 %
    assert highest == pytest.approx(250 * 1.046, rel=0.02)
    assert bench.swing() < 0.01


def test_swing_shows_a_step_for_the_rest_time() -> None:
    bench = pan()
    bench.advance(1.0)
    assert bench.swing() == 0.0
    bench.bag = 6.0
    bench.advance(1.1)
    assert bench.swing() > 1.0


def test_noise_has_the_deviation_asked_for() -> None:
    bench = pan(Feel(noise_g=0.3))
    signals = []
    for n in range(1, 4001):
        bench.advance(n * 0.0100001)
        signals.append(bench.signal)
    mean = sum(signals) / len(signals)
    deviation = (sum((s - mean) ** 2 for s in signals) / len(signals)) ** 0.5
    assert deviation == pytest.approx(0.3, rel=0.06)


def test_drift_moves_the_signal_and_not_the_load() -> None:
    bench = pan()
    bench.drift_per_s = 0.5
    bench.advance(20.0)
    assert bench.signal == pytest.approx(10.0, abs=0.1)
    assert bench.load == 0.0


def test_pouring_without_a_bag_falls_on_the_pan_and_stops_when_told() -> None:
    bench = pan()
    bench.pour(10.0, 1.0)
    bench.advance(0.5)
    bench.stop_pouring()
    bench.advance(2.0)
    assert bench.residue == pytest.approx(5.0, abs=0.2)
