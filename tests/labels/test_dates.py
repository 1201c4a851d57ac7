"""Dates in words."""

import datetime

import pytest
from PySide6.QtCore import QDate, QLocale

from labels.dates import CALENDARS, date_for_market, date_in_words, short_date_in_words
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


@pytest.mark.parametrize("language", sorted(CALENDARS))
def test_names_and_order_of_every_day_by_the_unicode_locale_data(language: str) -> None:
    """QLocale carries the Common Locale Data Repository (independent of our tables)."""
    locale = QLocale(language)
    between = {"de": ". ", "da": ". ", "nb": ". ", "fi": ". ", "es": " 'de' "}.get(language, " ")
    before_year = " 'de' " if language == "es" else " "
    for number in range(366):
        day = datetime.date(2028, 1, 1) + datetime.timedelta(days=number)
        qt_day = QDate(day.year, day.month, day.day)
        weekday = locale.standaloneDayName(day.isoweekday())
        words = f"{weekday} " + locale.toString(qt_day, f"d{between}MMMM{before_year}yyyy")
        assert date_in_words(day, language) == words[0].upper() + words[1:]


# Food and Drug Regulations B.01.007 names the two letters of each month.
CANADA = "JA FE MR AL MA JN JL AU SE OC NO DE"


@pytest.mark.parametrize(("month", "letters"), list(enumerate(CANADA.split(), start=1)))
def test_canada_writes_year_month_letters_and_day(month: int, letters: str) -> None:
    day = datetime.date(2026, month, 5)
    assert date_for_market(day, "CA", "en") == date_for_market(day, "CA", "fr")
    assert date_for_market(day, "CA", "en") == f"2026 {letters} 05"


def test_the_united_states_write_the_month_first_and_europe_the_day() -> None:
    day = datetime.date(2026, 11, 29)
    assert date_for_market(day, "US") == "Sunday, November 29, 2026"
    for market in ("EU", "GB", "DE", "NZ"):
        assert date_for_market(day, market) == "Sunday 29 November 2026"
    assert date_for_market(day, "DE", "de") == "Sonntag 29. November 2026"
