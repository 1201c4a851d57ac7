"""Linear bar codes: GS1-128 (ISO/IEC 15417), EAN-13 and UPC-A (ISO/IEC 15420).

python-barcode encodes. Its objects change while they build, a second build gives another symbol,
and it takes any character as data, U+00F1 even as FNC1. So values are checked first
(`labels.gs1`), and each object builds exactly once.
"""

from collections.abc import Iterable
from functools import lru_cache

from barcode.codex import Gs1_128
from barcode.ean import EuropeanArticleNumber13

from labels.errors import LabelError, shown
from labels.gs1 import SEPARATOR, Element, element_string, readable
from labels.gs1_digits import check_key, gtin_14
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
    data = element_string(row)
    encoder = Gs1_128(data.replace(SEPARATOR, Gs1_128.FNC1_CHAR))
    (modules,) = encoder.build()
    return Symbol((modules,), readable(row), data.encode("ascii"), GS1_128_IDENTIFIER, row)


def ean_13(digits: str) -> Symbol:
    """Encode thirteen digits, a GTIN-13 or a number of restricted circulation, as EAN-13.

    Raises:
        LabelError: Not thirteen digits, or a wrong check digit.
    """
    if len(digits) != 13:
        raise LabelError("EAN-13", f"{shown(digits)} has {len(digits)} characters; allowed: 13")
    check_key("EAN-13", digits)
    (modules,) = EuropeanArticleNumber13(digits).build()
    hri = f"{digits[0]} {digits[1:7]} {digits[7:]}"
    return Symbol(
        *((modules,), hri, digits.encode("ascii"), EAN_IDENTIFIER, ()), EAN_13_QUIET, EAN_GUARDS
    )


def upc_a(digits: str) -> Symbol:
    """Encode a GTIN-12 as UPC-A; a reader transmits it with a leading zero.

    Raises:
        LabelError: Not twelve digits, or a wrong check digit.
    """
    if len(digits) != 12:
        raise LabelError("UPC-A", f"{shown(digits)} has {len(digits)} characters; allowed: 12")
    check_key("UPC-A", digits)
    (modules,) = EuropeanArticleNumber13("0" + digits).build()
    hri = f"{digits[0]} {digits[1:6]} {digits[6:11]} {digits[11]}"
    sent = ("0" + digits).encode("ascii")
    return Symbol((modules,), hri, sent, EAN_IDENTIFIER, (), UPC_A_QUIET, UPC_A_GUARDS)


def retail(gtin: str) -> Symbol:
    """Encode a GTIN for the till: twelve digits as UPC-A, thirteen as EAN-13.

    A GTIN-14 that begins with 0 is the same number with a filler; it is encoded as what it is.

    Raises:
        LabelError: A GTIN no till symbol of this kind carries.
    """
    number = gtin_14(gtin)
    if number.startswith("00") and len(gtin) in (12, 14):
        return upc_a(number[2:])
    if number.startswith("0"):
        return ean_13(number[1:])
    raise LabelError(
        "Retail bar code",
        f"{shown(gtin)} is a GTIN-14 with indicator {number[0]}: a case, or a variable measure; "
        "allowed at the till: a GTIN of 12 or 13 digits",
    )
