"""Numbers for packs of variable weight or price at the till: EAN-13 by national rules.

Prefixes 20 to 29 are of restricted circulation and each country says what they mean (GS1 General
Specifications 2.1.11 and 2.1.12). There is no common format: a country not listed here is refused.
The table follows the national GS1 organisations' published rules as biip 5.2.0 cites them; for
Norway none was seen there and the Swedish rules stand in its place (assumed).

The net weight of such a pack is printed as the scale showed it, at its own interval. What is
converted, to another unit or to fewer decimals, is rounded down: no label may say more than is in
the pack.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import ROUND_DOWN, Decimal
from enum import Enum

from labels.errors import LabelError, shown
from labels.gs1 import Element
from labels.gs1_digits import check_digit, check_digits_only, measure_verifier

KILOGRAMS = {  # exact; NIST Handbook 44 Appendix C
    "g": Decimal("0.001"),
    "kg": Decimal(1),
    "oz": Decimal("0.028349523125"),
    "lb": Decimal("0.45359237"),
}
POUNDS = {"lb": Decimal(1), "oz": Decimal(1) / 16}
MOST_DECIMALS = 5  # of (310n) and (320n)


class Meaning(Enum):
    """What the value in such a number is."""

    WEIGHT = "weight in kg"
    PRICE = "price in the country's currency"
    COUNT = "count of pieces"


@dataclass(frozen=True, slots=True)
class Pattern:
    """What follows one prefix of one country.

    Attributes:
        meaning: What the value is.
        item: Digits of the item number after the two of the prefix.
        verifier: True when a verifier digit of the value stands before it.
        value: Digits of the value.
        decimals: How many of them are decimals.
    """

    meaning: Meaning
    item: int
    verifier: bool
    value: int
    decimals: int


def _pattern(meaning: Meaning, picture: str, decimals: int) -> Pattern:
    """Return a pattern from its picture: I item, C verifier, V value; ten places."""
    assert len(picture) == 10
    counts = {sign: picture.count(sign) for sign in "ICV"}
    return Pattern(meaning, counts["I"], counts["C"] == 1, counts["V"], decimals)


def _patterns(
    meaning: Meaning, picture: str, prefixes: Iterable[tuple[str, int]]
) -> dict[str, Pattern]:
    return {prefix: _pattern(meaning, picture, decimals) for prefix, decimals in prefixes}


_BALTIC = _patterns(Meaning.WEIGHT, "IIIIIIVVVV", (("23", 3), ("24", 2), ("25", 1)))
_SWEDISH = {
    **_patterns(Meaning.PRICE, "IIIIIIVVVV", (("20", 2), ("21", 1), ("22", 0))),
    **_BALTIC,
}

COUNTRIES: dict[str, dict[str, Pattern]] = {
    "DE": {
        **_patterns(Meaning.PRICE, "IIIICVVVVV", (("22", 2), ("23", 2))),
        **_patterns(Meaning.COUNT, "IIIICVVVVV", (("25", 0), ("26", 0))),
        **_patterns(Meaning.WEIGHT, "IIIICVVVVV", (("28", 3), ("29", 3))),
    },
    "DK": {
        **_patterns(Meaning.PRICE, "IIIIVVVVVV", (("21", 2), ("22", 2), ("23", 2), ("24", 2))),
        **_patterns(Meaning.WEIGHT, "IIIIVVVVVV", (("26", 3), ("28", 3))),
        **_patterns(Meaning.WEIGHT, "IIIIIVVVVV", (("27", 3),)),
    },
    "EE": _BALTIC,
    "FI": _BALTIC,
    "GB": _patterns(Meaning.PRICE, "IIIIICVVVV", (("20", 2),)),
    "LT": _BALTIC,
    "LV": _BALTIC,
    "NO": _SWEDISH,
    "SE": _SWEDISH,
}


@dataclass(frozen=True, slots=True)
class CatchWeight:
    """The measured net weight of one pack, and its number for the till.

    Attributes:
        net: Net weight as the scale shows it, digits and all.
        unit: The scale's unit: g, kg, oz or lb.
        interval: The scale's interval, in the same unit.
        country: ISO 3166 letters of the country whose numbers hold.
        prefix: Two digits that say with the country what the number holds.
        item: Item number.
        price: Price, where the number holds one.

    Raises:
        LabelError: The net weight is no multiple of the interval, has other decimals, or the number
            cannot hold it.
    """

    net: Decimal
    unit: str
    interval: Decimal
    country: str
    prefix: str
    item: str
    price: Decimal | None = None

    def __post_init__(self) -> None:
        if self.unit not in KILOGRAMS:
            raise LabelError("Catch weight", f"{shown(self.unit)}; allowed: {', '.join(KILOGRAMS)}")
        for number in (self.net, self.interval):
            if not number.is_finite() or number <= 0:
                raise LabelError("Catch weight", f"{number!r}; allowed: an exact number above 0")
        same_place = self.net.as_tuple().exponent == self.interval.as_tuple().exponent
        if self.net % self.interval or not same_place:
            raise LabelError(
                "Catch weight",
                f"{self.net} {self.unit} is not as a scale of {self.interval} {self.unit} shows "
                "it; print the indication itself",
            )
        if pattern_of(self.country, self.prefix).meaning is Meaning.COUNT:
            raise LabelError("Catch-weight prefix", f"{shown(self.prefix)} is for counts")
        _ = (self.number, self.element)  # both can be made, or it is said why not

    @property
    def kilograms(self) -> Decimal:
        """The net weight in kg, exact."""
        return self.net * KILOGRAMS[self.unit]

    @property
    def grams(self) -> Decimal:
        """The net weight in g, exact."""
        return self.kilograms * 1000

    @property
    def number(self) -> str:
        """The thirteen digits for the till."""
        pattern = pattern_of(self.country, self.prefix)
        if pattern.meaning is Meaning.WEIGHT:
            value = _down(self.kilograms, pattern.decimals)
        elif self.price is None:
            raise LabelError(
                "Catch-weight price", f"{self.country} {self.prefix} holds a price; give it"
            )
        else:
            value = self.price
        return catch_weight_number(self.country, self.prefix, self.item, value)

    @property
    def element(self) -> Element:
        """The net weight as (310n) in kg or (320n) in lb, never more than measured."""
        ai, value = (
            ("320", self.net * POUNDS[self.unit])
            if self.unit in POUNDS
            else ("310", self.kilograms)
        )
        decimals = min(MOST_DECIMALS, max(0, _places(value)))
        digits = int(_down(value, decimals).scaleb(decimals))
        if digits >= 10**6:
            raise LabelError("Catch weight", f"{self.net} {self.unit} does not fit ({ai}n)")
        return Element(f"{ai}{decimals}", f"{digits:06d}")


def _places(value: Decimal) -> int:
    return -int(value.as_tuple().exponent)


def _down(value: Decimal, decimals: int) -> Decimal:
    return value.quantize(Decimal(1).scaleb(-decimals), ROUND_DOWN)


def catch_weight_number(country: str, prefix: str, item: str, value: Decimal) -> str:
    """Return the thirteen digits for one pack.

    Args:
        country: ISO 3166 letters of the country whose rules hold.
        prefix: Two digits; with the country they say what the value is.
        item: Item number at the length the pattern asks for.
        value: Weight in kg, price, or count, exactly at the pattern's decimals.

    Raises:
        LabelError: An unknown country or prefix, an item number of another length, or a value
            that is negative, too great, or finer than the number can say.
    """
    pattern = pattern_of(country, prefix)
    check_digits_only("Item number", item)
    if len(item) != pattern.item:
        raise LabelError(
            "Item number",
            f"{shown(item)} has {len(item)} digits; {country} {prefix} takes {pattern.item}",
        )
    digits = _digits(pattern, value)
    verifier = measure_verifier(digits) if pattern.verifier else ""
    payload = prefix + item + verifier + digits
    return payload + check_digit(payload)


def pattern_of(country: str, prefix: str) -> Pattern:
    """Return what a prefix means in a country.

    Raises:
        LabelError: None is known.
    """
    known = COUNTRIES.get(country)
    if known is None:
        raise LabelError(
            "Catch-weight number",
            f"no rules are known for {shown(country)}; known: {', '.join(sorted(COUNTRIES))}",
        )
    if prefix not in known:
        meanings = ", ".join(f"{one} {pattern.meaning.value}" for one, pattern in known.items())
        raise LabelError(
            "Catch-weight prefix", f"{shown(prefix)} in {country}; allowed: {meanings}"
        )
    return known[prefix]


def _digits(pattern: Pattern, value: Decimal) -> str:
    where = f"Catch-weight {pattern.meaning.name.lower()}"
    if not value.is_finite() or value < 0:
        raise LabelError(where, f"{value!r}; allowed: an exact number from 0")
    scaled = value.scaleb(pattern.decimals)
    if scaled != scaled.to_integral_value():
        raise LabelError(
            where, f"{value} is finer than {pattern.decimals} decimals; nothing is rounded here"
        )
    if scaled >= 10**pattern.value:
        most = Decimal(10**pattern.value - 1).scaleb(-pattern.decimals)
        raise LabelError(where, f"{value} is too great; allowed: up to {most}")
    return f"{int(scaled):0{pattern.value}d}"
