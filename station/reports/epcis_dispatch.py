"""EPCIS events of what became of bags after the line: cases, pallets, shipments, corrections.

A case and a pallet are AggregationEvents (ADD, step ``packing``); opening one is another such event
with DELETE (step ``unpacking``), which EPCIS takes for all its children. A shipment is an
ObjectEvent with the step ``shipping``. One that was entered wrongly is given again with an error
declaration (reason ``did_not_occur`` of the Core Business Vocabulary); one that came back is
followed by an ObjectEvent with the disposition ``returned``. Ids are those of the entries.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from labels.digital_link import digital_link
from labels.gs1 import Element
from labels.gs1_digits import gtin_14
from station.core.shipping import Case, Pallet, Shipment, Undoing, serials_of
from station.reports.dispatch import Dispatch, Done, Undone

Body = dict[str, object]

STEM = "https://id.gs1.org"


def offset(minutes: int) -> str:
    """Offset as EPCIS writes it; ``Z`` is not allowed."""
    hours, rest = divmod(abs(minutes), 60)
    return f"{'-' if minutes < 0 else '+'}{hours:02d}:{rest:02d}"


def dispatch_events(found: Dispatch, place: str) -> Iterator[Body]:
    """Give the events in the order of their entries, kind by kind.

    Args:
        found: what to tell.
        place: link of the packhouse.
    """
    for done, case in found.cases:
        yield from _together(done, case.sscc, _bags(case), place)
    for done, pallet in found.pallets:
        yield from _together(done, pallet.sscc, _cases(pallet), place)
    for done, shipment in found.shipments:
        yield from _shipped(done, shipment, place)


def _together(done: Done, sscc: str, children: list[str], place: str) -> Iterator[Body]:
    body: Body = {
        "type": "AggregationEvent",
        **_when(done.uid, done.at),
        "parentID": _unit(sscc),
        "childEPCs": children,
        "action": "ADD",
        "bizStep": "packing",
        "disposition": "in_progress",
        **_where(place),
    }
    yield body
    if done.undone is not None:
        yield {
            **body,
            **_when(done.undone.uid, done.undone.at),
            "childEPCs": [],
            "action": "DELETE",
            "bizStep": "unpacking",
            "packhouse:reason": done.undone.correction.reason,
        }


def _shipped(done: Done, shipment: Shipment, place: str) -> Iterator[Body]:
    customer = shipment.customer
    body: Body = {
        "type": "ObjectEvent",
        **_when(done.uid, done.at),
        "epcList": [_unit(sscc) for sscc in shipment.units],
        "action": "OBSERVE",
        "bizStep": "shipping",
        "disposition": "in_transit",
        "readPoint": {"id": place},
        "packhouse:shipment": shipment.number,
        "packhouse:reference": shipment.reference,
        "packhouse:customer": f"{customer.name}, {customer.place}",
    }
    if customer.gln:
        there = digital_link(STEM, (Element("414", customer.gln),))
        body["destinationList"] = [{"type": "location", "destination": there}]
    undone = done.undone
    if undone is None:
        yield body
    elif undone.correction.how is Undoing.WITHDRAWN:
        yield {**body, "errorDeclaration": _error(undone)}
    else:
        yield body
        yield {
            **body,
            **_when(undone.uid, undone.at),
            "bizStep": "receiving",
            "disposition": "returned",
            **_where(place),
            "packhouse:reason": undone.correction.reason,
        }


def _error(undone: Undone) -> Body:
    return {
        "declarationTime": undone.at.isoformat(timespec="milliseconds"),
        "reason": "did_not_occur",
        "packhouse:reason": undone.correction.reason,
    }


def _when(uid: str, at: datetime) -> Body:
    minutes = at.utcoffset()
    assert minutes is not None
    return {
        "eventID": f"urn:uuid:{uid}",
        "eventTime": at.isoformat(timespec="milliseconds"),
        "eventTimeZoneOffset": offset(int(minutes.total_seconds() // 60)),
    }


def _where(place: str) -> Body:
    return {"readPoint": {"id": place}, "bizLocation": {"id": place}}


def _bags(case: Case) -> list[str]:
    gtin = gtin_14(case.gtin)
    return [
        digital_link(STEM, (Element("01", gtin), Element("21", serial)))
        for serial in serials_of(case.spans)
    ]


def _cases(pallet: Pallet) -> list[str]:
    return [_unit(sscc) for sscc in pallet.cases]


def _unit(sscc: str) -> str:
    return digital_link(STEM, (Element("00", sscc),))
