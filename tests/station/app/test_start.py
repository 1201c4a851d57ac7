"""A start reads what still counts, through indexes, however long the record is."""

import re
import sqlite3
from contextlib import closing
from datetime import timedelta

import pytest

from drivers.port import PortSettings
from station.app.assembly import Station
from station.app.places import demo_settings, packhouse
from station.app.speed.long_record import make_long_record
from station.store import lot_shelf, opening
from station.store.engine import database

DAYS, A_DAY = (2, 8), 20
_SMALL = "standing|identity|alembic_version|sqlite_schema|sqlite_master|CONSTANT"
_SCANNED = re.compile(rf"SCAN (?!{_SMALL})(\w+)")
_ALL_OF_A_KIND = "USING INDEX ix_fact_newest (kind=?)"


class Watched:
    """Counts SQLite's steps and keeps the statements of every connection opened."""

    def __init__(self, monkeypatch):
        self.steps = 0
        self.asked = set()
        real = sqlite3.connect

        def connect(*given, **named):
            connection = real(*given, **named)
            connection.set_progress_handler(self._step, 100)
            connection.set_trace_callback(self.asked.add)
            return connection

        monkeypatch.setattr(sqlite3, "connect", connect)

    def _step(self):
        self.steps += 100


def started(home, folder):
    station = Station(packhouse(demo_settings()), home, PortSettings("none"), folder / "labels")
    station.store.close()


@pytest.fixture(scope="module")
def records(tmp_path_factory):
    """Two records that differ in nothing but their length."""
    made = []
    for days in DAYS:
        home = tmp_path_factory.mktemp(f"days{days}")
        made.append(make_long_record(demo_settings(), home, days * A_DAY, A_DAY).home)
        started(home, home)  # what a first start alone has to say, about settings and software
    return made


def test_a_start_takes_as_many_steps_after_four_times_the_days(records, monkeypatch, tmp_path):
    monkeypatch.setattr(lot_shelf, "SHELF", timedelta())  # lots are in force for so many days
    monkeypatch.setattr(opening, "TAIL", 50)
    steps = []
    for home in records:
        with monkeypatch.context() as patched:
            watched = Watched(patched)
            started(home, tmp_path)
            steps.append(watched.steps)
    short, long = steps
    assert short > 1000
    assert long < short * 1.05, steps


@pytest.mark.parametrize("bags", [20, 200])
def test_a_lot_that_stays_costs_a_start_little_for_each_run_and_nothing_for_a_bag(
    bags, monkeypatch, tmp_path
):
    monkeypatch.setattr(lot_shelf, "SHELF", timedelta())
    monkeypatch.setattr(opening, "TAIL", 50)
    steps = []
    for days in DAYS:
        home = tmp_path / f"{days}"
        home.mkdir()
        make_long_record(demo_settings(), home, days * bags, bags, "CARROT")
        started(home, tmp_path)
        with monkeypatch.context() as patched:
            watched = Watched(patched)
            started(home, tmp_path)
            steps.append(watched.steps)
    runs = 5 * (DAYS[1] - DAYS[0])
    assert (steps[1] - steps[0]) / runs < 150, steps


def test_no_question_of_a_start_goes_through_a_table(monkeypatch, tmp_path):
    """Of a station with lots on its line."""
    home = make_long_record(demo_settings(), tmp_path, DAYS[0] * A_DAY, A_DAY, "CARROT").home
    with monkeypatch.context() as patched:
        watched = Watched(patched)
        started(home, tmp_path)
    of_the_shape = re.compile("alembic_version|sqlite_schema")  # no bag adds a row to them
    questions = [
        one
        for one in watched.asked
        if one.lstrip().startswith("SELECT") and not of_the_shape.search(one)
    ]
    assert len(questions) > 30
    through = []
    with closing(sqlite3.connect(database(home))) as connection:
        for asked in questions:
            plan = connection.execute(f"EXPLAIN QUERY PLAN {asked}").fetchall()
            told = [step[3] for step in plan if _SCANNED.match(step[3])]
            told += [step[3] for step in plan if "LIMIT" not in asked and _ALL_OF_A_KIND in step[3]]
            sorts = any("TEMP B-TREE" in step[3] for step in plan)
            newest = "ORDER BY" in asked and "LIMIT 1" in asked and not sorts
            if told and not newest and not re.search(r"SELECT max\(\w+\.?id\)", asked):
                through.append((asked, told))
    assert through == []
