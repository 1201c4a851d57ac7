"""The review of a production day by QA, signed: what was open, and that somebody looked."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from station.core.facts import Fact, FactRecord
from station.core.inbox_items import Item
from station.core.journal import EntryKind, Value

REVIEWED = "reviewed"
WITH_EXCEPTIONS = "reviewed with exceptions"
_MOST = 200


class ReviewError(ValueError):
    """A review that cannot be signed; the message says why."""


@dataclass(frozen=True, slots=True)
class DayReview:
    """What was reviewed.

    Args:
        day: production day.
        open: what was open when it was signed, gravest first, in words.
        remark: why it is signed all the same; empty where nothing is open.
        packs, rejects: bags and rejects of the day.
        happened: exceptions of the day, settled or not, in words.
    """

    day: date
    open: tuple[str, ...]
    remark: str
    packs: int
    rejects: int
    happened: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class DaySeen:
    """What QA sees of a day.

    Args:
        items: everything open in the record, gravest first.
        review: what would be signed for the day, without a remark.
        story: exceptions of the day, settled or not, oldest first.
        signed: the last review of the day, or None.
        gone: what was purged of the day, in words; empty for nothing.
    """

    items: tuple[Item, ...]
    review: DayReview
    story: tuple[Item, ...]
    signed: FactRecord | None
    gone: str = ""


def review_fact(review: DayReview, uid: str) -> Fact:
    """The entry that keeps a review.

    Raises:
        ReviewError: something is open and there is no remark.
    """
    if review.open and not review.remark.strip():
        raise ReviewError(
            f"{len(review.open)} things are open, first: {review.open[0]}. Settle them, or write "
            "why the day is signed all the same"
        )
    words: list[Value] = list(review.open[:_MOST])
    story: list[Value] = list(review.happened[:_MOST])
    return Fact(
        EntryKind.REVIEW,
        uid,
        review.day.isoformat(),
        WITH_EXCEPTIONS if review.open else REVIEWED,
        details={
            "open": words,
            "happened": story,
            "remark": review.remark.strip(),
            "packs": review.packs,
            "rejects": review.rejects,
        },
    )


def review_of(record: FactRecord) -> DayReview:
    """The review of its entry."""
    details: Any = record.fact.details
    return DayReview(
        date.fromisoformat(record.fact.subject),
        tuple(details["open"]),
        details["remark"],
        details["packs"],
        details["rejects"],
        tuple(details["happened"]),
    )


def words_of(items: Sequence[str]) -> str:
    """Open things in one sentence, the first few by name."""
    shown = "; ".join(items[:3])
    more = len(items) - 3
    return shown if more <= 0 else f"{shown}; and {more} more"
