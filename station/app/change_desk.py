"""The desk of a changeover: makes the facts of counts, clear lines and stops."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from station.core.clearance import (
    Explanation,
    Gate,
    Point,
    Reconciliation,
    cleared_fact,
    reconciled_fact,
)
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.pauses import Look, Pause, Reason, resume_fact, stop_fact
from station.line.clearance_duty import ClearanceDuty
from station.line.pause_duty import PauseDuty
from station.line.ports import Clock
from station.screens.change_source import Before
from station.store.run_counts import count_run


class ChangeDesk:
    """Implements station.screens.change_source.ChangeSource.

    Args:
        line: short code of the line.
        home: folder of the record.
        clock: tells the time.
        clearance: knows the run before.
        pauses: knows whether the line stands.
    """

    def __init__(
        self,
        line: str,
        home: Path,
        clock: Clock,
        clearance: ClearanceDuty,
        pauses: PauseDuty,
    ) -> None:
        self._line, self._home, self._clock = line, home, clock
        self._clearance, self._pauses = clearance, pauses

    @property
    def wanting(self) -> tuple[Gate, ...]:
        """What is to be signed, in order."""
        return self._clearance.wanting(self._before())

    @property
    def standing(self) -> Pause | None:
        """The stop that goes on."""
        return self._pauses.standing

    def before(self) -> Before | None:
        """The run before, from the record."""
        found = count_run(self._home, self._before())
        return (
            None if found is None else Before(found.name, found.blend_lot, found.bags, found.net_ug)
        )

    def counted(self, bags: int, explanation: Explanation | None) -> Fact:
        """The signature under a count."""
        found = count_run(self._home, self._before())
        if found is None:
            raise ValueError("there is no run before: nothing is to be counted")
        counted = Reconciliation(found.uid, found.bags, bags, explanation, found.net_ug)
        return reconciled_fact(self._new_id(), counted)

    def cleared(self, seen: Mapping[Point, bool]) -> Fact:
        """The signature under a clear line."""
        return cleared_fact(self._new_id(), self._before(), seen)

    def stop(self, reason: Reason) -> Fact:
        """The entry that the line stands."""
        return stop_fact(self._new_id(), self._line, self._clearance.run, reason)

    def go_on(self, looked: frozenset[Look]) -> Fact:
        """The entry that the line goes on.

        Raises:
            ValueError: something was not looked at, or the line does not stand.
        """
        standing = self._pauses.standing
        if standing is None:
            raise ValueError("the line does not stand")
        run = self._clearance.run
        return resume_fact(self._new_id(), self._line, run, standing, looked)

    def _before(self) -> str:
        """The run packed last; while one is open, the one packed before it."""
        last = count_run(self._home, self._clearance.last)
        is_open = last is not None and last.open and last.uid == self._clearance.run
        if is_open or self._clearance.last == self._clearance.before:
            return self._clearance.before
        return self._clearance.last

    def _new_id(self) -> str:
        return new_uid(self._clock.now())
