"""Bags by number and by entry: the same bags as by reading all of them, and never by doing so."""

import random
import shutil
import sqlite3
from contextlib import closing
from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import and_, select, update
from sqlalchemy.dialects import sqlite

from station.core.pack import PackId
from station.core.receiving import hold_lot_fact
from station.store.columns import utc_text
from station.store.engine import reading, scratch_engine
from station.store.number_range import rows_after, rows_between, rows_judged
from station.store.schema import metadata
from station.store.tables import identity, pack

LONGEST_OF_SIX = 999_999


@pytest.fixture(scope="module")
def numbered(packed_once, tmp_path_factory):
    """The packed record with its last bags numbered over the end of six digits."""
    home = tmp_path_factory.mktemp("numbered") / "home"
    shutil.copytree(packed_once.home, home)
    with closing(sqlite3.connect(home / "station.sqlite", isolation_level=None)) as connection:
        (site, station, epoch) = connection.execute("SELECT site, station, epoch FROM identity")\
            .fetchone()  # fmt: skip
        for row in range(4, 11):
            number = LONGEST_OF_SIX - 7 + row
            serial = PackId(site, station, epoch, number).serial
            connection.execute(
                "UPDATE pack SET number = ?, serial = ? WHERE id = ?", (number, serial, row)
            )
    return home


@pytest.mark.parametrize(
    ("first", "last"),
    [
        (1, 3),
        (2, 2),
        (3, 900),
        (4, LONGEST_OF_SIX - 4),
        (1, 9 * LONGEST_OF_SIX),
        (LONGEST_OF_SIX, LONGEST_OF_SIX + 1),
        (LONGEST_OF_SIX + 2, 99 * LONGEST_OF_SIX),
        (LONGEST_OF_SIX + 500, LONGEST_OF_SIX + 600),
        (1, 100_000),
    ],
)
def test_a_range_names_the_bags_that_reading_all_would(numbered, first, last):
    with reading(numbered) as connection:
        epoch = connection.execute(select(identity.c.epoch)).scalar_one()
        everything = connection.execute(select(pack.c.id, pack.c.number)).all()
        ranged = select(pack.c.id).where(rows_between(connection, epoch, first, last))
        found = connection.execute(ranged.order_by(pack.c.id)).scalars().all()
        other = select(pack.c.id).where(rows_between(connection, epoch ^ 1, first, last))
        assert connection.execute(other).all() == []
    assert found == [row.id for row in everything if first <= row.number <= last]


def test_the_bags_after_an_entry_are_those_that_reading_all_would_find(numbered):
    with reading(numbered) as connection:
        entries = connection.execute(select(pack.c.id, pack.c.entry_id)).all()
        for entry in range(max(row.entry_id for row in entries) + 2):
            found = select(pack.c.id).where(rows_after(connection, entry)).order_by(pack.c.id)
            expected = [row.id for row in entries if row.entry_id > entry]
            assert connection.execute(found).scalars().all() == expected


def test_bags_taken_off_the_front_leave_the_others_found(numbered, tmp_path):
    home = tmp_path / "home"
    shutil.copytree(numbered, home)
    with closing(sqlite3.connect(home / "station.sqlite", isolation_level=None)) as connection:
        connection.execute("DELETE FROM pack WHERE id < 5 OR id = 8")
    with reading(home) as connection:
        entries = connection.execute(select(pack.c.id, pack.c.entry_id)).all()
        for entry in range(max(row.entry_id for row in entries) + 2):
            found = select(pack.c.id).where(rows_after(connection, entry)).order_by(pack.c.id)
            expected = [row.id for row in entries if row.entry_id > entry]
            assert connection.execute(found).scalars().all() == expected


@pytest.mark.parametrize(("first", "last"), [(1, 3), (3, 900), (1, 9 * LONGEST_OF_SIX)])
def test_a_range_is_found_by_the_index_of_serials_whatever_bags_there_are(numbered, first, last):
    with reading(numbered) as connection:
        epoch = connection.execute(select(identity.c.epoch)).scalar_one()
        bags = rows_between(connection, epoch, first, last)
        for statement in (
            select(pack.c.id).where(bags),
            update(pack).where(and_(bags, pack.c.quality == "held")).values(quality="good"),
        ):
            plan = _plan(connection, statement)
            assert "SCAN" not in plan, plan
            assert "sqlite_autoindex_pack_1 (serial" in plan, plan


def test_bags_after_an_entry_are_found_by_their_row(numbered):
    with reading(numbered) as connection:
        plan = _plan(connection, select(pack.c.serial).where(rows_after(connection, 12)))
        assert plan.startswith("SEARCH pack USING INTEGER PRIMARY KEY (rowid>"), plan


