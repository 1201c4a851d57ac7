"""Input lots: what came in, from whom, and whether it may be used."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

_CODE = re.compile(r"[A-Z0-9./-]{1,20}")


class LotError(ValueError):
    """A lot that cannot be used; the message names it, its state and what is allowed."""


class LotStatus(StrEnum):
    """Whether a lot may go into a blend."""

    FREE = "free"
    HELD = "held"
    EXPIRED = "expired"


def checked_lot_code(text: str) -> str:
    """Return ``text`` when a label and a bar code can carry it as a lot code.

    Raises:
        LotError: anything but 1 to 20 of A-Z, 0-9, point, slash and hyphen.
    """
    if _CODE.fullmatch(text) is None:
        raise LotError(
            f"lot code {text!r} cannot be printed: allowed are 1 to 20 of the characters "
            "A-Z 0-9 . / - (no blanks, no small letters)"
        )
    return text


@dataclass(frozen=True, slots=True)
class InputLot:
    """One lot of one component as received.

    Args:
        code: the supplier's or the packhouse's own lot code.
        component: code of the component it is.
        supplier: who it came from.
        received: day of receipt.
        harvested: day of harvest, where known.
        use_by: the lot's own last day, where one was given.
        status: free, held or expired.
    """

    code: str
    component: str
    supplier: str
    received: date
    harvested: date | None = None
    use_by: date | None = None
    status: LotStatus = LotStatus.FREE

    def __post_init__(self) -> None:
        checked_lot_code(self.code)
        if self.harvested is not None and self.harvested > self.received:
            raise LotError(
                f"lot {self.code}: harvested {self.harvested} after it was received {self.received}"
            )
