"""Whether the system's clock follows a time service, as the system itself says; read, never set.

Linux tells it by ``ntp_adjtime`` with no mode set: the state TIME_ERROR, or the status bit
STA_UNSYNC, means that no service keeps the clock right (adjtimex(2)). Elsewhere, and where the call
is refused, the answer is *unknown*.
"""

from __future__ import annotations

import ctypes
import sys

from station.core.clock_guard import Synced

_TIME_ERROR, _STA_UNSYNC = 5, 0x40
_RESERVED = 512
"""More than what any Linux adds behind the fields read here."""


class _Timex(ctypes.Structure):
    _fields_ = [
        ("modes", ctypes.c_uint),
        ("offset", ctypes.c_long),
        ("freq", ctypes.c_long),
        ("maxerror", ctypes.c_long),
        ("esterror", ctypes.c_long),
        ("status", ctypes.c_int),
        ("reserved", ctypes.c_byte * _RESERVED),
    ]


def synced() -> Synced:
    """Ask the system."""
    if sys.platform != "linux":
        return Synced.UNKNOWN
    try:
        ask = ctypes.CDLL(None).ntp_adjtime
        found = _Timex()
        state = int(ask(ctypes.byref(found)))
    except (OSError, AttributeError):
        return Synced.UNKNOWN
    return judged(state, int(found.status))


def judged(state: int, status: int) -> Synced:
    """What state and status of the call mean; a negative state is a refusal."""
    if state < 0:
        return Synced.UNKNOWN
    if state == _TIME_ERROR or status & _STA_UNSYNC:
        return Synced.NO
    return Synced.YES
