import random
import shutil
import sqlite3
from contextlib import closing
from dataclasses import replace

import pytest

from station.errors import BadInput, EnvironmentFault
from station.store.heads import read_head, write_head
from station.store.rebuild import rebuild
from station.store.verify import verify

UNGUARDED = ("DROP TRIGGER journal_no_update", "DROP TRIGGER journal_no_delete")


@pytest.fixture
def packed(world, packed_once):
    """A copy of the packed record, to be spoilt."""
    shutil.copytree(packed_once.home, world.home)
    return world


HEADS = ("station.head", "station.last")


def forget_heads(world):
    """Take away what is written down beside the file."""
    for name in HEADS:
        (world.home / name).unlink()


def tables(world):
    names = ("lot", "lot_set", "lot_use", "run", "blend", "pack")
    with closing(sqlite3.connect(world.database)) as connection:
        return {name: connection.execute(f"SELECT * FROM {name}").fetchall() for name in names}


def is_sound(path):
    with closing(sqlite3.connect(path)) as connection:
        return connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]


def test_a_sound_record_is_whole(packed):
    report = verify(packed.home)
    seen = read_head(packed.home)
    assert (report.whole, report.first_break, report.why) == (True, None, "")
    assert (report.epoch, report.head_seq, report.head) == (seen.epoch, seen.seq, seen.hash)
    assert report.entries == report.head_seq


def test_verifying_changes_no_byte(packed):
    before = packed.database.read_bytes()
    verify(packed.home)
    assert packed.database.read_bytes() == before


def test_an_open_record_can_be_verified_while_it_packs(world):
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 3)
        report = verify(world.home)
        assert report.whole
        assert (report.head_seq, report.head) == store.head()


def test_one_changed_byte_names_exactly_its_entry(packed):
    whole = packed.database.read_bytes()
    last = verify(packed.home).head_seq
    chance = random.Random(20260304)
    for _ in range(40):
        seq, byte, bit = chance.randint(1, last), chance.random(), 1 << chance.randint(0, 7)
        packed.tamper(UNGUARDED[0])
        with closing(sqlite3.connect(packed.database)) as connection:
            (kept,) = connection.execute(
                "SELECT canonical FROM journal WHERE seq = ?", (seq,)
            ).fetchone()
            changed = bytearray(kept)
            changed[int(byte * len(kept))] ^= bit
            connection.execute(
                "UPDATE journal SET canonical = ? WHERE seq = ?", (bytes(changed), seq)
            )
            connection.commit()
        report = verify(packed.home)
        assert (report.whole, report.first_break) == (False, seq)
        assert f"entry {seq} was changed" in report.why
        assert report.entries == seq - 1
        packed.database.write_bytes(whole)


def test_a_changed_hash_names_its_entry(packed):
    packed.tamper(UNGUARDED[0], "UPDATE journal SET hash = zeroblob(32) WHERE seq = 7")
    assert verify(packed.home).first_break == 7


def test_an_entry_taken_out_is_named(packed):
    packed.tamper(UNGUARDED[1], "DELETE FROM journal WHERE seq = 9")
    report = verify(packed.home)
    assert (report.first_break, report.whole) == (9, False)
    assert "entry 9 is missing" in report.why


def test_two_entries_swapped_are_named(packed):
    packed.tamper(
        UNGUARDED[0],
        "UPDATE journal SET id = -5 WHERE seq = 5",
        "UPDATE journal SET id = 5, seq = 5 WHERE seq = 6",
        "UPDATE journal SET id = 6, seq = 6 WHERE id = -5",
    )
    assert verify(packed.home).first_break == 5


def test_a_kind_changed_beside_the_hashed_bytes_is_named(packed):
    packed.tamper(UNGUARDED[0], "UPDATE journal SET kind = 'event' WHERE seq = 2")
    report = verify(packed.home)
    assert report.first_break == 2
    assert "than its own" in report.why


