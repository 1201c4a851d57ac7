"""The packhouse people train in: its products and people, and nothing that reaches the real one.

Lots are made up, labels go to a folder and never to a printer, nothing is sent to the centre, and
the record lies in a folder of its own under a code that no station may have.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

from station.config.packhouse import Packhouse, Person, Role
from station.config.printer import PrinterSettings
from station.config.record_rules import RecordSettings
from station.core.lots import InputLot
from station.core.training import CODE, FOLDER

_SUPPLIER = "made up for training"
_TRAINERS = (
    Person("TRAINER", "Simulated lead", Role.LEAD),
    Person("TRAINER-QA", "Simulated QA", Role.QA),
)
"""They pass the gates, so that no real name signs for what nobody did."""


def training_home(home: Path) -> Path:
    """The folder of the record of training, in the station's home."""
    return home / FOLDER


def training_house(house: Packhouse, home: Path, today: date) -> Packhouse:
    """The packhouse as people train in it.

    A name is enough to sign, so that nobody keys in a real PIN.

    Args:
        house: as its settings have it.
        home: the station's own home; the record of training lies in a folder of it.
        today: on the plant's calendar.
    """
    settings = house.settings
    place = training_home(home)
    settings = replace(
        settings,
        station=CODE,
        line=CODE,
        home=place,
        printer=PrinterSettings("folder", place / "labels", dpi=settings.printer.dpi),
        people=replace(settings.people, pins=False),
        record=RecordSettings(),
        scanner=None,
        sync=None,
        fill=replace(settings.fill, approve_products=False),
    )
    people = {one.id: one for one in _TRAINERS} | dict(house.people)
    return replace(house, settings=settings, lots=_lots(house, today), people=people, shipping=None)


def _lots(house: Packhouse, today: date) -> dict[str, InputLot]:
    """One lot of each component, of today and with no code a supplier has."""
    lots = (
        InputLot(f"{CODE}-{number:02d}-{today:%y%j}", component, _SUPPLIER, today)
        for number, component in enumerate(house.components, start=1)
    )
    return {lot.code: lot for lot in lots}
