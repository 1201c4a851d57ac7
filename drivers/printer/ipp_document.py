"""What a printer gets: the PDF as it is, or its dots as PWG Raster, and how to print it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from decimal import Decimal

from drivers.errors import PrinterError
from drivers.printer.base import PDF, PrintJob
from drivers.printer.ipp_facts import PrinterFacts
from drivers.printer.ipp_values import Attribute, ValueTag, attribute
from drivers.printer.pwg_raster import PWG_RASTER, Bitmap, RasterType, pwg_raster

Rasterise = Callable[[bytes, int], Bitmap]
"""Turns a PDF into its dots at a printer's resolution, in dots per inch as the printer states it.

A print head of 8 dots a millimetre is sold as 203 dots per inch: what that means is its matter.
"""

FORMATS = (PDF, PWG_RASTER)
_SLACK_DOTS = 1
_SLACK_SHARE = 0.02
"""How far a bitmap may be off the label's size: 300 is said of 11.8 and of 12 dots a mm."""


def hundredths(job: PrintJob) -> tuple[int, int]:
    """Return the label's width and height in 1/100 mm, as IPP counts.

    Raises:
        PrinterError: a size that is no whole number of them.
    """
    sizes = [Decimal(str(mm)) * 100 for mm in (job.media_width_mm, job.media_height_mm)]
    if any(size >= 1 << 31 or size % 1 for size in sizes):
        raise PrinterError(
            f"label size {job.media_width_mm} × {job.media_height_mm} mm of job {job.name}",
            "IPP takes whole hundredths of a millimetre",
        )
    return int(sizes[0]), int(sizes[1])


def document_for(
    job: PrintJob,
    facts: PrinterFacts,
    rasterise: Rasterise | None = None,
    preferred: Sequence[str] = FORMATS,
) -> tuple[str, bytes]:
    """Return the MIME type and bytes to send.

    Args:
        job: what is to be printed.
        facts: the printer it goes to.
        rasterise: makes dots of a PDF; without it only the job's own format can go out.
        preferred: formats to try, the best first.

    Raises:
        PrinterError: the printer takes none of them.
    """
    for wanted in (*preferred, job.format):
        if wanted not in facts.formats:
            continue
        if wanted == job.format:
            return wanted, job.document
        if wanted == PWG_RASTER and job.format == PDF and rasterise and facts.raster_types:
            return wanted, _raster(job, facts, rasterise)
    took = ", ".join(facts.formats) or "nothing it names"
    raise PrinterError(
        f"printer {facts.name} does not take {job.format}",
        f"it takes {took}; needed is {PDF}, or {PWG_RASTER} and a way to make dots",
    )


def _raster(job: PrintJob, facts: PrinterFacts, rasterise: Rasterise) -> bytes:
    kinds = [kind for kind in RasterType if kind in facts.raster_types]
    if not kinds:
        took = ", ".join(facts.raster_types)
        raise PrinterError(
            f"printer {facts.name} takes raster pages as {took}",
            f"needed is one of {', '.join(RasterType)}",
        )
    if not facts.raster_resolutions:
        raise PrinterError(
            f"printer {facts.name} names no resolution for raster pages",
            "needed is one with as many dots per inch along as across",
        )
    given = facts.resolution
    dpi = given if given in facts.raster_resolutions and given else max(facts.raster_resolutions)
    bitmap = rasterise(job.document, dpi)
    width, height = hundredths(job)
    for dots, size in ((bitmap.width, width), (bitmap.height, height)):
        wanted = size * dpi / 2540
        if abs(dots - wanted) > _SLACK_DOTS + _SLACK_SHARE * wanted:
            raise PrinterError(
                f"page of job {job.name} has {bitmap.width} × {bitmap.height} dots",
                f"at {dpi} dots per inch that is not {width / 100:g} × {height / 100:g} mm",
            )
    return pwg_raster(bitmap, dpi, width, height, kinds[0])


def settings_for(job: PrintJob, facts: PrinterFacts) -> tuple[Attribute, ...]:
    """Return how the page is to be printed: on its own size, once, not scaled.

    Raises:
        PrinterError: the printer cannot be told the size of a label.
    """
    if "media-col" not in facts.takes:
        raise PrinterError(
            f"printer {facts.name} cannot be told the size of a label",
            "it must take media-col with media-size (PWG 5100.7)",
        )
    width, height = hundredths(job)
    size = (
        attribute("x-dimension", ValueTag.INTEGER, width),
        attribute("y-dimension", ValueTag.INTEGER, height),
    )
    margins = (attribute(name, ValueTag.INTEGER, 0) for name in facts.borderless)
    media = (attribute("media-size", ValueTag.COLLECTION, size), *margins)
    settings = [attribute("media-col", ValueTag.COLLECTION, media)]
    if "copies" in facts.takes:
        settings.append(attribute("copies", ValueTag.INTEGER, 1))
    if "none" in facts.scalings:
        settings.append(attribute("print-scaling", ValueTag.KEYWORD, "none"))
    return tuple(settings)
