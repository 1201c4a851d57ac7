"""The station in its window: builds Qt's side, lends it to the station's threads, takes it down."""

from __future__ import annotations

import logging
import os
import signal
import sys
import threading
import time
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path
from types import TracebackType
from typing import TypeVar

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication, QWidget

from drivers.packer import SimulatedPacker
from station.app.assembly import Audience, Station
from station.app.bench_hand import DemoHand
from station.app.manager_desk import ManagerDesk
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
from station.app.printers import printer_of
from station.app.serial_line import port_settings
from station.app.sounds import Sounds, system_sink
from station.app.summary import DemoSummary
from station.app.trace_desk import TraceDesk
from station.app.watch import Watch
from station.config.packhouse import Packhouse
from station.core.rights import Role
from station.errors import EnvironmentFault
from station.line.opening import calendar_day, day_of
from station.line.state import Intents, Verb
from station.screens.bench import BenchWindow
from station.screens.bridge import Bridge
from station.screens.change import ChangePage
from station.screens.checks import ChecksPage
from station.screens.doors import Door
from station.screens.labels import LabelsPage
from station.screens.lots import LotsPage
from station.screens.manager import ManagerPage
from station.screens.numbers import NumbersPage
from station.screens.offer import LeadOffer, Person
from station.screens.quality import QualityPage, QualitySources
from station.screens.service import ServicePage
from station.screens.shipping import ShippingPage
from station.screens.signing import SignedIntents
from station.screens.theme import PALETTES, Palette, register_fonts
from station.screens.trace import TracePage
from station.screens.window import StationWindow
from station.store.queries import summary

T = TypeVar("T")
_LOG = logging.getLogger(__name__)
_SWITCH_S = 0.0005
"""Threads change this often, so that drawing a label does not hold up the number on the screen."""
_WINDOW_SPEED = 3.0
"""The simulated packer works this much faster than a person, so that a newcomer need not wait."""
_LOOK_MS = 200


def show_station(
    house: Packhouse, home: Path, record: Path | None = None, config: Path | None = None
) -> None:
    """Run the station on its own scale until its window is closed.

    Args:
        house: the settings.
        home: folder of the record.
        record: file that takes in everything the scale sends; None for none.
        config: folder of the settings, which whoever services the station may change.

    Raises:
        StationError: the record, the printer's folder or the screen does not serve.
        RecordingError: the file cannot be made.
    """
    with _application() as application:
        bridge = Bridge()
        sounds = _sounds(house)
        audience = Audience(
            bridge.publish,
            bridge.answer,
            sound=sounds.play,
            label=bridge.show_label,
            entered=bridge.enter,
            scan=bridge.scan,
            words=bridge.report,
        )
        settings = house.settings
        folder = settings.printer.folder
        port = port_settings(settings.scale.port)
        station = Station(
            house,
            home,
            port,
            folder,
            audience,
            record=record,
            printer=printer_of(settings.printer),
            key=settings.record.key_of(home),
            settings=config,
        )
        with _faults_to(bridge), _sounding(sounds), _running(station):
            window = _window(bridge, station, house)
            window.showMaximized()
            application.exec()
            window.close()


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
    with _application() as application:
        bridge, watch = Bridge(), Watch()
        sounds = _sounds(house)
        audience = Audience(
            _both(bridge.publish, watch.state),
            _both(bridge.answer, watch.answer),
            sound=sounds.play,
            timing=watch.timing,
            label=bridge.show_label,
            entered=_both(bridge.enter, watch.entered),
            scan=bridge.scan,
            words=bridge.report,
        )
        bench = bench_scale(house, _WINDOW_SPEED if packs else 1.0, seed)
        bench.start()
        try:
            labels = home / "labels"
            station = practice_station(house, home, labels, bench, audience)
            before, began = summary(home), time.monotonic()
            now = station.clock.now()
            day = day_of(now, house.settings.cut_off)
            give_pins(station)
            line = PracticeIntents(station.line, station.signing, house)
            lead = PracticeLead(
                bench,
                watch,
                station.checks,
                station.change,
                line,
                lead_of(house),
                station.quality.checks,
            )
            with _faults_to(bridge), _sounding(sounds), _running(station):
                product = next(iter(house.products.values()))
                choice = run_choice(house, product, calendar_day(now), packs)
                line.start_run(choice)
                window = _window(bridge, station, house, demo_pins(house))
                window.show()
                papers = PracticeLabels(
                    station.label_checks,
                    line,
                    watch,
                    labels,
                    lead_of(house),
                    second_of(house),
                )
                helper = LeadAtHand(lead, watch, papers)
                helper.start()
                if packs is None:
                    bench_window = BenchWindow(DemoHand(bench, watch, seed))
                    _side_by_side(window, bench_window)
                    application.exec()
                    bench_window.close()
                else:
                    hands = SimulatedPacker(bench, watch.cue, habits_for(product), seed)
                    _pack(application, hands, watch)
                helper.stop()
                line.end_run(choice.lead)
                window.close()
        finally:
            bench.stop()
        seconds = time.monotonic() - began
        equal = station.desk.read_back_equal
        return DemoSummary(home, labels, day, before, equal, now.utc, seconds, watch.timings)


