"""A clock that a test steps and puts to sleep, while its steady count goes on as the machine's."""

import threading
import time
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from station.core.pack import Moment

NS = 1_000_000_000


class ShiftedClock:
    """Shows the machine's time with a shift; its two counts are those of a real machine.

    Args:
        start: what it shows at first, in UTC; the machine's own time where None.
        zone: the plant's.
    """

    def __init__(self, start: datetime | None = None, zone: str = "Europe/Dublin") -> None:
        self._zone, self._name = ZoneInfo(zone), zone
        real = datetime.now(UTC)  # noqa: TID251  what is shifted here is the machine's clock
        self._lock = threading.Lock()
        self._base, self._count = start or real, time.monotonic_ns()
        self._slept_ns = 0

    def step(self, by: timedelta) -> None:
        """Somebody, or a time service, sets the clock."""
        with self._lock:
            self._base += by

    def sleep(self, length: timedelta) -> None:
        """The machine is suspended: time passes, and the monotonic count does not."""
        with self._lock:
            self._base += length
            self._slept_ns += round(length.total_seconds() * NS)

    def now(self) -> Moment:
        with self._lock:
            count = time.monotonic_ns()
            utc = self._base + timedelta(microseconds=(count - self._count) // 1000)
        offset = utc.astimezone(self._zone).utcoffset()
        assert offset is not None
        return Moment(utc, round(offset.total_seconds() / 60), self._name, count)

    def monotonic_ns(self) -> int:
        return time.monotonic_ns()

    def boot_ns(self) -> int | None:
        with self._lock:
            return time.monotonic_ns() + self._slept_ns
