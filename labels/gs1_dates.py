"""Dates and times as GS1 element strings carry them.

Source: GS1 General Specifications 3.4 (YYMMDD, day 00) and 7.12 (century).
"""

import datetime

from labels.errors import LabelError, shown
from labels.gs1_digits import check_digits_only

YEARS_AHEAD = 50  # GenSpecs 7.12: a year lies 49 back to 50 ahead of today
TIME_LIMITS = (24, 60, 60)  # hours, minutes, seconds


def date_value(day: datetime.date) -> str:
    """Return a date as YYMMDD (GenSpecs 3.4); a real day, never 00."""
    return f"{day:%y%m%d}"


def read_date(value: str, today: datetime.date) -> datetime.date:
    """Return the day a YYMMDD value means.

    GenSpecs 3.4 and 7.12: day 00 means the last day of the month, leap years included; the
    century is chosen so that the year lies between 49 years before and 50 years after today.

    Raises:
        LabelError: Not six digits, or no such day.
    """
    if len(value) != 6:
        raise LabelError("Date", f"{shown(value)} has {len(value)} characters; allowed: 6 (YYMMDD)")
    check_digits_only("Date", value)
    year, month, day = int(value[:2]), int(value[2:4]), int(value[4:])
    century, this_year = today.year - today.year % 100, today.year % 100
    if year - this_year > YEARS_AHEAD:
        century -= 100
    elif year - this_year <= YEARS_AHEAD - 100:
        century += 100
    try:
        return _calendar_day(century + year, month, day)
    except ValueError as error:
        raise LabelError("Date", f"{shown(value)} is no day YYMMDD: {error}") from error


def _calendar_day(year: int, month: int, day: int) -> datetime.date:
    if day:
        return datetime.date(year, month, day)
    first_of_next = datetime.date(year + month // 12, month % 12 + 1, 1)
    datetime.date(year, month, 1)  # a month 00 must not pass as December
    return first_of_next - datetime.timedelta(days=1)


def wrong_date(value: str, *, day_00: bool) -> str:
    """Return why six digits are no date YYMMDD, or '' where they are one."""
    if value[4:] == "00" and not day_00:
        return f"{shown(value)} has day 00, which is not allowed here; give the day"
    try:
        _calendar_day(2000 + int(value[:2]), int(value[2:4]), int(value[4:]))
    except ValueError as error:
        return f"{shown(value)} is no day YYMMDD: {error}"
    return ""


def wrong_time(value: str) -> str:
    """Return why digits are no time HH, HHMM or HHMMSS, or '' where they are one."""
    parts = [int(value[place : place + 2]) for place in range(0, len(value), 2)]
    for part, limit in zip(parts, TIME_LIMITS, strict=False):
        if part >= limit:
            return f"{shown(value)} is no time HH[MM[SS]]: {part} is not below {limit}"
    return ""
