"""People as entries of the record: what was set for whom, and wrong PINs; never a PIN itself."""

from __future__ import annotations

from enum import StrEnum

from station.core.facts import Fact
from station.core.journal import EntryKind, Value


class PersonStep(StrEnum):
    """What happened with a person."""

    ADDED = "added"
    PIN_SET = "PIN set"
    BADGE_SET = "badge set"
    DISABLED = "disabled"
    ENABLED = "enabled"
    REFUSED = "signature refused"
    LEFT = "left the full screen"


SCREEN = "screen"
"""What an entry about leaving the full screen is about; who left it signs the entry."""


def left_fact(uid: str) -> Fact:
    """The entry that somebody left the full screen."""
    return Fact(EntryKind.PERSON, uid, SCREEN, str(PersonStep.LEFT))


def person_fact(
    uid: str, person: str, step: PersonStep, before: str = "", after: str = "", why: str = ""
) -> Fact:
    """The entry of a step.

    Args:
        uid: UUID version 7 as text.
        person: id of the person it is about.
        step: what happened.
        before: what was, in words; no PIN, no badge and no hash of one.
        after: what is, likewise.
        why: the reason given.
    """
    details: dict[str, Value] = {"before": before, "after": after, "why": why}
    return Fact(EntryKind.PERSON, uid, person, str(step), details=details)
