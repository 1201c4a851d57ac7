"""Records on demand: the sortable spreadsheet of 21 CFR 1.1455(c)(3)(ii), and one plain text.

One sheet for each critical tracking event, one row for each lot in it, with the key data elements
of 21 CFR 1.1345 (receiving), 1.1350 (transformation) and 1.1340 (shipping). A shipment that was
undone is no shipping event. The plain text holds what SFCR section 90(1) asks for, one step back
and one step forward, in one file (Canada, section 91: a single file, in plain text, for standard
software).

No cell is ever a formula: in XLSX every text is written as text, in CSV and plain text a cell that
a program could take for one begins with an apostrophe.
"""

from __future__ import annotations

import csv
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal
from fractions import Fraction
from io import BytesIO, StringIO

import xlsxwriter

from station.core.metrology.exact import decimal_of, trimmed
from station.reports.batch_csv import note_rows, safe
from station.reports.dispatch import Leaving
from station.reports.traceability import Receipt, Traceability, Transformation
from station.store.purged import GoneRun, table_notes

Cell = str | Decimal

RECEIVING = (
    "traceability_lot_code", "quantity", "unit", "product_description",
    "immediate_previous_source", "receiving_location", "date_received", "harvest_date",
    "lot_code_source", "reference_document", "suppliers_own_code",
)  # fmt: skip
TRANSFORMATION = (
    "new_lot_code", "date_completed", "location_transformed", "product_description", "gtin",
    "quantity", "unit", "net_kg", "use_by", "reference_document", "input_lot_code",
    "input_description", "input_quantity", "input_unit", "input_least", "input_most",
)  # fmt: skip
SHIPPING = (
    "traceability_lot_code", "quantity", "unit", "product_description", "recipient",
    "ship_from_location", "date_shipped", "lot_code_source", "reference_document", "gtin",
    "net_kg", "shipment", "recipient_location_number",
)  # fmt: skip
PLAIN = (
    "record", "common_name", "lot_code", "from_by_or_to", "date", "quantity", "unit",
    "made_into_lot_code",
)  # fmt: skip
_WIDTH = 24


@dataclass(frozen=True, slots=True)
class Sheet:
    """One table: its name, its head and its rows, and lines under them on what is not in it."""

    name: str
    head: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]
    notes: tuple[str, ...] = ()


def sheets(found: Traceability, place: str, gone: Sequence[GoneRun] = ()) -> tuple[Sheet, ...]:
    """Return receiving, transformation and shipping.

    Args:
        found: what to tell.
        place: business name and address of the packhouse.
        gone: purged runs that belong to it.
    """
    notes = table_notes(gone)
    return (
        Sheet("receiving", RECEIVING, tuple(_received(one, place) for one in found.receipts)),
        Sheet(
            "transformation",
            TRANSFORMATION,
            tuple(row for one in found.transformations for row in _transformed(one, place)),
            notes,
        ),
        Sheet(
            "shipping",
            SHIPPING,
            tuple(_shipped(one, place) for one in found.dispatch.leaving),
            notes,
        ),
    )


def xlsx(tables: Sequence[Sheet], made: datetime, title: str = "Traceability records") -> bytes:
    """Return a workbook with a sheet for each table; quantities are exact numbers."""
    kept = BytesIO()
    book = xlsxwriter.Workbook(
        kept,
        {
            "in_memory": True,
            "strings_to_formulas": False,
            "strings_to_urls": False,
            "strings_to_numbers": False,
        },
    )
    book.set_properties({"title": title, "created": made.replace(tzinfo=None)})
    head = book.add_format({"bold": True, "bottom": 1})
    for table in tables:
        sheet = book.add_worksheet(table.name)
        sheet.set_column(0, len(table.head) - 1, _WIDTH)
        sheet.freeze_panes(1, 0)
        sheet.autofilter(0, 0, max(1, len(table.rows)), len(table.head) - 1)
        for column, name in enumerate(table.head):
            sheet.write_string(0, column, name, head)
        for row, cells in enumerate(table.rows, start=1):
            for column, cell in enumerate(cells):
                if isinstance(cell, Decimal):
                    sheet.write_number(row, column, cell)
                else:
                    sheet.write_string(row, column, cell)
        for row, words in enumerate(table.notes, start=max(1, len(table.rows)) + 2):
            sheet.write_string(row, 0, words)  # below the filter, which would hide it
    book.close()
    return kept.getvalue()


