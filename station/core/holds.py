"""Holds of bags by any scope and their release, as entries of the record, and back.

A hold lists the bags it reaches as ranges of numbers in its own entry, so that it can be read and
released without asking again what it meant. A run whose bags nobody holds is released too: for
dispatch, once nothing about it is open.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Any

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value

HELD, RELEASED = "held", "released"
Ranges = tuple[tuple[str, int, int], ...]
"""Epoch as text, first and last bag number."""


class HoldError(ValueError):
    """A hold or release that cannot be; the message says why."""


class ScopeKind(StrEnum):
    """By what bags are held."""

    SERIALS = "serials"
    TIME = "time"
    RUN = "run"
    BLEND = "blend lot"
    LOT = "input lot"
    ROLL = "label roll"
    WINDOW = "suspect window"


@dataclass(frozen=True, slots=True)
class Scope:
    """Which bags.

    Args:
        kind: by what.
        name: what the hold is about, as lists name it.
    """

    kind: ScopeKind
    name: str


@dataclass(frozen=True, slots=True)
class Released:
    """A release for dispatch.

    Args:
        hold: uid of the hold taken off; empty for a run.
        run: id of the run released; empty for a hold.
        reason: in a person's words.
        second: id of the second person; empty where none was wanted.
        bags: that it lets go.
    """

    hold: str
    run: str
    reason: str
    second: str
    bags: int


@dataclass(frozen=True, slots=True)
class Releasable:
    """One thing on the list.

    Args:
        hold: uid of the hold; empty for a run.
        run: id of the run; empty for a hold.
        subject: what the hold was about, or the name of the run's product.
        scope: by what it is held; ``run`` for a run.
        reason: why it is held; the blend lot codes of a run.
        who: laid it on, or led the run.
        at: when, in UTC.
        bags: it keeps; of a run those that are in its batch.
        frees: those that its release lets go: no other hold keeps them.
        blocked: why it cannot be released, in words; empty where it can.
    """

    hold: str
    run: str
    subject: str
    scope: str
    reason: str
    who: str
    at: datetime
    bags: int
    frees: int
    blocked: tuple[str, ...]

    @property
    def key(self) -> str:
        """What names it: uid of the hold, or id of the run."""
        return self.hold or self.run


def hold_fact(
    scope: Scope, reason: str, ranges: Collection[tuple[str, int, int]], uid: str
) -> Fact:
    """The entry that holds bags.

    Raises:
        HoldError: there is no reason, or no bag.
    """
    if not reason.strip():
        raise HoldError("a hold needs a reason: write why")
    if not ranges:
        raise HoldError(f"no bag of {scope.kind} {scope.name} is in the record: nothing is held")
    listed: list[Value] = [list(one) for one in ranges]
    details: dict[str, Value] = {
        "scope": str(scope.kind),
        "reason": reason.strip(),
        "ranges": listed,
    }
    return Fact(EntryKind.HOLD, uid, scope.name, HELD, details=details)


def release_fact(released: Released, subject: str, uid: str, who: str, *, two: bool) -> Fact:
    """The entry that lets bags go.

    Args:
        released: what and why.
        subject: what the hold was about, or the run.
        uid: UUID version 7 as text.
        who: id of who releases.
        two: whether a second person must sign.

    Raises:
        HoldError: a reason or a second person is missing.
    """
    if not released.reason.strip():
        raise HoldError("a release needs a reason: write why")
    if released.second == who and who:
        raise HoldError(f"{who} signs first: another person signs second")
    if two and not released.second:
        raise HoldError("two people release: the second one is missing")
    details: dict[str, Value] = {
        "reason": released.reason.strip(),
        "second": released.second,
        "bags": released.bags,
    }
    if released.hold:
        details["hold"] = released.hold
    return Fact(EntryKind.RELEASE, uid, subject, RELEASED, released.run, details)


def released_run(fact: Fact) -> str:
    """Id of the run that a release lets go for dispatch; empty where it takes off a hold."""
    return fact.run if fact.kind is EntryKind.RELEASE and "hold" not in fact.details else ""


def reason_of(record: FactRecord) -> str:
    """Why a hold was laid on or taken off."""
    details: Any = record.fact.details
    return str(details.get("reason", ""))


def scope_of(record: FactRecord) -> str:
    """By what a hold was laid on, in one word or two."""
    details: Any = record.fact.details
    if details.get("lot"):
        return str(ScopeKind.LOT)
    return str(details.get("scope", ScopeKind.WINDOW))


def ranges_of(fact: Fact) -> Ranges:
    """The bags a hold reaches."""
    details: Any = fact.details
    return tuple((str(epoch), first, last) for epoch, first, last in details["ranges"])
