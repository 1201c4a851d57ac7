"""The duty to say that a line may go on after it stood."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.pack import PackRecord
from station.core.pauses import Pause, pauses_of
from station.core.run import Run
from station.line.state import Notice


class PauseDuty:
    """Implements station.line.duties.Duty; a stop outlives a restart of the station.

    Args:
        past: stops that have not ended, oldest first.
    """

    name = "STOP"

    def __init__(self, past: Iterable[FactRecord] = ()) -> None:
        self._facts: tuple[FactRecord, ...] = ()
        self.standing: Pause | None = None
        """The stop that goes on, or None."""
        for record in past:
            self.noted(record)

    def opened(self, run: Run, at: datetime) -> None:
        """A stop is the line's, whatever run is open."""

    def packed(self, record: PackRecord) -> None:
        """Bags change nothing."""

    def noted(self, record: FactRecord) -> None:
        """See stops and their ends."""
        if record.fact.kind is EntryKind.PAUSE:
            self._facts = (*self._facts, record)
            standing = [pause for pause in pauses_of(self._facts) if pause.ended is None]
            self.standing = standing[-1] if standing else None
            if not standing:
                self._facts = ()

    def closing(self, now: datetime) -> str:
        """Why no bag is taken."""
        if self.standing is None:
            return ""
        return f"the line stands, {self.standing.reason}: RUN, then CHANGE (F8) to go on"

    def due(self, now: datetime) -> Notice | None:
        """Nothing is due."""
        return None
