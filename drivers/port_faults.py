"""What a port raises, and its cause in words.

Beside its own SerialException, which is an OSError, pyserial lets pass plain OSError
(``in_waiting`` on a pulled plug), termios.error (which is no OSError; flushing a pulled plug),
TypeError and AttributeError (a port closed meanwhile).
"""

from __future__ import annotations

import os
import socket

if os.name == "posix":
    import termios

    FAULTS: tuple[type[Exception], ...] = (OSError, termios.error, TypeError, AttributeError)
else:
    FAULTS = (OSError, TypeError, AttributeError)
OPEN_FAULTS: tuple[type[Exception], ...] = (*FAULTS, ValueError)


def code_of(fault: BaseException | None) -> int | None:
    """The system's number for a fault, or for the one beneath it; None where there is none."""
    if fault is None:
        return None
    if fault.args and isinstance(fault.args[0], int):
        return fault.args[0]
    return code_of(fault.__context__)


def plain(fault: Exception) -> str:
    """The cause without the program's own words around it."""
    text = str(fault)
    if "returned no data" in text or "disconnected" in text or "Input/output error" in text:
        return "the device is gone, or another program reads the same port"
    if "refused" in text:
        return "nothing answers there"
    if "does not seem to support" in text:
        return "what answers there does not speak RFC 2217; for a plain line name it socket://"
    if isinstance(fault, TypeError | AttributeError):
        return "the port was closed"
    first = _first_cause(fault)
    if isinstance(first, socket.gaierror):
        return "no machine of that name is known"
    if isinstance(first, OSError) and first.errno is not None:
        return os.strerror(first.errno).lower()
    return "no answer in time" if isinstance(first, TimeoutError) else text


def _first_cause(fault: BaseException) -> BaseException:
    """The fault at which it began."""
    return fault if fault.__context__ is None else _first_cause(fault.__context__)
