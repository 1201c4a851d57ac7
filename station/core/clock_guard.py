"""What the clock did: steps, sleep, another offset, a start before the newest entry; judged purely.

The wall clock is held against counts that nobody can set: CLOCK_MONOTONIC, which stops in a
suspend, and CLOCK_BOOTTIME, which does not (PEP 418). Dates on labels come from the wall clock, so
a step that is large, or that leads to another day, is suspicious: no bag is taken before a person
confirmed date and time. A change of the offset, as daylight saving makes it, moves no date: those
are calendar days by rule, worked out in the plant's zone from the moment in UTC.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from enum import StrEnum

from station.core.dating import production_day
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.pack import Moment

SUBJECT = "clock"
CONFIRMED = "confirmed"
NOTED = timedelta(seconds=2)
"""A smaller step is the ordinary work of a time service."""
SUSPICIOUS = timedelta(seconds=60)
SLEW = 500
"""Millionths by which a time service may bend the clock without a step (RFC 5905)."""
LONGEST_AWAY = timedelta(days=7)
LONGEST_UNSYNCED = timedelta(hours=24)
FIRST_YEAR = 2026
"""No clock that is right shows an earlier year than that of this software, or 16 years later."""
_YEARS = 15
_NS = 1_000


class Found(StrEnum):
    """What was found about the clock."""

    STEPPED = "stepped"
    SLEPT = "slept"
    OFFSET = "offset changed"
    BACK_DATED = "before the newest entry"
    LONG_AWAY = "long after the newest entry"
    YEAR = "year not believed"
    UNSYNCED = "not synchronised"


class Reason(StrEnum):
    """Why a person confirms date and time."""

    RIGHT_NOW = "looked at another clock: right now"
    SET_RIGHT = "was wrong, is set right"
    ON_PURPOSE = "set on purpose"
    LONG_STOP = "the station stood for long"


class Synced(StrEnum):
    """Whether the system says that its clock follows a time service."""

    YES = "synchronised"
    NO = "not synchronised"
    UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True)
class Reading:
    """All clocks at one moment; ``boot_ns`` counts through sleep, None where there is no such."""

    at: Moment
    boot_ns: int | None = None


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing the clock did.

    Args:
        found: what.
        by: how far, and in which direction.
        suspicious: no bag is taken before somebody confirms date and time.
        words: one clause for people.
    """

    found: Found
    by: timedelta
    suspicious: bool
    words: str


def between(before: Reading, now: Reading, cut_off: time) -> tuple[Finding, ...]:
    """What the clock did between two readings of one running station.

    Args:
        before: the earlier one.
        now: the later one; its monotonic count is not smaller.
        cut_off: wall-clock time at which the production day changes.
    """
    steady = _span(now.at.monotonic_ns - before.at.monotonic_ns)
    slept = timedelta(0)
    if before.boot_ns is not None and now.boot_ns is not None:
        slept = max(slept, _span(now.boot_ns - before.boot_ns) - steady)
    step = now.at.utc - (before.at.utc + steady + slept)
    findings = []
    if slept > NOTED:
        findings.append(Finding(Found.SLEPT, slept, False, f"the machine slept for {said(slept)}"))
    if abs(step) > NOTED + steady * SLEW / 1_000_000:
        findings.append(_stepped(step, now, cut_off))
    if now.at.offset_minutes != before.at.offset_minutes:
        by = timedelta(minutes=now.at.offset_minutes - before.at.offset_minutes)
        words = f"the offset from UTC changed by {said(by)}, as daylight saving does"
        findings.append(Finding(Found.OFFSET, by, False, words))
    return tuple(findings)


def at_start(newest: datetime | None, now: Moment) -> tuple[Finding, ...]:
    """What the clock says of itself when the station starts.

    Args:
        newest: time of the newest journal entry in UTC; None in a new record.
        now: the present moment.
    """
    findings = []
    if not FIRST_YEAR <= now.utc.year <= FIRST_YEAR + _YEARS:
        words = f"the year {now.utc.year} is not believed"
        findings.append(Finding(Found.YEAR, timedelta(0), True, words))
    if newest is None:
        return tuple(findings)
    gone = now.utc - newest
    if gone < -NOTED:
        words = f"the clock is {said(gone)} behind the newest entry of the record"
        findings.append(Finding(Found.BACK_DATED, gone, True, words))
    elif gone > LONGEST_AWAY:
        words = f"the newest entry of the record is {said(gone)} old"
        findings.append(Finding(Found.LONG_AWAY, gone, True, words))
    return tuple(findings)


def unsynced(lasted: timedelta) -> Finding:
    """The finding that nothing keeps the clock right for too long."""
    words = f"no time service has kept the clock right for {said(lasted)}"
    return Finding(Found.UNSYNCED, lasted, True, words)


def _stepped(step: timedelta, now: Reading, cut_off: time) -> Finding:
    was, shows = _days(now.at, -step, cut_off), _days(now.at, timedelta(0), cut_off)
    suspicious = abs(step) > SUSPICIOUS or was != shows
    way = "ahead" if step > timedelta(0) else "back"
    other = "" if was == shows else ", to another day"
    words = f"the clock jumped {way} by {said(step)}{other}"
    return Finding(Found.STEPPED, step, suspicious, words)


def _days(at: Moment, shift: timedelta, cut_off: time) -> tuple[date, date]:
    local = (at.utc + shift + timedelta(minutes=at.offset_minutes)).replace(tzinfo=None)
    return local.date(), production_day(local, cut_off)


def _span(nanoseconds: int) -> timedelta:
    return timedelta(microseconds=nanoseconds // _NS)


def said(by: timedelta) -> str:
    """A span in its two greatest units, without its direction."""
    seconds = round(abs(by).total_seconds())
    units = ((86_400, "d"), (3_600, "h"), (60, "min"), (1, "s"))
    parts: list[str] = []
    for size, name in units:
        count, seconds = divmod(seconds, size)
        if count or parts:
            parts.append(f"{count} {name}")
    return " ".join(parts[:2]) or "0 s"


# --- in the record ----------------------------------------------------------------------------


def finding_fact(finding: Finding, uid: str) -> Fact:
    """The entry that keeps a finding."""
    details: dict[str, Value] = {
        "milliseconds": round(finding.by.total_seconds() * 1000),
        "suspicious": finding.suspicious,
        "words": finding.words,
    }
    return Fact(EntryKind.CLOCK, uid, SUBJECT, str(finding.found), details=details)


def confirmed_fact(open_ones: Sequence[FactRecord], reason: Reason, uid: str) -> Fact:
    """The entry by which a person confirms date and time after findings.

    Raises:
        ValueError: nothing is open.
    """
    if not open_ones:
        raise ValueError("nothing about the clock is open")
    findings: list[Value] = [one.fact.uid for one in open_ones]
    details: dict[str, Value] = {"findings": findings, "reason": str(reason)}
    return Fact(EntryKind.CLOCK, uid, SUBJECT, CONFIRMED, details=details)


def not_confirmed(records: Sequence[FactRecord]) -> tuple[FactRecord, ...]:
    """Suspicious findings that nobody confirmed yet, in order."""
    confirmed: set[object] = set()
    for one in records:
        named = one.fact.details.get("findings")
        if one.fact.kind is EntryKind.CLOCK and isinstance(named, list):
            confirmed.update(uid for uid in named if isinstance(uid, str))
    return tuple(
        one
        for one in records
        if one.fact.kind is EntryKind.CLOCK
        and one.fact.details.get("suspicious") is True
        and one.fact.uid not in confirmed
    )
