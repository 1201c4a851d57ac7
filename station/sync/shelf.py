"""Snapshots as a station keeps them: every one verified each time it is taken out.

A file for each, in ``centre`` inside the home, written whole or not at all. The newest whose time
has come is in force; newer ones wait there for theirs. One that is damaged does not exist, and the
one before it is in force again.
"""

from __future__ import annotations

import json
import os
import re
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

from station.errors import EnvironmentFault
from station.sync.snapshot import (
    EVERY_SITE,
    CentreStop,
    Kind,
    Snapshot,
    SnapshotRefused,
    opened,
    stops_of,
    text_of,
)

_NAME = re.compile(r"(every|site)-(products|people|rules|stops)-(\d{1,18})\.json", re.ASCII)
_KEPT_BEFORE = 1
"""Snapshots kept behind the one in force."""


@dataclass(frozen=True, slots=True)
class Series:
    """Snapshots of one kind, for every site or for this one."""

    site: str
    kind: Kind


class Shelf:
    """The snapshots in a home.

    Args:
        home: the station's folder.
        site: short code of its site.
        public: the centre's public key, 32 bytes.
    """

    def __init__(self, home: Path, site: str, public: bytes) -> None:
        self._folder = home / "centre"
        self._site, self._public = site, public

    def take_in(self, snapshot: Snapshot, body: bytes, signature: bytes, at: datetime) -> None:
        """Keep a verified snapshot; returns once it is durable.

        Raises:
            SnapshotRefused: it is for another site, or not newer than what is here.
            EnvironmentFault: the disk does not serve.
        """
        if snapshot.site not in (EVERY_SITE, self._site):
            raise SnapshotRefused(f"it is for site {snapshot.site}")
        series = Series(snapshot.site, snapshot.kind)
        newest = self.newest(series)
        if snapshot.version <= newest:
            raise SnapshotRefused(f"version {snapshot.version} is not above {newest}, kept here")
        whole = {"received": at.isoformat(), "signature": signature.hex(), "body": body.decode()}
        path = self._folder / f"{_prefix(series)}-{snapshot.version}.json"
        unfinished = path.with_suffix(".unfinished")
        try:
            self._folder.mkdir(exist_ok=True)
            with unfinished.open("w", encoding="utf-8") as file:
                json.dump(whole, file, ensure_ascii=False)
                file.flush()
                os.fsync(file.fileno())
            unfinished.replace(path)
        except OSError as fault:
            raise EnvironmentFault(
                f"a snapshot of the centre cannot be kept in {self._folder}", str(fault)
            ) from fault
        self._clear_up(series, at)

    def newest(self, series: Series) -> int:
        """Greatest version kept of a series, in force or not; 0 without any."""
        return max(self._versions(series), default=0)

    def in_force(self, series: Series, now: datetime) -> Snapshot | None:
        """The newest of a series whose time has come, or None."""
        for version in sorted(self._versions(series), reverse=True):
            found = self._read(series, version)
            if found is not None and found.effective <= now:
                return found
        return None

    def text(self, kind: Kind, now: datetime) -> Snapshot | None:
        """The settings file in force: the site's own before the one of every site."""
        for site in (self._site, EVERY_SITE):
            found = self.in_force(Series(site, kind), now)
            if found is not None:
                return found
        return None

    def stops(self, now: datetime) -> tuple[CentreStop, ...]:
        """Every line of the stop lists in force, for every site and for this one."""
        found: list[CentreStop] = []
        for site in (EVERY_SITE, self._site):
            snapshot = self.in_force(Series(site, Kind.STOPS), now)
            if snapshot is not None:
                found += stops_of(snapshot)
        return tuple(found)

    def lay_out(self, kind: Kind, now: datetime) -> Path | None:
        """Write the settings file in force where it can be read; None where none is in force."""
        found = self.text(kind, now)
        if found is None:
            return None
        path = self._folder / f"{kind}.toml"
        unfinished = path.with_suffix(".unfinished")
        try:
            unfinished.write_text(text_of(found), encoding="utf-8")
            unfinished.replace(path)
        except OSError as fault:
            raise EnvironmentFault(f"{path} cannot be written", str(fault)) from fault
        return path

    def age(self, now: datetime) -> timedelta | None:
        """How long ago the newest snapshot of any kind came; None without any."""
        times = []
        for path in self._files():
            with suppress(OSError, ValueError, KeyError, TypeError):
                told = json.loads(path.read_text(encoding="utf-8"))
                times.append(datetime.fromisoformat(told["received"]))
        return now - max(times) if times else None

    def _files(self) -> list[Path]:
        try:
            return [one for one in self._folder.iterdir() if _NAME.fullmatch(one.name)]
        except OSError:
            return []

    def _versions(self, series: Series) -> list[int]:
        start = f"{_prefix(series)}-"
        return [
            int(path.stem.removeprefix(start))
            for path in self._files()
            if path.name.startswith(start)
        ]

    def _read(self, series: Series, version: int) -> Snapshot | None:
        path = self._folder / f"{_prefix(series)}-{version}.json"
        try:
            told = json.loads(path.read_text(encoding="utf-8"))
            found = opened(told["body"].encode(), bytes.fromhex(told["signature"]), self._public)
        except (OSError, ValueError, KeyError, TypeError, AttributeError):
            return None
        named = (found.site, found.kind, found.version)
        return found if named == (series.site, series.kind, version) else None

    def _clear_up(self, series: Series, now: datetime) -> None:
        force = self.in_force(series, now)
        if force is None:
            return
        older = sorted(one for one in self._versions(series) if one < force.version)
        for version in older[:-_KEPT_BEFORE]:
            with suppress(OSError):
                (self._folder / f"{_prefix(series)}-{version}.json").unlink()


def _prefix(series: Series) -> str:
    return f"{'every' if series.site == EVERY_SITE else 'site'}-{series.kind}"
