"""A line that stands, why it stood, and what was done before it went on."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value

STOPPED, RESUMED = "stopped", "resumed"


class Reason(StrEnum):
    """Why a line stands (common practice)."""

    BREAK = "break"
    PRODUCT = "no product"
    FILM = "film or labels"
    MACHINE = "machine"
    CLEANING = "cleaning"
    QA = "waiting for QA"


class Look(StrEnum):
    """What is looked at before a line goes on after each reason."""

    BAGS = "bags left on the line were set aside or cooled"
    PAN = "the pan is clean, dry and at zero"
    GUARDS = "guards are shut and tools are counted"
    LABELS = "the new film or roll is the right one"
    WASHED = "hands and tools are washed"
    RELEASED = "QA said go on"


LOOKS = {
    Reason.BREAK: (Look.BAGS, Look.WASHED, Look.PAN),
    Reason.PRODUCT: (Look.BAGS, Look.PAN),
    Reason.FILM: (Look.LABELS, Look.PAN),
    Reason.MACHINE: (Look.GUARDS, Look.BAGS, Look.PAN),
    Reason.CLEANING: (Look.WASHED, Look.PAN),
    Reason.QA: (Look.RELEASED, Look.PAN),
}
"""What must be looked at after each reason (common practice)."""


@dataclass(frozen=True, slots=True)
class Pause:
    """One stop of a line.

    Args:
        uid: of the entry that began it.
        reason: why.
        began: when.
        ended: when it went on; None while it stands.
    """

    uid: str
    reason: Reason
    began: datetime
    ended: datetime | None = None

    def took(self, now: datetime) -> timedelta:
        """How long it took, or takes so far."""
        return (self.ended or now) - self.began


def stop_fact(uid: str, line: str, run: str, reason: Reason) -> Fact:
    """The entry that a line stands."""
    return Fact(EntryKind.PAUSE, uid, line, STOPPED, run, {"reason": str(reason)})


def resume_fact(uid: str, line: str, run: str, pause: Pause, looked: frozenset[Look]) -> Fact:
    """The entry that it goes on.

    Raises:
        ValueError: something was not looked at.
    """
    for look in LOOKS[pause.reason]:
        if look not in looked:
            raise ValueError(f"not yet: {look}")
    seen: list[Value] = [str(look) for look in LOOKS[pause.reason]]
    return Fact(EntryKind.PAUSE, uid, line, RESUMED, run, {"pause": pause.uid, "looked": seen})


def pauses_of(records: tuple[FactRecord, ...]) -> tuple[Pause, ...]:
    """The stops that facts tell of, in order; facts of other kinds are left out."""
    found: dict[str, Pause] = {}
    for record in records:
        fact = record.fact
        if fact.kind is not EntryKind.PAUSE:
            continue
        if fact.result == STOPPED:
            reason = Reason(str(fact.details["reason"]))
            found[fact.uid] = Pause(fact.uid, reason, record.at.utc)
        elif (begun := found.get(str(fact.details.get("pause")))) is not None:
            found[begun.uid] = Pause(begun.uid, begun.reason, begun.began, record.at.utc)
    return tuple(found.values())
