"""Sends a station's record to the centre, epoch by epoch, from wherever the centre stands."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime

from station.errors import EnvironmentFault
from station.store.outlet import EpochSpan, JournalOutlet, Sent
from station.sync import batch as b
from station.sync.connection import CentreConnection
from station.sync.delivery import OTHER_ENTRY, Delivery, Mark
from station.sync.errors import TwoRecords


@dataclass(frozen=True, slots=True)
class Backlog:
    """What is not at the centre yet.

    Args:
        entries: how many.
        oldest: when the first of them was made; None without any, or where it cannot be read.
    """

    entries: int
    oldest: datetime | None


class Sender:
    """Sends on one connection; made anew with each.

    Args:
        outlet: the record.
        delivery: the connection.
        pace: how large pieces are.
    """

    def __init__(
        self, outlet: JournalOutlet, delivery: Delivery, pace: b.Pace | None = None
    ) -> None:
        self._outlet, self._delivery = outlet, delivery
        self._pace = pace or b.Pace()
        self._marks: dict[int, Mark] = {}
        self.apart = 0
        """Entries put into quarantine on this connection."""

    @property
    def both_sides(self) -> tuple[JournalOutlet, CentreConnection, tuple[str, str]]:
        """The record, the connection, and the station's name, for comparing the two."""
        return self._outlet, self._delivery.connection, self._delivery.names

    @property
    def marks(self) -> dict[int, Mark]:
        """How far the centre has come, as it said itself."""
        return dict(self._marks)

    def shake_hands(self) -> None:
        """Ask the centre how far it has come, and compare.

        Raises:
            TwoRecords: it has other entries of an epoch, or more of the present one.
        """
        marks = self._delivery.marks()
        spans = self._outlet.epochs()
        for number, span in enumerate(spans):
            if span.epoch not in marks:
                self._delivery.begin(span.epoch)
                marks[span.epoch] = Mark()
            self._compare(span, marks[span.epoch], present=number == len(spans) - 1)
        self._marks = marks

    def pieces(self) -> Iterator[int]:
        """Send all there is, a piece each time; yields how many entries it had.

        Raises:
            TwoRecords, TakenElsewhere, CentreGone: as Delivery.send.
        """
        for span in self._outlet.epochs():
            while True:
                mark = self._marks.get(span.epoch, Mark())
                if mark.seq >= span.last:
                    break
                entries = self._outlet.after(span, mark.seq, self._pace.rows, self._pace.size)
                if not entries or entries[0].seq != mark.seq + 1:
                    raise EnvironmentFault(
                        f"entry {mark.seq + 1} of epoch {span.epoch} is missing",
                        "run `station journal verify`",
                    )
                piece = b.batch_of(mark.seq, mark.hash, entries)
                try:
                    self._marks[span.epoch] = self._delivery.send(span.epoch, piece)
                except TwoRecords as other:
                    entry = next(one for one in piece.good if one.seq == other.seq)
                    self._delivery.set_apart(span.epoch, entry, OTHER_ENTRY)
                    raise
                self.apart += len(piece.apart)
                yield len(entries)

    def drain(self, more: Callable[[], bool] = lambda: True) -> int:
        """Send until nothing is left or ``more`` says no; returns the number of entries sent."""
        sent = 0
        for count in self.pieces():
            sent += count
            if not more():
                break
        return sent

    def backlog(self) -> Backlog:
        """What is not at the centre yet."""
        return backlog(self._outlet, {epoch: mark.seq for epoch, mark in self._marks.items()})

    def head(self) -> tuple[int, Mark]:
        """The present epoch and its last entry."""
        span = self._outlet.epochs()[-1]
        return span.epoch, Mark(span.last, span.hash)

    def _compare(self, span: EpochSpan, mark: Mark, present: bool) -> None:
        if mark.seq > span.last and present:
            raise TwoRecords(
                f"the centre has {mark.seq} entries of this record's epoch, the record has "
                f"{span.last}: an older copy was put back, or another station has this name",
                span.last + 1,
            )
        ours = self._outlet.hash_at(span, min(mark.seq, span.last))
        theirs = mark.hash
        if mark.seq > span.last:
            theirs = self._delivery.hash_at(span.epoch, span.last) or ours
        if ours != theirs:
            self._tell_apart(span, min(mark.seq, span.last))

    def _tell_apart(self, span: EpochSpan, upto: int) -> None:
        """Find the first entry that differs, put ours into quarantine, and say so."""
        same, differs = 0, upto
        while differs - same > 1:
            middle = (same + differs) // 2
            there = self._delivery.hash_at(span.epoch, middle)
            if there is None or there == self._outlet.hash_at(span, middle):
                same = middle
            else:
                differs = middle
        entry = self._outlet.after(span, differs - 1, 1, 0)[0]
        self._delivery.set_apart(span.epoch, entry, OTHER_ENTRY)
        raise TwoRecords(
            f"the centre has another entry {differs} of this epoch than the record: two stations "
            "have one name, or an older copy of the record was put back",
            differs,
        )


def backlog(outlet: JournalOutlet, marks: Mapping[int, int]) -> Backlog:
    """What a record has beyond the marks, by epoch."""
    entries, oldest = 0, None
    for span in outlet.epochs():
        seq = marks.get(span.epoch, 0)
        left = max(0, span.last - seq)
        if left and oldest is None:
            oldest = made_at(outlet.after(span, seq, 1, 0)[0])
        entries += left
    return Backlog(entries, oldest)


def made_at(entry: Sent) -> datetime | None:
    """When an entry was made, as it says; None where it cannot be read."""
    try:
        return datetime.fromisoformat(json.loads(entry.canonical)["utc"])
    except (ValueError, KeyError, TypeError):
        return None
