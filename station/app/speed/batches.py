"""What a batch costs: every bag judged exactly, and the chance of the official test."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random

from station.app.speed.row import Row, measure
from station.core.mass import Mass
from station.core.metrology.batch import Judgement, judge_running
from station.core.metrology.forecast import Forecast, forecast
from station.core.metrology.running import RunningBatch
from station.core.run import Run
from station.line.numbers import rules_of

_BAGS = 10_000
_SEED = 5
_SPREAD = 0.25
"""Of the fills, as a share of the tolerable deficiency."""


def batch_rows(run: Run, calls: int) -> Iterator[Row]:
    """Measure a finished batch and one that is still packed, both of 10 000 bags."""
    rules, limits = rules_of(run), run.window.limits
    nets = _fills(run)
    amounts = [net.amount for net in nets]
    half = RunningBatch(limits).add_all(nets[: _BAGS // 2])

    def finished() -> tuple[Judgement, Forecast]:
        packs = RunningBatch(limits).add_all(nets)
        return judge_running(rules, packs), forecast(packs, rules.official_plan(_BAGS))

    yield measure(
        f"judge and forecast {_BAGS} bags",
        finished,
        "add up as many decimals",
        lambda: sum(amounts),
        calls,
    )
    yield measure(
        f"forecast {_BAGS} bags when half are packed",
        lambda: forecast(half, rules.official_plan(_BAGS), _BAGS),
        "add up as many decimals",
        lambda: sum(amounts),
        calls,
    )


def _fills(run: Run) -> list[Mass]:
    """Fills in whole scale intervals about the target."""
    random, target = Random(_SEED), run.window.target
    spread = float(run.window.limits.tolerable.amount) * _SPREAD
    steps = (round(random.gauss(0.0, spread)) for _ in range(_BAGS))
    return [Mass(target.amount + step, target.unit) for step in steps]
