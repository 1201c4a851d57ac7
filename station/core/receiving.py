"""A delivery of one input lot: what came, from whom, how warm, with which paper.

Fields follow the key data elements of receiving (21 CFR 1.1345: traceability lot code, quantity,
description, previous source, date, source of the code, reference document). A lot that came without
a code gets one of the packhouse's own; 21 CFR 1.1345(b) asks for that where the supplier is exempt.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, fields, replace
from datetime import date
from decimal import Decimal

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.lots import InputLot, LotError, LotStatus, checked_lot_code
from station.core.mass import Mass

_COLDEST, _WARMEST = Decimal(-30), Decimal(60)
_DATES = {"harvested": "harvest", "packed": "packing", "use_by": "last day"}


@dataclass(frozen=True, slots=True)
class Notes:
    """What is known of a delivery so far; each part may come from a scan or from a person.

    Args:
        code: lot code as the supplier wrote it.
        component: code of the component.
        supplier: who it came from.
        harvested, packed, use_by: days, where known.
        quantity: what came, exact.
        temperature: of the product on arrival, in degrees Celsius.
        reference: kind and number of the paper, such as ``delivery note 4711``.
        code_source: who gave the lot its code, or where that is written.
        gtin: article number of the case, 14 digits.
    """

    code: str | None = None
    component: str | None = None
    supplier: str | None = None
    harvested: date | None = None
    packed: date | None = None
    use_by: date | None = None
    quantity: Mass | None = None
    temperature: Decimal | None = None
    reference: str | None = None
    code_source: str | None = None
    gtin: str | None = None


@dataclass(frozen=True, slots=True)
class Delivery:
    """One lot as it was taken in.

    Args:
        lot: the lot the station packs from.
        quantity: what came; None where nobody weighed it.
        packed: day the supplier packed it, where known.
        temperature: of the product on arrival, in degrees Celsius; None where not taken.
        reference: kind and number of the paper.
        code_source: who gave the lot its code.
        supplier_code: the supplier's own code where it cannot be printed; empty otherwise.
        gtin: article number of the case; empty where none was read.
    """

    lot: InputLot
    quantity: Mass | None = None
    packed: date | None = None
    temperature: Decimal | None = None
    reference: str = ""
    code_source: str = ""
    supplier_code: str = ""
    gtin: str = ""

    def __post_init__(self) -> None:
        code = self.lot.code
        if self.quantity is not None and self.quantity.amount <= 0:
            raise LotError(f"lot {code}: {self.quantity} came: give more than nothing, or no mass")
        if self.packed is not None and self.packed > self.lot.received:
            raise LotError(
                f"lot {code}: packed {self.packed} after it was received {self.lot.received}"
            )
        warm = self.temperature
        if warm is not None and not _COLDEST <= warm <= _WARMEST:
            raise LotError(
                f"lot {code}: {warm} °C on arrival: allowed are {_COLDEST} to {_WARMEST} °C"
            )
        if self.lot.status is LotStatus.HELD:
            raise LotError(
                f"lot {code}: a delivery is held by an entry of its own, with its reason"
            )


def merge(one: Notes, other: Notes) -> Notes:
    """Return what two sources say together: two symbols of a case, or a scan and a person.

    Raises:
        LotError: they contradict each other; the message names the part and both values.
    """
    changes: dict[str, object] = {}
    for part in fields(Notes):
        first, second = getattr(one, part.name), getattr(other, part.name)
        if second is None or first == second:
            continue
        if first is not None:
            name = _DATES.get(part.name, part.name.replace("_", " "))
            raise LotError(
                f"{name} stands for {first} and for {second}: look at the case and keep one"
            )
        changes[part.name] = second
    return replace(one, **changes)  # type: ignore[arg-type]  # each value has its field's type


def own_lot_code(site: str, received: date, known: Collection[str]) -> str:
    """Return the next free lot code of the packhouse's own: site, year, day of the year, number.

    Raises:
        LotError: the day's 999 codes are used.
    """
    for number in range(1, 1000):
        code = f"{site}{received:%y%j}-{number:03d}"
        if code not in known:
            return checked_lot_code(code)
    raise LotError(f"all 999 lot codes of {received} are used: give a code by hand")


def receive(
    notes: Notes,
    known: Mapping[str, InputLot],
    components: Collection[str],
    site: str,
    day: date,
) -> Delivery:
    """Return the delivery that notes tell of.

    A supplier's code that no label can carry is kept beside a code of the packhouse's own.

    Args:
        notes: what is known of it.
        known: lots on record, by code.
        components: codes of the components there are.
        site: short code of the packhouse; begins its own lot codes.
        day: today on the plant's calendar.

    Raises:
        LotError: something is missing, unknown, used already or contradicts itself.
    """
    if notes.component is None:
        raise LotError(f"the delivery names no component: allowed are {', '.join(components)}")
    if notes.component not in components:
        raise LotError(
            f"component {notes.component!r} is not known: allowed are {', '.join(components)}"
        )
    if not (notes.supplier or "").strip():
        raise LotError("the delivery names no supplier: say who it came from")
    code, supplier_code, source = _named(notes, site, day, known)
    expired = notes.use_by is not None and notes.use_by < day
    lot = InputLot(
        code=code,
        component=notes.component,
        supplier=str(notes.supplier),
        received=day,
        harvested=notes.harvested,
        use_by=notes.use_by,
        status=LotStatus.EXPIRED if expired else LotStatus.FREE,
    )
    delivery = Delivery(
        lot=lot,
        quantity=notes.quantity,
        packed=notes.packed,
        temperature=notes.temperature,
        reference=notes.reference or "",
        code_source=source,
        supplier_code=supplier_code,
        gtin=notes.gtin or "",
    )
    check_new(delivery, known.get(code))
    return delivery


def check_new(delivery: Delivery, there: InputLot | None) -> None:
    """Refuse a code that another delivery has.

    Raises:
        LotError: the code is on record; says whether it is the same delivery scanned twice.
    """
    if there is None:
        return
    lot = delivery.lot
    if replace(there, status=lot.status) == lot:
        raise LotError(
            f"lot {lot.code} of {lot.supplier} was received already on {there.received}: "
            "load it, do not receive it again"
        )
    raise LotError(
        f"lot {lot.code} is already in the record as another delivery ({there.component} from "
        f"{there.supplier}, received {there.received}): leave the code empty to get a new one"
    )


def _named(
    notes: Notes, site: str, day: date, known: Mapping[str, InputLot]
) -> tuple[str, str, str]:
    """Lot code, the supplier's own where it cannot be printed, and who gave the code."""
    given = (notes.code or "").strip()
    source = notes.code_source or notes.supplier or ""
    if not given:
        return own_lot_code(site, day, known), "", site
    try:
        return checked_lot_code(given), "", source
    except LotError:
        return own_lot_code(site, day, known), given, site


