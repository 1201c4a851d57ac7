"""Proof of a run's entries: each lies under the newest signed head of the journal (RFC 9162).

What was read, what it was held to and what was not read is said in words for the paper.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from station.core.backup_fact import MADE
from station.core.facts import FactRecord
from station.core.journal import EntryKind, Value
from station.core.tree_head import SignedHead, key_id
from station.errors import BadInput
from station.store.facts import facts
from station.store.head_now import HeadNow
from station.store.own_entries import OwnEntries
from station.store.proofs import check_proof, prove_entry
from station.store.run_evidence import Place, RunEvidence


@dataclass(frozen=True, slots=True)
class EntryProof:
    """One entry.

    Args:
        what: which entry of which run, in words.
        file: name of the file that proves it without the record; empty where there is none.
        place: the entry.
        document: what the file says; empty where there is none.
        why_not: why there is no proof, or why it does not hold; empty where it holds.
    """

    what: str
    file: str
    place: Place
    document: Mapping[str, Value]
    why_not: str

    @property
    def head(self) -> SignedHead:
        """The head it lies under; only with a document."""
        return SignedHead.parse(str(self.document["head"]))

    @property
    def words(self) -> str:
        """What was found, in one sentence."""
        if self.why_not:
            return f"not proved: {self.why_not}"
        head = self.head
        return (
            f"lies under the head over {head.head.size} entries, signed with key "
            f"{key_id(head.key)} at {head.at:%Y-%m-%d %H:%M:%S} UTC"
        )


def prove_run(
    home: Path, blend_lot: str, where: RunEvidence, now: HeadNow | None
) -> tuple[EntryProof, ...]:
    """Prove where a run begins and where its last bag lies; what cannot be proved says why."""
    return tuple(_proved(home, blend_lot, where, None if now is None else now.signed))


def proved_words(own: OwnEntries) -> tuple[str, ...]:
    """What was proved of a run, one sentence each."""
    if not own.holds:
        return (f"DOES NOT HOLD: {own.why}",)
    outside = f", and {own.outside} about it from another time" if own.outside else ""
    said = [
        f"read byte for byte: entries {own.first} to {own.last}, from its start to its "
        f"{'last entry so far' if own.open else 'end'}{outside}; {own.entries} in all, each has "
        "the hash that is kept, and those of the run follow one from the other"
    ]
    if own.purged:
        said.append(f"{own.purged} of them were purged: of these number, kind and hash are left")
    for one in own.under:
        when = f"{one.head.at:%Y-%m-%d %H:%M:%S} UTC"
        size, key = one.head.head.size, key_id(one.head.key)
        said.append(
            f"these {one.entries} entries are under the head over {size} entries signed at {when} "
            f"with key {key}"
            if not one.now
            else f"these {one.entries} entries, later than that, are under a head over {size} "
            f"entries signed for this pack with key {key}, as of {when}: it says what they are "
            "now"
        )
    if own.loose:
        said.append(f"{own.loose} entries are not under a signed head yet: {own.why_loose}")
    said.append(f"{own.bags} bags: what the tables say of their weighing is what their entries say")
    return tuple(said)


def not_proved_words(last: FactRecord | None) -> tuple[str, ...]:
    """What was not looked at, one sentence each.

    Args:
        last: the newest backup that was checked entry by entry, or None.
    """
    known = "the record names no time at which all of it was read and checked"
    if last is not None:
        known = (
            f"the whole journal was last read and checked, as far as the record knows, on the copy "
            f"{last.fact.subject} up to entry {last.fact.details['seq']}, at "
            f"{last.at.utc:%Y-%m-%d %H:%M:%S} UTC"
        )
    return (
        "the rest of the journal was not read for this, nor were tables built anew: what became "
        "of bags and lots later is told as the tables have it; `station journal verify` reads all, "
        "and so does this pack with --whole-journal",
        known,
    )


def last_checked_copy(home: Path) -> FactRecord | None:
    """The newest backup of which every entry was checked, as the record knows it."""
    found = facts(home, (EntryKind.BACKUP,), result=MADE, newest=1)
    return found[0] if found else None


def _proved(
    home: Path, blend_lot: str, where: RunEvidence, now: SignedHead | None
) -> Iterator[EntryProof]:
    places = (("start", where.started), ("last bag", where.last_bag))
    for name, place in places:
        if place is None:
            continue
        what = f"{blend_lot}, {name}"
        file = f"proof-{blend_lot}-{name.replace(' ', '-')}.json"
        try:
            document = prove_entry(home, place.seq, where.epoch, now)
        except BadInput as refused:
            yield EntryProof(what, "", place, {}, str(refused))
            continue
        yield EntryProof(what, file, place, document, check_proof(dict(document)))
