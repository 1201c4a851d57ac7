"""What still counts of the record, kept as it changes: a start reads this and not the years before.

The table ``standing`` has a row for each fact that nothing has ended or replaced yet (the rules are
``station.core.standing``'s), and one for each label that was still *recorded* when a day ended.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from pathlib import Path

from sqlalchemy import Connection, delete, select

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.line_lots import Move, line_of
from station.core.pack import LabelState
from station.core.standing import beside_key, line_key, newest_load_key, standing_of
from station.store.engine import reading
from station.store.facts import fact_record, read_facts
from station.store.journal import read_entry
from station.store.number_range import rows_after
from station.store.prepared import driver_of
from station.store.tables import fact, journal, pack, standing

_REPLACE = (
    'INSERT INTO standing (kind, "key", entry_id) VALUES (?, ?, ?)'
    ' ON CONFLICT (kind, "key") DO UPDATE SET entry_id = excluded.entry_id'
)
_KEEP = 'INSERT INTO standing (kind, "key", entry_id) VALUES (?, ?, ?) ON CONFLICT DO NOTHING'
_END = 'DELETE FROM standing WHERE kind = ? AND "key" = ?'
_THERE = 'SELECT 1 FROM standing WHERE kind = ? AND "key" = ?'
_UNDER = 'SELECT "key" FROM standing WHERE kind = ? AND "key" >= ? AND "key" < ?'

_SINCE = ""
"""Key of the row that says up to which entry labels were looked through; no serial is empty."""
_CANONICAL = select(journal.c.canonical).join(standing, standing.c.entry_id == journal.c.id)
_MOVES = (
    select(journal.c.canonical)
    .join(fact, fact.c.entry_id == journal.c.id)
    .where(fact.c.kind == EntryKind.LOT_MOVE)
    .order_by(fact.c.id.desc())
)


class StandingFacts:
    """Keeps the table on the writer's connection, inside its transactions."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self._driver = driver_of(connection)

    def noted(self, kept: Fact, row: int) -> None:
        """See a fact with the row of its entry."""
        if kept.kind is EntryKind.LOT_MOVE:
            self._lot_moved(kept, row)
        change = standing_of(kept)
        if change is None:
            return
        if change.ends:
            self._driver.execute(_END, (change.kind, change.ends))
        if change.begins:
            statement = _KEEP if change.first else _REPLACE
            self._driver.execute(statement, (change.kind, change.begins, row))

    def _lot_moved(self, kept: Fact, row: int) -> None:
        """Keep which loading made a lot finish; it can only be the one next to its own last one."""
        line, lot = line_of(kept), kept.subject
        loaded = kept.result == Move.LOADED
        if loaded or kept.result in (Move.EMPTY, Move.RETURNED):
            self._driver.execute(_END, (kept.kind, beside_key(line, lot)))
        if not loaded:
            return
        component = str(kept.details["component"])
        newest = newest_load_key(line, component)
        for (key,) in self._driver.execute(_UNDER, (kept.kind, *_range(newest))).fetchall():
            other = key.removeprefix(newest)
            if other == lot:
                return
            self._driver.execute(_END, (kept.kind, key))
            there = (kept.kind, line_key(line, other))
            if self._driver.execute(_THERE, there).fetchone() is not None:
                self._driver.execute(_REPLACE, (kept.kind, beside_key(line, other), row))
        self._driver.execute(_REPLACE, (kept.kind, newest_load_key(line, component, lot), row))

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

    Those are all moves of the lots that are there, and of the lot loaded beside each since it was
    loaded last, which made it finish; that one may be gone again.
    """
    kind = standing.c.kind == EntryKind.LOT_MOVE
    begin, end = _range(line_key(line))
    there = _CANONICAL.where(kind, standing.c.key >= begin, standing.c.key < end)
    with reading(home) as connection:
        lots = {one.fact.subject for one in read_facts(connection, there)}
        if not lots:
            return ()
        keys = [beside_key(line, lot) for lot in lots]
        beside = read_facts(connection, _CANONICAL.where(kind, standing.c.key.in_(keys)))
        lots |= {one.fact.subject for one in beside}
        records = read_facts(connection, _MOVES.where(fact.c.subject.in_(lots)))
    return _of_lots_loaded(one for one in records if line_of(one.fact) == line)


def stand_moves(connection: Connection) -> None:
    """Make the rows of lots on lines anew from all moves on record."""
    connection.execute(delete(standing).where(standing.c.kind == EntryKind.LOT_MOVE))
    rows = (
        select(journal.c.id, journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .where(fact.c.kind == EntryKind.LOT_MOVE)
        .order_by(fact.c.id)
    )
    kept = StandingFacts(connection)
    for row, canonical in connection.execute(rows).all():
        kept.noted(fact_record(read_entry(canonical)).fact, row)


def _range(begin: str) -> tuple[str, str]:
    """The keys that begin with a text whose last sign is a tab."""
    return begin, f"{begin[:-1]}\n"


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
