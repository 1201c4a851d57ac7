import json
import shutil
import sqlite3
import subprocess
import sys
import time
from contextlib import closing
from pathlib import Path

import pytest

from station.line.ports import StoreFault
from station.store import engine, queries
from station.store.faults import explain
from station.store.prepared import driver_of
from station.store.verify import verify
from tests.campaigns.chain.mounts import own_mounts

CHILD = Path(__file__).with_name("packing_child.py")


def in_child(*command):
    done = subprocess.run(command, capture_output=True, text=True, check=False, timeout=120)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


def own_shell():
    """The command that runs a shell with mounts of its own, or a skip where none is allowed."""
    return own_mounts() or pytest.skip("needs unshare and the right to mount a file system")


# --- the table of words -------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("name", "words", "final"),
    [
        ("SQLITE_FULL", "free some space", False),
        ("SQLITE_READONLY_DBMOVED", "make it writable", False),
        ("SQLITE_BUSY", "close it", False),
        ("SQLITE_IOERR_FSYNC", "not known", True),
        ("SQLITE_CORRUPT_INDEX", "restore the last backup", True),
        ("SQLITE_CONSTRAINT_TRIGGER", "does not agree with itself", True),
        ("SQLITE_SOMETHING_NEW", "start the station again", True),
    ],
)
def test_every_error_says_what_to_do_and_an_unknown_one_is_final(name, words, final):
    fault = sqlite3.OperationalError("as SQLite words it")
    fault.sqlite_errorname = name
    found = explain(fault)
    assert words in found.words
    assert name in found.words
    assert found.final is final


# --- full, read-only, locked: go on without a restart -------------------------------------------


def test_full_then_room_again(store, world):
    run = world.start(store)
    driver = driver_of(store._connection)
    store.add_pack(world.draft(run))
    (pages,) = driver.execute("PRAGMA page_count").fetchone()
    driver.execute(f"PRAGMA max_page_count={pages}")
    acknowledged, words = 1, ""
    while not words:
        try:
            store.add_pack(world.draft(run))
            acknowledged += 1
        except StoreFault as fault:
            words = str(fault)
    assert "disk is full, nothing was recorded: free some space" in words
    before = store.head()
    with pytest.raises(StoreFault, match="disk is full"):
        store.note("x" * 5000, world.clock.now(), "station")
    assert store.head() == before
    assert queries.summary(world.home).packs == acknowledged
    driver.execute("PRAGMA max_page_count=1000000")
    assert store.add_pack(world.draft(run)).id.number == acknowledged + 1
    assert verify(world.home).whole


def test_a_real_full_disk_then_room_again(tmp_path):
    mount = f"mount -t tmpfs -o size=1200k none '{tmp_path}' && exec '{sys.executable}' "
    found = in_child(*own_shell(), mount + f"'{CHILD}' fill-disk '{tmp_path}/home'")
    assert len(found["packed"]) > 10
    assert "disk is full, nothing was recorded: free some space" in found["words"]
    assert "disk is full" in found["again"]
    last = found["packed"][-1]
    assert found["after"] == [last + 1, last + 2, last + 3]
    assert (found["whole"], found["why"], found["bags"]) == (True, "", last + 3)


def test_read_only_then_writable_again(store, world):
    run = world.start(store)
    driver = driver_of(store._connection)
    driver.execute("PRAGMA query_only=ON")
    before = store.head()
    with pytest.raises(StoreFault, match="read-only, nothing was recorded: make it writable"):
        store.add_pack(world.draft(run))
    assert store.head() == before
    driver.execute("PRAGMA query_only=OFF")
    assert store.add_pack(world.draft(run)).id.number == 1


def test_a_read_only_folder_is_refused_in_words_and_can_still_be_asked(world):
    with world.stocked() as store:
        world.fill(store, world.start(store), 4)
    home = shutil.move(world.home, world.home.with_name("plain"))
    mount = f"mount --bind '{home}' '{home}' && mount -o remount,ro,bind '{home}' && "
    found = in_child(*own_shell(), mount + f"exec '{sys.executable}' '{CHILD}' read-only '{home}'")
    assert "check the folder and its rights" in found["words"]
    assert found["bags"] == 4


