"""The duty to count the run before and to clear the line before the next one takes a bag."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from station.core.clearance import FIRST, Gate, gate_of
from station.core.facts import FactRecord
from station.core.pack import PackRecord
from station.core.run import Run
from station.line.state import Notice

_WHERE = "RUN, then CHANGE (F8)"


class ClearanceDuty:
    """Implements station.line.duties.Duty.

    Args:
        before: id of the last run with bags on record; None where there is none.
        past: what was signed after that run, oldest first.
    """

    name = "LINE"

    def __init__(self, before: str | None, past: Iterable[FactRecord] = ()) -> None:
        self._signed: set[tuple[Gate, str]] = set()
        self._last = before or FIRST  # the last run that packed a bag
        self._before = self._last
        self._run = ""
        for record in past:
            self.noted(record)

    @property
    def last(self) -> str:
        """Id of the run packed last, or FIRST."""
        return self._last

    @property
    def before(self) -> str:
        """Id of the run packed before the one opened last, or FIRST."""
        return self._before

    @property
    def run(self) -> str:
        """Id of the run opened last; empty before the first."""
        return self._run

    def opened(self, run: Run, at: datetime) -> None:
        """What was packed last is the run before."""
        self._before, self._run = self._last, run.id

    def packed(self, record: PackRecord) -> None:
        """A run counts from its first bag on."""
        self._last = record.draft.run

    def noted(self, record: FactRecord) -> None:
        """See signatures."""
        signed = gate_of(record)
        if signed is not None:
            self._signed.add(signed)

    def wanting(self, before: str) -> tuple[Gate, ...]:
        """What is to be signed after a run before the next bag, in order."""
        gates = (Gate.CLEARED,) if before == FIRST else (Gate.RECONCILED, Gate.CLEARED)
        return tuple(gate for gate in gates if (gate, before) not in self._signed)

    def closing(self, now: datetime) -> str:
        """Why no bag is taken yet."""
        if self._last == self._run:
            return ""  # a bag was taken: the line was clear when the run began
        wanting = self.wanting(self._before)
        if not wanting:
            return ""
        if wanting[0] is Gate.RECONCILED:
            return f"count the bags of the run before: {_WHERE}"
        return f"clear the line and sign for it: {_WHERE}"

    def due(self, now: datetime) -> Notice | None:
        """Nothing is due while bags are packed."""
        return None
