"""The quick look at a record: everything since its last signed head, and that head itself.

It proves that the hashes of all entries before the head are those that were signed, and that each
entry since follows from the one before. It does not read the older entries' own text again, nor
compare the tables: the whole verification does.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection

from station.core.journal import JournalError, first_break
from station.core.tree_head import HeadError, SaidHead, SignedHead, TreeHead, key_id
from station.store import journal as j
from station.store.damage import Damage
from station.store.damaged_page import readable
from station.store.day_heads import known_key, newest_head, signed_of
from station.store.engine import reading
from station.store.head_check import Elsewhere
from station.store.heads import SeenHead, read_head
from station.store.place import Standing, standing
from station.store.signing import is_signed
from station.store.tree import TreeBroken


@dataclass(frozen=True, slots=True)
class QuickReport:
    """What was found.

    Args:
        whole: nothing wrong was found.
        first_break: seq of the first entry that does not hold, or None.
        why: what is wrong and where; empty when whole.
        signed: the signed head everything was held to; None where none holds.
        since: entries read after it.
        seq: number of the last entry.
    """

    whole: bool
    first_break: int | None
    why: str
    signed: SignedHead | None
    since: int
    seq: int


def verify_since_head(home: Path, elsewhere: Elsewhere | None = None) -> QuickReport:
    """Look at a record from its last signed head on, without changing it.

    Raises:
        BadInput: there is no record in ``home``.
        EnvironmentFault: the file cannot be read at all.
    """
    known = elsewhere or Elsewhere()
    signed: SignedHead | None = None
    seq = since = 0
    try:
        with reading(home) as connection, readable(connection, "the end of the journal"):
            here = standing(connection)
            seq = here.seq
            signed = _signed_head(connection, here, known)
            since = _chain_since(connection, here, signed.head.size)
            _compare_with_seen(connection, here, read_head(home))
            others: tuple[SaidHead | SignedHead, ...] = (*known.said, *known.signed)
            for other in others:
                _compare_outside(connection, here, other)
    except Damage as damage:
        return QuickReport(False, damage.seq, damage.why, signed, 0, seq)
    return QuickReport(True, None, "", signed, since, seq)


def _signed_head(connection: Connection, here: Standing, known: Elsewhere) -> SignedHead:
    try:
        newest = newest_head(connection)
    except JournalError as fault:
        raise Damage(
            None,
            f"the newest signed head was changed: {fault}; verify the whole record to find more",
        ) from fault
    fact, row = newest if newest is not None else (None, 0)
    if fact is None or row < here.first_row:
        raise Damage(
            None, "there is no signed head in this epoch yet: verify the whole record instead"
        )
    seq = row - here.first_row + 1
    try:
        signed = signed_of(fact)
    except HeadError as fault:
        raise Damage(seq, f"entry {seq}: its head {fault}") from fault
    if signed is None or signed.head.size != seq - 1:
        raise Damage(seq, f"entry {seq}: its head is not the one of entries 1 to {seq - 1}")
    if signed.key != known_key(connection) or known.key not in (None, signed.key):
        raise Damage(
            seq, f"entry {seq}: its head was signed with another key, {key_id(signed.key)}"
        )
    if not is_signed(signed):
        raise Damage(seq, f"entry {seq}: its head has a signature that does not hold")
    if signed.head != _head_of(connection, here, seq - 1):
        raise Damage(
            None,
            f"the hashes of entries 1 to {seq - 1} are not those that were signed: verify the "
            "whole record to find which",
        )
    return signed


def _chain_since(connection: Connection, here: Standing, size: int) -> int:
    """Check the entries after the first ``size``; returns how many they are."""
    row = here.first_row + size - 1
    before, *rest = j.entries(connection, after=row - 1)
    broken = first_break((kept.stored for kept in rest), before.stored.hash, size + 1)
    if broken is not None:
        raise Damage(broken.seq, broken.why)
    return len(rest)


def _compare_with_seen(connection: Connection, here: Standing, seen: SeenHead | None) -> None:
    if seen is None:
        return
    if seen.epoch != here.epoch:
        raise Damage(None, f"the head written beside the file is of epoch {seen.epoch}")
    if seen.seq > here.seq:
        raise Damage(
            here.seq + 1,
            f"the end is missing: entry {seen.seq} was written, the journal ends at {here.seq}",
        )
    there = next(iter(j.entries(connection, after=here.first_row + seen.seq - 2)))
    if there.stored.hash.hex() != seen.hash:
        raise Damage(seen.seq, f"entry {seen.seq} is not the one written down beside the file")


def _compare_outside(connection: Connection, here: Standing, other: SaidHead | SignedHead) -> None:
    said = isinstance(other, SaidHead)
    size = other.size if isinstance(other, SaidHead) else other.head.size
    words = other.words if isinstance(other, SaidHead) else other.head.words
    if size > here.seq:
        raise Damage(
            here.seq + 1,
            f'the end is missing, or an older copy was put here: the head "{words}" was made over '
            f"{size} entries, the journal ends at entry {here.seq}",
        )
    found = _head_of(connection, here, size)
    if found.words != words or not (said or is_signed(other)):  # type: ignore[arg-type]
        raise Damage(
            None,
            f'the head "{words}" over {size} entries is none of this epoch: verify the whole '
            "record to find out more",
        )


def _head_of(connection: Connection, here: Standing, size: int) -> TreeHead:
    try:
        made = here.tree(connection).root(size)
    except TreeBroken as broken:
        raise Damage(None, f"{broken}: run `station journal rebuild`") from broken
    return TreeHead(here.site, here.station, here.epoch, size, made)
