"""Cases, pallets and shipments as they stand now: what the record answers about them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from station.core.pack import LabelState
from station.core.shipping import Customer, UnitKind


@dataclass(frozen=True, slots=True)
class ShipmentLine:
    """One shipment as it stands now.

    Args:
        uid: of its entry.
        number: of the packhouse's own.
        customer: as it was then.
        reference: its paper.
        state: ``shipped``, or how it was undone.
        who: entered it.
        at: when, in the plant's time of that moment.
    """

    uid: str
    number: str
    customer: Customer
    reference: str
    state: str
    who: str
    at: datetime

    @property
    def gone(self) -> bool:
        """Whether its goods are with the customer."""
        return self.state == "shipped"


@dataclass(frozen=True, slots=True)
class UnitLine:
    """One case or pallet as it stands now.

    Args:
        uid: of its entry.
        sscc: 18 digits.
        kind: case or pallet.
        product, name, gtin: what it holds.
        blend_lot: one code, or those of a pallet's cases with blanks between.
        use_by: the earliest date in it.
        bags, net_ug: how many, and their net in micrograms.
        label, copies: of its own label.
        undone: it was opened or broken up.
        pallet: SSCC of the pallet it stands on; empty for none.
        shipment: number of the shipment it left with; empty for none.
        held: bags in it that must not leave.
        at: when it was made, in the plant's time of that moment.
    """

    uid: str
    sscc: str
    kind: UnitKind
    product: str
    name: str
    gtin: str
    blend_lot: str
    use_by: date
    bags: int
    net_ug: int
    label: LabelState
    copies: int
    undone: bool
    pallet: str
    shipment: str
    held: int
    at: datetime


@dataclass(frozen=True, slots=True)
class Place:
    """Where a bag is: its case, the pallet below it, the shipment it left with.

    Args:
        case: SSCC.
        pallet: SSCC; empty where the case stands on none.
        shipment: what it left with; None while it is in the house.
    """

    case: str
    pallet: str
    shipment: ShipmentLine | None
