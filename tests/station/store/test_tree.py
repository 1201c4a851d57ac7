"""Merkle roots of blocks: kept as entries are written, and the same however they came about."""

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from station.core.merkle import leaf_hash, root
from station.store.engine import database
from station.store.migrate import upgrade
from station.store.rebuild import rebuild
from station.store.tree import BLOCK
from station.store.verify import verify

SAVED = Path(__file__).parents[2] / "data" / "records" / "shape-0002.sqlite"


def ask(path, statement):
    with closing(sqlite3.connect(path)) as connection:
        return connection.execute(statement).fetchall()


def blocks(path):
    return ask(path, "SELECT epoch, number, root FROM tree_block ORDER BY epoch, number")


@pytest.fixture
def long(world):
    """A record of two whole blocks and a bit."""
    with world.stocked() as store:
        for number in range(2 * BLOCK + 9):
            store.note(f"event {number}", world.clock.now(), "station")
    return world


def test_a_block_s_root_is_kept_with_the_entry_that_makes_it_whole(long):
    hashes = [entry for (entry,) in ask(long.database, "SELECT hash FROM journal ORDER BY id")]
    assert [(number, kept) for _, number, kept in blocks(long.database)] == [
        (number, root(map(leaf_hash, hashes[BLOCK * number : BLOCK * (number + 1)])))
        for number in (0, 1)
    ]


def test_blocks_are_rebuilt_the_same(long):
    before = blocks(long.database)
    rebuild(long.home)
    assert blocks(long.database) == before


def test_a_changed_root_of_a_block_is_named(long):
    long.tamper("UPDATE tree_block SET root = zeroblob(32) WHERE number = 1")
    report = verify(long.home)
    assert not report.whole
    assert "Merkle root of block 1 was changed" in report.why


def test_an_older_record_gets_the_roots_of_its_blocks(tmp_path):
    home = tmp_path / "home"
    home.mkdir()
    shutil.copy(SAVED, database(home))
    upgrade(database(home))
    made = blocks(database(home))
    assert [number for _, number, _ in made] == [0]
    rebuild(home)
    assert blocks(database(home)) == made


@pytest.mark.parametrize(
    ("table", "change", "named"),
    [
        ("fact", "UPDATE fact SET result = 'good' WHERE uid = 'h1'", "fact h1 was changed"),
        ("hold_range", "DELETE FROM hold_range WHERE hold = 'h2'", "range of hold h2 is missing"),
    ],
)
def test_a_changed_fact_or_range_is_named(tmp_path, table, change, named):
    home = tmp_path / "home"
    home.mkdir()
    shutil.copy(SAVED, database(home))
    upgrade(database(home))
    with closing(sqlite3.connect(database(home))) as connection:
        connection.execute(change)
        connection.commit()
    assert named in verify(home).why
