"""What a printer is to the station: it takes a page and says what became of it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from typing import Protocol

from drivers.errors import PrinterError

PDF = "application/pdf"
_NAME = re.compile(r"[A-Za-z0-9][A-Za-z0-9._-]{0,99}")


@dataclass(frozen=True, slots=True)
class PrintJob:
    """One page to print, once.

    Args:
        name: 1 to 100 of ``A-Z a-z 0-9 . _ -``, the first a letter or digit; one name stands for
            one document for ever.
        document: the bytes of the page.
        media_width_mm: width of the label stock, above 0.
        media_height_mm: its height, above 0.
        format: MIME type of the document.

    Raises:
        PrinterError: a name, size or document that is not allowed.
    """

    name: str
    document: bytes
    media_width_mm: Decimal | float
    media_height_mm: Decimal | float
    format: str = PDF

    def __post_init__(self) -> None:
        if not _NAME.fullmatch(self.name):
            raise PrinterError(
                f"job name {self.name!r} is not allowed",
                "allowed are 1 to 100 letters, digits, '.', '_' and '-', first a letter or digit",
            )
        if not (self.media_width_mm > 0 and self.media_height_mm > 0):
            size = f"{self.media_width_mm} × {self.media_height_mm} mm"
            raise PrinterError(f"label size {size} of job {self.name}", "must be above 0")
        if not self.document:
            raise PrinterError(f"job {self.name} is empty", "there is nothing to print")


class PrintState(StrEnum):
    """How far a page came."""

    SUBMITTED = "submitted"
    """The printer was asked; what became of the page is not known: it is in doubt."""
    SPOOLED = "spooled"
    """A queue has the whole page and will print it."""
    DONE = "done"
    """The page is out, as far as the printer can tell."""
    FAILED = "failed"
    """The page is not out and will not come."""


@dataclass(frozen=True, slots=True)
class PrintOutcome:
    """What became of a page.

    Args:
        state: how far it came.
        why: the reason in words; empty when all is well.
    """

    state: PrintState
    why: str = ""


class Printer(Protocol):
    """Takes pages, one at a time."""

    def describe(self) -> str:
        """Name the printer in words, as a person would look for it."""
        ...

    def submit(self, job: PrintJob) -> PrintOutcome:
        """Hand over one page and return once its fate is known as well as it can be.

        Raises:
            PrinterError: the page was not taken.
        """
        ...

    @property
    def tells_end(self) -> bool:
        """Whether ``settle`` learns when a page is out; elsewhere a page stays SPOOLED."""
        ...

    def settle(self, name: str, wait_s: float) -> PrintOutcome:
        """Follow a page that was taken, at most ``wait_s`` seconds, and say what became of it.

        Raises:
            PrinterError: no such page was sent.
        """
        ...

    def cancel(self, name: str, wait_s: float) -> PrintOutcome:
        """Ask that a page be dropped and follow it as ``settle`` does; it may come out still.

        Raises:
            PrinterError: no such page was sent, or nobody answers.
        """
        ...

    def trouble(self) -> str:
        """Why nothing may be sent now, in words that say what to do; empty when it may."""
        ...
