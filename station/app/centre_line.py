"""The way to the centre as the settings have it: the thread, and the duty that speaks for it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from station.config.packhouse import Packhouse
from station.core.lots import InputLot
from station.line.centre_duty import CentreDuty
from station.line.ports import Clock

if TYPE_CHECKING:
    from station.app.centre_stops import CentreStops
    from station.sync.worker import SyncWorker


@dataclass(frozen=True, slots=True)
class CentreLine:
    """What a station needs of the centre."""

    worker: SyncWorker
    duty: CentreDuty
    stops: CentreStops


def centre_words(line: CentreLine) -> str:
    """How it stands with the centre, for whoever services the station; any thread."""
    status = line.worker.status
    said = f"{status.state}, {status.backlog} entries are not there yet"
    return f"{said}: {status.words}" if status.words else said


def sync_age(line: CentreLine | None, now: datetime) -> timedelta:
    """How long the oldest entry has waited for the centre; nothing where there is none."""
    return timedelta() if line is None else line.worker.status.age(now)


def centre_line(
    house: Packhouse,
    home: Path,
    clock: Clock,
    software: str,
    lots: Mapping[str, InputLot],
) -> CentreLine | None:
    """Build the worker and its duty; nothing runs yet. None where the settings name no centre.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
        software: version of the station's program.
        lots: every lot of the station, by code.
    """
    settings = house.settings.sync
    if settings is None:
        return None
    # A station without a centre starts without what speaks to one.
    from station.app.centre_settings import checked_with, running, shelf_of
    from station.app.centre_stops import CentreStops
    from station.sync.address import address_of
    from station.sync.downlink import Downlink, Uses
    from station.sync.worker import SyncWorker

    shelf, now = shelf_of(house.settings, home), clock.now().utc
    stops = CentreStops(home, lots, () if shelf is None else shelf.stops(now))
    visitor = None
    if shelf is not None:
        uses = Uses(checked_with(house), stops.heard, running(shelf, now))
        public = bytes.fromhex(settings.snapshot_key)
        visitor = Downlink(shelf, house.settings.site, public, clock, uses)
    worker = SyncWorker(home, address_of(settings), software, clock, visitor=visitor)
    duty = CentreDuty(stops.now, lambda at: worker.status.needs(at, settings.patience), lots)
    return CentreLine(worker, duty, stops)
