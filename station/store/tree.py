"""The Merkle tree over an epoch's journal: roots of any length, and what proofs ask for.

The leaf of an entry is its hash in the chain, so a leaf stays when the body of its entry is gone.
The root of each whole block of 256 entries is kept in a table, written with the entry that makes
the block whole. A root over ten million entries then costs one look at 40 000 blocks and at most
255 entries.
"""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import Connection

from station.core.merkle import leaf_hash, root

BLOCK = 256
"""Entries of one block; a power of two, so that a block is a subtree of the tree."""

_ADD = "INSERT INTO tree_block (epoch, number, root) VALUES (?, ?, ?)"


def block_root(hashes: Iterable[bytes]) -> bytes:
    """Return the root over the hashes of entries."""
    return root(map(leaf_hash, hashes))


def close_block(connection: Connection, epoch: int, seq: int, row: int) -> None:
    """Keep the root of the block that entry ``seq`` makes whole.

    Args:
        connection: inside the transaction that wrote the entry.
        epoch: of the entry just written.
        seq: its number, a multiple of :data:`BLOCK`.
        row: its row number; within an epoch rows stand as close as entries.
    """
    hashes = connection.exec_driver_sql(
        "SELECT hash FROM journal WHERE id > ? AND id <= ? ORDER BY id", (row - BLOCK, row)
    ).scalars()
    keep_block(connection, epoch, seq // BLOCK - 1, block_root(hashes))


class GrowingTree:
    """The tree of one epoch while its entries are read one after the other."""

    def __init__(self) -> None:
        self._blocks: list[bytes] = []
        self._rest: list[bytes] = []

    @property
    def size(self) -> int:
        """How many entries were taken in."""
        return len(self._blocks) * BLOCK + len(self._rest)

    def add(self, entry: bytes) -> bytes | None:
        """Take in the hash of the next entry; returns the root of the block it makes whole."""
        self._rest.append(entry)
        if len(self._rest) < BLOCK:
            return None
        made = block_root(self._rest)
        self._blocks.append(made)
        self._rest.clear()
        return made

    def root(self) -> bytes:
        """Return the root over all of them."""
        if not self._rest:
            return root(self._blocks)
        return root((*self._blocks, block_root(self._rest)))


def keep_block(connection: Connection, epoch: int, number: int, made: bytes) -> None:
    """Keep the root of a block."""
    connection.exec_driver_sql(_ADD, (epoch, number, made))


class TreeBroken(Exception):
    """The roots kept of blocks are not all there; the message says which is missing."""


class EpochTree:
    """The tree of one epoch as it lies in the file; nothing about it is believed yet.

    Args:
        connection: inside a transaction.
        epoch: whose.
        first_row: row number of its first entry.
    """

    def __init__(self, connection: Connection, epoch: int, first_row: int) -> None:
        self._connection = connection
        self._epoch = epoch
        self._first = first_row

    def subtree(self, start: int, end: int) -> bytes:
        """Return the root over the entries ``start + 1`` to ``end``.

        ``start`` is 0 or a multiple of the largest power of two below ``end - start``, as in every
        root and proof.

        Raises:
            TreeBroken: the root of a block is missing.
        """
        if end - start <= BLOCK:
            return root(self._leaves(start, end))
        whole = end // BLOCK
        blocks = self._blocks(start // BLOCK, whole)
        rest = self._leaves(whole * BLOCK, end)
        return root((*blocks, root(rest)) if rest else blocks)

    def root(self, size: int) -> bytes:
        """Return the root over the first ``size`` entries."""
        return self.subtree(0, size)

    def _blocks(self, first: int, end: int) -> list[bytes]:
        rows = self._connection.exec_driver_sql(
            "SELECT number, root FROM tree_block WHERE epoch = ? AND number >= ? AND number < ?"
            " ORDER BY number",
            (self._epoch, first, end),
        ).all()
        for expected, row in zip(range(first, end), rows, strict=False):
            if row.number != expected:
                break
        else:
            if len(rows) == end - first:
                return [row.root for row in rows]
            expected = first + len(rows)
        raise TreeBroken(f"the Merkle root of block {expected} of epoch {self._epoch} is missing")

    def _leaves(self, start: int, end: int) -> list[bytes]:
        found = self._connection.exec_driver_sql(
            "SELECT hash FROM journal WHERE id >= ? AND id < ? ORDER BY id",
            (self._first + start, self._first + end),
        )
        return [leaf_hash(entry) for entry in found.scalars()]