def csv_of(table: Sheet) -> bytes:
    """Return one table as CSV in UTF-8 (RFC 4180)."""
    text = StringIO()
    writer = csv.writer(text)
    writer.writerow(table.head)
    writer.writerows([_text(cell) for cell in row] for row in table.rows)
    writer.writerows(note_rows(table.notes, len(table.head)))
    return text.getvalue().encode()


def plain_text(found: Traceability, place: str, gone: Sequence[GoneRun] = ()) -> bytes:
    """Return everything in one table, columns parted by tabs, in UTF-8."""
    rows: list[tuple[Cell, ...]] = []
    for receipt in found.receipts:
        cells = _received(receipt, place)
        used = [one.blend.code for one in found.transformations if _has(one, receipt)]
        name, source, day = cells[3], cells[4], cells[6]
        into = " ".join(dict.fromkeys(used))
        rows.append(("received", name, cells[0], source, day, cells[1], cells[2], into))
    rows += [
        (
            "packed", one.run.product.name, one.blend.code, place, one.completed.date().isoformat(),
            Decimal(one.kept.bags), "bag", "",
        )
        for one in found.transformations
    ]  # fmt: skip
    rows += [
        (
            "shipped", one.name, one.blend_lot, _recipient(one), one.at.date().isoformat(),
            Decimal(one.bags), "bag", "",
        )
        for one in found.dispatch.leaving
    ]  # fmt: skip
    rows += [(words, *[""] * (len(PLAIN) - 1)) for words in table_notes(gone)]
    lines = ["\t".join(PLAIN), *("\t".join(_flat(cell) for cell in row) for row in rows)]
    return ("\r\n".join(lines) + "\r\n").encode()


def _has(one: Transformation, receipt: Receipt) -> bool:
    return any(use.lot == receipt.lot.code for use in one.blend.uses)


def _received(receipt: Receipt, place: str) -> tuple[Cell, ...]:
    lot, delivery = receipt.lot, receipt.delivery
    quantity = None if delivery is None else delivery.quantity
    return (
        lot.code,
        "" if quantity is None else trimmed(quantity.amount),
        "" if quantity is None else str(quantity.unit),
        lot.component,
        lot.supplier,
        place,
        lot.received.isoformat(),
        "" if lot.harvested is None else lot.harvested.isoformat(),
        "" if delivery is None else delivery.code_source,
        "" if delivery is None else delivery.reference,
        "" if delivery is None else delivery.supplier_code,
    )


def _transformed(one: Transformation, place: str) -> tuple[tuple[Cell, ...], ...]:
    blend, product = one.blend, one.run.product
    output: tuple[Cell, ...] = (
        blend.code,
        one.completed.isoformat(timespec="seconds"),
        place,
        f"{product.name}, {product.nominal}",
        product.gtin,
        Decimal(one.kept.bags),
        "bag",
        trimmed(one.kept.kilograms),
        blend.use_by.isoformat(),
        f"run {one.run.id}",
    )
    return tuple(
        (*output, lot.code, lot.component, *_kilograms(used.likely), *_bounds(used.low, used.high))
        for lot, used in one.inputs
    )


def _shipped(one: Leaving, place: str) -> tuple[Cell, ...]:
    shipment = one.shipment
    return (
        one.blend_lot,
        Decimal(one.bags),
        "bag",
        one.name,
        _recipient(one),
        place,
        one.at.date().isoformat(),
        place,
        shipment.reference,
        one.gtin,
        trimmed(one.kilograms),
        shipment.number,
        shipment.customer.gln,
    )


def _recipient(one: Leaving) -> str:
    customer = one.shipment.customer
    return f"{customer.name}, {customer.place}"


def _kilograms(grams: Fraction) -> tuple[Cell, Cell]:
    return decimal_of(grams / 1000, 3), "kg"


def _bounds(low: Fraction, high: Fraction) -> tuple[Cell, Cell]:
    return decimal_of(low / 1000, 3), decimal_of(high / 1000, 3)


def _text(cell: Cell) -> str:
    return format(cell, "f") if isinstance(cell, Decimal) else safe(cell)


def _flat(cell: Cell) -> str:
    """A cell without signs that part cells or lines."""
    return " ".join(_text(cell).split())
