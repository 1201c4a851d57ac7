"""Cases, pallets, shipments and what undoes them, as they change the tables.

Everything is looked at again in the transaction that records it: a bag that a hold caught a moment
ago does not go into a case, and a case with such a bag does not leave.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from itertools import islice
from typing import Any

from sqlalchemy import Connection, Row, insert, select, update

from station.core.journal import Entry
from station.core.pack import FREE, LabelState, Quality
from station.core.shipping import (
    Case,
    ShippingError,
    Undoing,
    UnitKind,
    UnitLabel,
    serial_parts,
    serials_of,
    unit_label_follows,
)
from station.core.shipping_entries import (
    case_of,
    correction_of,
    pallet_of,
    shipment_of,
    unit_label_of,
)
from station.store.facts import fact_record
from station.store.hold_ranges import UnknownFact
from station.store.purges import Gone
from station.store.shipping_tables import CLOSED, case_span, shipment, unit
from station.store.tables import OF_BLEND, blend, pack, run

_ON_THE_UNIT = (LabelState.SPOOLED, LabelState.APPLIED)
_MANY = 400
_SHIPPED = "shipped"


class ShippingFacts:
    """Applies entries about cases, pallets and shipments inside the writer's transactions."""

    def __init__(self, connection: Connection, gone: Gone) -> None:
        self._connection = connection
        self._gone = gone

    # --- making -------------------------------------------------------------------------------

    def fill(self, entry: Entry) -> None:
        """Put bags into a case.

        Raises:
            UnknownFact: a bag is unknown, not free, without a label that is on it, in another
                case, or of another blend; says which and why.
        """
        case = case_of(fact_record(entry).fact)
        serials = serials_of(case.spans)
        # A case has bags of one run, which went with all of them: the entry itself is what is left.
        purged = self._gone.bag(serials[0])
        net = case.micrograms if purged else self._check_bags(serials, case)
        if (len(serials), net) != (case.bags, case.micrograms):
            raise UnknownFact(f"case {case.sscc}: its bags do not make {case.kilograms} kg")
        its = self._add_unit(
            entry, case.sscc, UnitKind.CASE, product=case.product, name=case.name,
            gtin=case.case_gtin or case.gtin, blend_lot=case.blend_lot, use_by=case.use_by,
            bags=case.bags, net_ug=net,
        )  # fmt: skip
        for first, last in case.spans:
            head, begin = serial_parts(first)
            values = {"head": head, "first": begin, "last": serial_parts(last)[1]}
            self._connection.execute(insert(case_span).values(unit_id=its, undone=0, **values))

    def close_pallet(self, entry: Entry) -> None:
        """Put cases on a pallet.

        Raises:
            UnknownFact: a case cannot stand on it; says which and why.
        """
        pallet = pallet_of(fact_record(entry).fact)
        cases = [self._loose(sscc, "put on a pallet") for sscc in pallet.cases]
        for case in cases:
            if case.kind is not UnitKind.CASE:
                raise UnknownFact(f"{case.sscc} is a pallet: a pallet holds cases")
            if case.product != pallet.product:
                raise UnknownFact(
                    f"case {case.sscc} is {case.name}, the pallet {pallet.name}: "
                    "one product on a pallet"
                )
            self.check_contents(case)
        its = self._add_unit(
            entry, pallet.sscc, UnitKind.PALLET, product=pallet.product, name=pallet.name,
            gtin=pallet.gtin, blend_lot=" ".join(pallet.blend_lots), use_by=pallet.use_by,
            bags=sum(case.bags for case in cases), net_ug=sum(case.net_ug for case in cases),
        )  # fmt: skip
        on_it = unit.c.id.in_([case.id for case in cases])
        self._connection.execute(update(unit).where(on_it).values(pallet_id=its))

    def ship(self, entry: Entry) -> None:
        """Let units leave for a customer.

        Raises:
            UnknownFact: one cannot leave, or the number is used; says which and why.
        """
        leaving = shipment_of(fact_record(entry).fact)
        units = [self._loose(sscc, "shipped") for sscc in leaving.units]
        for one in units:
            for case in self._cases_of(one):
                self.check_contents(case)
        known = select(shipment.c.id).where(shipment.c.number == leaving.number)
        if self._connection.execute(known).first() is not None:
            raise UnknownFact(f"shipment {leaving.number} is on record: take the next number")
        customer = leaving.customer
        values: dict[str, object] = {
            "uid": entry.body["uid"],
            "number": leaving.number,
            "customer": customer.code,
            "name": customer.name,
            "place": customer.place,
            "gln": customer.gln,
            "reference": leaving.reference,
            "state": _SHIPPED,
            "who": entry.who,
            "at": entry.at.utc,
            "offset_minutes": entry.at.offset_minutes,
        }
        key = self._connection.execute(insert(shipment).values(values)).inserted_primary_key
        assert key is not None
        self._connection.execute(
            update(unit).where(unit.c.id.in_([one.id for one in units])).values(shipment_id=key[0])
        )

    # --- undoing ------------------------------------------------------------------------------

    def correct(self, entry: Entry) -> None:
        """Undo a case, a pallet or a shipment.

        Raises:
            UnknownFact: there is no such thing, or something that came later stands on it.
        """
        wanted = correction_of(fact_record(entry).fact)
        if wanted.how in (Undoing.WITHDRAWN, Undoing.CAME_BACK):
            self._undo_shipment(wanted.subject, wanted.corrects, wanted.how)
            return
        its = self._loose(wanted.subject, "undone")
        kind = UnitKind.CASE if wanted.how is Undoing.OPENED else UnitKind.PALLET
        if (its.kind, its.uid) != (kind, wanted.corrects):
            raise UnknownFact(f"{its.sscc} is a {its.kind} of another entry: scan it again")
        self._connection.execute(
            update(unit).where(unit.c.id == its.id).values(undone=1, label=LabelState.VOIDED)
        )
        self._connection.execute(
            update(case_span).where(case_span.c.unit_id == its.id).values(undone=1)
        )
        self._connection.execute(
            update(unit).where(unit.c.pallet_id == its.id).values(pallet_id=None)
        )

    def _undo_shipment(self, number: str, uid: str, how: Undoing) -> None:
        mine = (shipment.c.number == number) & (shipment.c.uid == uid)
        row = self._connection.execute(select(shipment).where(mine)).one_or_none()
        if row is None:
            raise UnknownFact(f"shipment {number} is not in the record: check its number")
        if row.state != _SHIPPED:
            raise UnknownFact(f"shipment {number} is undone already: {row.state}")
        self._connection.execute(update(shipment).where(mine).values(state=str(how)))
        self._connection.execute(
            update(unit).where(unit.c.shipment_id == row.id).values(shipment_id=None)
        )

    # --- labels -------------------------------------------------------------------------------

    def label(self, entry: Entry) -> None:
        """Say how far the label of a unit has come; a higher copy number sends it out again.

        Raises:
            UnknownFact: no such unit, or its label cannot become this.
        """
        said = unit_label_of(fact_record(entry).fact)
        its = self._unit(said.sscc)
        try:
            unit_label_follows(UnitLabel(said.sscc, its.label, its.copies), said)
        except ShippingError as refused:
            raise UnknownFact(str(refused)) from refused
        self._connection.execute(
            update(unit).where(unit.c.id == its.id).values(label=said.state, copies=said.copy)
        )

    # --- what must hold -----------------------------------------------------------------------

    def check_contents(self, case: Row[Any]) -> None:
        """Refuse a case that holds a bag which must not leave, or whose own label is not on it.

        Raises:
            UnknownFact: names the first such bag and what is with it.
        """
        if case.label not in _ON_THE_UNIT:
            raise UnknownFact(
                f"the label of case {case.sscc} is {case.label}: print it again, or open the case"
            )
        spans = self._connection.execute(
            select(case_span.c.head, case_span.c.first, case_span.c.last).where(
                case_span.c.unit_id == case.id
            )
        )
        serials = [
            f"{row.head}-{number:06d}" for row in spans for number in range(row.first, row.last + 1)
        ]
        for serial, quality, label in self._states(serials):
            if quality not in FREE or label is not LabelState.APPLIED:
                raise UnknownFact(
                    f"case {case.sscc} must not leave: {_why_not(serial, quality, label)}"
                )

    def _check_bags(self, serials: Collection[str], case: Case) -> int:
        """Net of bags that may go into a case together."""
        found: dict[str, Row[Any]] = {}
        for some in _some(serials):
            rows = self._connection.execute(
                select(
                    pack.c.serial, pack.c.quality, pack.c.label, pack.c.net_ug, blend.c.code,
                    blend.c.use_by, run.c.product, run.c.version,
                )
                .select_from(pack).join(blend, OF_BLEND)
                .join(run, blend.c.run_id == run.c.id)
                .where(pack.c.serial.in_(some))
            )  # fmt: skip
            found |= {row.serial: row for row in rows}
        for serial in serials:
            row = found.get(serial)
            if row is None:
                raise UnknownFact(f"bag {serial} is not in the record: check the serial")
            if row.quality not in FREE or row.label is not LabelState.APPLIED:
                raise UnknownFact(_why_not(serial, row.quality, row.label))
            if (row.product, row.version) != (case.product, case.version):
                raise UnknownFact(f"bag {serial} is {row.product}, the case {case.product}")
            if (row.code, row.use_by) != (case.blend_lot, case.use_by):
                raise UnknownFact(
                    f"bag {serial} is of blend lot {row.code}, the case of {case.blend_lot}: "
                    "one blend lot in a case"
                )
            if (other := self.case_of_bag(serial)) is not None:
                raise UnknownFact(f"bag {serial} is in case {other} already")
        return sum(row.net_ug for row in found.values())

    def case_of_bag(self, serial: str) -> str | None:
        """SSCC of the case a bag is in, or None."""
        head, number = serial_parts(serial)
        before = (
            select(unit.c.sscc, case_span.c.last)
            .join(case_span, case_span.c.unit_id == unit.c.id)
            .where(case_span.c.head == head, case_span.c.first <= number, CLOSED)
            .order_by(case_span.c.first.desc())
            .limit(1)
        )
        row = self._connection.execute(before).one_or_none()
        return row.sscc if row is not None and row.last >= number else None

    def _states(self, serials: Iterable[str]) -> Iterable[tuple[str, Quality, LabelState]]:
        for some in _some(serials):
            yield from self._connection.execute(
                select(pack.c.serial, pack.c.quality, pack.c.label)
                .where(pack.c.serial.in_(some))
                .order_by(pack.c.id)
            )

    def _cases_of(self, one: Row[Any]) -> Iterable[Row[Any]]:
        if one.kind is UnitKind.CASE:
            return (one,)
        if one.label not in _ON_THE_UNIT:
            raise UnknownFact(f"the label of pallet {one.sscc} is {one.label}: print it again")
        return self._connection.execute(select(unit).where(unit.c.pallet_id == one.id)).all()

    def _loose(self, sscc: str, doing: str) -> Row[Any]:
        """A unit that stands in the house by itself.

        Raises:
            UnknownFact: it does not; says where it is.
        """
        its = self._unit(sscc)
        if its.undone:
            raise UnknownFact(f"{its.kind} {sscc} was undone: it cannot be {doing}")
        if its.shipment_id is not None:
            number = select(shipment.c.number).where(shipment.c.id == its.shipment_id)
            gone = self._connection.execute(number).scalar_one()
            raise UnknownFact(f"{its.kind} {sscc} left with shipment {gone}: it cannot be {doing}")
        if its.pallet_id is not None:
            on = select(unit.c.sscc).where(unit.c.id == its.pallet_id)
            pallet = self._connection.execute(on).scalar_one()
            raise UnknownFact(f"case {sscc} stands on pallet {pallet}: it cannot be {doing} alone")
        return its

    def _unit(self, sscc: str) -> Row[Any]:
        found = self._connection.execute(select(unit).where(unit.c.sscc == sscc)).one_or_none()
        if found is None:
            raise UnknownFact(f"{sscc} is no case or pallet of the record: check the SSCC")
        return found

    def _add_unit(self, entry: Entry, sscc: str, kind: UnitKind, **its: object) -> int:
        if self._connection.execute(select(unit.c.id).where(unit.c.sscc == sscc)).first():
            raise UnknownFact(f"{sscc} is on record already: no SSCC is given twice")
        values: Mapping[str, object] = {
            "uid": entry.body["uid"],
            "sscc": sscc,
            "kind": kind,
            "undone": 0,
            "label": LabelState.RECORDED,
            "copies": 0,
            "at": entry.at.utc,
            "offset_minutes": entry.at.offset_minutes,
            **its,
        }
        key = self._connection.execute(insert(unit).values(values)).inserted_primary_key
        assert key is not None
        return int(key[0])


def _some(serials: Iterable[str]) -> Iterable[tuple[str, ...]]:
    """Serials in portions that one statement takes."""
    rest = iter(serials)
    while portion := tuple(islice(rest, _MANY)):
        yield portion


def _why_not(serial: str, quality: Quality, label: LabelState) -> str:
    """Why a bag goes neither into a case nor to a customer."""
    if quality is Quality.HELD:
        return f"bag {serial} is held: QA decides about it first"
    if quality not in FREE:
        return f"bag {serial} is out of the count ({quality}): take it out of the case"
    return f"the label of bag {serial} is {label}: say first what became of it, LABELS (F5)"
