"""The entries of one run, read and proved without the rest of the journal.

The bytes of each entry between the start of a run and its end are hashed and held to the hash that
is kept, each must follow from the one before, and facts about the run that were entered at another
time are read likewise. Their hashes, and the roots kept of all other blocks, must then give the
root that was signed (RFC 9162 section 2.1.1). What a bag's row says of its weighing is compared
with the bag's entry. It costs as much as the run has entries, however long the journal is; all of
it is read by ``station.store.verify``.
"""

from __future__ import annotations

import json
from collections.abc import Collection
from dataclasses import dataclass
from itertools import takewhile
from pathlib import Path

from sqlalchemy import Connection, Text, cast, func, literal, select

from station.core.journal import GENESIS, Entry, EntryKind, entry_hash
from station.store import journal as j
from station.store.damage import Damage
from station.store.damaged_page import readable
from station.store.engine import reading
from station.store.head_now import HeadNow
from station.store.kept_entry import entry_of
from station.store.own_bags import OwnBags
from station.store.purges import PurgedEntries
from station.store.tables import OF_BLEND, blend, fact, identity, journal, pack, run
from station.store.under_heads import Hashes, UnderHead, under_heads


@dataclass(frozen=True, slots=True)
class OwnEntries:
    """What was proved of a run.

    Args:
        epoch: of its start.
        open: bags are still packed.
        first: entry of its start.
        last: entry of its end, or the last of that epoch that was read for it.
        entries: how many were read, with those about it from another time.
        outside: how many of them those are.
        purged: entries among them of which number, kind and hash alone are left, as a purge says.
        bags: bags whose row says of their weighing what their entry says.
        under: the signed heads they lie under.
        loose: entries under no signed head.
        why_loose: why they are under none; empty where all are under one.
        first_break: seq of the entry that does not hold, or None.
        why: what does not hold; empty where all does.
    """

    epoch: int
    open: bool
    first: int
    last: int
    entries: int = 0
    outside: int = 0
    purged: int = 0
    bags: int = 0
    under: tuple[UnderHead, ...] = ()
    loose: int = 0
    why_loose: str = ""
    first_break: int | None = None
    why: str = ""

    @property
    def holds(self) -> bool:
        """Whether nothing wrong was found."""
        return not self.why


def own_entries(home: Path, uid: str, about: Collection[str], now: HeadNow | None) -> OwnEntries:
    """Read and prove the entries of a run that is in the record.

    Args:
        home: folder of the record.
        uid: id of the run.
        about: uids of facts about it, whenever they were entered.
        now: the head of the record as it is, for entries after the last one in the journal.
    """
    with reading(home) as connection:
        place = connection.execute(
            select(run.c.id, run.c.ended_at, run.c.entry_id, journal.c.epoch, journal.c.seq)
            .join(journal, run.c.entry_id == journal.c.id)
            .where(run.c.uid == uid)
        ).one()
        proof = _Proof(connection)
        begun = OwnEntries(place.epoch, place.ended_at is None, place.seq, place.seq)
        try:
            with readable(connection, f"the entries of run {uid}"):
                last = _last_row(connection, uid, place.id, place.entry_id, ended=not begun.open)
                bags = OwnBags(connection, uid, place.id)
                proof.span(place.entry_id, last, bags)
                bags.done()
                proof.single(_rows_of(connection, about, place.entry_id, last))
                under, loose, why_loose = under_heads(connection, proof.hashes, now)
        except Damage as damage:
            return proof.told(begun, damage)
        return proof.told(begun, None, under, loose, why_loose)