def test_a_record_locked_by_another_process_is_a_fault_in_time(world, monkeypatch):
    monkeypatch.setattr(engine, "BUSY_MS", 300)
    hold = (
        "import sqlite3, sys; c = sqlite3.connect(sys.argv[1], isolation_level=None);"
        "c.execute('BEGIN IMMEDIATE'); print('held', flush=True); sys.stdin.read()"
    )
    with world.stocked() as store:
        run = world.start(store)
        with subprocess.Popen(
            [sys.executable, "-c", hold, str(world.database)],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
        ) as other:
            assert other.stdout.readline() == b"held\n"
            began = time.monotonic()
            with pytest.raises(StoreFault, match="another program holds the record locked"):
                store.add_pack(world.draft(run))
            assert 0.25 < time.monotonic() - began < 30  # the other never lets go by itself
            other.stdin.close()
        assert store.add_pack(world.draft(run)).id.number == 1
    assert verify(world.home).whole


def test_a_long_reader_does_not_stop_the_writer(store, world):
    run = world.start(store)
    with closing(sqlite3.connect(world.database, isolation_level=None)) as reader:
        reader.execute("BEGIN")
        reader.execute("SELECT * FROM pack").fetchall()
        for _ in range(600):  # over two checkpoints
            store.add_pack(world.draft(run))
    assert verify(world.home).whole


# --- final faults: nothing more until the store is opened again ---------------------------------


def test_after_a_failed_write_everything_is_refused_until_reopened(tmp_path):
    found = in_child(sys.executable, str(CHILD), "file-limit", str(tmp_path / "home"))
    assert len(found["packed"]) > 10
    assert "the disk failed" in found["words"]
    assert "SQLITE_IOERR_WRITE" in found["words"]
    assert found["again"] == found["words"]
    assert found["whole"], found["why"]
    # the bag of the failed call may be there or not; the acknowledged ones must be
    assert found["after"][0] in (len(found["packed"]) + 1, len(found["packed"]) + 2)
    assert found["bags"] == found["after"][0]


def test_a_foreign_entry_in_the_journal_stops_the_writer(store, world):
    run = world.start(store)
    seq = store.head()[0]
    with closing(sqlite3.connect(world.database)) as other:
        other.execute(
            "INSERT INTO journal SELECT id + 1, epoch, seq + 1, kind, hash, canonical"
            " FROM journal ORDER BY id DESC LIMIT 1"
        )
        other.commit()
    for _ in range(2):
        with pytest.raises(StoreFault, match=f"ends at entry {seq + 1} where entry {seq}"):
            store.add_pack(world.draft(run))


def test_interrupted_anywhere_a_bag_leaves_no_trace(world):
    """SQLite is stopped at its n-th step, n rising until the call gets through.

    The pattern of SQLite's own anomaly tests ("How SQLite Is Tested", section 3).
    """
    store = world.stocked()
    run = world.start(store)
    store.add_pack(world.draft(run))
    steps, failed = 1, 0
    while True:
        driver = driver_of(store._connection)
        before, bags = store.head(), queries.summary(world.home).packs
        driver.set_progress_handler(lambda: 1, steps)
        try:
            record = store.add_pack(world.draft(run))
            break
        except StoreFault:
            failed += 1
        driver.set_progress_handler(None, 0)
        assert not driver.in_transaction
        assert (store.head(), queries.summary(world.home).packs) == (before, bags)
        with pytest.raises(StoreFault, match="start the station again"):
            store.note("refused", world.clock.now(), "station")
        world.crash(store)
        store = world.open()
        steps += 9
    driver.set_progress_handler(None, 0)
    assert failed > 5
    assert record.id.number == 2
    store.close()
    assert verify(world.home).whole
