"""Questions about cases, pallets and shipments, and where each bag went."""

from __future__ import annotations

from bisect import bisect_left
from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping
from datetime import date, datetime
from itertools import islice
from pathlib import Path
from typing import Any, TypeVar

from sqlalchemy import Connection, Row, Select, func, select

from station.core.casing import CasedBag
from station.core.pack import FREE, LabelState
from station.core.shipping import MOST_BAGS, Customer, serial_parts
from station.core.shipping_lines import Place, ShipmentLine, UnitLine
from station.store.engine import reading
from station.store.queries import local_time, unknown, unknown_serial
from station.store.shipping_tables import CLOSED, IN_HOUSE, case_span, shipment, unit
from station.store.tables import OF_BLEND, blend, identity, pack, run

_T = TypeVar("_T")

_MANY = 400


def cased_bags(home: Path, serials: Collection[str]) -> tuple[CasedBag, ...]:
    """Return bags by their serials, in the order of packing.

    Raises:
        BadInput: one is not on record; the message names close ones.
    """
    with reading(home) as connection:
        found = _cased_bags(connection, serials)
        there = {one.serial for one in found}
        for serial in serials:
            if serial not in there:
                raise unknown_serial(connection, serial)
    return found


def loose_bags(home: Path, run_uid: str) -> tuple[CasedBag, ...]:
    """Return the good bags of a run that are in no case yet, in the order of packing."""
    free = (pack.c.quality.in_(FREE)) & (pack.c.label == LabelState.APPLIED)
    statement = (
        select(pack.c.serial)
        .select_from(pack)
        .join(blend, OF_BLEND)
        .join(run, blend.c.run_id == run.c.id)
        .where(run.c.uid == run_uid, free)
        .order_by(pack.c.id)
    )
    with reading(home) as connection:
        serials = connection.execute(statement).scalars().all()
        places = _places(connection, serials)
        return _cased_bags(connection, [one for one in serials if one not in places])


def units_in_house(home: Path) -> tuple[UnitLine, ...]:
    """Return every case and pallet that stands in the house by itself, oldest first."""
    with reading(home) as connection:
        return _unit_lines(connection, _UNITS.where(IN_HOUSE).order_by(unit.c.id))


def unit_named(home: Path, sscc: str) -> UnitLine:
    """Return a case or pallet.

    Raises:
        BadInput: there is none of this SSCC; the message names close ones.
    """
    with reading(home) as connection:
        found = _unit_lines(connection, _UNITS.where(unit.c.sscc == sscc))
        if not found:
            newest = select(unit.c.sscc).order_by(unit.c.id.desc()).limit(1000)
            known = connection.execute(newest).scalars().all()
            raise unknown(f"case or pallet {sscc!r}", sscc, list(known))
        return found[0]


def units_of(home: Path, *, pallet: str = "", shipped: str = "") -> tuple[UnitLine, ...]:
    """Return the cases of a pallet, or the units of a shipment, as they stand now."""
    statement = _UNITS.order_by(unit.c.id)
    if pallet:
        statement = statement.where(_PALLET.c.sscc == pallet)
    if shipped:
        statement = statement.where(shipment.c.number == shipped)
    with reading(home) as connection:
        return _unit_lines(connection, statement)


def shipments(home: Path, newest: int | None = None) -> tuple[ShipmentLine, ...]:
    """Return shipments with those undone, newest first."""
    statement = select(shipment).order_by(shipment.c.id.desc())
    with reading(home) as connection:
        rows = connection.execute(statement if newest is None else statement.limit(newest))
        return tuple(_shipment_line(row) for row in rows)


def shipment_named(home: Path, number: str) -> ShipmentLine:
    """Return a shipment.

    Raises:
        BadInput: there is none of this number; the message names close ones.
    """
    with reading(home) as connection:
        row = connection.execute(select(shipment).where(shipment.c.number == number)).one_or_none()
        if row is None:
            newest = select(shipment.c.number).order_by(shipment.c.id.desc()).limit(1000)
            known = connection.execute(newest).scalars().all()
            raise unknown(f"shipment {number!r}", number, list(known))
        return _shipment_line(row)


