"""The duty to make the checks of QA in time: gas, seal, temperatures, metal detector, label, wash.

A failed check closes acceptance until a good one of its kind follows and somebody has decided
about the bags it made suspect. A check on a bag cannot be wanted before the run has one.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime, timedelta

from station.core.checks.qa import GOOD, NEEDS_BAG, QaKind, QaLimit
from station.core.checks.suspect import decided_window, window_of
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.pack import PackRecord, Quality
from station.core.run import Run
from station.line.state import Notice

WHERE = "RUN, then QUALITY (F10)"


class QaDuty:
    """Implements station.line.duties.Duty for the checks of QA.

    Args:
        plan: the checks of each product, by its code; a product without any has no duty.
        grace: how much later a check may be before acceptance closes.
        past: the last check and the last good one of each kind, and the windows nobody decided
            about, oldest first.
    """

    name = "QA"

    def __init__(
        self,
        plan: Mapping[str, Sequence[QaLimit]],
        grace: timedelta,
        past: Iterable[FactRecord] = (),
    ) -> None:
        self._plan, self._grace = plan, grace
        self._good: dict[QaKind, datetime] = {}
        self._failed: dict[QaKind, None] = {}
        self._undecided: dict[str, int] = {}
        self._limits: tuple[QaLimit, ...] = ()
        self._opened: datetime | None = None
        self._first_bag: datetime | None = None
        self._this_run: set[QaKind] = set()
        for record in past:
            self.noted(record)

    @property
    def limits(self) -> tuple[QaLimit, ...]:
        """The checks of the open run's product."""
        return self._limits

    @property
    def failed(self) -> tuple[QaKind, ...]:
        """Kinds whose last check failed."""
        return tuple(self._failed)

    def opened(self, run: Run, at: datetime) -> None:
        """A run was opened."""
        self._limits = tuple(self._plan.get(run.product.code, ()))
        self._opened, self._first_bag = at, None
        self._this_run = set()

    def packed(self, record: PackRecord) -> None:
        """The first good bag of the run can be checked."""
        if self._first_bag is None and record.draft.quality is Quality.GOOD:
            self._first_bag = record.draft.judged_at.utc

    def noted(self, record: FactRecord) -> None:
        """See checks, windows and decisions."""
        fact = record.fact
        if fact.kind is EntryKind.QA_CHECK:
            kind = QaKind(fact.subject)
            if fact.result == GOOD:
                self._good[kind] = record.at.utc
                self._this_run.add(kind)
                self._failed.pop(kind, None)
            else:
                self._failed[kind] = None
        elif fact.kind is EntryKind.SUSPECT:
            decided = decided_window(record)
            if decided:
                self._undecided.pop(decided, None)
            elif (window := window_of(record)) is not None and window.cause:
                self._undecided[fact.uid] = window.bags

    def closing(self, now: datetime) -> str:
        """Why no bag is taken, the gravest first."""
        mine = [kind for kind in self._failed if kind in {one.kind for one in self._limits}]
        if mine:
            return f"{mine[0]} failed its check: put it right, then check it again: {WHERE}"
        if self._undecided:
            bags = sum(self._undecided.values())
            return f"{bags} bags are held after a failed check: QA decides: {WHERE}"
        for limit in self._limits:
            at = self.due_at(limit)
            if at is None:
                continue
            if self._wanted_at_start(limit):
                return f"the run begins with a check of {limit.kind}: {WHERE}"
            if now > at + self._grace:
                return f"the check of {limit.kind} is overdue: {WHERE}"
        return ""

    def overdue(self, now: datetime) -> bool:
        """Whether a check that the time asks for is too late."""
        asked = ((one, self.due_at(one)) for one in self._limits)
        return any(
            at is not None and not self._wanted_at_start(one) and now > at + self._grace
            for one, at in asked
        )

    def due(self, now: datetime) -> Notice | None:
        """The check that is due first."""
        found = [(at, one) for one in self._limits if (at := self.due_at(one)) is not None]
        if not found:
            return None
        at, limit = min(found, key=lambda pair: pair[0])
        return Notice(f"check of {limit.kind}", at)

    def due_at(self, limit: QaLimit) -> datetime | None:
        """When a check is due; None while it cannot be made or is not wanted again."""
        begun = self._first_bag if limit.kind in NEEDS_BAG else self._opened
        if begun is None:
            return None
        if self._wanted_at_start(limit):
            return begun
        if limit.every is None:
            return None
        good = self._good.get(limit.kind)
        fresh = good is not None and (limit.kind in self._this_run or limit.kind not in NEEDS_BAG)
        since = good if fresh and good is not None else begun
        return since + limit.every

    def _wanted_at_start(self, limit: QaLimit) -> bool:
        begun = self._first_bag if limit.kind in NEEDS_BAG else self._opened
        return limit.at_start and limit.kind not in self._this_run and begun is not None
