"""What the centre stops: listed at once for the duty, and held lots carried into the record."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from pathlib import Path

from station.core.facts import Fact
from station.core.lots import InputLot
from station.core.receiving import hold_lot_fact
from station.core.rights import STATION
from station.line.centre_duty import Listed, Stop
from station.store.facts import fact_named
from station.sync.snapshot import CentreStop

Enter = Callable[[tuple[Fact, ...], str], None]


class CentreStops:
    """Hears the centre's list on the thread of the way to it; the duty asks on the line's.

    A listed lot that the station knows becomes a hold in its own record, once, under the list's own
    id; with it every bag that could hold the lot is held. When the centre takes the lot off its
    list, acceptance opens again, but the hold stays until a person releases it here.

    Args:
        home: folder of the record.
        lots: every lot of the station, by code.
        first: the list as it was in force when the station stopped.
    """

    def __init__(
        self, home: Path, lots: Mapping[str, InputLot], first: Iterable[CentreStop] = ()
    ) -> None:
        self._home, self._lots = home, lots
        self._lines = tuple(first)
        self._entered = set[str]()
        self.enter: Enter | None = None
        """Brings facts to the line; set once there is a line."""

    def now(self) -> tuple[Stop, ...]:
        """The list in force."""
        return tuple(line.stop for line in self._lines)

    def heard(self, lines: tuple[CentreStop, ...]) -> None:
        """Take over the list, and hold what it holds."""
        self._lines = lines
        if self.enter is None:
            return
        for line in lines:
            stop = line.stop
            if stop.what is Listed.LOT and self._new(line.uid) and stop.code in self._lots:
                self._entered.add(line.uid)  # twice under one id would be refused by the record
                hold = hold_lot_fact(line.uid, stop.code, f"the centre: {stop.reason}")
                self.enter((hold,), STATION)

    def _new(self, uid: str) -> bool:
        """Whether a line of the list is not in the record yet."""
        if uid not in self._entered and fact_named(self._home, uid) is not None:
            self._entered.add(uid)
        return uid not in self._entered
