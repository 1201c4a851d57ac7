"""What lies in the inbox of QA: one open thing each, with how grave it is."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import IntEnum, StrEnum


class Grave(IntEnum):
    """How much an item asks; the gravest sorts first."""

    STOP = 0
    ATTEND = 1
    TELL = 2


class Where(StrEnum):
    """Where an item is settled."""

    REJECTS = "rejects"
    HOLDS = "holds"
    CHECKS = "checks"
    LABELS = "labels"
    SCALE = "scale"
    DAY = "day"


@dataclass(frozen=True, slots=True)
class Item:
    """One thing that is open.

    Args:
        grave: how much it asks.
        words: what, in one sentence.
        where: where it is settled.
        at: since when, in UTC; None where it has no moment.
        key: uid, serial or day that names it there.
    """

    grave: Grave
    words: str
    where: Where
    at: datetime | None
    key: str
