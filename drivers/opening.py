"""Opens whatever a scale is connected to, by the address of its port."""

from __future__ import annotations

from drivers.connection import PortLike
from drivers.hid_port import open_hid
from drivers.port import PortSettings, open_port
from drivers.replay import open_replay


def open_scale(settings: PortSettings) -> PortLike:
    """Open the port of a scale.

    Args:
        settings: a serial port by name or ``usb://``, a network address, ``hid://`` a USB weighing
            device, or ``replay://`` a recording.

    Raises:
        PortError: it cannot be opened; names the port, the cause and what to do.
    """
    if settings.url.startswith("hid://"):
        return open_hid(settings.url)
    if settings.url.startswith("replay://"):
        return open_replay(settings.url)
    return open_port(settings)
