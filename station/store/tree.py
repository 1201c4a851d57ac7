"""The Merkle tree over an epoch's journal: roots of any length, and what proofs ask for.

The leaf of an entry is its hash in the chain, so a leaf stays when the body of its entry is gone.
The root of each whole block of 256 entries is kept in a table, written with the entry that makes
the block whole, and with it the root of each perfect subtree (RFC 9162 section 2.1) that the block
completes: two blocks, four, eight. A root over any number of entries then costs one row for each
set bit of the number of blocks, 16 rows over ten million entries, and at most 255 entries.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Mapping

from sqlalchemy import Connection

from station.core.merkle import leaf_hash, node_hash, root
from station.store.prepared import driver_of

BLOCK = 256
"""Entries of one block; a power of two, so that a block is a subtree of the tree."""

LEVEL = 1 << 40
"""Subtrees of 2**n blocks are numbered from n times this on; blocks themselves from 0."""

_ADD = "INSERT INTO tree_block (epoch, number, root) VALUES (?, ?, ?)"
_ROOT = "SELECT root FROM tree_block WHERE epoch = ? AND number = ?"


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
    """Keep the root of a block, and those of the subtrees it completes.

    Args:
        connection: inside a transaction; the blocks before are kept already.
        epoch: whose.
        number: of the block, from 0.
        made: its root.
    """
    driver, level = driver_of(connection), 0
    while True:
        driver.execute(_ADD, (epoch, level * LEVEL + number, made))
        if not number & 1:
            return
        row = driver.execute(_ROOT, (epoch, level * LEVEL + number - 1)).fetchone()
        if row is None:
            return  # a damaged table, which verifying the record names
        made, number, level = node_hash(row[0], made), number >> 1, level + 1


def keep_subtrees(connection: Connection) -> None:
    """Bring the table of a record that kept blocks alone to what it is with subtrees."""
    driver = driver_of(connection)
    blocks = driver.execute(
        "SELECT epoch, number, root FROM tree_block WHERE number < ? ORDER BY id", (LEVEL,)
    ).fetchall()
    driver.execute("DELETE FROM tree_block")
    for epoch, number, made in blocks:
        keep_block(connection, epoch, number, made)


def blocks_told(number: int) -> str:
    """The blocks under a root that is kept, in words: ``3``, or ``4 to 7``."""
    level, index = divmod(number, LEVEL)
    return f"{index}" if level == 0 else f"{index << level} to {((index + 1) << level) - 1}"


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
        size = end - start
        if size == BLOCK:
            kept = self._kept(1, start // BLOCK)
            if kept is None:
                raise TreeBroken(
                    f"the Merkle root of block {start // BLOCK} of epoch {self._epoch} is missing"
                )
            return kept
        if size < BLOCK:
            return root(self._leaves(start, end))
        half = 1 << ((size - 1).bit_length() - 1)
        if size == 2 * half and (kept := self._kept(size // BLOCK, start // size)) is not None:
            return kept
        return node_hash(self.subtree(start, start + half), self.subtree(start + half, end))

    def root(self, size: int) -> bytes:
        """Return the root over the first ``size`` entries."""
        return self.subtree(0, size)

    def root_with(self, size: int, own: Mapping[int, bytes]) -> bytes:
        """Return the root over the first ``size`` entries, some of them given and not read.

        Of the blocks of the entries that are given the hashes of their neighbours are read, of all
        others a root that is kept: so it costs as much as there are given, however long the
        journal is.

        Args:
            size: entries under the root.
            own: hashes of entries by their number, from 1 to ``size``.
        """
        numbers = sorted(own)

        def through(start: int, end: int) -> bytes:
            first = bisect_left(numbers, start + 1)
            if first == bisect_left(numbers, end + 1):
                return self.subtree(start, end)
            if end - start <= BLOCK:
                leaves = self._leaves(start, end)
                for number in numbers[first : bisect_left(numbers, end + 1)]:
                    if number - start <= len(leaves):  # else one is missing, and the root differs
                        leaves[number - start - 1] = leaf_hash(own[number])
                return root(leaves)
            half = 1 << ((end - start - 1).bit_length() - 1)
            return node_hash(through(start, start + half), through(start + half, end))

        return through(0, size)

    def _kept(self, blocks: int, index: int) -> bytes | None:
        """The root kept of the ``index``-th run of so many blocks, a power of two."""
        number = (blocks.bit_length() - 1) * LEVEL + index
        row = driver_of(self._connection).execute(_ROOT, (self._epoch, number)).fetchone()
        return None if row is None else bytes(row[0])

    def _leaves(self, start: int, end: int) -> list[bytes]:
        found = self._connection.exec_driver_sql(
            "SELECT hash FROM journal WHERE id >= ? AND id < ? ORDER BY id",
            (self._first + start, self._first + end),
        )
        return [leaf_hash(entry) for entry in found.scalars()]
