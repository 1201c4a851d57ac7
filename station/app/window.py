"""The station in its window: builds Qt's side, lends it to the station's threads, takes it down."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QTimer

from station.app import later
from station.app.assembly import Audience, Station
from station.app.memory import settle, settled
from station.app.printers import printer_of
from station.app.qt_side import application, faults_to, running, sounds_of
from station.app.serial_line import port_settings
from station.app.station_window import station_window
from station.config.packhouse import Packhouse
from station.core.ids import new_uid
from station.core.people import left_fact
from station.screens.bridge import Bridge
from station.screens.kiosk import Kiosk
from station.screens.late_doors import LateDoors
from station.screens.screen_keeper import ScreenKeeper
from station.screens.theme import PALETTES

_OVERLAP_MS = 300
"""So long the window has to come over what was shown before it; nothing else shines through."""


def show_station(
    house: Packhouse,
    home: Path,
    record: Path | None = None,
    config: Path | None = None,
    *,
    kiosk: bool = False,
    shown: Callable[[], None] | None = None,
) -> None:
    """Run the station on its own scale until its window is closed.

    Args:
        house: the settings.
        home: folder of the record.
        record: file that takes in everything the scale sends; None for none.
        config: folder of the settings, which whoever services the station may change.
        kiosk: the window fills its screen, and only somebody with the right leaves it.
        shown: told once the window is there, for what was shown before it.

    Raises:
        StationError: the record, the printer's folder or the screen does not serve.
        RecordingError: the file cannot be made.
    """
    with application() as qt:
        bridge = Bridge()
        sounds = sounds_of(house)
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
        with faults_to(bridge), running(sounds), running(station):
            window = station_window(bridge, station, house)
            if shown is not None:
                QTimer.singleShot(_OVERLAP_MS, window, shown)
            LateDoors(window, later.pieces(), settle)
            if kiosk:
                alone = Kiosk(
                    *(window, PALETTES[settings.screen.theme], bridge, station.line),
                    lambda: left_fact(new_uid(station.clock.now())),
                )
                alone.show()
                with settled(at_once=False):
                    qt.exec()
                alone.release()
            else:
                ScreenKeeper(window, full=False)
                window.showMaximized()
                with settled(at_once=False):
                    qt.exec()
            window.close()
