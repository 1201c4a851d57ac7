"""What a scan at the packing table names: a bag by its serial, a case or pallet by its SSCC."""

from __future__ import annotations

from labels.errors import LabelError
from labels.gs1 import read_elements
from labels.gs1_digits import SSCC_LENGTH, has_valid_check_digit
from station.reports.serial_scan import serial_of


def named_by_scan(text: str) -> str:
    """The SSCC of a scanned or typed logistic label, else the serial or the text itself."""
    given = text.strip()
    data = given[3:] if given.startswith("]") else given
    if is_sscc(data):
        return data
    try:
        elements = read_elements(data)
    except LabelError:
        return serial_of(given)
    return next((one.value for one in elements if one.ai == "00"), None) or serial_of(given)


def is_sscc(text: str) -> bool:
    """Whether a text has the form of an SSCC: 18 digits, the last one their check digit."""
    digits = text.isascii() and text.isdecimal() and len(text) == SSCC_LENGTH
    return digits and has_valid_check_digit(text)
