"""Every way a clock can go, judged without one; daylight saving by the zone's published rules."""

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.clock_guard import (
    Found,
    Reading,
    Reason,
    at_start,
    between,
    confirmed_fact,
    finding_fact,
    not_confirmed,
    said,
    unsynced,
)
from station.core.facts import FactRecord
from station.core.pack import Moment

CUT_OFF = time(4)
DUBLIN = ZoneInfo("Europe/Dublin")
NOON = datetime(2026, 11, 25, 12, tzinfo=UTC)
AUTUMN = datetime(2026, 10, 25, 1, tzinfo=UTC)  # Directive 2000/84/EC, article 3
SPRING = datetime(2027, 3, 28, 1, tzinfo=UTC)  # article 2
NS = 10**9


def reading(utc: datetime, steady_s: float = 0, slept_s: float = 0, boot=True) -> Reading:
    offset = utc.astimezone(DUBLIN).utcoffset()
    moment = Moment(utc, round(offset.total_seconds() / 60), "Europe/Dublin", round(steady_s * NS))
    return Reading(moment, round((steady_s + slept_s) * NS) if boot else None)


def moved(start, after_s, step_s=0.0, slept_s=0.0, boot=True):
    before = reading(start, boot=boot)
    now = start + timedelta(seconds=after_s + step_s + slept_s)
    found = between(before, reading(now, after_s, slept_s, boot), CUT_OFF)
    return [(one.found, round(one.by.total_seconds()), one.suspicious) for one in found]


STEPPED, SLEPT, OFFSET = Found.STEPPED, Found.SLEPT, Found.OFFSET
LATE = NOON.replace(hour=23, minute=59, second=50)
EARLY = NOON.replace(hour=3, minute=59, second=50)


@pytest.mark.parametrize(
    ("start", "after_s", "step_s", "slept_s", "expected"),
    [
        (NOON, 0.1, 0, 0, []),
        (NOON, 0.1, 1.9, 0, []),
        (NOON, 0.1, -1.9, 0, []),
        (NOON, 0.1, 2.1, 0, [(STEPPED, 2, False)]),
        (NOON, 0.1, 60, 0, [(STEPPED, 60, False)]),
        (NOON, 0.1, 61, 0, [(STEPPED, 61, True)]),
        (NOON, 0.1, -61, 0, [(STEPPED, -61, True)]),
        (NOON, 0.1, 3600, 0, [(STEPPED, 3600, True)]),
        (NOON, 0.1, -3600, 0, [(STEPPED, -3600, True)]),
        (NOON, 0.1, -86400, 0, [(STEPPED, -86400, True)]),
        (LATE, 1, 15, 0, [(STEPPED, 15, True)]),  # to the next calendar day
        (LATE, 15, 0, 0, []),  # midnight by itself
        (EARLY, 1, 15, 0, [(STEPPED, 15, True)]),  # to the next production day
        (EARLY, 15, 0, 0, []),
        (NOON, 0.1, 0, 600, [(SLEPT, 600, False)]),
        (NOON, 0.1, -7200, 600, [(SLEPT, 600, False), (STEPPED, -7200, True)]),
        (AUTUMN - timedelta(seconds=1), 2, 0, 0, [(OFFSET, -3600, False)]),
        (SPRING - timedelta(seconds=1), 2, 0, 0, [(OFFSET, 3600, False)]),
        (AUTUMN - timedelta(seconds=1), 2, -3600, 0, [(STEPPED, -3600, True)]),
    ],
)
def test_what_a_clock_does_is_found_and_weighed(start, after_s, step_s, slept_s, expected):
    assert moved(start, after_s, step_s, slept_s) == expected


def test_the_two_half_past_ones_of_autumn_are_an_hour_apart_and_no_step():
    first, second = AUTUMN - timedelta(minutes=30), AUTUMN + timedelta(minutes=30)
    assert first.astimezone(DUBLIN).time() == second.astimezone(DUBLIN).time() == time(1, 30)
    assert moved(first, 3600) == [(OFFSET, -3600, False)]


def test_without_a_count_through_sleep_a_sleep_is_a_step_ahead():
    assert moved(NOON, 0.1, slept_s=600, boot=False) == [(STEPPED, 600, True)]


def test_a_time_service_may_bend_the_clock_as_far_as_rfc_5905_says():
    hour = 3600.0
    assert moved(NOON, hour, step_s=hour * 0.0005 + 1.9) == []
    assert moved(NOON, hour, step_s=hour * 0.0005 + 2.1) == [(STEPPED, 4, False)]


@given(steps=st.integers(-(10**6), 10**6), after=st.integers(0, 3600))
def test_no_step_beyond_a_minute_is_ever_taken_for_good(steps, after):
    found = moved(NOON, float(after), step_s=float(steps))
    suspicious = any(one[2] for one in found)
    assert suspicious or abs(steps) <= 60 + 0.0005 * after + 2


@pytest.mark.parametrize(
    ("newest", "now", "expected"),
    [
        (None, NOON, []),
        (NOON, NOON, []),
        (NOON, NOON - timedelta(seconds=1.5), []),
        (NOON, NOON - timedelta(seconds=3), [Found.BACK_DATED]),
        (NOON, NOON - timedelta(days=365), [Found.YEAR, Found.BACK_DATED]),
        (NOON, NOON + timedelta(days=6), []),
        (NOON, NOON + timedelta(days=8), [Found.LONG_AWAY]),
        (None, NOON.replace(year=1970), [Found.YEAR]),
        (None, NOON.replace(year=2041), []),
        (None, NOON.replace(year=2042), [Found.YEAR]),
    ],
)
def test_a_start_is_held_against_the_newest_entry_and_the_year(newest, now, expected):
    found = at_start(newest, reading(now).at)
    assert [one.found for one in found] == expected
    assert all(one.suspicious for one in found)


@pytest.mark.parametrize(
    ("seconds", "words"),
    [(0, "0 s"), (59, "59 s"), (-3600, "1 h 0 min"), (90_061, "1 d 1 h"), (61, "1 min 1 s")],
)
def test_a_span_is_said_in_its_two_greatest_units(seconds, words):
    assert said(timedelta(seconds=seconds)) == words


def test_a_person_confirms_what_is_open_and_later_findings_stay():
    one = finding_fact(unsynced(timedelta(hours=25)), "u1")
    records = [FactRecord(one, reading(NOON).at, "station", 1)]
    slept = between(reading(NOON), reading(NOON + timedelta(seconds=600), 0, 600), CUT_OFF)
    records.append(FactRecord(finding_fact(slept[0], "u2"), reading(NOON).at, "station", 2))
    assert [open_one.fact.uid for open_one in not_confirmed(records)] == ["u1"]
    signed = confirmed_fact(not_confirmed(records), Reason.RIGHT_NOW, "u3")
    records.append(FactRecord(signed, reading(NOON).at, "L01", 3))
    assert not_confirmed(records) == ()
    later = replace(records[0], fact=finding_fact(unsynced(timedelta(hours=25)), "u4"))
    assert [open_one.fact.uid for open_one in not_confirmed([*records, later])] == ["u4"]
    with pytest.raises(ValueError, match="nothing about the clock is open"):
        confirmed_fact((), Reason.RIGHT_NOW, "u5")
