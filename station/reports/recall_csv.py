"""A recall as a table: one row a bag, safe to open in any spreadsheet."""

from __future__ import annotations

import csv
from io import StringIO

from station.core.shipping_lines import Place
from station.reports.batch_csv import note_rows, safe
from station.reports.recall import Recall
from station.store.purged import table_notes
from station.store.recall import BlendLine

COLUMNS = (
    "station", "serial", "packed_at", "product", "version", "name", "gtin", "run", "line",
    "blend_lot", "production_day", "use_by", "input_lots", "net", "unit", "quality", "label",
    "case", "pallet", "shipment", "customer",
)  # fmt: skip


def recall_csv(found: Recall) -> bytes:
    """Return every bag of a recall as CSV in UTF-8 (RFC 4180), a head line first."""
    text = StringIO()
    writer = csv.writer(text)
    writer.writerow(COLUMNS)
    for station in found.stations:
        blends = {
            one.blend.id: _blend_cells(one.blend)
            for one in found.blends
            if one.station == station.name
        }
        for pack in station.packs:
            writer.writerow(
                (
                    safe(station.name),
                    safe(pack.serial),
                    pack.at.isoformat(),
                    *blends[pack.blend_id],
                    pack.net_digits,
                    pack.net_unit,
                    pack.quality,
                    pack.label,
                    *_place_cells(found.where.places.get(pack.serial)),
                )
            )
    writer.writerows(note_rows(table_notes(found.gone), len(COLUMNS)))
    return text.getvalue().encode()


def _place_cells(place: Place | None) -> tuple[str, ...]:
    if place is None:
        return ("",) * 4
    gone = place.shipment
    whom = ("", "") if gone is None else (safe(gone.number), safe(gone.customer.name))
    return (place.case, place.pallet, *whom)


def _blend_cells(blend: BlendLine) -> tuple[str, ...]:
    run = blend.run
    return (
        safe(run.product),
        str(run.version),
        safe(run.name),
        run.gtin,
        run.uid,
        safe(run.line),
        safe(blend.code),
        blend.production_day.isoformat(),
        blend.use_by.isoformat(),
        safe(" ".join(use.lot for use in blend.uses)),
    )
