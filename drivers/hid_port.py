"""The only module that knows the HID library: a USB weighing device as a port.

The library (hidapi) is an optional part of the installation, loaded when a port ``hid://`` is
opened: ``hid://`` is the one weighing device there is, ``hid://VVVV:PPPP`` or
``hid://VVVV:PPPP/SERIAL`` a certain one.
"""

from __future__ import annotations

from typing import Any

from drivers.errors import PortError
from drivers.frames.hid_scale import USAGE_PAGE, in_stream
from drivers.identity import PortFacts, find, wanted

_REPORT = 64
_READ_WAIT_MS = 50
_MOST_OLD = 200


class HidPort:
    """An open weighing device. All methods but the names are for one thread."""

    def __init__(self, device: Any, url: str, identity: str) -> None:  # noqa: ANN401
        self._device = device
        self._url = url
        self._identity = identity

    @property
    def name(self) -> str:
        """The port as the settings name it."""
        return self._url

    @property
    def identity(self) -> str:
        """Vendor, product and serial number of the device."""
        return self._identity

    def read(self) -> bytes:
        """Return the next report as it stands in the stream, after a short wait at most."""
        report = self._read(_READ_WAIT_MS)
        return in_stream(report) if report else b""

    def write(self, data: bytes) -> None:
        """Send one output report, its id first."""
        try:
            sent = self._device.write(data)
        except (OSError, ValueError) as fault:
            raise self._lost(str(fault)) from fault
        if sent < 0:
            raise self._lost("the device takes nothing")

    def discard_input(self) -> None:
        """Throw away what waits in the system."""
        for _ in range(_MOST_OLD):
            if not self._read(0):
                return

    def close(self) -> None:
        """Give the device back."""
        self._device.close()

    def _read(self, wait_ms: int) -> bytes:
        try:
            return bytes(self._device.read(_REPORT, timeout_ms=wait_ms))
        except (OSError, ValueError) as fault:
            raise self._lost(str(fault)) from fault

    def _lost(self, why: str) -> PortError:
        return PortError(
            f"scale lost on {self._url}", f"{why}: check the plug; it comes back by itself"
        )


def open_hid(url: str, library: Any = None) -> HidPort:  # noqa: ANN401
    """Open a weighing device.

    Args:
        url: see above.
        library: with ``enumerate`` and ``device`` of hidapi; None for that itself.

    Raises:
        PortError: it cannot be opened; names the cause and what to do.
    """
    library = library or _library(url)
    listed = {
        entry["path"].decode("latin-1"): PortFacts(
            entry["path"].decode("latin-1"),
            entry["vendor_id"],
            entry["product_id"],
            entry["serial_number"] or "",
        )
        for entry in library.enumerate()
        if entry["usage_page"] == USAGE_PAGE
    }
    path = find(url, listed.values()) if wanted(url) else _only(url, listed)
    device = library.device()
    try:
        device.open_path(path.encode("latin-1"))
    except OSError as fault:
        raise PortError(
            f"scale's port {url} cannot be opened",
            f"{fault}: this user may not use it, or another program has it",
        ) from fault
    return HidPort(device, url, listed[path].identity)


def _only(url: str, listed: dict[str, PortFacts]) -> str:
    if len(listed) == 1:
        return next(iter(listed))
    present = ", ".join(facts.identity for facts in listed.values()) or "none"
    raise PortError(
        f"scale's port {url} cannot be opened",
        f"{len(listed)} USB weighing devices are there; present are: {present}",
    )


def _library(url: str) -> Any:  # noqa: ANN401
    try:
        import hid
    except ImportError as fault:
        raise PortError(
            f"scale's port {url} cannot be opened",
            "USB weighing devices need the package hidapi: install the station with its part hid",
        ) from fault
    return hid
