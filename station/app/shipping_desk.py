"""The desk of shipping: makes the facts of cases, pallets, shipments and what undoes them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from labels.words import Durability, durability_of
from station.app.printers import unit_printer_settings
from station.app.unit_labels import UnitDesk, UnitLabels, doubts_at_start, unit_on_record
from station.config.packhouse import Packhouse
from station.config.shipping import ShippingSettings
from station.core.casing import CasedBag, fill_case, first_case, stack_pallet
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.mass import Mass
from station.core.pack import LabelState
from station.core.shipping import (
    Case,
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
from station.line.opening import calendar_day
from station.line.ports import Clock
from station.reports.unit_scan import named_by_scan
from station.store import shipping as store
from station.store.labelled import labelled_pack
from station.store.queries import last_run

_NEWEST = 20


class ShippingDesk:
    """Implements station.screens.shipping_source.ShippingSource; any thread.

    Args:
        house: the settings; they name customers and cases.
        home: folder of the record.
        clock: tells the time.
    """

    def __init__(self, house: Packhouse, home: Path, clock: Clock) -> None:
        self._house, self._home, self._clock = house, home, clock

    @property
    def on(self) -> bool:
        """Whether the settings name cases and customers."""
        return self._house.shipping is not None

    @property
    def customers(self) -> tuple[Customer, ...]:
        """Whom the packhouse ships to."""
        return tuple(self._settings.customers.values())

    def full(self, product: str) -> int:
        """Bags of a full case of a product; 0 where the settings do not say."""
        spec = self._settings.cases.get(product)
        return 0 if spec is None else spec.bags

    def named(self, scan: str) -> str:
        """The serial or SSCC in a scan, or the text as it was typed."""
        return named_by_scan(scan)

    def bags(self, serials: Sequence[str]) -> tuple[CasedBag, ...]:
        """Bags by their serials; reads the record."""
        return store.cased_bags(self._home, serials)

    def next_case(self) -> tuple[CasedBag, ...]:
        """The bags of the next case of the run packed last; reads the record."""
        run = last_run(self._home)
        if run is None:
            return ()
        loose = store.loose_bags(self._home, run.run.id)
        full = self.full(run.run.product.code) or len(loose)
        return first_case(loose, full)

    def in_house(self) -> tuple[UnitLine, ...]:
        """Cases and pallets that stand in the house by themselves; reads the record."""
        return store.units_in_house(self._home)

    def unit(self, sscc: str) -> UnitLine:
        """A case or pallet; reads the record."""
        return store.unit_named(self._home, sscc)

    def gone(self) -> tuple[ShipmentLine, ...]:
        """The newest shipments; reads the record."""
        return store.shipments(self._home, _NEWEST)

    # --- facts --------------------------------------------------------------------------------

    def fill(self, serials: Sequence[str]) -> tuple[Fact, ...]:
        """The facts of a case of these bags."""
        bags = self.bags(serials)
        product = bags[0].product if bags else ""
        spec = self._settings.cases.get(product)
        is_full = spec is not None and len(bags) == spec.bags
        case = fill_case(
            self._next_sscc(),
            bags,
            spec.gtin if spec is not None and is_full else "",
            self._date_words(bags),
        )
        return (case_fact(case, self._uid(), bags[0].run),)

    def _date_words(self, bags: Sequence[CasedBag]) -> str:
        """The words its bags carry; the settings may have others by now."""
        if not bags:
            return ""  # refused with the bags themselves
        return labelled_pack(self._home, bags[0].serial).run.product.use_by_words

    def stack(self, cases: Sequence[str], gross: Mass) -> tuple[Fact, ...]:
        """The facts of a pallet of these cases; their labels were scanned, so they are on them."""
        units = [self.unit(sscc) for sscc in cases]
        seen = tuple(self._seen(one) for one in units if one.label is LabelState.SPOOLED)
        pallet = stack_pallet(self._next_sscc(), [self._case(one) for one in cases], gross)
        return (*seen, pallet_fact(pallet, self._uid()))

    def ship(self, customer: str, reference: str, units: Sequence[str]) -> tuple[Fact, ...]:
        """The facts of a shipment of these pallets and cases.

        Raises:
            ShippingError: nobody and nothing is named, or food is past its use-by date: after it
                food counts as unsafe, Regulation (EU) No 1169/2011 Art. 24(1). What is past a
                best-before date may leave.
        """
        whom = self._settings.customers.get(customer)
        if whom is None:
            raise ShippingError("whom does it go to? Choose a customer")
        if not units:
            raise ShippingError("scan the pallets and cases that leave")
        named = [self.unit(sscc) for sscc in units]
        day = calendar_day(self._clock.now())
        for one in named:
            if one.use_by < day and self._must_be_used_by(one.sscc):
                raise ShippingError(
                    f"{one.sscc} had its use-by date on {one.use_by}: it must not leave"
                )
        seen = tuple(self._seen(one) for one in named if one.label is LabelState.SPOOLED)
        count = store.next_numbers(self._home, day)[2]
        site, station = self._house.settings.site, self._house.settings.station
        number = f"{site}{station}-{day:%y%j}-{count + 1:03d}"
        shipment = Shipment(number, whom, reference, tuple(units))
        return (*seen, shipment_fact(shipment, self._uid()))

    def undo(self, subject: str, reason: str, *, came_back: bool = False) -> tuple[Fact, ...]:
        """The fact that undoes a case, a pallet or a shipment."""
        for one in self.gone():
            if one.number == subject:
                how = Undoing.CAME_BACK if came_back else Undoing.WITHDRAWN
                return (correction_fact(Correction(subject, how, one.uid, reason), self._uid()),)
        its = self.unit(subject)
        how = Undoing.OPENED if its.kind is UnitKind.CASE else Undoing.BROKEN_UP
        return (correction_fact(Correction(subject, how, its.uid, reason), self._uid()),)

    def print_again(self, sscc: str) -> tuple[Fact, ...]:
        """The fact that sends a numbered copy of a unit's label on its way."""
        its = self.unit(sscc)
        again = UnitLabel(sscc, LabelState.SUBMITTED, its.copies + 1, "asked for")
        return (unit_label_fact(again, self._uid()),)

    def _must_be_used_by(self, sscc: str) -> bool:
        words = unit_on_record(self._home, sscc).date_words
        return durability_of(words) is Durability.USE_BY

    def _seen(self, one: UnitLine) -> Fact:
        seen = UnitLabel(one.sscc, LabelState.APPLIED, one.copies, "scanned")
        return unit_label_fact(seen, self._uid())

    def _case(self, sscc: str) -> Case:
        its = unit_on_record(self._home, sscc)
        if not isinstance(its, Case):
            raise ShippingError(f"{sscc} is a pallet: a pallet holds cases")
        return its

    def _next_sscc(self) -> str:
        mark, count, _ = store.next_numbers(self._home, calendar_day(self._clock.now()))
        return self._settings.sscc(mark, count)

    @property
    def _settings(self) -> ShippingSettings:
        if self._house.shipping is None:
            raise ShippingError("the station fills no cases: customers.toml is missing")
        return self._house.shipping

    def _uid(self) -> str:
        return new_uid(self._clock.now())


@dataclass(frozen=True, slots=True)
class ShippingGates:
    """What a station needs to ship."""

    labels: UnitLabels
    desk: ShippingDesk
    left: tuple[Fact, ...]
    """What is to be recorded of labels that were on their way when the station ended."""


def shipping_gates(
    house: Packhouse,
    home: Path,
    clock: Clock,
    printing: UnitDesk,
    enter: Callable[[tuple[Fact, ...], str], None],
) -> ShippingGates:
    """Return the desk of shipping and the labels of its units.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
        printing: the printer's thread.
        enter: takes facts to the record.
    """
    dots = unit_printer_settings(house).dots_per_mm
    labels = UnitLabels(home, clock, house.settings.packer, printing, enter, dots)
    desk = ShippingDesk(house, home, clock)
    return ShippingGates(labels, desk, doubts_at_start(home, clock))
