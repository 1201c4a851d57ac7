"""Alarms: a short list of what needs somebody now, each with one answer; all else is an event.

What asks for nothing is no alarm, and each row here says what to do about it. Priorities are three,
and the highest is rare (ANSI/ISA-18.2 as its public summaries have it; the list is common
practice). What closes the line cannot be put off; the rest a lead may shelve for a while.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from enum import IntEnum, StrEnum

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind

SHELVES_MINUTES = (15, 30, 60)
"""How long an alarm may be shelved; longer than a check may be late helps nobody."""


class Priority(IntEnum):
    """How soon somebody must answer; the greater comes first."""

    LOW = 1
    """Plan it."""
    MEDIUM = 2
    """Do it at the next bag."""
    HIGH = 3
    """Stop and call the lead; no bag is taken."""


class AlarmKind(StrEnum):
    """What is alarmed, in words for a screen."""

    STOPPED = "the line stopped"
    CHECK_FAILED = "a check failed"
    MISMATCH = "a label does not match"
    HELD_LOT = "a held lot is on the line"
    CLOCK = "date or time is in doubt"
    NO_READING = "no reading with a bag on the pan"
    OVERDUE = "a check is overdue"
    MEAN_LOW = "the mean is below nominal"
    LOT_OVERRUN = "a lot should be empty"
    OVERLAP = "two lots overlap for long"
    RESIDUE = "the empty pan does not show zero"
    DISK = "the disk fills up"
    PRINTER = "the printer needs somebody"
    SOON = "a check is due soon"
    ROLL_LOW = "the label roll ends soon"
    LOT_LOW = "a lot ends soon"
    SYNC_LATE = "the centre is not reached"


@dataclass(frozen=True, slots=True)
class AlarmRule:
    """One row of the list.

    Args:
        priority: how soon.
        answer: what to do, verb first.
        after: it must hold so long before it is raised, so that nothing rings for a moment.
    """

    priority: Priority
    answer: str
    after: timedelta


_SOON, _WHILE = timedelta(seconds=1), timedelta(seconds=5)
RULES: Mapping[AlarmKind, AlarmRule] = {
    AlarmKind.STOPPED: AlarmRule(Priority.HIGH, "look at the bag and its label, then GO ON", _SOON),
    AlarmKind.CHECK_FAILED: AlarmRule(Priority.HIGH, "put it right, then check again", _SOON),
    AlarmKind.MISMATCH: AlarmRule(Priority.HIGH, "compare the label, then clear the scan", _SOON),
    AlarmKind.HELD_LOT: AlarmRule(Priority.HIGH, "take the lot off and load another", _SOON),
    AlarmKind.CLOCK: AlarmRule(Priority.HIGH, "look at date and time, then sign", _SOON),
    AlarmKind.NO_READING: AlarmRule(Priority.HIGH, "look at the scale's cable and power", _SOON),
    AlarmKind.OVERDUE: AlarmRule(Priority.MEDIUM, "make the check", _WHILE),
    AlarmKind.MEAN_LOW: AlarmRule(Priority.MEDIUM, "fill a little more, look at NUMBERS", _WHILE),
    AlarmKind.LOT_OVERRUN: AlarmRule(Priority.MEDIUM, "say which lot is on the line", _WHILE),
    AlarmKind.OVERLAP: AlarmRule(Priority.MEDIUM, "say which lot is empty", _WHILE),
    AlarmKind.RESIDUE: AlarmRule(Priority.MEDIUM, "wipe the pan, then zero the scale", _WHILE),
    AlarmKind.DISK: AlarmRule(Priority.MEDIUM, "take old files off the disk", _WHILE),
    AlarmKind.PRINTER: AlarmRule(Priority.MEDIUM, "look at the printer", _WHILE),
    AlarmKind.SOON: AlarmRule(Priority.LOW, "plan the check", _WHILE),
    AlarmKind.ROLL_LOW: AlarmRule(Priority.LOW, "fetch the next roll", _WHILE),
    AlarmKind.LOT_LOW: AlarmRule(Priority.LOW, "fetch the next lot", _WHILE),
    AlarmKind.SYNC_LATE: AlarmRule(Priority.LOW, "tell maintenance", _WHILE),
}


class AlarmStep(StrEnum):
    """What befalls an alarm."""

    RAISED = "raised"
    OVER = "over"
    ACKNOWLEDGED = "acknowledged"
    SHELVED = "shelved"


@dataclass(frozen=True, slots=True)
class Alarm:
    """One alarm that stands.

    Args:
        uid: of the entry that raised it.
        kind: what it is.
        words: what exactly, in one sentence.
        since: when it was raised, in UTC.
        acknowledged: id of whoever has seen it; empty while nobody has.
        shelved_until: until when it is put off; None while it is not.
    """

    uid: str
    kind: AlarmKind
    words: str
    since: datetime
    acknowledged: str = ""
    shelved_until: datetime | None = None

    @property
    def rule(self) -> AlarmRule:
        """Its row of the list."""
        return RULES[self.kind]

    def shelved(self, now: datetime) -> bool:
        """Whether it is put off at a time."""
        return self.shelved_until is not None and now < self.shelved_until

    def rings(self, now: datetime) -> bool:
        """Whether it must still be heard: high, and nobody has seen it."""
        high = self.rule.priority is Priority.HIGH
        return high and not self.acknowledged and not self.shelved(now)


def raised_fact(uid: str, kind: AlarmKind, words: str, run: str) -> Fact:
    """The entry that an alarm began."""
    details = {"priority": RULES[kind].priority.name.lower(), "words": words}
    return Fact(EntryKind.ALARM, uid, kind.name.lower(), AlarmStep.RAISED, run, dict(details))


def over_fact(uid: str, alarm: Alarm, run: str) -> Fact:
    """The entry that its cause is gone."""
    return _about(uid, alarm, AlarmStep.OVER, run)


def acknowledged_fact(uid: str, alarm: Alarm, run: str) -> Fact:
    """The entry that somebody has seen it."""
    return _about(uid, alarm, AlarmStep.ACKNOWLEDGED, run)


def shelved_fact(uid: str, alarm: Alarm, minutes: int, run: str) -> Fact:
    """The entry that it is put off.

    Raises:
        ValueError: it closes the line, or is put off for another time than allowed.
    """
    if alarm.rule.priority is Priority.HIGH:
        raise ValueError(f"this cannot be shelved, {alarm.kind}: {alarm.rule.answer}")
    if minutes not in SHELVES_MINUTES:
        allowed = ", ".join(map(str, SHELVES_MINUTES))
        raise ValueError(f"an alarm is not shelved for {minutes} minutes: allowed are {allowed}")
    fact = _about(uid, alarm, AlarmStep.SHELVED, run)
    return replace(fact, details={**fact.details, "minutes": minutes})


def alarms_after(alarms: tuple[Alarm, ...], record: FactRecord) -> tuple[Alarm, ...]:
    """The alarms that stand after an entry, the gravest first; other kinds change nothing."""
    fact = record.fact
    if fact.kind is not EntryKind.ALARM:
        return alarms
    if fact.result == AlarmStep.RAISED:
        kind = AlarmKind[fact.subject.upper()]
        new = Alarm(fact.uid, kind, str(fact.details["words"]), record.at.utc)
        return tuple(sorted((*alarms, new), key=lambda one: (-one.rule.priority, one.since)))
    about = str(fact.details["alarm"])
    if fact.result == AlarmStep.OVER:
        return tuple(one for one in alarms if one.uid != about)
    return tuple(_answered(one, record) if one.uid == about else one for one in alarms)


def _answered(alarm: Alarm, record: FactRecord) -> Alarm:
    if record.fact.result == AlarmStep.ACKNOWLEDGED:
        return replace(alarm, acknowledged=record.who)
    minutes = int(str(record.fact.details["minutes"]))
    # When the time is over it must be seen anew.
    until = record.at.utc + timedelta(minutes=minutes)
    return replace(alarm, acknowledged="", shelved_until=until)


def _about(uid: str, alarm: Alarm, step: AlarmStep, run: str) -> Fact:
    return Fact(EntryKind.ALARM, uid, alarm.kind.name.lower(), step, run, {"alarm": alarm.uid})
