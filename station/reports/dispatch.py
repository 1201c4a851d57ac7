"""What became of bags after the line, as it was entered: for records that leave the station.

Unlike the tables, which know only what holds now, this keeps what was undone: an authority or a
trading partner who got an event must get its correction too.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal
from pathlib import Path

from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.shipping import Case, Correction, Pallet, Shipment
from station.core.shipping_entries import case_of, correction_of, pallet_of, shipment_of
from station.store.facts import facts
from station.store.queries import local_time
from station.store.shipping import cases_ever_with

_MICRO_TO_KILO = Decimal("1e-9")


@dataclass(frozen=True, slots=True)
class Done:
    """One entry, and what undid it.

    Args:
        uid: of the entry.
        at: when, in the plant's time.
        undone: how and when, and its uid; None where it holds.
    """

    uid: str
    at: datetime
    undone: Undone | None = None


@dataclass(frozen=True, slots=True)
class Undone:
    """What undid an entry."""

    uid: str
    at: datetime
    correction: Correction


@dataclass(frozen=True, slots=True)
class Leaving:
    """Bags of one blend lot that left with one shipment.

    Args:
        shipment: it.
        at: when, in the plant's time.
        blend_lot, name, gtin: what left.
        bags, micrograms: how much of it.
    """

    shipment: Shipment
    at: datetime
    blend_lot: str
    name: str
    gtin: str
    bags: int
    micrograms: int

    @property
    def kilograms(self) -> Decimal:
        """Net of the bags, exact."""
        return self.micrograms * _MICRO_TO_KILO


@dataclass(frozen=True, slots=True)
class Dispatch:
    """Cases with some of the bags, pallets with one of the cases, shipments with one of either."""

    cases: tuple[tuple[Done, Case], ...] = ()
    pallets: tuple[tuple[Done, Pallet], ...] = ()
    shipments: tuple[tuple[Done, Shipment], ...] = ()

    @property
    def leaving(self) -> tuple[Leaving, ...]:
        """What left, by shipment and blend lot; what was undone is not in it."""
        cases = {case.sscc: case for _, case in self.cases}
        pallets = {pallet.sscc: pallet for _, pallet in self.pallets}
        found: dict[tuple[str, str], Leaving] = {}
        for done, shipment in self.shipments:
            if done.undone is not None:
                continue
            inside = [
                cases[sscc]
                for unit in shipment.units
                for sscc in (pallets[unit].cases if unit in pallets else (unit,))
                if sscc in cases
            ]
            for case in inside:
                key = (shipment.number, case.blend_lot)
                before = found.get(key)
                found[key] = Leaving(
                    shipment, done.at, case.blend_lot, case.name, case.gtin,
                    case.bags + (before.bags if before else 0),
                    case.micrograms + (before.micrograms if before else 0),
                )  # fmt: skip
        return tuple(found.values())


def dispatch_of(home: Path, serials: Sequence[str]) -> Dispatch:
    """Return what became of bags after the line.

    Args:
        home: folder of the record.
        serials: of bags on record.
    """
    codes, since = cases_ever_with(home, serials)
    if since is None:
        return Dispatch()
    kinds = (EntryKind.CASE, EntryKind.PALLET, EntryKind.SHIPMENT, EntryKind.CORRECTION)
    records = facts(home, kinds, since=since)
    undone = {}
    for record in records:
        if record.fact.kind is EntryKind.CORRECTION:
            its = correction_of(record.fact)
            undone[its.corrects] = Undone(record.fact.uid, _at(record), its)
    cases = _of(records, EntryKind.CASE, codes)
    pallets = [
        one
        for one in (r for r in records if r.fact.kind is EntryKind.PALLET)
        if not codes.isdisjoint(pallet_of(one.fact).cases)
    ]
    units = codes | {one.fact.subject for one in pallets}
    gone = [
        one
        for one in (r for r in records if r.fact.kind is EntryKind.SHIPMENT)
        if not units.isdisjoint(shipment_of(one.fact).units)
    ]
    return Dispatch(
        tuple((_done(one, undone), case_of(one.fact)) for one in cases),
        tuple((_done(one, undone), pallet_of(one.fact)) for one in pallets),
        tuple((_done(one, undone), shipment_of(one.fact)) for one in gone),
    )


def _of(
    records: Sequence[FactRecord], kind: EntryKind, subjects: Collection[str]
) -> list[FactRecord]:
    return [one for one in records if one.fact.kind is kind and one.fact.subject in subjects]


def _done(record: FactRecord, undone: Mapping[str, Undone]) -> Done:
    return Done(record.fact.uid, _at(record), undone.get(record.fact.uid))


def _at(record: FactRecord) -> datetime:
    return local_time(record.at.utc, record.at.offset_minutes)
