"""The shapes of the four settings files, field by field; strict, and nothing beside them.

A field's rule holds the words a person reads when a value is refused.
"""

from __future__ import annotations

from datetime import date, time
from typing import Annotated

from pydantic import BaseModel, ConfigDict

from labels.content import LONGEST
from labels.design import DESIGNS
from labels.digital_link import STEM
from labels.rules.figure_height import MARKETS
from labels.words import languages, missing_words
from station.config.fields import (
    Code,
    Figure,
    Flag,
    LotCode,
    MassText,
    Percent,
    Price,
    Rule,
    Zone,
    code,
    letters,
    one_of,
    printable,
    refused,
    whole,
)
from station.config.packhouse import Role
from station.config.printer import HEADS
from station.core.checks.qa import QaKind
from station.core.languages import Language
from station.core.lots import LotStatus
from station.core.mass import Unit
from station.core.metrology.instrument_errors import ErrorSystem, ScaleClass
from station.core.product import PackMode
from station.core.product_label import DESIGN

BAUD_RATES = (1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200)
_NAME = printable(80)
_PLACE = printable(200)
_DAYS = whole(1, 365, "days")
_AGO = whole(0, 3650, "days")
_DAY = Rule("a date without quotes, such as 2026-11-24", lambda day: day)
_MARKET = one_of(*MARKETS)
_DESIGN = one_of(*DESIGNS)
_LIFE = whole(1, 60, "days")
_PERSON = code(12)


def _language(name: str) -> str:
    lacking = missing_words(name)
    if lacking:
        raise refused(f"lacks {', '.join(lacking)}")
    return name


def _stem(text: str) -> str:
    if not STEM.fullmatch(text):
        raise refused("is no start of a web address")
    return text


SPOKEN = one_of(*(str(language) for language in Language))
"""A language of the screens."""
_LANGUAGE = Rule(f"one of {', '.join(languages())}", _language)


class Shape(BaseModel):
    """One table of a settings file."""

    model_config = ConfigDict(strict=True, extra="forbid", frozen=True)


# --- station.toml -----------------------------------------------------------------------------


class SiteTable(Shape):
    """``[site]``: the packhouse."""

    code: Annotated[str, letters(8)]
    name: Annotated[str, _NAME]
    time_zone: Zone
    production_day_starts: Annotated[
        time, Rule("a time before noon without quotes, such as 04:00:00", lambda at: at)
    ]


class StationTable(Shape):
    """``[station]``: this station."""

    code: Annotated[str, letters(6)]
    line: Annotated[str, letters(8)]
    home: Annotated[str, printable(300)]


class PortTable(Shape):
    """``[scale.port]``: the line to the scale."""

    url: Annotated[str, printable(200)]
    baud: Annotated[int, one_of(*BAUD_RATES)] = 9600
    bits: Annotated[int, one_of(7, 8)] = 8
    parity: Annotated[str, one_of("none", "even", "odd")] = "none"
    stop_bits: Annotated[int, one_of(1, 2)] = 1


class ScaleTable(Shape):
    """``[scale]``."""

    id: Annotated[str, printable(40)]
    protocol: Annotated[str, one_of("scp0499", "described", "hid")] = "scp0499"
    description: Annotated[str, printable(300)] | None = None
    unit: Annotated[str, one_of(*(str(unit) for unit in Unit))]
    interval: MassText
    capacity: MassText
    accuracy_class: Annotated[str, one_of(*(str(one) for one in ScaleClass))] = "III"
    limits_of_error: Annotated[str, one_of(*(str(one) for one in ErrorSystem))] = "R 76"
    port: PortTable


class PrinterTable(Shape):
    """``[printer]``."""

    kind: Annotated[str, one_of("folder", "ipp", "queue")] = "folder"
    folder: Annotated[str, printable(300)] = "labels"
    url: Annotated[str, printable(300)] | None = None
    queue: Annotated[str, printable(120)] | None = None
    out_within_s: Annotated[int, whole(1, 120, "seconds")] = 10
    dpi: Annotated[int, one_of(*HEADS)] = 203


class LabelTable(Shape):
    """``[label]``: what every label says."""

    market: Annotated[str, _MARKET]
    packer: Annotated[str, printable(LONGEST["packer_text"])]
    design: Annotated[str, _DESIGN] = DESIGN
    language: Annotated[str, _LANGUAGE] = "en"
    second_language: Annotated[str, _LANGUAGE] | None = None
    link_stem: Annotated[str, Rule("like https://id.example.org, no / at the end", _stem)] = ""


