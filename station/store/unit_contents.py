"""What a case, a pallet or a shipment held when it was closed, whatever became of it later.

The tables say where each bag is now. Its own entry says what a unit was made of, also after a case
was opened, a pallet broken up or a shipment came back; a label that is still out there means that.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection, select

from station.core.journal import EntryKind
from station.core.shipping import UnitKind, serials_between
from station.core.shipping_entries import pallet_of, shipment_of
from station.core.shipping_lines import ShipmentLine, UnitLine
from station.store.engine import reading
from station.store.facts import read_facts
from station.store.shipping import shipment_named, unit_named
from station.store.shipping_tables import case_span, unit
from station.store.tables import fact, journal

_MANY = 400


@dataclass(frozen=True, slots=True)
class UnitContents:
    """A case or pallet with its bags.

    Args:
        unit: as it stands now.
        cases: SSCCs of its cases; a case is its own.
        serials: of its bags.
    """

    unit: UnitLine
    cases: tuple[str, ...]
    serials: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class ShipmentContents:
    """A shipment with its bags.

    Args:
        shipment: as it stands now.
        units: SSCCs of the pallets and single cases that left.
        serials: of its bags.
    """

    shipment: ShipmentLine
    units: tuple[str, ...]
    serials: tuple[str, ...]


def contents_of_unit(home: Path, sscc: str) -> UnitContents:
    """Return a case or pallet with the bags it was closed with.

    Raises:
        BadInput: there is none of this SSCC; the message names close ones.
    """
    its = unit_named(home, sscc)
    with reading(home) as connection:
        cases = _cases(connection, (sscc,))
        return UnitContents(its, cases, _serials(connection, cases))


def contents_of_shipment(home: Path, number: str) -> ShipmentContents:
    """Return a shipment with the bags that left with it.

    Raises:
        BadInput: there is none of this number; the message names close ones.
    """
    its = shipment_named(home, number)
    with reading(home) as connection:
        entry = fact.c.uid == its.uid
        (made,) = read_facts(connection, _FACTS.where(entry))
        units = shipment_of(made.fact).units
        return ShipmentContents(its, units, _serials(connection, _cases(connection, units)))


_FACTS = select(journal.c.canonical).join(fact, fact.c.entry_id == journal.c.id)


def _cases(connection: Connection, units: Sequence[str]) -> tuple[str, ...]:
    """The cases themselves, and those a pallet was closed with."""
    found: list[str] = []
    for some in _portions(units):
        pallets = select(unit.c.uid).where(unit.c.sscc.in_(some), unit.c.kind == UnitKind.PALLET)
        of_pallets = _FACTS.where(fact.c.uid.in_(pallets), fact.c.kind == EntryKind.PALLET)
        closed = {
            one.fact.subject: pallet_of(one.fact).cases
            for one in read_facts(connection, of_pallets)
        }
        found += (case for one in some for case in closed.get(one, (one,)))
    return tuple(found)


def _serials(connection: Connection, cases: Sequence[str]) -> tuple[str, ...]:
    """The bags that cases were filled with; opening a case leaves its spans."""
    found: list[str] = []
    for some in _portions(cases):
        rows = connection.execute(
            select(case_span.c.head, case_span.c.first, case_span.c.last)
            .join(unit, case_span.c.unit_id == unit.c.id)
            .where(unit.c.sscc.in_(some))
            .order_by(case_span.c.id)
        )
        for row in rows:
            ends = (f"{row.head}-{number:06d}" for number in (row.first, row.last))
            found += serials_between(*ends)
    return tuple(found)


def _portions(things: Sequence[str]) -> Iterable[Sequence[str]]:
    """Things in portions that one statement takes."""
    return (things[at : at + _MANY] for at in range(0, len(things), _MANY))
