"""``customers.toml``: whom the packhouse ships to, and how bags are cased; may be left out."""

from __future__ import annotations

from pathlib import Path
from types import MappingProxyType
from typing import Annotated

from labels.errors import LabelError
from labels.gs1_digits import PREFIX_LENGTHS, check_key, gtin_14
from station.config.check import check_keys, check_rows, check_table
from station.config.faults import Faults, unknown
from station.config.fields import Code, Rule, printable, refused, whole
from station.config.printer_file import check_printer, printer_settings
from station.config.settings import PrinterTable, Shape
from station.config.shipping import CaseSpec, ShippingSettings
from station.config.toml_file import read_toml
from station.core.shipping import MOST_BAGS, Customer

FILE = "customers.toml"
_KEYS = ("sscc", "customer")
_MAY = ("printer", "case")


def _prefix(text: str) -> str:
    if not (text.isascii() and text.isdecimal() and len(text) in PREFIX_LENGTHS):
        raise refused("is no company prefix")
    if len(text) > _LONGEST_PREFIX:
        raise refused("leaves too few digits to number units")
    return text


def _gln(text: str) -> str:
    if text:
        _check_digits(text, "a location number has 13 digits", (13,))
    return text


def _gtin(text: str) -> str:
    if text:
        _check_digits(text, "a case has a GTIN of 13 or 14 digits", (13, 14))
        gtin_14(text)
    return text


def _check_digits(text: str, words: str, lengths: tuple[int, ...]) -> None:
    if len(text) not in lengths:
        raise refused(f"has {len(text)} characters; {words}")
    try:
        check_key("number", text)
    except LabelError as wrong:
        raise refused(f"cannot be: {wrong.detail}") from wrong


_LONGEST_PREFIX = 8
_PREFIX = Rule(f"4 to {_LONGEST_PREFIX} digits in quotes, the GS1 company prefix", _prefix)


class SsccTable(Shape):
    """``[sscc]``: the numbers of cases and pallets."""

    company_prefix: Annotated[str, _PREFIX]
    extension_digit: Annotated[int, whole(0, 9)] = 0


class CustomerRow(Shape):
    """``[[customer]]``."""

    code: Code
    name: Annotated[str, printable(80)]
    place: Annotated[str, printable(200)]
    gln: Annotated[str, Rule("13 digits in quotes, the last one their check digit", _gln)] = ""


class CaseRow(Shape):
    """``[[case]]``: how one product is cased; ``code`` is the product's."""

    code: Code
    bags: Annotated[int, whole(1, MOST_BAGS, "bags")]
    gtin: Annotated[
        str, Rule("13 or 14 digits in quotes, the last one their check digit", _gtin)
    ] = ""


def read_customers(
    home: Path | None, products: tuple[str, ...] | None, faults: Faults
) -> ShippingSettings | None:
    """Return customers and cases, or None where the folder has no such file; notes what is wrong.

    Args:
        home: folder of the record; a printer's folder lies in it. None where it cannot be read.
        products: codes of the products there are, or None where their file cannot be read.
        faults: takes every fault found.
    """
    if not (faults.folder / FILE).exists():
        return None
    table = read_toml(FILE, faults)
    if table is None:
        return None
    here = tuple(key for key in _MAY if key in table)
    check_keys(table, (*_KEYS, *here), "[[{}]]", FILE, faults)
    numbers = check_table(SsccTable, table, "sscc", FILE, faults)
    customers = check_rows(CustomerRow, table, "customer", FILE, faults)
    cases = check_rows(CaseRow, table, "case", FILE, faults)
    printer = check_table(PrinterTable, table, "printer", FILE, faults)
    if printer is not None:
        check_printer(printer, FILE, faults)
    for number, row in cases.items():
        if products is not None and row.code not in products:
            why, allowed = unknown(row.code, products), ", ".join(products)
            faults.add(FILE, f"case[{number}].code", why, allowed)
    if numbers is None:
        return None
    return ShippingSettings(
        prefix=numbers.company_prefix,
        extension=numbers.extension_digit,
        printer=None if printer is None or home is None else printer_settings(printer, home),
        cases=MappingProxyType(
            {row.code: CaseSpec(row.code, row.bags, row.gtin) for row in cases.values()}
        ),
        customers=MappingProxyType(
            {
                row.code: Customer(row.code, row.name, row.place, row.gln)
                for row in customers.values()
            }
        ),
    )
