"""Runs as the numbers page meets them: safe, thin, failing, wandering, just begun."""

import random
from datetime import datetime, timedelta, timezone

from station.core.run import Run
from station.line.fill_target import Advice, advise, proposal_fact
from station.line.numbers import Bag, RunFigures, RunNumbers, Span
from tests.station.screens.states import grams, make_product, make_run

START = datetime(2026, 11, 25, 6, 40, tzinfo=timezone(timedelta(hours=1)))
EVERY_S = 6


def bags(nets, start: datetime = START, every_s: float = EVERY_S) -> tuple[Bag, ...]:
    return tuple(
        Bag(f"P1-7K-{count:06d}", start + timedelta(seconds=every_s * count), grams(net), True)
        for count, net in enumerate(nets)
    )


def fills(count: int, mean: float, spread: float, seed: int = 1, floor: int = 0) -> list[int]:
    chance = random.Random(seed)
    kept: list[int] = []
    while len(kept) < count:
        net = round(chance.gauss(mean, spread))
        if net >= floor:
            kept.append(net)
    return kept


def run_with_floor(floor: int, order: int | None = None) -> Run:
    return make_run(make_product(floor=grams(floor)), order)


class BagsSource:
    """Numbers of a run that is kept in memory, as LiveNumbers answers them."""

    def __init__(self, numbers: RunNumbers | None, *, still_open: bool = True) -> None:
        self.numbers, self.still_open = numbers, still_open
        self.refusal: Exception | None = None
        self.asked: list[Span | None] = []

    @property
    def now(self) -> datetime:
        assert self.numbers is not None
        return self.numbers.bags[-1].at + timedelta(seconds=2)

    def figures(self, span: Span | None) -> RunFigures | None:
        self.asked.append(span)
        if self.refusal is not None:
            raise self.refusal
        if self.numbers is None:
            return None
        return self.numbers.figures(span, self.now, still_open=self.still_open)

    def advice(self, tried) -> Advice | None:
        assert self.numbers is not None
        return advise(self.numbers.run, self.numbers.bags, tried)

    def proposal(self, figures: RunFigures, advice: Advice):
        return proposal_fact("0193-proposal", figures.run, advice, figures.batch)


def safe() -> BagsSource:
    run = run_with_floor(250, 1200)
    return BagsSource(RunNumbers(run, bags=bags(fills(900, 252, 3, floor=250))))


def thin() -> BagsSource:
    run = run_with_floor(246)
    return BagsSource(
        RunNumbers(run, bags=bags(fills(900, 249.3, 2.5, floor=246))), still_open=False
    )


def failing() -> BagsSource:
    run = run_with_floor(246)
    return BagsSource(RunNumbers(run, bags=bags(fills(900, 249, 2.5, floor=246))), still_open=False)


def wandering() -> BagsSource:
    """The fill rises by two spreads after 300 bags."""
    nets = fills(300, 252, 2) + fills(60, 256, 2)
    return BagsSource(RunNumbers(run_with_floor(246, 600), bags=bags(nets)))


def begun() -> BagsSource:
    """One bag: there is no forecast yet."""
    return BagsSource(RunNumbers(make_run(), bags=bags([252])))
