"""Whom the lots page asks for what is on the line, and for the facts it enters."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Protocol

from station.core.facts import Fact
from station.core.line_lots import LotMove
from station.core.lots import InputLot
from station.core.mass import Mass
from station.core.receiving import Notes
from station.line.lot_duty import LotRow


class LotsSource(Protocol):
    """Knows the line, the lots of the packhouse and its suppliers; quick. Called by the screen."""

    def rows(self) -> tuple[LotRow, ...]:
        """The lots on the line with their balances, oldest first."""
        ...

    def lot(self, code: str) -> InputLot | None:
        """The lot of a code, or None."""
        ...

    def name(self, component: str) -> str:
        """What people call a component."""
        ...

    @property
    def components(self) -> tuple[tuple[str, str], ...]:
        """Code and name of each component."""
        ...

    @property
    def suppliers(self) -> tuple[str, ...]:
        """Who delivers."""
        ...

    def moves(self, moves: Sequence[LotMove]) -> tuple[Fact, ...]:
        """The facts that keep moves made together."""
        ...

    def rework(self, serial: str, quantity: Mass | None) -> LotMove | None:
        """The move that puts the content of a bag back on the line; None where there is no bag."""
        ...

    def scanned(self, text: str) -> Notes:
        """What one scanned symbol of a case says.

        Raises:
            LotError: it is no case label.
        """
        ...

    def day(self, digits: str) -> date | None:
        """The newest day not after today of a day and month such as ``2411``; None for no day."""
        ...

    def received(self, notes: Notes, hold: str) -> tuple[str, tuple[Fact, ...]]:
        """Lot code and facts of a delivery; held where ``hold`` says why.

        Raises:
            LotError: something is missing or contradicts what is known.
        """
        ...

    def hold(self, lot: str, why: str) -> tuple[Fact, ...]:
        """The facts that hold a lot.

        Raises:
            LotError: there is no reason.
        """
        ...

    def release(self, lot: str, why: str) -> tuple[Fact, ...]:
        """The facts that take every open hold off a lot.

        Raises:
            LotError: no person holds it.
        """
        ...
