"""The serial of a bag, as a person types it or a scanner sends it."""

from __future__ import annotations

import re

from labels.digital_link import read_digital_link
from labels.errors import LabelError
from labels.gs1 import read_elements

_IDENTIFIER = re.compile(r"^\][A-Za-z][0-9A-Za-z]")
_SERIAL = re.compile(r"[0-9A-Z]{1,6}-[0-9A-Z]{2}-\d{6,}", re.ASCII)


def is_serial(text: str) -> bool:
    """Whether a text has the form of a serial."""
    return _SERIAL.fullmatch(text) is not None


def serial_of(text: str) -> str:
    """The serial that a person typed or a scanner sent: element string, Digital Link or plain."""
    given = _IDENTIFIER.sub("", text.strip())
    if is_serial(given.upper()):
        return given.upper()
    try:
        elements = read_digital_link(given) if "://" in given else read_elements(given)
    except LabelError:
        return given.upper()
    return next((one.value for one in elements if one.ai == "21"), given.upper())
