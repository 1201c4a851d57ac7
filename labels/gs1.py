"""GS1 element strings: the data a GS1 bar code carries, checked before anything is drawn.

Sources: GS1 General Specifications (section numbers beside each rule) and the GS1 Barcode Syntax
Dictionary (formats and pairs of application identifiers). The bar code writers in use check
nothing of this, so every value passes here first.

An element string in a symbol, FNC1 written as ␝:

    01 09521234543213 17 261129 10 B261126-2 ␝ 21 A1-000123
"""

import datetime
from collections.abc import Iterable
from dataclasses import dataclass

from labels.errors import LabelError

SEPARATOR = "\x1d"  # how a reader transmits FNC1 between elements (GenSpecs 7.8.6)
MOST_CHARACTERS = 48  # data characters of one GS1-128 symbol, separators counted (GenSpecs 5.4)

# GenSpecs figure 7.11-1: GS1 AI encodable character set 82. No blank, no '#', no letter beyond A-Z.
CSET_82 = frozenset(
    "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz"
)
DIGITS = frozenset("0123456789")


@dataclass(frozen=True, slots=True)
class Identifier:
    """Format of one application identifier.

    Attributes:
        shortest: Fewest characters of the value.
        longest: Most characters of the value.
        numeric: True for digits only, False for character set 82.
        check_digit: True when the last digit is a check digit.
        date: True for YYMMDD.
        predefined: True when the length is predefined (GenSpecs figure 7.8.5-2), so that no
            separator follows.
        requires: At least one of these must be on the same item; empty for no demand.
        excludes: None of these may be on the same item.
        title: Data title used in messages.
    """

    shortest: int
    longest: int
    title: str
    numeric: bool = True
    check_digit: bool = False
    date: bool = False
    predefined: bool = False
    requires: tuple[str, ...] = ()
    excludes: tuple[str, ...] = ()


def _date(title: str) -> Identifier:
    return Identifier(6, 6, title, date=True, predefined=True, requires=("01", "02"))


def _measure(title: str) -> Identifier:
    return Identifier(6, 6, title, predefined=True, requires=("01", "02"))


IDENTIFIERS = {
    "00": Identifier(18, 18, "SSCC", check_digit=True, predefined=True),
    "01": Identifier(
        14, 14, "GTIN", check_digit=True, predefined=True, excludes=("02", "37", "255")
    ),
    "02": Identifier(
        14, 14, "CONTENT", check_digit=True, predefined=True, requires=("37",), excludes=("01",)
    ),
    "10": Identifier(1, 20, "BATCH/LOT", numeric=False, requires=("01", "02")),
    "11": _date("PROD DATE"),
    "13": _date("PACK DATE"),
    "15": _date("BEST BEFORE"),
    "16": _date("SELL BY"),
    "17": _date("USE BY"),
    "20": Identifier(2, 2, "VARIANT", predefined=True, requires=("01", "02")),
    "21": Identifier(1, 20, "SERIAL", numeric=False, requires=("01",)),
    "30": Identifier(1, 8, "VAR. COUNT", requires=("01", "02")),
    "37": Identifier(1, 8, "COUNT", requires=("02",)),
    **{f"310{n}": _measure("NET WEIGHT (kg)") for n in range(6)},
    **{f"320{n}": _measure("NET WEIGHT (lb)") for n in range(6)},
}


@dataclass(frozen=True, slots=True)
class Element:
    """One application identifier with its value, checked against its format.

    Raises:
        LabelError: Unknown identifier, wrong length, character, check digit or date.
    """

    ai: str
    value: str

    def __post_init__(self) -> None:
        rule = IDENTIFIERS.get(self.ai)
        if rule is None:
            raise LabelError(
                f"Application identifier ({self.ai})",
                f"not among those this station prints: {', '.join(sorted(IDENTIFIERS))}",
            )
        _check_value(f"({self.ai}) {rule.title}", self.value, rule)

    @property
    def rule(self) -> Identifier:
        """The format this element was checked against."""
        return IDENTIFIERS[self.ai]


def _check_value(where: str, value: str, rule: Identifier) -> None:
    if not rule.shortest <= len(value) <= rule.longest:
        length = (
            f"{rule.shortest}"
            if rule.shortest == rule.longest
            else f"{rule.shortest} to {rule.longest}"
        )
        raise LabelError(where, f"{value!r} has {len(value)} characters; allowed: {length}")
    allowed, words = (DIGITS, "digits 0-9") if rule.numeric else (CSET_82, CSET_82_WORDS)
    for position, character in enumerate(value, start=1):
        if character not in allowed:
            raise LabelError(
                where,
                f"{value!r} has {describe(character)} at place {position}; allowed: {words}",
            )
    if rule.check_digit and not has_valid_check_digit(value):
        raise LabelError(
            where,
            f"{value!r} ends in {value[-1]}, but its check digit is {check_digit(value[:-1])}",
        )
    if rule.date:
        _check_date(where, value)


CSET_82_WORDS = (
    "A-Z, a-z, 0-9 and ! \" % & ' ( ) * + , - . / : ; < = > ? _ (GS1 character set 82; no blank)"
)


def describe(character: str) -> str:
    """Name a character so that an invisible one can be found: "'ñ' (U+00F1)"."""
    shown = repr(character) if character.isprintable() else "an unprintable character"
    return f"{shown} (U+{ord(character):04X})"


