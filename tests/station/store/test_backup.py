"""Backups while the station packs, checked on their medium, and put back under a new epoch."""

import os
import shutil
import sqlite3
import threading
from contextlib import closing
from types import SimpleNamespace

import pytest

from station.core.journal import EntryKind
from station.core.pack import LabelState, epoch_mark
from station.errors import BadInput, EnvironmentFault
from station.store.backup import back_up, backups_in, check_file, drop_oldest
from station.store.facts import facts
from station.store.opening import new_epoch
from station.store.restore import restore
from station.store.verify import verify
from tests.station.store.signed_world import fill_two_days, key_of, opened

SUPPLIER = b'"supplier":"Ashbrook'
"""As it stands in an entry; the tables have it without the name."""


@pytest.fixture
def second(tmp_path):
    """The second medium."""
    folder = tmp_path / "second medium"
    folder.mkdir()
    return folder


def ask(path, statement):
    with closing(sqlite3.connect(path)) as connection:
        return connection.execute(statement).fetchall()


def serials(path):
    return [serial for (serial,) in ask(path, "SELECT serial FROM pack ORDER BY id")]


def put_back(world, backup, key=None):
    names = (world.site, world.station)
    return restore(backup, world.home, names, world.clock, "p.marsh", "disk failed", key)


def test_a_backup_is_whole_and_says_what_it_is(world, second):
    with world.stocked() as store:
        world.fill(store, world.start(store), 6)
        told = []
        done = back_up(world.home, second, world.clock.now(), lambda *one: told.append(one))
        assert (done.place.seq, done.place.hash.hex()) == store.head()
    assert [file.name for file in second.iterdir()] == [done.backup.path.name]
    assert done.entries == done.place.seq
    assert {what for what, *_ in told} >= {"copying"}
    assert ask(done.backup.path, "PRAGMA journal_mode") == [("delete",)]
    assert backups_in(second, world.site, world.station) == (done.backup,)
    assert done.same_disk


def test_backups_while_the_station_packs_are_each_one_moment_of_it(world, second):
    """Test 14 of the trust tests: whole, and as many entries as the head at that moment."""
    stop, heads = threading.Event(), {}

    def pack(store, run):
        while not stop.is_set():
            world.fill(store, run, 3)
            seq, digits = store.head()
            heads[seq] = digits

    with world.stocked() as store:
        packer = threading.Thread(target=pack, args=(store, world.start(store)))
        packer.start()
        done = [back_up(world.home, second, world.clock.now()) for _ in range(4)]
        stop.set()
        packer.join()
    assert len({one.place.seq for one in done}) > 1, "it packed meanwhile"
    for one in done:
        place, entries = check_file(one.backup.path)
        assert entries == place.seq == one.place.seq
        bags = len(serials(one.backup.path))
        kept = ask(one.backup.path, "SELECT count(*) FROM journal WHERE kind = 'pack'")
        assert [(bags,)] == kept
        if place.seq in heads:
            assert heads[place.seq] == place.hash.hex()


def test_a_medium_that_keeps_something_else_leaves_no_backup(world, second, monkeypatch):
    from station.store import backup as module

    with world.stocked() as store:
        world.fill(store, world.start(store), 6)
    brought = module._bring_to_medium

    def spoil(path):
        brought(path)
        content = bytearray(path.read_bytes())
        content[content.index(SUPPLIER) + 12] ^= 1
        path.write_bytes(content)

    monkeypatch.setattr(module, "_bring_to_medium", spoil)
    with pytest.raises(EnvironmentFault, match=r"is not whole at entry \d+: entry \d+ was changed"):
        back_up(world.home, second, world.clock.now())
    assert list(second.iterdir()) == []


def test_a_medium_that_is_not_connected_is_named(world, tmp_path):
    with world.stocked():
        pass
    with pytest.raises(EnvironmentFault, match="is not there: connect the disk"):
        back_up(world.home, tmp_path / "nowhere", world.clock.now())
    inside = world.home / "inside"
    inside.mkdir()
    with pytest.raises(BadInput, match="lies in the home"):
        back_up(world.home, inside, world.clock.now())
    with pytest.raises(BadInput, match="no station record"):
        back_up(inside, tmp_path, world.clock.now())


def test_a_full_medium_is_said_before_anything_is_copied(world, second, monkeypatch):
    with world.stocked():
        pass
    monkeypatch.setattr(shutil, "disk_usage", lambda _: SimpleNamespace(free=1 << 10))
    with pytest.raises(EnvironmentFault, match="is too full"):
        back_up(world.home, second, world.clock.now())
    assert list(second.iterdir()) == []


def test_the_newest_backups_stay(world, second):
    made = []
    for _ in range(4):
        with world.open():
            pass
        made.append(back_up(world.home, second, world.clock.now()).backup)
        world.clock.count += 10
    (second / "HA-L1A-notes.sqlite").write_text("not a backup")
    gone = drop_oldest(second, world.site, world.station, 2)
    assert gone == tuple(one.path for one in made[:2])
    assert backups_in(second, world.site, world.station) == tuple(made[2:])
    assert (second / "HA-L1A-notes.sqlite").exists()