class TimingTable(Shape):
    """``[timing]``."""

    dwell_ms: Annotated[int, whole(100, 5000, "milliseconds")] = 300
    stale_ms: Annotated[int, whole(200, 5000, "milliseconds")] = 500


# --- products.toml ----------------------------------------------------------------------------


class ComponentRow(Shape):
    """``[[component]]``."""

    code: Code
    name: Annotated[str, printable(LONGEST["component"])]
    name_in: dict[str, Annotated[str, printable(LONGEST["component"])]] = {}
    allergen: Flag = False
    stains: Flag = False
    smells: Flag = False
    max_age_days: Annotated[int, _DAYS] | None = None


class BagRow(Shape):
    """``[[bag]]``."""

    code: Code
    name: Annotated[str, _NAME]
    tare: MassText
    basis: Annotated[str, _PLACE]


class ShareRow(Shape):
    """One line of a product's ``recipe``."""

    component: Code
    percent: Percent
    min: Percent | None = None
    max: Percent | None = None


class QaRow(Shape):
    """One line of a product's ``checks``."""

    check: Annotated[str, one_of(*(str(kind) for kind in QaKind))]
    unit: Annotated[str, one_of("%", "°C", "°F")] | None = None
    least: Figure | None = None
    most: Figure | None = None
    every_minutes: Annotated[int, whole(5, 1440, "minutes")] | None = None
    at_start: Flag = False
    pieces: list[Annotated[str, printable(40)]] = []


class ProductRow(Shape):
    """``[[product]]``."""

    code: Code
    version: Annotated[int, whole(1, 9999)]
    name: Annotated[str, printable(LONGEST["product_name"])]
    gtin: Annotated[str, Rule("13 or 14 digits in quotes", lambda gtin: gtin)]
    market: Annotated[str, _MARKET] | None = None
    rule_set: Annotated[str, Rule("the id of a rule set, in quotes", lambda name: name)]
    nominal: MassText
    floor: MassText
    target: MassText
    upper: MassText
    bag: Code
    mode: Annotated[str, one_of(*(str(mode) for mode in PackMode))]
    recipe: Annotated[
        list[ShareRow], Rule("a list of { component, percent }, at least one", lambda rows: rows)
    ]
    life_days: Annotated[int, _DAYS]
    life_approved_by: Annotated[str, _PERSON] | None = None
    effective_from: Annotated[date, _DAY] | None = None
    effective_until: Annotated[date, _DAY] | None = None
    approved_by: Annotated[str, _PERSON] | None = None
    atmosphere: Annotated[str, _NAME]
    storage: Annotated[str, printable(LONGEST["storage_text"])]
    use_by_words: Annotated[str, printable(LONGEST["use_by_words"])] | None = None
    design: Annotated[str, _DESIGN] | None = None
    e_mark: Flag = False
    origin: Annotated[str, printable(LONGEST["origin"])] = ""
    price_per_kg: Price | None = None
    checks: Annotated[list[QaRow], Rule("a list of { check, … }", lambda rows: rows)] = []
    name_in: dict[str, Annotated[str, printable(LONGEST["product_name"])]] = {}
    storage_in: dict[str, Annotated[str, printable(LONGEST["storage_text"])]] = {}


class ShelfLifeRow(Shape):
    """``[[shelf_life]]``: the life a bag may have in one atmosphere."""

    atmosphere: Annotated[str, _NAME]
    least_days: Annotated[int, _LIFE]
    most_days: Annotated[int, _LIFE]
    basis: Annotated[str, _PLACE]


# --- lots.toml --------------------------------------------------------------------------------


class SupplierRow(Shape):
    """``[[supplier]]``."""

    code: Code
    name: Annotated[str, _NAME]
    place: Annotated[str, _PLACE]


class LotRow(Shape):
    """``[[lot]]``; each day is given either as a date or counted from today."""

    code: LotCode
    component: Code
    supplier: Code
    received: Annotated[date, _DAY] | None = None
    received_days_ago: Annotated[int, _AGO] | None = None
    harvested: Annotated[date, _DAY] | None = None
    harvested_days_ago: Annotated[int, _AGO] | None = None
    use_by: Annotated[date, _DAY] | None = None
    use_by_in_days: Annotated[int, whole(-3650, 3650, "days")] | None = None
    status: Annotated[str, one_of(*(str(status) for status in LotStatus))] = "free"


# --- people.toml ------------------------------------------------------------------------------


class PersonRow(Shape):
    """``[[person]]``."""

    id: Annotated[str, _PERSON]
    name: Annotated[str, _NAME]
    role: Annotated[str, one_of(*(str(role) for role in Role))]
    trained_until: Annotated[date, _DAY] | None = None
    language: Annotated[str, SPOKEN] | None = None
