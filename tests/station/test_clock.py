"""The machine's clock in the plant's zone, beside the standard library's own."""

import time
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from station import clock
from station.clock import SystemClock
from station.errors import BadInput


def test_now_is_between_two_looks_at_the_machine():
    before, count = datetime.now(UTC), time.monotonic_ns()  # noqa: TID251  what it is checked by
    moment = SystemClock("Europe/Dublin").now()
    assert before <= moment.utc <= datetime.now(UTC)  # noqa: TID251
    assert count <= moment.monotonic_ns <= time.monotonic_ns()
    assert moment.zone == "Europe/Dublin"
    assert moment.utc.utcoffset() == timedelta(0)


def test_the_steady_count_never_goes_back():
    ours = SystemClock("UTC")
    counts = [ours.monotonic_ns() for _ in range(1000)]
    assert counts == sorted(counts)


@pytest.mark.parametrize(
    ("zone", "utc", "offset_minutes"),
    [
        # Summer time in Ireland 2026: from 29 March 01:00 UTC to 25 October 01:00 UTC
        # (Directive 2000/84/EC articles 2 and 3).
        ("Europe/Dublin", datetime(2026, 3, 29, 0, 59, 59, tzinfo=UTC), 0),
        ("Europe/Dublin", datetime(2026, 3, 29, 1, 0, 0, tzinfo=UTC), 60),
        ("Europe/Dublin", datetime(2026, 10, 25, 0, 59, 59, tzinfo=UTC), 60),
        ("Europe/Dublin", datetime(2026, 10, 25, 1, 0, 0, tzinfo=UTC), 0),
        ("America/St_Johns", datetime(2026, 1, 15, tzinfo=UTC), -210),
        ("Asia/Kathmandu", datetime(2026, 1, 15, tzinfo=UTC), 345),
        ("UTC", datetime(2026, 7, 1, tzinfo=UTC), 0),
    ],
)
def test_the_offset_is_that_of_the_zone_at_that_moment(monkeypatch, zone, utc, offset_minutes):
    class Fixed(datetime):
        @classmethod
        def now(cls, tz=None):
            return utc.astimezone(tz)

    monkeypatch.setattr(clock, "datetime", Fixed)
    moment = SystemClock(zone).now()
    assert (moment.utc, moment.offset_minutes) == (utc, offset_minutes)
    wall = utc.astimezone(ZoneInfo(zone)).replace(tzinfo=None)
    assert (moment.utc + timedelta(minutes=moment.offset_minutes)).replace(tzinfo=None) == wall


@pytest.mark.parametrize(
    "zone",
    [
        "", "Europe", "Europe/", "Europe/Atlantis", "Dublin", "/etc/localtime", "../zoneinfo/UTC",
        "Europe/Dublin\0", "Ñ", "+01:00", "x" * 5000,
    ],
)  # fmt: skip
def test_what_is_no_zone_is_refused_with_an_example(zone):
    with pytest.raises(BadInput) as refused:
        SystemClock(zone)
    assert refused.value.title == f"time zone {zone!r} is not known"
    assert refused.value.detail == "use an IANA name such as Europe/Dublin"
