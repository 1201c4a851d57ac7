"""What became of a bag that was set aside, as entries of the record, and back.

Every reject ends in exactly one disposition. A decision is never changed: a correction is a new
entry that names the one it takes the place of. The store enforces both
(:mod:`station.store.disposition_facts`).
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Any

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.lot_set import LotUse
from station.core.pack import Quality

LONGEST_REASON = 200


class DispositionError(ValueError):
    """A decision that cannot be; the message says why and what to do."""


class Disposition(StrEnum):
    """How a reject ends."""

    TOP_UP = "topped up"
    """Opened, filled up, sealed and weighed as a new bag."""
    REWEIGH = "weighed again"
    """Put on the scale again as it is; the new bag stands for it."""
    REWORK = "reworked"
    """Its content went back on the line."""
    DUMP = "dumped"
    SAMPLE = "sampled"
    DOWNGRADE = "downgraded"
    """Given away below its class: to staff, to a charity, as the packhouse's policy says."""


QUALITY_AFTER: Mapping[Disposition, Quality] = {
    Disposition.TOP_UP: Quality.REPACKED,
    Disposition.REWEIGH: Quality.REPACKED,
    Disposition.REWORK: Quality.REWORKED,
    Disposition.DUMP: Quality.DUMPED,
    Disposition.SAMPLE: Quality.SAMPLED,
    Disposition.DOWNGRADE: Quality.DOWNGRADED,
}
LINKED = (Disposition.TOP_UP, Disposition.REWEIGH)
"""Those that name the bag which stands for the reject from now on."""
DECIDABLE = (Quality.REJECT, Quality.HELD)
"""Bags a disposition may end: one that was set aside, and a held one that is not released."""
IN_THE_BIN = (Quality.REJECT, Quality.DUMPED)
"""Rejects that lie in the bin: not decided yet, or left there."""


@dataclass(frozen=True, slots=True)
class Decided:
    """A decision about one bag.

    Args:
        serial: of the bag.
        disposition: how it ends.
        reason: why, in a person's words.
        witness: id of the second person; empty where none was wanted.
        into: serial of the bag that stands for it; empty but for :data:`LINKED`.
        corrects: uid of the decision this one takes the place of; empty for a first one.
        lots: for rework, the union of the lots of all bags decided together.
        use_by: for rework, the earliest use-by date of these bags.
    """

    serial: str
    disposition: Disposition
    reason: str
    witness: str = ""
    into: str = ""
    corrects: str = ""
    lots: tuple[LotUse, ...] = ()
    use_by: date | None = None


@dataclass(frozen=True, slots=True)
class DecisionMade:
    """A decision on record: what was decided, its entry's uid, who and when."""

    decided: Decided
    record: FactRecord

    @property
    def uid(self) -> str:
        """Uid of its entry, which a correction names."""
        return self.record.fact.uid


def check_decision(decided: Decided, who: str, witnessed: Collection[Disposition]) -> None:
    """Pass when a decision may be entered by this person.

    Args:
        decided: what is decided.
        who: id of who decides.
        witnessed: dispositions that want a second person.

    Raises:
        DispositionError: it may not.
    """
    if not who:
        raise DispositionError("who decides? Choose a name first")
    if not decided.reason.strip():
        raise DispositionError("a decision needs a reason: choose or write why")
    if len(decided.reason) > LONGEST_REASON:
        raise DispositionError(
            f"the reason has {len(decided.reason)} characters: allowed are {LONGEST_REASON}"
        )
    if decided.witness == who:
        raise DispositionError(f"{who} cannot witness a decision of {who}: choose another person")
    if decided.disposition in witnessed and not decided.witness:
        raise DispositionError(
            f"a bag that is {decided.disposition} wants a witness: a second person signs"
        )
    linked = decided.disposition in LINKED
    if linked and not decided.into:
        raise DispositionError(
            f"bag {decided.serial} is {decided.disposition}: scan the label of the new bag"
        )
    if decided.into and not linked:
        raise DispositionError(f"a bag that is {decided.disposition} has no new bag")
    if decided.into == decided.serial:
        raise DispositionError("the new bag has a serial of its own: scan its label")
    if decided.disposition is Disposition.REWORK and decided.corrects:
        raise DispositionError(
            "rework goes with a move on the line and is no correction: enter it as a new decision"
        )


def disposition_fact(decided: Decided, uid: str, run: str) -> Fact:
    """The entry that keeps a decision.

    Args:
        decided: the decision.
        uid: UUID version 7 as text.
        run: id of the bag's run.
    """
    lots: list[Value] = [[use.component, use.lot] for use in decided.lots]
    details: dict[str, Value] = {
        "reason": decided.reason.strip(),
        "witness": decided.witness,
        "into": decided.into,
        "corrects": decided.corrects,
        "lots": lots,
        "use_by": None if decided.use_by is None else decided.use_by.isoformat(),
    }
    return Fact(EntryKind.DISPOSITION, uid, decided.serial, str(decided.disposition), run, details)


def decided_of(fact: Fact) -> Decided:
    """The decision of its entry."""
    details: Any = fact.details
    use_by = details["use_by"]
    return Decided(
        serial=fact.subject,
        disposition=Disposition(fact.result),
        reason=details["reason"],
        witness=details["witness"],
        into=details["into"],
        corrects=details["corrects"],
        lots=tuple(LotUse(component, lot) for component, lot in details["lots"]),
        use_by=None if use_by is None else date.fromisoformat(use_by),
    )


# --- the bin ----------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class BinCount:
    """Bags counted in the reject bin, held against the record.

    Args:
        day: production day.
        counted: bags in the bin.
        expected: bags that lie there by the record.
        explanation: of a difference; empty without one.
    """

    day: date
    counted: int
    expected: int
    explanation: str = ""

    @property
    def difference(self) -> int:
        """Counted minus expected: below 0 bags are missing."""
        return self.counted - self.expected


def bin_fact(count: BinCount, uid: str) -> Fact:
    """The entry that keeps a count.

    Raises:
        DispositionError: it cannot be, or a difference has no explanation.
    """
    if not 0 <= count.counted <= 100_000:
        raise DispositionError(f"{count.counted} bags counted: allowed is 0 to 100000")
    if count.difference and not count.explanation.strip():
        raise DispositionError(
            f"{count.counted} bags are in the bin, {count.expected} by the record: "
            "say why they differ"
        )
    return Fact(
        EntryKind.BIN_COUNT,
        uid,
        count.day.isoformat(),
        "differs" if count.difference else "agrees",
        details={
            "counted": count.counted,
            "expected": count.expected,
            "explanation": count.explanation.strip(),
        },
    )


def bin_count_of(record: FactRecord) -> BinCount:
    """The count of its entry."""
    details: Any = record.fact.details
    return BinCount(
        date.fromisoformat(record.fact.subject),
        details["counted"],
        details["expected"],
        details["explanation"],
    )


# --- the ticket -------------------------------------------------------------------------------

PRINTED, NOT_PRINTED = "printed", "not printed"


def ticket_fact(serial: str, uid: str, run: str, why_not: str = "") -> Fact:
    """The entry that says what became of the ticket of a reject; a printed one used a label.

    Args:
        serial: of the reject.
        uid: UUID version 7 as text.
        run: id of its run.
        why_not: why it was not printed; empty where it was.
    """
    result = NOT_PRINTED if why_not else PRINTED
    return Fact(EntryKind.TICKET, uid, serial, result, run, {"why": why_not})
