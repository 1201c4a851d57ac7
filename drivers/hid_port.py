"""The only module that knows the HID library: a USB weighing device or bar-code scanner as a port.

The library (hidapi) is an optional part of the installation, loaded when a port ``hid://`` is
opened: ``hid://`` is the one device of the kind there is, ``hid://VVVV:PPPP`` or
``hid://VVVV:PPPP/SERIAL`` a certain one.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from drivers.errors import PortError
from drivers.frames import hid_scale, hid_scanner
from drivers.identity import PortFacts, find, wanted

_REPORT = 64
_READ_WAIT_MS = 50
_MOST_OLD = 200


@dataclass(frozen=True, slots=True)
class _Kind:
    """A kind of device: what it is here, what it is called, and the usage page it is known by."""

    what: str
    devices: str
    page: int


_SCALE = _Kind("scale", "USB weighing devices", hid_scale.USAGE_PAGE)
_SCANNER = _Kind("scanner", "USB bar-code scanners", hid_scanner.USAGE_PAGE)


class HidPort:
    """An open device. All methods but the names are for one thread.

    Args:
        device: of the library.
        url: as the settings name it.
        identity: vendor, product and serial number.
        kind: what it is.
        in_stream: a report as it stands in the stream.
    """

    def __init__(
        self,
        device: Any,  # noqa: ANN401
        url: str,
        identity: str,
        kind: _Kind,
        in_stream: Callable[[bytes], bytes],
    ) -> None:
        self._device = device
        self._url = url
        self._identity = identity
        self._kind, self._in_stream = kind, in_stream

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
        return self._in_stream(report) if report else b""

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
            f"{self._kind.what} lost on {self._url}",
            f"{why}: check the plug; it comes back without help",
        )


def open_hid(url: str, library: Any = None) -> HidPort:  # noqa: ANN401
    """Open a weighing device.

    Args:
        url: see above.
        library: with ``enumerate`` and ``device`` of hidapi; None for that itself.

    Raises:
        PortError: it cannot be opened; names the cause and what to do.
    """
    device, identity = _open(url, _SCALE, library)
    return HidPort(device, url, identity, _SCALE, hid_scale.in_stream)


def open_hid_scanner(url: str, library: Any = None) -> HidPort:  # noqa: ANN401
    """Open a bar-code scanner; what it reads comes as from a serial one.

    Args:
        url: see above.
        library: with ``enumerate`` and ``device`` of hidapi; None for that itself.

    Raises:
        PortError: it cannot be opened, or does not say where its data are; names the cause and
            what to do.
    """
    device, identity = _open(url, _SCANNER, library)
    try:
        reports = hid_scanner.ScannerReports(bytes(device.get_report_descriptor()))
    except (OSError, ValueError) as fault:
        device.close()
        raise PortError(
            f"scanner's port {url} cannot be opened",
            f"{fault}: set the scanner to its mode for points of sale (HID POS), or to serial",
        ) from fault
    return HidPort(device, url, identity, _SCANNER, reports.read)


def _open(url: str, kind: _Kind, library: Any) -> tuple[Any, str]:  # noqa: ANN401
    """The open device of a kind, and its identity."""
    library = library or _library(url, kind)
    listed = {
        entry["path"].decode("latin-1"): PortFacts(
            entry["path"].decode("latin-1"),
            entry["vendor_id"],
            entry["product_id"],
            entry["serial_number"] or "",
        )
        for entry in library.enumerate()
        if entry["usage_page"] == kind.page
    }
    path = find(url, listed.values(), kind.what) if wanted(url) else _only(url, kind, listed)
    device = library.device()
    try:
        device.open_path(path.encode("latin-1"))
    except OSError as fault:
        raise PortError(
            f"{kind.what}'s port {url} cannot be opened",
            f"{fault}: this user may not use it, or another program has it",
        ) from fault
    return device, listed[path].identity


def _only(url: str, kind: _Kind, listed: dict[str, PortFacts]) -> str:
    if len(listed) == 1:
        return next(iter(listed))
    present = ", ".join(facts.identity for facts in listed.values()) or "none"
    raise PortError(
        f"{kind.what}'s port {url} cannot be opened",
        f"{len(listed)} {kind.devices} are there; present are: {present}",
    )


def _library(url: str, kind: _Kind) -> Any:  # noqa: ANN401
    try:
        import hid
    except ImportError as fault:
        raise PortError(
            f"{kind.what}'s port {url} cannot be opened",
            f"{kind.devices} need the package hidapi: install the station with its part hid",
        ) from fault
    return hid
