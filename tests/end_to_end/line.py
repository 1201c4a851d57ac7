"""A whole station on the bench scale, for tests that pull its plugs."""

from collections.abc import Callable
from contextlib import contextmanager
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

from drivers.packer import SimulatedPacker
from drivers.printer.base import Printer
from station.app.assembly import Audience, Station
from station.app.places import demo_settings
from station.app.practice import (
    bench_scale,
    habits_for,
    practice_station,
    run_choice,
)
from station.app.watch import Watch
from station.clock import StationClock
from station.config.load import load
from station.config.packhouse import Packhouse
from station.core.room import RoomRules
from station.line.opening import calendar_day
from station.line.state import LineState

PATIENCE_S = 60.0
SPEED = 40.0


class Bench:
    """A station, its bench and its watch, while they run.

    Without ``gates`` bags are taken unchecked, so that a test can be about something else; those
    about labels stand open without ``papers``. A name is enough to sign without ``pins``.
    """

    def __init__(
        self,
        home: Path,
        seen: Callable[[LineState], None] | None = None,
        gates: bool = False,
        papers: bool = False,
        printer: Printer | None = None,
        changed: Callable[[Packhouse], Packhouse] = lambda house: house,
        pins: bool = False,
        before: Callable[[Station], None] = lambda _: None,
        clock: StationClock | None = None,
        config: Path | None = None,
        speed: float = SPEED,
    ):
        now = datetime.now(UTC)  # noqa: TID251  the demo's lots are days old
        today = now.date() if clock is None else clock.now().utc.date()
        self.house = load(demo_settings(), today)
        if not gates:
            self.house = without_gates(self.house)
        if not papers:
            self.house = without_papers(self.house)
        self.house = changed(on_any_disk(self.house))
        if not pins:
            self.house = without_pins(self.house)
        self.bench = bench_scale(self.house, speed, seed=7)
        self.bench.start()
        self.watch = Watch()

        def state(state: LineState) -> None:
            if seen is not None:
                seen(state)
            self.watch.state(state)

        self.pages: list[bytes] = []
        audience = Audience(
            state,
            self.watch.answer,
            timing=self.watch.timing,
            label=self.pages.append,
            entered=self.watch.entered,
        )
        self.labels = home / "labels"
        self.station = practice_station(
            self.house, home, self.labels, self.bench, audience, printer, clock, config
        )
        before(self.station)
        self.station.start()

    def close(self) -> None:
        self.station.stop()
        self.bench.stop()

    def open_run(self, product="ROCKET-SPINACH-200", order=None, **changes):
        product = self.house.products[product]
        day = calendar_day(self.station.clock.now())
        self.station.line.start_run(run_choice(self.house, product, day, order))
        answer = self.watch.next_answer(PATIENCE_S)
        assert answer.started, answer.words
        return product

    def until(self, holds) -> LineState:
        return self.watch.until(holds, PATIENCE_S)

    @contextmanager
    def packer(self, product, seed=3):
        hands = SimulatedPacker(self.bench, self.watch.cue, habits_for(product), seed)
        hands.start()
        try:
            yield hands
        finally:
            hands.stop()


def on_any_disk(house: Packhouse) -> Packhouse:
    """Without a word about a disk of the machine that is fuller than a station's should be."""
    record = replace(house.settings.record, room=RoomRules(99, 1, 0))
    return replace(house, settings=replace(house.settings, record=record))


def without_gates(house: Packhouse) -> Packhouse:
    settings = house.settings
    checks, tare = (
        replace(settings.checks, on=False, clearance=False),
        replace(settings.tare, on=False),
    )
    quality = replace(settings.quality, tickets=False)
    settings = replace(settings, checks=checks, tare=tare, quality=quality)
    return replace(house, settings=settings, qa={})


def without_papers(house: Packhouse) -> Packhouse:
    settings = house.settings
    off = replace(settings.label_checks, rolls=False, first_off=False, scan_every=None)
    return replace(house, settings=replace(settings, label_checks=off))


def without_pins(house: Packhouse) -> Packhouse:
    people = replace(house.settings.people, pins=False)
    return replace(house, settings=replace(house.settings, people=people))


@contextmanager
def bench_line(home: Path, seen=None, gates=False, papers=False, printer=None, **more):
    line = Bench(home, seen, gates, papers, printer, **more)
    try:
        yield line
    finally:
        line.close()
