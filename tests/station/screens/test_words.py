"""Words for dates, lots and means."""

from datetime import date, timedelta

import pytest

from station.screens.words import long_date, lots_line, mean_text, short_date
from tests.station.screens.states import grams, make_run


@pytest.mark.parametrize(
    ("day", "words"),
    [
        (date(2024, 2, 29), "Thursday 29\u00a0February"),  # weekdays by the ISO 8601 calendar
        (date(2026, 12, 1), "Tuesday 1\u00a0December"),
        (date(2027, 1, 1), "Friday 1\u00a0January"),
    ],
)
def test_long_date(day: date, words: str) -> None:
    assert long_date(day) == words


def test_a_year_of_dates_agrees_with_the_calendar() -> None:
    """The C locale's names of strftime are the reference."""
    for offset in range(366):
        day = date(2028, 1, 1) + timedelta(offset)
        assert long_date(day).replace("\u00a0", " ") == f"{day:%A} {day.day} {day:%B}"
        assert short_date(day).replace("\u00a0", " ") == f"{day.day} {day:%b}"


def test_lots_stand_in_the_order_of_the_recipe() -> None:
    assert lots_line(make_run()).split() == ["A2632901", "=", "ROM-2611", "RAD-0418", "CAR-7710"]


@pytest.mark.parametrize(
    ("mean", "text"),
    [("252.400000", "252.4\u00a0g"), ("252.04", "252\u00a0g"), ("-0.06", "−0.1\u00a0g")],
)
def test_mean_is_read_to_a_tenth(mean: str, text: str) -> None:
    assert mean_text(grams(mean)) == text
