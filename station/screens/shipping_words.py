"""Bags, cases and shipments in the words of the shipping page."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from station.core.casing import CasedBag
from station.core.metrology.exact import plain
from station.core.pack import LabelState
from station.core.shipping import UnitKind, spans_of
from station.core.shipping_lines import ShipmentLine, UnitLine
from station.screens.words import long_date

_MICRO_TO_KILO = Decimal("1e-9")
_ON = (LabelState.SPOOLED, LabelState.APPLIED)


def case_title(bags: Sequence[CasedBag], full: int) -> str:
    """What the case that is being filled holds."""
    if not bags:
        return "Scan the bags, type first..last, or touch NEXT CASE"
    of = f" of {full}" if full else ""
    return f"{len(bags)}{of} bags, {kilograms(sum(bag.micrograms for bag in bags))}"


def bag_rows(bags: Sequence[CasedBag]) -> tuple[str, ...]:
    """The bags gathered so far: what they are, then their serials."""
    if not bags:
        return ()
    first = bags[0]
    spans = spans_of(bag.serial for bag in bags)
    return (
        first.name,
        f"lot {first.blend_lot}, last day {long_date(first.use_by)}",
        *(one if one == last else f"{one} to {last}" for one, last in spans),
    )


def unit_row(unit: UnitLine) -> str:
    """A case or pallet in one line."""
    return f"{unit.kind} {unit.sscc}: {unit.name}, {unit.bags} bags, {kilograms(unit.net_ug)}"


def unit_state(unit: UnitLine) -> str:
    """What somebody must know of a unit before anything is done with it; empty when all is well."""
    if unit.held:
        return f"{unit.held} BAGS HELD OR OUT"
    if unit.label not in _ON:
        return f"LABEL {unit.label}".upper()
    return ""


def units_title(units: Sequence[UnitLine], kind: UnitKind | None) -> str:
    """What is gathered on a pallet, or for a shipment."""
    if not units:
        what = "the cases of the pallet" if kind else "the pallets and cases that leave"
        return f"Scan {what}"
    net = kilograms(sum(unit.net_ug for unit in units))
    bags = sum(unit.bags for unit in units)
    what = ("case" if kind else "unit") + ("s" if len(units) > 1 else "")
    return f"{len(units)} {what}, {bags} bags, {net}"


def shipment_row(gone: ShipmentLine) -> str:
    """A shipment in one line."""
    state = "" if gone.gone else f" – {gone.state}"
    return f"{gone.number} {gone.at:%d.%m. %H:%M} {gone.customer.name}, {gone.reference}{state}"


def kilograms(micrograms: int) -> str:
    """Net as kilograms, exact."""
    return f"{plain(micrograms * _MICRO_TO_KILO)} kg"