class Timed:
    """Bags by time alone, in tables of their own; the clock steps back now and then."""

    def __init__(self, bags, steps, seed=1):
        self.random, self.now = random.Random(seed), datetime(2026, 3, 4, 7, tzinfo=UTC)
        self.engine, self.asked, self.times = scratch_engine(), 0, {}
        stepped = set(self.random.sample(range(5, bags - 5), steps))
        rows, facts = [], []
        for row in range(1, bags + 1):
            self.now += timedelta(seconds=self.random.uniform(1, 9) - self.random.choice((0, 1.9)))
            if row in stepped:
                self.now -= timedelta(seconds=self.random.choice((3, 400, 90_000)))
                found = row + self.random.randrange(4)  # found a few bags later
                facts.append((found * 10 + 1, self.random.choice(("stepped", NEWEST))))
            self.times[row] = self.now
            rows.append((row, row * 10, f"A1-00-{row:06d}", utc_text(self.now)))
        with self.engine.connect() as connection, connection.begin():
            metadata.create_all(connection)
            driver = connection.connection.driver_connection
            driver.executemany(ADD_BAG, rows)
            driver.executemany(ADD_STEP, facts)

    def found(self, after, until):
        """Rows between two moments, and how many questions it took to name them."""
        with self.engine.connect() as connection, connection.begin():
            driver, asked = connection.connection.driver_connection, []
            driver.set_trace_callback(asked.append)
            judged = rows_judged(connection, after, until)
            driver.set_trace_callback(None)
            chosen = [select(pack.c.id).where(one).order_by(pack.c.id) for one in judged]
            plans = [_plan(connection, one) for one in chosen]
            rows = [row for one in chosen for row in connection.execute(one).scalars()]
            return rows, len(asked), plans

    def expected(self, after, until):
        return [row for row, at in self.times.items() if after < at <= until]


BY_ROW = "SEARCH pack USING INTEGER PRIMARY KEY (rowid>"
NEWEST = "before the newest entry"
ADD_BAG = (
    "INSERT INTO pack (id, epoch, number, serial, uid, entry_id, blend_id, gross_digits,"
    " gross_unit, gross_ug, tare_digits, tare_unit, tare_ug, net_digits, net_unit, net_ug, verdict,"
    " quality, rejected, reason, label, operator, judged_at, offset_minutes)"
    " SELECT ?1, 1, ?1, ?3, 'u', ?2, 1, '1', 'g', 1, '1', 'g', 1, '1', 'g', 1, 'in window', 'good',"
    " 0, '', 'none', 'p', ?4, 0"
)
ADD_STEP = (
    "INSERT INTO fact (uid, entry_id, kind, subject, result, run, who, at, offset_minutes)"
    " SELECT ?1, ?1, 'clock', 'clock', ?2, '', 'station', '', 0"
)


@pytest.mark.parametrize(("steps", "seed"), [(0, 1), (1, 2), (7, 3), (25, 4)])
def test_the_bags_between_two_moments_are_those_that_reading_all_would_find(steps, seed):
    """Whatever the clock did: what it was found to have done is in the record."""
    timed = Timed(2000, steps, seed)
    every = [*timed.times.values()]
    begin, end = min(every), max(every)
    for _ in range(40):
        after = timed.random.choice(every) - timedelta(seconds=timed.random.choice((0, 0.5, 40)))
        until = after + timedelta(seconds=timed.random.choice((0, 1, 300, 9000)))
        found, _, plans = timed.found(after, until)
        assert found == timed.expected(after, until)
        assert all(one.startswith(BY_ROW) for one in plans), plans
    for after, until in ((begin - timedelta(days=9), begin), (end, end), (end, begin)):
        assert timed.found(after, until)[0] == timed.expected(after, until)
    assert timed.found(begin - timedelta(days=1), end)[0] == list(timed.times)
    timed.engine.dispose()


def test_bags_between_two_moments_are_found_by_halving():
    asked = []
    for bags in (1000, 100_000):
        timed = Timed(bags, 0)
        middle = timed.times[bags // 2]
        found, questions, plans = timed.found(middle, middle + timedelta(minutes=2))
        assert 10 < len(found) < 60
        assert plans[0].startswith(BY_ROW), plans
        asked.append(questions)
        timed.engine.dispose()
    assert asked[1] <= asked[0] + 2 * 8, asked  # each halving twice: 100 times as many are 7 more


def test_a_hold_beyond_the_bags_there_are_holds_those_there_are(world):
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 5)
        held = hold_lot_fact("h1", "LF-101", "grower called", ((str(store.epoch), 4, 90),))
        store.record((held,), world.clock.now(), "q.fen")
        with reading(world.home) as connection:
            quality = select(pack.c.quality).order_by(pack.c.id)
            found = [str(one) for one in connection.execute(quality).scalars()]
    assert found == ["good", "good", "reject", "held", "held"]


def _plan(connection, statement):
    bare = statement.compile(dialect=sqlite.dialect(), compile_kwargs={"literal_binds": True})
    steps = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {bare}").all()
    return "; ".join(step[3] for step in steps)
