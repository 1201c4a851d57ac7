"""Dates are counted in calendar days: no hour, no change of the clock can move a use-by.

Regulation (EU) 1169/2011 Annex X gives the "use by" date as day, month and, where need be, year: a
day of the calendar. That the oldest input limits the date, and that a night shift counts to the day
it began on, are common practice.
"""

import calendar
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.dating import (
    Dating,
    DatingError,
    date_run,
    first_off_stale,
    newest_day,
    production_day,
    span_of_days,
)
from station.core.lots import InputLot
from station.core.pack import Moment
from station.line.opening import day_of
from tests.station.line.scenario import make_product

CUT_OFF = time(4)
DUBLIN = ZoneInfo("Europe/Dublin")
days = st.dates(date(2020, 1, 1), date(2099, 12, 1))


def lot(code, use_by, received=date(2020, 1, 1)):
    return InputLot(code, "ROM", "Aldermoor Growers", received, use_by=use_by)


def use_by(day, life):
    return date_run(make_product(life_days=life), (), day).use_by


@pytest.mark.parametrize(
    ("day", "life", "expected"),
    [
        (date(2026, 1, 31), 1, date(2026, 2, 1)),
        (date(2026, 2, 28), 1, date(2026, 3, 1)),
        (date(2028, 2, 28), 1, date(2028, 2, 29)),
        (date(2028, 2, 29), 365, date(2029, 2, 28)),
        (date(2027, 12, 31), 1, date(2028, 1, 1)),
        (date(2026, 12, 28), 7, date(2027, 1, 4)),
        (date(2099, 12, 31), 60, date(2100, 3, 1)),  # 2100 is no leap year
    ],
)
def test_ends_of_months_and_years(day, life, expected):
    assert use_by(day, life) == expected


@given(days, st.integers(1, 400))
def test_the_use_by_lies_as_many_days_later_as_the_life_is_long(day, life):
    # By the day count of the proleptic Gregorian calendar, from the standard library.
    assert use_by(day, life).toordinal() == day.toordinal() + life


@given(days, st.integers(1, 30), st.lists(st.none() | st.integers(0, 40), max_size=6))
def test_the_oldest_input_can_only_shorten_the_life(day, life, left):
    lots = [
        lot(f"ROM-{number}", None if ahead is None else day + timedelta(days=ahead))
        for number, ahead in enumerate(left)
    ]
    dating = date_run(make_product(life_days=life), lots, day)
    limits = [ahead for ahead in left if ahead is not None]
    assert (dating.use_by - day).days == min([life, *limits])
    assert dating.production_day == day
    if min([life, *limits]) == life:
        assert dating.shortened_by == ""
    else:
        assert dating.shortened_by == f"ROM-{left.index(min(limits))}"


def test_the_order_of_the_lots_does_not_matter():
    day = date(2026, 11, 25)
    lots = [lot("ROM-2", date(2026, 11, 27)), lot("ROM-1", date(2026, 11, 27))]
    assert date_run(make_product(), lots, day) == date_run(make_product(), lots[::-1], day)
    assert date_run(make_product(), lots, day).shortened_by == "ROM-1"


def test_a_lot_past_its_last_day_is_refused_by_name():
    with pytest.raises(DatingError, match=r"lot ROM-9 had its last day on 2026-11-24.*take it off"):
        date_run(make_product(), [lot("ROM-9", date(2026, 11, 24))], date(2026, 11, 25))


@pytest.mark.parametrize(
    ("wall", "day"),
    [
        ("2026-11-25T22:00", date(2026, 11, 25)),
        ("2026-11-26T00:00", date(2026, 11, 25)),
        ("2026-11-26T03:59:59.999999", date(2026, 11, 25)),
        ("2026-11-26T04:00", date(2026, 11, 26)),
        ("2027-01-01T02:00", date(2026, 12, 31)),
        ("2028-03-01T02:00", date(2028, 2, 29)),
    ],
)
def test_a_night_shift_counts_to_the_day_it_began_on(wall, day):
    assert production_day(datetime.fromisoformat(wall), CUT_OFF) == day


@given(st.datetimes(datetime(2020, 1, 2), datetime(2099, 12, 30)))  # noqa: DTZ001
def test_without_a_night_shift_it_is_the_day_of_the_calendar(wall):
    assert production_day(wall, time(0)) == wall.date()


@pytest.mark.parametrize("cut_off", [time(12), time(18), time(23, 59)])
def test_a_cut_off_in_the_afternoon_is_refused(cut_off):
    with pytest.raises(DatingError, match=r"the production day must change before noon"):
        production_day(datetime.fromisoformat("2026-11-25T09:00"), cut_off)


def _change_days():
    """Last Sundays of March and October: Directive 2000/84/EC articles 2 and 3."""
    for year in range(2024, 2031):
        for month in (3, 10):
            weeks = calendar.monthcalendar(year, month)
            yield date(year, month, max(week[calendar.SUNDAY] for week in weeks))


