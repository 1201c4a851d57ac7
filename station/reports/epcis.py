"""EPCIS 2.0 (ISO/IEC 19987) in JSON-LD: what came in, and what each set of lots became.

One receiving ObjectEvent for each delivery, one TransformationEvent for each blend of an ended run,
and what became of the bags after it (see ``epcis_dispatch``).
Names are GS1 Digital Links (stem id.gs1.org) where there is a GS1 key; a lot that came without an
article number is named below the location number of the packhouse. Event ids follow from the
record, so that the same bags exported twice are the same events. Bags that were labelled and taken
out again later make the first count of their blend wrong: that event is declared in error and a
corrective one follows it (EPCIS 2.0 errorDeclaration, reason of the Core Business Vocabulary).

No event tells of a purged run: its times and quantities are gone, and an event is never made up.
That an event is missing does not take back one that was sent before, so nothing is declared in
error either. The document names such runs beside its body, in an extension of our own namespace
(allowed by EPCISDocumentType of the XML schema and epcisDocument of the JSON one); a partner that
keeps events alone does not keep it.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from urllib.parse import quote
from uuid import UUID, uuid5

from labels.digital_link import digital_link
from labels.errors import LabelError
from labels.gs1 import Element
from station.core.metrology.exact import decimal_of, plain
from station.errors import BadInput
from station.reports.epcis_dispatch import STEM, Body, dispatch_events, offset
from station.reports.traceability import Output, Receipt, Traceability, Transformation
from station.store.purged import GoneRun

_CONTEXT = "https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld"
_NAMES = UUID("6f1d3a52-7b8e-5c4f-9a60-2d1e8c7b9f34")
_GRAMS = 1000


@dataclass(frozen=True, slots=True)
class Number:
    """Digits that stand in JSON as a number, written as they are and never as a binary float."""

    digits: str


def epcis_document(
    found: Traceability, gln: str, made: datetime, gone: Sequence[GoneRun] = ()
) -> bytes:
    """Return an EPCIS document in UTF-8.

    Args:
        found: what to tell.
        gln: location number of the packhouse, 13 digits.
        made: when it is made, aware.
        gone: purged runs that belong to what was asked.

    Raises:
        BadInput: the location number's check digit is wrong, or a code no link can carry.
    """
    try:
        place = digital_link(STEM, (Element("414", gln),))
        events = [*_events(found, place, made)]
    except LabelError as refused:
        raise BadInput("EPCIS", str(refused)) from refused
    document: Body = {
        "@context": [_CONTEXT, {"packhouse": f"{place}#"}],
        "type": "EPCISDocument",
        "schemaVersion": "2.0",
        "creationDate": made.isoformat(timespec="milliseconds"),
        "epcisBody": {"eventList": events},
    }
    if gone:
        document["packhouse:purgedRuns"] = [_purged(one) for one in gone]
    return (_written(document) + "\n").encode()


def _events(found: Traceability, place: str, made: datetime) -> Iterator[Body]:
    for receipt in found.receipts:
        if receipt.entry is not None:
            yield _received(receipt, place)
    for one in found.transformations:
        if one.blend.run.ended is None:
            continue  # its count still grows, and an event is never changed
        if one.kept == one.labelled:
            yield _transformed(one, place, found, one.labelled, "")
            continue
        corrected = _transformed(one, place, found, one.kept, f"kept {one.kept.bags}")
        yield {
            **_transformed(one, place, found, one.labelled, ""),
            "errorDeclaration": {
                "declarationTime": made.isoformat(timespec="milliseconds"),
                "reason": "incorrect_data",
                "correctiveEventIDs": [corrected["eventID"]],
            },
        }
        if one.kept.bags:
            yield corrected
    yield from dispatch_events(found.dispatch, place)


def _received(receipt: Receipt, place: str) -> Body:
    entry, delivery = receipt.entry, receipt.delivery
    assert entry is not None
    assert delivery is not None
    quantity: Body = {"epcClass": _lot_class(receipt, place)}
    if delivery.quantity is not None:
        quantity |= {
            "quantity": Number(format(delivery.quantity.grams / _GRAMS, "f")),
            "uom": "KGM",
        }
    event: Body = {
        "type": "ObjectEvent",
        "eventID": f"urn:uuid:{entry.fact.uid}",
        "eventTime": entry.at.utc.isoformat(timespec="milliseconds"),
        "eventTimeZoneOffset": offset(entry.at.offset_minutes),
        "action": "OBSERVE",
        "bizStep": "receiving",
        "disposition": "in_progress",
        "readPoint": {"id": place},
        "bizLocation": {"id": place},
        "quantityList": [quantity],
        "packhouse:lot": receipt.lot.code,
        "packhouse:supplier": receipt.lot.supplier,
    }
    if delivery.reference:
        event["packhouse:reference"] = delivery.reference
    return event


def _transformed(
    one: Transformation, place: str, found: Traceability, output: Output, version: str
) -> Body:
    blend, receipts = one.blend, {each.lot.code: each for each in found.receipts}
    name = f"{found.site} {found.station} {one.run.id} {blend.code} {_lots(one)} {version}"
    gtin = one.run.product.gtin.zfill(14)
    made_of = digital_link(STEM, (Element("01", gtin), Element("10", blend.code)))
    minutes = one.completed.utcoffset()
    assert minutes is not None
    return {
        "type": "TransformationEvent",
        "eventID": f"urn:uuid:{uuid5(_NAMES, name)}",
        "eventTime": one.completed.isoformat(timespec="milliseconds"),
        "eventTimeZoneOffset": offset(int(minutes.total_seconds() // 60)),
        "bizStep": "creating_class_instance",
        "disposition": "active",
        "readPoint": {"id": place},
        "bizLocation": {"id": place},
        "inputQuantityList": [
            {
                "epcClass": _lot_class(receipts[lot.code], place),
                "quantity": Number(str(decimal_of(used.likely / _GRAMS, 3))),
                "uom": "KGM",
            }
            for lot, used in one.inputs
        ],
        "outputQuantityList": [{"epcClass": made_of, "quantity": Number(str(output.bags))}],
        "packhouse:run": one.run.id,
        "packhouse:netKilograms": plain(output.kilograms),
        "packhouse:useBy": blend.use_by.isoformat(),
        "packhouse:inputQuantities": "estimates of the recipe's shares",
    }


def _purged(gone: GoneRun) -> Body:
    """A run without events, and where its entries went; who purged it is no partner's business."""
    run = gone.run
    return {
        "packhouse:run": run.uid,
        "packhouse:product": run.product,
        "packhouse:blendLots": list(run.blend_lots),
        "packhouse:inputLots": list(run.inputs),
        "packhouse:firstProductionDay": run.first_day.isoformat(),
        "packhouse:lastProductionDay": run.last_day.isoformat(),
        "packhouse:bags": Number(str(run.bags)),
        "packhouse:purged": gone.record.at.utc.isoformat(timespec="milliseconds"),
        "packhouse:keptYears": Number(str(gone.purge.keep_years)),
        "packhouse:export": gone.purge.folder,
        "packhouse:manifestSha256": gone.purge.digest,
    }


def _lots(one: Transformation) -> str:
    return " ".join(use.lot for use in one.blend.uses)


def _lot_class(receipt: Receipt, place: str) -> str:
    delivery = receipt.delivery
    if delivery is not None and delivery.gtin:
        elements = (Element("01", delivery.gtin.zfill(14)), Element("10", receipt.lot.code))
        return digital_link(STEM, elements)
    return f"{place}#lot/{quote(receipt.lot.code, safe='')}"


def _written(value: object) -> str:
    """JSON with exact numbers."""
    if isinstance(value, Number):
        return value.digits
    if isinstance(value, dict):
        inner = ", ".join(f"{json.dumps(name)}: {_written(one)}" for name, one in value.items())
        return f"{{{inner}}}"
    if isinstance(value, list):
        return f"[{', '.join(map(_written, value))}]"
    return json.dumps(value, ensure_ascii=False)
