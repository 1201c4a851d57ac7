"""Backups the station makes by itself, and what it says when they fail or get old."""

import threading
import time
from datetime import UTC, datetime, timedelta

import pytest

from station.app.record_care import RecordCare
from station.config.record_rules import BackupSettings
from station.core.backup_fact import FAILED, MADE
from station.core.pack import Moment
from station.store.backup import backups_in, check_file
from tests.station.store.conftest import World

NOW = datetime(2026, 3, 4, 8, tzinfo=UTC)


class Clock:
    """Stands where it was set."""

    utc = NOW

    def now(self) -> Moment:
        return Moment(self.utc, 60, "Europe/Madrid", 0)

    def monotonic_ns(self) -> int:
        return 0


class Line:
    """Takes in facts and lets a test wait for them."""

    def __init__(self):
        self.facts, self.came = [], threading.Event()

    def enter(self, facts, who):
        assert who == "station"
        self.facts += facts
        self.came.set()


@pytest.fixture
def world(tmp_path):
    world = World(tmp_path / "home")
    with world.stocked() as store:
        world.fill(store, world.start(store), 4)
    return world


@pytest.fixture
def second(tmp_path):
    folder = tmp_path / "second"
    folder.mkdir()
    return folder


def care_of(world, backup, line, clock=None, unsigned=""):
    names = (world.site, world.station)
    return RecordCare(world.home, names, backup, unsigned, clock or Clock(), line.enter)


def one_try(care, line):
    care.start()
    try:
        assert line.came.wait(60)
    finally:
        care.stop()


def test_a_backup_is_made_by_a_process_of_its_own_checked_and_recorded(world, second):
    line = Line()
    care = care_of(world, BackupSettings(second, 1, 2), line)
    one_try(care, line)
    (made,) = backups_in(second, world.site, world.station)
    (fact,) = line.facts
    assert (fact.subject, fact.result) == (made.path.name, MADE)
    place, _ = check_file(made.path)
    assert (fact.details["seq"], fact.details["hash"]) == (place.seq, place.hash.hex())
    assert care.due(NOW) is None
    assert "every 1 h" in care.words(NOW)


def test_a_backup_that_cannot_be_made_is_said_and_recorded_once(world, tmp_path):
    line = Line()
    care = care_of(world, BackupSettings(tmp_path / "not connected"), line)
    one_try(care, line)
    (fact,) = line.facts
    assert fact.result == FAILED
    assert "connect the disk" in fact.details["why"]
    assert "NO BACKUP: the backup folder" in care.due(NOW).words
    assert not care._is_time(care._backup, NOW + timedelta(minutes=1))
    assert care._is_time(care._backup, NOW + timedelta(minutes=15))
    care._make(care._backup)
    assert len(line.facts) == 1


def test_the_newest_backup_on_the_medium_counts_after_a_restart_and_gets_old(world, second):
    line, clock = Line(), Clock()
    one_try(care_of(world, BackupSettings(second, 1, 2), line, clock), line)
    later = care_of(world, BackupSettings(second, 1, 2), line, clock)
    (made,) = backups_in(second, world.site, world.station)
    assert not later._is_time(later._backup, made.at + timedelta(minutes=59))
    assert later._is_time(later._backup, made.at + timedelta(hours=1))
    assert later.due(made.at + timedelta(hours=2)) is None
    assert "5 hours old" in later.due(made.at + timedelta(hours=5)).words


def test_old_backups_go_once_a_new_one_was_checked(world, second):
    line = Line()
    care = care_of(world, BackupSettings(second, 1, 2), line)
    for hours in (60, 50, 40):
        one = second / f"HA-L1A-AA-000000001-{NOW - timedelta(hours=hours):%Y%m%dT%H%M%S}Z.sqlite"
        one.write_bytes(b"")
    one_try(care, line)
    kept = backups_in(second, world.site, world.station)
    assert [one.path.stat().st_size > 0 for one in kept] == [False, True]


def test_stopping_ends_a_backup_that_is_being_made_and_leaves_nothing_of_it(world, second):
    line = Line()
    care = care_of(world, BackupSettings(second), line)
    care.start()
    deadline = time.monotonic() + 60
    while not list(second.iterdir()) and time.monotonic() < deadline:
        time.sleep(0.01)
    care.stop()
    assert not [file.name for file in second.iterdir() if "unfinished" in file.name]


def test_without_settings_nothing_is_made_and_the_service_page_says_so(world):
    line = Line()
    care = care_of(world, None, line)
    care.start()
    care.stop()
    assert care.due(NOW) is None
    assert "give [backup]" in care.words(NOW)


def test_heads_that_are_not_signed_are_a_notice_and_close_nothing(world):
    care = care_of(world, None, Line(), unsigned="the station key is missing")
    assert care.due(NOW).words == "the station key is missing"
    assert care.closing(NOW) == ""
