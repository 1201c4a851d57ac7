"""Which serial port is the scale's, by what its converter says about itself. Pure.

The name of a port follows the order of plugging. ``usb://12ab:0034`` is the one converter of this
vendor and product, ``usb://12ab:0034/A1B2`` the one with this serial number, whatever its name is.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from drivers.errors import PortError

FORM = "usb://VVVV:PPPP or usb://VVVV:PPPP/SERIAL, with vendor and product in hexadecimal"
_WANTED = re.compile(r"(?:usb|hid)://([0-9A-Fa-f]{4}):([0-9A-Fa-f]{4})(?:/([ -~]{1,60}))?")


@dataclass(frozen=True, slots=True)
class PortFacts:
    """A port of this machine.

    Args:
        device: its present name.
        vendor: of its converter; None where it is no USB device.
        product: of its converter.
        serial: of its converter; empty where it has none.
    """

    device: str
    vendor: int | None = None
    product: int | None = None
    serial: str = ""

    @property
    def identity(self) -> str:
        """Vendor, product and serial number; empty where it is no USB device."""
        if self.vendor is None or self.product is None:
            return ""
        named = f"{self.vendor:04x}:{self.product:04x}"
        return f"{named}/{self.serial}" if self.serial else named


def wanted(url: str) -> tuple[int, int, str] | None:
    """Return vendor, product and serial number, which may be empty; None where it names none."""
    found = _WANTED.fullmatch(url)
    return None if found is None else (int(found[1], 16), int(found[2], 16), found[3] or "")


def find(url: str, present: Iterable[PortFacts], what: str = "scale") -> str:
    """Return the present name of the device an address means.

    Args:
        url: the address.
        present: what is plugged in.
        what: is wanted, for messages.

    Raises:
        PortError: it is not there, or more than one is.
    """
    asked = wanted(url)
    assert asked is not None
    vendor, product, serial = asked
    fitting = [
        port
        for port in present
        if (port.vendor, port.product) == (vendor, product) and serial in ("", port.serial)
    ]
    if not fitting:
        raise PortError(f"{what}'s port {url} cannot be opened", "it is not there: check the plug")
    if len(fitting) > 1:
        listed = ", ".join(port.identity for port in fitting)
        raise PortError(
            f"{what}'s port {url} cannot be opened",
            f"{len(fitting)} of them are there: name the serial number too, present are: {listed}",
        )
    return fitting[0].device


def check_same(name: str, known: str, found: str, what: str = "scale") -> None:
    """Refuse another device at the name of the known one.

    Args:
        name: of the port.
        known: identity of the device that worked; empty where it has none.
        found: identity of the device that is there now.
        what: the known one is, for messages.

    Raises:
        PortError: they differ.
    """
    if known and found != known:
        raise PortError(
            f"another device is at {name}",
            f"it is {found or 'no USB device'}, the {what}'s is {known}: plug that one in again,"
            " or stop and start the station to take this one",
        )