def delivery_fact(delivery: Delivery, uid: str) -> Fact:
    """The entry that keeps a delivery; it also makes the lot known."""
    lot, came, warm = delivery.lot, delivery.quantity, delivery.temperature
    return Fact(
        kind=EntryKind.DELIVERY,
        uid=uid,
        subject=lot.code,
        result=str(lot.status),
        details={
            "component": lot.component,
            "supplier": lot.supplier,
            "received": lot.received.isoformat(),
            "harvested": _text(lot.harvested),
            "packed": _text(delivery.packed),
            "use_by": _text(lot.use_by),
            "quantity": None if came is None else str(came),
            "temperature": None if warm is None else format(warm, "f"),
            "reference": delivery.reference,
            "code_source": delivery.code_source,
            "supplier_code": delivery.supplier_code,
            "gtin": delivery.gtin,
        },
    )


def delivery_of(fact: Fact) -> Delivery:
    """The delivery an entry keeps."""
    details, warm = fact.details, fact.details["temperature"]
    quantity = details["quantity"]
    return Delivery(
        lot=delivered_lot(fact.subject, fact.result, details),
        quantity=None if quantity is None else Mass.parse(str(quantity)),
        packed=_day(details["packed"]),
        temperature=None if warm is None else Decimal(str(warm)),
        reference=str(details["reference"]),
        code_source=str(details["code_source"]),
        supplier_code=str(details["supplier_code"]),
        gtin=str(details["gtin"]),
    )


def delivered_lot(code: str, status: str, details: Mapping[str, Value]) -> InputLot:
    """The lot of a delivery's entry."""
    received = _day(details["received"])
    assert received is not None
    return InputLot(
        code=code,
        component=str(details["component"]),
        supplier=str(details["supplier"]),
        received=received,
        harvested=_day(details["harvested"]),
        use_by=_day(details["use_by"]),
        status=LotStatus(status),
    )


# --- holding a lot ----------------------------------------------------------------------------


def hold_lot_fact(
    uid: str, lot: str, reason: str, ranges: Collection[tuple[str, int, int]] = ()
) -> Fact:
    """The entry that holds a lot and every bag that could hold some of it.

    Args:
        uid: of the entry; its release names it.
        lot: code of the lot.
        reason: why, in a person's words.
        ranges: bags with it: epoch as text, first and last number; the line fills them in.

    Raises:
        LotError: there is no reason.
    """
    if not reason.strip():
        raise LotError(f"lot {lot} cannot be held without a reason: write why")
    listed: list[Value] = [list(one) for one in ranges]
    details: dict[str, Value] = {"lot": lot, "reason": reason.strip(), "ranges": listed}
    return Fact(EntryKind.HOLD, uid, lot, "held", details=details)


def release_lot_fact(uid: str, lot: str, hold: str, reason: str) -> Fact:
    """The entry that takes one hold off a lot and its bags.

    Raises:
        LotError: there is no reason.
    """
    if not reason.strip():
        raise LotError(f"lot {lot} cannot be released without a reason: write why")
    details: dict[str, Value] = {"lot": lot, "hold": hold, "reason": reason.strip()}
    return Fact(EntryKind.RELEASE, uid, lot, "released", details=details)


def held_lot(fact: Fact) -> str:
    """Code of the lot that a hold or release is about; empty where it is about bags alone."""
    if fact.kind not in (EntryKind.HOLD, EntryKind.RELEASE):
        return ""
    return str(fact.details.get("lot", ""))


def open_holds(records: Collection[FactRecord]) -> dict[str, tuple[FactRecord, ...]]:
    """Holds of lots that nobody released, by lot code; from facts oldest first."""
    holds: dict[str, FactRecord] = {}
    for record in records:
        if not held_lot(record.fact):
            continue
        if record.fact.kind is EntryKind.HOLD:
            holds[record.fact.uid] = record
        else:
            holds.pop(str(record.fact.details["hold"]), None)
    found: dict[str, tuple[FactRecord, ...]] = {}
    for record in holds.values():
        found[record.fact.subject] = (*found.get(record.fact.subject, ()), record)
    return found


def _text(day: date | None) -> str | None:
    return None if day is None else day.isoformat()


def _day(value: Value) -> date | None:
    return None if value is None else date.fromisoformat(str(value))
