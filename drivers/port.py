"""The only module that knows pyserial: a tty, a TCP socket or a serial port behind RFC 2217.

Everything that can go wrong leaves here as a PortError that names the port, the cause and what to
do.
"""

from __future__ import annotations

import errno
import os
import select
import socket
from contextlib import nullcontext
from dataclasses import dataclass
from typing import Any
from urllib.parse import urlsplit

import serial
from serial.tools import list_ports

from drivers.errors import PortError
from drivers.identity import FORM, PortFacts, find, wanted
from drivers.parity import ParityLine
from drivers.port_faults import FAULTS, OPEN_FAULTS, code_of, plain

if os.name == "posix":
    import fcntl
    import termios

READ_WAIT_S = 0.05
"""How long one read waits for the first byte."""
_MOST_AT_ONCE = 4096
_UNHEARD_MS = 10_000
_NET_SCHEMES = ("socket", "rfc2217")
_BAUDS = (300, 600, 1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200)


@dataclass(frozen=True, slots=True)
class PortSettings:
    """Where the scale is and how it talks.

    Args:
        url: path or name of a serial port (best by its id, which stays the same after
            replugging), or ``usb://VVVV:PPPP/SERIAL``, or ``socket://host:port``, or
            ``rfc2217://host:port``; see drivers.opening for ``hid://`` and ``replay://``.
        baud: bits a second.
        bytesize: 7 or 8 data bits.
        parity: N none, E even, O odd.
        stopbits: 1 or 2.
        what: is connected there, for messages.

    Raises:
        PortError: a value that is not allowed; the message names it and what is.
    """

    url: str
    baud: int = 9600
    bytesize: int = 8
    parity: str = "N"
    stopbits: int = 1
    what: str = "scale"

    def __post_init__(self) -> None:
        rules: tuple[tuple[str, object, tuple[object, ...]], ...] = (
            ("baud", self.baud, _BAUDS),
            ("bytesize", self.bytesize, (7, 8)),
            ("parity", self.parity, ("N", "E", "O")),
            ("stopbits", self.stopbits, (1, 2)),
        )
        for name, given, allowed in rules:
            if given not in allowed:
                listed = ", ".join(str(one) for one in allowed)
                raise PortError(f"port {self.url}: {name} is {given!r}", f"allowed are {listed}")
        if self.bytesize == 7 and self.parity == "N":
            raise PortError(
                f"port {self.url}: 7 data bits without parity", "7 bits go with parity E or O"
            )
        self._check_url()

    def _check_url(self) -> None:
        if not self.url.strip():
            raise PortError("no port is named", f"present are: {ports_present()}")
        if "://" not in self.url or self.url == "hid://" or self.is_recording:
            return
        if self.url.startswith(("usb://", "hid://")):
            if wanted(self.url) is None:
                raise PortError(f"port {self.url} is not allowed", f"allowed is {FORM}")
            return
        try:
            parts = urlsplit(self.url)
            complete = parts.scheme in _NET_SCHEMES and bool(parts.hostname and parts.port)
        except ValueError:
            complete = False
        if not complete:
            raise PortError(
                f"port {self.url} is not allowed",
                "allowed are a serial port, socket://host:port and rfc2217://host:port"
                " with a port number of 1 to 65535",
            )

    @property
    def is_tty(self) -> bool:
        """Whether it is a serial port of this machine."""
        return "://" not in self.url or self.url.startswith("usb://")

    @property
    def sets_line(self) -> bool:
        """Whether baud rate and parity are set here, and not on a converter by hand."""
        return self.is_tty or self.url.startswith("rfc2217:")

    @property
    def is_recording(self) -> bool:
        """Whether it is no scale, but what one sent once."""
        return self.url.startswith("replay://")

    @property
    def line(self) -> str:
        """The line's settings as a scale's menu gives them, e.g. ``9600 8N1``."""
        return f"{self.baud} {self.bytesize}{self.parity}{self.stopbits}"


class Port:
    """An open port. All methods but ``name`` are for one thread; each may raise PortError.

    A port of 7 data bits with parity is open with 8 bits without, and the parity is checked here:
    the system's own drivers let damaged bytes through without a word.
    """

    def __init__(self, device: Any, settings: PortSettings) -> None:  # noqa: ANN401
        self._device = device
        self._settings = settings
        self._parity = _parity_of(settings)
        self._handle = _handle_of(device)

    @property
    def name(self) -> str:
        """The port as the settings name it."""
        return self._settings.url

    @property
    def identity(self) -> str:
        """Vendor, product and serial number of the converter; empty where it is no USB device."""
        if not self._settings.is_tty:
            return ""
        here = os.path.realpath(str(self._device.name))
        return next((port.identity for port in _present() if port.device == here), "")

    def read(self) -> bytes:
        """Return what has arrived, waiting at most READ_WAIT_S for the first byte."""
        try:
            chunk = self._read()
        except FAULTS as fault:
            raise self._lost(fault) from fault
        return self._parity.received(chunk) if self._parity else chunk

    def _read(self) -> bytes:
        if self._handle is None:  # no handle to wait on: ask how much is there
            return bytes(self._device.read(self._device.in_waiting or 1))
        ready, _, _ = select.select([self._handle], [], [], READ_WAIT_S)
        return bytes(self._device.read(_MOST_AT_ONCE)) if ready else b""

    def write(self, data: bytes) -> None:
        """Send all of ``data``."""
        try:
            self._device.write(self._parity.sent(data) if self._parity else data)
        except FAULTS as fault:
            raise self._lost(fault) from fault

    def discard_input(self) -> None:
        """Throw away what has arrived and was not read."""
        try:
            self._device.reset_input_buffer()
        except FAULTS as fault:
            raise self._lost(fault) from fault

    def close(self) -> None:
        """Give the port back; a port already lost closes without a word."""
        try:
            # where the far end left first, pyserial leaves its socket open
            with _socket_of(self._device) or nullcontext():
                self._device.close()
        except FAULTS:
            return

    def _lost(self, fault: Exception) -> PortError:
        return PortError(
            f"{self._settings.what} lost on {self.name}",
            f"{plain(fault)}: check the plug, the cable and the {self._settings.what}'s power;"
            " it comes back without help",
        )


