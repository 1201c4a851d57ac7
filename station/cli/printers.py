"""``station printers``: whether the printer of the settings answers, and what it says."""

from __future__ import annotations

from typing import TYPE_CHECKING

from station.cli.answer import Answer, Json, run_verb
from station.cli.options import AsJson, NeededConfig
from station.cli.page import Weight, facts, heading, note
from station.config.printer import HEADS
from station.errors import EnvironmentFault

if TYPE_CHECKING:
    from station.config.printer import PrinterSettings

_MM_PER_INCH = 25.4


def printers(config: NeededConfig, as_json: AsJson = False) -> None:
    """Ask the printer how it is; exit 1 while it needs a person, 3 when it does not answer."""

    def work() -> Answer:
        from station.config.load import load_settings  # slow to load

        return _answer(load_settings(config).printer)

    run_verb(as_json, work)


def _answer(printer: PrinterSettings) -> Answer:
    if printer.kind == "ipp":
        return _ipp(printer)
    if printer.kind == "queue":
        where, words = printer.queue, "A queue is asked by the station's window, not from here."
        return _said("queue", where, "", {}, words)
    there = printer.folder.is_dir()
    words = "It is there." if there else "It is made when the station starts."
    return _said("folder", str(printer.folder), "", {"there": there}, words)


def _ipp(printer: PrinterSettings) -> Answer:
    from drivers.errors import PrinterError
    from drivers.printer.ipp import IppPrinter

    url = printer.url
    try:
        found = IppPrinter(url).status()
    except PrinterError as fault:
        raise EnvironmentFault(f"printer {url} does not answer", str(fault)) from fault
    formats: list[Json] = list(found.formats)
    resolutions: list[Json] = list(found.raster_resolutions)
    more: dict[str, Json] = {
        "name": found.name,
        "formats": formats,
        "resolution": found.resolution,
        "raster_resolutions": resolutions,
        "remarks": found.remarks(),
    }
    trouble = found.trouble() or _misfit(found.resolution, printer)
    return _said("ipp", url, trouble, more, f"{found.name} answers.")


def _misfit(dpi: int | None, printer: PrinterSettings) -> str:
    """Bars laid on the dots of one head come out uneven on another."""
    if dpi is None or round(dpi / _MM_PER_INCH) == printer.dots_per_mm:
        return ""
    return (
        f"its head has {dpi} dots per inch and labels are laid out for {printer.dpi}: set dpi "
        f"under [printer] to one of {', '.join(map(str, HEADS))}"
    )


def _said(kind: str, where: str, trouble: str, more: dict[str, Json], words: str) -> Answer:
    document: dict[str, Json] = {"kind": kind, "where": where, "trouble": trouble, **more}
    title = "THE PRINTER NEEDS SOMEBODY" if trouble else "THE PRINTER IS READY"
    page = (
        heading(title, Weight.ATTEND if trouble else Weight.PLAIN),
        facts([("Kind", kind), ("Where", where), *([("Trouble", trouble)] if trouble else [])]),
        note(words),
    )
    return Answer(document, page, yes=not trouble)
