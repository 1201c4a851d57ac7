"""Dates of GS1 element strings against the General Specifications and biip."""

import datetime

import biip
import pytest
from hypothesis import given
from hypothesis import strategies as st

from labels.errors import LabelError
from labels.gs1_dates import date_value, read_date, wrong_date, wrong_time

TODAY = datetime.date(2026, 11, 24)
DAYS = st.dates(datetime.date(2000, 1, 1), datetime.date(2075, 12, 31))


@pytest.mark.parametrize(
    ("value", "day"),
    [
        ("130200", datetime.date(2013, 2, 28)),  # GenSpecs 3.4: day 00 is the last of the month
        ("160200", datetime.date(2016, 2, 29)),  # GenSpecs 3.4: leap years included
        ("261200", datetime.date(2026, 12, 31)),
        ("200229", datetime.date(2020, 2, 29)),
        # GenSpecs 7.12: 49 years back to 50 years ahead of 2026
        ("760101", datetime.date(2076, 1, 1)),
        ("770101", datetime.date(1977, 1, 1)),
    ],
)
def test_published_dates(value: str, day: datetime.date) -> None:
    assert read_date(value, TODAY) == day


@pytest.mark.parametrize("value", ["200230", "201310", "200001", "20012", "2001011", "2O0101"])
def test_no_such_day(value: str) -> None:
    with pytest.raises(LabelError):
        read_date(value, TODAY)


@given(DAYS)
def test_dates_come_back_and_biip_reads_them_alike(day: datetime.date) -> None:
    assert read_date(date_value(day), TODAY) == day
    message = biip.parse("]C1" + "010952123454321317" + date_value(day)).gs1_message
    assert message is not None
    (element,) = (one for one in message.element_strings if one.ai.ai == "17")
    assert element.date is not None
    assert (element.date.month, element.date.day) == (day.month, day.day)


@pytest.mark.parametrize("value", ["260200", "261301", "260230", "260001"])
def test_a_day_that_must_be_real(value: str) -> None:
    assert wrong_date(value, day_00=False)


def test_day_00_where_the_dictionary_lets_it_stand() -> None:
    assert wrong_date("260200", day_00=True) == ""
    assert wrong_date("260000", day_00=True) != ""


@pytest.mark.parametrize(("value", "good"), [("23", 1), ("24", 0), ("2359", 1), ("2360", 0)])
def test_times(value: str, good: int) -> None:
    assert (wrong_time(value) == "") == bool(good)


def test_seconds() -> None:
    assert wrong_time("235959") == ""
    assert "60" in wrong_time("235960")
