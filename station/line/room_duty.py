"""The disk as a duty: it is said when it fills up, and bags stop before it is full.

What is not a bag is recorded until the end: the run is ended, holds and decisions are kept. For
them a reserve is given free when nothing else is left; it is laid again, and packing goes on, as
soon as somebody has made room.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from typing import Protocol

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.pack import Moment, PackRecord
from station.core.room import MOST_LOG, Level, RoomRules, Space, level_of, needed, room_fact
from station.core.run import Run
from station.line.state import Notice

_AGAIN_NS = 2 * 10**9
"""What a full disk did not take is tried again so much later."""
_READ = "another program has been reading the record for long, close it"
_UNIT = ((10**9, "GB"), (10**6, "MB"), (10**3, "kB"))


class Held(Protocol):
    """Room that can be given free."""

    @property
    def size(self) -> int:
        """Bytes it holds; 0 where it is not there."""
        ...

    def lay(self, size: int) -> bool:
        """Take so many bytes; whether they are held."""
        ...

    def let_go(self) -> None:
        """Give the room back."""
        ...


class RoomDuty:
    """Implements station.line.duties.Duty, and looks at the disk on the line's thread.

    Args:
        look: asks the system how full the medium of the record is.
        reserve: the room that is kept.
        rules: when what is done.
        new_id: makes a UUID version 7 as text for a moment.
    """

    name = ""
    """No seal: it is seen when it is broken."""

    def __init__(
        self,
        look: Callable[[], Space],
        reserve: Held,
        rules: RoomRules,
        new_id: Callable[[Moment], str],
    ) -> None:
        self._look, self._reserve, self._rules, self._new_id = look, reserve, rules, new_id
        self._space: Space | None = None
        self._why = ""
        self._recorded = Level.AMPLE
        self._tried_ns: int | None = None
        self.level = Level.AMPLE
        """How it stands with the disk."""
        self.refresh()

    def refresh(self) -> None:
        """Look at the disk, and lay the reserve or give it free; before the record is opened too.

        A medium that cannot be asked changes nothing: the record says itself when it fails.
        """
        try:
            space = self._look()
            rules = self._rules.on(space)
            there = rules.reserve == 0 or self._reserve.size > 0
            if there and rules.reserve and space.free < rules.brink:
                self._reserve.let_go()
                there, space = False, self._look()
            elif not there and space.free >= rules.again + rules.reserve:
                there, space = self._reserve.lay(rules.reserve), self._look()
        except OSError as fault:
            self._why = f"the disk cannot be asked: {(fault.strerror or '').lower()}"
            return
        self.level = level_of(space, rules, self.level, reserve=there)
        self._space, self._why = space, _words(self.level, space, rules, there)

    def watch(self, at: Moment) -> tuple[Fact, ...]:
        """What became of the disk, as an entry; asked often."""
        self.refresh()
        space, tried = self._space, self._tried_ns
        if space is None or self.level is self._recorded:
            return ()
        if tried is not None and at.monotonic_ns - tried < _AGAIN_NS:
            return ()
        self._tried_ns = at.monotonic_ns
        words = self._why or f"there is room again: {amount(space.free)} free"
        return (room_fact(self._new_id(at), self.level, space, words),)

    @property
    def shut(self) -> str:
        """Why no bag is taken and no run opened, and what to do; empty where both may be."""
        return self._why if self.level in (Level.SHUT, Level.RESERVE) else ""

    @property
    def words(self) -> str:
        """How it stands with the disk, for whoever services the station; any thread."""
        if self._space is None:
            return self._why
        told = f"{self._space.percent} % full, {amount(self._space.free)} free"
        return f"{told}: {self._why}" if self._why else told

    # --- a duty -----------------------------------------------------------------------------------

    def opened(self, run: Run, at: datetime) -> None:
        """Nothing depends on the run."""

    def packed(self, record: PackRecord) -> None:
        """Nothing depends on bags."""

    def noted(self, record: FactRecord) -> None:
        """What the record says of the disk last."""
        if record.fact.kind is EntryKind.DISK:
            self._recorded, self._tried_ns = Level(record.fact.result), None

    def closing(self, now: datetime) -> str:
        """Why the line takes no bag."""
        return self.shut

    def due(self, now: datetime) -> Notice | None:
        """Room is to be made soon, or a program closed for which the log cannot be folded."""
        if self.level is Level.LOW:
            return Notice(self._why, now)
        if self._space is not None and self._space.log > MOST_LOG:
            return Notice(f"the record's log takes {amount(self._space.log)}: {_READ}", now)
        return None


def amount(size: int) -> str:
    """Bytes as a person reads them, in decimal units."""
    for least, unit in _UNIT:
        if size >= least:
            return f"{size / least:.1f} {unit}"
    return f"{size} bytes"


def _words(level: Level, space: Space, rules: RoomRules, there: bool) -> str:
    if level is Level.AMPLE:
        return ""
    if level is Level.LOW:
        told = f"the disk is {space.percent} % full, {amount(space.free)} free"
        return f"{told}: take old files off it, or call maintenance"
    more = amount(needed(space, rules, reserve=there))
    return f"the disk is nearly full: free {more} on it, then packing goes on by itself"
