"""Where labels go, frozen."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True, slots=True)
class PrinterSettings:
    """Where labels go.

    Args:
        kind: ``folder``, ``ipp`` or ``queue``.
        folder: absolute path of the folder of label files.
        url: ``ipp://host[:port]/path`` or ``ipps://…`` of an IPP printer; else empty.
        queue: name of a print queue of the operating system; else empty.
        out_within_s: a label that is not out by then is in doubt, in seconds.
    """

    kind: str
    folder: Path
    url: str = ""
    queue: str = ""
    out_within_s: int = 10
