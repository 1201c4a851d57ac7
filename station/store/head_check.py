"""Heads against the entries they stand for: those in the journal, and those kept elsewhere."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from station.core.facts import Fact
from station.core.journal import Entry, EntryKind
from station.core.tree_head import HeadError, SaidHead, SignedHead, TreeHead, key_id
from station.store.damage import Damage
from station.store.day_heads import public_of, signed_of
from station.store.facts import fact_record
from station.store.signing import is_signed
from station.store.tree import GrowingTree

KINDS = frozenset({EntryKind.HEAD, EntryKind.STATION_KEY})
"""Entries that concern heads."""


@dataclass(frozen=True, slots=True)
class Elsewhere:
    """What is known of a record from outside it.

    Args:
        said: heads read from paper.
        signed: signed heads, from a code or a file.
        key: the public key its heads must be signed with; None where nobody knows.
    """

    said: Collection[SaidHead] = ()
    signed: Collection[SignedHead] = ()
    key: bytes | None = None


class HeadCheck:
    """Takes in entries one after the other, of one epoch after the other.

    Args:
        site: whose record it is.
        station: likewise.
        elsewhere: what is known from outside.
    """

    def __init__(self, site: str, station: str, elsewhere: Elsewhere) -> None:
        self._site, self._station = site, station
        self._elsewhere = elsewhere
        self._open: list[SaidHead | SignedHead] = [*elsewhere.said, *elsewhere.signed]
        self.sizes = self._places()
        """Numbers of entries with which a head from outside ends."""
        self._key: bytes | None = None
        self.heads = 0
        self.last_signed: SignedHead | None = None

    def entry(self, entry: Entry, tree: GrowingTree) -> None:
        """Take in an entry of one of :data:`KINDS`; ``tree`` holds those before it.

        Raises:
            Damage: it does not stand for the entries before it, or its signature does not hold.
        """
        fact = fact_record(entry).fact
        try:
            if entry.kind is EntryKind.STATION_KEY:
                self._key = public_of(fact)
            else:
                self._head(entry, fact, tree)
        except (HeadError, KeyError, ValueError) as fault:
            raise Damage(entry.seq, f"entry {entry.seq}: its head {fault}") from fault

    def grown(self, epoch: int, tree: GrowingTree) -> None:
        """Compare heads from outside that end with the entry just taken in.

        Raises:
            Damage: one that names this epoch is not the one of these entries.
        """
        head = TreeHead(self._site, self._station, epoch, tree.size, tree.root())
        for other in tuple(self._open):
            if isinstance(other, SaidHead):
                if other.size == head.size and other.words == head.words:
                    self._open.remove(other)
            elif other.head == head:
                self._check_outside(other)
                self._open.remove(other)
            elif (other.head.epoch, other.head.size) == (epoch, head.size):
                raise Damage(
                    head.size,
                    f"the signed head kept elsewhere is not the one of entries 1 to {head.size}: "
                    "one of them was changed and all after it were made anew",
                )
        self.sizes = self._places()

    def done(self, sizes: dict[int, int]) -> None:
        """See that each head from outside was met.

        Args:
            sizes: entries of each epoch.

        Raises:
            Damage: one was not; the message says whether the end is missing.
        """
        longest = max(sizes.values(), default=0)
        for other in self._open:
            size, words = (
                (other.size, f'"{other.words}"')
                if isinstance(other, SaidHead)
                else (other.head.size, f'"{other.head.words}"')
            )
            if size > longest:
                raise Damage(
                    longest + 1,
                    f"the end is missing, or an older copy was put here: the head {words} was made "
                    f"over {size} entries, the journal ends at entry {longest}",
                )
            raise Damage(
                None,
                f"the head {words} over {size} entries is none of this record's: it was misread, "
                f"or another file was put here, or one of entries 1 to {size} was changed and all "
                "after it were made anew",
            )
        wanted = self._elsewhere.key
        if wanted is not None and self._key is not None and wanted != self._key:
            raise Damage(
                None,
                f"heads are signed with the key {key_id(self._key)} and not with the station's, "
                f"{key_id(wanted)}: another record was put here, or the key was replaced",
            )

    def _head(self, entry: Entry, fact: Fact, tree: GrowingTree) -> None:
        self.heads += 1
        head = TreeHead(self._site, self._station, entry.epoch, tree.size, tree.root())
        if (fact.details["size"], fact.details["root"]) != (head.size, head.root.hex()):
            raise HeadError(f"is not the one of entries 1 to {head.size}")
        signed = signed_of(fact)
        if signed is None:
            return
        if signed.head != head:
            raise HeadError("was signed for other entries")
        if signed.key != self._key:
            raise HeadError(f"was signed with the key {key_id(signed.key)}, which is not known")
        if not is_signed(signed):
            raise HeadError("has a signature that does not hold")
        self.last_signed = signed

    def _check_outside(self, head: SignedHead) -> None:
        if not is_signed(head):
            raise Damage(None, "the head kept elsewhere has a signature that does not hold")
        wanted = self._elsewhere.key or self._key
        if wanted is not None and head.key != wanted:
            raise Damage(
                None,
                f"the head kept elsewhere was signed with the key {key_id(head.key)}, the record's "
                f"is {key_id(wanted)}",
            )

    def _places(self) -> frozenset[int]:
        return frozenset(
            one.size if isinstance(one, SaidHead) else one.head.size for one in self._open
        )
