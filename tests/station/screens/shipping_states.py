"""Bags, cases and customers for pictures and tests of the shipping page."""

from dataclasses import replace
from datetime import UTC, date, datetime

from station.core.casing import CasedBag, fill_case, first_case, stack_pallet
from station.core.mass import Mass
from station.core.pack import LabelState
from station.core.shipping import (
    Correction,
    Customer,
    Shipment,
    ShippingError,
    Undoing,
    UnitKind,
    UnitLabel,
)
from station.core.shipping_entries import (
    case_fact,
    correction_fact,
    pallet_fact,
    shipment_fact,
    unit_label_fact,
)
from station.core.shipping_lines import ShipmentLine, UnitLine
from station.errors import BadInput
from station.reports.unit_scan import named_by_scan

NAME = "Rocket and baby spinach"
CUSTOMERS = (
    Customer("MARSHGATE", "Marshgate Grocers", "Depot 4, Marshgate Wharf", "9524007000012"),
    Customer("TALLOWBY", "Tallowby School Kitchens", "Tallowby Road 9, Dunfallow"),
)
AT = datetime(2026, 11, 25, 10, 40, tzinfo=UTC)
FIRST, SECOND, PALLET = "195240071610000017", "195240071610000024", "195240071610000031"
HELD, NEW = "195240071610000048", "195240071610000055"


def serial(number):
    return f"A1-7K-{number:06d}"


def bag(number, lot="L12632901"):
    return CasedBag(
        serial(number), "ROCKET-SPINACH-200", 3, NAME, "9524007102006", "r1", lot,
        date(2026, 12, 2), 201_000_000,
    )  # fmt: skip


def unit(sscc, kind=UnitKind.CASE, **changes):
    made = UnitLine(
        f"e{sscc[-3:]}", sscc, kind, "ROCKET-SPINACH-200", NAME, "19524007102003", "L12632901",
        date(2026, 12, 2), 12, 2_412_000_000, LabelState.SPOOLED, 0, False, "", "", 0, AT,
    )  # fmt: skip
    return replace(made, **changes)


UNITS = (
    unit(FIRST),
    unit(SECOND),
    unit(PALLET, UnitKind.PALLET, bags=240, net_ug=48_240_000_000),
    unit(HELD, held=3),
    unit(NEW, label=LabelState.IN_DOUBT),
)
GONE = (
    ShipmentLine("s2", "QHA1-26329-002", CUSTOMERS[1], "delivery note 4712", "shipped", "L01", AT),
    ShipmentLine(
        "s1", "QHA1-26329-001", CUSTOMERS[0], "delivery note 4711", "shipment withdrawn", "L01", AT
    ),
)


class ShippingSourceStub:
    """Makes facts as the desk does, of bags and cases that stand still."""

    on = True
    customers = CUSTOMERS

    def __init__(self, units=UNITS, loose=30):
        self._units = {one.sscc: one for one in units}
        self._loose = tuple(bag(number) for number in range(1, loose + 1))
        self._made = 0

    def full(self, product):
        return 12

    def named(self, scan):
        return named_by_scan(scan)

    def bags(self, serials):
        known = {one.serial: one for one in self._loose}
        for one in serials:
            if one not in known:
                raise BadInput(f"serial {one}", "is not in the record")
        return tuple(known[one] for one in serials)

    def next_case(self):
        return first_case(self._loose, 12)

    def in_house(self):
        return tuple(self._units.values())

    def unit(self, sscc):
        if sscc not in self._units:
            raise BadInput(f"case or pallet {sscc!r}", "is not in the record")
        return self._units[sscc]

    def gone(self):
        return GONE

    def fill(self, serials):
        return (case_fact(fill_case(NEW, self.bags(serials)), self._uid()),)

    def stack(self, cases, gross):
        made = [fill_case(sscc, self.bags([serial(1)])) for sscc in cases]
        return (pallet_fact(stack_pallet(PALLET, made, gross), self._uid()),)

    def ship(self, customer, reference, units):
        whom = next(one for one in CUSTOMERS if one.code == customer)
        gone = Shipment("QHA1-26329-003", whom, reference, tuple(units))
        return (shipment_fact(gone, self._uid()),)

    def undo(self, subject, reason, *, came_back=False):
        how = Undoing.CAME_BACK if came_back else Undoing.OPENED
        return (correction_fact(Correction(subject, how, "e1", reason), self._uid()),)

    def print_again(self, sscc):
        label = UnitLabel(sscc, LabelState.SUBMITTED, 1, "asked for")
        return (unit_label_fact(label, self._uid()),)

    def _uid(self):
        self._made += 1
        return f"u{self._made}"


class Unset(ShippingSourceStub):
    """A station whose settings name no customers."""

    on = False

    @property
    def customers(self):
        raise ShippingError("nobody asks")


GROSS = Mass.parse("121.5 kg")
