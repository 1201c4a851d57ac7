"""Mass as shown: exact decimal digits with their unit.

The digits an indicator showed are evidence, so they are kept (``0.250 kg`` stays ``0.250 kg``), and
every comparison is made on exact decimal grams. A binary float never holds a mass: 0.1 g steps have
no exact binary form, and a pack exactly at a limit would fall on the wrong side of it.

Sources: the pound is 453.59237 g and the ounce one sixteenth of it, both exact by definition
(NIST Handbook 44, Appendix C).
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import ROUND_HALF_EVEN, Context, Decimal, Inexact, InvalidOperation, Overflow
from enum import StrEnum

_EXACT = Context(prec=60, traps=[Inexact, InvalidOperation, Overflow])
_ROUNDING = Context(prec=60, rounding=ROUND_HALF_EVEN, traps=[InvalidOperation, Overflow])
_TEXT = re.compile(r"([-+\u2212]?)([0-9]{1,12}(?:\.[0-9]{1,9})?)[ \u00a0\u202f]?(mg|g|kg|lb|oz)")
_DIGITS = re.compile(r"[-+]?[0-9]{1,24}(?:\.[0-9]{1,24})?")  # exact grams in 60 digits
_MICRO = Decimal(10) ** 6


class Unit(StrEnum):
    """A unit of mass the station can keep."""

    MILLIGRAM = "mg"
    GRAM = "g"
    KILOGRAM = "kg"
    POUND = "lb"
    OUNCE = "oz"

    @property
    def grams(self) -> Decimal:
        """Grams in one of this unit, exact."""
        return _GRAMS[self]


_GRAMS = {
    Unit.MILLIGRAM: Decimal("0.001"),
    Unit.GRAM: Decimal(1),
    Unit.KILOGRAM: Decimal(1000),
    Unit.POUND: Decimal("453.59237"),
    Unit.OUNCE: Decimal("28.349523125"),
}
_TENS = {Unit.MILLIGRAM: -3, Unit.GRAM: 0, Unit.KILOGRAM: 3}


class MassError(ValueError):
    """Text or an operation that does not give a mass; the message says what is allowed."""


@dataclass(frozen=True, slots=True, eq=False)
class Mass:
    """An exact amount of mass in the unit it was given in.

    Two masses are equal when their grams are equal, whatever their units and trailing zeros.

    Args:
        amount: exact decimal amount; its exponent keeps the digits as shown.
        unit: the unit of ``amount``.
    """

    amount: Decimal
    unit: Unit

    def __post_init__(self) -> None:
        # A float gets here from untyped callers only, and must not.
        if not isinstance(self.amount, Decimal) or not self.amount.is_finite():  # type: ignore[redundant-expr]
            raise MassError(f"a mass needs a finite exact decimal, not {self.amount!r}")

    @classmethod
    def parse(cls, text: str) -> Mass:
        """Read ``250 g``, ``0.25kg`` or ``8.8 oz``.

        Raises:
            MassError: the text has no number, no known unit, or anything beside them.
        """
        match = _TEXT.fullmatch(text.strip())
        if match is None:
            raise MassError(
                f"{text!r} is not a mass: write a number with a decimal point and one of "
                "mg, g, kg, lb, oz, for example 250 g or 0.250 kg"
            )
        sign, digits, unit = match.groups()
        return cls(Decimal(f"{'-' if sign in ('-', '−') else ''}{digits}"), Unit(unit))

    @classmethod
    def of(cls, amount: int | str | Decimal, unit: Unit | str = Unit.GRAM) -> Mass:
        """Build from an exact number and a unit; a float is refused.

        Raises:
            MassError: ``amount`` is a float or no plain number, or ``unit`` is unknown.
        """
        if isinstance(amount, str) and _DIGITS.fullmatch(amount) is None:
            raise MassError(f"{amount!r} {unit!s} is not a mass: give plain digits, as in 0.250")
        try:
            return cls(_exact(amount), Unit(unit))
        except (InvalidOperation, ValueError) as fault:
            raise MassError(f"{amount!r} {unit!s} is not a mass: {fault}") from fault

    @classmethod
    def from_micrograms(cls, micrograms: int, unit: Unit = Unit.GRAM) -> Mass:
        """Build from whole micrograms, as stored; exact in every metric unit.

        For lb and oz use the stored digits instead: their microgram value is already rounded.
        """
        if unit in (Unit.POUND, Unit.OUNCE):
            raise MassError(f"whole micrograms do not give exact {unit}")
        amount = _EXACT.divide(_exact(micrograms), _EXACT.multiply(_MICRO, unit.grams))
        return cls(amount, unit)

    @property
    def grams(self) -> Decimal:
        """Exact grams."""
        return _EXACT.multiply(self.amount, self.unit.grams)

    @property
    def micrograms(self) -> int:
        """Whole micrograms, rounded half to even: exact for metric masses to 1 µg."""
        return int(_ROUNDING.multiply(self.grams, _MICRO).to_integral_value(ROUND_HALF_EVEN))

    @property
    def digits(self) -> str:
        """The amount as plain digits, trailing zeros kept, never an exponent."""
        text = str(self.amount)  # quicker, and the same where it needs no exponent
        return format(self.amount, "f") if "E" in text or "e" in text else text

    def in_unit(self, unit: Unit) -> Mass:
        """Return the same mass in another unit, exact.

        Between metric units the digits stay as fine as shown: 0.250 kg are 250 g, not 250.000 g.

        Raises:
            MassError: the result would not be exact (grams into pounds).
        """
        if unit is self.unit:
            return self
        if unit in _TENS and self.unit in _TENS:
            tens = _TENS[self.unit] - _TENS[unit]
            return Mass(self.amount.scaleb(tens, _EXACT), unit)
        try:
            return Mass(_EXACT.divide(self.grams, unit.grams).normalize(_EXACT), unit)
        except Inexact as fault:
            raise MassError(f"{self} has no exact value in {unit}") from fault

    def __add__(self, other: Mass) -> Mass:
        return Mass(_EXACT.add(self.amount, self._same_unit(other)), self.unit)

    def __sub__(self, other: Mass) -> Mass:
        return Mass(_EXACT.subtract(self.amount, self._same_unit(other)), self.unit)

    def __mul__(self, factor: int | Decimal) -> Mass:
        return Mass(_EXACT.multiply(self.amount, _exact(factor)), self.unit)

    def __neg__(self) -> Mass:
        return Mass(self.amount.copy_negate(), self.unit)

    def __abs__(self) -> Mass:
        return Mass(self.amount.copy_abs(), self.unit)

    def __eq__(self, other: object) -> bool:
        return self.grams == other.grams if isinstance(other, Mass) else NotImplemented

    def __lt__(self, other: Mass) -> bool:
        return self.grams < other.grams

    def __le__(self, other: Mass) -> bool:
        return self.grams <= other.grams

    def __gt__(self, other: Mass) -> bool:
        return self.grams > other.grams

    def __ge__(self, other: Mass) -> bool:
        return self.grams >= other.grams

    def __hash__(self) -> int:
        return hash(self.grams)

    def __str__(self) -> str:
        text = str(self.amount)  # as digits has it: a bag waits for four of these
        if "E" in text or "e" in text:
            text = format(self.amount, "f")
        return text + " " + self.unit

    def _same_unit(self, other: Mass) -> Decimal:
        if other.unit is not self.unit:
            raise MassError(
                f"{self} and {other} are in different units: convert one on purpose with in_unit()"
            )
        return other.amount


def _exact(number: int | str | Decimal) -> Decimal:
    """Return a number as a decimal; Decimal() itself would take a float and keep its error."""
    if isinstance(number, float | bool):
        kind = "a binary float" if isinstance(number, float) else "a truth value"
        raise MassError(f"{number!r} is {kind}: give a string, an int or a Decimal")
    return Decimal(number)
