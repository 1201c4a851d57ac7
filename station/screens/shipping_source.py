"""Whom the shipping page asks for bags, cases and customers, and for the facts it enters."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from station.core.casing import CasedBag
from station.core.facts import Fact
from station.core.mass import Mass
from station.core.shipping import Customer
from station.core.shipping_lines import ShipmentLine, UnitLine


class ShippingSource(Protocol):
    """Knows what is packed, cased and gone; quick. Called on the screen's thread.

    Every method that makes facts raises ValueError or BadInput where what was asked cannot be.
    """

    @property
    def on(self) -> bool:
        """Whether the settings name cases and customers."""
        ...

    @property
    def customers(self) -> tuple[Customer, ...]:
        """Whom the packhouse ships to."""
        ...

    def full(self, product: str) -> int:
        """Bags of a full case of a product; 0 where the settings do not say."""
        ...

    def named(self, scan: str) -> str:
        """The serial or SSCC in a scan, or the text as it was typed."""
        ...

    def bags(self, serials: Sequence[str]) -> tuple[CasedBag, ...]:
        """Bags by their serials.

        Raises:
            BadInput: one is not on record.
        """
        ...

    def next_case(self) -> tuple[CasedBag, ...]:
        """The loose bags of the run packed last that make its next case."""
        ...

    def in_house(self) -> tuple[UnitLine, ...]:
        """Cases and pallets that stand in the house by themselves."""
        ...

    def unit(self, sscc: str) -> UnitLine:
        """A case or pallet.

        Raises:
            BadInput: there is none.
        """
        ...

    def gone(self) -> tuple[ShipmentLine, ...]:
        """The newest shipments, newest first."""
        ...

    def fill(self, serials: Sequence[str]) -> tuple[Fact, ...]:
        """The facts of a case of these bags."""
        ...

    def stack(self, cases: Sequence[str], gross: Mass) -> tuple[Fact, ...]:
        """The facts of a pallet of these cases."""
        ...

    def ship(self, customer: str, reference: str, units: Sequence[str]) -> tuple[Fact, ...]:
        """The facts of a shipment of these units."""
        ...

    def undo(self, subject: str, reason: str, *, came_back: bool = False) -> tuple[Fact, ...]:
        """The facts that undo a case, a pallet or a shipment."""
        ...

    def print_again(self, sscc: str) -> tuple[Fact, ...]:
        """The facts that send a copy of a unit's label on its way."""
        ...
