"""What stands on the label of one pack, checked when it is made.

A `PackLabel` that exists can be trusted by everything after it: dates, codes, lengths and
characters are checked here, in one place. Nothing is cut, replaced or left out; what cannot be
carried is refused with its place, its value and what is allowed. Whether the words also fit on the
paper is known only when they are laid out (`labels.layout`).
"""

import datetime
import re
from dataclasses import dataclass
from decimal import Decimal

from labels import gs1
from labels.catch_weight import CatchWeight
from labels.errors import LabelError, shown
from labels.gs1_digits import describe, gtin_14
from labels.rules.figure_height import E_MARK, MARKETS
from labels.texts import checked_text
from labels.words import Durability, durability_of

INPUT_LOT_CODE = re.compile(r"[A-Z0-9./-]{1,20}", re.ASCII)
INPUT_LOT_CODE_WORDS = "1 to 20 of A-Z, 0-9, full stop, slash and hyphen"
OVERPRINTS = ("SPECIMEN", "COPY", "TRAINING")
COPY_MARK = re.compile(rf"(R[1-9][0-9]?|{'|'.join(OVERPRINTS)})?", re.ASCII)
MOST_INPUT_LOTS = 24
MOST_INGREDIENTS = 40
FIRST_DAY, LAST_DAY = datetime.date(2000, 1, 1), datetime.date(2099, 12, 31)

# Most characters of each text; more could not be fitted on any label this station prints.
LONGEST = {
    "product_name": 80,
    "net_quantity_text": 40,
    "use_by_words": 90,  # two languages
    "storage_text": 200,
    "packer_text": 200,
    "ingredients": 80,
    "allergens": 40,
    "component": 40,
    "origin": 80,
}


@dataclass(frozen=True, slots=True)
class InputLot:
    """One lot that is, or could be, in the pack.

    Attributes:
        component: Name of the component as printed.
        code: Lot code of the supplier or of receiving: 1 to 20 of A-Z, 0-9, '.', '/', '-'.
    """

    component: str
    code: str

    def __post_init__(self) -> None:
        _put(self, "component", _text("component", self.component))
        if not _matches(INPUT_LOT_CODE, self.code):
            raise LabelError(
                f"Lot code of {self.component}",
                f"{shown(self.code)} cannot be printed{_culprit(self.code)}; "
                f"allowed: {INPUT_LOT_CODE_WORDS}",
            )


@dataclass(frozen=True, slots=True)
class Translation:
    """The texts of a label in a second language.

    Attributes:
        language: The language.
        product_name: Name of the food.
        ingredients: The same ingredients in the same order.
        allergens: Words within them to emphasise.
        storage_text: Storage conditions.
    """

    language: str
    product_name: str
    ingredients: tuple[str, ...]
    allergens: tuple[str, ...]
    storage_text: str

    def __post_init__(self) -> None:
        for field in ("product_name", "storage_text"):
            _put(self, field, _text(field, getattr(self, field)))
        for field in ("ingredients", "allergens"):
            _put(self, field, tuple(_text(field, word) for word in getattr(self, field)))