def places_of(home: Path, serials: Collection[str]) -> Mapping[str, Place]:
    """Return where bags are, by serial; a bag in no case has no place."""
    with reading(home) as connection:
        return _places(connection, serials)


def cases_ever_with(home: Path, serials: Iterable[str]) -> tuple[frozenset[str], datetime | None]:
    """Return the cases that hold or once held some bags, and when the first of them was filled."""
    by_head = _by_head(serials)
    with reading(home) as connection:
        rows = [
            row
            for head, bags in by_head.items()
            for row in connection.execute(_spans(head, bags).add_columns(unit.c.at))
            if _near(bags, row)
        ]
    codes = frozenset(row.sscc for row in rows)
    return codes, min((row.at for row in rows), default=None)


def next_numbers(home: Path, day: date) -> tuple[int, int, int]:
    """Return the mark of this record for SSCCs (0 to 1023), units made in it, shipments of a day.

    Args:
        home: folder of the record.
        day: today on the plant's calendar.
    """
    with reading(home) as connection:
        epoch = connection.execute(select(identity.c.epoch)).scalar_one()
        units = connection.execute(select(func.count()).select_from(unit)).scalar_one()
        recent = select(shipment).order_by(shipment.c.id.desc()).limit(1000)
        of_day = [one for one in connection.execute(recent) if _shipment_line(one).at.date() == day]
    return (epoch >> 53) & 0x3FF, units, len(of_day)


def labels_on_their_way(home: Path) -> tuple[tuple[str, int], ...]:
    """Return SSCC and copies of units whose label was recorded and never handed over."""
    on_their_way = unit.c.label.in_((LabelState.RECORDED, LabelState.SUBMITTED))
    statement = select(unit.c.sscc, unit.c.copies).where(IN_HOUSE, on_their_way).order_by(unit.c.id)
    with reading(home) as connection:
        return tuple((row.sscc, row.copies) for row in connection.execute(statement))


# --- reading ----------------------------------------------------------------------------------

_PALLET = unit.alias("its_pallet")
_UNITS: Select[Any] = (
    select(
        unit,
        _PALLET.c.sscc.label("on_pallet"),
        shipment.c.number.label("left_with"),
    )
    .outerjoin(_PALLET, unit.c.pallet_id == _PALLET.c.id)
    .outerjoin(shipment, shipment.c.id == func.coalesce(unit.c.shipment_id, _PALLET.c.shipment_id))
)


def _unit_lines(connection: Connection, statement: Select[Any]) -> tuple[UnitLine, ...]:
    rows = connection.execute(statement).all()
    held = _held_in(connection, [row.id for row in rows])
    return tuple(
        UnitLine(
            uid=row.uid,
            sscc=row.sscc,
            kind=row.kind,
            product=row.product,
            name=row.name,
            gtin=row.gtin,
            blend_lot=row.blend_lot,
            use_by=row.use_by,
            bags=row.bags,
            net_ug=row.net_ug,
            label=row.label,
            copies=row.copies,
            undone=bool(row.undone),
            pallet=row.on_pallet or "",
            shipment=row.left_with or "",
            held=held.get(row.id, 0),
            at=local_time(row.at, row.offset_minutes),
        )
        for row in rows
    )


def _held_in(connection: Connection, units: Collection[int]) -> dict[int, int]:
    """Bags that must not leave, by unit; a pallet's are those of its cases."""
    counts: dict[int, int] = defaultdict(int)
    for some in _portions(units):
        spans = connection.execute(
            select(
                case_span.c.head, case_span.c.first, case_span.c.last,
                unit.c.id, unit.c.pallet_id,
            )
            .join(unit, case_span.c.unit_id == unit.c.id)
            .where(CLOSED, unit.c.id.in_(some) | unit.c.pallet_id.in_(some))
        ).all()  # fmt: skip
        owner = {
            f"{row.head}-{number:06d}": (row.id, row.pallet_id)
            for row in spans
            for number in range(row.first, row.last + 1)
        }
        for serials in _portions(owner):
            bad = select(pack.c.serial).where(
                pack.c.serial.in_(serials), pack.c.quality.not_in(FREE)
            )
            for serial in connection.execute(bad).scalars():
                for its in owner[serial]:
                    if its is not None:
                        counts[its] += 1
    return counts


