"""Settings that changed between two starts, and software that did: what was, what is, who signed.

Each settings file has entries of its own: the first with all its values, each later one with what
changed in words. Two counters go up and never down (the event counters of guides on sealing by
audit trail; from memory): *configuration* by one for each start that finds a change, *calibration*
by one where a value that belongs to the scale changed. They stand in the entries themselves, so
they can be set back no more than the journal can.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value

SOFTWARE = "software"
FIRST, CHANGED, TAKEN_OVER = "first", "changed", "taken over"
_CALIBRATION = re.compile(r"station\.toml (scale\.(?!port\.)|timing\.)")
"""What of the settings belongs to the scale: what it is, what it can, when it counts as steady."""
_SECRET = re.compile(r"pass(word|phrase|wd)|secret|token", re.IGNORECASE)
_USER_INFO = re.compile(r"(?<=://)[^/@\s]+@")
_NAMES = ("id", "code", "component", "atmosphere", "name")
_MOST = 400
"""Changes named in one entry; a file that changed more is a new one, whose hash stands there."""


@dataclass(frozen=True, slots=True)
class Counters:
    """How often settings changed, and those of the scale among them."""

    configuration: int = 0
    calibration: int = 0


@dataclass(frozen=True, slots=True)
class Change:
    """One value that changed; None stands for no value."""

    key: str
    old: str | None
    new: str | None

    def __str__(self) -> str:
        return f"{self.key}: {_said(self.old)} → {_said(self.new)}"


@dataclass(frozen=True, slots=True)
class SettingsFile:
    """A settings file as it was read.

    Args:
        name: such as ``station.toml``.
        sha256: of its bytes, 64 hex digits.
        values: by key; see :func:`flat`.
    """

    name: str
    sha256: str
    values: Mapping[str, str]


def flat(table: Mapping[str, Any], before: str = "") -> dict[str, str]:
    """The values of a table by their whole key, such as ``product[SLAW-340].target``.

    A row is named by its id or code, so that moving it changes nothing. What looks like a secret
    is not told.
    """
    found: dict[str, str] = {}
    for name, value in table.items():
        key = f"{before}.{name}" if before else name
        if isinstance(value, Mapping):
            found |= flat(value, key)
        elif isinstance(value, list) and value and all(isinstance(one, Mapping) for one in value):
            for place, row in enumerate(value, start=1):
                named = next((str(row[one]) for one in _NAMES if one in row), str(place))
                found |= flat(row, f"{key}[{named}]")
        elif _SECRET.search(name):
            found[key] = "(not told)"
        else:
            found[key] = _USER_INFO.sub("", str(value))
    return found


def changes(before: Mapping[str, str], after: Mapping[str, str]) -> tuple[Change, ...]:
    """What changed, by key."""
    keys = sorted({*before, *after})
    return tuple(
        Change(key, before.get(key), after.get(key))
        for key in keys
        if before.get(key) != after.get(key)
    )


def counted(before: Counters, found: Mapping[str, Sequence[Change]]) -> Counters:
    """The counters after a start.

    Args:
        before: those of the start before.
        found: what changed, by file; files without a change may be missing.
    """
    named = [f"{file} {one.key}" for file, each in found.items() for one in each]
    scale = any(_CALIBRATION.match(name) for name in named)
    return Counters(before.configuration + bool(named), before.calibration + scale)


def settings_fact(
    file: SettingsFile, before: SettingsFile | None, counters: Counters, uid: str
) -> Fact:
    """The entry of a file that is new or changed.

    Args:
        file: as it is.
        before: as it was; None for the first time.
        counters: after the change.
        uid: UUID version 7 as text.
    """
    found = () if before is None else changes(before.values, file.values)
    told: list[Value] = [[one.key, one.old, one.new] for one in found[:_MOST]]
    values: list[Value] = [[key, value] for key, value in sorted(file.values.items())]
    details: dict[str, Value] = {
        "sha256": file.sha256,
        "before": "" if before is None else before.sha256,
        "changes": told,
        "not_told": max(0, len(found) - _MOST),
        "values": values,
        "configuration": counters.configuration,
        "calibration": counters.calibration,
    }
    result = FIRST if before is None else CHANGED
    return Fact(EntryKind.SETTING, uid, file.name, result, details=details)


def software_fact(new: str, old: str, uid: str) -> Fact:
    """The entry that the software is another, or is there for the first time.

    Args:
        new: version and hash.
        old: those before; empty for the first time.
        uid: UUID version 7 as text.
    """
    details: dict[str, Value] = {"old": old, "new": new}
    return Fact(EntryKind.SETTING, uid, SOFTWARE, CHANGED if old else FIRST, details=details)


def taken_over_fact(open_ones: Sequence[FactRecord], run: str, why: str, uid: str) -> Fact:
    """The entry by which a person takes changes over.

    Args:
        open_ones: entries of the changes, one or more.
        run: id of the run it was signed with; empty for none.
        why: the reason.
        uid: UUID version 7 as text.
    """
    subject = ", ".join(dict.fromkeys(one.fact.subject for one in open_ones)) or "settings"
    details: dict[str, Value] = {"changes": [one.fact.uid for one in open_ones], "why": why}
    return Fact(EntryKind.SETTING, uid, subject, TAKEN_OVER, run, details)


def is_change(fact: Fact) -> bool:
    """Whether an entry tells of settings or software that changed, and waits for a person."""
    tells = "sha256" in fact.details or fact.subject == SOFTWARE
    return fact.kind is EntryKind.SETTING and fact.result == CHANGED and tells


def file_of(record: FactRecord) -> SettingsFile:
    """The file of its entry."""
    details = record.fact.details
    values = details["values"]
    assert isinstance(values, list)
    pairs = [pair for pair in values if isinstance(pair, list)]
    return SettingsFile(
        record.fact.subject,
        str(details["sha256"]),
        {str(key): str(value) for key, value in pairs},
    )


def changes_of(fact: Fact) -> tuple[Change, ...]:
    """The changes of an entry, settings or software."""
    if fact.subject == SOFTWARE:
        return (Change(SOFTWARE, str(fact.details["old"]), str(fact.details["new"])),)
    told = fact.details.get("changes", [])
    assert isinstance(told, list)
    rows = [row for row in told if isinstance(row, list)]
    return tuple(Change(str(key), _or_none(old), _or_none(new)) for key, old, new in rows)


def counters_of(records: Iterable[FactRecord]) -> Counters:
    """The greatest counters that entries hold."""
    found = [one.fact.details for one in records if "configuration" in one.fact.details]
    return Counters(
        max((_number(one["configuration"]) for one in found), default=0),
        max((_number(one["calibration"]) for one in found), default=0),
    )


def not_taken_over(records: Sequence[FactRecord]) -> tuple[FactRecord, ...]:
    """Changes that nobody signed yet, in order."""
    signed: set[object] = set()
    for one in records:
        named = one.fact.details.get("changes")
        if one.fact.result == TAKEN_OVER and isinstance(named, list):
            signed.update(uid for uid in named if isinstance(uid, str))
    return tuple(one for one in records if is_change(one.fact) and one.fact.uid not in signed)


def _number(value: Value) -> int:
    return value if isinstance(value, int) else 0


def _or_none(value: Value) -> str | None:
    return None if value is None else str(value)


def _said(value: str | None) -> str:
    return "nothing" if value is None else value or "empty"
