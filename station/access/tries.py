"""Wrong PINs, counted on the disk before the PIN is looked at, so that no restart forgives one."""

from __future__ import annotations

import threading
from collections.abc import Callable
from datetime import datetime, timedelta
from pathlib import Path

from station.access.credentials import FOLDER
from station.access.private_file import read_object, write_object
from station.core.pins import Tries, wait
from station.errors import EnvironmentFault

_NS_PER_S = 1_000_000_000


class TryBook:
    """Counts the tries of each person; may be used from any thread.

    Args:
        home: the station's folder.
        now: the present time in UTC.
        monotonic_ns: the steady count, which no setting of the clock shortens.
    """

    def __init__(
        self, home: Path, now: Callable[[], datetime], monotonic_ns: Callable[[], int]
    ) -> None:
        self._file = home / FOLDER / "tries.json"
        self._now, self._count = now, monotonic_ns
        self._lock = threading.Lock()
        self._seen: dict[str, tuple[datetime, int]] = {}
        try:
            kept = read_object(self._file)
            self._tries = {
                str(who): Tries(int(one["wrong"]), datetime.fromisoformat(one["last"]))
                for who, one in kept.items()
            }
        except (KeyError, TypeError, ValueError) as damaged:
            raise EnvironmentFault(f"{self._file} is damaged", "remove it and restart") from damaged

    def wait(self, who: str) -> timedelta:
        """How long nothing is tried for this person yet."""
        with self._lock:
            return self._wait(who)

    def count(self, who: str) -> timedelta:
        """Count a try as wrong until it is known to be right; returns the wait instead of counting.

        Raises:
            EnvironmentFault: it cannot be written down; then nothing may be tried.
        """
        with self._lock:
            left = self._wait(who)
            if left > timedelta(0):
                return left
            now = self._now()
            self._write({**self._tries, who: self._tries.get(who, Tries()).after_wrong(now)})
            self._seen[who] = (now, self._count())
            return left

    def right(self, who: str) -> None:
        """Forget the wrong tries of a person who gave the right PIN."""
        with self._lock:
            self._write({one: kept for one, kept in self._tries.items() if one != who})

    def wrong(self, who: str) -> int:
        """Wrong tries since the last right one."""
        return self._tries.get(who, Tries()).wrong

    def _wait(self, who: str) -> timedelta:
        tries = self._tries.get(who, Tries())
        now = self._now()
        if who in self._seen:  # within one process the steady count tells, whatever the clock does
            at, count = self._seen[who]
            now = at + timedelta(seconds=(self._count() - count) / _NS_PER_S)
        return wait(tries, now)

    def _write(self, tries: dict[str, Tries]) -> None:
        written = {
            who: {"wrong": one.wrong, "last": one.last.isoformat()}
            for who, one in tries.items()
            if one.last is not None
        }
        write_object(self._file, written)
        self._tries = tries
