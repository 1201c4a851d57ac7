"""Duties about labels at the start of a run: no doubt open, a roll in, the first-off signed.

Labels in doubt close acceptance when a run opens and until each is answered for. One that comes
into doubt in a run stops the line once; the lead may go on, and answers before the next run.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable
from datetime import datetime, time, tzinfo

from station.core.checks.first_off import APPROVED, first_off_of
from station.core.checks.rolls import RollStep, is_step
from station.core.dating import first_off_stale
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.pack import PackRecord, Quality
from station.core.run import Run
from station.line.state import Notice

WHERE = "RUN, then LABELS (F5)"


class DoubtDuty:
    """Implements station.line.duties.Duty for labels in doubt.

    Args:
        doubts: asks the record which labels are in doubt now.
    """

    name = ""

    def __init__(self, doubts: Callable[[], Collection[str]]) -> None:
        self._ask = doubts
        self._open: tuple[str, ...] = ()

    def opened(self, run: Run, at: datetime) -> None:
        """What is in doubt now must be answered for before the first bag."""
        self._open = tuple(self._ask())

    def packed(self, record: PackRecord) -> None:
        """Bags of this run do not add to what was open at its start."""

    def noted(self, record: FactRecord) -> None:
        """Facts answer no doubt; label entries do."""

    def closing(self, now: datetime) -> str:
        """Why no bag is taken, while a doubt of the start is open."""
        if self._open:
            now_open = set(self._ask())
            self._open = tuple(serial for serial in self._open if serial in now_open)
        if not self._open:
            return ""
        return f"{len(self._open)} labels in doubt, first {self._open[0]}: answer in {WHERE}"

    def due(self, now: datetime) -> Notice | None:
        """Nothing by a time."""
        return None


class RollDuty:
    """Implements station.line.duties.Duty for the label roll in the printer.

    Args:
        past: rolls that were put in and not taken out, oldest first.
        used: labels taken of the last of them, as the record has it.
    """

    name = "ROLL"

    def __init__(self, past: Iterable[FactRecord] = (), used: int = 0) -> None:
        self._rolls: dict[str, str] = {}
        self._issued = 0
        for record in past:
            self.noted(record)
        self._used = used

    @property
    def inside(self) -> str:
        """Id of the roll put in last that is still in; empty without one."""
        return next(reversed(self._rolls.values()), "")

    @property
    def left(self) -> int | None:
        """Labels left on it, a forecast; None while no roll is in.

        Copies and tickets are counted from the record when it is taken out.
        """
        return max(0, self._issued - self._used) if self._issued else None

    def opened(self, run: Run, at: datetime) -> None:
        """A roll may stay in from run to run."""

    def packed(self, record: PackRecord) -> None:
        """A good bag takes a label."""
        self._used += record.draft.quality is Quality.GOOD

    def noted(self, record: FactRecord) -> None:
        """See rolls put in and taken out."""
        if is_step(record, RollStep.PUT_IN):
            self._rolls[record.fact.uid] = record.fact.subject
            self._issued, self._used = int(str(record.fact.details["issued"])), 0
        elif is_step(record, RollStep.TAKEN_OUT):
            self._rolls.pop(str(record.fact.details["roll"]), None)
            self._issued = 0

    def closing(self, now: datetime) -> str:
        """Why no bag is taken, while no roll is in."""
        return "" if self._rolls else f"no label roll is in: scan one in at {WHERE}"

    def due(self, now: datetime) -> Notice | None:
        """Nothing by a time."""
        return None


class FirstOffDuty:
    """Implements station.line.duties.Duty for the approval of a run's label by two people.

    An approval counts for its run, and until another roll is put in where the packhouse wants that.
    A refusal takes an approval away. With the production day the dates of the label change, which
    are frozen in the run: that run must end, and the next one begins with its own first-off.

    Args:
        zone: of the plant.
        cut_off: wall-clock time at which the production day changes.
        each_roll: whether a new roll wants a new approval.
    """

    name = "FIRST-OFF"

    def __init__(self, zone: tzinfo, cut_off: time, *, each_roll: bool) -> None:
        self._zone, self._cut_off, self._each_roll = zone, cut_off, each_roll
        self._run: Run | None = None
        self._approved = False
        self._refusal = ""
        self._stale = ""

    def opened(self, run: Run, at: datetime) -> None:
        """Each run begins with a first-off."""
        self._run, self._approved, self._refusal = run, False, ""
        self._stale = "the run begins with a first-off"

    def packed(self, record: PackRecord) -> None:
        """Bags change nothing."""

    def noted(self, record: FactRecord) -> None:
        """See approvals, refusals and new rolls."""
        if self._each_roll and is_step(record, RollStep.PUT_IN):
            self._approved, self._stale = False, "a new roll begins with a first-off"
        if record.fact.kind is not EntryKind.FIRST_OFF or self._run is None:
            return
        seen, product = first_off_of(record), self._run.product
        if (seen.run, seen.product, seen.version) != (self._run.id, product.code, product.version):
            return
        self._approved = record.fact.result == APPROVED
        self._refusal = seen.refusal

    def closing(self, now: datetime) -> str:
        """Why no bag is taken, while no approval counts."""
        if self._refusal:
            return f"the label was refused ({self._refusal}): end the run, or approve it at {WHERE}"
        if self._run is not None:
            local = now.astimezone(self._zone)
            if stale := first_off_stale(self._run.dating, local, self._cut_off):
                return stale
        return "" if self._approved else f"{self._stale}: two people approve the label at {WHERE}"

    def due(self, now: datetime) -> Notice | None:
        """Nothing by a time: the day change is known to all."""
        return None