def _cased_bags(connection: Connection, serials: Collection[str]) -> tuple[CasedBag, ...]:
    lines: list[CasedBag] = []
    for some in _portions(serials):
        rows = connection.execute(
            select(
                pack.c.serial, run.c.product, run.c.version, run.c.name, run.c.gtin, run.c.uid,
                blend.c.code, blend.c.use_by, pack.c.net_ug,
            )
            .select_from(pack).join(blend, OF_BLEND)
            .join(run, blend.c.run_id == run.c.id)
            .where(pack.c.serial.in_(some))
            .order_by(pack.c.id)
        )  # fmt: skip
        lines += [CasedBag(*row) for row in rows]
    return tuple(lines)


def _places(connection: Connection, serials: Iterable[str]) -> dict[str, Place]:
    """Spans of cases laid beside the bags, by head and number."""
    gone: dict[int, ShipmentLine] = {}
    found: dict[str, Place] = {}
    for head, bags in _by_head(serials).items():
        statement = _spans(head, bags).add_columns(
            _PALLET.c.sscc.label("on_pallet"),
            func.coalesce(unit.c.shipment_id, _PALLET.c.shipment_id).label("left_with"),
        )
        spans = connection.execute(
            statement.outerjoin(_PALLET, unit.c.pallet_id == _PALLET.c.id).where(CLOSED)
        ).all()
        left = {row.left_with for row in spans if row.left_with is not None} - set(gone)
        for some in _portions(left):
            rows = connection.execute(select(shipment).where(shipment.c.id.in_(some)))
            gone |= {row.id: _shipment_line(row) for row in rows}
        for row in spans:
            place = Place(row.sscc, row.on_pallet or "", gone.get(row.left_with))
            found |= dict.fromkeys((serial for _, serial in _near(bags, row)), place)
    return found


_Bags = list[tuple[int, str]]
"""Numbers and serials of bags of one head, in order."""


def _by_head(serials: Iterable[str]) -> dict[str, _Bags]:
    found: dict[str, _Bags] = defaultdict(list)
    for serial in serials:
        head, number = serial_parts(serial)
        found[head].append((number, serial))
    return {head: sorted(bags) for head, bags in found.items()}


def _spans(head: str, bags: _Bags) -> Select[Any]:
    """Spans of all cases, undone or not, that may hold some of the bags."""
    least, most = bags[0][0], bags[-1][0]
    return (
        select(case_span.c.first, case_span.c.last, unit.c.sscc)
        .join(unit, case_span.c.unit_id == unit.c.id)
        .where(case_span.c.head == head)
        .where(case_span.c.first.between(least - MOST_BAGS, most), case_span.c.last >= least)
        .order_by(case_span.c.first)
    )


def _near(bags: _Bags, span: Row[Any]) -> _Bags:
    """The bags that lie in a span."""
    return bags[bisect_left(bags, (span.first, "")) : bisect_left(bags, (span.last + 1, ""))]


def _portions(things: Iterable[_T]) -> Iterable[tuple[_T, ...]]:
    """Things in portions that one statement takes."""
    rest = iter(things)
    while portion := tuple(islice(rest, _MANY)):
        yield portion


def _shipment_line(row: Row[Any]) -> ShipmentLine:
    return ShipmentLine(
        uid=row.uid,
        number=row.number,
        customer=Customer(row.customer, row.name, row.place, row.gln),
        reference=row.reference,
        state=row.state,
        who=row.who,
        at=local_time(row.at, row.offset_minutes),
    )
