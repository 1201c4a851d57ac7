"""Bags by number and by entry: the same bags as by reading all of them, and never by doing so."""

import shutil
import sqlite3
from contextlib import closing

import pytest
from sqlalchemy import and_, select, update
from sqlalchemy.dialects import sqlite

from station.core.pack import PackId
from station.core.receiving import hold_lot_fact
from station.store.engine import reading
from station.store.number_range import rows_after, rows_between
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
