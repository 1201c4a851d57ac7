"""The head of a record as it is now, signed by whoever has the key; nothing is written."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import select

from station.core.tree_head import SignedHead, TreeHead, key_id
from station.errors import EnvironmentFault, StationError
from station.store.day_heads import known_key
from station.store.engine import reading
from station.store.journal import read_entry
from station.store.place import standing
from station.store.signing import read_key
from station.store.tables import journal
from station.store.tree import TreeBroken


@dataclass(frozen=True, slots=True)
class HeadNow:
    """The head over all entries.

    Args:
        head: the head.
        signed: with signature; None where it cannot be signed.
        unsigned: why not, in words; else empty.
    """

    head: TreeHead
    signed: SignedHead | None
    unsigned: str


def head_now(home: Path, key: Path | None) -> HeadNow:
    """Return the head of the record in ``home``.

    Its time is the one of the last entry: the head says nothing of what came after.

    Args:
        home: the station's folder.
        key: file of the station's key, or None.

    Raises:
        BadInput: there is no record in ``home``.
        EnvironmentFault: the record cannot be read, or roots of its blocks are missing.
    """
    with reading(home) as connection:
        here = standing(connection)
        try:
            root = here.tree(connection).root(here.seq)
        except TreeBroken as broken:
            raise EnvironmentFault(str(broken), "run `station journal rebuild`") from broken
        known = known_key(connection)
        last = connection.execute(select(journal.c.canonical).where(journal.c.id == here.row))
        at = read_entry(last.scalar_one()).at.utc
    head = TreeHead(here.site, here.station, here.epoch, here.seq, root)
    if known is None:
        return HeadNow(head, None, "no entry of the record names a key: it was packed without one")
    if key is None:
        return HeadNow(head, None, "no key file is named")
    try:
        mine = read_key(key)
    except StationError as fault:
        return HeadNow(head, None, str(fault))
    if mine.public != known:
        words = f"{key} holds the key {mine.id}, the record's is {key_id(known)}"
        return HeadNow(head, None, words)
    when: datetime = at.astimezone(UTC).replace(microsecond=0)
    return HeadNow(head, SignedHead(head, when, mine.public, mine.sign(head.statement(when))), "")
