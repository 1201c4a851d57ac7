"""The declared net quantity in words, as a market writes it.

A quantity converted to another unit is rounded down, so that no more is declared than is in the
pack.

Sources:
    EU, GB: grams or kilograms, the sign ℮ beside them (76/211/EEC Annex I 3).
    US: 'Net Wt', both systems (15 U.S.C. 1453, secondary text); from one to four pounds in ounces,
        then in pounds and ounces in brackets (21 CFR 101.7(j), from memory).
"""

from decimal import ROUND_DOWN, ROUND_FLOOR, Decimal

from labels.ingredients import POINT_LANGUAGES
from labels.rules.us import OUNCE, POUND

TENTH = Decimal("0.1")
OUNCES_IN_POUND = 16
POUNDS_FROM = Decimal(16)  # ounces: from here pounds are named too
POUNDS_ONLY_FROM = Decimal(64)
KILOGRAM = 1000


def declared(digits: str, unit: str, market: str, language: str) -> str:
    """Return a net quantity such as '250 g', '2,27 kg' or 'Net Wt 8.8 oz (250 g)'.

    Args:
        digits: The quantity as the product states it, with a point.
        unit: Its unit: g, kg, oz or lb.
        market: Whose rules hold.
        language: Language of the label.
    """
    if market != "US":
        shown = digits if language in POINT_LANGUAGES else digits.replace(".", ",")
        return f"{shown} {unit}"
    number = Decimal(digits)
    if unit in ("g", "kg"):
        grams = number * (KILOGRAM if unit == "kg" else 1)
        return f"Net Wt {_customary(grams / OUNCE, f'{digits} {unit}')}"
    grams = number * (POUND if unit == "lb" else OUNCE)
    ounces = number * OUNCES_IN_POUND if unit == "lb" else number
    return f"Net Wt {_customary(ounces, _metric(grams))}"


def _customary(ounces: Decimal, metric: str) -> str:
    whole = ounces.quantize(TENTH, ROUND_DOWN)
    if whole < POUNDS_FROM:
        return f"{_plain(whole)} oz ({metric})"
    pounds, rest = divmod(whole, OUNCES_IN_POUND)
    words = f"{_plain(pounds)} lb" + (f" {_plain(rest)} oz" if rest else "")
    if whole < POUNDS_ONLY_FROM:
        return f"{_plain(whole)} oz ({words}) {metric}"
    return f"{words} ({metric})"


def _metric(grams: Decimal) -> str:
    """Return grams below a kilogram, else kilograms; three figures, rounded down."""
    if grams < KILOGRAM:
        return f"{_plain(_three(grams))} g"
    return f"{_plain(_three(grams / KILOGRAM))} kg"


def _three(number: Decimal) -> Decimal:
    return number.quantize(Decimal(1).scaleb(number.adjusted() - 2), ROUND_FLOOR)


def _plain(number: Decimal) -> str:
    text = f"{number:f}"
    return text.rstrip("0").rstrip(".") if "." in text else text
