"""The station in its window on the simulated scale: a demo that shows itself or is tried out."""

from __future__ import annotations

import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QWidget

from drivers.bench import BenchScale
from drivers.packer import SimulatedPacker
from station.app.assembly import Audience, Station
from station.app.bench_hand import DemoHand
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
from station.app.practice_lead import LeadAtHand, PracticeLead
from station.app.practice_people import PracticeIntents, demo_pins, give_pins
from station.app.qt_side import application, both, faults_to, running, sounds_of
from station.app.station_window import station_window
from station.app.summary import DemoSummary
from station.app.watch import Watch
from station.config.packhouse import Packhouse
from station.line.opening import calendar_day, day_of
from station.line.state import Verb
from station.screens.bench import BenchWindow
from station.screens.bridge import Bridge
from station.screens.theme import PALETTES
from station.screens.training import set_up_training
from station.screens.widgets.training_strip import TrainingStrip
from station.screens.window import StationWindow
from station.store.first_day import first_day
from station.store.queries import summary

_WINDOW_SPEED = 3.0
"""The simulated packer works this much faster than a person, so that a newcomer need not wait."""
_LOOK_MS = 200


@dataclass(frozen=True, slots=True)
class PracticeLine:
    """A running station on the simulated scale, with the simulated people who keep it going.

    Args:
        station: the station.
        bench: its scale.
        bridge: what its window listens to.
        watch: what the simulated people look at.
        line: takes what they sign.
        lead: passes the gates at the scale.
        papers: passes those about labels.
    """

    station: Station
    bench: BenchScale
    bridge: Bridge
    watch: Watch
    line: PracticeIntents
    lead: PracticeLead
    papers: PracticeLabels


@dataclass(frozen=True, slots=True)
class TrainingDone:
    """What was packed in training.

    Args:
        good: good bags.
        rejects: bags set aside.
        tiles: whether countdown tiles guided the packer.
    """

    good: int
    rejects: int
    tiles: bool


@contextmanager
def practice_line(house: Packhouse, home: Path, seed: int, speed: float) -> Iterator[PracticeLine]:
    """Run a station on the bench scale while this lasts; Qt's application must be there.

    Args:
        house: the settings; the scale's port is replaced by the bench.
        home: folder of the record; labels go to its folder ``labels``.
        seed: same seed, same noise.
        speed: how much faster than real time the bench goes.
    """
    bridge, watch = Bridge(), Watch()
    sounds = sounds_of(house)
    audience = Audience(
        both(bridge.publish, watch.state),
        both(bridge.answer, watch.answer),
        sound=sounds.play,
        timing=watch.timing,
        label=bridge.show_label,
        entered=both(bridge.enter, watch.entered),
        scan=bridge.scan,
        words=bridge.report,
    )
    bench = bench_scale(house, speed, seed)
    bench.start()
    try:
        labels = home / "labels"
        station = practice_station(house, home, labels, bench, audience)
        give_pins(station)
        line = PracticeIntents(station.line, station.signing, house)
        who, quality = lead_of(house), station.quality.checks
        lead = PracticeLead(bench, watch, station.checks, station.change, line, who, quality)
        second = second_of(house)
        papers = PracticeLabels(station.label_checks, line, watch, labels, who, second)
        with faults_to(bridge), running(sounds), running(station):
            yield PracticeLine(station, bench, bridge, watch, line, lead, papers)
    finally:
        bench.stop()


