"""Fetches the centre's snapshots, and lets nothing in that is unsigned, older or unusable."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from station.core.metrology.rule_sets.registry import RULE_SETS
from station.errors import StationError
from station.line.ports import Clock
from station.sync.connection import CentreConnection
from station.sync.shelf import Series, Shelf
from station.sync.snapshot import (
    EVERY_SITE,
    CentreStop,
    Kind,
    Snapshot,
    SnapshotRefused,
    opened,
    rules_of,
)

_NEWEST = (
    "SELECT site, kind, max(version) FROM centre.snapshot WHERE site IN (%s, %s) GROUP BY 1, 2"
)
_NEWER = (
    "SELECT site, kind, version, body, signature FROM centre.snapshot "
    "WHERE site = %s AND kind = %s AND version > %s ORDER BY version"
)


@dataclass(frozen=True, slots=True)
class Uses:
    """What the station does with snapshots; all are called on the thread of the way to the centre.

    Args:
        check: refuses settings the station could not start with (a BadInput); by kind and text.
        stops: hears the lines in force, each time.
        running: version of the products and people this run of the program was started with, by
            kind; 0 for the station's own files.
    """

    check: Callable[[Snapshot], None]
    stops: Callable[[tuple[CentreStop, ...]], None]
    running: Mapping[Kind, int]


class Downlink:
    """Implements station.sync.worker.Visitor.

    Args:
        shelf: where they are kept.
        site: short code of the station's site.
        public: the centre's public key.
        clock: tells the time.
        uses: what the station does with them.
    """

    def __init__(self, shelf: Shelf, site: str, public: bytes, clock: Clock, uses: Uses) -> None:
        self._shelf, self._site, self._public = shelf, site, public
        self._clock, self._uses = clock, uses

    def visit(self, connection: CentreConnection, wait_s: float) -> tuple[str, ...]:
        """Fetch what is newer; returns what needs somebody."""
        alarms: list[str] = []
        with connection.within(wait_s):
            there = connection.execute(_NEWEST, (EVERY_SITE, self._site)).fetchall()
        newest = {(site, kind): version for site, kind, version in there}
        for site in (EVERY_SITE, self._site):
            for kind in Kind:
                series = Series(site, kind)
                kept = self._shelf.newest(series)
                if newest.get((site, str(kind)), 0) <= kept:
                    continue
                with connection.within(wait_s):
                    rows = connection.execute(_NEWER, (site, str(kind), kept)).fetchall()
                for row in rows:
                    alarms += self._take(series, row[2], bytes(row[3]), bytes(row[4]))
        return (*alarms, *self.look())

    def look(self) -> tuple[str, ...]:
        """Put into use what is in force now; returns what needs somebody."""
        now = self._clock.now().utc
        self._uses.stops(self._shelf.stops(now))
        return (*self._other_rules(), *self._waiting())

    def _take(self, series: Series, version: int, body: bytes, signature: bytes) -> list[str]:
        try:
            snapshot = opened(body, signature, self._public)
            if (snapshot.site, snapshot.kind, snapshot.version) != (
                series.site,
                series.kind,
                version,
            ):
                raise SnapshotRefused("it stands under another name than its own")
            if snapshot.kind in (Kind.PRODUCTS, Kind.PEOPLE):
                self._uses.check(snapshot)
            self._shelf.take_in(snapshot, body, signature, self._clock.now().utc)
        except (SnapshotRefused, StationError) as refused:
            kept = self._shelf.newest(series)
            stays = f"version {kept} stays" if kept else "none is in force"
            return [f"{series.kind} {version} of the centre is refused, {stays}: {refused}"]
        return []

    def _other_rules(self) -> list[str]:
        found = self._shelf.text(Kind.RULES, self._clock.now().utc)
        if found is None:
            return []
        ours = {name: one.version for name, one in RULE_SETS.items()}
        return [
            f"the centre asks for rule set {name} in version {version}, this program has "
            f"{ours.get(name, 'none')}: bring the program up to date"
            for name, version in rules_of(found).items()
            if ours.get(name) != version
        ]

    def _waiting(self) -> list[str]:
        """Settings in force that this run of the program was not started with."""
        now, found = self._clock.now().utc, []
        for kind, version in self._uses.running.items():
            force = self._shelf.text(kind, now)
            if force is not None and force.version != version:
                found.append(f"{force.name} are in force: start the station again between two runs")
        return found
