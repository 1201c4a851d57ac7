"""A small form of the campaign: the record made in bulk is a true one, and its questions answer."""

from datetime import timedelta

import pytest

from station.app.places import demo_settings
from station.app.speed.long_record import last_of, make_long_record
from station.store.bare_questions import packs_of_lot, rejects_on
from station.store.queries import rejects_of_day, summary
from station.store.recall import reach_of_lot
from station.store.verify import verify
from tests.campaigns.big_screen import measured
from tests.campaigns.big_store import ask


@pytest.fixture(scope="module")
def record(tmp_path_factory):
    return make_long_record(demo_settings(), tmp_path_factory.mktemp("long"), 6_000)


def test_every_entry_and_every_row_is_as_the_station_writes_it(record):
    assert summary(record.home).packs == record.packs == 6_000
    assert verify(record.home).whole
    assert last_of(demo_settings(), record.home) == record


def test_the_questions_give_what_bare_sql_gives(record):
    packs = reach_of_lot(record.home, record.lot).packs
    assert [tuple(row) for row in packs] == packs_of_lot(record.home, record.lot)
    assert len(packs) == 2200
    rejects = rejects_of_day(record.home, record.day)
    assert [row.serial for row in rejects] == [
        row[0] for row in rejects_on(record.home, record.day)
    ]


def test_the_campaign_says_what_it_measured(record):
    said: list[str] = []
    ask(record, said.append)
    assert len(said) == 5


@pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
def test_days_of_a_long_record_are_painted_and_timed(qapp, record):
    found = measured(record.home, record.packs, record.day, days=1, starts=(1, 0), cold=True)
    light = len(rejects_of_day(record.home, record.day - timedelta(days=1)))
    assert found["rejects_a_day"] == {"least": light, "most": light}
    assert light > 0
    for name in ("day_touched_ms", "door_touched_ms", "starting_ms", "first_screen_ms"):
        assert found[name]["count"] == 1
        assert found[name]["max"] > 0
