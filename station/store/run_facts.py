"""What a bag takes from its run and lot set, read once and remembered."""

from __future__ import annotations

from datetime import date

from sqlalchemy import Connection, bindparam, select

from station.core.journal import Value
from station.core.lot_set import LotSet, LotUse
from station.core.lots import LotStatus
from station.line.ports import StoreFault
from station.store import bodies
from station.store.journal import read_entry
from station.store.prepared import Prepared
from station.store.tables import blend, journal, lot, lot_set, lot_use, run

_HELD_IN = Prepared(
    select(lot.c.code)
    .join(lot_use, lot_use.c.lot == lot.c.code)
    .join(lot_set, lot_use.c.lot_set_id == lot_set.c.id)
    .where(lot_set.c.key == bindparam("its"), lot.c.status == bindparam("held"))
)


class RunFacts:
    """Answers on the writer's connection, inside its transactions.

    Only committed facts are remembered: a run or lot set is met here after the transaction that
    recorded it.
    """

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self._frames: dict[str, bodies.Body] = {}
        self._members: dict[str, list[Value]] = {}

    def known(self, run_id: str) -> bool:
        """Whether the run is in the record."""
        found = self._connection.execute(select(run.c.id).where(run.c.uid == run_id))
        return found.first() is not None

    def check_open(self, run_id: str) -> int:
        """Return the journal row of an open run.

        Raises:
            StoreFault: the run is unknown or has ended.
        """
        found = self._connection.execute(
            select(run.c.entry_id, run.c.ended_at).where(run.c.uid == run_id)
        ).one_or_none()
        if found is None:
            raise StoreFault(f"run {run_id} is not in the record: start it first")
        if found.ended_at is not None:
            raise StoreFault(f"run {run_id} has ended: start a new one")
        return int(found.entry_id)

    def frame(self, run_id: str) -> bodies.Body:
        """The part of a bag's journal body that its open run fixes."""
        frame = self._frames.get(run_id)
        if frame is None:
            row = self.check_open(run_id)
            kept = self._connection.execute(
                select(journal.c.canonical).where(journal.c.id == row)
            ).scalar_one()
            frame = self._frames[run_id] = bodies.run_frame(bodies.run_of(read_entry(kept).body))
        return frame

    def members(self, key: str) -> list[Value]:
        """The members of a lot set, as a bag's journal body names them.

        Raises:
            StoreFault: no run was started with this lot set, and no change of lots brought it.
        """
        members = self._members.get(key)
        if members is None:
            uses = self._connection.execute(
                select(lot_use.c.component, lot_use.c.lot).join(lot_set).where(lot_set.c.key == key)
            ).all()
            if not uses:
                raise StoreFault(
                    f"lot set {key} is not in the record: start a run with it or load it"
                )
            lots = LotSet.of(LotUse(use.component, use.lot) for use in uses)
            members = self._members[key] = bodies.lot_set_body(lots)
        return members

    def check_usable(self, key: str) -> None:
        """Refuse a lot set in which a lot is held.

        Raises:
            StoreFault: one is; names it.
        """
        values = {"its": key, "held": LotStatus.HELD}
        row = _HELD_IN.execute(self._connection, values).fetchone()
        if row is not None:
            raise StoreFault(f"lot {row[0]} is held: set the bag aside and take the lot off")

    def ended(self, run_id: str) -> None:
        """Forget a run that has ended."""
        self._frames.pop(run_id, None)


def next_blend_number(connection: Connection, line: str, day: date) -> int:
    """The number, from 1, of the next blend lot of a line and production day."""
    start = f"{line}{day:%y%j}"
    codes = (
        select(blend.c.code)
        .join(run)
        .where(run.c.line == line, blend.c.production_day == day)
        .where(blend.c.code.startswith(start, autoescape=True))
    )
    found = connection.execute(codes).scalars().all()
    numbers = [int(code[len(start) :]) for code in found if code[len(start) :].isdigit()]
    return max(numbers, default=0) + 1
