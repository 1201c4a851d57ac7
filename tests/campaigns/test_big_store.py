"""A small form of the campaign: the record made in bulk is a true one, and its questions answer."""

import pytest

from station.app.places import demo_settings
from station.app.speed.long_record import last_of, make_long_record
from station.store.bare_questions import packs_of_lot, rejects_on
from station.store.queries import rejects_of_day, summary
from station.store.recall import reach_of_lot
from station.store.verify import verify
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
