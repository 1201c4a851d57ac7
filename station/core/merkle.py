"""Merkle trees over a list that only grows: roots, and proofs that anyone can check.

RFC 9162 section 2.1. The hash of a leaf is SHA-256(0x00 ‖ data), the one of a node SHA-256(0x01 ‖
left ‖ right), and a tree of n leaves is cut at the largest power of two below n. A tree grows by
appending alone, so that a root stands for the leaves before it for ever: an *inclusion proof*
shows with about log2(n) hashes that one leaf is under a root, a *consistency proof* that the tree
under an older root is the beginning of the tree under a newer one.

All functions here take the hashes of leaves (:func:`leaf_hash`), each of 32 bytes.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterable, Sequence

EMPTY = hashlib.sha256().digest()
"""Root of a tree without leaves."""

Subtree = Callable[[int, int], bytes]
"""Gives the root over the leaves from one place up to, not including, another one."""


def leaf_hash(data: bytes) -> bytes:
    """Return the hash of one leaf."""
    return hashlib.sha256(b"\x00" + data).digest()


def node_hash(left: bytes, right: bytes) -> bytes:
    """Return the hash of a node over two subtrees."""
    return hashlib.sha256(b"\x01" + left + right).digest()


def root(leaves: Iterable[bytes]) -> bytes:
    """Return the root over leaves (section 2.1.1).

    Level by level, a last node without a neighbour going up as it is: the same tree as the cut at
    the largest power of two gives.
    """
    level = list(leaves)
    while len(level) > 1:
        above = [
            node_hash(left, right) for left, right in zip(level[::2], level[1::2], strict=False)
        ]
        if len(level) % 2:
            above.append(level[-1])
        level = above
    return level[0] if level else EMPTY


class Tree:
    """A tree that grows; it keeps one hash for each set bit of its size and no more."""

    def __init__(self) -> None:
        self.size = 0
        self._peaks: list[bytes] = []  # whole subtrees, the largest and oldest first

    def append(self, leaf: bytes) -> None:
        """Add the next leaf."""
        peak, whole = leaf, self.size
        while whole & 1:
            peak = node_hash(self._peaks.pop(), peak)
            whole >>= 1
        self._peaks.append(peak)
        self.size += 1

    def root(self) -> bytes:
        """Return the root over the leaves so far."""
        if not self._peaks:
            return EMPTY
        *others, found = self._peaks
        for peak in reversed(others):
            found = node_hash(peak, found)
        return found


def subtrees_of(leaves: Sequence[bytes]) -> Subtree:
    """Return what proofs ask for, from leaves in memory."""
    return lambda start, end: root(leaves[start:end])


def inclusion_path(index: int, size: int, subtree: Subtree) -> tuple[bytes, ...]:
    """Return the hashes that lead from a leaf to the root (section 2.1.3.1).

    Args:
        index: place of the leaf, from 0.
        size: leaves under the root.
        subtree: gives the roots of the subtrees beside the way.

    Raises:
        ValueError: the tree has no such leaf.
    """
    if not 0 <= index < size:
        raise ValueError(f"leaf {index} is not in a tree of {size}: count from 0 up")
    path: list[bytes] = []
    start, end = 0, size
    while end - start > 1:
        cut = start + _half(end - start)
        if index < cut:
            path.append(subtree(cut, end))
            end = cut
        else:
            path.append(subtree(start, cut))
            start = cut
    return tuple(reversed(path))


def is_included(leaf: bytes, index: int, size: int, path: Sequence[bytes], root: bytes) -> bool:
    """Whether a path leads from a leaf to a root (section 2.1.3.2)."""
    if not 0 <= index < size or not _are_hashes((leaf, root, *path)):
        return False
    place, last, found = index, size - 1, leaf
    for beside in path:
        if last == 0:
            return False
        if place & 1 or place == last:
            found = node_hash(beside, found)
            while not place & 1 and place:
                place, last = place >> 1, last >> 1
        else:
            found = node_hash(found, beside)
        place, last = place >> 1, last >> 1
    return last == 0 and found == root


def consistency_path(old: int, new: int, subtree: Subtree) -> tuple[bytes, ...]:
    """Return the hashes that show the older tree to be the beginning of the newer (2.1.4.1).

    Args:
        old: leaves of the older tree, from 1.
        new: leaves of the newer one.
        subtree: gives the roots of subtrees of the newer one.

    Raises:
        ValueError: the older tree is empty or the larger one.
    """
    if not 0 < old <= new:
        raise ValueError(f"a tree of {old} cannot be shown to begin one of {new}: 0 < old <= new")
    path: list[bytes] = []
    start, end, known = 0, new, True  # known: the subtree is the whole older tree
    while old != end:
        cut = start + _half(end - start)
        if old <= cut:
            path.append(subtree(cut, end))
            end = cut
        else:
            path.append(subtree(start, cut))
            start, known = cut, False
    if not known:
        path.append(subtree(start, end))
    return tuple(reversed(path))


def is_consistent(
    old: int, old_root: bytes, new: int, new_root: bytes, path: Sequence[bytes]
) -> bool:
    """Whether a path shows the older tree to be the beginning of the newer one (2.1.4.2)."""
    if not 0 < old <= new or not _are_hashes((old_root, new_root, *path)):
        return False
    if old == new:
        return not path and old_root == new_root
    hashes = list(path)
    if old & (old - 1) == 0:  # a whole subtree: the path leaves it out
        hashes.insert(0, old_root)
    if not hashes:
        return False
    place, last = old - 1, new - 1
    while place & 1:
        place, last = place >> 1, last >> 1
    was = becomes = hashes[0]
    for beside in hashes[1:]:
        if last == 0:
            return False
        if place & 1 or place == last:
            was, becomes = node_hash(beside, was), node_hash(beside, becomes)
            while not place & 1 and place:
                place, last = place >> 1, last >> 1
        else:
            becomes = node_hash(becomes, beside)
        place, last = place >> 1, last >> 1
    return last == 0 and was == old_root and becomes == new_root


def _half(size: int) -> int:
    """The largest power of two below ``size``, which is at least 2."""
    return 1 << ((size - 1).bit_length() - 1)


def _are_hashes(given: Iterable[bytes]) -> bool:
    return all(len(one) == 32 for one in given)