def test_a_restored_record_goes_on_in_a_new_epoch_and_repeats_no_serial(world, second):
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 5)
        done = back_up(world.home, second, world.clock.now())
        lost = world.fill(store, run, 4)
        old_mark = epoch_mark(store.epoch)
    ended = verify(world.home).head_seq
    before = serials(world.database)
    answer = put_back(world, done.backup.path)
    assert (answer.last, answer.lost) == (done.place.seq, ended - done.place.seq)
    assert answer.mark != old_mark
    assert serials(answer.aside / "station.sqlite") == before
    with world.open() as store:
        new = world.start(store, 2)
        more = world.fill(store, new, 4)
    assert set(more).isdisjoint(before)
    assert set(lost).isdisjoint(serials(world.database))
    assert [serial.rsplit("-", 1)[1] for serial in more] == [f"{n:06d}" for n in range(1, 5)]
    (record,) = facts(world.home, (EntryKind.RESTORE,))
    assert (record.who, record.fact.details["why"]) == ("p.marsh", "disk failed")
    assert (record.fact.subject, record.fact.details["seq"]) == (
        done.backup.path.name,
        done.place.seq,
    )
    assert verify(world.home).whole
    again = put_back(world, back_up(world.home, second, world.clock.now()).backup.path)
    assert again.mark not in (answer.mark, old_mark)
    assert verify(world.home).whole


def test_a_label_on_its_way_in_the_backup_is_in_doubt_after_it(world, second):
    with world.stocked() as store:
        run = world.start(store)
        bag = store.add_pack(world.draft(run))
        store.mark_label(bag.serial, LabelState.SUBMITTED, world.clock.now(), "station", "")
        done = back_up(world.home, second, world.clock.now())
    put_back(world, done.backup.path)
    with world.open() as store:
        assert store.in_doubt() == (bag.serial,)


def test_a_signed_record_is_restored_and_signs_on(world, second):
    fill_two_days(world)
    done = back_up(world.home, second, world.clock.now())
    with opened(world, world.clock, key_of(world)) as store:
        store.note("after the backup", world.clock.now(), "station")
    put_back(world, done.backup.path, key_of(world))
    with opened(world, world.clock, key_of(world)) as store:
        assert store.day_heads.unsigned == ""
    report = verify(world.home)
    assert report.whole
    assert report.signed.head.epoch == report.epoch


def test_a_backup_replaces_a_damaged_record(world, second):
    with world.stocked() as store:
        world.fill(store, world.start(store), 6)
        done = back_up(world.home, second, world.clock.now())
    size = world.database.stat().st_size
    world.database.write_bytes(os.urandom(size))
    answer = put_back(world, done.backup.path)
    assert answer.lost is not None
    assert verify(world.home).whole
    assert (answer.aside / "station.sqlite").stat().st_size == size


def test_a_cut_end_of_the_epoch_before_a_restore_is_named(world, second):
    with world.stocked() as store:
        world.fill(store, world.start(store), 3)
        done = back_up(world.home, second, world.clock.now())
    put_back(world, done.backup.path)
    last = done.place.seq
    world.tamper(
        "DROP TRIGGER journal_no_update",
        "DROP TRIGGER journal_no_delete",
        "PRAGMA foreign_keys=OFF",
        f"DELETE FROM journal WHERE id = {last}",
    )
    report = verify(world.home)
    assert not report.whole
    assert "goes on from" in report.why


def test_what_must_not_be_restored_is_refused_and_the_home_stays(world, second, tmp_path):
    with world.stocked() as store:
        world.fill(store, world.start(store), 3)
        done = back_up(world.home, second, world.clock.now())
        with pytest.raises(EnvironmentFault, match="in use"):
            put_back(world, done.backup.path)
    before = world.database.read_bytes()
    with pytest.raises(BadInput, match="is no file"):
        put_back(world, second / "none.sqlite")
    with pytest.raises(BadInput, match="the settings say station L9"):
        restore(done.backup.path, world.home, ("HA", "L9"), world.clock, "p.marsh", "x")
    spoilt = tmp_path / "spoilt.sqlite"
    content = bytearray(done.backup.path.read_bytes())
    content[content.index(SUPPLIER) + 12] ^= 1
    spoilt.write_bytes(content)
    with pytest.raises(EnvironmentFault, match="is not whole"):
        put_back(world, spoilt)
    assert world.database.read_bytes() == before


def test_tables_of_a_backup_that_do_not_follow_from_its_journal_are_built_again(world, second):
    with world.stocked() as store:
        world.fill(store, world.start(store), 3)
        done = back_up(world.home, second, world.clock.now())
    with closing(sqlite3.connect(done.backup.path)) as connection:
        connection.execute("UPDATE pack SET net_ug = 1 WHERE number = 2")
        connection.commit()
    put_back(world, done.backup.path)
    assert verify(world.home).whole


def test_a_backup_of_an_older_shape_is_restored(world, second, tmp_path):
    from tests.station.store.test_migrate import RECORDS

    saved = tmp_path / "old.sqlite"
    shutil.copy(RECORDS / "shape-0001.sqlite", saved)
    answer = put_back(world, saved)
    assert (answer.aside, answer.lost) == (None, None)
    assert verify(world.home).whole


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ("UPDATE alembic_version SET version_num = '0004'", "newer shape 0004"),
        ("DROP TABLE standing", "without table standing"),
        (None, "is empty"),
    ],
)
def test_what_cannot_be_brought_up_to_date_is_not_restored(world, second, tmp_path, change, words):
    with world.stocked():
        pass
    done = back_up(world.home, second, world.clock.now())
    if change is None:
        done.backup.path.write_bytes(b"")
    else:
        with closing(sqlite3.connect(done.backup.path)) as connection:
            connection.execute(change)
            connection.commit()
    before = world.database.read_bytes()
    with pytest.raises(BadInput, match=words):
        put_back(world, done.backup.path)
    assert world.database.read_bytes() == before
    assert not world.home.with_name(f"{world.home.name}.restoring").exists()


def test_no_mark_comes_twice():
    # 1024 marks; epochs whose first ten bits are all but one of them leave that one
    used = [top << 53 | 1 for top in range(1024) if top != 77]
    assert new_epoch(used) >> 53 == 77
