from datetime import UTC, datetime, time

import pytest

from station.core.shifts import shift_of

THREE = (time(4), time(12), time(20))


@pytest.mark.parametrize(
    ("clock", "shift"),
    [
        ("04:00", "04:00-12:00"),
        ("11:59", "04:00-12:00"),
        ("12:00", "12:00-20:00"),
        ("23:30", "20:00-04:00"),
        ("03:59", "20:00-04:00"),
    ],
)
def test_a_shift_begins_at_its_time_and_the_last_one_goes_on_over_midnight(clock, shift):
    at = datetime.fromisoformat(f"2026-11-25T{clock}").replace(tzinfo=UTC)
    assert shift_of(at, THREE) == shift


def test_a_plant_without_shifts_names_none():
    assert shift_of(datetime(2026, 11, 25, tzinfo=UTC), ()) == ""
