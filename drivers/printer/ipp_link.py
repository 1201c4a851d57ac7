"""One question to an IPP printer and its answer, over HTTP (RFC 8010, section 4).

Each question has a connection of its own: on a kept one that the printer has just closed, nobody
could tell whether a page went out. The three ways to fail are three errors, because only one of
them leaves it open whether the page was taken.
"""

from __future__ import annotations

import http.client
import ssl
import threading
from dataclasses import dataclass
from urllib.parse import urlsplit

from drivers.errors import PrinterError
from drivers.printer.ipp_octets import IppMalformed
from drivers.printer.ipp_values import Message
from drivers.printer.ipp_wire import decode, encode

DEFAULT_PORT = 631
_MOST_REPLY = 4 << 20


class NotReached(PrinterError):
    """No connection came about: nothing was sent."""


class Refused(PrinterError):
    """The printer's web server turned the request away: nothing was carried out."""


class ReplyLost(PrinterError):
    """Some or all was sent and no usable answer came: it may have been carried out."""


@dataclass(frozen=True, slots=True)
class Address:
    """Where a printer is.

    Args:
        text: ``ipp://host[:port]/path``, or ``ipps`` for an encrypted connection; port 631 when
            none is given.

    Raises:
        PrinterError: it is no such address.
    """

    text: str

    def __post_init__(self) -> None:
        try:
            parts = urlsplit(self.text)
            good = (
                parts.scheme in ("ipp", "ipps")
                and parts.hostname
                and parts.port != 0
                and len(parts.path) > 1
                and not (parts.query or parts.fragment or parts.username)
                and self.text.isascii()
                and self.text.isprintable()
                and " " not in self.text
            )
        except ValueError:
            good = False
        if not good:
            raise PrinterError(
                f"printer address {self.text!r}",
                "must be like ipp://printer.local:631/ipp/print, or ipps:// for encryption",
            )

    @property
    def host(self) -> str:
        """Name or number of the machine."""
        return urlsplit(self.text).hostname or ""

    @property
    def port(self) -> int:
        """TCP port."""
        return urlsplit(self.text).port or DEFAULT_PORT

    @property
    def path(self) -> str:
        """Path to post to."""
        return urlsplit(self.text).path

    @property
    def encrypted(self) -> bool:
        """Whether the connection is TLS."""
        return self.text.startswith("ipps:")


class IppLink:
    """Asks one printer one thing at a time.

    Args:
        address: where it is.
        tls: how its certificate is checked; None trusts what the system trusts.
    """

    def __init__(self, address: Address, tls: ssl.SSLContext | None = None) -> None:
        self._address = address
        self._tls = tls

    def ask(self, request: Message, wait_s: float) -> Message:
        """Send a request with its document and return the answer.

        Args:
            request: what to send.
            wait_s: from the first packet to the last, in seconds, above 0.

        Raises:
            NotReached: nothing was sent.
            Refused: an HTTP status from 300 to 499.
            ReplyLost: anything that went wrong after the connection stood.
        """
        body = encode(request)
        connection = self._connection(wait_s)
        try:
            connection.connect()
        except OSError as fault:
            connection.close()
            raise NotReached(
                f"printer {self._address.text} is not reached", _cause(fault)
            ) from fault
        watch = _Watch(connection, wait_s)
        try:
            status, octets = self._exchange(connection, body)
        except (OSError, http.client.HTTPException) as fault:
            why = f"no answer within {wait_s:g} s" if watch.barked else _cause(fault)
            raise ReplyLost(f"no reply from printer {self._address.text}", why) from fault
        finally:
            watch.end()
            connection.close()
        return self._judged(request, status, octets)

    def _connection(self, wait_s: float) -> http.client.HTTPConnection:
        host, port = self._address.host, self._address.port
        if self._address.encrypted:
            return http.client.HTTPSConnection(host, port, timeout=wait_s, context=self._tls)
        return http.client.HTTPConnection(host, port, timeout=wait_s)

    def _exchange(self, connection: http.client.HTTPConnection, body: bytes) -> tuple[int, bytes]:
        headers = {"Content-Type": "application/ipp", "Connection": "close"}
        connection.request("POST", self._address.path, body, headers)
        response = connection.getresponse()
        octets = response.read(_MOST_REPLY)
        if len(octets) == _MOST_REPLY:
            raise http.client.HTTPException(f"the reply is longer than {_MOST_REPLY} octets")
        return response.status, octets

    def _judged(self, request: Message, status: int, octets: bytes) -> Message:
        where = self._address.text
        if 300 <= status < 500:
            known = {
                401: "it wants a login, which this station does not give",
                403: "this station is not allowed to print there",
                404: "there is no printer under that path",
                426: "it wants encryption: write the address with ipps://",
            }
            raise Refused(
                f"printer {where} refused (HTTP {status})", known.get(status, "see its settings")
            )
        if status != 200:
            raise ReplyLost(f"no reply from printer {where}", f"it answered HTTP {status}")
        try:
            reply = decode(octets)
        except IppMalformed as garbled:
            raise ReplyLost(f"garbled reply from printer {where}", str(garbled)) from garbled
        if reply.request_id != request.request_id:
            raise ReplyLost(f"garbled reply from printer {where}", "it answers another request")
        return reply


class _Watch:
    """Cuts a connection when its time is up, however slowly it still trickles."""

    def __init__(self, connection: http.client.HTTPConnection, wait_s: float) -> None:
        self.barked = False
        self._socket = connection.sock
        self._timer = threading.Timer(wait_s, self._bark)
        self._timer.name = "printer deadline"
        self._timer.start()

    def _bark(self) -> None:
        self.barked = True
        try:
            self._socket.shutdown(2)
        except OSError:
            return  # it was closed meanwhile

    def end(self) -> None:
        """Let go; the connection is done."""
        self._timer.cancel()
        self._timer.join()


def _cause(fault: Exception) -> str:
    """Say the cause of a network fault in words."""
    if isinstance(fault, TimeoutError):
        return "it does not answer: is it switched on, is its cable in?"
    if isinstance(fault, ConnectionRefusedError):
        return "nothing listens there: is it switched on, is the port right?"
    if isinstance(fault, ssl.SSLCertVerificationError):
        return f"its certificate is not trusted ({fault.verify_message}): give this station its own"
    if isinstance(fault, ssl.SSLError):
        return f"encryption failed: {fault.reason or fault}"
    if isinstance(fault, ConnectionError | http.client.HTTPException):
        return f"the connection was cut ({type(fault).__name__})"
    return str(fault)