def _pack(application: QApplication, hands: SimulatedPacker, watch: Watch) -> None:
    """Let the simulated packer work until the order is done or the window is closed."""

    def look() -> None:
        if watch.newest is not None and watch.newest.verb is Verb.ORDER_DONE:
            application.quit()

    timer = QTimer()
    timer.timeout.connect(look)
    timer.start(_LOOK_MS)
    hands.start()
    try:
        application.exec()
    finally:
        timer.stop()
        hands.stop()


def _window(
    bridge: Bridge, station: Station, house: Packhouse, pins: Mapping[str, str] | None = None
) -> StationWindow:
    """The window; ``pins`` are those of a demo, shown beside the names.

    Its pages ask the line by way of the signatures, so that none of them need know of PINs.
    """
    people = tuple(Person(one.id, one.name, str(one.role)) for one in house.people.values())
    offer = LeadOffer(tuple(house.products.values()), station.lots.known, people)
    signers = tuple(one for one in people if one.role in (Role.LEAD, Role.QA))
    register_fonts()
    hints = {who: f"demo PIN {pin}" for who, pin in (pins or {}).items()}
    line = SignedIntents(station.line, station.signing, bridge, people, hints)
    palette = PALETTES[house.settings.screen.theme]
    charts = station.home / "charts"
    doors = (
        Door(
            "NUMBERS",
            Qt.Key.Key_F3,
            NumbersPage(bridge, line, station.numbers, charts, palette=palette),
        ),
        Door(
            "CHANGE",
            Qt.Key.Key_F8,
            ChangePage(
                bridge, line, station.change, signers, palette=palette, clock=station.clock_desk
            ),
        ),
        Door(
            "LABELS",
            Qt.Key.Key_F5,
            LabelsPage(bridge, line, station.label_checks, signers, palette=palette),
        ),
        Door("LOTS", Qt.Key.Key_F6, LotsPage(bridge, line, station.lots, people, palette=palette)),
        Door(
            "SHIPPING",
            Qt.Key.Key_F12,
            ShippingPage(bridge, line, station.shipping, people, palette=palette),
        ),
        Door("TRACE", Qt.Key.Key_F7, TracePage(TraceDesk(station.home), palette)),
        Door("SERVICE", Qt.Key.Key_F9, _service(bridge, station, line, people, palette)),
        Door(
            "CHECKS",
            Qt.Key.Key_F4,
            ChecksPage(bridge, line, station.checks, people, palette=palette),
        ),
        Door(
            "QUALITY",
            Qt.Key.Key_F10,
            QualityPage(bridge, line, QualitySources(*station.quality), people, palette),
        ),
        Door(
            "MANAGER",
            Qt.Key.Key_F11,
            _manager(bridge, station, line, people, charts, palette),
        ),
    )
    window = StationWindow(
        bridge, line, offer, in_doubt=station.in_doubt, doors=doors, signing=line, palette=palette
    )
    bridge.entered.connect(  # a delivery, a hold or a release changes what may be chosen
        lambda _: window.lead.set_offer(replace(offer, lots=station.lots.known))
    )
    return window


