"""Which document and settings go to which printer."""

from __future__ import annotations

import dataclasses
from decimal import Decimal

import pytest

from drivers.errors import PrinterError
from drivers.printer.base import PDF, PrintJob
from drivers.printer.ipp_document import document_for, hundredths, settings_for
from drivers.printer.ipp_facts import PrinterFacts
from drivers.printer.ipp_values import Group, GroupTag, ValueTag, attribute
from drivers.printer.pwg_raster import PWG_RASTER, Bitmap, RasterType, pwg_raster

JOB = PrintJob("A1-000123", b"%PDF-1.4 page", 100, 60)
BOTH = PrinterFacts(
    name="Roll printer",
    stopped=False,
    accepting=True,
    reasons=(),
    formats=(PWG_RASTER, PDF),
    raster_resolutions=(203, 600),
    resolution=None,
    raster_types=("sgray_8", "black_1", "srgb_8"),
    takes=frozenset({"media-col", "copies"}),
    scalings=("auto", "none"),
    borderless=("media-top-margin",),
)


def with_(**changes: object) -> PrinterFacts:
    return dataclasses.replace(BOTH, **changes)


def dots(_pdf: bytes, dots_per_inch: int) -> Bitmap:
    width, height = round(100 / 25.4 * dots_per_inch), round(60 / 25.4 * dots_per_inch)
    return Bitmap(width, height, bytes((width + 7) // 8 * height))


def test_pdf_goes_out_as_it_is_where_it_can() -> None:
    assert document_for(JOB, BOTH, dots) == (PDF, JOB.document)
    assert document_for(JOB, BOTH) == (PDF, JOB.document)
    assert document_for(JOB, BOTH, preferred=()) == (PDF, JOB.document)


@pytest.mark.parametrize(
    ("facts", "dots_per_inch", "kind"),
    [
        (BOTH, 600, RasterType.BLACK_1),
        (with_(resolution=203), 203, RasterType.BLACK_1),
        (with_(resolution=300), 600, RasterType.BLACK_1),
        (with_(raster_types=("srgb_8", "sgray_8")), 600, RasterType.SGRAY_8),
    ],
)
def test_dots_go_out_at_the_printers_own_resolution(
    facts: PrinterFacts, dots_per_inch: int, kind: RasterType
) -> None:
    expected = pwg_raster(dots(b"", dots_per_inch), dots_per_inch, 10000, 6000, kind)
    assert document_for(JOB, facts, dots, (PWG_RASTER, PDF)) == (PWG_RASTER, expected)


def test_page_of_dots_goes_out_as_it_is() -> None:
    job = PrintJob("A1", b"RaS2", 100, 60, PWG_RASTER)
    assert document_for(job, BOTH) == (PWG_RASTER, b"RaS2")


@pytest.mark.parametrize(
    ("facts", "why"),
    [
        (with_(formats=()), "it takes nothing it names"),
        (with_(formats=("image/urf",)), "it takes image/urf; needed is application/pdf"),
        (with_(formats=(PWG_RASTER,), raster_types=("srgb_8",)), "needed is one of black_1"),
        (with_(formats=(PWG_RASTER,), raster_types=()), "does not take application/pdf"),
        (with_(formats=(PWG_RASTER,), raster_resolutions=()), "names no resolution"),
    ],
)
def test_printer_that_takes_none_of_them(facts: PrinterFacts, why: str) -> None:
    with pytest.raises(PrinterError, match=why):
        document_for(JOB, facts, dots)


@pytest.mark.parametrize(("width", "fits"), [(799, True), (812, True), (830, False), (400, False)])
def test_dots_must_fill_the_label(width: int, fits: bool) -> None:
    facts = with_(formats=(PWG_RASTER,), resolution=203)
    bitmap = Bitmap(width, 480, bytes((width + 7) // 8 * 480))
    if fits:
        assert document_for(JOB, facts, lambda *_: bitmap)[0] == PWG_RASTER
    else:
        with pytest.raises(PrinterError, match=f"{width} × 480 dots.*is not 100 × 60 mm"):
            document_for(JOB, facts, lambda *_: bitmap)


@pytest.mark.parametrize(
    ("width", "expected"), [(100, 10000), (50.8, 5080), (Decimal("60.05"), 6005), (0.1 + 0.2, None)]
)
def test_sizes_are_whole_hundredths(width: Decimal | float, expected: int | None) -> None:
    job = PrintJob("A1", b"x", width, 60)
    if expected is None:
        with pytest.raises(PrinterError, match="whole hundredths"):
            hundredths(job)
    else:
        assert hundredths(job) == (expected, 6000)


@pytest.mark.parametrize("width", [float("inf"), Decimal("1e9")])
def test_sizes_have_an_end(width: Decimal | float) -> None:
    with pytest.raises(PrinterError, match="whole hundredths"):
        hundredths(PrintJob("A1", b"x", width, 60))


def test_settings_name_only_what_the_printer_takes() -> None:
    full = Group(GroupTag.JOB, settings_for(JOB, BOTH))
    assert full.integer("copies") == 1
    assert full.text("print-scaling") == "none"
    size = attribute(
        "media-size",
        ValueTag.COLLECTION,
        (
            attribute("x-dimension", ValueTag.INTEGER, 10000),
            attribute("y-dimension", ValueTag.INTEGER, 6000),
        ),
    )
    assert full.all("media-col") == ((size, attribute("media-top-margin", ValueTag.INTEGER, 0)),)

    least = with_(takes=frozenset({"media-col"}), scalings=("auto",), borderless=())
    (media,) = settings_for(JOB, least)
    assert media == attribute("media-col", ValueTag.COLLECTION, (size,))


def test_printer_that_cannot_be_told_a_size() -> None:
    with pytest.raises(PrinterError, match="cannot be told the size of a label"):
        settings_for(JOB, with_(takes=frozenset({"copies"})))
