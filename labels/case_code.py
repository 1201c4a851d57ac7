"""What the bar codes on a case of produce say: one symbol, or two that belong together.

Sources: GS1 General Specifications (element strings), GS1 "Traceability for Fresh Fruits and
Vegetables" (a case carries GTIN and lot, its date and weight where they vary).
"""

import datetime
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from decimal import Decimal

from labels.errors import LabelError
from labels.gs1 import SEPARATOR, Element, check_pairs, read_elements
from labels.gs1_dates import read_date

IDENTIFIERS_OF_CASES = ("]C1", "]d2", "]e0", "]Q3", "")
"""GS1-128, GS1 DataMatrix, GS1 DataBar, GS1 QR Code (ISO/IEC 15424), or none sent."""


@dataclass(frozen=True, slots=True)
class CaseCode:
    """What a case says of itself.

    Attributes:
        gtin: Fourteen digits, of the case or of what it contains.
        lot: Batch or lot, as the supplier wrote it.
        produced: Day of production or harvest (11).
        packed: Day of packing (13).
        last_day: Use-by day (17), or else best before (15).
        kilograms: Net weight in kilograms (310n), digits as written.
        pounds: Net weight in pounds (320n), digits as written.
        elements: All elements, as read.
    """

    gtin: str = ""
    lot: str = ""
    produced: datetime.date | None = None
    packed: datetime.date | None = None
    last_day: datetime.date | None = None
    kilograms: Decimal | None = None
    pounds: Decimal | None = None
    elements: tuple[Element, ...] = ()


def read_case(
    symbols: Iterable[tuple[str, str]], today: datetime.date, *, whole: bool = True
) -> CaseCode:
    """Return what the symbols of one case say together.

    Args:
        symbols: Symbology identifier (may be empty) and data of each, in any order.
        today: Gives two-digit years their century.
        whole: These are all symbols of the case; else one whose partner may still be read, and
            elements may lack those they must stand with.

    Raises:
        LabelError: No GS1 symbol, an element that cannot be, or two symbols that contradict each
            other: they are of two cases, or one is wrong.
    """
    elements: list[Element] = []
    for identifier, data in symbols:
        if identifier not in IDENTIFIERS_OF_CASES:
            raise LabelError("Scan", f"{identifier} is no GS1 symbol; scan the case label")
        elements += read_elements(data.strip(SEPARATOR))
    if not elements:
        raise LabelError("Scan", "no data; scan the case label")
    if whole:
        check_pairs(elements)
    found = {element.ai: element.value for element in elements}
    return CaseCode(
        gtin=found.get("01") or found.get("02") or "",
        lot=found.get("10", ""),
        produced=_day(found, "11", today),
        packed=_day(found, "13", today),
        last_day=_day(found, "17", today) or _day(found, "15", today),
        kilograms=_weight(found, "310"),
        pounds=_weight(found, "320"),
        elements=tuple(dict.fromkeys(elements)),
    )


def _day(found: Mapping[str, str], ai: str, today: datetime.date) -> datetime.date | None:
    return read_date(found[ai], today) if ai in found else None


def _weight(found: Mapping[str, str], stem: str) -> Decimal | None:
    """A weight whose identifier's last digit says how many decimals it has (GenSpecs 3.6)."""
    for places in range(6):
        value = found.get(f"{stem}{places}")
        if value is not None:
            return Decimal(int(value)).scaleb(-places)
    return None
