"""A serial line of the settings as the drivers take it."""

from __future__ import annotations

from drivers.port import PortSettings
from station.config.packhouse import ScalePort

_PARITY = {"none": "N", "even": "E", "odd": "O"}


def port_settings(port: ScalePort, what: str = "scale") -> PortSettings:
    """Return the settings of a port.

    Args:
        port: of the settings.
        what: is connected there, for messages.
    """
    return PortSettings(
        port.url, port.baud, port.bits, _PARITY[port.parity], port.stop_bits, what=what
    )
