"""How long the computer has slept since it was switched on.

The steady count stands still in a sleep, so what lay in a port's buffer all night looks fresh. On
Linux the count since boot goes on (clock_gettime(2): CLOCK_BOOTTIME), and the difference tells.
Elsewhere the steady count itself goes on, and a sleep shows as a long pause.
"""

from __future__ import annotations

import time


def slept_ns() -> int:
    """Nanoseconds slept so far; 0 where the system counts them as time."""
    boot = getattr(time, "CLOCK_BOOTTIME", None)
    if boot is None:
        return 0
    return time.clock_gettime_ns(boot) - time.clock_gettime_ns(time.CLOCK_MONOTONIC)
