"""What still counts of the record, kept as it changes: a start reads this and not the years before.

The table ``standing`` has a row for each fact that nothing has ended or replaced yet (the rules are
``station.core.standing``'s), and one for each label that was still *recorded* when a day ended.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from pathlib import Path

from sqlalchemy import Connection, select

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.line_lots import Move, line_of
from station.core.pack import LabelState
from station.core.standing import line_key, standing_of
from station.store.engine import reading
from station.store.facts import read_facts
from station.store.number_range import rows_after
from station.store.prepared import driver_of
from station.store.tables import fact, journal, pack, standing

_REPLACE = (
    'INSERT INTO standing (kind, "key", entry_id) VALUES (?, ?, ?)'
    ' ON CONFLICT (kind, "key") DO UPDATE SET entry_id = excluded.entry_id'
)
_KEEP = 'INSERT INTO standing (kind, "key", entry_id) VALUES (?, ?, ?) ON CONFLICT DO NOTHING'
_END = 'DELETE FROM standing WHERE kind = ? AND "key" = ?'

_SINCE = ""
"""Key of the row that says up to which entry labels were looked through; no serial is empty."""
_CANONICAL = select(journal.c.canonical).join(standing, standing.c.entry_id == journal.c.id)


class StandingFacts:
    """Keeps the table on the writer's connection, inside its transactions."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self._driver = driver_of(connection)

    def noted(self, kept: Fact, row: int) -> None:
        """See a fact with the row of its entry."""
        change = standing_of(kept)
        if change is None:
            return
        if change.ends:
            self._driver.execute(_END, (change.kind, change.ends))
        if change.begins:
            statement = _KEEP if change.first else _REPLACE
            self._driver.execute(statement, (change.kind, change.begins, row))

    def started(self, row: int) -> None:
        """A start puts every label that was on its way in doubt, so none is *recorded* after it."""
        self._driver.execute("DELETE FROM standing WHERE kind = ?", (EntryKind.LABEL,))
        self._driver.execute(_REPLACE, (EntryKind.LABEL, _SINCE, row))

    def day_ended(self, row: int) -> None:
        """Keep the labels still *recorded*, so that a start looks through one day of bags."""
        left = labels_recorded(self._connection)
        self._driver.execute("DELETE FROM standing WHERE kind = ?", (EntryKind.LABEL,))
        keys = (_SINCE, *(serial for _, serial in left))
        self._driver.executemany(_REPLACE, [(EntryKind.LABEL, key, row) for key in keys])


def labels_recorded(connection: Connection) -> tuple[tuple[int, str], ...]:
    """Rows and serials of the bags whose label is still *recorded*, oldest first."""
    rows = driver_of(connection).execute(
        'SELECT "key", entry_id FROM standing WHERE kind = ?', (EntryKind.LABEL,)
    )
    kept = dict(rows.fetchall())
    newer = rows_after(connection, kept.pop(_SINCE, 0))
    still = select(pack.c.id, pack.c.serial).where(pack.c.label == LabelState.RECORDED)
    found: set[tuple[int, str]] = set()
    for chosen in (newer, pack.c.serial.in_(tuple(kept))):
        found.update((row.id, row.serial) for row in connection.execute(still.where(chosen)))
    return tuple(sorted(found))


def standing_facts(home: Path, *kinds: EntryKind) -> tuple[FactRecord, ...]:
    """Return the facts of some kinds that still count, oldest first."""
    chosen = _CANONICAL.where(standing.c.kind.in_(kinds)).order_by(standing.c.entry_id.desc())
    with reading(home) as connection:
        return read_facts(connection, chosen)


def standing_under(home: Path, kind: EntryKind, key: str) -> FactRecord | None:
    """Return the fact that stands under a key, or None."""
    chosen = _CANONICAL.where(standing.c.kind == kind, standing.c.key == key)
    with reading(home) as connection:
        found = read_facts(connection, chosen)
    return found[0] if found else None


def standing_from(home: Path, kind: EntryKind, keys: Collection[str]) -> tuple[FactRecord, ...]:
    """Return the facts that stand under keys that begin with one of these, each oldest first.

    Args:
        home: the station's folder.
        kind: of the facts.
        keys: beginnings; nothing but digits and ``-`` follows them.
    """
    found: list[FactRecord] = []
    with reading(home) as connection:
        for begin in keys:
            chosen = _CANONICAL.where(
                standing.c.kind == kind, standing.c.key >= begin, standing.c.key < f"{begin}~"
            )
            found += read_facts(connection, chosen.order_by(standing.c.entry_id.desc()))
    return tuple(found)


def moves_at(home: Path, line: str) -> tuple[FactRecord, ...]:
    """Return the moves that tell which lots are on a line and what became of them, oldest first.

    Those are all moves of the lots that are there, and of every other lot loaded since the first of
    them was: one lot beside another of its component makes that one finish.
    """
    there = [
        one
        for one in standing_facts(home, EntryKind.LOT_MOVE)
        if line_key(line_of(one.fact)) == line_key(line)
    ]
    if not there:
        return ()
    begin = select(fact.c.id).where(fact.c.uid == there[0].fact.uid).scalar_subquery()
    moves = (
        select(journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .where(fact.c.kind == EntryKind.LOT_MOVE)
        .order_by(fact.c.id.desc())
    )
    lots = {one.fact.subject for one in there}
    with reading(home) as connection:
        before = moves.where(fact.c.subject.in_(lots), fact.c.id < begin)
        records = (
            *read_facts(connection, before),
            *read_facts(connection, moves.where(fact.c.id >= begin)),
        )
    return _of_lots_loaded(one for one in records if line_of(one.fact) == line)


def _of_lots_loaded(records: Iterable[FactRecord]) -> tuple[FactRecord, ...]:
    """Leave out what is said of a lot whose loading lies before all of these."""
    loaded: set[str] = set()
    found = []
    for one in records:
        if one.fact.result in (Move.LOADED, Move.REWORK):
            loaded.add(one.fact.subject)
        if one.fact.subject in loaded:
            found.append(one)
    return tuple(found)
