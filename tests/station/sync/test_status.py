"""What a person is told of the way to the centre."""

from datetime import UTC, datetime, timedelta

import pytest

from station.sync.status import Remembered, SyncState, SyncStatus, remember, remembered

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
DAY = timedelta(hours=24)


@pytest.mark.parametrize(
    ("status", "words"),
    [
        (SyncStatus(SyncState.LEVEL), ""),
        (SyncStatus(SyncState.WAITING, "no route", 5, NOW - timedelta(hours=3)), ""),
        (
            SyncStatus(SyncState.WAITING, "no route", 5, NOW - timedelta(hours=30)),
            "nothing reached the centre for 30 hours: no route",
        ),
        (
            SyncStatus(SyncState.WAITING, "", 5, NOW - timedelta(days=9)),
            "nothing reached the centre for 9 days: call maintenance",
        ),
        (SyncStatus(SyncState.CONFLICT, "two of them"), "the centre: two of them: call mainten"),
        (SyncStatus(SyncState.LEVEL, alarms=("set the clock",)), "the centre: set the clock"),
    ],
)
def test_somebody_is_asked_only_where_needed(status, words):
    told = status.needs(NOW, DAY)
    assert told.startswith(words)
    assert bool(told) is bool(words)


def test_what_is_remembered_outlasts_a_restart(tmp_path):
    assert remembered(tmp_path) == Remembered()
    what = Remembered({2**62 + 1: 77}, NOW)
    remember(tmp_path, what)
    assert remembered(tmp_path) == what
    (tmp_path / "station.centre").write_text("half a fi")
    assert remembered(tmp_path) == Remembered()
