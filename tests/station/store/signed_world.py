"""A record with a key and signed heads of two days."""

from dataclasses import dataclass, replace
from datetime import timedelta
from pathlib import Path

from station.core.pack import Moment
from station.store.writer import StationStore
from tests.station.store.conftest import World


@dataclass
class DayClock:
    """The packhouse's clock, some days on."""

    inner: object
    days: int = 0

    def now(self) -> Moment:
        now = self.inner.now()
        return replace(now, utc=now.utc + timedelta(days=self.days))

    def monotonic_ns(self) -> int:
        return self.inner.monotonic_ns()


def opened(world: World, clock: DayClock, key: Path | None = None) -> StationStore:
    return StationStore.open(world.home, world.site, world.station, clock, key)


def key_of(world: World) -> Path:
    return world.home.with_name(f"{world.home.name}.key")


def fill_two_days(world: World, notes: int = 300) -> None:
    """Bags and notes on 4 and 5 March; a signed head between, and one when the station stops."""
    clock = DayClock(world.clock)
    with opened(world, clock, key_of(world)) as store:
        store.add_lots(world.lots, clock.now(), "p.marsh")
        run = world.start(store)
        world.fill(store, run, 6)
        for number in range(notes):
            store.note(f"event {number}", clock.now(), "station")
        clock.days = 1
        store.note("the second day", clock.now(), "station")
