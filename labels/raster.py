"""Turns a label PDF into the dots a print head would set."""

import threading

import numpy as np
import pypdfium2
from numpy.typing import NDArray

from labels.errors import LabelError

POINTS_PER_MM = 72 / 25.4

# A page a hair above 800 dots would be rounded up to 801, the whole page stretched and bars moved;
# a millionth less keeps it at 800.
JUST_BELOW = 1 - 1e-6

# PDFium must not be entered by two threads at once; every use in this package goes through here.
pdfium_lock = threading.Lock()


def rasterise(pdf: bytes, dots_per_mm: int) -> NDArray[np.uint8]:
    """Return the first page in grey, 0 black to 255 white, shape (rows, columns).

    Args:
        pdf: A PDF file.
        dots_per_mm: Pixels per millimetre.

    Raises:
        LabelError: The bytes are no PDF that can be opened.
    """
    return rasterise_pages(pdf, dots_per_mm)[0]


def rasterise_pages(pdf: bytes, dots_per_mm: int) -> list[NDArray[np.uint8]]:
    """Return every page in grey, 0 black to 255 white, shape (rows, columns).

    Args:
        pdf: A PDF file.
        dots_per_mm: Pixels per millimetre.

    Raises:
        LabelError: The bytes are no PDF that can be opened.
    """
    with pdfium_lock:
        try:
            document = pypdfium2.PdfDocument(pdf)
        except pypdfium2.PdfiumError as error:
            raise LabelError("Label PDF", f"cannot be opened: {error}; draw it anew") from error
        try:
            scale = dots_per_mm / POINTS_PER_MM * JUST_BELOW
            return [_grey(page.render(scale=scale, grayscale=True)) for page in document]
        finally:
            document.close()


def _grey(bitmap: pypdfium2.PdfBitmap) -> NDArray[np.uint8]:
    grey: NDArray[np.uint8] = bitmap.to_numpy().copy()
    return grey[..., 0] if grey.ndim == 3 else grey