class _Proof:
    """Takes in entries of one run."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        site, station = connection.execute(select(identity.c.site, identity.c.station)).one()
        self._owner = (site, station)
        self._purged = PurgedEntries(connection)
        self.hashes: dict[int, Hashes] = {}
        """Of what was read, by epoch."""
        self._ends: dict[int, int] = {}
        self.entries = self.outside = self.purged = self.bags = 0

    def span(self, first: int, last: int, bags: OwnBags) -> None:
        """Read the entries between two rows, both included.

        Raises:
            Damage: one does not hold.
        """
        before = self._before(first)
        wanted = first
        for kept in takewhile(
            lambda one: one.row <= last, j.entries(self._connection, after=first - 1)
        ):
            if kept.row != wanted:
                seq = kept.stored.seq - (kept.row - wanted)
                raise Damage(seq, f"entry {seq} is missing")
            entry = self._take(kept, GENESIS if kept.stored.seq == 1 else before)
            if entry is not None:
                bags.take(entry, kept.row)
                self.bags = bags.seen
            self._ends[kept.epoch] = kept.stored.seq
            before, wanted = kept.stored.hash, wanted + 1

    def single(self, rows: Collection[int]) -> None:
        """Read entries that stand alone.

        Raises:
            Damage: one does not hold.
        """
        for row in rows:
            found = next(j.entries(self._connection, after=row - 1), None)
            if found is None or found.row != row:
                raise Damage(None, f"the entry in row {row} of the journal is missing")
            self._take(found, GENESIS if found.stored.seq == 1 else self._before(row))
            self.outside += 1

    def told(
        self,
        begun: OwnEntries,
        damage: Damage | None,
        under: tuple[UnderHead, ...] = (),
        loose: int = 0,
        why_loose: str = "",
    ) -> OwnEntries:
        """What was found."""
        return OwnEntries(
            begun.epoch,
            begun.open,
            begun.first,
            self._ends.get(begun.epoch, begun.first),
            self.entries,
            self.outside,
            self.purged,
            self.bags,
            under,
            loose,
            why_loose,
            None if damage is None else damage.seq,
            "" if damage is None else damage.why,
        )

    def _before(self, row: int) -> bytes:
        statement = select(journal.c.hash).where(journal.c.id == row - 1)
        return self._connection.execute(statement).scalar_one_or_none() or GENESIS

    def _take(self, kept: j.Kept, before: bytes) -> Entry | None:
        stored, entry = kept.stored, None
        seq = stored.seq
        if not stored.canonical:
            if not self._purged.names(kept.epoch, seq):
                raise Damage(seq, f"entry {seq} is empty and no purge names it")
            self.purged += 1
        elif entry_hash(before, stored.canonical) != stored.hash:
            raise Damage(
                seq, f"entry {seq} was changed, or its hash or the one before it was: they differ"
            )
        else:
            entry = entry_of(kept, self._owner)
        self.hashes.setdefault(kept.epoch, {})[seq] = stored.hash
        self.entries += 1
        return entry


def _last_row(connection: Connection, uid: str, run_id: int, first: int, *, ended: bool) -> int:
    """Row of the end of a run; of one that is open the last before the next run, or of all."""
    last_bag = connection.execute(
        select(func.max(pack.c.entry_id))
        .select_from(pack)
        .join(blend, OF_BLEND)
        .where(blend.c.run_id == run_id)
    ).scalar_one()
    after = select(run.c.entry_id).where(run.c.id > run_id).order_by(run.c.id).limit(1)
    newest = connection.execute(select(func.max(journal.c.id))).scalar_one()
    until = connection.execute(after).scalar_one_or_none() or newest + 1
    text = func.nullif(cast(journal.c.canonical, Text), "")
    ends = (
        select(journal.c.id)
        .where(journal.c.id > (last_bag or first), journal.c.id < until)
        .where(journal.c.kind == EntryKind.RUN_END)
        .where(func.json_extract(text, literal("$.body.run")) == uid)
        .limit(1)
    )
    end = connection.execute(ends).scalar_one_or_none()
    if end is None and ended:
        raise Damage(None, f"run {uid} is ended in its table, but no journal entry ended it")
    return int(until - 1 if end is None else end)


def _rows_of(
    connection: Connection, about: Collection[str], first: int, last: int
) -> tuple[int, ...]:
    """Rows of the entries of facts that lie before one row or after another."""
    named = select(func.json_each(json.dumps(sorted(about))).table_valued("value").c.value)
    statement = (
        select(fact.c.entry_id)
        .where(fact.c.uid.in_(named), ~fact.c.entry_id.between(first, last))
        .order_by(fact.c.entry_id)
    )
    return tuple(connection.execute(statement).scalars())
