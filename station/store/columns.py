"""Column types that keep exact values exact and refuse what would be kept wrongly.

SQLite has no type for time or mass. SQLAlchemy's own DateTime drops the UTC offset without a word
and its Numeric becomes a binary float on SQLite, so neither is used here.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from decimal import Decimal
from enum import StrEnum
from functools import lru_cache
from typing import Any, Generic, TypeVar

from sqlalchemy import Column, Dialect, Integer, LargeBinary, RowMapping, Text, TypeDecorator

from station.core.mass import Mass, Unit

_Word = TypeVar("_Word", bound=StrEnum)


def utc_text(value: datetime) -> str:
    """Return the text a moment is kept as.

    Raises:
        ValueError: it has no UTC offset.
    """
    if value.tzinfo is not UTC:
        if value.utcoffset() is None:
            raise ValueError(f"{value!r} has no UTC offset: give an aware time")
        value = value.astimezone(UTC)
    return utc_kept(value.isoformat("T", "microseconds"))


def utc_kept(text: str) -> str:
    """Return the text a moment is kept as, of its ISO text in UTC with the offset ``+00:00``."""
    return text[:-6] + "Z"


class UtcDateTime(TypeDecorator[datetime]):
    """Aware time, kept as TEXT in UTC with microseconds, so that text order is time order."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> str | None:
        """Refuse a naive time; anything aware is turned into UTC."""
        return None if value is None else utc_text(value)

    def process_result_value(self, value: str | None, dialect: Dialect) -> datetime | None:
        """Return an aware time in UTC."""
        return None if value is None else datetime.fromisoformat(value)


class Day(TypeDecorator[date]):
    """Calendar date, kept as TEXT; a datetime is refused because it is not a day."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: date | None, dialect: Dialect) -> str | None:
        """Refuse a datetime."""
        if value is None:
            return None
        if isinstance(value, datetime):
            raise ValueError(f"{value!r} is a time, not a calendar day")
        return value.isoformat()

    def process_result_value(self, value: str | None, dialect: Dialect) -> date | None:
        """Return the date."""
        return None if value is None else date.fromisoformat(value)


class Micrograms(TypeDecorator[int]):
    """Whole micrograms for sums and comparisons; a float or a truth value is refused."""

    impl = Integer
    cache_ok = True

    def process_bind_param(self, value: int | None, dialect: Dialect) -> int | None:
        """Refuse everything but a whole number."""
        if value is not None and type(value) is not int:
            raise ValueError(f"{value!r} is not a whole number of micrograms")
        return value


class Word(TypeDecorator[_Word], Generic[_Word]):
    """One of a fixed list of words, kept as TEXT."""

    impl = Text
    cache_ok = True

    def __init__(self, words: type[_Word]) -> None:
        super().__init__()
        self.words = words

    def process_bind_param(self, value: _Word | None, dialect: Dialect) -> str | None:
        """Refuse a word outside the list."""
        if type(value) is self.words:
            return value.value  # most values are members already, and every bag has nine
        return None if value is None else str(self.words(value))

    def process_result_value(self, value: str | None, dialect: Dialect) -> _Word | None:
        """Return the member."""
        return None if value is None else self.words(value)


Sha256 = LargeBinary(32)


def mass_columns(name: str) -> tuple[Column[Any], Column[Any], Column[Any]]:
    """Return the three columns of a mass: digits as shown, their unit, whole micrograms."""
    return (
        Column(f"{name}_digits", Text, nullable=False),
        Column(f"{name}_unit", Word(Unit), nullable=False),
        Column(f"{name}_ug", Micrograms, nullable=False),
    )


def mass_values(name: str, mass: Mass) -> dict[str, object]:
    """Return the values of ``mass_columns(name)``."""
    return {
        f"{name}_digits": mass.digits,
        f"{name}_unit": mass.unit,
        f"{name}_ug": mass.micrograms,
    }


@lru_cache(maxsize=4096)
def mass_row(text: str) -> tuple[str, str, int]:
    """Return what the three columns of a mass hold, of its text in a body: ``0.250 kg``.

    The bags of a run weigh the same few hundred amounts, so the last ones are remembered.

    Raises:
        ValueError: the text is no mass.
    """
    digits, unit = text.split(" ")
    mass = Mass.of(digits, unit)
    return mass.digits, str(mass.unit), mass.micrograms


def mass_of(row: RowMapping, name: str) -> Mass:
    """Read a mass back from its digits and unit, the exact evidence."""
    return Mass(Decimal(row[f"{name}_digits"]), row[f"{name}_unit"])
