"""Watches what may be alarmed, on the line's thread: raises, rings and ends alarms, each on record.

An alarm is raised once its cause has held for as long as its row says, and ends when the cause has
been gone for a while, so that a flickering cause is one alarm. With the station's stop all end;
what still holds at the next start is raised anew.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime, timedelta

from station.core.alarms import RULES, Alarm, AlarmKind, alarms_after, over_fact, raised_fact
from station.core.facts import Fact, FactRecord
from station.core.pack import Moment, PackRecord
from station.core.run import Run
from station.line.effects import Cue, Sound
from station.line.state import LineState, Notice

Causes = Callable[[datetime, LineState], Mapping[AlarmKind, str]]
"""Asks what holds now: kinds with one sentence each."""

_LOOK_NS = 500_000_000
_RING_NS = 10_000_000_000
"""An alarm that nobody has seen rings anew after so long."""
GONE = timedelta(seconds=3)
"""A cause that was gone so long is gone."""


class AlarmBoard:
    """Implements station.line.duties.Duty; it closes nothing, since the causes do so themselves.

    Args:
        causes: asks what holds now.
        new_id: makes a UUID version 7 as text for a moment.
        sound: plays one of the three sounds of the line.
    """

    name = ""

    def __init__(
        self, causes: Causes, new_id: Callable[[Moment], str], sound: Callable[[Sound], None]
    ) -> None:
        self._causes, self._new_id, self._sound = causes, new_id, sound
        self._state: LineState | None = None
        self._since: dict[AlarmKind, datetime] = {}
        self._gone: dict[AlarmKind, datetime] = {}
        self._looked_ns = self._rang_ns = 0
        self.open: tuple[Alarm, ...] = ()
        """The alarms that stand, the gravest first; any thread may read."""

    @property
    def run(self) -> str:
        """Id of the open run; empty without one."""
        state = self._state
        return "" if state is None or state.run is None else state.run.id

    def state(self, state: LineState) -> None:
        """Keep the newest state of the line."""
        self._state = state

    def watch(self, at: Moment) -> tuple[Fact, ...]:
        """What begins and ends now, as entries; asked often, looks twice a second."""
        if self._state is None or at.monotonic_ns - self._looked_ns < _LOOK_NS:
            return ()
        self._looked_ns = at.monotonic_ns
        run = self.run
        causes = self._causes(at.utc, self._state)
        found = [*self._ended(causes, at, run), *self._begun(causes, at, run)]
        self._ring(at)
        return tuple(found)

    def _begun(self, causes: Mapping[AlarmKind, str], at: Moment, run: str) -> list[Fact]:
        standing = {alarm.kind for alarm in self.open}
        self._since = {kind: self._since.get(kind, at.utc) for kind in causes}
        return [
            raised_fact(self._new_id(at), kind, words, run)
            for kind, words in causes.items()
            if kind not in standing and at.utc - self._since[kind] >= RULES[kind].after
        ]

    def _ended(self, causes: Mapping[AlarmKind, str], at: Moment, run: str) -> list[Fact]:
        gone = [alarm for alarm in self.open if alarm.kind not in causes]
        self._gone = {alarm.kind: self._gone.get(alarm.kind, at.utc) for alarm in gone}
        return [
            over_fact(self._new_id(at), alarm, run)
            for alarm in gone
            if at.utc - self._gone[alarm.kind] >= GONE
        ]

    def _ring(self, at: Moment) -> None:
        if not any(alarm.rings(at.utc) for alarm in self.open):
            self._rang_ns = at.monotonic_ns  # the line itself sounds when it stops
        elif at.monotonic_ns - self._rang_ns >= _RING_NS:
            self._rang_ns = at.monotonic_ns
            self._sound(Sound(Cue.STOP))

    # --- the duty -----------------------------------------------------------------------------

    def opened(self, run: Run, at: datetime) -> None:
        """Alarms are the line's, whatever run is open."""

    def packed(self, record: PackRecord) -> None:
        """Bags are seen by what counts them."""

    def noted(self, record: FactRecord) -> None:
        """See what became of alarms."""
        self.open = alarms_after(self.open, record)

    def closing(self, now: datetime) -> str:
        """Nothing: each cause closes the line by itself where it must."""
        return ""

    def due(self, now: datetime) -> Notice | None:
        """Nothing."""
        return None
