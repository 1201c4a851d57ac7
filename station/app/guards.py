"""What the station finds out by itself at its start: about settings, software and clock."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from station.config.settings_files import settings_files
from station.core.changed_settings import (
    SOFTWARE,
    Counters,
    SettingsFile,
    changes,
    counted,
    counters_of,
    file_of,
    not_taken_over,
    settings_fact,
    software_fact,
    taken_over_fact,
)
from station.core.clock_guard import Reason, at_start, confirmed_fact, finding_fact
from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.pack import Moment
from station.core.run import Run
from station.line.clock_duty import ClockDuty
from station.line.ports import Clock
from station.software_id import software_id
from station.store.facts import facts

_WHY_WITH_RUN = "taken over with the start of a run"
_NEWEST = 200
"""So many entries are looked at for changes nobody took over and findings nobody confirmed."""


@dataclass(frozen=True, slots=True)
class FoundAtStart:
    """What a start found about settings and software.

    Args:
        facts: to be recorded.
        counters: after it.
    """

    facts: tuple[Fact, ...]
    counters: Counters


def found_at_start(home: Path, folder: Path | None, at: Moment) -> FoundAtStart:
    """Hold settings and software against what the record says of them.

    Args:
        home: folder of the record.
        folder: of the settings; None where they have none.
        at: now.

    Raises:
        EnvironmentFault: a file of the settings, or the record, cannot be read.
    """
    files = () if folder is None else settings_files(folder)
    kept = {file.name: _kept(home, file.name) for file in files}
    records = [one for one in kept.values() if one is not None]
    before: dict[str, SettingsFile] = {one.fact.subject: file_of(one) for one in records}
    moved = [file for file in files if file != before.get(file.name)]
    found = {
        file.name: changes(before[file.name].values, file.values)
        for file in moved
        if file.name in before
    }
    counters = counted(counters_of(records), found)
    made = [settings_fact(one, before.get(one.name), counters, new_uid(at)) for one in moved]
    last = facts(home, (EntryKind.SETTING,), subject=SOFTWARE, newest=1)
    old, new = (str(last[-1].fact.details["new"]) if last else ""), software_words()
    if old != new:
        made.append(software_fact(new, old, new_uid(at)))
    return FoundAtStart(tuple(made), counters)


def software_words() -> str:
    """Version and whole hash of the software, as entries tell it."""
    known = software_id()
    return f"{known.version} {known.digest}"


def clock_at_start(newest: datetime | None, at: Moment) -> tuple[Fact, ...]:
    """What the clock says of itself at the start, as entries."""
    return tuple(finding_fact(one, new_uid(at)) for one in at_start(newest, at))


class Takeover:
    """Changes of settings and software that the lead of the next run signs with its start.

    Args:
        past: entries about settings and software, with those of this start.
    """

    def __init__(self, past: Sequence[FactRecord]) -> None:
        self.open = not_taken_over(past)
        """Changes that nobody signed yet."""

    def with_run(self, run: Run, at: Moment) -> tuple[Fact, ...]:
        """What the lead of a run takes over with it."""
        open_ones, self.open = self.open, ()
        if not open_ones:
            return ()
        return (taken_over_fact(open_ones, run.id, _WHY_WITH_RUN, new_uid(at)),)


class ClockDesk:
    """Implements station.screens.change_source.ClockSource.

    Args:
        duty: knows what is open.
        clock: tells the time.
    """

    def __init__(self, duty: ClockDuty, clock: Clock) -> None:
        self._duty, self._clock = duty, clock

    @property
    def wanting(self) -> str:
        """Why date and time must be confirmed; empty when they need not."""
        return self._duty.wanting

    @property
    def shown(self) -> Moment:
        """What the clock shows."""
        return self._clock.now()

    def confirmed(self, reason: Reason) -> Fact:
        """The entry by which a person confirms date and time.

        Raises:
            ValueError: nothing is open.
        """
        return confirmed_fact(self._duty.open, reason, new_uid(self._clock.now()))


def past_of(home: Path, kind: EntryKind) -> tuple[FactRecord, ...]:
    """The newest entries of a kind."""
    return facts(home, (kind,), newest=_NEWEST)


def _kept(home: Path, name: str) -> FactRecord | None:
    found = facts(home, (EntryKind.SETTING,), subject=name, newest=_NEWEST)
    told = [one for one in found if "sha256" in one.fact.details]
    return told[-1] if told else None
