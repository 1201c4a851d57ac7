"""The way to the centre as the settings have it: the thread, and the duty that speaks for it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

from station.config.sync_settings import SyncSettings
from station.core.lots import InputLot
from station.line.centre_duty import CentreDuty
from station.line.ports import Clock
from station.sync.address import address_of
from station.sync.status import SyncStatus
from station.sync.worker import SyncWorker


@dataclass(frozen=True, slots=True)
class CentreLine:
    """What a station needs of the centre."""

    worker: SyncWorker
    duty: CentreDuty


def centre_words(line: CentreLine) -> str:
    """How it stands with the centre, for whoever services the station; any thread."""
    status = line.worker.status
    said = f"{status.state}, {status.backlog} entries are not there yet"
    return f"{said}: {status.words}" if status.words else said


def centre_line(
    settings: SyncSettings,
    home: Path,
    clock: Clock,
    software: str,
    lots: Mapping[str, InputLot],
    told: Callable[[SyncStatus], None] = lambda _: None,
) -> CentreLine:
    """Build the worker and its duty; nothing runs yet.

    Args:
        settings: the way to the centre.
        home: folder of the record.
        clock: tells the time.
        software: version of the station's program.
        lots: every lot of the station, by code.
        told: hears how it stands.
    """
    worker = SyncWorker(home, address_of(settings), software, clock, told)
    duty = CentreDuty(lambda: (), lambda now: worker.status.needs(now, settings.patience), lots)
    return CentreLine(worker, duty)