@pytest.mark.parametrize("change", list(_change_days()), ids=str)
def test_no_change_of_the_clock_moves_a_day_or_a_use_by(change):
    start = datetime.combine(change, time(0), UTC) - timedelta(days=1)
    offsets, before = set(), None
    for minute in range(0, 3 * 24 * 60, 10):
        utc = start + timedelta(minutes=minute)
        local = utc.astimezone(DUBLIN)
        offset = local.utcoffset() // timedelta(minutes=1)
        offsets.add(offset)
        day = day_of(Moment(utc, offset, "Europe/Dublin", 0), CUT_OFF)
        after_cut_off = (local.hour, local.minute) >= (4, 0)
        assert day == (local.date() if after_cut_off else local.date() - timedelta(days=1))
        assert before is None or before <= day <= before + timedelta(days=1)
        assert (use_by(day, 6) - day).days == 6
        before = day
    assert offsets == {0, 60}  # the clock did change while we looked


def test_a_run_across_the_short_and_the_long_day_lives_as_long_as_any():
    spring, autumn = date(2027, 3, 27), date(2027, 10, 30)
    assert use_by(spring, 2) == date(2027, 3, 29)
    assert use_by(autumn, 2) == date(2027, 11, 1)


@pytest.mark.parametrize(
    ("day", "at", "stale"),
    [
        (25, time(4, 0), False),
        (25, time(23, 59), False),
        (26, time(3, 59), False),  # the night shift's bags count to the day before
        (26, time(4, 0), True),
        (25, time(3, 59), True),  # a clock put back
    ],
)
def test_a_first_off_holds_for_its_production_day_alone(day, at, stale):
    approved = Dating(date(2026, 11, 25), date(2026, 12, 1), "")
    said = first_off_stale(approved, datetime.combine(date(2026, 11, day), at), CUT_OFF)
    assert bool(said) is stale
    assert "2026-11-25" in said or not stale


@pytest.mark.parametrize("zone", ["Europe/Dublin", "America/New_York", "Australia/Lord_Howe"])
def test_a_change_to_or_from_summer_time_makes_no_first_off_stale_before_the_cut_off(zone):
    """Every hour of two years: stale exactly where the calendar day before the cut-off changes."""
    at = datetime(2026, 1, 1, 12, tzinfo=UTC)
    while at.year < 2028:
        local = at.astimezone(ZoneInfo(zone)).replace(tzinfo=None)
        today = production_day(local, CUT_OFF)
        approved = Dating(today, today + timedelta(days=7), "")
        assert not first_off_stale(approved, local, CUT_OFF)
        assert first_off_stale(approved, local + timedelta(days=1), CUT_OFF)
        at += timedelta(hours=1)


@pytest.mark.parametrize(
    ("digits", "day"),
    [
        ("2511", date(2026, 11, 25)),
        ("2611", date(2025, 11, 26)),
        ("0101", date(2026, 1, 1)),
        ("2902", date(2024, 2, 29)),
        ("3102", None),
        ("0013", None),
        ("251", None),
        ("", None),
        ("٢٥١١", date(2026, 11, 25)),
    ],
)
def test_a_day_and_month_are_of_the_newest_day_not_to_come(digits, day):
    assert newest_day(digits, date(2026, 11, 25)) == day


@pytest.mark.parametrize(
    ("day", "hours"),
    [
        (date(2026, 3, 28), 23),  # summer time began on 29 March 2026: Directive 2000/84/EC, art. 2
        (date(2026, 10, 24), 25),  # and ended on 25 October 2026: art. 3
        (date(2026, 6, 1), 24),
    ],
)
def test_a_production_day_lasts_from_cut_off_to_cut_off_as_the_clock_goes(day, hours):
    zone = ZoneInfo("Europe/Madrid")
    begin, end = span_of_days(day, day, zone, time(4))
    assert begin.astimezone(zone) == datetime.combine(day, time(4), zone)
    passed = end - begin.astimezone(UTC)
    assert passed + datetime.resolution == timedelta(hours=hours)
    local = end.astimezone(zone).replace(tzinfo=None)
    assert production_day(local, time(4)) == day
    assert production_day(local + datetime.resolution, time(4)) == day + timedelta(days=1)


def test_days_follow_each_other_without_a_gap():
    zone = ZoneInfo("Europe/Dublin")
    days = [date(2026, 3, 27) + timedelta(days=n) for n in range(4)]
    spans = [span_of_days(day, day, zone, time(3, 30)) for day in days]
    for (_, end), (begin, _) in pairwise(spans):
        assert begin.astimezone(UTC) - end == datetime.resolution
    assert span_of_days(days[0], days[-1], zone, time(3, 30)) == (spans[0][0], spans[-1][1])
