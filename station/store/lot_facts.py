"""Deliveries, and holds and releases of lots, as they change the table of lots."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import Connection, insert, select, update

from station.core.facts import Fact
from station.core.holds import released_run
from station.core.journal import Entry, EntryKind
from station.core.line_lots import move_of
from station.core.lots import InputLot, LotStatus
from station.core.pack import Quality
from station.core.receiving import delivered_lot, held_lot, open_holds
from station.store.facts import fact_record, read_facts
from station.store.hold_ranges import HoldRanges, UnknownFact
from station.store.purges import Gone
from station.store.tables import fact, journal, lot, pack

_Body = Mapping[str, Any]


class LotFacts:
    """Applies entries about lots on the writer's connection, inside its transactions."""

    def __init__(self, connection: Connection, ranges: HoldRanges, gone: Gone) -> None:
        self._connection = connection
        self._ranges = ranges
        self._gone = gone

    def deliver(self, entry: Entry) -> None:
        """Make a delivered lot known.

        Raises:
            UnknownFact: its code is on record; two deliveries under one code cannot be told apart.
        """
        body: _Body = entry.body
        new = delivered_lot(body["subject"], body["result"], body["details"])
        there = self.known(new.code)
        if there is not None:
            raise UnknownFact(
                f"lot {new.code} is already in the record ({there.component} from "
                f"{there.supplier}, received {there.received}): give the new delivery a code of "
                "its own"
            )
        values = {name: getattr(new, name) for name in lot.c.keys()}  # noqa: SIM118  no mapping
        self._connection.execute(insert(lot).values(values))

    def hold(self, entry: Entry) -> None:
        """Hold bags, and the lot where the hold is about one.

        Raises:
            UnknownFact: there is no such lot.
        """
        self._ranges.hold(entry)
        code = held_lot(fact_record(entry).fact)
        if not code:
            return
        if self.known(code) is None:
            raise UnknownFact(f"lot {code} is not in the record: receive it first")
        free = (lot.c.code == code) & (lot.c.status == LotStatus.FREE)
        self._connection.execute(update(lot).where(free).values(status=LotStatus.HELD))

    def release(self, entry: Entry) -> None:
        """Take a hold off its bags, and off the lot where no other hold is on it.

        Raises:
            UnknownFact: there is no such hold, or it was released before.
        """
        released = fact_record(entry).fact
        if released_run(released):
            return  # a run let go for dispatch; it takes no hold off
        code, hold = held_lot(released), str(released.details["hold"])
        if not code:
            self._ranges.release(entry)
            return
        open_before = self.open_holds(code, but=released.uid)
        if hold not in open_before:
            raise UnknownFact(f"hold {hold} of lot {code} is not open in the record")
        if self._ranges.is_open(hold):
            self._ranges.release(entry)
        if len(open_before) == 1:
            held = (lot.c.code == code) & (lot.c.status == LotStatus.HELD)
            self._connection.execute(update(lot).where(held).values(status=LotStatus.FREE))

    def rework(self, moved: Fact) -> None:
        """Take bags whose content went back on the line out of the rejects.

        Raises:
            UnknownFact: one was not set aside, or its content went back before.
        """
        serials = move_of(moved).serials
        for serial in serials:
            aside = (pack.c.serial == serial) & (pack.c.quality == Quality.REJECT)
            back = update(pack).where(aside).values(quality=Quality.REWORKED)
            if self._connection.execute(back).rowcount != 1 and not self._gone.bag(serial):
                raise UnknownFact(
                    f"bag {serial} is not among those set aside: set it aside before its content "
                    "goes back on the line"
                )

    def known(self, code: str) -> InputLot | None:
        """The lot of a code, or None."""
        found = self._connection.execute(select(lot).where(lot.c.code == code))
        row = found.mappings().one_or_none()
        return None if row is None else InputLot(**row)

    def open_holds(self, code: str, but: str = "") -> tuple[str, ...]:
        """Uids of the holds on a lot that nobody released; ``but`` leaves out one entry."""
        kinds = (EntryKind.HOLD, EntryKind.RELEASE)
        of_lot = (
            select(journal.c.canonical)
            .join(fact, fact.c.entry_id == journal.c.id)
            .where(fact.c.subject == code, fact.c.kind.in_(kinds), fact.c.uid != but)
            .order_by(fact.c.id.desc())
        )
        records = read_facts(self._connection, of_lot)
        return tuple(record.fact.uid for record in open_holds(records).get(code, ()))


def set_of_move(moved: Fact) -> Mapping[str, Any] | None:
    """The set of lots a move of a lot brought into force; None where it changed none."""
    changed: Any = moved.details.get("set")
    return None if changed is None else {"run": moved.run, **changed}
