"""The desk of alarms: shows those that stand, and makes the entries of whoever answers them."""

from __future__ import annotations

from datetime import datetime

from station.core.alarms import Alarm, acknowledged_fact, shelved_fact
from station.core.facts import Fact
from station.core.ids import new_uid
from station.line.alarm_board import AlarmBoard
from station.line.ports import Clock


class AlarmDesk:
    """Implements station.screens.alarms.AlarmSource; any thread.

    Args:
        board: where alarms stand.
        clock: tells the time.
    """

    def __init__(self, board: AlarmBoard, clock: Clock) -> None:
        self._board, self._clock = board, clock

    @property
    def open(self) -> tuple[Alarm, ...]:
        """The alarms that stand, the gravest first."""
        return self._board.open

    @property
    def now(self) -> datetime:
        """The time, in UTC."""
        return self._clock.now().utc

    def acknowledge(self, alarm: Alarm) -> Fact:
        """The entry that somebody has seen an alarm."""
        return acknowledged_fact(new_uid(self._clock.now()), alarm, self._board.run)

    def shelve(self, alarm: Alarm, minutes: int) -> Fact:
        """The entry that an alarm is put off.

        Raises:
            ValueError: it may not be, or not for so long.
        """
        return shelved_fact(new_uid(self._clock.now()), alarm, minutes, self._board.run)
