"""The one place that asks the machine for the time."""

from __future__ import annotations

import time
from datetime import UTC, datetime
from typing import Protocol
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from station.core.pack import Moment
from station.errors import BadInput


class StationClock(Protocol):
    """Every clock a station has."""

    def now(self) -> Moment:
        """The present moment by every clock."""
        ...

    def monotonic_ns(self) -> int:
        """The steady count alone, in nanoseconds."""
        ...

    def boot_ns(self) -> int | None:
        """The count that goes on while the machine sleeps; None where the system has none."""
        ...


class SystemClock:
    """The machine's clock, read in the plant's time zone.

    Raises:
        BadInput: the zone is not an IANA time-zone name.
    """

    def __init__(self, zone: str) -> None:
        try:
            self._zone = ZoneInfo(zone)
        except (ZoneInfoNotFoundError, ValueError, OSError) as fault:  # a folder is an OSError
            raise BadInput(
                f"time zone {zone!r} is not known", "use an IANA name such as Europe/Dublin"
            ) from fault
        self._name = zone

    def now(self) -> Moment:
        """The present moment by every clock."""
        utc = datetime.now(UTC)  # noqa: TID251  the one place that may ask
        offset = utc.astimezone(self._zone).utcoffset()
        minutes = 0 if offset is None else int(offset.total_seconds() // 60)
        return Moment(utc, minutes, self._name, time.monotonic_ns())

    def monotonic_ns(self) -> int:
        """The steady count alone, in nanoseconds."""
        return time.monotonic_ns()

    def boot_ns(self) -> int | None:
        """The count that goes on while the machine sleeps; None where the system has none."""
        which = getattr(time, "CLOCK_BOOTTIME", None)
        return None if which is None else time.clock_gettime_ns(which)
