"""Linear bar codes: GS1-128 (ISO/IEC 15417), EAN-13 and UPC-A (ISO/IEC 15420).

python-barcode encodes. Its objects change while they build, a second build gives another symbol,
and it takes any character as data, U+00F1 even as FNC1. So values are checked first
(`labels.gs1`), and each object builds exactly once. It is imported with the first symbol.
"""

from collections.abc import Iterable
from functools import lru_cache

from labels.errors import LabelError, shown
from labels.gs1 import SEPARATOR, Element, element_string, readable
from labels.gs1_digits import UPC_A_DIGITS, check_key, till_digits
from labels.symbol import Symbol

GS1_128_IDENTIFIER = "]C1"  # ISO/IEC 15424; plain Code 128 would read ]C0
SYMBOLS_KEPT = 64  # one of the two on a label is the same all through a run
LONGEST_MM = 165.10  # GS1-128 with its quiet zones, GenSpecs 5.4
EAN_IDENTIFIER = "]E0"  # ISO/IEC 15424; UPC-A is transmitted as 13 digits
EAN_13_QUIET = (11, 7)  # modules left and right, GenSpecs 5.2.3.4
UPC_A_QUIET = (9, 9)
# Bars of a symbol that are drawn longer, among its 30: the guards; in UPC-A the first and the last
# digit too.
EAN_GUARDS = frozenset({0, 1, 14, 15, 28, 29})
UPC_A_GUARDS = EAN_GUARDS | {2, 3, 26, 27}


def gs1_128(elements: Iterable[Element]) -> Symbol:
    """Encode elements as one GS1-128 symbol.

    Raises:
        LabelError: The elements do not make a valid element string.
    """
    return _gs1_128(tuple(elements))


@lru_cache(SYMBOLS_KEPT)
def _gs1_128(row: tuple[Element, ...]) -> Symbol:
    from barcode.codex import Gs1_128

    data = element_string(row)
    encoder = Gs1_128(data.replace(SEPARATOR, Gs1_128.FNC1_CHAR))
    (modules,) = encoder.build()
    return Symbol((modules,), readable(row), data.encode("ascii"), GS1_128_IDENTIFIER, row)


def _ean_modules(digits: str) -> str:
    """Return the modules of thirteen checked digits; 1 is a bar."""
    from barcode.ean import EuropeanArticleNumber13

    (modules,) = EuropeanArticleNumber13(digits).build()
    return str(modules)


def ean_13(digits: str) -> Symbol:
    """Encode thirteen digits, a GTIN-13 or a number of restricted circulation, as EAN-13.

    Raises:
        LabelError: Not thirteen digits, or a wrong check digit.
    """
    if len(digits) != 13:
        raise LabelError("EAN-13", f"{shown(digits)} has {len(digits)} characters; allowed: 13")
    check_key("EAN-13", digits)
    modules = _ean_modules(digits)
    hri = f"{digits[0]} {digits[1:7]} {digits[7:]}"
    return Symbol(
        *((modules,), hri, digits.encode("ascii"), EAN_IDENTIFIER, ()), EAN_13_QUIET, EAN_GUARDS
    )


def upc_a(digits: str) -> Symbol:
    """Encode a GTIN-12 as UPC-A; a reader transmits it with a leading zero.

    Raises:
        LabelError: Not twelve digits, or a wrong check digit.
    """
    if len(digits) != UPC_A_DIGITS:
        raise LabelError("UPC-A", f"{shown(digits)} has {len(digits)} characters; allowed: 12")
    check_key("UPC-A", digits)
    modules = _ean_modules("0" + digits)
    hri = f"{digits[0]} {digits[1:6]} {digits[6:11]} {digits[11]}"
    sent = ("0" + digits).encode("ascii")
    return Symbol((modules,), hri, sent, EAN_IDENTIFIER, (), UPC_A_QUIET, UPC_A_GUARDS)


def retail(gtin: str) -> Symbol:
    """Encode a GTIN for the till: twelve digits as UPC-A, thirteen as EAN-13.

    Raises:
        LabelError: A GTIN no till symbol of this kind carries.
    """
    digits = till_digits(gtin)
    return upc_a(digits) if len(digits) == UPC_A_DIGITS else ean_13(digits)
