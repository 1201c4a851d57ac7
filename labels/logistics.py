"""Labels of cases and pallets: an SSCC, and what the unit holds.

GS1 General Specifications 4.13: (37) count stands with (00) and (02), never with (01).
"""

import datetime
from dataclasses import dataclass
from decimal import Decimal

from labels.dates import date_in_words
from labels.errors import LabelError
from labels.frames import Fact, Framed
from labels.gs1 import Element, check_pairs
from labels.gs1_dates import date_value
from labels.gs1_digits import gtin_14
from labels.linear import gs1_128
from labels.matrix import gs1_data_matrix
from labels.texts import checked_text
from labels.words import durability_of

LONGEST = {"product": 80, "contents": 40, "date_words": 40, "packer": 200}
WEIGHT_STEP = Decimal("0.1")  # kg; (3301) carries one decimal


@dataclass(frozen=True, slots=True)
class Unit:
    """What case and pallet labels have in common.

    Attributes:
        sscc: Serial shipping container code, 18 digits.
        content_gtin: GTIN of what is inside: the pack of a case, the case of a pallet.
        count: How many of them.
        product: Name of the product.
        contents: The contents in words, such as '12 packs of 250 g'.
        use_by: Use-by date; the earliest where they differ.
        date_words: Words of the date, such as 'Use by'.
        lot: The one blend lot of everything inside; empty where there are several.
        packer: Name and address of the packhouse.

    Raises:
        LabelError: A field a label or a bar code cannot carry.
    """

    sscc: str
    content_gtin: str
    count: int
    product: str
    contents: str
    use_by: datetime.date
    date_words: str
    lot: str
    packer: str

    def __post_init__(self) -> None:
        for field, longest in LONGEST.items():
            where = field.replace("_", " ").capitalize()
            checked_text(where, getattr(self, field), longest)
        if not 1 <= self.count <= 99999999:
            raise LabelError("Count", f"{self.count!r}; allowed: 1 to 99999999")
        check_pairs(self.elements)

    @property
    def elements(self) -> tuple[Element, ...]:
        """Everything the bar codes carry: SSCC, content, date, count, and a lot that is one."""
        return (
            Element("00", self.sscc),
            Element("02", gtin_14(self.content_gtin)),
            Element(durability_of(self.date_words).value, date_value(self.use_by)),
            Element("37", str(self.count)),
            *self.lot_element,
        )

    @property
    def lot_element(self) -> tuple[Element, ...]:
        """The lot; none where there are several, since (10) names one."""
        return (Element("10", self.lot),) if self.lot else ()

    def facts(self, kind: str) -> tuple[Fact, ...]:
        """The texts both labels carry; the kind of unit stands over its contents."""
        return (
            Fact("product", self.product),
            Fact("contents", self.contents, kind),
            Fact("date", date_in_words(self.use_by), self.date_words),
            Fact("lot", self.lot or "several, see the cases", "Lot"),
            Fact("packer", self.packer),
        )


@dataclass(frozen=True, slots=True)
class CaseLabel:
    """A case of packs.

    Attributes:
        unit: What it holds.
        first_serial: Serial of the first pack inside.
        last_serial: Serial of the last pack inside.
    """

    unit: Unit
    first_serial: str
    last_serial: str

    def __post_init__(self) -> None:
        Element("21", self.first_serial)
        Element("21", self.last_serial)

    def framed(self) -> Framed:
        """Return the label as facts for a framed design."""
        unit = self.unit
        serials = f"{self.first_serial} – {self.last_serial}"
        facts = (*unit.facts("CASE"), Fact("serials", serials, "Pack serials"))
        symbols = (
            ("sscc", gs1_128(unit.elements[:1])),
            ("all", gs1_data_matrix(unit.elements)),
        )
        return Framed(f"Case label {unit.sscc}", unit.sscc, unit.product, facts, symbols)


@dataclass(frozen=True, slots=True)
class PalletLabel:
    """A pallet of cases.

    Attributes:
        unit: What it holds.
        gross_kg: Gross weight, kg, exact to 0.1 kg.
    """

    unit: Unit
    gross_kg: Decimal

    def __post_init__(self) -> None:
        if not 0 < self.gross_kg < 100000 or self.gross_kg % WEIGHT_STEP:
            raise LabelError(
                "Gross weight", f"{self.gross_kg} kg; allowed: above 0, in steps of {WEIGHT_STEP}"
            )
        check_pairs((*self.unit.elements, self.gross))

    @property
    def gross(self) -> Element:
        """The gross weight as (3301)."""
        return Element("3301", f"{int(self.gross_kg / WEIGHT_STEP):06d}")

    def framed(self) -> Framed:
        """Return the label as facts for a framed design."""
        unit = self.unit
        facts = (
            *unit.facts("PALLET"),
            Fact("weight", f"{self.gross_kg} kg", "Gross weight"),
            Fact("number", unit.sscc, "SSCC"),
        )
        sscc, content, date, count = unit.elements[:4]
        symbols = (
            ("sscc", gs1_128((sscc,))),
            ("content code", gs1_128((content, count))),
            ("date code", gs1_128((date, self.gross, *unit.lot_element))),
        )
        return Framed(f"Pallet label {unit.sscc}", unit.sscc, unit.product, facts, symbols)
