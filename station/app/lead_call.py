"""The packer's CALL LEAD on record: who called, when, and in which run."""

from __future__ import annotations

from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.rights import STATION
from station.line.ports import Clock
from station.line.state import Intents, LineState

LEAD = "lead"


class LeadCall:
    """Records each call; the screen has shown it already, so nobody waits for the record.

    Args:
        intents: takes the entry.
        clock: tells the time.
        line: short code of the line.
    """

    def __init__(self, intents: Intents, clock: Clock, line: str) -> None:
        self._intents, self._clock, self._line = intents, clock, line

    def call(self, state: LineState | None) -> None:
        """Record a call by whoever is on the scale; by the station where no run says who."""
        run = None if state is None else state.run
        fact = Fact(
            EntryKind.CALL,
            new_uid(self._clock.now()),
            self._line,
            LEAD,
            "" if run is None else run.id,
        )
        self._intents.enter((fact,), STATION if run is None else run.operator)
