"""From the bar codes of a case to the notes of its delivery."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from labels.case_code import read_case
from labels.errors import LabelError
from station.core.lots import LotError
from station.core.mass import Mass, Unit
from station.core.receiving import Notes


def notes_of_scan(symbols: Iterable[tuple[str, str]], today: date, *, whole: bool = True) -> Notes:
    """Return what one scan of a case says; two stacked symbols count as one.

    Args:
        symbols: symbology identifier (may be empty) and data of each.
        today: on the plant's calendar.
        whole: these are all symbols of the case; else its other symbol may still be scanned.

    Raises:
        LotError: the scan is no case label, or its symbols contradict each other.
    """
    try:
        case = read_case(symbols, today, whole=whole)
    except LabelError as refused:
        raise LotError(f"the scan cannot be taken: {refused}") from refused
    weight = None
    if case.kilograms is not None:
        weight = Mass(case.kilograms, Unit.KILOGRAM)
    elif case.pounds is not None:
        weight = Mass(case.pounds, Unit.POUND)
    return Notes(
        code=case.lot or None,
        harvested=case.produced,
        packed=case.packed,
        use_by=case.last_day,
        quantity=weight,
        gtin=case.gtin or None,
    )
