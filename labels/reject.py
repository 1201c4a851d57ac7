"""The ticket of a rejected bag: it says why, and no till takes it for a pack.

Its one bar code carries the serial under an identifier for internal use, (90), and no GTIN.
"""

import datetime
from dataclasses import dataclass

from labels.errors import LabelError
from labels.frames import Fact, Framed
from labels.gs1 import Element
from labels.matrix import gs1_data_matrix
from labels.texts import checked_text

NOT_FOR_SALE = {"en": "NOT FOR SALE"}
TRAINING = "TRAINING"
CODE_PREFIX = "REJECT/"
LONGEST = {"reason": 40, "weight": 20, "verdict": 60, "product": 80}


@dataclass(frozen=True, slots=True)
class RejectTicket:
    """What the ticket of one rejected bag says.

    Attributes:
        serial: Serial of the bag.
        product: Name of the product it was packed as.
        lot: Blend lot.
        reason: Why it is rejected, in the trade's words.
        weight: Net weight as shown by the scale, with its unit.
        verdict: The limit it failed, in words.
        at: When, with its offset from UTC.
        language: Language of fixed words.
        training: Whether it is of no bag at all, made while people train.

    Raises:
        LabelError: A text that cannot be printed, or a time without an offset.
    """

    serial: str
    product: str
    lot: str
    reason: str
    weight: str
    verdict: str
    at: datetime.datetime
    language: str = "en"
    training: bool = False

    def __post_init__(self) -> None:
        for field, longest in LONGEST.items():
            checked_text(field.capitalize(), getattr(self, field), longest)
        Element("21", self.serial)
        Element("10", self.lot)
        if self.at.utcoffset() is None:
            raise LabelError("Time of the reject", f"{self.at} has no offset from UTC; give one")
        if self.language not in NOT_FOR_SALE:
            raise LabelError(
                "Language of the label",
                f"no words for {self.language!r}; known: {', '.join(sorted(NOT_FOR_SALE))}",
            )

    def framed(self) -> Framed:
        """Return the ticket as facts for a framed design."""
        facts = (
            Fact("banner", TRAINING if self.training else NOT_FOR_SALE[self.language]),
            Fact("reason", self.reason, "Reject"),
            Fact("weight", self.weight, "Net weight"),
            Fact("verdict", self.verdict, "Verdict"),
            Fact("serial", self.serial, "Serial"),
            Fact("lot", self.lot, "Lot"),
            Fact("time", f"{self.at:%Y-%m-%d %H:%M:%S}", "Time"),
            Fact("product", self.product),
        )
        code = gs1_data_matrix((Element("90", CODE_PREFIX + self.serial),))
        return Framed(
            f"Reject ticket {self.serial}", self.serial, self.product, facts, (("code", code),)
        )
