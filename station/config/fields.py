"""Kinds of values a settings file may hold; each says in words what is allowed."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from typing import Annotated, Any
from zoneinfo import ZoneInfo

from pydantic import GetCoreSchemaHandler
from pydantic_core import CoreSchema, PydanticCustomError, core_schema

from labels.texts import UNPRINTABLE
from station.core.lots import LotError, checked_lot_code
from station.core.mass import Mass, MassError

RECEIVED = "{received}"
"""In a lot code: the day of receipt as two digits of the year and the day of the year."""


@dataclass(frozen=True, slots=True)
class Rule:
    """What a value must be, beside its type.

    Args:
        words: what is allowed, as a person reads it.
        check: returns the value to keep, or raises ``refused``.
        reads_raw: ``check`` takes the value as the file gave it, whatever its type.
    """

    words: str
    check: Callable[[Any], object]
    reads_raw: bool = False

    def __get_pydantic_core_schema__(
        self, source: type[object], handler: GetCoreSchemaHandler
    ) -> CoreSchema:
        """Put the rule behind the strict check of the type, or in its place."""
        if self.reads_raw:
            return core_schema.no_info_plain_validator_function(self.check)
        return core_schema.no_info_after_validator_function(self.check, handler(source))


def refused(why: str) -> PydanticCustomError:
    """Make the refusal of a value; ``why`` follows the value in the message."""
    return PydanticCustomError("refused", "{why}", {"why": why})


def printable(most: int) -> Rule:
    """Printable text on one line, up to ``most`` characters."""

    def check(text: str) -> str:
        text = unicodedata.normalize("NFC", text)
        if not text.strip():
            raise refused("is empty")
        if len(text) > most:
            raise refused(f"has {len(text)} characters")
        if any(unicodedata.category(character) in UNPRINTABLE for character in text):
            raise refused("has a character that cannot be printed")
        return text

    return Rule(f"printable text on one line, 1 to {most} characters", check)


def code(most: int) -> Rule:
    """A short code that every bar code, file name and label can carry."""
    words = f"1 to {most} of A-Z and 0-9, hyphens between them, such as AB-12"
    return Rule(words, _matching(rf"(?=.{{1,{most}}}\Z)[A-Z0-9]+(-[A-Z0-9]+)*"))


def letters(most: int) -> Rule:
    """A code of capital letters and digits alone."""
    return Rule(f"1 to {most} of A-Z and 0-9", _matching(rf"[A-Z0-9]{{1,{most}}}"))


def whole(least: int, most: int, what: str = "") -> Rule:
    """A whole number within a range, both ends included."""

    def check(number: int) -> int:
        if not least <= number <= most:
            raise refused("is outside its range")
        return number

    return Rule(f"a whole number{what and f' of {what}'} from {least} to {most}", check)


def one_of(*choices: str | int) -> Rule:
    """One of a few fixed values."""

    def check(value: str | int) -> str | int:
        if value not in choices:
            raise refused("is none of them")
        return value

    quoted = (f'"{choice}"' if isinstance(choice, str) else str(choice) for choice in choices)
    return Rule(" or ".join(quoted) if len(choices) < 3 else f"one of {', '.join(quoted)}", check)


def _matching(pattern: str) -> Callable[[str], str]:
    compiled = re.compile(pattern, re.ASCII)

    def check(text: str) -> str:
        if compiled.fullmatch(text) is None:
            raise refused("has another form")
        return text

    return check


def _as_mass(value: object) -> Mass:
    if not isinstance(value, str):
        raise refused("needs its unit, in quotes")
    try:
        mass = Mass.parse(value)
    except MassError as fault:
        raise refused("is not a mass") from fault
    if mass.amount <= 0:
        raise refused("is not above zero")
    return mass


_DEAREST = 100_000


def _as_percent(value: object) -> Decimal:
    if isinstance(value, bool) or not isinstance(value, int | Decimal):
        raise refused("is not a number")
    percent = Decimal(value)
    if not percent.is_finite() or not 0 < percent <= 100:
        raise refused("is outside its range")
    return percent


def _as_figure(value: object) -> Decimal:
    if isinstance(value, bool) or not isinstance(value, int | Decimal):
        raise refused("is not a number")
    number = Decimal(value)
    if not number.is_finite():
        raise refused("is not a number")
    return number


def _as_price(value: object) -> Decimal:
    if isinstance(value, bool) or not isinstance(value, int | Decimal):
        raise refused("is not a number")
    price = Decimal(value)
    if not price.is_finite() or not 0 < price <= _DEAREST:
        raise refused("is outside its range")
    return price


def _zone(name: str) -> str:
    try:
        ZoneInfo(name)
    except (KeyError, ValueError, OSError) as fault:
        raise refused("is not known") from fault
    return name


def _lot_code(text: str) -> str:
    try:
        checked_lot_code(text.replace(RECEIVED, "00000", 1))
    except LotError as fault:
        raise refused("cannot be printed") from fault
    return text


MassText = Annotated[
    Mass,
    Rule(
        'a mass above zero with its unit, in quotes, such as "340 g" or "2.27 kg"',
        _as_mass,
        reads_raw=True,
    ),
]
Percent = Annotated[
    Decimal,
    Rule(
        "a number above 0 and at most 100, without quotes, such as 35 or 12.5",
        _as_percent,
        reads_raw=True,
    ),
]
Price = Annotated[
    Decimal,
    Rule(
        f"a price of a kilogram above 0 and at most {_DEAREST}, without quotes, such as 4.20",
        _as_price,
        reads_raw=True,
    ),
]
Figure = Annotated[
    Decimal, Rule("a number without quotes, such as 3.3", _as_figure, reads_raw=True)
]
Zone = Annotated[str, Rule("an IANA time-zone name, such as Europe/Dublin", _zone)]
LotCode = Annotated[
    str,
    Rule(
        f"1 to 20 of A-Z, 0-9, point, slash and hyphen; {RECEIVED} once for the day of receipt",
        _lot_code,
    ),
]
Code = Annotated[str, code(20)]
Flag = Annotated[bool, Rule("true or false, without quotes", bool)]
