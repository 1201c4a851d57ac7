"""Qt's side of a station: the application, its sounds, its faults, and how long they last."""

from __future__ import annotations

import logging
import signal
import sys
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from types import TracebackType
from typing import TypeVar

from PySide6.QtCore import QEvent, QTimer
from PySide6.QtWidgets import QApplication

from station.app.assembly import Station
from station.app.qt_application import the_application
from station.app.sounds import Sounds, system_sink
from station.config.packhouse import Packhouse
from station.screens.bridge import Bridge
from station.screens.sweep import swept
from station.screens.theme import Ruler

T = TypeVar("T")
_LOG = logging.getLogger(__name__)
_SWITCH_S = 0.0005
"""Threads change this often, so that drawing a label does not hold up the number on the screen."""
_LOOK_MS = 200


def both(one: Callable[[T], None], other: Callable[[T], None]) -> Callable[[T], None]:
    """Return a listener that tells two, one after the other."""

    def tell(value: T) -> None:
        one(value)
        other(value)

    return tell


@contextmanager
def application() -> Iterator[QApplication]:
    """Qt's application, which ends on Ctrl-C as well as with its last window.

    A quit closes the windows, and the last of them wishes to quit once more. Nobody hears that
    wish any more in this loop; left behind, it would end every later loop of the process as soon
    as it began, so it is taken away.

    Raises:
        EnvironmentFault: there is no screen to show a window on.
    """
    application = the_application()
    before, switch = signal.getsignal(signal.SIGINT), sys.getswitchinterval()
    signal.signal(signal.SIGINT, lambda *_: application.quit())
    sys.setswitchinterval(_SWITCH_S)
    awake = QTimer()  # Python sees a signal only while Python runs
    awake.timeout.connect(_nothing)
    awake.start(_LOOK_MS)
    Ruler.room = application.primaryScreen().availableGeometry().size()
    try:
        with swept():
            yield application
    finally:
        Ruler.room = None
        awake.stop()
        application.removePostedEvents(application, QEvent.Type.Quit.value)
        sys.setswitchinterval(switch)
        signal.signal(signal.SIGINT, before)


def _nothing() -> None:
    """Let Python run."""


def sounds_of(house: Packhouse) -> Sounds:
    """What plays the line's sounds, or silence, as the settings say."""
    return Sounds(system_sink() if house.settings.screen.sounds else None)


@contextmanager
def running(part: Station | Sounds) -> Iterator[None]:
    """Run the station, or what plays its sounds, while this lasts."""
    part.start()
    try:
        yield
    finally:
        part.stop()


@contextmanager
def faults_to(bridge: Bridge) -> Iterator[None]:
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
