"""Causes in words; the faults are those that real ports and sockets raise (errno(3), RFC 6761)."""

import errno
import socket

import pytest
import serial

from drivers.port_faults import FAULTS, code_of, plain


def wrapped(first: Exception) -> Exception:
    """As pyserial wraps it: the system's fault in words within its own."""
    fault = serial.SerialException(f"could not open port x: {first}")
    fault.__context__ = first
    return fault


@pytest.mark.parametrize(
    ("fault", "words"),
    [
        (OSError(errno.EIO, "Input/output error"), "the device is gone"),
        (serial.SerialException("device reports readiness but returned no data"), "the device is"),
        (wrapped(ConnectionRefusedError(errno.ECONNREFUSED, "refused")), "nothing answers there"),
        (wrapped(OSError(errno.EHOSTUNREACH, "No route")), "no route to host"),
        (wrapped(socket.gaierror(-2, "Name or service not known")), "no machine of that name"),
        (wrapped(TimeoutError("timed out")), "no answer in time"),
        (wrapped(serial.SerialException("Remote does not seem to support RFC2217")), "socket://"),
        (TypeError("an integer is required"), "the port was closed"),
        (AttributeError("NoneType"), "the port was closed"),
        (serial.SerialException("something else"), "something else"),
    ],
)
def test_cause_in_words(fault: Exception, words: str) -> None:
    assert words in plain(fault)
    assert isinstance(fault, FAULTS)


def test_number_of_the_fault_or_of_the_one_beneath() -> None:
    assert code_of(OSError(errno.EACCES, "Permission denied")) == errno.EACCES
    assert code_of(wrapped(OSError(errno.EBUSY, "busy"))) == errno.EBUSY
    assert code_of(serial.SerialException("no number")) is None