@dataclass(frozen=True, slots=True)
class PackLabel:
    """Everything one pack label says.

    Attributes:
        product_name: Name of the food.
        net_quantity_text: Net quantity as declared, such as '250 g' or '250 g ℮'.
        nominal_grams: The same quantity in grams, exact; rules the height of its figures.
        market: Whose labelling rules hold; one of `labels.rules.figure_height.MARKETS`.
        use_by: Last day of use, printed day included.
        use_by_words: Words before the day, such as 'Use by'.
        packed_on: Day of packing, or None to leave it out.
        blend_lot: Lot of this blend, AI (10): 1 to 20 of GS1 character set 82.
        input_lots: Every input lot, in the order printed.
        ingredients: Ingredients in descending order of weight.
        allergens: Words within the ingredients to emphasise.
        storage_text: Storage conditions.
        packer_text: Name and address of the responsible business.
        serial: Serial of the pack, AI (21): 1 to 20 of GS1 character set 82.
        gtin: GTIN of 8, 12, 13 or 14 digits with its check digit.
        copy_mark: '' for the first label, 'R1' to 'R99' for a reprint, 'SPECIMEN' for a specimen,
            'COPY' for a picture of a label that was issued, 'TRAINING' for one of no bag at all.
        shares: Percent by weight of each ingredient, in their order; empty where not known.
        e_mark: True where the packer declares to be entitled to the sign ℮ (76/211/EEC Art. 3).
        origin: Country or place of origin, where it is given.
        language: Language of the texts and of fixed words.
        second: The same texts in a second language, where the market asks for two.
        catch_weight: The measured weight of a pack without a constant nominal quantity.

    Raises:
        LabelError: A field holds what a label or a bar code cannot carry.
    """

    product_name: str
    net_quantity_text: str
    nominal_grams: Decimal
    market: str
    use_by: datetime.date
    use_by_words: str
    packed_on: datetime.date | None
    blend_lot: str
    input_lots: tuple[InputLot, ...]
    ingredients: tuple[str, ...]
    allergens: tuple[str, ...]
    storage_text: str
    packer_text: str
    serial: str
    gtin: str
    copy_mark: str = ""
    shares: tuple[Decimal, ...] = ()
    e_mark: bool = False
    origin: str = ""
    language: str = "en"
    second: Translation | None = None
    catch_weight: CatchWeight | None = None

    def __post_init__(self) -> None:
        for field in (
            *("product_name", "net_quantity_text", "use_by_words"),
            *("storage_text", "packer_text"),
        ):
            _put(self, field, _text(field, getattr(self, field)))
        for field in ("ingredients", "allergens"):
            _put(self, field, tuple(_text(field, word) for word in getattr(self, field)))
        if self.origin:
            _put(self, "origin", _text("origin", self.origin))
        self._check_quantity()
        self._check_dates()
        self._check_codes()
        self._check_ingredients()
        self._check_catch_weight()

    @property
    def quantity_shown(self) -> str:
        """The net quantity as printed, with the sign ℮ where it is declared."""
        if self.e_mark and E_MARK not in self.net_quantity_text:
            return f"{self.net_quantity_text} {E_MARK}"
        return self.net_quantity_text

    @property
    def names(self) -> tuple[str, ...]:
        """The name of the food in each language."""
        return (self.product_name, *([self.second.product_name] if self.second else []))

    @property
    def durability(self) -> Durability:
        """What the date means, by the words before it."""
        return durability_of(self.use_by_words)

    @property
    def subject(self) -> str:
        """What the label is of, in a few words."""
        return f"{self.product_name}, lot {self.blend_lot}"

    def _check_quantity(self) -> None:
        if self.market not in MARKETS:
            raise LabelError(
                "Market", f"{shown(self.market)} is not known; allowed: {', '.join(MARKETS)}"
            )
        grams = self.nominal_grams
        if not _is_exact(grams) or not 0 < grams <= 50000:
            raise LabelError(
                "Nominal quantity",
                f"{shown(grams)} g; allowed: an exact number above 0 and up to 50000 g",
            )
        if not re.search("[0-9]", self.net_quantity_text):
            raise LabelError(
                "Net quantity",
                f"{shown(self.net_quantity_text)} holds no figure 0-9; write it like '250 g'",
            )

    def _check_dates(self) -> None:
        for field, day in (("Use-by date", self.use_by), ("Packing date", self.packed_on)):
            if day is None and field == "Packing date":
                continue
            if type(day) is not datetime.date or not FIRST_DAY <= day <= LAST_DAY:
                raise LabelError(field, f"{shown(day)} is no date from {FIRST_DAY} to {LAST_DAY}")
        if self.packed_on is not None and self.use_by < self.packed_on:
            raise LabelError(
                "Use-by date",
                f"{self.use_by} is before the packing date {self.packed_on}; check the shelf life",
            )

    def _check_codes(self) -> None:
        for where, ai, code in (
            ("Blend lot", "10", self.blend_lot),
            ("Serial", "21", self.serial),
        ):
            if not isinstance(code, str):
                raise LabelError(where, f"{shown(code)} is no text")
            try:
                gs1.Element(ai, code)
            except LabelError as error:
                raise LabelError(where, error.detail) from error
        if not isinstance(self.gtin, str):
            raise LabelError("GTIN", f"{shown(self.gtin)} is no text of digits")
        gtin_14(self.gtin)
        if not _matches(COPY_MARK, self.copy_mark):
            raise LabelError(
                "Copy mark",
                f"{shown(self.copy_mark)} is not allowed; allowed: nothing, R1 to R99, "
                f"{', '.join(OVERPRINTS)}",
            )

    def _check_catch_weight(self) -> None:
        """Hold a measured weight against the other facts.

        A GTIN of variable measure has fourteen digits, the first a 9 (GS1 General Specifications,
        from memory). The sign ℮ is for packs of one constant nominal quantity (76/211/EEC Art. 1).
        """
        if self.catch_weight is None:
            return
        if self.catch_weight.grams != self.nominal_grams:
            raise LabelError(
                "Catch weight",
                f"{self.catch_weight.grams.normalize():f} g were measured and "
                f"{self.nominal_grams} g declared; declare what was measured",
            )
        if len(self.gtin) != 14 or not self.gtin.startswith("9"):
            raise LabelError(
                "GTIN",
                f"{shown(self.gtin)}; a pack of variable weight has 14 digits that begin with 9",
            )
        if self.e_mark:
            raise LabelError("Sign ℮", "a pack of variable weight does not carry it; leave it out")

    def _check_ingredients(self) -> None:
        if not 1 <= len(self.input_lots) <= MOST_INPUT_LOTS:
            raise LabelError(
                "Input lots",
                f"{len(self.input_lots)} given; allowed: 1 to {MOST_INPUT_LOTS}. A pack without "
                "a known input lot must not be labelled",
            )
        if not 1 <= len(self.ingredients) <= MOST_INGREDIENTS:
            raise LabelError(
                "Ingredients", f"{len(self.ingredients)} given; allowed: 1 to {MOST_INGREDIENTS}"
            )
        if self.shares and len(self.shares) != len(self.ingredients):
            raise LabelError(
                "Shares of ingredients",
                f"{len(self.shares)} given for {len(self.ingredients)} ingredients; give one each",
            )
        for share in self.shares:
            if not _is_exact(share) or not 0 < share <= 100:
                raise LabelError(
                    "Shares of ingredients",
                    f"{shown(share)} %; allowed: an exact number above 0 and up to 100",
                )
        if self.second and len(self.second.ingredients) != len(self.ingredients):
            raise LabelError(
                "Ingredients",
                f"{len(self.ingredients)} in one language, {len(self.second.ingredients)} in the "
                "other; give the same ones in the same order",
            )
        listed = [ingredient.casefold() for ingredient in self.ingredients]
        for allergen in self.allergens:
            if not any(allergen.casefold() in ingredient for ingredient in listed):
                raise LabelError(
                    "Allergens",
                    f"{shown(allergen)} is to be emphasised but stands in no ingredient; "
                    f"ingredients: {', '.join(self.ingredients)}",
                )


def _put(record: object, field: str, value: object) -> None:
    object.__setattr__(record, field, value)


def _matches(pattern: re.Pattern[str], value: object) -> bool:
    return isinstance(value, str) and pattern.fullmatch(value) is not None


def _is_exact(value: object) -> bool:
    return isinstance(value, Decimal) and value.is_finite()


def _text(field: str, value: object) -> str:
    """Return a text in normal form C, or say why it cannot be printed."""
    return checked_text(field.replace("_", " ").capitalize(), value, LONGEST[field])


def _culprit(code: object) -> str:
    """Name the first character a lot code must not have, or its length."""
    if not isinstance(code, str):
        return " (no text)"
    for position, character in enumerate(code, start=1):
        if not INPUT_LOT_CODE.fullmatch(character):
            return f": {describe(character)} at place {position}"
    return f": it has {len(code)} characters"
