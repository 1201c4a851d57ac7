"""Reading the journal in bounded pieces, across epochs."""

import shutil
import sqlite3
from contextlib import closing

import pytest

from station.core.journal import GENESIS, Stored, first_break
from station.errors import BadInput, EnvironmentFault
from station.store.outlet import JournalOutlet, Owner


def test_gives_every_entry_in_order_piece_by_piece(packed_once):
    with JournalOutlet(packed_once.home) as outlet:
        (span,) = outlet.epochs()
        assert outlet.owner() == Owner("HA", "L1A", span.epoch)
        found = []
        while found == [] or found[-1].seq < span.last:
            after = found[-1].seq if found else 0
            piece = outlet.after(span, after, 7, 1 << 20)
            assert 1 <= len(piece) <= 7
            found += piece
        assert outlet.after(span, span.last, 7, 1 << 20) == ()
        assert found[-1].hash == span.hash == outlet.hash_at(span, span.last)
        assert outlet.hash_at(span, 0) == GENESIS
    assert first_break(Stored(one.seq, one.canonical, one.hash) for one in found) is None


def test_a_piece_has_an_entry_however_long_it_is(packed_once):
    with JournalOutlet(packed_once.home) as outlet:
        (span,) = outlet.epochs()
        assert [one.seq for one in outlet.after(span, 3, 100, 1)] == [4]
        small = outlet.after(span, 3, 100, 2000)
        assert 1 <= len(small) < 10
        assert sum(len(one.canonical) for one in small) <= 2000


def test_sees_what_is_written_while_it_is_open(store, world):
    with JournalOutlet(world.home) as outlet:
        before = outlet.epochs()[-1].last
        store.note("a word", world.clock.now(), "i.sedge")
        assert outlet.epochs()[-1].last == before + 1


def test_epochs_stand_behind_each_other(packed_once, tmp_path):
    """A record put back from a copy goes on in a new epoch, in the same file."""
    home = tmp_path / "home"
    shutil.copytree(packed_once.home, home)
    with closing(sqlite3.connect(home / "station.sqlite", isolation_level=None)) as file:
        last = file.execute("SELECT max(id) FROM journal").fetchone()[0]
        for seq in (1, 2, 3):
            file.execute(
                "INSERT INTO journal VALUES (?, 7, ?, 'event', ?, x'00')",
                (last + seq, seq, bytes([seq]) * 32),
            )
    with JournalOutlet(home) as outlet:
        old, new = outlet.epochs()
        assert (new.epoch, new.last, new.hash) == (7, 3, bytes([3]) * 32)
        assert new.before == old.last
        assert [one.seq for one in outlet.after(new, 1, 10, 1 << 20)] == [2, 3]
        assert outlet.after(old, old.last, 10, 1 << 20) == ()
        with pytest.raises(EnvironmentFault, match="entry 9 of epoch 7 is not"):
            outlet.hash_at(new, 9)


def test_says_when_there_is_no_record(tmp_path):
    with pytest.raises(BadInput, match="no station record"):
        JournalOutlet(tmp_path)