def show_demo(house: Packhouse, home: Path, packs: int | None, seed: int) -> DemoSummary:
    """Run the station on the bench scale until its window is closed, or ``packs`` bags are done.

    Args:
        house: the settings; the scale's port is replaced by the bench.
        home: folder of the record; labels go to its folder ``labels``.
        packs: a simulated packer packs this many bags and the window closes; None leaves the bench
            to the newcomer.
        seed: same seed, same noise and the same hands.

    Raises:
        StationError: the record or the screen does not serve, or a run was refused.
    """
    with application() as qt:
        with practice_line(house, home, seed, _WINDOW_SPEED if packs else 1.0) as practice:
            before, began = summary(home), time.monotonic()
            station, watch = practice.station, practice.watch
            now = station.clock.now()
            product = next(iter(house.products.values()))
            choice = run_choice(house, product, calendar_day(now), packs)
            practice.line.start_run(choice)
            window = station_window(practice.bridge, station, house, demo_pins(house))
            window.make_pages()  # a run is open from the start
            window.resize(window.size().boundedTo(window.screen().availableGeometry().size()))
            window.show()
            helper = LeadAtHand(practice.lead, watch, practice.papers)
            helper.start()
            with settled():
                if packs is None:
                    work_bench(qt, practice, window, seed)
                else:
                    hands = SimulatedPacker(practice.bench, watch.cue, habits_for(product), seed)
                    _pack(qt, hands, watch)
            helper.stop()
            practice.line.end_run(choice.lead)
            window.close()
        seconds = time.monotonic() - began
        day = day_of(now, house.settings.cut_off)
        equal = station.desk.read_back_equal
        return DemoSummary(
            home, home / "labels", day, before, equal, now.utc, seconds, watch.timings
        )


def show_training(house: Packhouse, home: Path, *, seed: int, tiles: bool | None) -> TrainingDone:
    """Let somebody train on the bench scale until the window is closed.

    A simulated lead opens a run of the first product and passes its gates.

    Args:
        house: the packhouse people train in, of :mod:`station.app.training`.
        home: folder of its record.
        seed: same seed, same noise.
        tiles: whether countdown tiles guide the packer; None for on the record's first day alone.

    Raises:
        StationError: the record or the screen does not serve.
    """
    with application() as qt, practice_line(house, home, seed, 1.0) as practice:
        before = summary(home)
        at = practice.station.clock.now()
        begun = first_day(home)
        first = begun is None or begun == day_of(at, house.settings.cut_off)
        guided = first if tiles is None else tiles
        product = next(iter(house.products.values()))
        choice = run_choice(house, product, calendar_day(at), None)
        practice.line.start_run(choice)
        window = station_window(practice.bridge, practice.station, house)
        window.make_pages()  # a run is open from the start
        palette = PALETTES[house.settings.screen.theme]
        set_up_training(window, practice.bridge, palette, tiles=guided)
        window.show()
        helper = LeadAtHand(practice.lead, practice.watch, practice.papers)
        helper.start()
        with settled():
            work_bench(qt, practice, window, seed, TrainingStrip(palette))
        helper.stop()
        practice.line.end_run(choice.lead)
        window.close()
    now = summary(home)
    return TrainingDone(now.good - before.good, now.rejects - before.rejects, guided)


def work_bench(
    qt: QApplication,
    practice: PracticeLine,
    window: StationWindow,
    seed: int,
    head: QWidget | None = None,
) -> None:
    """Leave the scale to whoever sits there, in a window of its own, until one is closed.

    Args:
        qt: the application.
        practice: the running line.
        window: the station's.
        seed: same seed, same bags.
        head: stands over the scale; None for nothing.
    """
    bench = BenchWindow(DemoHand(practice.bench, practice.watch, seed))
    if head is not None:
        bench.column.insertWidget(0, head)
    _side_by_side(window, bench)
    qt.exec()
    bench.close()


def _pack(qt: QApplication, hands: SimulatedPacker, watch: Watch) -> None:
    """Let the simulated packer work until the order is done or the window is closed."""

    def look() -> None:
        if watch.newest is not None and watch.newest.verb is Verb.ORDER_DONE:
            qt.quit()

    timer = QTimer()
    timer.timeout.connect(look)
    timer.start(_LOOK_MS)
    hands.start()
    try:
        qt.exec()
    finally:
        timer.stop()
        hands.stop()


def _side_by_side(window: QWidget, beside: QWidget) -> None:
    """Put the bench at the right edge of the screen, the station in what is left of it."""
    room = window.screen().availableGeometry()
    width = min(max(beside.sizeHint().width(), room.width() // 5), room.width() // 3)
    beside.setGeometry(room.right() + 1 - width, room.top(), width, room.height())
    window.setGeometry(room.left(), room.top(), room.width() - width, room.height())
    beside.show()
    beside.raise_()
