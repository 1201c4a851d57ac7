"""Merkle roots of blocks: kept as entries are written, and the same however they came about."""

import hashlib
import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.merkle import Tree, leaf_hash, root
from station.store.engine import database, reading, scratch_engine
from station.store.migrate import upgrade
from station.store.rebuild import rebuild
from station.store.schema import metadata
from station.store.tables import FILLING
from station.store.tree import BLOCK, LEVEL, EpochTree, blocks_told, keep_block
from station.store.verify import verify

SAVED = Path(__file__).parents[2] / "data" / "records" / "shape-0002.sqlite"

BLENDS = "SELECT first_bag, last_bag, kept_ug, aside_ug FROM blend ORDER BY id"


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
    leaves = [leaf_hash(entry) for entry in hashes]
    assert [(number, kept) for _, number, kept in blocks(long.database)] == [
        (0, root(leaves[:BLOCK])),
        (1, root(leaves[BLOCK : 2 * BLOCK])),
        (LEVEL, root(leaves[: 2 * BLOCK])),
    ]


@pytest.fixture
def blocks_alone():
    """An empty table of roots, and what counts the rows read from it."""
    engine, asked = scratch_engine(), []
    with engine.connect() as connection:
        metadata.create_all(connection)
        driver = connection.connection.driver_connection
        driver.set_trace_callback(lambda text: asked.append(text) if "root" in text else None)
        yield connection, asked
        driver.set_trace_callback(None)
    engine.dispose()


def test_a_root_reads_a_row_for_each_set_bit_however_long_the_journal(blocks_alone):
    """Against the growing tree of RFC 9162, which keeps a hash for each set bit too."""
    connection, asked = blocks_alone
    grown, tree = Tree(), EpochTree(connection, 7, 1)
    read = {}
    for number in range(400):
        made = hashlib.sha256(str(number).encode()).digest()
        keep_block(connection, 7, number, made)
        grown.append(made)
        asked.clear()
        assert tree.root(BLOCK * (number + 1)) == grown.root()
        read[number + 1] = sum(one.startswith("SELECT root") for one in asked)
    assert read[4] == read[256] == 1  # 1024 entries and 65 536
    assert all(rows == count.bit_count() for count, rows in read.items())
    assert max(read.values()) == 8


@pytest.mark.parametrize("size", [3, BLOCK, BLOCK + 1, 2 * BLOCK, 2 * BLOCK + 7])
def test_entries_that_are_given_stand_in_for_those_that_lie_there(long, size):
    """Against the root over all hashes in memory (RFC 9162 section 2.1.1)."""
    hashes = [entry for (entry,) in ask(long.database, "SELECT hash FROM journal ORDER BY id")]
    ((epoch,),) = ask(long.database, "SELECT epoch FROM identity")
    with reading(long.home) as connection:
        tree = EpochTree(connection, epoch, 1)
        for given in ((), (1,), (size,), (1, size), range(1, size + 1)):
            own = {number: hashes[number - 1] for number in given}
            assert tree.root_with(size, own) == root(map(leaf_hash, hashes[:size]))
            if own:
                own[max(own)] = bytes(32)
                assert tree.root_with(size, own) != root(map(leaf_hash, hashes[:size]))


def test_without_the_roots_of_subtrees_those_of_blocks_give_the_same(blocks_alone):
    connection, _ = blocks_alone
    for number in range(11):
        keep_block(connection, 7, number, bytes([number]) * 32)
    whole = [EpochTree(connection, 7, 1).root(BLOCK * count) for count in range(1, 12)]
    connection.exec_driver_sql("DELETE FROM tree_block WHERE number >= ?", (LEVEL,))
    assert [EpochTree(connection, 7, 1).root(BLOCK * count) for count in range(1, 12)] == whole


def test_blocks_are_told_in_numbers_of_blocks():
    assert [blocks_told(n) for n in (0, 6, LEVEL + 1, 3 * LEVEL)] == ["0", "6", "2 to 3", "0 to 7"]


def test_a_home_made_before_it_kept_all_of_this_is_brought_up(long):
    """As homes are that this shape opened before: after a start the same as after a rebuild."""
    details = {"what": "product", "version": 1, "digest": "d1", "effective": None}
    with long.open() as store:
        runs = [long.start(store, number) for number in (1, 2)]
        for run in (runs[0], runs[1], runs[0]):
            store.add_pack(long.draft(run))
        for uid in ("a1", "a2"):
            fact = Fact(EntryKind.SETTING, uid, "HA-250", "approved", "", details)
            store.record([fact], long.clock.now(), "M01")
    spans = ask(long.database, BLENDS)
    net = ask(long.database, "SELECT net_ug FROM pack WHERE id = 2")[0][0]
    assert spans == [(1, FILLING, None, None), (2, 2, net, 0)]
    now = blocks(long.database), ask(long.database, "SELECT * FROM standing WHERE kind = 'setting'")
    assert len(now[0]) == 3
    assert len(now[1]) == 1
    long.tamper(
        f"DELETE FROM tree_block WHERE number >= {LEVEL}",
        "DELETE FROM standing WHERE kind = 'setting'",
        "DROP INDEX ix_journal_purge",
        "ALTER TABLE blend DROP COLUMN first_bag",
        "ALTER TABLE blend DROP COLUMN last_bag",
        "ALTER TABLE blend DROP COLUMN kept_ug",
        "ALTER TABLE blend DROP COLUMN aside_ug",
        "CREATE INDEX ix_pack_blend_id ON pack (blend_id)",
        "PRAGMA user_version = 0",
    )
    assert upgrade(long.database) is None  # the shape is the same, so nothing is backed up
    assert blocks(long.database) == now[0]
    assert ask(long.database, "SELECT * FROM standing WHERE kind = 'setting'") == now[1]
    assert ask(long.database, BLENDS) == spans
    assert verify(long.home).whole


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
