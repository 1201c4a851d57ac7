"""The lots on the line in words and as bars."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from station.core.balance import Balance
from station.core.line_lots import LotMove
from station.core.lots import InputLot
from station.core.receiving import Notes
from station.line.lot_duty import LotRow
from station.screens.widgets.gap_geometry import mass_text
from station.screens.widgets.lot_bars import LotBar
from station.screens.words import long_date, narrow_date, why_not_free, with_year

NOT_WEIGHED = "not weighed in"


def bar_of(row: LotRow, name: Callable[[str], str], chosen: str) -> LotBar:
    """A lot on the line as its bar."""
    low, likely, high = _parts(row.balance)
    return LotBar(
        lot=row.lot,
        component=name(row.component),
        left=left_words(row.balance),
        low=low,
        likely=likely,
        high=high,
        state=_state(row),
        held=row.held,
        attend=row.finishing or bool(row.balance.question) or not row.listed,
        chosen=row.lot == chosen,
    )


def left_words(balance: Balance) -> str:
    """What is left, with half of what it may differ by."""
    left = balance.left
    if left is None:
        return NOT_WEIGHED
    half = (left.high - left.low) / 2
    return f"{float(left.likely) / 1000:.1f} kg ± {float(half) / 1000:.1f}"


def chosen_words(
    lot: InputLot | None, rework: LotMove | None, code: str, name: Callable[[str], str]
) -> str:
    """What is to be known of a lot, or of a bag's content, before it is loaded."""
    if rework is not None and rework.use_by is not None:
        return f"bag {code}: rework of {rework.lot}, last day {long_date(rework.use_by)}"
    if lot is None:
        return f"{code} is not known: receive it first" if code else "scan a lot, or touch one"
    words = f"{lot.code}: {name(lot.component)}, {lot.supplier}"
    return f"{words} – {why_not_free(lot)}" if why_not_free(lot) else words


def notes_words(notes: Notes) -> str:
    """What a delivery's scans and hands said so far, a line each."""
    told = (
        ("Lot", notes.code or "a new code is made"),
        ("GTIN", notes.gtin),
        ("Harvested", notes.harvested and _day(notes.harvested)),
        ("Packed", notes.packed and _day(notes.packed)),
        ("Last day", notes.use_by and _day(notes.use_by)),
        ("Came", notes.quantity and mass_text(notes.quantity)),
        ("Arrived at", notes.temperature is not None and f"{notes.temperature} °C"),
    )
    return "\n".join(f"{name}: {value}" for name, value in told if value)


def _day(day: date) -> str:
    return with_year(day, narrow_date(day))


def _state(row: LotRow) -> str:
    if row.held:
        return "HELD"
    if not row.listed:
        return "on no label"
    if row.balance.question:
        return "empty by now?"
    return "finishing" if row.finishing else ""


def _parts(balance: Balance) -> tuple[float, float, float]:
    """Low, likely and high as parts of what was loaded, within 0 to 1; zero where unknown."""
    left = balance.left
    if left is None or not balance.loaded or balance.loaded <= 0:
        return 0.0, 0.0, 0.0
    low, likely, high = (
        min(max(float(part / balance.loaded), 0.0), 1.0)
        for part in (left.low, left.likely, left.high)
    )
    return low, likely, high