def check_digit(payload: str) -> str:
    """Return the modulo-10 check digit of a GTIN, SSCC or GLN without its last digit.

    GenSpecs 7.9.1: weights 3, 1, 3, 1 ... from the right.

    Args:
        payload: Digits before the check digit, any length.

    Raises:
        LabelError: The payload is empty or not all digits.
    """
    if not payload or not set(payload) <= DIGITS:
        raise LabelError("Check digit", f"{payload!r} is not a row of digits 0-9")
    total = sum(int(digit) * (3, 1)[place % 2] for place, digit in enumerate(reversed(payload)))
    return str(-total % 10)


def has_valid_check_digit(digits: str) -> bool:
    """Tell whether the last digit is the check digit of those before it."""
    return len(digits) > 1 and check_digit(digits[:-1]) == digits[-1]


def gtin_14(gtin: str) -> str:
    """Return a GTIN of 8, 12, 13 or 14 digits as the 14 digits AI (01) carries.

    Raises:
        LabelError: Wrong length, a character that is no digit, or a wrong check digit.
    """
    if len(gtin) not in (8, 12, 13, 14):
        raise LabelError("GTIN", f"{gtin!r} has {len(gtin)} characters; allowed: 8, 12, 13 or 14")
    _check_value("GTIN", gtin, Identifier(len(gtin), len(gtin), "GTIN", check_digit=True))
    return gtin.zfill(14)


def date_value(day: datetime.date) -> str:
    """Return a date as YYMMDD (GenSpecs 3.4); a real day, never 00."""
    return f"{day:%y%m%d}"


def read_date(value: str, today: datetime.date) -> datetime.date:
    """Return the day a YYMMDD value means.

    GenSpecs 3.4 and 7.12: day 00 means the last day of the month, leap years included; the
    century is chosen so that the year lies between 49 years before and 50 years after today.

    Raises:
        LabelError: Not six digits, or no such day.
    """
    _check_value("Date", value, Identifier(6, 6, "date", date=True))
    year, month, day = int(value[:2]), int(value[2:4]), int(value[4:])
    century, this_year = today.year - today.year % 100, today.year % 100
    if year - this_year >= 51:
        century -= 100
    elif year - this_year <= -50:
        century += 100
    return _calendar_day(century + year, month, day)


def _calendar_day(year: int, month: int, day: int) -> datetime.date:
    if day:
        return datetime.date(year, month, day)
    first_of_next = datetime.date(year + month // 12, month % 12 + 1, 1)
    return first_of_next - datetime.timedelta(days=1)


def _check_date(where: str, value: str) -> None:
    try:
        _calendar_day(2000 + int(value[:2]), int(value[2:4]), int(value[4:]))
    except ValueError as error:
        raise LabelError(where, f"{value!r} is no day YYMMDD: {error}") from error


def element_string(elements: Iterable[Element]) -> str:
    """Join elements into the data of one symbol, with a separator only where one is due.

    GenSpecs 7.8: a separator follows an element without predefined length unless it is the last.

    Raises:
        LabelError: No element, an identifier twice, or more than 48 data characters.
    """
    row = tuple(elements)
    if not row:
        raise LabelError("Bar code", "no element to encode; give at least one")
    names = [element.ai for element in row]
    if len(set(names)) < len(names):
        raise LabelError("Bar code", f"an application identifier stands twice in {names}")
    parts = []
    for place, element in enumerate(row):
        due = not element.rule.predefined and place < len(row) - 1
        parts.append(element.ai + element.value + (SEPARATOR if due else ""))
    text = "".join(parts)
    if len(text) > MOST_CHARACTERS:
        raise LabelError(
            "Bar code",
            f"{readable(row)} needs {len(text)} data characters; allowed: {MOST_CHARACTERS}",
        )
    return text


def readable(elements: Iterable[Element]) -> str:
    """Return the human readable interpretation, identifiers in brackets (GenSpecs 4.14)."""
    return "".join(f"({element.ai}){element.value}" for element in elements)


def read_elements(data: str) -> tuple[Element, ...]:
    """Take transmitted data apart again, without its symbology identifier.

    Raises:
        LabelError: An unknown identifier, or a value its format does not allow. A variable element
            that lost its separator usually shows here as a value too long.
    """
    elements = []
    rest = data
    while rest:
        ai = next((rest[:size] for size in (2, 3, 4) if rest[:size] in IDENTIFIERS), None)
        if ai is None:
            raise LabelError("Scanned data", f"no known application identifier at {rest[:12]!r}")
        rest = rest[len(ai) :]
        rule = IDENTIFIERS[ai]
        if rule.predefined:
            value, rest = rest[: rule.longest], rest[rule.longest :]
            rest = rest.removeprefix(SEPARATOR)  # GenSpecs 7.8.5: tolerated after a fixed length
        else:
            value, _, rest = rest.partition(SEPARATOR)
        elements.append(Element(ai, value))
    return tuple(elements)


def check_pairs(elements: Iterable[Element]) -> None:
    """Check that elements on one item may stand together (GenSpecs 4.13).

    Raises:
        LabelError: A required partner is missing or a forbidden one present.
    """
    present = {element.ai: element for element in elements}
    for ai, element in present.items():
        needed = element.rule.requires
        if needed and not any(other in present for other in needed):
            raise LabelError(
                f"({ai}) {element.rule.title}",
                f"must stand with one of ({') ('.join(needed)}) on the same item",
            )
        for other in element.rule.excludes:
            if other in present:
                raise LabelError(
                    f"({ai}) {element.rule.title}", f"must not stand with ({other}) on one item"
                )
