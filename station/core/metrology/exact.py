"""Exact arithmetic on decimals and rationals, whatever the caller's decimal context.

Verdicts are never rounded: sums and products trap on inexactness, and a comparison with a square
root is made on squares of rationals.
"""

from __future__ import annotations

from decimal import ROUND_CEILING, Context, Decimal, Inexact, InvalidOperation, Overflow
from fractions import Fraction

EXACT = Context(prec=80, traps=[Inexact, InvalidOperation, Overflow])
_ROUND_UP = Context(prec=80, rounding=ROUND_CEILING, traps=[InvalidOperation, Overflow])
_ESTIMATE = Context(prec=50, traps=[InvalidOperation, Overflow])


def round_up(value: Decimal, step: Decimal) -> Decimal:
    """Round up to the next multiple of ``step``; an exact multiple stays."""
    steps = _ROUND_UP.divide(value, step).to_integral_value(ROUND_CEILING, _ROUND_UP)
    return EXACT.multiply(steps, step)


def trimmed(value: Decimal) -> Decimal:
    """Drop trailing zeros behind the decimal point, never into exponent form."""
    whole = value.to_integral_value()
    return whole.quantize(Decimal(1)) if value == whole else EXACT.normalize(value)


def plain(value: Decimal) -> str:
    """Return plain digits without trailing zeros and without an exponent."""
    return format(trimmed(value), "f")


def at_least_minus_root(margin: Fraction, factor: Fraction, square: Fraction) -> bool:
    """Tell exactly whether ``margin + factor * sqrt(square) >= 0``.

    ``factor`` and ``square`` are not negative, so for a negative margin both sides may be squared:
    the answer is a comparison of two rationals and cannot flip by rounding.
    """
    return margin >= 0 or margin * margin <= factor * factor * square


def decimal_of(value: Fraction, places: int) -> Decimal:
    """Write a rational with ``places`` decimals, half to even, for showing only."""
    scaled = round(value * 10**places)
    return Decimal(scaled).scaleb(-places, EXACT)


def root_of(square: Fraction, places: int) -> Decimal:
    """Square root of a rational to ``places`` decimals, for showing only."""
    quotient = _ESTIMATE.divide(Decimal(square.numerator), Decimal(square.denominator))
    return _ESTIMATE.sqrt(quotient).quantize(Decimal(1).scaleb(-places), context=_ESTIMATE)
