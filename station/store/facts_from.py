"""Facts from a place of the record on, and earlier ones that something names: not all there are."""

from __future__ import annotations

import json
from collections.abc import Collection
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import Connection, and_, func, or_, select

from station.core.facts import FACT_KINDS, FactRecord
from station.core.journal import EntryKind
from station.core.long_work import go_on
from station.store.bag_sums import RunSpan
from station.store.engine import reading
from station.store.facts import fact_record
from station.store.halving import first_past
from station.store.journal import read_entry
from station.store.tables import fact, journal, run


class FactsFrom:
    """Facts of a record by their place among all facts; each is read once.

    Args:
        home: folder of the record.
    """

    def __init__(self, home: Path) -> None:
        self._home = home
        self._read: dict[int, FactRecord] = {}

    def start_of(self, uid: str) -> int:
        """Place of the first fact recorded after a run was opened."""
        with reading(self._home) as connection:
            opened = select(run.c.entry_id).where(run.c.uid == uid)
            return _first_after(connection, connection.execute(opened).scalar_one())

    def touched(
        self,
        first: int,
        span: RunSpan,
        lots: Collection[str],
        kinds: Collection[EntryKind],
        named: Collection[str],
    ) -> dict[int, FactRecord]:
        """Return facts by their place, in order.

        Args:
            first: every one from this place on.
            span: and every one entered for this run, or while it was open.
            lots: and those about these lots.
            kinds: of the kinds that are about lots.
            named: and those of these uids.
        """
        names = select(func.json_each(json.dumps(sorted(named))).table_valued("value").c.value)
        wanted = or_(
            fact.c.id >= first,
            fact.c.run == span.run,
            and_(
                fact.c.kind.in_(tuple(FACT_KINDS)),  # the index of times begins with the kind
                fact.c.at >= span.opened,
                fact.c.at <= (span.closed or _END),
            ),
            and_(fact.c.subject.in_(tuple(lots)), fact.c.kind.in_(tuple(kinds))),
            fact.c.uid.in_(names),
        )
        with reading(self._home) as connection:
            places = sorted(connection.execute(select(fact.c.id).where(wanted)).scalars())
            new = [place for place in places if place not in self._read]
            for at in range(0, len(new), _PIECE):
                self._take(connection, new[at : at + _PIECE])
        return {place: self._read[place] for place in places}

    def _take(self, connection: Connection, places: Collection[int]) -> None:
        found = (
            select(fact.c.id, journal.c.canonical)
            .join(journal, journal.c.id == fact.c.entry_id)
            .where(fact.c.id.in_(places))
        )
        for row in connection.execute(found).all():
            go_on()
            self._read[row.id] = fact_record(read_entry(row.canonical))


_END = datetime.max.replace(tzinfo=UTC)
_PIECE = 500
"""Facts read by one question."""


def _first_after(connection: Connection, entry: int) -> int:
    """Place of the first fact recorded after an entry: facts stand in the order of the journal."""

    def look(place: int) -> tuple[int, bool] | None:
        found = connection.execute(
            select(fact.c.id, fact.c.entry_id)
            .where(fact.c.id >= place)
            .order_by(fact.c.id)
            .limit(1)
        ).first()
        return None if found is None else (found.id, found.entry_id > entry)

    end = (connection.execute(select(func.max(fact.c.id))).scalar_one() or 0) + 1
    return first_past(0, end, look)
