"""The duty to scan applied labels back: the first, each hour, after a roll change, and the last.

A scan that says something else than the record closes acceptance until a lead cleared it with a
reason, over any number of starts. The last scan is asked for and not forced: an order that is done
takes no more bags that a closed line could keep back.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, timedelta

from station.core.checks.rolls import RollStep, is_step
from station.core.checks.scan_back import CLEARED, DIFFERS, EQUAL, ScanTrigger, scan_of
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.pack import PackRecord, Quality
from station.core.run import Run
from station.line.label_duties import WHERE
from station.line.state import Notice

_FORCED = (ScanTrigger.FIRST, ScanTrigger.ROLL_CHANGE)
"""Wanted with the next bag, at once."""


class ScanDuty:
    """Implements station.line.duties.Duty; also tells why the next label is scanned.

    Args:
        every: time between scans.
        grace: how much later a scan may be before acceptance closes.
        past: scans that differed and are not cleared, oldest first.
    """

    name = "SCAN"

    def __init__(self, every: timedelta, grace: timedelta, past: Iterable[FactRecord] = ()) -> None:
        self._every, self._grace = every, grace
        self._wrong: dict[str, FactRecord] = {}
        self._run: Run | None = None
        self._next = ScanTrigger.FIRST
        self._since: datetime | None = None
        self._bags = self._unscanned = 0
        for record in past:
            self.noted(record)

    @property
    def mismatch(self) -> FactRecord | None:
        """The oldest scan that differed and is not cleared, or None."""
        return next(iter(self._wrong.values()), None)

    @property
    def trigger(self) -> ScanTrigger:
        """Why a scan made now is made."""
        if self._next in _FORCED:
            return self._next
        return ScanTrigger.LAST if self._order_is_packed else ScanTrigger.HOURLY

    @property
    def wanted(self) -> bool:
        """Whether acceptance waits for the label of the last bag to be scanned."""
        return self._next in _FORCED and self._unscanned > 0

    def opened(self, run: Run, at: datetime) -> None:
        """Each run begins with the scan of its first label."""
        self._run, self._next, self._since = run, ScanTrigger.FIRST, None
        self._bags = self._unscanned = 0

    def packed(self, record: PackRecord) -> None:
        """Count labelled bags."""
        if record.draft.quality is Quality.GOOD:
            self._bags += 1
            self._unscanned += 1

    def noted(self, record: FactRecord) -> None:
        """See scans, their clearing, and new rolls."""
        fact = record.fact
        if is_step(record, RollStep.PUT_IN) and self._next not in _FORCED:
            self._next, self._unscanned = ScanTrigger.ROLL_CHANGE, 0
        if fact.kind is not EntryKind.SCAN_BACK:
            return
        if fact.result == CLEARED:
            self._wrong.pop(str(fact.details["scan"]), None)
        elif fact.result == DIFFERS:
            self._wrong[fact.uid] = record
        elif fact.result == EQUAL and self._run is not None and fact.run == self._run.id:
            self._next, self._since = ScanTrigger.HOURLY, record.at.utc
            self._unscanned = 0

    def closing(self, now: datetime) -> str:
        """Why no bag is taken, the gravest first."""
        wrong = self.mismatch
        if wrong is not None:
            serial = scan_of(wrong).serial
            return f"the scan of label {serial} does not match: the lead clears it at {WHERE}"
        if self.wanted:
            words = {ScanTrigger.FIRST: "first label", ScanTrigger.ROLL_CHANGE: "label of the roll"}
            return f"scan the {words[self._next]}: {WHERE}"
        if self.overdue(now):
            return f"the scan of a label is overdue: {WHERE}"
        return ""

    def overdue(self, now: datetime) -> bool:
        """Whether the scan that the time asks for is too late."""
        since = self._since
        return since is not None and self._unscanned > 0 and now > since + self._late

    def due(self, now: datetime) -> Notice | None:
        """When the next label is to be scanned; at once when the order is packed."""
        if self._since is None:
            return None
        if self._order_is_packed and self._unscanned:
            return Notice("scan the last label", now)
        return Notice("scan of a label", self._since + self._every)

    @property
    def _late(self) -> timedelta:
        return self._every + self._grace

    @property
    def _order_is_packed(self) -> bool:
        order = None if self._run is None else self._run.order_size
        return order is not None and self._bags >= order
