"""What must be done in time, or the line takes no bags: checks, tares, labels, lots.

A duty sees the run open, every bag and every recorded fact, and says when asked whether it closes
acceptance and what is due next. The line asks all of them together; none knows the others.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Protocol, runtime_checkable

from station.core.facts import FactRecord
from station.core.pack import PackRecord
from station.core.run import Run
from station.line.events import DutiesSeen
from station.line.state import Notice, Seal


class Duty(Protocol):
    """One kind of thing to be done in time. Called on the line's thread only."""

    @property
    def name(self) -> str:
        """One short word for its seal; empty where it shows none."""
        ...

    def opened(self, run: Run, at: datetime) -> None:
        """A run was opened; what must be done at its start is due from now on."""
        ...

    def packed(self, record: PackRecord) -> None:
        """A bag was recorded in the open run."""
        ...

    def noted(self, record: FactRecord) -> None:
        """A fact was recorded, of any kind."""
        ...

    def closing(self, now: datetime) -> str:
        """Why the line takes no bag of the open run now, and what to do; empty when it does."""
        ...

    def due(self, now: datetime) -> Notice | None:
        """What should be done soon, or None."""
        ...


@runtime_checkable
class KnowsWorth(Protocol):
    """A duty that counts bags by what they are worth."""

    def taken_back(self, serial: str) -> None:
        """A bag was set aside after it was recorded."""
        ...


@dataclass(slots=True)
class Duties:
    """All duties of a line, asked together; asked only while a run is open."""

    all: Sequence[Duty] = ()

    def opened(self, run: Run, at: datetime) -> None:
        """Tell every duty that a run was opened."""
        for duty in self.all:
            duty.opened(run, at)

    def packed(self, record: PackRecord) -> None:
        """Tell every duty that a bag was recorded."""
        for duty in self.all:
            duty.packed(record)

    def taken_back(self, serial: str) -> None:
        """Tell those it is about that a recorded bag was set aside."""
        for duty in self.all:
            if isinstance(duty, KnowsWorth):
                duty.taken_back(serial)

    def noted(self, record: FactRecord) -> None:
        """Tell every duty that a fact was recorded."""
        for duty in self.all:
            duty.noted(record)

    def due(self, now: datetime) -> tuple[Notice, ...]:
        """All that should be done soon, the earliest first."""
        notices = [notice for duty in self.all if (notice := duty.due(now)) is not None]
        return tuple(sorted(notices, key=lambda notice: notice.at))

    def seen(self, now: datetime) -> DutiesSeen:
        """What all duties say now."""
        closing = [(duty.name, duty.closing(now)) for duty in self.all]
        return DutiesSeen(
            closing=tuple(words for _, words in closing if words),
            due=self.due(now),
            seals=tuple(Seal(name, words) for name, words in closing if name),
        )
