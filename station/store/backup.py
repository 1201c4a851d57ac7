"""Backups: the whole record onto a second medium while the station packs, proved there.

SQLite's online backup copies one view of the record, taken at its start; the writer goes on
meanwhile. The copy is brought to the medium, dropped from the machine's memory where the system
lets one, read back from the medium, checked entry by entry, and only then gets its name. A name
that ends in ``.sqlite`` therefore stands for a backup that was whole when it was made. What is
checked is the journal and the file's structure; the tables are built again on restoring.
"""

from __future__ import annotations

import os
import re
import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing, suppress
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from station.core.pack import Moment, epoch_mark
from station.errors import BadInput, EnvironmentFault
from station.store.chain import Chain
from station.store.damage import Damage
from station.store.durable import sync_folder
from station.store.engine import read_only_uri, reading_file, record_in, shaped
from station.store.faults import explain, means_damage
from station.store.place import Standing, standing
from station.store.tree import BLOCK

_STEP = 2000
"""Pages copied between two reports: 8 MB."""
_NAME = re.compile(r"(\w+)-(\w+)-(\w\w)-(\d{9})-(\d{8}T\d{6})Z\.sqlite")

Told = Callable[[str, int, int], None]
"""What is done (``copying``, ``checking``), how much of it, of how much."""


def _ignore(_: str, __: int, ___: int) -> None:
    """Nobody watches."""


@dataclass(frozen=True, slots=True)
class Backup:
    """A backup in its folder.

    Args:
        path: the file.
        at: when it was made, in UTC.
        seq: number of its last entry.
    """

    path: Path
    at: datetime
    seq: int


@dataclass(frozen=True, slots=True)
class BackupDone:
    """A backup just made.

    Args:
        backup: where.
        place: whose record, up to which entry.
        entries: all of them, of all epochs; each was checked on the medium.
        size: bytes.
        same_disk: it lies on the same disk as the record, and would be lost with it.
    """

    backup: Backup
    place: Standing
    entries: int
    size: int
    same_disk: bool


def back_up(home: Path, folder: Path, at: Moment, told: Told = _ignore) -> BackupDone:
    """Make a backup of the record in ``home``, whether or not the station runs.

    Args:
        home: the station's folder.
        folder: where to; must be there, so that a disk that is not connected is noticed.
        at: now.
        told: hears how far it has come.

    Raises:
        BadInput: there is no record, or the folder lies in the home.
        EnvironmentFault: the folder is not there or full, the medium fails, or the copy is not
            whole; no file of that name is left.
    """
    source = record_in(home)
    _check(source, home, folder)
    unfinished = folder / f".{home.name}.{os.getpid()}.unfinished"
    try:
        _copy(source, unfinished, told)
        _bring_to_medium(unfinished)
        place, entries = check_file(unfinished, told)
        backup = Backup(folder / _name(place, at.utc), at.utc.replace(microsecond=0), place.seq)
        unfinished.replace(backup.path)
        sync_folder(folder)
    except OSError as fault:
        raise EnvironmentFault(f"cannot back up to {folder}", str(fault)) from fault
    finally:
        with suppress(OSError):
            unfinished.unlink(missing_ok=True)
    same = home.stat().st_dev == folder.stat().st_dev
    return BackupDone(backup, place, entries, backup.path.stat().st_size, same)


def check_file(path: Path, told: Told = _ignore) -> tuple[Standing, int]:
    """Check a file's structure and every entry of its journal.

    Returns:
        Where its journal stands, and how many entries it has.

    Raises:
        BadInput: it is no record that this program can read or bring up to date.
        EnvironmentFault: it is not whole; the message names the entry.
    """
    try:
        with reading_file(path) as connection:
            shaped(connection, path, older_too=True)
            place = standing(connection)
            (found,) = connection.exec_driver_sql("PRAGMA integrity_check(1)").one()
            if found != "ok":
                raise Damage(None, f"its pages are damaged: {found}")
            chain = Chain(connection)
            for _ in chain.walk():
                if chain.entries % BLOCK == 0:
                    told("checking", chain.entries, place.row)
            return place, chain.entries
    except Damage as damage:
        where = "" if damage.seq is None else f" at entry {damage.seq}"
        raise EnvironmentFault(f"the copy {path} is not whole{where}", damage.why) from damage


def backups_in(folder: Path, site: str, station: str) -> tuple[Backup, ...]:
    """Return the backups of a station in a folder, oldest first."""
    found = []
    for path in folder.glob(f"{site}-{station}-*.sqlite"):
        named = _NAME.fullmatch(path.name)
        if named is not None:
            at = datetime.strptime(named[5], "%Y%m%dT%H%M%S").replace(tzinfo=UTC)
            found.append(Backup(path, at, int(named[4])))
    return tuple(sorted(found, key=lambda one: (one.at, one.seq)))


def drop_oldest(folder: Path, site: str, station: str, keep: int) -> tuple[Path, ...]:
    """Take out the oldest backups of a station, so that ``keep`` stay; returns what went."""
    old = backups_in(folder, site, station)[: -max(keep, 1)]
    gone = []
    for one in old:
        with suppress(OSError):
            one.path.unlink()
            gone.append(one.path)
    return tuple(gone)


def _check(source: Path, home: Path, folder: Path) -> None:
    if not folder.is_dir():
        raise EnvironmentFault(
            f"the backup folder {folder} is not there",
            "connect the disk it lies on, or make the folder once",
        )
    if folder.resolve().is_relative_to(home.resolve()):
        raise BadInput(f"{folder}", "lies in the home: give a folder on another disk")
    log = source.with_name(f"{source.name}-wal")
    needed = source.stat().st_size + (log.stat().st_size if log.exists() else 0)
    free = shutil.disk_usage(folder).free
    if free < needed:
        raise EnvironmentFault(
            f"the backup folder {folder} is too full",
            f"{needed >> 20} MB are needed, {free >> 20} MB are free: take old files out",
        )


def _copy(source: Path, target: Path, told: Told) -> None:
    target.unlink(missing_ok=True)
    try:
        with (
            closing(sqlite3.connect(read_only_uri(source), uri=True, isolation_level=None)) as of,
            closing(sqlite3.connect(target, isolation_level=None)) as to,
        ):
            # An open reading keeps the view; without one every write of the station would make
            # the copy start again (SQLite documentation, "Online Backup API").
            of.execute("BEGIN")
            of.execute("SELECT count(*) FROM identity").fetchone()
            of.backup(
                to,
                pages=_STEP,
                progress=lambda _, left, all_: told("copying", all_ - left, all_),
                sleep=0,
            )
            to.execute("PRAGMA journal_mode=DELETE")
    except sqlite3.Error as fault:
        if means_damage(fault):
            raise EnvironmentFault("the record is damaged", explain(fault).words) from fault
        raise EnvironmentFault(f"cannot copy to {target.parent}", explain(fault).words) from fault


def _bring_to_medium(path: Path) -> None:
    """Sync a file and drop it from memory, so that the check reads what the medium holds."""
    with path.open("rb+") as file:
        os.fsync(file.fileno())
        if hasattr(os, "posix_fadvise"):
            os.posix_fadvise(file.fileno(), 0, 0, os.POSIX_FADV_DONTNEED)


def _name(place: Standing, at: datetime) -> str:
    stamp = f"{at.astimezone(UTC):%Y%m%dT%H%M%S}Z"
    mark = epoch_mark(place.epoch)
    return f"{place.site}-{place.station}-{mark}-{place.seq:09d}-{stamp}.sqlite"
