"""Dates in words: the weekday and the month never stand as a number on a label.

Regulation (EU) No 1169/2011 Annex X 2(b): day, month and possibly year, in that order and in
uncoded form. The tables are our own, so that the label does not follow the locale of a PC.
"""

import datetime

from labels.errors import LabelError

WEEKDAYS = {
    "en": ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"),
}
MONTHS = {
    "en": (
        *("January", "February", "March", "April", "May", "June"),
        *("July", "August", "September", "October", "November", "December"),
    ),
}


def date_in_words(day: datetime.date, language: str = "en") -> str:
    """Return a date with its weekday, such as 'Sunday 29 November 2026'.

    Raises:
        LabelError: No table of names exists for the language.
    """
    if language not in WEEKDAYS:
        raise LabelError(
            "Language of dates",
            f"no weekday and month names for {language!r}; known: {', '.join(sorted(WEEKDAYS))}",
        )
    weekday = WEEKDAYS[language][day.weekday()]
    month = MONTHS[language][day.month - 1]
    return f"{weekday} {day.day} {month} {day.year:04d}"


def short_date_in_words(day: datetime.date, language: str = "en") -> str:
    """Return a date without its weekday, such as '24 November 2026'."""
    return date_in_words(day, language).split(" ", 1)[1]
