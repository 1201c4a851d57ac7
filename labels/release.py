"""The one way from label content to paper: draw, read back, and only then hand over."""

import hashlib
from dataclasses import dataclass

from labels.errors import LabelError
from labels.pdf import Label, LabelDrawer
from labels.readback import read_back
from labels.symbol import Symbol


@dataclass(frozen=True, slots=True)
class ReleasedLabel:
    """A label whose bar codes were read back equal.

    Attributes:
        pdf: The page, byte for byte what goes to the printer; two pages where the input lots need
            a second label.
        sha256: Digest of the file, hexadecimal, for the pack's record.
        symbols: The bar codes it carries, on all pages.
        pages: Pieces of paper it takes.
    """

    pdf: bytes
    sha256: str
    symbols: tuple[Symbol, ...]
    pages: int = 1


def release(drawer: LabelDrawer, label: Label) -> ReleasedLabel:
    """Draw a label and return it once its bar codes read back equal.

    Raises:
        LabelError: The label cannot be drawn, or a bar code does not read as it must.
    """
    pdf = drawer.draw(label)
    symbols = drawer.symbols(label)
    outcome = read_back(pdf, symbols, drawer.dots_per_mm)
    if not outcome.ok:
        raise LabelError(
            "Bar code check",
            f"label {label.serial} was not released: {outcome.why}. Do not print it; report the "
            "serial to the line lead",
        )
    return ReleasedLabel(pdf, hashlib.sha256(pdf).hexdigest(), symbols, len(drawer.plans(label)))
