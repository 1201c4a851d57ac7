"""Dates in words."""

import datetime

import pytest

from labels.dates import date_in_words, short_date_in_words
from labels.errors import LabelError


@pytest.mark.parametrize(
    ("day", "words"),
    [
        (datetime.date(2026, 11, 29), "Sunday 29 November 2026"),
        (datetime.date(2028, 2, 29), "Tuesday 29 February 2028"),
        (datetime.date(2027, 1, 1), "Friday 1 January 2027"),
    ],
)
def test_a_day_in_words(day: datetime.date, words: str) -> None:
    assert date_in_words(day) == words
    assert short_date_in_words(day) == words.split(" ", 1)[1]


def test_every_day_of_a_leap_year_by_the_c_locale() -> None:
    """Python's own names in the C locale are English (independent of our table)."""
    for number in range(366):
        day = datetime.date(2028, 1, 1) + datetime.timedelta(days=number)
        assert date_in_words(day).split() == [
            f"{day:%A}",
            str(day.day),
            f"{day:%B}",
            "2028",
        ]


def test_an_unknown_language_is_named() -> None:
    with pytest.raises(LabelError, match="'tlh'"):
        date_in_words(datetime.date(2026, 1, 1), "tlh")
