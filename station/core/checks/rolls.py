"""Label rolls as entries of the record, and the account of one: every label has gone somewhere.

Issued − used − spoiled − samples − returned is the difference; the SQF Food Safety Code asks for
such a count of labels at changeover (2.6.1.2 guidance, from memory). A difference is explained or
stays open.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value

MOST_LABELS = 100_000
"""On one roll; more is a slip of the finger."""


class RollError(ValueError):
    """An entry about a roll that cannot be; the message says why and what is allowed."""


class Explanation(StrEnum):
    """Why the count of a roll does not add up."""

    ISSUED = "count on the core was wrong"
    UNCOUNTED = "spoiled ones not counted"
    SET_UP = "used to set the printer up"
    RECOUNTED = "recounted, stays open"


class RollStep(StrEnum):
    """What happened to a roll."""

    PUT_IN = "put in"
    TAKEN_OUT = "taken out"
    EXPLAINED = "explained"


@dataclass(frozen=True, slots=True)
class RollCount:
    """What was counted when a roll was taken out.

    Args:
        returned: labels left on it.
        spoiled: labels torn, jammed or misprinted and destroyed.
        samples: labels kept as samples.
    """

    returned: int
    spoiled: int
    samples: int

    def __post_init__(self) -> None:
        for name in ("returned", "spoiled", "samples"):
            _checked(getattr(self, name), 0, name)


@dataclass(frozen=True, slots=True)
class RollAccount:
    """One roll from the printer's point of view.

    Args:
        roll: its id.
        uid: of the entry that put it in.
        put_in: that entry.
        issued: labels on it when it was put in.
        used: labels printed from it, by the record: first prints, copies and second pieces.
        taken_out: the entry that took it out, or None while it is in.
        count: what was counted then.
        explanation: of a difference; empty without one.
    """

    roll: str
    uid: str
    put_in: FactRecord
    issued: int
    used: int
    taken_out: FactRecord | None
    count: RollCount | None
    explanation: str

    @property
    def difference(self) -> int | None:
        """Labels nobody can account for; below 0, labels that were never issued. None while in."""
        if self.count is None:
            return None
        gone = self.used + self.count.spoiled + self.count.samples + self.count.returned
        return self.issued - gone

    @property
    def open(self) -> bool:
        """Whether a difference waits for an explanation."""
        return bool(self.difference) and not self.explanation


def put_in_fact(roll: str, issued: int, uid: str, run: str = "") -> Fact:
    """The entry of a roll put in.

    Raises:
        RollError: the roll has no id, or the number of labels cannot be.
    """
    if not roll:
        raise RollError("a roll needs its id: scan the code on its core")
    details: dict[str, Value] = {"issued": _checked(issued, 1, "issued")}
    return Fact(EntryKind.ROLL, uid, roll, str(RollStep.PUT_IN), run, details)


def taken_out_fact(account: RollAccount, count: RollCount, uid: str, run: str = "") -> Fact:
    """The entry of a roll taken out, with what was counted."""
    details: dict[str, Value] = {
        "roll": account.uid,
        "returned": count.returned,
        "spoiled": count.spoiled,
        "samples": count.samples,
    }
    return Fact(EntryKind.ROLL, uid, account.roll, str(RollStep.TAKEN_OUT), run, details)


def explained_fact(account: RollAccount, words: str, uid: str) -> Fact:
    """The entry that explains a difference.

    Raises:
        RollError: there is nothing to explain, or no words.
    """
    if not account.difference:
        raise RollError(f"roll {account.roll} has no difference to explain")
    if not words.strip():
        raise RollError("an explanation needs words")
    details: dict[str, Value] = {"roll": account.uid, "explanation": words.strip()}
    return Fact(EntryKind.ROLL, uid, account.roll, str(RollStep.EXPLAINED), "", details)


def is_step(record: FactRecord, step: RollStep) -> bool:
    """Whether a fact is this step of a roll."""
    return record.fact.kind is EntryKind.ROLL and record.fact.result == step


def accounts(records: Iterable[FactRecord], used: Iterable[int]) -> tuple[RollAccount, ...]:
    """Return the account of each roll put in, oldest first.

    A roll that is put in while another is in counts for itself; the one before stays open.

    Args:
        records: facts of kind ROLL, oldest first.
        used: labels printed from each roll put in, in the same order.
    """
    kept = tuple(records)
    found = []
    for put_in, printed in zip((r for r in kept if is_step(r, RollStep.PUT_IN)), used, strict=True):
        uid = put_in.fact.uid
        mine = [one for one in kept if one.fact.details.get("roll") == uid]
        out = next((one for one in mine if is_step(one, RollStep.TAKEN_OUT)), None)
        words = [one for one in mine if is_step(one, RollStep.EXPLAINED)]
        found.append(
            RollAccount(
                roll=put_in.fact.subject,
                uid=uid,
                put_in=put_in,
                issued=_number(put_in, "issued"),
                used=printed,
                taken_out=out,
                count=None if out is None else _count(out),
                explanation=str(words[-1].fact.details["explanation"]) if words else "",
            )
        )
    return tuple(found)


def _count(out: FactRecord) -> RollCount:
    names = ("returned", "spoiled", "samples")
    returned, spoiled, samples = (_number(out, name) for name in names)
    return RollCount(returned, spoiled, samples)


def _number(record: FactRecord, name: str) -> int:
    number = record.fact.details[name]
    assert isinstance(number, int), "the entry was made here"
    return number


def _checked(number: int, least: int, name: str) -> int:
    if not least <= number <= MOST_LABELS:
        raise RollError(f"{number} labels {name}: allowed is {least} to {MOST_LABELS}")
    return number
