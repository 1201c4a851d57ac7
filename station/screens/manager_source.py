"""What the manager's page asks of the station, and what it is told; figures, never the record."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import tzinfo
from enum import StrEnum
from pathlib import Path
from typing import Protocol

from station.core.facts import Fact
from station.screens.numbers_words import Row

Told = Callable[[int], None]
"""Told how many percent are done; raises where nobody wants the rest."""


class Period(StrEnum):
    """Which production days are looked at."""

    DAY = "last day"
    WEEK = "last 7 days"
    ALL = "all days"


class GivenBy(StrEnum):
    """What bags are put together by."""

    PRODUCT = "product"
    HOUR = "hour"
    POSITION = "position"
    DAY = "day"


@dataclass(frozen=True, slots=True)
class Slice:
    """One bar.

    Args:
        name: under it.
        value: its height.
        words: what a pointer reads.
    """

    name: str
    value: float
    words: str


@dataclass(frozen=True, slots=True)
class Happening:
    """One mark of a timeline.

    Args:
        row: name of its row.
        at: when it began, in seconds since 1970.
        until: when it ended, likewise; the same moment where it took no time.
        bad: it failed, differs, or holds bags.
        words: what a pointer reads.
    """

    row: str
    at: float
    until: float
    bad: bool
    words: str


@dataclass(frozen=True, slots=True)
class Pan:
    """Readings of the empty pan of one run, in order.

    Args:
        unit: of the readings.
        interval: the scale interval.
        readings: one after each bag.
    """

    unit: str
    interval: float
    readings: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class Money:
    """Everything the page shows of some production days.

    Args:
        title: which days, in words.
        headline: the figures beside every chart.
        given: percent given away, put together in each way.
        stops: minutes stood, by reason, the longest first.
        rejects: bags set aside, by reason, the most frequent first.
        yields: percent of each input lot that is in bags.
        happenings: checks, lots, stops and holds.
        zone: of the plant.
        pan: the empty pan of the last run; None without readings.
        gone: what was purged of these days, in words; empty for nothing.
    """

    title: str
    headline: tuple[Row, ...]
    given: Mapping[GivenBy, tuple[Slice, ...]]
    stops: tuple[Slice, ...]
    rejects: tuple[Slice, ...]
    yields: tuple[Slice, ...]
    happenings: tuple[Happening, ...]
    zone: tzinfo
    pan: Pan | None
    gone: str = ""


@dataclass(frozen=True, slots=True)
class Pending:
    """Something a manager is asked to sign.

    Args:
        key: names it towards the source.
        title: what it is.
        rows: what it says.
        may_refuse: it can be refused; what is not approved is just left.
    """

    key: str
    title: str
    rows: tuple[Row, ...] = field(default_factory=tuple)
    may_refuse: bool = False


class ManagerSource(Protocol):
    """Whoever knows the record; ``money`` and papers may take long and are not for Qt's thread."""

    def money(self, period: Period, told: Told) -> Money | None:
        """Return the figures of a period; None before the first bag."""
        ...

    def report(self, period: Period, told: Told) -> tuple[Path, ...]:
        """Write the report of a period; returns its files."""
        ...

    def evidence(self, told: Told) -> tuple[Path, ...]:
        """Write the evidence pack of the last run; returns its files."""
        ...

    def pending(self) -> tuple[Pending, ...]:
        """What waits for a signature, oldest first; quick."""
        ...

    def approve(self, key: str) -> tuple[Fact, ...]:
        """Return the facts that approve.

        Raises:
            ValueError: it cannot be approved; says why.
        """
        ...

    def refuse(self, key: str, reason: str) -> tuple[Fact, ...]:
        """Return the facts that refuse.

        Raises:
            ValueError: it cannot be refused; says why.
        """
        ...

    def people(self) -> tuple[Row, ...]:
        """Everybody with the day their training holds to; quick."""
        ...

    def lives(self) -> tuple[Row, ...]:
        """The shelf-life policy by atmosphere with the products in it; quick."""
        ...
