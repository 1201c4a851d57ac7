"""``[record]``, ``[backup]`` and ``[disk]`` of station.toml; each table and key may be left out."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Annotated

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import printable, whole
from station.config.printer_file import folder_of
from station.config.record_rules import BackupSettings, RecordSettings, least_keep_years
from station.config.settings import Shape
from station.config.toml_file import Table
from station.core.room import RoomRules

RECORD, BACKUP, DISK = "record", "backup", "disk"
_MIB = 2**20
_USUAL = RecordSettings()


class _RecordTable(Shape):
    """``[record]``."""

    key: Annotated[str, printable(300)] | None = None
    keep_years: Annotated[int, whole(1, 100, "years")] = 5


class _BackupTable(Shape):
    """``[backup]``."""

    folder: Annotated[str, printable(300)]
    every_hours: Annotated[int, whole(1, 168, "hours")] = 6
    keep: Annotated[int, whole(2, 1000, "backups")] = 28


class _DiskTable(Shape):
    """``[disk]``."""

    warn_percent: Annotated[int, whole(10, 99, "percent")] = 80
    stop_mib: Annotated[int, whole(1, 1_000_000, "MiB free")] = 256
    reserve_mib: Annotated[int, whole(0, 100_000, "MiB")] = 16


def read_record(table: Table, file: str, home: Path | None, faults: Faults) -> RecordSettings:
    """Return the tables, the usual where they are missing; what is wrong is noted.

    A path that is not absolute lies beside the settings.

    Args:
        table: all of the file.
        file: its name.
        home: folder of the record, as the settings have it.
        faults: takes in what is wrong.
    """
    record = check_table(_RecordTable, table, RECORD, file, faults) if RECORD in table else None
    backup = check_table(_BackupTable, table, BACKUP, file, faults) if BACKUP in table else None
    disk = check_table(_DiskTable, table, DISK, file, faults) if DISK in table else None
    key = folder = None
    if record is not None and record.key is not None:
        key = folder_of(record.key, faults.folder)
        _check_outside(key, home, f"{RECORD}.key", file, faults)
    if backup is not None:
        folder = folder_of(backup.folder, faults.folder)
        _check_outside(folder, home, f"{BACKUP}.folder", file, faults)
    return RecordSettings(
        keep_years=_USUAL.keep_years if record is None else record.keep_years,
        key=key,
        backup=(
            None
            if backup is None or folder is None
            else BackupSettings(folder, backup.every_hours, backup.keep)
        ),
        room=(
            RoomRules()
            if disk is None
            else RoomRules(disk.warn_percent, disk.stop_mib * _MIB, disk.reserve_mib * _MIB)
        ),
    )


def check_keep(kept: int, lives: Mapping[str, int], file: str, faults: Faults) -> None:
    """Note it where runs may be purged sooner than the longest rule allows.

    Args:
        kept: years, as the settings have them.
        lives: days from packing to the use-by date, by product.
        file: name of the settings file.
        faults: takes in what is wrong.
    """
    if not lives:
        return
    code = max(lives, key=lambda one: lives[one])
    least = least_keep_years(lives[code])
    if kept < least:
        why = (
            f"{kept} is too short: bags of {code} live {lives[code]} days, and their records are "
            "kept for two years after that"
        )
        faults.add(file, f"{RECORD}.keep_years", why, f"{least} to 100 years")


def _check_outside(path: Path, home: Path | None, key: str, file: str, faults: Faults) -> None:
    if home is not None and path.resolve().is_relative_to(home.resolve()):
        why = f"{path} lies in the home, and would be lost or changed with it"
        faults.add(file, key, why, "a place outside the home, best on another disk")
