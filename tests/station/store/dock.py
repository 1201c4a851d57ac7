"""A packhouse with bags and someone who cases, stacks and ships them straight into the record."""

from dataclasses import dataclass
from pathlib import Path

from labels.gs1_digits import sscc
from station.core.casing import fill_case, stack_pallet
from station.core.mass import Mass
from station.core.pack import LabelState
from station.core.receiving import hold_lot_fact
from station.core.shipping import Correction, Customer, Shipment, UnitLabel
from station.core.shipping_entries import (
    case_fact,
    correction_fact,
    pallet_fact,
    shipment_fact,
    unit_label_fact,
)
from station.store.lot_reach import bags_with
from station.store.shipping import cased_bags, unit_named
from tests.station.store.conftest import World

MARSHGATE = Customer("MG", "Marshgate Grocers", "Depot 4, Marshgate", "9521234000037")


def number(count):
    return sscc(0, "9521234", count)


def a_case(home, count, serials):
    return fill_case(number(count), cased_bags(home, serials))


def a_pallet(count, cases):
    return stack_pallet(number(count), cases, Mass.parse("12.5 kg"))


class Dock:
    """A packhouse with ten bags, two of them rejects, and someone who fills cases."""

    def __init__(self, world, store):
        self.world, self.store, self.count = world, store, 0
        self.run = world.start(store)
        self.serials = world.fill(store, self.run, 10)
        self.good = [one for place, one in enumerate(self.serials) if place % 3 != 2]

    def record(self, *facts):
        return self.store.record(facts, self.world.clock.now(), "p.marsh")

    def uid(self):
        self.count += 1
        return f"u{self.count}"

    def fill(self, count, serials):
        case = a_case(self.world.home, count, serials)
        self.record(case_fact(case, self.uid(), self.run.id))
        return case

    def label(self, code, *states, copy=0):
        for state in states or (LabelState.SUBMITTED, LabelState.SPOOLED):
            self.record(unit_label_fact(UnitLabel(code, state, copy), self.uid()))

    def labelled(self, count, serials):
        case = self.fill(count, serials)
        self.label(case.sscc)
        return case

    def pallet(self, count, *cases):
        pallet = a_pallet(count, cases)
        self.record(pallet_fact(pallet, self.uid()))
        self.label(pallet.sscc)
        return pallet

    def ship(self, name, *units, reference="delivery note 12"):
        uid = self.uid()
        self.record(shipment_fact(Shipment(name, MARSHGATE, reference, units), uid))
        return uid

    def undo(self, subject, how, uid):
        wrong = Correction(subject, how, uid, "scanned wrongly")
        self.record(correction_fact(wrong, self.uid()))

    def unit(self, one):
        return unit_named(self.world.home, one.sscc)


@dataclass(frozen=True)
class Shipped:
    """A closed record: its good bags, cases of the pallet, the pallet, the case that left alone."""

    home: Path
    good: list[str]
    cases: list[str]
    pallet: str
    single: str


def shipped_record(home):
    """Two cases on a pallet and a single one left with S-1, one bag is in no case; then a hold."""
    world = World(home)
    with world.stocked() as store:
        dock = Dock(world, store)
        one, two = dock.labelled(1, dock.good[:3]), dock.labelled(2, dock.good[3:5])
        pallet = dock.pallet(3, one, two)
        single = dock.labelled(4, dock.good[5:6])
        dock.ship("S-1", pallet.sscc, single.sscc)
        dock.record(hold_lot_fact("h1", "LF-101", "grower called", bags_with(home, "LF-101")))
    return Shipped(home, dock.good, [one.sscc, two.sscc], pallet.sscc, single.sscc)
