"""The duty to check the scale: at the start of a run, each hour, after events, at its end.

A failed check closes acceptance until the scale holds as left and somebody has decided about the
bags it made suspect. The check at the end is asked for and not forced: bags packed after the last
good check are covered by the next check, because its window reaches back over all runs.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable
from datetime import datetime

from station.core.checks.scale import Trigger, check_of, held_true
from station.core.checks.suspect import decided_window, window_of
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.metrology.scale_check import CheckSchedule, CheckStage, Due, check_due
from station.core.pack import PackRecord, Quality
from station.core.run import Run
from station.line.state import Notice

BAR = "scale check"
"""Source of the bar while weights or empty bags are on the scale; see Intents.bar."""
BAR_WORDS = "a check goes on at the scale: put no bag on it"
_WHERE = "RUN, then CHECKS (F4)"


class ScaleDuty:
    """Implements station.line.duties.Duty; also tells why the next check is made.

    Args:
        scale: what identifies the scale.
        schedule: times.
        past: the last check of the scale and the windows nobody decided about, oldest first.
    """

    name = "SCALE"

    def __init__(
        self, scale: str, schedule: CheckSchedule, past: Iterable[FactRecord] = ()
    ) -> None:
        self._scale, self._schedule = scale, schedule
        self._events: deque[str] = deque()  # filled by the scale's thread
        self._good: datetime | None = None
        self._failed = False
        self._undecided: dict[str, int] = {}
        self._order: int | None = None
        self._packed_since = 0
        self._packed = 0
        for record in past:
            self.noted(record)
        self._good = None

    def disturbed(self, words: str) -> None:
        """Something happened to the scale: it must be checked again. From any thread.

        Args:
            words: what, after the word ``after``: ``the scale's line was lost``.
        """
        self._events.append(words)

    @property
    def trigger(self) -> Trigger:
        """Why a check made now is made."""
        if self._good is None:
            return Trigger.START
        if self._events:
            return Trigger.EVENT
        return Trigger.END if self._run_is_packed else Trigger.HOURLY

    @property
    def failed(self) -> bool:
        """Whether the last check failed, or bags of a suspect window wait for a decision."""
        return self._failed or bool(self._undecided)

    @property
    def stage(self) -> CheckStage:
        """Whether a check made now finds the scale as it was, or as it was left after a repair."""
        return CheckStage.AS_LEFT if self._failed else CheckStage.AS_FOUND

    # --- the duty -----------------------------------------------------------------------------

    def opened(self, run: Run, at: datetime) -> None:
        """Each run begins with a check at its own loads."""
        self._good, self._order = None, run.order_size
        self._packed = self._packed_since = 0

    def packed(self, record: PackRecord) -> None:
        """Count bags, so that the end of an order and bags without a check after them are known."""
        self._packed += record.draft.quality is Quality.GOOD
        self._packed_since += 1

    def noted(self, record: FactRecord) -> None:
        """See checks, windows, decisions and pauses."""
        fact = record.fact
        if fact.kind is EntryKind.PAUSE:
            self._events.append("a pause")
        elif fact.kind is EntryKind.SCALE_CHECK and fact.subject == self._scale:
            self._checked(record)
        elif fact.kind is EntryKind.SUSPECT:
            decided = decided_window(record)
            if decided:
                self._undecided.pop(decided, None)
            else:
                window = window_of(record)
                if window is not None and not window.cause:
                    self._undecided[fact.uid] = window.bags

    def closing(self, now: datetime) -> str:
        """Why no bag is taken, the gravest first."""
        if self._failed:
            return f"the scale failed its check: adjust it, then check it as left: {_WHERE}"
        if self._undecided:
            bags = sum(self._undecided.values())
            return f"{bags} suspect bags are held: QA or the lead decides: {_WHERE}"
        if check_due(now, self._good, bool(self._events), self._schedule) is not Due.OVERDUE:
            return ""
        if self._good is None:
            return f"the run begins with a check of the scale: {_WHERE}"
        if self._events:
            return f"check the scale after {self._events[-1]}: {_WHERE}"
        return f"the check of the scale is overdue: {_WHERE}"

    def overdue(self, now: datetime) -> bool:
        """Whether the check that the time asks for is too late."""
        due = check_due(now, self._good, bool(self._events), self._schedule)
        return due is Due.OVERDUE and self._good is not None and not self._events

    def due(self, now: datetime) -> Notice | None:
        """When the next check is due; at once when the order is packed."""
        if self._good is None:
            return None
        if self._run_is_packed:
            return Notice("scale check at the end of the run", now)
        return Notice("scale check", self._good + self._schedule.every)

    @property
    def _run_is_packed(self) -> bool:
        whole = self._order is not None and self._packed >= self._order
        return whole and self._packed_since > 0

    def _checked(self, record: FactRecord) -> None:
        made = check_of(record)
        if held_true(made):
            self._good, self._failed, self._packed_since = record.at.utc, False, 0
            self._events.clear()
        else:
            self._failed = True
