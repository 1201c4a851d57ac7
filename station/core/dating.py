"""From the pack day to the use-by date.

Day 0 is the production day. The use-by date is a calendar date, counted in days and never in
hours, so that a change to or from summer time cannot move it. Any input lot's own last day can only
shorten it. That the date of the oldest input limits the date of the blend is common practice; the
length of life itself is the user's policy and needs a validated shelf-life study.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, tzinfo

from station.core.lots import InputLot
from station.core.product import Product

MIDNIGHT = time()
"""When a production day changes where no settings are at hand: the calendar's."""


class DatingError(ValueError):
    """A date that must not be printed; the message says why and what to do."""


@dataclass(frozen=True, slots=True)
class Dating:
    """The dates of a run, frozen at its start, and what set them."""

    production_day: date
    use_by: date
    shortened_by: str
    """Lot code of the input lot that shortened the life; empty when the product's life holds."""


def span_of_days(first: date, last: date, zone: tzinfo, cut_off: time) -> tuple[datetime, datetime]:
    """Return the first and the last moment of production days: what is recorded then is theirs.

    Args:
        first: first production day.
        last: last one, counted in.
        zone: of the plant; a day of a change to or from summer time is as long as it is.
        cut_off: wall-clock time at which the production day changes.
    """
    begin = datetime.combine(first, cut_off, zone)
    end = datetime.combine(last + timedelta(days=1), cut_off, zone)
    return begin, end.astimezone(UTC) - datetime.resolution


def production_day(local: datetime, cut_off: time) -> date:
    """Return the day a bag counts to.

    A night shift's bags count to the day the shift began on: before the cut-off it is still
    yesterday, so that midnight never adds a day of life.

    Args:
        local: wall-clock time of the plant.
        cut_off: wall-clock time at which the production day changes, before noon.

    Raises:
        DatingError: the cut-off is not before noon.
    """
    if cut_off >= time(12):
        raise DatingError(f"cut-off {cut_off:%H:%M}: the production day must change before noon")
    day = local.date()
    return day - timedelta(days=1) if local.time() < cut_off else day


def date_run(product: Product, lots: Iterable[InputLot], day: date) -> Dating:
    """Return the dates of a run packed on production day ``day`` from ``lots``.

    Raises:
        DatingError: an input lot's own last day is before the production day.
    """
    use_by = day + timedelta(days=product.life_days)
    shortened_by = ""
    for lot in sorted(lots, key=lambda lot: lot.code):
        if lot.use_by is None:
            continue
        if lot.use_by < day:
            raise DatingError(
                f"lot {lot.code} had its last day on {lot.use_by}, before {day}: "
                "take it off the line"
            )
        if lot.use_by < use_by:
            use_by, shortened_by = lot.use_by, lot.code
    return Dating(day, use_by, shortened_by)


def newest_day(digits: str, today: date) -> date | None:
    """Return the newest day not after ``today`` of a day and month such as ``2411``.

    A delivery is never cut or packed in the future, so that the year need not be typed.

    Returns:
        None where the digits are not four, or there was no such day within eight years.
    """
    if len(digits) != 4 or not digits.isdecimal():
        return None
    for year in range(today.year, today.year - 9, -1):
        try:
            day = date(year, int(digits[2:]), int(digits[:2]))
        except ValueError:
            continue  # 29 February, or no day at all
        if day <= today:
            return day
    return None


def first_off_stale(dating: Dating, local: datetime, cut_off: time) -> str:
    """Say why a first-off approved with these dates holds no longer; empty while it does.

    A label approved on one production day says nothing about that of another: its packing day, and
    with it the use-by date, are wrong. A clock that was put back is a change of day too.

    Args:
        dating: the dates the approved label shows.
        local: wall-clock time of the plant.
        cut_off: wall-clock time at which the production day changes, before noon.

    Raises:
        DatingError: the cut-off is not before noon.
    """
    today = production_day(local, cut_off)
    if today == dating.production_day:
        return ""
    return (
        f"the production day is {today} and the approved label is of {dating.production_day}: end "
        "the run, start it anew and approve its first label"
    )
