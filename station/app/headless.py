"""The headless demo: bags through the true chain, from a tty to labels, and their summary."""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path

from drivers.packer import SimulatedPacker
from station.app.assembly import Audience, Station
from station.app.memory import settled
from station.app.practice import (
    bench_scale,
    habits_for,
    lead_of,
    practice_station,
    run_choice,
    second_of,
)
from station.app.practice_labels import PracticeLabels
from station.app.practice_lead import PracticeLead
from station.app.practice_people import PracticeIntents, give_pins
from station.app.practice_shipping import PracticeShipping
from station.app.summary import DemoSummary
from station.app.watch import Watch
from station.config.packhouse import Packhouse
from station.core.product import Product
from station.errors import EnvironmentFault
from station.line.opening import calendar_day, day_of
from station.line.state import Intents, LineState, Phase, Verb
from station.store.queries import summary

SPEED = 40.0
"""How much faster than a packhouse the headless bench goes."""
_PATIENCE_S = 60.0
"""How long no bag may be counted before the demo gives up."""


def pack_headless(
    house: Packhouse,
    home: Path,
    packs: int,
    seed: int,
    progress: Callable[[int], None],
    speed: float = SPEED,
) -> DemoSummary:
    """Pack ``packs`` good bags, spread over all products, and return their figures.

    Args:
        house: the settings; the scale's port is replaced by the bench.
        home: folder of the record; labels go to its folder ``labels``.
        packs: good bags to pack, 1 or more.
        seed: same seed, same bags (but not the same times).
        progress: told the number of good bags so far.
        speed: how much faster than real time the bench goes.

    Raises:
        EnvironmentFault: the line stood still, or a run was refused.
    """
    labels = home / "labels"
    watch = Watch()
    audience = Audience(watch.state, watch.answer, timing=watch.timing, entered=watch.entered)
    bench = bench_scale(house, speed, seed)
    bench.start()
    try:
        station = practice_station(house, home, labels, bench, audience)
        before = summary(home)
        now = station.clock.now()
        day = day_of(now, house.settings.cut_off)
        give_pins(station, (lead_of(house), second_of(house)))
        line = PracticeIntents(station.line, station.signing, house, stays=True)
        lead = PracticeLead(
            bench,
            watch,
            station.checks,
            station.change,
            line,
            lead_of(house),
            station.quality.checks,
        )
        papers = PracticeLabels(
            station.label_checks, line, watch, labels, lead_of(house), second_of(house)
        )
        shipping = PracticeShipping(station.shipping, line, watch, lead_of(house))
        station.start()
        began = time.monotonic()
        try:
            with settled():
                done = 0
                for number, product in enumerate(house.products.values()):
                    share = _share(packs, len(house.products), number)
                    if share:
                        hands = SimulatedPacker(
                            bench, watch.cue, habits_for(product), seed + number
                        )
                        crew = (lead, papers, hands)
                        pack_run(station, line, house, watch, crew, product, share, done, progress)
                        shipping.send_run()
                        done += share
            seconds = time.monotonic() - began
        finally:
            station.stop()
    finally:
        bench.stop()
    return DemoSummary(
        home, labels, day, before, station.desk.read_back_equal, now.utc, seconds, watch.timings
    )


def _share(packs: int, products: int, number: int) -> int:
    """Bags of one product, so that all products together give ``packs``."""
    return packs * (number + 1) // products - packs * number // products


def pack_run(
    station: Station,
    line: Intents,
    house: Packhouse,
    watch: Watch,
    crew: tuple[PracticeLead, PracticeLabels, SimulatedPacker],
    product: Product,
    share: int,
    done: int,
    progress: Callable[[int], None],
    patience_s: float = _PATIENCE_S,
) -> None:
    """One run: start it, pass its gates, pack its share, check the scale, end it.

    Args:
        station: running on the bench.
        line: takes what people sign.
        house: the settings.
        watch: tells what the line shows.
        crew: lead, papers and hands.
        product: what is packed.
        share: good bags of the run.
        done: good bags before it.
        progress: told the number of good bags so far.
        patience_s: how long no bag may be counted before the run is given up.

    Raises:
        EnvironmentFault: the line stood still, or a run was refused.
    """
    lead, papers, hands = crew
    day = calendar_day(station.clock.now())
    choice = run_choice(house, product, day, share)
    line.start_run(choice)
    _must(watch, f"the run of {product.code}")
    run = watch.until(lambda state: state.run is not None, _PATIENCE_S).run
    assert run is not None
    lead.open_gates(run)
    papers.answer_doubts()
    papers.open_closed_gates(run)
    hands.start()
    try:

        def packed(state: LineState) -> bool:
            progress(done + state.tally.good)
            if state.phase is Phase.STOPPED:  # nobody is here to look at it
                raise EnvironmentFault("the line stopped", state.because)
            return state.verb is Verb.ORDER_DONE

        with papers.at_hand(run):
            ended = watch.until(packed, patience_s)
    finally:
        hands.stop()
    lead.close_run(run)
    assert ended.last is not None
    papers.scan_last(run, ended.last.serial)
    line.end_run(choice.lead)
    _must(watch, f"the end of the run of {product.code}")


def _must(watch: Watch, what: str) -> None:
    answer = watch.next_answer(_PATIENCE_S)
    if not answer.started:
        raise EnvironmentFault(f"{what} was refused", answer.words)
