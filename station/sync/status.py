"""How it stands with the centre, as a person may be told it."""

from __future__ import annotations

import json
import os
from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from enum import StrEnum
from pathlib import Path


class SyncState(StrEnum):
    """What the way to the centre is doing."""

    STARTING = "starting"
    LEVEL = "level"
    """Everything is at the centre."""
    SENDING = "sending"
    WAITING = "waiting"
    """The centre cannot be reached; the next try comes by itself."""
    CONFLICT = "conflict"
    """The centre has other entries of this station: somebody must look."""


@dataclass(frozen=True, slots=True)
class SyncStatus:
    """One moment of it.

    Args:
        state: what is going on.
        words: why, where it is not well.
        backlog: entries that are not at the centre.
        oldest: when the oldest of them was made, in UTC; None without any.
        contact: when the centre answered last, in UTC; None if never.
        quarantined: entries of this station in quarantine that nobody has settled.
        alarms: what needs somebody whatever the state; each one sentence.
    """

    state: SyncState = SyncState.STARTING
    words: str = ""
    backlog: int = 0
    oldest: datetime | None = None
    contact: datetime | None = None
    quarantined: int = 0
    alarms: tuple[str, ...] = ()

    def age(self, now: datetime) -> timedelta:
        """How long the oldest entry has been waiting."""
        return timedelta() if self.oldest is None else max(timedelta(), now - self.oldest)

    def needs(self, now: datetime, patience: timedelta) -> str:
        """What somebody must do, in one sentence; empty where nobody has to.

        Args:
            now: in UTC.
            patience: how old the backlog may grow before somebody is asked.
        """
        if self.state is SyncState.CONFLICT:
            return f"the centre: {self.words}: call maintenance"
        if self.alarms:
            return f"the centre: {self.alarms[0]}"
        age = self.age(now)
        if age > patience:
            return (
                f"nothing reached the centre for {_told(age)}: {self.words or 'call maintenance'}"
            )
        return ""


def _told(age: timedelta) -> str:
    hours = int(age.total_seconds() // 3600)
    return f"{hours // 24} days" if hours >= 72 else f"{hours} hours"


@dataclass(frozen=True, slots=True)
class Remembered:
    """What the station remembers of the centre; a hint for people, the centre's word counts.

    Args:
        marks: seq the centre had, by epoch.
        contact: when it answered last.
    """

    marks: Mapping[int, int] = field(default_factory=dict)
    contact: datetime | None = None


def remember(home: Path, what: Remembered) -> None:
    """Write it down, best effort."""
    at = None if what.contact is None else what.contact.isoformat()
    text = json.dumps({"contact": at, "marks": {str(k): v for k, v in what.marks.items()}})
    path = _path(home)
    unfinished = path.with_suffix(".unfinished")
    with suppress(OSError):
        with unfinished.open("w", encoding="ascii") as file:
            file.write(text + "\n")
            file.flush()
            os.fsync(file.fileno())
        unfinished.replace(path)


def remembered(home: Path) -> Remembered:
    """What was written down last, or nothing."""
    try:
        found = json.loads(_path(home).read_text(encoding="ascii"))
        at = found["contact"]
        marks = {int(epoch): int(seq) for epoch, seq in found["marks"].items()}
        return Remembered(marks, None if at is None else datetime.fromisoformat(at))
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return Remembered()


def _path(home: Path) -> Path:
    return home / "station.centre"
