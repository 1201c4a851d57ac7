"""The first-off as an entry of the record: two people looked at the label before any bag had it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind

APPROVED = "approved"
REFUSED = "refused"


class Refusal(StrEnum):
    """Why a label is refused."""

    TEXT = "wrong text"
    DATE = "wrong date"
    LOTS = "wrong lots"
    PRINT = "poor print"


class FirstOffError(ValueError):
    """An approval that does not count; the message says why."""


@dataclass(frozen=True, slots=True)
class FirstOff:
    """What two people said about the specimen of a run's label.

    Args:
        run: id of the run.
        product: article code of its product.
        version: version of the product.
        sha256: digest of the specimen's PDF, hexadecimal.
        pieces: pieces of paper a label takes.
        lead: id of the first person.
        second: id of the other.
        refusal: why the label is refused; empty where it is approved.
    """

    run: str
    product: str
    version: int
    sha256: str
    pieces: int
    lead: str
    second: str
    refusal: str = ""

    def __post_init__(self) -> None:
        if not self.lead:
            raise FirstOffError("the lead signs first")
        if not self.refusal and (not self.second or self.second == self.lead):
            raise FirstOffError("two different people approve a label: the second one is missing")
        if len(self.sha256) != 64 or self.pieces < 1:
            raise FirstOffError("the specimen was not drawn: open the page again")


def first_off_fact(first_off: FirstOff, uid: str) -> Fact:
    """The entry that keeps a first-off."""
    return Fact(
        kind=EntryKind.FIRST_OFF,
        uid=uid,
        subject=first_off.product,
        result=REFUSED if first_off.refusal else APPROVED,
        run=first_off.run,
        details={
            "version": first_off.version,
            "sha256": first_off.sha256,
            "pieces": first_off.pieces,
            "lead": first_off.lead,
            "second": first_off.second,
            "refusal": first_off.refusal,
        },
    )


def first_off_of(record: FactRecord) -> FirstOff:
    """The first-off of its entry."""
    fact, details = record.fact, record.fact.details
    version, pieces = details["version"], details["pieces"]
    assert isinstance(version, int), "the entry was made here"
    assert isinstance(pieces, int), "the entry was made here"
    return FirstOff(
        run=fact.run,
        product=fact.subject,
        version=version,
        sha256=str(details["sha256"]),
        pieces=pieces,
        lead=str(details["lead"]),
        second=str(details["second"]),
        refusal=str(details["refusal"]),
    )
