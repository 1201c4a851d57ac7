"""A scan of an applied label as an entry of the record: it says what the record says, or not."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value

EQUAL = "equal"
DIFFERS = "differs"
CLEARED = "cleared"

_IDENTIFIER = re.compile(r"\][A-Za-z][0-9A-Za-z]")


class ScanError(ValueError):
    """A scan that says nothing about a label; the message says what to do."""


class Clearing(StrEnum):
    """Why the line goes on after a label that said something else."""

    OLD_LABEL = "label of another run taken out"
    ROLL = "wrong roll taken out"
    SCANNER = "another code was scanned"
    BAGS = "bags since then looked at"


class ScanTrigger(StrEnum):
    """Why a label was scanned."""

    FIRST = "first"
    HOURLY = "hourly"
    LAST = "last"
    ROLL_CHANGE = "roll change"


@dataclass(frozen=True, slots=True)
class ScanBack:
    """One scan.

    Args:
        serial: of the bag whose label was scanned.
        scanned: what the scanner sent: symbology identifier (ISO/IEC 15424), then the data.
        expected: what the record says its bar codes send, each in the same form.
        trigger: why it was scanned.
    """

    serial: str
    scanned: str
    expected: tuple[str, ...]
    trigger: ScanTrigger

    @property
    def equal(self) -> bool:
        """Whether the scan is one of the bar codes of the label."""
        return self.scanned in self.expected


def checked_scan(text: str) -> str:
    """Return what a scanner sent, without the line end.

    Raises:
        ScanError: it does not begin with a symbology identifier, so that bar codes of another kind
            with the same data could not be told apart.
    """
    scanned = text.strip("\r\n ")
    if not _IDENTIFIER.match(scanned):
        raise ScanError(
            "the scan does not begin with a symbology identifier such as ]C1 or ]d2: set the "
            "scanner to send it"
        )
    return scanned


def scan_fact(scan: ScanBack, uid: str, run: str) -> Fact:
    """The entry that keeps a scan."""
    return Fact(
        kind=EntryKind.SCAN_BACK,
        uid=uid,
        subject=scan.serial,
        result=EQUAL if scan.equal else DIFFERS,
        run=run,
        details={
            "scanned": scan.scanned,
            "expected": list(scan.expected),
            "trigger": str(scan.trigger),
        },
    )


def scan_of(record: FactRecord) -> ScanBack:
    """The scan of its entry."""
    details = record.fact.details
    expected = details["expected"]
    assert isinstance(expected, list), "the entry was made here"
    return ScanBack(
        serial=record.fact.subject,
        scanned=str(details["scanned"]),
        expected=tuple(map(str, expected)),
        trigger=ScanTrigger(str(details["trigger"])),
    )


def cleared_fact(mismatch: FactRecord, reason: str, uid: str) -> Fact:
    """The entry by which a lead goes on after a label that said something else.

    Raises:
        ScanError: there is no reason.
    """
    if not reason.strip():
        raise ScanError("going on after a mismatch needs a reason")
    details: dict[str, Value] = {"scan": mismatch.fact.uid, "reason": reason.strip()}
    fact = mismatch.fact
    return Fact(EntryKind.SCAN_BACK, uid, fact.subject, CLEARED, fact.run, details)
