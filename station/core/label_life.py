"""The life of a label: which state may follow which, who may print one again, and as which copy.

A first label goes recorded → submitted → spooled → applied. Whatever breaks in between leaves it in
doubt, and a person answers: it is on its bag, it is destroyed, or it was never printed. A label is
printed again only as a numbered copy with the same serial and content; its state then begins at
submitted again.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.mass import Mass
from station.core.pack import LabelState, Quality
from station.core.run import Run

MAY_BECOME: Mapping[LabelState, tuple[LabelState, ...]] = {
    LabelState.NONE: (),
    LabelState.RECORDED: (LabelState.SUBMITTED, LabelState.IN_DOUBT, LabelState.VOIDED),
    LabelState.SUBMITTED: (LabelState.SPOOLED, LabelState.IN_DOUBT, LabelState.VOIDED),
    LabelState.SPOOLED: (LabelState.APPLIED, LabelState.IN_DOUBT, LabelState.VOIDED),
    LabelState.APPLIED: (LabelState.IN_DOUBT, LabelState.VOIDED),
    LabelState.IN_DOUBT: (LabelState.APPLIED, LabelState.VOIDED),
    LabelState.VOIDED: (),
}
"""The one table of what may follow; a copy is the only other way, see :data:`COPIED_FROM`."""

COPIED_FROM = (LabelState.SPOOLED, LabelState.APPLIED, LabelState.IN_DOUBT)
"""States in which a label may be printed again; before them its first print is on its way."""

MOST_COPIES = 99
"""Two digits have room on the label beside its serial."""


class LabelLifeError(ValueError):
    """What was asked must not be done with this label; the message says why and what to do."""


class Fate(StrEnum):
    """What a person says became of a label in doubt."""

    APPLIED = "applied"
    """It is on its bag."""
    DESTROYED = "destroyed"
    """It was printed and torn up; its bag goes out of the count."""
    NOT_PRINTED = "not printed"
    """No label came out and none is wanted; its bag goes out of the count."""


STATE_AFTER: Mapping[Fate, LabelState] = {
    Fate.APPLIED: LabelState.APPLIED,
    Fate.DESTROYED: LabelState.VOIDED,
    Fate.NOT_PRINTED: LabelState.VOIDED,
}

FATE_WORDS: Mapping[Fate, str] = {
    Fate.APPLIED: "seen on its bag",
    Fate.DESTROYED: "label destroyed",
    Fate.NOT_PRINTED: "label never printed",
}
"""What the record says after an answer."""


class OldLabel(StrEnum):
    """Where the label is that a copy takes the place of."""

    DESTROYED = "destroyed"
    NEVER_PRINTED = "never printed"


class ReprintReason(StrEnum):
    """Why a label is printed again; no other reason counts."""

    NEVER_CAME_OUT = "never came out"
    JAMMED = "jammed in the printer"
    TORN = "torn or creased"
    UNREADABLE = "print unreadable"
    STUCK_WRONG = "stuck on askew"


@dataclass(frozen=True, slots=True)
class LabelledBag:
    """A bag and everything its label is made of.

    Args:
        serial: as printed.
        run: its run, with the lots, dates and blend lot that held for this bag.
        quality, label: its present state.
        net: its checked net.
        copies: how often its label was printed again.
    """

    serial: str
    run: Run
    net: Mass
    quality: Quality
    label: LabelState
    copies: int = 0


@dataclass(frozen=True, slots=True)
class OpenLabel:
    """One label that waits for an answer.

    Args:
        serial: of its bag.
        product: name of the food.
        mark: R1 and on for a copy; empty for the first label.
        label: in doubt, or spooled for a copy.
        why: what the record says about it.
        judged_at: when the bag was weighed, in UTC.
        offset_minutes: local time minus UTC then.
    """

    serial: str
    product: str
    mark: str
    label: LabelState
    why: str
    judged_at: datetime
    offset_minutes: int


@dataclass(frozen=True, slots=True)
class ReprintRule:
    """Who may print a label again.

    Args:
        leads: ids of those who may beyond the first copy.
        alone: copies of one label that anybody may print.
    """

    leads: frozenset[str] = frozenset()
    alone: int = 1


@dataclass(frozen=True, slots=True)
class Reprint:
    """A wish to print the label of a bag again.

    Args:
        serial: of the bag.
        reason: why.
        old: where the label before it is.
        who: id of the person who asks.
    """

    serial: str
    reason: ReprintReason
    old: OldLabel
    who: str


@dataclass(frozen=True, slots=True)
class Resolve:
    """A person's answer about a label in doubt.

    Args:
        serial: of the bag.
        fate: what became of its label.
        who: id of the person who looked.
    """

    serial: str
    fate: Fate
    who: str


def awaits_answer(bag: LabelledBag) -> bool:
    """Whether a person must say what became of a label: in doubt, or a copy that came out."""
    printed_copy = bag.copies > 0 and bag.label is LabelState.SPOOLED
    return bag.label is LabelState.IN_DOUBT or printed_copy


def may_become(serial: str, label: LabelState, wanted: LabelState) -> None:
    """Pass when a label may take on a state.

    Raises:
        LabelLifeError: it may not; the message names the states it may.
    """
    allowed = MAY_BECOME[label]
    if wanted not in allowed:
        raise LabelLifeError(
            f"the label of bag {serial} is {label} and cannot become {wanted}: allowed is "
            f"{', '.join(allowed) or 'nothing more'}"
        )


def copy_mark(copy: int) -> str:
    """What a copy carries beside its serial: R1, R2 …; nothing on the first label."""
    return f"R{copy}" if copy else ""


def next_copy(bag: LabelledBag, wish: Reprint, rule: ReprintRule) -> int:
    """Return the number of the copy a wish may have.

    Raises:
        LabelLifeError: the wish must not be granted.
    """
    refuse_copy(bag.serial, bag.label, bag.copies)
    if bag.quality is Quality.HELD:
        raise LabelLifeError(
            f"bag {bag.serial} is held: it gets no label before QA has released it"
        )
    if not wish.who:
        raise LabelLifeError("a copy needs the id of who asks for it")
    if wish.old is OldLabel.NEVER_PRINTED and bag.label is not LabelState.IN_DOUBT:
        raise LabelLifeError(
            f"the label of bag {bag.serial} is {bag.label}, so it was printed: destroy it first"
        )
    if bag.copies >= rule.alone and wish.who not in rule.leads:
        raise LabelLifeError(
            f"bag {bag.serial} has had {copy_mark(bag.copies) or 'no copy'} already: the lead "
            "signs for the next one"
        )
    return bag.copies + 1


def refuse_copy(serial: str, label: LabelState, copies: int) -> None:
    """Pass when the state of a label allows one more copy.

    Raises:
        LabelLifeError: it does not.
    """
    if label not in COPIED_FROM:
        raise LabelLifeError(
            f"the label of bag {serial} is {label}: only one that is "
            f"{', '.join(COPIED_FROM)} is printed again"
        )
    if copies >= MOST_COPIES:
        raise LabelLifeError(f"bag {serial} has had {copies} copies: set it aside")


def reprint_fact(wish: Reprint, copy: int, run: str, uid: str) -> Fact:
    """The entry that keeps a copy; recorded before it is printed."""
    return Fact(
        kind=EntryKind.REPRINT,
        uid=uid,
        subject=wish.serial,
        result=copy_mark(copy),
        run=run,
        details={"copy": copy, "reason": str(wish.reason), "old": str(wish.old)},
    )
