"""Where labels go, frozen."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

HEADS = {203: 8, 300: 12, 400: 16, 600: 24}
"""Print heads: dots per inch by their trade names, and dots per millimetre."""


@dataclass(frozen=True, slots=True)
class PrinterSettings:
    """Where labels go.

    Args:
        kind: ``folder``, ``ipp`` or ``queue``.
        folder: absolute path of the folder of label files.
        url: ``ipp://host[:port]/path`` or ``ipps://…`` of an IPP printer; else empty.
        queue: name of a print queue of the operating system; else empty.
        dpi: of the print head, one of :data:`HEADS`; bars are laid on its dots.
        out_within_s: a label that is not out by then is in doubt, in seconds.
    """

    kind: str
    folder: Path
    url: str = ""
    queue: str = ""
    out_within_s: int = 10
    dpi: int = 203

    @property
    def dots_per_mm(self) -> int:
        """Dots of the print head in a millimetre."""
        return HEADS[self.dpi]