def _service(
    bridge: Bridge, station: Station, line: Intents, people: tuple[Person, ...], palette: Palette
) -> ServicePage:
    desks = station.service
    return ServicePage(bridge, line, desks.desk, desks.learn, desks.swap, people, palette)


def _manager(
    bridge: Bridge,
    station: Station,
    line: Intents,
    people: tuple[Person, ...],
    charts: Path,
    palette: Palette,
) -> ManagerPage:
    desk = ManagerDesk(station.house, station.home, station.clock, station.products)
    managers = tuple(one for one in people if one.role == Role.MANAGER)
    return ManagerPage(bridge, line, desk, managers, charts, palette)


def _side_by_side(window: QWidget, beside: QWidget) -> None:
    """Put the bench at the right edge of the screen, the station in what is left of it."""
    room = window.screen().availableGeometry()
    width = min(max(beside.sizeHint().width(), room.width() // 5), room.width() // 3)
    beside.setGeometry(room.right() + 1 - width, room.top(), width, room.height())
    window.setGeometry(room.left(), room.top(), room.width() - width, room.height())
    beside.show()
    beside.raise_()


def _both(one: Callable[[T], None], other: Callable[[T], None]) -> Callable[[T], None]:
    def tell(value: T) -> None:
        one(value)
        other(value)

    return tell


@contextmanager
def _application() -> Iterator[QApplication]:
    """Qt's application, which ends on Ctrl-C as well as with its last window.

    Raises:
        EnvironmentFault: there is no screen to show a window on.
    """
    named = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    if sys.platform == "linux" and not any(os.environ.get(name) for name in named):
        raise EnvironmentFault(
            "there is no screen", "start in a desktop session, or use demo --headless"
        )
    application = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(application, QApplication)
    before, switch = signal.getsignal(signal.SIGINT), sys.getswitchinterval()
    signal.signal(signal.SIGINT, lambda *_: application.quit())
    sys.setswitchinterval(_SWITCH_S)
    awake = QTimer()  # Python sees a signal only while Python runs
    awake.timeout.connect(_nothing)
    awake.start(_LOOK_MS)
    try:
        yield application
    finally:
        awake.stop()
        sys.setswitchinterval(switch)
        signal.signal(signal.SIGINT, before)


def _nothing() -> None:
    """Let Python run."""


def _sounds(house: Packhouse) -> Sounds:
    return Sounds(system_sink() if house.settings.screen.sounds else None)


@contextmanager
def _sounding(sounds: Sounds) -> Iterator[None]:
    sounds.start()
    try:
        yield
    finally:
        sounds.stop()


@contextmanager
def _running(station: Station) -> Iterator[None]:
    station.start()
    try:
        yield
    finally:
        station.stop()


@contextmanager
def _faults_to(bridge: Bridge) -> Iterator[None]:
    """Log what nobody foresaw, on any thread, and show it: the station never ends silently."""
    threads, main = threading.excepthook, sys.excepthook

    def told(
        kind: type[BaseException], fault: BaseException | None, where: TracebackType | None
    ) -> None:
        _LOG.critical("unforeseen", exc_info=(kind, fault or kind(), where))
        bridge.report(f"The station has a fault, call the lead: {kind.__name__}: {fault}")

    threading.excepthook = lambda args: told(args.exc_type, args.exc_value, args.exc_traceback)
    sys.excepthook = told
    try:
        yield
    finally:
        threading.excepthook, sys.excepthook = threads, main