def open_port(settings: PortSettings) -> Port:
    """Open a port for this program alone.

    Raises:
        PortError: it cannot be opened; names the port, the cause and what to do.
    """
    options: dict[str, Any] = {
        "baudrate": settings.baud,
        "bytesize": settings.bytesize,
        "parity": settings.parity,
        "stopbits": settings.stopbits,
        "timeout": READ_WAIT_S,
    }
    if not settings.url.startswith("rfc2217:"):  # there pyserial refuses it, and has its own
        options["write_timeout"] = 2.0
    if settings.is_tty:
        options["exclusive"] = True
        if _parity_of(settings) is not None:
            options |= {"bytesize": 8, "parity": "N"}
    by_id = wanted(settings.url) is not None
    url = find(settings.url, _present(), settings.what) if by_id else settings.url
    try:
        device = serial.serial_for_url(url, **options)
    except OPEN_FAULTS as fault:
        raise _not_opened(settings, fault) from fault
    if _handle_of(device) is not None:
        device.timeout = 0  # reads wait on the handle, then take all that is there
        if settings.is_tty:
            _keep_others_out(device)
    _give_up_when_unheard(device)
    return Port(device, settings)


def ports_present() -> str:
    """Name the serial ports of this machine, in words."""
    found = [
        port.device
        if port.description in ("n/a", port.device)
        else f"{port.device} ({port.description})"
        for port in sorted(list_ports.comports(), key=lambda port: port.device)
    ]
    return ", ".join(found) or "none"


def _present() -> list[PortFacts]:
    return [
        PortFacts(port.device, port.vid, port.pid, port.serial_number or "")
        for port in list_ports.comports()
    ]


def _parity_of(settings: PortSettings) -> ParityLine | None:
    """Parity to check here: on own ports with 7 bits; a network device checks its own."""
    if settings.is_tty and settings.bytesize == 7:
        return ParityLine(settings.parity)
    return None


def _handle_of(device: Any) -> int | None:  # noqa: ANN401
    """A handle that select() can wait on, or None (Windows ports, RFC 2217)."""
    if os.name != "posix" or device.__class__.__module__.endswith("rfc2217"):
        return None
    return int(device.fileno())


def _socket_of(device: Any) -> socket.socket | None:  # noqa: ANN401
    """The socket beneath a network port, or None."""
    beneath = getattr(device, "_socket", None)
    return beneath if isinstance(beneath, socket.socket) else None


def _keep_others_out(device: Any) -> None:  # noqa: ANN401
    """Refuse opens that do not ask for a lock, too; the system's administrator still may.

    Not on a pseudo-terminal: it keeps the refusal after its last user has gone.
    """
    if os.name == "posix" and not os.ttyname(device.fileno()).startswith("/dev/pts/"):
        try:
            fcntl.ioctl(device.fileno(), termios.TIOCEXCL)
        except FAULTS:
            return  # the lock of pyserial stays


def _give_up_when_unheard(device: Any) -> None:  # noqa: ANN401
    """Let a converter that lost its power be missed soon: it closes nothing and answers nothing.

    A silent scale is asked again and again. What the far end does not confirm in time ends the
    connection (RFC 5482), where the system would go on trying for a quarter of an hour.
    """
    beneath = _socket_of(device)
    if beneath is not None and hasattr(socket, "TCP_USER_TIMEOUT"):
        beneath.setsockopt(socket.IPPROTO_TCP, socket.TCP_USER_TIMEOUT, _UNHEARD_MS)


_BUSY = {errno.EAGAIN, errno.EBUSY, errno.EWOULDBLOCK}
_NOT_A_PORT = {errno.ENOTTY, errno.EISDIR, errno.EINVAL, errno.ENXIO}


def _not_opened(settings: PortSettings, fault: Exception) -> PortError:
    code = code_of(fault)
    title = f"{settings.what}'s port {settings.url} cannot be opened"
    if not settings.is_tty:
        return PortError(
            title, f"{plain(fault)}: check the address, the network and the converter's power"
        )
    if code in _BUSY or (os.name == "nt" and "PermissionError" in str(fault)):
        why = "another program has it: close that program, or name another port"
    elif code in (errno.EACCES, errno.EPERM):
        why = (
            "this user may not use it: add the user to the group that owns it (on most Linux"
            " systems dialout) and sign in again"
        )
    elif code == errno.ENOENT or os.name == "nt":
        why = f"it is not there: check the plug; present are: {ports_present()}"
    elif code in _NOT_A_PORT:
        why = f"it is no serial port; present are: {ports_present()}"
    else:
        why = f"{plain(fault)}; present are: {ports_present()}"
    return PortError(title, why)
