"""Proof of a run's entries: each lies under the newest signed head of the journal (RFC 9162)."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from station.core.journal import Value
from station.core.tree_head import SignedHead, key_id
from station.errors import BadInput
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


def prove_run(home: Path, blend_lot: str, where: RunEvidence) -> tuple[EntryProof, ...]:
    """Prove where a run begins and where its last bag lies; what cannot be proved says why."""
    return tuple(_proved(home, blend_lot, where))


def _proved(home: Path, blend_lot: str, where: RunEvidence) -> Iterator[EntryProof]:
    places = (("start", where.started), ("last bag", where.last_bag))
    for name, place in places:
        if place is None:
            continue
        what = f"{blend_lot}, {name}"
        file = f"proof-{blend_lot}-{name.replace(' ', '-')}.json"
        try:
            document = prove_entry(home, place.seq, where.epoch)
        except BadInput as refused:
            yield EntryProof(what, "", place, {}, str(refused))
            continue
        yield EntryProof(what, file, place, document, check_proof(dict(document)))