def test_a_cut_tail_is_found_by_the_head_beside_the_file(packed):
    last = verify(packed.home).head_seq
    packed.tamper(UNGUARDED[1], f"DELETE FROM journal WHERE seq = {last}")
    report = verify(packed.home)
    assert (report.whole, report.first_break) == (False, last)
    assert f"entry {last} was written" in report.why


def test_a_cut_tail_is_found_by_the_tables_even_without_that_head(packed):
    forget_heads(packed)
    last = verify(packed.home).head_seq
    # the stop and the last steps of the last bag's label
    packed.tamper(UNGUARDED[1], f"DELETE FROM journal WHERE seq >= {last - 2}")
    report = verify(packed.home)
    assert not report.whole
    assert "bag " in report.why


def test_a_cut_tail_without_traces_elsewhere_needs_the_head(packed):
    """What a chain cannot show: the last entry of all gone, and the head file with it."""
    last = verify(packed.home).head_seq
    packed.tamper(UNGUARDED[1], f"DELETE FROM journal WHERE seq = {last}")
    forget_heads(packed)
    assert verify(packed.home).whole


def test_a_log_taken_away_is_found_by_what_was_noted_with_each_commit(world, tmp_path):
    """The file alone, as a careless copy has it: what the log held is missing."""
    left = world.home.with_name("left")
    left.mkdir()
    with world.stocked() as store:
        world.fill(store, world.start(store), 3)
        store._checkpoint("PASSIVE")  # the file is whole up to here, and its head written
        world.fill(store, world.run(), 1)
        seq, _ = store.head()
        for name in ("station.sqlite", *HEADS):
            shutil.copy(world.home / name, left / name)
    report = verify(left)
    assert not report.whole
    assert f"the end is missing: entry {seq} was written" in report.why
    with pytest.raises(EnvironmentFault, match=r"with its -wal file\) back"):
        replace(world, home=left).open()


def test_a_torn_note_counts_as_none(packed):
    note = packed.home / "station.last"
    whole = note.read_bytes()
    for torn in (b"", whole[:40], whole.replace(b" 0", b" 9", 1), b"\xff" * 80):
        note.write_bytes(torn)
        assert read_head(packed.home) is not None
        assert verify(packed.home).whole


def test_an_older_copy_of_the_file_is_found(packed):
    older = packed.database.read_bytes()
    last = verify(packed.home).head_seq
    packed.open().close()
    packed.database.write_bytes(older)
    report = verify(packed.home)
    assert (report.whole, report.first_break) == (False, last + 1)


def test_another_station_s_file_is_found(packed, tmp_path):
    other = replace(packed, home=tmp_path / "other")
    other.open().close()
    packed.database.write_bytes(other.database.read_bytes())
    report = verify(packed.home)
    assert not report.whole
    assert "head written beside the file is of epoch" in report.why


def test_a_changed_epoch_is_found(packed):
    packed.tamper("UPDATE identity SET epoch = 5")
    report = verify(packed.home)
    assert not report.whole
    assert "epoch is 5" in report.why


def test_a_chain_made_anew_by_another_station_s_hand_is_found(packed):
    packed.tamper("UPDATE identity SET station = 'L9'")
    report = verify(packed.home)
    assert (report.first_break, report.whole) == (1, False)


