"""The printer that the settings name."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import numpy as np

from drivers.printer.base import Printer
from drivers.printer.file import FolderPrinter
from drivers.printer.ipp import IppPrinter
from drivers.printer.pwg_raster import Bitmap
from labels.frame_designs import REJECT_60_BY_40, REJECT_100_BY_60
from labels.pdf import LabelDrawer, drawer_of
from labels.raster import rasterise
from station.config.packhouse import Packhouse
from station.config.printer import PrinterSettings
from station.core.run import Run
from station.reports.label_facts import design_of

_MM_PER_INCH = 25.4
_DARK = 128
_UNITS = "case"


def printer_of(settings: PrinterSettings) -> Printer:
    """Return the printer that the settings name.

    A queue of the operating system needs a running Qt application, so a station without a window
    prints to a folder or by IPP.

    Raises:
        PrinterError: there is no such queue, the folder cannot be made, or the address is none.
    """
    if settings.kind == "ipp":
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


def dots(pdf: bytes, per_inch: int) -> Bitmap:
    """Return the dots of a label for a printer that takes no PDF; see drivers.printer.ipp_document.

    Args:
        pdf: the label.
        per_inch: as the printer states it; 203 stands for 8 dots a millimetre.
    """
    page = rasterise(pdf, round(per_inch / _MM_PER_INCH))
    rows, columns = page.shape
    return Bitmap(columns, rows, np.packbits(page < _DARK, axis=1).tobytes())


def drawers(printer: PrinterSettings) -> Callable[[Run], LabelDrawer]:
    """The drawer of the label of a run; the first-off and every scan expect the very same label."""

    def drawer_for(run: Run) -> LabelDrawer:
        return drawer_of(design_of(run.product), printer.dots_per_mm)

    return drawer_for


def ticket_drawers(printer: PrinterSettings) -> Callable[[Run], LabelDrawer]:
    """The drawer of the tickets of a run's rejects, on the stock its labels are printed on."""

    def drawer_for(run: Run) -> LabelDrawer:
        wide = design_of(run.product).width >= REJECT_100_BY_60.width
        return drawer_of(REJECT_100_BY_60 if wide else REJECT_60_BY_40, printer.dots_per_mm)

    return drawer_for
