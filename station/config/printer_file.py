"""``[printer]`` of a settings file: where labels go."""

from __future__ import annotations

from pathlib import Path

from drivers.errors import PrinterError
from drivers.printer.ipp_link import Address
from station.config.faults import Faults
from station.config.printer import PrinterSettings
from station.config.settings import PrinterTable


def check_printer(printer: PrinterTable, file: str, faults: Faults) -> None:
    """A printer has the key of its kind, and no other kind's."""
    for kind, key, value, example in (
        ("ipp", "url", printer.url, "ipp://host/ipp/print"),
        ("queue", "queue", printer.queue, "the name of the print queue"),
    ):
        if (printer.kind == kind) != (value is not None):
            why = "is missing" if value is None else f'"{value}" goes with kind = "{kind}" only'
            faults.add(file, f"printer.{key}", why, example)
    if printer.kind == "ipp" and printer.url is not None:
        try:
            Address(printer.url)
        except PrinterError as fault:
            faults.add(file, "printer.url", str(fault), "ipp://host[:port]/path or ipps://…")


def printer_settings(printer: PrinterTable, home: Path) -> PrinterSettings:
    """Return a checked table; a folder that is no absolute path lies in the home."""
    return PrinterSettings(
        printer.kind,
        folder_of(printer.folder, home),
        printer.url or "",
        printer.queue or "",
        printer.out_within_s,
        printer.dpi,
    )


def folder_of(text: str, beside: Path) -> Path:
    """Return the absolute path a settings file names; a relative one begins ``beside``."""
    path = Path(text)
    path = path.expanduser() if text.startswith("~") else path
    return (beside / path).absolute()
