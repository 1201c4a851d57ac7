"""The clock as the line sees it: asked often, said once, closed until confirmed."""

from datetime import UTC, datetime, time, timedelta

import pytest

from station.core.clock_guard import Found, Reason, Synced, confirmed_fact
from station.core.facts import FactRecord
from station.core.pack import Moment
from station.line.clock_duty import ClockDuty

NOON = datetime(2026, 11, 25, 12, tzinfo=UTC)


class Hands:
    """A duty, and a clock that a test moves by tenths of seconds."""

    def __init__(self, past=()):
        self.utc, self.ns, self.synced, self.count = NOON, 0, Synced.YES, 0
        self.records = list(past)
        self.duty = ClockDuty(time(4), self._uid, past, lambda: self.ns, lambda: self.synced)

    def _uid(self, _):
        self.count += 1
        return f"u{self.count}"

    def go(self, seconds=0.1, step=0.0):
        self.ns += round(seconds * 10**9)
        self.utc += timedelta(seconds=seconds + step)
        at = Moment(self.utc, 0, "Europe/Dublin", self.ns)
        found = self.duty.watch(at)
        for fact in found:
            self.note(fact, "station")
        return [fact.result for fact in found]

    def note(self, fact, who):
        at = Moment(self.utc, 0, "Europe/Dublin", self.ns)
        self.records.append(FactRecord(fact, at, who, len(self.records) + 1))
        self.duty.noted(self.records[-1])


@pytest.fixture
def hands():
    made = Hands()
    made.go()
    return made


def test_a_step_is_said_once_and_closes_until_it_is_confirmed(hands):
    assert hands.go(step=3600) == [Found.STEPPED]
    assert hands.go() == []
    words = hands.duty.closing(hands.utc)
    assert words.startswith("the clock jumped ahead by 1 h 0 min: look at date and time")
    hands.note(confirmed_fact(hands.duty.open, Reason.SET_RIGHT, "c1"), "L01")
    assert hands.duty.closing(hands.utc) == ""


def test_a_small_step_is_recorded_and_closes_nothing(hands):
    assert hands.go(step=-10) == [Found.STEPPED]
    assert hands.duty.closing(hands.utc) == ""


def test_small_steps_in_a_row_add_up(hands):
    found = [one for _ in range(5) for one in hands.go(step=1.5)]
    assert found == [Found.STEPPED, Found.STEPPED]


def test_what_was_open_when_the_station_stopped_is_open_after_it(hands):
    hands.go(step=-86400)
    again = Hands(tuple(hands.records))
    assert "jumped back by 1 d" in again.duty.wanting


def test_a_day_without_a_time_service_must_be_confirmed_and_again_a_day_later(hands):
    hands.synced = Synced.NO
    found = []
    for _ in range(24 * 60 + 2):
        found += hands.go(60)
    assert found == [Found.UNSYNCED]
    assert "no time service" in hands.duty.wanting
    hands.note(confirmed_fact(hands.duty.open, Reason.RIGHT_NOW, "c1"), "L01")
    found = []
    for _ in range(24 * 60 + 2):
        found += hands.go(60)
    assert found == [Found.UNSYNCED]


def test_where_the_system_does_not_say_nothing_is_made_of_it(hands):
    hands.synced = Synced.UNKNOWN
    assert [one for _ in range(3000) for one in hands.go(60)] == []
    assert hands.duty.synced is Synced.UNKNOWN


def test_an_hour_of_bending_within_what_is_allowed_is_nothing(hands):
    assert [one for _ in range(7200) for one in hands.go(1, step=0.0004)] == []
