"""What the centre forbids, and what it needs somebody for.

A lot, product, component or supplier on the centre's list closes acceptance for as long as it is
listed, whatever the station's own record says. Beside that, the lead hears of a backlog only when
somebody has to do something about it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from station.core.blend_change import change_of
from station.core.facts import FactRecord
from station.core.lot_set import LotSet
from station.core.lots import InputLot
from station.core.pack import PackRecord
from station.core.run import Run
from station.line.state import Notice

_WHERE = "RUN, then LOTS (F6)"


class Listed(StrEnum):
    """What a line of the centre's list is about."""

    LOT = "lot"
    PRODUCT = "product"
    COMPONENT = "component"
    SUPPLIER = "supplier"


@dataclass(frozen=True, slots=True)
class Stop:
    """One line of the centre's list.

    Args:
        what: kind of thing.
        code: its code; of a supplier its name as lots carry it.
        reason: in words.
    """

    what: Listed
    code: str
    reason: str


class CentreDuty:
    """Implements station.line.duties.Duty.

    Args:
        stops: the centre's list as it is in force; asked each time.
        needs: what somebody must do about the way to the centre at a time; empty for nothing.
        lots: every lot of the station, by code.
    """

    name = ""

    def __init__(
        self,
        stops: Callable[[], Sequence[Stop]],
        needs: Callable[[datetime], str],
        lots: Mapping[str, InputLot],
    ) -> None:
        self._stops, self._needs, self._lots = stops, needs, lots
        self._run: Run | None = None
        self._set: LotSet | None = None

    def opened(self, run: Run, at: datetime) -> None:
        """The run's own set holds until a move changes it."""
        self._run, self._set = run, run.lot_set

    def packed(self, record: PackRecord) -> None:
        """A bag changes nothing."""

    def noted(self, record: FactRecord) -> None:
        """See which lots the run's bags name now."""
        change = change_of(record.fact)
        if change is not None and self._run is not None and record.fact.run == self._run.id:
            self._set = change.lot_set

    def closing(self, now: datetime) -> str:
        """The first listed thing that the open run has."""
        run, uses = self._run, () if self._set is None else self._set.uses
        if run is None:
            return ""
        codes = {use.lot for use in uses}
        suppliers = {self._lots[code].supplier for code in codes if code in self._lots}
        there = {
            Listed.LOT: codes,
            Listed.PRODUCT: {run.product.code},
            Listed.COMPONENT: {use.component for use in uses},
            Listed.SUPPLIER: suppliers,
        }
        for stop in self._stops():
            if stop.code in there[stop.what]:
                end = "end the run" if stop.what is Listed.PRODUCT else f"take it off: {_WHERE}"
                return f"the centre stops {stop.what} {stop.code} ({stop.reason}): {end}"
        return ""

    def due(self, now: datetime) -> Notice | None:
        """What somebody must do about the way to the centre."""
        words = self._needs(now)
        return Notice(words, now) if words else None
