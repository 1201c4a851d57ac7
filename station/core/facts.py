"""What people and checks add to the record beside bags: one form for all of it.

A check of the scale, a hold, an approved label, a roll put in, a signed gate: each is one entry
that is never changed, names what it is about, and says in one word how it came out. What belongs
to one kind alone stands in ``details``; the module of that kind writes and reads them.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from station.core.journal import EntryKind, JournalError, Value
from station.core.pack import Moment

FACT_KINDS = frozenset(EntryKind) - {
    EntryKind.START,
    EntryKind.STOP,
    EntryKind.LOT,
    EntryKind.RUN,
    EntryKind.RUN_END,
    EntryKind.PACK,
    EntryKind.LABEL,
    EntryKind.EVENT,
}
"""Kinds of entries that are facts in this sense."""


@dataclass(frozen=True, slots=True)
class Fact:
    """One thing to record.

    Args:
        kind: one of :data:`FACT_KINDS`.
        uid: UUID version 7 as text; what other entries name it by.
        subject: what it is about: a scale, a bag item, a roll, a lot code, a serial.
        result: how it came out, in one word or two, for lists: ``good``, ``failed``, ``approved``.
        run: id of the run it belongs to; empty where it belongs to none.
        details: what its kind alone has.

    Raises:
        JournalError: the kind has a form of its own, or uid or subject is empty.
    """

    kind: EntryKind
    uid: str
    subject: str
    result: str
    run: str = ""
    details: Mapping[str, Value] = field(default_factory=dict)

    def __post_init__(self) -> None:
        if self.kind not in FACT_KINDS:
            raise JournalError(f"a {self.kind} entry has a form of its own")
        if not self.uid or not self.subject:
            raise JournalError(f"a {self.kind} entry needs a uid and a subject")

    def body(self) -> dict[str, Value]:
        """The entry's body."""
        return {
            "uid": self.uid,
            "subject": self.subject,
            "result": self.result,
            "run": self.run,
            "details": dict(self.details),
        }


@dataclass(frozen=True, slots=True)
class FactRecord:
    """A durable fact: when, by whom, and its place in the journal.

    Args:
        fact: what was recorded.
        at: when.
        who: id of the person, or ``station``.
        seq: its number in the journal of its epoch.
    """

    fact: Fact
    at: Moment
    who: str
    seq: int


def texts_of(value: object) -> Iterator[str]:
    """Every text inside a value of the journal."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for inner in value.values():
            yield from texts_of(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from texts_of(inner)
