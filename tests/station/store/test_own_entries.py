"""The entries of a run are proved without the rest; whatever was done to one of them is named."""

import sqlite3
from contextlib import closing
from shutil import copytree
from types import SimpleNamespace

import pytest

from station.core.journal import entry_hash
from station.store import own_entries as asked
from station.store import tree
from station.store.head_now import head_now
from station.store.own_entries import own_entries
from tests.station.store.conftest import World
from tests.station.store.signed_world import key_of, opened

NOTES = 600
BAGS = 6


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    """Three runs with notes between; a signed head after the second day, none over the last run."""
    world = World(tmp_path_factory.mktemp("own") / "home")
    clock, runs = world.clock, []
    with opened(world, clock, key_of(world)) as store:
        store.add_lots(world.lots, clock.now(), "p.marsh")
        for number in (1, 2, 3):
            if number == 3:
                world.clock.count += 2 * 86_400  # 700 ms each: a day and more
            run = world.start(store, number)
            world.fill(store, run, BAGS)
            runs.append(run.id)
            store.end_run(run.id, clock.now(), "p.marsh")
            for note in range(NOTES):
                store.note(f"event {note}", clock.now(), "station")
        world.crash(store)
    return SimpleNamespace(world=world, home=world.home, key=key_of(world), runs=runs)


@pytest.fixture
def copy(made, tmp_path):
    """A copy to be damaged, without the guards against a slip."""
    home = copytree(made.home, tmp_path / "home")
    world = World(home)
    world.tamper("DROP TRIGGER journal_no_update", "DROP TRIGGER journal_no_delete")
    return SimpleNamespace(world=world, home=home, runs=made.runs, key=made.key)


def ask(home, statement, *values):
    with closing(sqlite3.connect(home / "station.sqlite")) as connection:
        return connection.execute(statement, values).fetchall()


def proved(record, number, key=None, about=()):
    now = head_now(record.home, key)
    return own_entries(record.home, record.runs[number - 1], about, now)


def entry_of_bag(home, number):
    ((seq,),) = ask(
        home,
        "SELECT seq FROM journal JOIN pack ON pack.entry_id = journal.id WHERE pack.number = ?",
        number,
    )
    return seq


def test_all_entries_of_a_run_lie_under_the_signed_head(made):
    found = proved(made, 2)
    rows = ask(made.home, "SELECT seq, kind FROM journal")
    (start, end) = (
        [seq for seq, kind in rows if kind == wanted][1] for wanted in ("run", "run end")
    )
    assert found.holds
    assert (found.first, found.last) == (start, end)
    assert found.entries == end - start + 1
    assert found.bags == BAGS
    (under,) = found.under
    assert (under.entries, under.now, found.loose) == (found.entries, False, 0)
    ((head,),) = ask(made.home, "SELECT max(seq) FROM journal WHERE kind = 'head'")
    assert under.head.head.size == head - 1


def test_a_fact_from_another_time_is_read_too(made):
    ((uid, seq),) = ask(
        made.home,
        "SELECT uid, seq FROM fact JOIN journal ON journal.id = fact.entry_id"
        " WHERE fact.kind = 'station key'",
    )
    found = proved(made, 2, about=[uid])
    assert seq < found.first
    assert found.outside == 1
    assert found.entries == found.last - found.first + 2


def test_what_came_after_the_last_head_is_told_or_signed_for_now(made):
    loose = proved(made, 3)
    assert loose.holds
    assert not loose.under
    assert loose.loose == loose.entries
    assert "no head could be signed for this: no key file is named" in loose.why_loose
    (under,) = proved(made, 3, key=made.key).under
    assert (under.now, under.entries) == (True, loose.entries)
    assert proved(made, 2, key=made.key).under[0].now is False, "a head in the journal is enough"


