"""What the page of a changeover asks of the station."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Protocol

from station.core.clearance import Explanation, Gate, Point
from station.core.clock_guard import Reason as ClockReason
from station.core.facts import Fact
from station.core.pack import Moment
from station.core.pauses import Look, Pause, Reason


@dataclass(frozen=True, slots=True)
class Before:
    """The run before.

    Args:
        name: its product.
        blend_lot: its blend lot.
        bags: its labelled good bags on record.
        net_ug: what they hold together, in micrograms.
    """

    name: str
    blend_lot: str
    bags: int
    net_ug: int


class ClockSource(Protocol):
    """Knows whether date and time must be confirmed. Called on the screen's thread."""

    @property
    def wanting(self) -> str:
        """Why they must be; empty when they need not."""
        ...

    @property
    def shown(self) -> Moment:
        """What the clock shows."""
        ...

    def confirmed(self, reason: ClockReason) -> Fact:
        """The signature under date and time.

        Raises:
            ValueError: nothing is open.
        """
        ...


class ChangeSource(Protocol):
    """Makes facts to be entered; tells what is to be signed. Called on the screen's thread."""

    @property
    def wanting(self) -> tuple[Gate, ...]:
        """What is to be signed, in order."""
        ...

    @property
    def standing(self) -> Pause | None:
        """The stop that goes on."""
        ...

    def before(self) -> Before | None:
        """The run before; None where there is none. Reads the record."""
        ...

    def counted(self, bags: int, explanation: Explanation | None) -> Fact:
        """The signature under a count.

        Raises:
            ValueError: the count differs and nobody says why.
        """
        ...

    def cleared(self, seen: Mapping[Point, bool]) -> Fact:
        """The signature under a clear line.

        Raises:
            ValueError: a point is open.
        """
        ...

    def stop(self, reason: Reason) -> Fact:
        """The entry that the line stands."""
        ...

    def go_on(self, looked: frozenset[Look]) -> Fact:
        """The entry that the line goes on.

        Raises:
            ValueError: something was not looked at, or the line does not stand.
        """
        ...
