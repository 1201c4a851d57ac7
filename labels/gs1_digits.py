"""Digits that check digits: GTIN, SSCC and GLN, and the verifier of a printed price or weight.

Source: GS1 General Specifications 7.9 (standard check digit 7.9.1; price and weight 7.9.2 to
7.9.4) and 1.4 (keys).
"""

from labels.errors import LabelError, shown

DIGITS = frozenset("0123456789")
GTIN_LENGTHS = (8, 12, 13, 14)
UPC_A_DIGITS = 12
SSCC_LENGTH = 18
PREFIX_LENGTHS = range(4, 13)  # digits of a GS1 company prefix

# GenSpecs figures 7.9.2-1 to -3: the product of each digit 0 to 9 under a weight.
TWO_MINUS = (0, 2, 4, 6, 8, 9, 1, 3, 5, 7)
THREE = (0, 3, 6, 9, 2, 5, 8, 1, 4, 7)
FIVE_PLUS = (0, 5, 1, 6, 2, 7, 3, 8, 4, 9)
FIVE_MINUS = (0, 5, 9, 4, 8, 3, 7, 2, 6, 1)


def describe(character: str) -> str:
    """Name a character so that an invisible one can be found: "'ñ' (U+00F1)"."""
    shown = repr(character) if character.isprintable() else "an unprintable character"
    return f"{shown} (U+{ord(character):04X})"


def check_digits_only(where: str, value: str) -> None:
    """Raise a `LabelError` that names the first character that is no digit 0-9."""
    for position, character in enumerate(value, start=1):
        if character not in DIGITS:
            raise LabelError(
                where,
                f"{shown(value)} has {describe(character)} at place {position}; "
                "allowed: digits 0-9",
            )


def check_digit(payload: str) -> str:
    """Return the modulo-10 check digit of a GTIN, SSCC or GLN without its last digit.

    GenSpecs 7.9.1: weights 3, 1, 3, 1 ... from the right.

    Args:
        payload: Digits before the check digit, any length.

    Raises:
        LabelError: The payload is empty or not all digits.
    """
    if not payload or not set(payload) <= DIGITS:
        raise LabelError("Check digit", f"{shown(payload)} is not a row of digits 0-9")
    total = sum(int(digit) * (3, 1)[place % 2] for place, digit in enumerate(reversed(payload)))
    return str(-total % 10)


def has_valid_check_digit(digits: str) -> bool:
    """Tell whether the last digit is the check digit of those before it."""
    return len(digits) > 1 and check_digit(digits[:-1]) == digits[-1]


def check_key(where: str, value: str) -> None:
    """Raise a `LabelError` unless the value is digits that end in their check digit."""
    check_digits_only(where, value)
    if not has_valid_check_digit(value):
        raise LabelError(
            where,
            f"{shown(value)} ends in {value[-1:]}, but its check digit is "
            f"{check_digit(value[:-1])}",
        )


def gtin_14(gtin: str) -> str:
    """Return a GTIN of 8, 12, 13 or 14 digits as the 14 digits AI (01) carries.

    Raises:
        LabelError: Wrong length, a character that is no digit, or a wrong check digit.
    """
    if len(gtin) not in GTIN_LENGTHS:
        raise LabelError(
            "GTIN", f"{shown(gtin)} has {len(gtin)} characters; allowed: 8, 12, 13 or 14"
        )
    check_key("GTIN", gtin)
    return gtin.zfill(14)


def till_digits(gtin: str) -> str:
    """Return the digits a till reads of a GTIN: twelve as UPC-A, thirteen as EAN-13.

    A GTIN-14 that begins with 0 is the same number with a filler; it is taken as what it is.

    Raises:
        LabelError: A GTIN no till symbol of this kind carries.
    """
    number = gtin_14(gtin)
    if number.startswith("00") and len(gtin) in (UPC_A_DIGITS, 14):
        return number[2:]
    if number.startswith("0"):
        return number[1:]
    raise LabelError(
        "Retail bar code",
        f"{shown(gtin)} is a GTIN-14 with indicator {number[0]}: a case, or a variable measure; "
        "allowed at the till: a GTIN of 12 or 13 digits",
    )


def sscc(extension: int, company_prefix: str, serial: int) -> str:
    """Return the 18 digits of a serial shipping container code (GenSpecs 2.2.1).

    Args:
        extension: Extension digit, 0 to 9, at the packer's choice.
        company_prefix: GS1 company prefix, 4 to 12 digits.
        serial: Serial of the unit; it fills what prefix and extension leave of 17 digits. One
            code must not come back within twelve months (from memory).

    Raises:
        LabelError: A part is out of range.
    """
    if extension not in range(10):
        raise LabelError("SSCC extension digit", f"{extension!r}; allowed: 0 to 9")
    check_digits_only("Company prefix", company_prefix)
    if len(company_prefix) not in PREFIX_LENGTHS:
        raise LabelError(
            "Company prefix",
            f"{shown(company_prefix)} has {len(company_prefix)} digits; allowed: 4-12",
        )
    room = SSCC_LENGTH - 2 - len(company_prefix)
    if not 0 <= serial < 10**room:
        raise LabelError("SSCC serial", f"{serial!r}; allowed: 0 to {10**room - 1} ({room} digits)")
    payload = f"{extension}{company_prefix}{serial:0{room}d}"
    return payload + check_digit(payload)


def measure_verifier(digits: str) -> str:
    """Return the verifier digit of a price or weight of four or five digits.

    GenSpecs 7.9.3 (four digits: weights 2-, 2-, 3, 5-; the sum times 3, its last digit) and 7.9.4
    (five digits: weights 5+, 2-, 5-, 5+, 2-; the digit whose 5- product makes up the next ten).

    Raises:
        LabelError: Not four or five digits.
    """
    check_digits_only("Price or weight", digits)
    values = [int(digit) for digit in digits]
    if len(values) == 4:
        weights = (TWO_MINUS, TWO_MINUS, THREE, FIVE_MINUS)
        total = sum(weight[value] for weight, value in zip(weights, values, strict=True))
        return str(total * 3 % 10)
    if len(values) == 5:
        weights_5 = (FIVE_PLUS, TWO_MINUS, FIVE_MINUS, FIVE_PLUS, TWO_MINUS)
        total = sum(weight[value] for weight, value in zip(weights_5, values, strict=True))
        return str(FIVE_MINUS.index(-total % 10))
    raise LabelError(
        "Price or weight", f"{shown(digits)} has {len(digits)} digits; allowed: 4 or 5"
    )
