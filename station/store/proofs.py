"""Proofs that leave the station: of one entry, and of the journal's growth.

Both are JSON documents that anyone can check without the record: the hashes lead to a root, the
root stands in a head, and the head is signed (RFC 9162 sections 2.1.3 and 2.1.4).
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

from sqlalchemy import Connection, select

from station.core.journal import Value, entry_hash
from station.core.merkle import (
    consistency_path,
    inclusion_path,
    is_consistent,
    is_included,
    leaf_hash,
)
from station.core.tree_head import SignedHead, key_id
from station.errors import BadInput
from station.store.day_heads import newest_head, signed_of
from station.store.engine import reading
from station.store.place import Standing, standing
from station.store.purged import refusal_of_bag
from station.store.signing import is_signed
from station.store.tables import journal, pack

ENTRY, GROWTH = "proof of an entry", "proof of growth"

Document = dict[str, Value]


def entry_of_serial(home: Path, serial: str) -> int:
    """Return the number of the entry that recorded a bag of the present epoch.

    Raises:
        BadInput: there is no such bag in it.
    """
    with reading(home) as connection:
        here = standing(connection)
        row = connection.execute(
            select(pack.c.entry_id).where(pack.c.serial == serial, pack.c.epoch == here.epoch)
        ).scalar_one_or_none()
        if row is None:
            raise refusal_of_bag(connection, serial) or BadInput(
                f"bag {serial}", "is not in the present epoch of this record: look at its label"
            )
        return int(row) - here.first_row + 1


def prove_entry(
    home: Path, seq: int, epoch: int | None = None, now: SignedHead | None = None
) -> Document:
    """Prove that an entry of the present epoch lies under its newest signed head.

    Args:
        home: folder of the record.
        seq: number of the entry.
        epoch: the one the entry is of, where it may be an earlier one.
        now: a head signed for this question; proves what no head in the record covers yet.

    Raises:
        BadInput: there is no such entry, or no signed head over it yet.
    """
    with reading(home) as connection:
        here = standing(connection)
        if epoch not in (None, here.epoch):
            raise BadInput(
                f"entry {seq}", "is of an epoch before the record was restored: no head covers it"
            )
        signed = _newest(connection, here, seq, now)
        size = signed.head.size
        if not 1 <= seq <= size:
            raise BadInput(
                f"entry {seq}",
                f"the newest signed head is over entries 1 to {size}: an entry after it is "
                "proved once the next head is made, at the end of the day or of the station's work",
            )
        row = here.first_row + seq - 1
        found = connection.execute(
            select(journal.c.id, journal.c.canonical, journal.c.hash)
            .where(journal.c.id.in_((row - 1, row)))
            .order_by(journal.c.id)
        ).all()
        if not found[-1].canonical:
            raise BadInput(
                f"entry {seq}",
                "was purged: its bytes and what proves them are in the export the purge names",
            )
        before = found[0].hash if seq > 1 else bytes(32)
        path = inclusion_path(seq - 1, size, here.tree(connection).subtree)
        return {
            "what": ENTRY,
            "number": seq,
            "entry": found[-1].canonical.decode(),
            "hash_before": before.hex(),
            "path": [one.hex() for one in path],
            "head": signed.text(),
            "words": f"{size} {signed.head.words}",
        }


def prove_growth(home: Path, old: int) -> Document:
    """Prove that the first ``old`` entries begin those under the newest signed head.

    Raises:
        BadInput: there are not so many, or there is no signed head yet.
    """
    with reading(home) as connection:
        here = standing(connection)
        signed = _newest(connection, here)
        if not 1 <= old <= signed.head.size:
            raise BadInput(
                f"{old} entries",
                f"the newest signed head is over {signed.head.size}: give 1 to that many",
            )
        tree = here.tree(connection)
        path = consistency_path(old, signed.head.size, tree.subtree)
        return {
            "what": GROWTH,
            "old_size": old,
            "old_root": tree.root(old).hex(),
            "path": [one.hex() for one in path],
            "head": signed.text(),
            "words": f"{signed.head.size} {signed.head.words}",
        }


def check_proof(document: dict[str, Any], key: bytes | None = None) -> str:
    """Return why a proof does not hold; empty where it does.

    Args:
        document: as :func:`prove_entry` or :func:`prove_growth` made it.
        key: the station's public key; without it the one named in the head is believed.

    Raises:
        BadInput: it is no such document.
    """
    try:
        signed = SignedHead.parse(document["head"])
        path = [bytes.fromhex(one) for one in document["path"]]
        if document["what"] == ENTRY:
            before = bytes.fromhex(document["hash_before"])
            seq, text = document["number"], document["entry"].encode()
            leaf = leaf_hash(entry_hash(before, text))
            holds = is_included(leaf, seq - 1, signed.head.size, path, signed.head.root)
            wrong = f"entry {seq} is not under the head: it or the proof was changed"
        elif document["what"] == GROWTH:
            old, old_root = document["old_size"], bytes.fromhex(document["old_root"])
            holds = is_consistent(old, old_root, signed.head.size, signed.head.root, path)
            wrong = f"the first {old} entries do not begin those under the head"
        else:
            raise BadInput("the proof", f"{document['what']!r} is no kind of proof known here")
    except (KeyError, TypeError, ValueError, AttributeError) as fault:
        raise BadInput("the proof", f"it is no document of a proof: {fault}") from fault
    if not is_signed(signed):
        return "the signature of the head does not hold"
    if key is not None and signed.key != key:
        return f"the head was signed with the key {key_id(signed.key)}, not with {key_id(key)}"
    return "" if holds else wrong


def _newest(
    connection: Connection, here: Standing, seq: int = 0, now: SignedHead | None = None
) -> SignedHead:
    newest = newest_head(connection)
    signed = None
    if newest is not None and newest[1] >= here.first_row:
        signed = signed_of(newest[0])
    if now is not None and (signed is None or signed.head.size < seq):
        return now
    if signed is None:
        raise BadInput(
            "there is no signed head in this epoch yet",
            "one is made at the first entry of each day and when the station stops, where "
            "station.toml or its default names a key file",
        )
    return signed
