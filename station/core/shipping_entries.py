"""The entries of cases, pallets, shipments, corrections and labels: written and read back."""

from __future__ import annotations

from datetime import date

from station.core.facts import Fact
from station.core.journal import EntryKind, Value
from station.core.kept_values import listed, texts, whole
from station.core.mass import Mass
from station.core.pack import LabelState
from station.core.shipping import (
    MOST_BAGS,
    MOST_UNITS,
    Case,
    Correction,
    Customer,
    Pallet,
    Shipment,
    ShippingError,
    Undoing,
    UnitLabel,
)


def case_fact(case: Case, uid: str, run: str = "") -> Fact:
    """The entry that keeps a filled case.

    Raises:
        ShippingError: no bag is in it, or too many are.
    """
    if not 1 <= case.bags <= MOST_BAGS:
        raise ShippingError(f"a case holds 1 to {MOST_BAGS} bags, not {case.bags}")
    spans: list[Value] = [list(span) for span in case.spans]
    details: dict[str, Value] = {
        "product": case.product,
        "version": case.version,
        "name": case.name,
        "gtin": case.gtin,
        "case_gtin": case.case_gtin,
        "blend_lot": case.blend_lot,
        "use_by": case.use_by.isoformat(),
        "spans": spans,
        "bags": case.bags,
        "micrograms": case.micrograms,
        "date_words": case.date_words,
    }
    return Fact(EntryKind.CASE, uid, case.sscc, "filled", run, details)


def case_of(fact: Fact) -> Case:
    """The case an entry keeps."""
    details = fact.details
    return Case(
        sscc=fact.subject,
        product=str(details["product"]),
        version=whole(details["version"]),
        name=str(details["name"]),
        gtin=str(details["gtin"]),
        case_gtin=str(details["case_gtin"]),
        blend_lot=str(details["blend_lot"]),
        use_by=date.fromisoformat(str(details["use_by"])),
        spans=tuple(_span_of(one) for one in listed(details["spans"])),
        bags=whole(details["bags"]),
        micrograms=whole(details["micrograms"]),
        date_words=str(details["date_words"]),
    )


def _span_of(value: Value) -> tuple[str, str]:
    first, last = texts(value)
    return first, last


def pallet_fact(pallet: Pallet, uid: str) -> Fact:
    """The entry that keeps a closed pallet.

    Raises:
        ShippingError: no case is on it, too many are, or it weighs nothing.
    """
    if not 1 <= len(pallet.cases) <= MOST_UNITS:
        raise ShippingError(f"a pallet holds 1 to {MOST_UNITS} cases, not {len(pallet.cases)}")
    if pallet.gross.amount <= 0:
        raise ShippingError(f"a pallet of {pallet.gross}: weigh it as it stands")
    details: dict[str, Value] = {
        "product": pallet.product,
        "name": pallet.name,
        "gtin": pallet.gtin,
        "count": pallet.count,
        "blend_lots": list(pallet.blend_lots),
        "use_by": pallet.use_by.isoformat(),
        "cases": list(pallet.cases),
        "gross": str(pallet.gross),
        "date_words": pallet.date_words,
    }
    return Fact(EntryKind.PALLET, uid, pallet.sscc, "closed", details=details)


def pallet_of(fact: Fact) -> Pallet:
    """The pallet an entry keeps."""
    details = fact.details
    return Pallet(
        sscc=fact.subject,
        product=str(details["product"]),
        name=str(details["name"]),
        gtin=str(details["gtin"]),
        count=whole(details["count"]),
        blend_lots=texts(details["blend_lots"]),
        use_by=date.fromisoformat(str(details["use_by"])),
        cases=texts(details["cases"]),
        gross=Mass.parse(str(details["gross"])),
        date_words=str(details["date_words"]),
    )


def shipment_fact(shipment: Shipment, uid: str) -> Fact:
    """The entry that keeps a shipment.

    Raises:
        ShippingError: it has no unit, too many, or no paper.
    """
    if not 1 <= len(shipment.units) <= MOST_UNITS:
        raise ShippingError(f"a shipment has 1 to {MOST_UNITS} units, not {len(shipment.units)}")
    if not shipment.reference.strip():
        raise ShippingError("a shipment needs its paper: kind and number, such as delivery note 12")
    customer = shipment.customer
    details: dict[str, Value] = {
        "customer": customer.code,
        "name": customer.name,
        "place": customer.place,
        "gln": customer.gln,
        "reference": shipment.reference.strip(),
        "units": list(shipment.units),
    }
    return Fact(EntryKind.SHIPMENT, uid, shipment.number, "shipped", details=details)


def shipment_of(fact: Fact) -> Shipment:
    """The shipment an entry keeps."""
    details = fact.details
    names = (str(details[name]) for name in ("customer", "name", "place", "gln"))
    return Shipment(
        fact.subject, Customer(*names), str(details["reference"]), texts(details["units"])
    )


def correction_fact(correction: Correction, uid: str) -> Fact:
    """The entry that undoes another.

    Raises:
        ShippingError: there is no reason.
    """
    if not correction.reason.strip():
        raise ShippingError(f"{correction.subject} cannot be undone without a reason: say why")
    details: dict[str, Value] = {
        "corrects": correction.corrects,
        "reason": correction.reason.strip(),
    }
    return Fact(EntryKind.CORRECTION, uid, correction.subject, str(correction.how), details=details)


def correction_of(fact: Fact) -> Correction:
    """The correction an entry keeps."""
    details = fact.details
    how = Undoing(fact.result)
    return Correction(fact.subject, how, str(details["corrects"]), str(details["reason"]))


def unit_label_fact(label: UnitLabel, uid: str) -> Fact:
    """The entry that says how far the label of a unit has come."""
    details: dict[str, Value] = {"copy": label.copy, "why": label.why}
    return Fact(EntryKind.UNIT_LABEL, uid, label.sscc, str(label.state), details=details)


def unit_label_of(fact: Fact) -> UnitLabel:
    """What an entry says of the label of a unit."""
    details = fact.details
    state = LabelState(fact.result)
    return UnitLabel(fact.subject, state, whole(details["copy"]), str(details["why"]))
