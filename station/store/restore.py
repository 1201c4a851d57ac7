"""A backup becomes the station's record again, under a new epoch.

Bags packed after the backup was made are on pallets and not in it. Their numbers must not come
again, so the record goes on in a new epoch: its two-letter mark, part of every serial, is none that
any epoch of this station known here had. The first entries say who restored what and why, and the
home that was there is kept beside the new one.
"""

from __future__ import annotations

import os
import shutil
import sqlite3
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from sqlalchemy.exc import DBAPIError

from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.journal import EntryKind, Value
from station.core.pack import epoch_mark
from station.errors import BadInput, EnvironmentFault
from station.line.ports import Clock, StoreFault
from station.store.backup import Told, check_file
from station.store.day_heads import witness_of
from station.store.durable import sync_folder
from station.store.engine import database, migration_engine, reading_file
from station.store.faults import explain
from station.store.heads import SeenHead, read_head
from station.store.lock import HomeLock
from station.store.migrate import upgrade
from station.store.opening import new_epoch
from station.store.place import Standing, epochs_of, standing
from station.store.rebuild import rebuild
from station.store.writer import StationStore


@dataclass(frozen=True, slots=True)
class Restored:
    """What was done.

    Args:
        entries: of the backup, all epochs.
        last: number of its last entry.
        mark: two letters of the new epoch, in every serial from now on.
        aside: where the old home lies; None where there was none.
        lost: entries of the old record that are not in the backup; None where nobody knows.
    """

    entries: int
    last: int
    mark: str
    aside: Path | None
    lost: int | None


def _ignore(_: str, __: int, ___: int) -> None:
    """Nobody watches."""


def restore(
    backup: Path,
    home: Path,
    names: tuple[str, str],
    clock: Clock,
    who: str,
    why: str,
    key: Path | None = None,
    told: Told = _ignore,
) -> Restored:
    """Put a backup in the place of a stopped station's record.

    Args:
        backup: the file; it is left as it is.
        home: the station's folder; what is there is put aside.
        names: site and station whose record it must be.
        clock: tells the time.
        who: id of the person.
        why: the reason, for the record.
        key: file of the station's key, beside which a head is kept.
        told: hears how far it has come.

    Raises:
        BadInput: no such file, another station's, or a newer program's.
        EnvironmentFault: the backup is not whole, the station runs, or the disk does not serve;
            the home is as it was.
    """
    if not backup.is_file():
        raise BadInput(f"--from {backup}", "is no file: name a backup")
    if not backup.stat().st_size:
        raise BadInput(f"--from {backup}", "is empty: name another backup")
    place, entries = check_file(backup, told)
    if (place.site, place.station) != names:
        raise BadInput(
            f"{backup} is a backup of station {place.station} at site {place.site}",
            f"the settings say station {names[1]} at site {names[0]}",
        )
    at = clock.now()
    stamp = f"{at.utc:%Y%m%dT%H%M%S}"
    fresh = home.with_name(f"{home.name}.restoring")
    old = _old_record(home)
    try:
        home.parent.mkdir(parents=True, exist_ok=True)
        shutil.rmtree(fresh, ignore_errors=True)
        fresh.mkdir()
        _copy(backup, database(fresh))
        upgrade(database(fresh))
        rebuild(fresh)  # a backup's journal was checked, its tables were not: they follow from it
        epoch = _begin_epoch(database(fresh), old)
        lost = _lost(place, old)
        with StationStore.open(fresh, *names, clock) as store:
            fact = _fact(new_uid(at), backup.name, place, at.utc, old, lost, why)
            store.record((fact,), at, who)
        aside = _swap(home, fresh, stamp)
        if key is not None:
            _put_witness_aside(key, stamp)
    except (OSError, StoreFault) as fault:
        raise EnvironmentFault(f"cannot restore to {home}", str(fault)) from fault
    return Restored(entries, place.seq, epoch_mark(epoch), aside, lost)


@dataclass(frozen=True, slots=True)
class _Old:
    """What can still be known of the record that is replaced."""

    place: Standing | None
    epochs: Sequence[int]
    seen: SeenHead | None


def _old_record(home: Path) -> _Old:
    """See that no station runs in a home, and read what its record still tells."""
    if not home.exists():
        return _Old(None, (), None)
    lock = HomeLock(home)
    lock.release()
    seen = read_head(home)
    epochs = set() if seen is None else {seen.epoch}
    place = None
    path = database(home)
    if path.is_file():
        # A damaged record is what backups are for: what it does not tell is not known.
        with suppress(EnvironmentFault), reading_file(path.resolve()) as connection:
            place = standing(connection)
            epochs |= set(epochs_of(connection))
    return _Old(place, tuple(epochs), seen)


def _copy(backup: Path, target: Path) -> None:
    shutil.copyfile(backup, target)
    with target.open("rb+") as file:
        os.fsync(file.fileno())


def _begin_epoch(path: Path, old: _Old) -> int:
    engine = migration_engine(path)
    try:
        with engine.connect() as connection, connection.begin():
            epoch = new_epoch((*epochs_of(connection), *old.epochs))
            connection.exec_driver_sql("UPDATE identity SET epoch = ?", (epoch,))
    except (DBAPIError, sqlite3.Error) as fault:
        raise EnvironmentFault(f"cannot write {path}", explain(fault).words) from fault
    finally:
        engine.dispose()
    return epoch


def _lost(backup: Standing, old: _Old) -> int | None:
    """Entries the old record has beyond the backup, where both are of one epoch."""
    ends = [known.seq for known in (old.place, old.seen) if known and known.epoch == backup.epoch]
    return max(0, max(ends) - backup.seq) if ends else None


def _fact(
    uid: str,
    name: str,
    place: Standing,
    at: datetime,
    old: _Old,
    lost: int | None,
    why: str,
) -> Fact:
    details: dict[str, Value] = {
        "epoch": str(place.epoch),
        "seq": place.seq,
        "hash": place.hash.hex(),
        "lost": lost,
        "why": why,
        "replaced": None
        if old.place is None
        else {
            "epoch": str(old.place.epoch),
            "seq": old.place.seq,
            "hash": old.place.hash.hex(),
        },
    }
    return Fact(EntryKind.RESTORE, uid, name, "restored", details=details)


def _swap(home: Path, fresh: Path, stamp: str) -> Path | None:
    aside = None
    if home.exists():
        aside = home.with_name(f"{home.name}.before-restore-{stamp}")
        home.rename(aside)
    fresh.rename(home)
    sync_folder(home.parent)
    return aside


def _put_witness_aside(key: Path, stamp: str) -> None:
    """The head beside the key is of the record that was replaced."""
    witness = witness_of(key)
    if witness.exists():
        witness.rename(witness.with_name(f"{witness.name}.before-restore-{stamp}"))