@pytest.mark.parametrize(
    ("statement", "words"),
    [
        ("UPDATE pack SET net_ug = 1 WHERE number = 4", "net_ug is 1, the journal says 252500000"),
        ("UPDATE pack SET quality = 'good' WHERE number = 3", "quality is 'good'"),
        ("UPDATE pack SET label = 'applied' WHERE number = 1", "label is 'applied'"),
        ("UPDATE pack SET blend_id = 1 WHERE number = 8", "blend_id is 1, the journal says 2"),
        ("DELETE FROM pack WHERE number = 6", "is missing from its table"),
        (
            "INSERT INTO pack SELECT 99, epoch, 99, 'L1A-ZZ-000099', uid, entry_id, blend_id,"
            " gross_digits, gross_unit, gross_ug, tare_digits, tare_unit, tare_ug, net_digits,"
            " net_unit, net_ug, verdict, quality, rejected, reason, label, operator, judged_at,"
            " offset_minutes, residue_digits, residue_at, copies FROM pack WHERE id = 2",
            "bag L1A-ZZ-000099 stands in a table, but no journal entry made it",
        ),
        ("UPDATE lot SET supplier = 'Quarry Farm' WHERE code = 'LF-101'", "lot LF-101 was changed"),
        ("DELETE FROM lot_use WHERE lot = 'LF-102'", "use of lot LF-102 is missing"),
        ("UPDATE run SET rule_set = 'none' WHERE id = 2", "rule_set is 'none'"),
        ("UPDATE blend SET use_by = '2026-03-30' WHERE id = 2", "blend lot L12606302 was changed"),
    ],
)
def test_a_changed_table_is_named_and_rebuilt(packed, statement, words):
    sound = tables(packed)
    packed.tamper(statement)
    report = verify(packed.home)
    assert (report.whole, report.first_break) == (False, None)
    assert words in report.why
    assert rebuild(packed.home) == report.entries
    assert tables(packed) == sound
    assert verify(packed.home).whole


def test_a_changed_bag_is_named_by_its_serial(packed):
    packed.tamper("UPDATE pack SET net_digits = '0.2499' WHERE number = 4")
    why = verify(packed.home).why
    with closing(sqlite3.connect(packed.database)) as connection:
        (serial,) = connection.execute("SELECT serial FROM pack WHERE number = 4").fetchone()
    assert f"bag {serial} was changed" in why
    assert "net_digits is '0.2499', the journal says '0.2525'" in why


def test_rebuilding_changes_no_table_of_a_sound_record(packed):
    sound = tables(packed)
    rebuild(packed.home)
    assert tables(packed) == sound


def test_rebuilding_from_a_broken_journal_is_refused_and_changes_nothing(packed):
    packed.tamper(UNGUARDED[0], "UPDATE journal SET canonical = x'7b7d' WHERE seq = 12")
    before = tables(packed)
    with pytest.raises(EnvironmentFault, match="entry 12 was changed"):
        rebuild(packed.home)
    assert tables(packed) == before


def test_rebuilding_under_a_running_station_is_refused(world):
    with world.open(), pytest.raises(EnvironmentFault, match="in use"):
        rebuild(world.home)


def test_where_nothing_is_the_folder_is_named(tmp_path):
    for ask in (verify, rebuild):
        with pytest.raises(BadInput, match="no station record in"):
            ask(tmp_path)


def test_damaged_pages_never_pass_as_whole(packed):
    """Every page in turn is overwritten; what is damaged must be said or not matter at all."""
    whole = packed.database.read_bytes()
    sound = tables(packed)
    size = int.from_bytes(whole[16:18], "big")  # page size: SQLite file format, section 1.3
    chance = random.Random(7)
    named = 0
    for page in range(len(whole) // size):
        damaged = bytearray(whole)
        damaged[page * size : (page + 1) * size] = chance.randbytes(size)
        packed.database.write_bytes(damaged)
        try:
            report = verify(packed.home)
        except EnvironmentFault:
            named += 1
            continue
        if report.whole:  # a page that is not in use
            assert tables(packed) == sound
            assert is_sound(packed.database)
        else:
            assert report.why
            named += 1
    assert named >= 10
    packed.database.write_bytes(whole)
    assert verify(packed.home).whole


def test_an_empty_head_file_counts_as_none(packed):
    for name in HEADS:
        (packed.home / name).write_text("")
    assert verify(packed.home).whole
    assert read_head(packed.home) is None


def test_a_head_that_cannot_be_written_stops_nothing(packed, tmp_path):
    write_head(tmp_path / "nowhere", read_head(packed.home))
