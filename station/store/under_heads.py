"""Entries that were read, held to the signed heads they lie under, without reading the others."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from sqlalchemy import Connection, select

from station.core.journal import EntryKind, JournalError
from station.core.tree_head import HeadError, SignedHead, TreeHead, key_id
from station.store.damage import Damage
from station.store.day_heads import public_of, signed_head_of
from station.store.facts import chosen, read_facts
from station.store.head_now import HeadNow
from station.store.place import first_rows
from station.store.signing import is_signed
from station.store.tables import identity
from station.store.tree import EpochTree, TreeBroken

Hashes = dict[int, bytes]
"""Hashes of entries of one epoch by their numbers."""


@dataclass(frozen=True, slots=True)
class UnderHead:
    """Entries that lie under one signed head.

    Args:
        head: the head.
        entries: how many of those read.
        now: it was signed for this question and is not in the journal.
    """

    head: SignedHead
    entries: int
    now: bool


def under_heads(
    connection: Connection, read: Mapping[int, Hashes], now: HeadNow | None
) -> tuple[tuple[UnderHead, ...], int, str]:
    """Hold entries to the newest signed head of their epoch, what came after it to one of now.

    Args:
        connection: inside a transaction.
        read: hashes by epoch, each worked out from its entry's bytes.
        now: the head of the record as it is, or None.

    Returns:
        The heads, how many entries lie under none, and why they do not.

    Raises:
        Damage: they are not what was signed.
    """
    found: list[UnderHead] = []
    loose, why = 0, ""
    for epoch, own in read.items():
        left = own
        for head, made_now in _heads_of(connection, epoch, now):
            covered = {seq: its for seq, its in own.items() if seq <= head.head.size}
            _compare(connection, head, covered)
            entries = sum(seq in left for seq in covered)
            left = {seq: its for seq, its in left.items() if seq not in covered}
            if entries:
                found.append(UnderHead(head, entries, made_now))
            if not left:
                break
        if left:
            loose += len(left)
            why = _why_loose(epoch, now)
    return tuple(found), loose, why


def _heads_of(
    connection: Connection, epoch: int, now: HeadNow | None
) -> tuple[tuple[SignedHead, bool], ...]:
    kept = _signed(connection, epoch)
    fresh = None if now is None or now.head.epoch != epoch else now.signed
    return tuple((head, head is not kept) for head in (kept, fresh) if head is not None)


def _signed(connection: Connection, epoch: int) -> SignedHead | None:
    try:
        signed = signed_head_of(connection, epoch)
        taken = read_facts(connection, chosen((EntryKind.STATION_KEY,)))
    except (JournalError, HeadError) as fault:
        raise Damage(None, f"the newest signed head or its key was changed: {fault}") from fault
    if signed is None:
        return None
    if signed.key not in {public_of(one.fact) for one in taken}:
        raise Damage(
            None,
            f"the newest head was signed with the key {key_id(signed.key)}, which no entry of the "
            "record takes",
        )
    if not is_signed(signed):
        raise Damage(None, "the newest head has a signature that does not hold")
    return signed


def _compare(connection: Connection, signed: SignedHead, own: Hashes) -> None:
    head = signed.head
    owner = connection.execute(select(identity.c.site, identity.c.station)).one()
    first = first_rows(connection).get(head.epoch, 1)
    try:
        root = EpochTree(connection, head.epoch, first).root_with(head.size, own)
    except TreeBroken as broken:
        raise Damage(None, f"{broken}: run `station journal rebuild`") from broken
    if TreeHead(owner.site, owner.station, head.epoch, head.size, root) != head:
        raise Damage(
            None,
            f"these entries are not those under the head over {head.size} entries that was signed, "
            "or what leads to it was changed: verify the whole journal to find which",
        )


def _why_loose(epoch: int, now: HeadNow | None) -> str:
    if now is None:
        return "no key signed a head for this"
    if now.head.epoch != epoch:
        return "they are of an epoch before the record was restored"
    if now.signed is None:
        return f"no head could be signed for this: {now.unsigned}"
    return "they were entered after the head that was signed for this"
