"""A printer that takes no PDF sets exactly the dots that the label has, and its bars read."""

from __future__ import annotations

import io
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
import zxingcpp
from barcode import Code128
from numpy.typing import NDArray
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from drivers.printer.base import PrintJob, PrintState
from drivers.printer.ipp import IppPrinter
from drivers.printer.pwg_raster import PWG_RASTER, Bitmap
from labels.raster import rasterise
from tests.drivers.printer import libcups
from tests.drivers.printer.ipp_printer.rig import TestPrinter

HEADS = {203: 8, 300: 12, 600: 24}  # dots per inch by their trade names, in dots/mm


def page_with_bars(text: str) -> bytes:
    """Draw a 100 × 60 mm page with a bar code of 0.25 mm modules, and some words."""
    out = io.BytesIO()
    canvas = Canvas(out, (100 * mm, 60 * mm), invariant=True)
    canvas.drawString(10 * mm, 45 * mm, "Crisp Garden Salad")
    for place, module in enumerate(Code128(text).build()[0]):
        if module == "1":
            left = (10 + 0.25 * place) * mm
            canvas.rect(left + 0.01, 10 * mm, 0.25 * mm - 0.02, 20 * mm, stroke=0, fill=1)
    canvas.save()
    return out.getvalue()


def black(pdf: bytes, dots_per_inch: int) -> NDArray[np.bool_]:
    return rasterise(pdf, HEADS[dots_per_inch]) < 128


def to_bitmap(pdf: bytes, dots_per_inch: int) -> Bitmap:
    dots = black(pdf, dots_per_inch)
    return Bitmap(dots.shape[1], dots.shape[0], np.packbits(dots, axis=1).tobytes())


@pytest.mark.parametrize("kind", ["black_1", "sgray_8"])
@pytest.mark.parametrize("dots_per_inch", HEADS)
def test_dots_on_paper_are_the_dots_of_the_label(
    make_printer: Callable[..., TestPrinter], tmp_path: Path, dots_per_inch: int, kind: str
) -> None:
    printer = make_printer(formats=[PWG_RASTER], dots_per_inch=dots_per_inch, raster_types=[kind])
    ipp = IppPrinter(printer.address, rasterise=to_bitmap)
    job = PrintJob("A1-000123", page_with_bars("A1-000123"), 100, 60)
    ipp.submit(job)
    assert ipp.settle(job.name, 5).state is PrintState.DONE

    header, _, octets = libcups.raster_page(printer.page(job.name), tmp_path)
    width, height = header["size"]
    assert (width, height) == (100 * HEADS[dots_per_inch], 60 * HEADS[dots_per_inch])
    assert header["resolution"] == (dots_per_inch, dots_per_inch)
    rows = np.frombuffer(octets, np.uint8).reshape(height, -1)
    on_paper = np.unpackbits(rows, axis=1)[:, :width] == 1 if kind == "black_1" else rows == 0
    assert np.array_equal(on_paper, black(job.document, dots_per_inch))
    (read,) = zxingcpp.read_barcodes(np.where(on_paper, 0, 255).astype(np.uint8))
    assert read.text == "A1-000123"
