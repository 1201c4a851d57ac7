"""The clock as a duty: a suspicious step closes acceptance until somebody confirms the time."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime, time, timedelta

from station.core.clock_guard import (
    LONGEST_UNSYNCED,
    Finding,
    Found,
    Reading,
    Synced,
    between,
    finding_fact,
    not_confirmed,
    unsynced,
)
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.pack import Moment, PackRecord
from station.core.run import Run
from station.line.state import Notice

KINDS = (EntryKind.CLOCK,)
WHERE = "CHANGE, CLOCK"
_ANCHOR_NS = 3_600 * 10**9
"""The reading that later ones are held against is never older: bending adds up to seconds."""
_SYNC_NS = 60 * 10**9


class ClockDuty:
    """Implements station.line.duties.Duty, and watches the clock on the line's thread.

    Args:
        cut_off: wall-clock time at which the production day changes.
        new_id: makes a UUID version 7 as text for a moment.
        past: entries about the clock.
        boot_ns: the count that goes on in sleep; None where the machine has none.
        synced: asks the system about its time service.
    """

    def __init__(
        self,
        cut_off: time,
        new_id: Callable[[Moment], str],
        past: Sequence[FactRecord],
        boot_ns: Callable[[], int | None],
        synced: Callable[[], Synced],
    ) -> None:
        self._cut_off, self._new_id = cut_off, new_id
        self._boot_ns, self._ask = boot_ns, synced
        self._anchor: Reading | None = None
        self._unsynced_since: int | None = None
        self._asked_ns: int | None = None
        self.open: tuple[FactRecord, ...] = not_confirmed(past)
        """Suspicious findings that nobody confirmed, the oldest first."""
        self.synced = Synced.UNKNOWN
        """What the system said last about its time service."""

    @property
    def name(self) -> str:
        """No seal: it is seen when it is broken."""
        return ""

    @property
    def wanting(self) -> str:
        """Why date and time must be confirmed; empty when they need not."""
        if not self.open:
            return ""
        words = str(self.open[-1].fact.details["words"])
        more = f", and {len(self.open) - 1} more" if len(self.open) > 1 else ""
        return f"{words}{more}: look at date and time, then sign at {WHERE}"

    def watch(self, at: Moment) -> tuple[Fact, ...]:
        """What the clock did since it was asked last, as entries; asked often."""
        now = Reading(at, self._boot_ns())
        before, findings = self._anchor, list[Finding]()
        if before is None:
            self._anchor = now
        else:
            findings = list(between(before, now, self._cut_off))
            if findings or at.monotonic_ns - before.at.monotonic_ns > _ANCHOR_NS:
                self._anchor = now
        findings += self._sync(at.monotonic_ns)
        return tuple(finding_fact(one, self._new_id(at)) for one in findings)

    def _sync(self, now_ns: int) -> list[Finding]:
        if self._asked_ns is not None and now_ns - self._asked_ns < _SYNC_NS:
            return []
        self._asked_ns, self.synced = now_ns, self._ask()
        if self.synced is not Synced.NO:
            self._unsynced_since = None
            return []
        if self._unsynced_since is None:
            self._unsynced_since = now_ns
        lasted = timedelta(microseconds=(now_ns - self._unsynced_since) // 1_000)
        stands = any(one.fact.result == Found.UNSYNCED for one in self.open)
        if lasted < LONGEST_UNSYNCED or stands:
            return []
        self._unsynced_since = now_ns  # after a confirmation it is asked for a day later
        return [unsynced(lasted)]

    # --- a duty -----------------------------------------------------------------------------------

    def opened(self, run: Run, at: datetime) -> None:
        """Nothing depends on the run."""

    def packed(self, record: PackRecord) -> None:
        """Nothing depends on bags."""

    def noted(self, record: FactRecord) -> None:
        """Keep what is open about the clock."""
        if record.fact.kind is EntryKind.CLOCK:
            self.open = not_confirmed((*self.open, record))

    def closing(self, now: datetime) -> str:
        """Why the line takes no bag; the run that is open keeps its dates."""
        return self.wanting

    def due(self, now: datetime) -> Notice | None:
        """Nothing is due beforehand."""
        return None
