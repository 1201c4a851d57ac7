"""Between two runs: the old one is counted, the line is cleared, and both are signed.

A label of the run before on a bag of the next one is the worst that can happen on a line, so
nothing is taken before somebody has looked and said so. Points of the list are common practice; a
packhouse's own plan for cleaning and allergens goes before them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value

FIRST = "start"
"""Stands for the run before, where there was none."""


class ClearanceError(ValueError):
    """A signature that cannot be given; the message says what is missing."""


class Gate(StrEnum):
    """What is signed between two runs."""

    RECONCILED = "run reconciled"
    CLEARED = "line cleared"


class Point(StrEnum):
    """What is looked at before a line is clear."""

    PRODUCT = "no old product on line, pan or floor"
    LABELS = "old labels and film are off the line"
    BINS = "old lots are closed or returned"
    CLEAN = "pan, chute and tools are clean and dry"
    ALLERGEN = "washed where allergens change"


class Explanation(StrEnum):
    """Why a count differs from the record."""

    SAMPLED = "taken by QA"
    DESTROYED = "burst after its label, destroyed"
    ELSEWHERE = "on another pallet"
    MISCOUNTED = "a case was packed short or over"
    UNKNOWN = "not found: QA decides"


@dataclass(frozen=True, slots=True)
class Reconciliation:
    """Bags on the pallet against bags on record.

    Args:
        run: id of the run.
        recorded: labelled good bags on record.
        counted: bags a person counted.
        explanation: why the two differ; None where they do not.
        net_ug: what the recorded bags hold together, in micrograms.

    Raises:
        ClearanceError: a count below zero, or a difference without an explanation.
    """

    run: str
    recorded: int
    counted: int
    explanation: Explanation | None = None
    net_ug: int = 0

    def __post_init__(self) -> None:
        if self.counted < 0:
            raise ClearanceError(f"{self.counted} bags cannot be counted: give 0 or more")
        if self.difference and self.explanation is None:
            more = "more" if self.difference > 0 else "fewer"
            raise ClearanceError(
                f"{abs(self.difference)} bags {more} than recorded: count again, or say why"
            )

    @property
    def difference(self) -> int:
        """Bags counted less bags recorded."""
        return self.counted - self.recorded


def reconciled_fact(uid: str, counted: Reconciliation) -> Fact:
    """The signature under a count."""
    explanation = counted.explanation if counted.difference else None
    return Fact(
        EntryKind.GATE,
        uid,
        str(Gate.RECONCILED),
        "signed" if explanation is None else "signed with a difference",
        counted.run,
        {
            "recorded": counted.recorded,
            "counted": counted.counted,
            "difference": counted.difference,
            "explanation": None if explanation is None else str(explanation),
            "net_ug": counted.net_ug,
        },
    )


def cleared_fact(uid: str, before: str, seen: Mapping[Point, bool]) -> Fact:
    """The signature under a clear line.

    Args:
        uid: of the fact.
        before: id of the run before, or :data:`FIRST`.
        seen: each point, and whether it holds.

    Raises:
        ClearanceError: a point is open.
    """
    open_points = [point for point in Point if not seen.get(point, False)]
    if open_points:
        raise ClearanceError(f"not clear yet: {open_points[0]}")
    run = "" if before == FIRST else before
    points: list[Value] = [str(point) for point in Point]
    details: dict[str, Value] = {"before": before, "points": points}
    return Fact(EntryKind.GATE, uid, str(Gate.CLEARED), "signed", run, details)


def gate_of(record: FactRecord) -> tuple[Gate, str] | None:
    """The gate a fact signs, and the run before; None where it signs neither."""
    fact = record.fact
    if fact.kind is not EntryKind.GATE or fact.subject not in tuple(Gate):
        return None
    gate = Gate(fact.subject)
    if gate is Gate.RECONCILED:
        return gate, fact.run
    return gate, str(fact.details["before"])