def test_it_reads_the_run_and_not_the_journal(made, monkeypatch):
    """Blocks of other entries stand in with the root that is kept of them."""
    read, hashes = [], []
    entries, leaves = asked.j.entries, tree.EpochTree._leaves
    monkeypatch.setattr(asked.j, "_PAGE", 1)

    def counted(connection, after=0):
        for one in entries(connection, after):
            read.append(one.row)
            yield one

    def counted_leaves(self, start, end):
        hashes.append(end - start)
        return leaves(self, start, end)

    monkeypatch.setattr(asked.j, "entries", counted)
    monkeypatch.setattr(tree.EpochTree, "_leaves", counted_leaves)
    found = proved(made, 2)
    assert found.holds
    assert len(read) <= found.entries + 1
    assert sum(hashes) <= 4 * tree.BLOCK < NOTES * 3


@pytest.mark.parametrize("number", [BAGS + 1, BAGS + 3, 2 * BAGS])
def test_one_changed_byte_in_the_run_names_the_entry(copy, number):
    seq = entry_of_bag(copy.home, number)
    ((kept,),) = ask(copy.home, "SELECT canonical FROM journal WHERE seq = ?", seq)
    changed = kept.replace(b'"dwell_ms":', b'"dwell_mt":')
    assert len(kept) == len(changed)
    assert kept != changed
    copy.world.tamper(f"UPDATE journal SET canonical = x'{changed.hex()}' WHERE seq = {seq}")
    found = proved(copy, 2)
    assert found.first_break == seq
    assert f"entry {seq} was changed" in found.why


def test_a_run_is_not_held_up_by_damage_elsewhere(copy):
    seq = entry_of_bag(copy.home, 1)
    copy.world.tamper(f"UPDATE journal SET canonical = x'7b7d' WHERE seq = {seq}")
    assert proved(copy, 1).first_break == seq
    assert proved(copy, 2).holds


def test_entries_made_anew_with_their_hashes_are_not_those_signed(copy):
    """Whoever rewrites a bag and all hashes after it has no key to sign the head again."""
    home, seq = copy.home, entry_of_bag(copy.home, BAGS + 2)
    rows = ask(home, "SELECT id, canonical, hash FROM journal WHERE seq >= ? ORDER BY id", seq)
    ((before,),) = ask(home, "SELECT hash FROM journal WHERE seq = ?", seq - 1)
    with closing(sqlite3.connect(copy.world.database)) as connection, connection:
        for row, canonical, _ in rows:
            changed = canonical.replace(b'"dwell_ms":', b'"dwell_ms":1', 1)
            before = entry_hash(before, changed)
            connection.execute(
                "UPDATE journal SET canonical = ?, hash = ? WHERE id = ?", (changed, before, row)
            )
    found = proved(copy, 2)
    assert "are not those under the head" in found.why


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ("UPDATE pack SET net_digits = '0.2600' WHERE number = 8", "net_digits is '0.2600'"),
        ("UPDATE pack SET operator = 'P99' WHERE number = 8", "operator is 'P99'"),
        ("DELETE FROM pack WHERE number = 8", "is missing from its table"),
        ("UPDATE pack SET entry_id = 3 WHERE number = 8", "is missing from its table"),
        ("UPDATE journal SET kind = 'event' WHERE kind = 'run end'", "no journal entry ended it"),
        ("UPDATE journal SET kind = 'event' WHERE kind = 'pack'", "stands under another"),
        ("UPDATE journal SET canonical = x'' WHERE kind = 'pack'", "empty and no purge names it"),
        ("UPDATE tree_block SET root = zeroblob(32)", "are not those under"),
        ("DELETE FROM tree_block", "is missing: run `station journal rebuild`"),
    ],
)
def test_what_does_not_fit_is_said(copy, change, said):
    copy.world.tamper("PRAGMA foreign_keys = OFF", change)
    found = own_entries(copy.home, copy.runs[1], (), None)
    assert said in found.why


def test_a_head_of_another_key_is_not_believed(copy):
    copy.world.tamper("UPDATE fact SET kind = 'event' WHERE kind = 'station key'")
    assert (
        "which no entry of the record takes" in own_entries(copy.home, copy.runs[1], (), None).why
    )
