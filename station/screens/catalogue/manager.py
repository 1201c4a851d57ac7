"""What the page MANAGER reads off its charts, asks to be signed, and lists."""

from __future__ import annotations

_MONTHS = (
    *("January", "February", "March", "April", "May", "June", "July", "August"),
    *("September", "October", "November", "December"),
)
_DAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
DATES = (
    *(f"{{number}} {month} {{count}}" for month in _MONTHS),
    *_DAYS,
    *(f"{day[:3]} {{number}}" for day in _DAYS),
)
"""As ``strftime`` writes them."""

CHARTS = (
    "LAST DAY",
    "LAST 7 DAYS",
    "ALL DAYS",
    "{number} in money",
    "about {mass} in bags of {loaded} loaded",
    "empty bag",
    "first-off",
    "QA check",
    "label scan",
    "holds",
    "stops",
    "fits",
    "does not fit",
    "equal",
    "differs",
    "refused",
    "emptied",
    "before bag {count}",
)

SIGNS = (
    "set to {mass} in the settings",
    "proposed",
    "mean {number}",
    "now {number}",
    "as far as one approval goes",
    "name",
    "floor {mass}",
    "upper {mass}",
    "tare {mass}",
    "at once",
    "digest",
    "of everything the version says",
    "may be run",
    "may not be run",
    "the settings say so",
    "version",
    "another one is set",
    "TRAINING IS OVER",
    "no day given",
    "{number} to {count} days",
    "no product has it",
    "the proposal is for version {number}",
    "{code} is at {number}",
    "a version is not refused",
    "it just stays without approval",
)

PAPERS = (
    "no bag is on record yet",
    "there is nothing to report",
    "Writing …",
)

GASES = ("air", "vacuum", "rest N2")
"""In bags, as settings name them."""

SENTENCES = (*DATES, *GASES, *CHARTS, *SIGNS, *PAPERS)
