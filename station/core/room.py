"""How full the disk of the record may get: when it is said, when bags stop, when the reserve goes.

A record that meets a full disk loses nothing, but nothing can be written either: no end of a run,
no hold. So acceptance closes while there is still room, and a file of some size lies on the disk
that is given free when nothing else is left. WELMEC 7.2, extension L8, asks for capacity that is
sufficient for the purpose; the figures are the packhouse's own.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from station.core.facts import Fact
from station.core.journal import EntryKind, Value

_MIB = 2**20
_SHARE = 20
"""Neither the room kept nor the reserve is more than this part of a small medium."""
MOST_LOG = 64 * _MIB
"""A longer log means that somebody reads one view of the record for long: it cannot be folded."""
_BRINK = _MIB
"""With less than this one more entry may not fit: an entry takes some pages of log."""


class Level(StrEnum):
    """How it stands with the disk."""

    AMPLE = "room"
    LOW = "low"
    SHUT = "stopped"
    RESERVE = "reserve given free"


@dataclass(frozen=True, slots=True)
class Space:
    """A medium as the system tells it, in bytes.

    Args:
        used: taken, the reserve among it.
        free: what a program without special rights may still take.
        log: what the record's log takes.
    """

    used: int
    free: int
    log: int = 0

    @property
    def percent(self) -> int:
        """How full it is in whole percent, rounded up as POSIX asks of ``df``."""
        total = self.used + self.free
        return -(-100 * self.used // total) if total else 100


@dataclass(frozen=True, slots=True)
class RoomRules:
    """When what is done about the disk.

    Args:
        warn_percent: so full it is said.
        stop: bytes that must be free for bags to be taken, on a medium that is large enough.
        reserve: bytes of the file that is given free at the end; 0 for none.
    """

    warn_percent: int = 80
    stop: int = 256 * _MIB
    reserve: int = 16 * _MIB

    def on(self, space: Space) -> RoomRules:
        """The rules for one medium: on a small one less is kept."""
        most = (space.used + space.free) // _SHARE
        return RoomRules(self.warn_percent, min(self.stop, most), min(self.reserve, most))

    @property
    def again(self) -> int:
        """Free bytes with which packing goes on: more than :attr:`stop`, so that it stays open."""
        return self.stop * 5 // 4

    @property
    def brink(self) -> int:
        """Free bytes below which the reserve is given free."""
        return min(_BRINK, self.stop // 4)


def level_of(space: Space, rules: RoomRules, before: Level, *, reserve: bool) -> Level:
    """How it stands with the disk.

    Args:
        space: of the medium.
        rules: for this medium.
        before: how it stood.
        reserve: the reserve lies there, or none is wanted.
    """
    if not reserve:
        return Level.RESERVE
    shut = before in (Level.SHUT, Level.RESERVE)
    if space.free < (rules.again if shut else rules.stop):
        return Level.SHUT
    low = 100 * space.used >= rules.warn_percent * (space.used + space.free)
    return Level.LOW if low else Level.AMPLE


def needed(space: Space, rules: RoomRules, *, reserve: bool) -> int:
    """Bytes that must be freed before packing goes on, at least 1."""
    return max(rules.again + (0 if reserve else rules.reserve) - space.free, 1)


def room_fact(uid: str, level: Level, space: Space, why: str) -> Fact:
    """The fact that the disk has got fuller or emptier.

    Args:
        uid: of the fact.
        level: how it stands now.
        space: of the medium.
        why: what is said of it.
    """
    details: dict[str, Value] = {"free": space.free, "percent": space.percent, "words": why}
    return Fact(EntryKind.DISK, uid, "record", level, details=details)
