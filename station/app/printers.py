"""The printer that the settings name."""

from __future__ import annotations

from pathlib import Path

from drivers.printer.base import Printer
from drivers.printer.file import FolderPrinter
from station.app.paper import dots
from station.config.packhouse import Packhouse
from station.config.printer import PrinterSettings

_UNITS = "case"


def printer_of(settings: PrinterSettings) -> Printer:
    """Return the printer that the settings name.

    A queue of the operating system needs a running Qt application, so a station without a window
    prints to a folder or by IPP.

    Raises:
        PrinterError: there is no such queue, the folder cannot be made, or the address is none.
    """
    if settings.kind == "ipp":
        from drivers.printer.ipp import IppPrinter  # only where a printer speaks it

        return IppPrinter(settings.url, dots)
    if settings.kind == "queue":
        from station.screens.queue_printer import QueuePrinter  # Qt only where it is wanted

        return QueuePrinter(settings.queue, settings.dots_per_mm)
    return FolderPrinter(settings.folder)


def unit_printer_settings(house: Packhouse) -> PrinterSettings:
    """The settings of the printer that labels of cases and pallets go to."""
    own = None if house.shipping is None else house.shipping.printer
    return own or house.settings.printer


def unit_printer(house: Packhouse, labels: Path, printer: Printer | None) -> Printer | None:
    """Return the printer of cases and pallets; None where the station's own one prints them.

    Args:
        house: the settings.
        labels: folder the demo's labels of bags go to.
        printer: the station's printer; None in the demo, whose labels all go to folders.
    """
    if house.shipping is None or house.shipping.printer is None:
        return None
    if printer is None:
        return FolderPrinter(labels.with_name(f"{_UNITS}-{labels.name}"))
    return printer_of(house.shipping.printer)
