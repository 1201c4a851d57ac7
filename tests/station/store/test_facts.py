import sqlite3
from contextlib import closing

import pytest

from station.core.facts import Fact
from station.core.journal import EntryKind
from station.line.ports import StoreFault
from station.store.facts import fact_named, facts
from station.store.rebuild import rebuild
from station.store.verify import verify


def check(uid, result="good", run=""):
    return Fact(EntryKind.SCALE_CHECK, uid, "SN 0042", result, run, {"loads": [["0 g", "0 g"]]})


def hold(uid, store, first, last):
    ranges = [[str(store.epoch), first, last]]
    return Fact(EntryKind.HOLD, uid, "scale check", "held", "", {"ranges": ranges})


def release(uid, held):
    return Fact(EntryKind.RELEASE, uid, held, "released", "", {"hold": held})


def qualities(world):
    with closing(sqlite3.connect(world.database)) as connection:
        rows = connection.execute("SELECT quality FROM pack ORDER BY id").fetchall()
    return [quality for (quality,) in rows]


@pytest.fixture
def packed(world):
    """Six bags: numbers 3 and 6 are rejects."""
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 6)
        yield store


def test_a_recorded_fact_is_read_back_whole(world, packed):
    (record,) = packed.record((check("u1"),), world.clock.now(), "p.marsh")
    assert facts(world.home, (EntryKind.SCALE_CHECK,)) == (record,)
    assert fact_named(world.home, "u1") == record
    assert fact_named(world.home, "u2") is None


def test_facts_are_chosen_by_run_subject_time_and_number(world, packed):
    for uid, run in (("u1", ""), ("u2", "r1"), ("u3", "r1")):
        packed.record((check(uid, run=run),), world.clock.now(), "p.marsh")
    kinds = (EntryKind.SCALE_CHECK,)
    both = facts(world.home, kinds, run="r1")
    assert [one.fact.uid for one in both] == ["u2", "u3"]
    assert facts(world.home, kinds, subject="another") == ()
    assert [one.fact.uid for one in facts(world.home, kinds, newest=2)] == ["u2", "u3"]
    assert facts(world.home, kinds, since=both[1].at.utc) == both[1:]
    assert facts(world.home, kinds, until=both[0].at.utc)[-1] == both[0]


def test_all_facts_of_a_call_are_recorded_or_none(world, packed):
    with pytest.raises(StoreFault, match="hold h9 is not open"):
        packed.record((check("u1"), release("r1", "h9")), world.clock.now(), "p.marsh")
    assert facts(world.home, (EntryKind.SCALE_CHECK,)) == ()


def test_a_uid_is_recorded_once(world, packed):
    packed.record((check("u1"),), world.clock.now(), "p.marsh")
    with pytest.raises(StoreFault):
        packed.record((check("u1"),), world.clock.now(), "p.marsh")


def test_a_hold_takes_good_bags_and_leaves_rejects(world, packed):
    packed.record((hold("h1", packed, 2, 4),), world.clock.now(), "q.wren")
    assert qualities(world) == ["good", "held", "reject", "held", "good", "reject"]


def test_a_bag_is_released_when_no_open_hold_covers_it(world, packed):
    at = world.clock.now()
    packed.record((hold("h1", packed, 1, 4), hold("h2", packed, 4, 5)), at, "q.wren")
    packed.record((release("r1", "h1"),), at, "q.wren")
    assert qualities(world) == ["released", "released", "reject", "held", "held", "reject"]
    packed.record((release("r2", "h2"),), at, "q.wren")
    assert qualities(world) == ["released", "released", "reject", "released", "released", "reject"]


def test_a_hold_is_released_once(world, packed):
    at = world.clock.now()
    packed.record((hold("h1", packed, 1, 1), release("r1", "h1")), at, "q.wren")
    with pytest.raises(StoreFault, match="not open"):
        packed.record((release("r2", "h1"),), at, "q.wren")


def test_facts_and_holds_are_rebuilt_and_verified(world, packed):
    at = world.clock.now()
    packed.record((check("u1"), hold("h1", packed, 1, 4), hold("h2", packed, 4, 5)), at, "q.wren")
    packed.record((release("r1", "h1"),), at, "q.wren")
    packed.close()
    before = dump(world.database)
    rebuild(world.home)
    assert dump(world.database) == before
    assert verify(world.home).whole


def dump(path):
    with closing(sqlite3.connect(path)) as connection:
        tables = ("fact", "hold_range", "pack")
        return [connection.execute(f"SELECT * FROM {table}").fetchall() for table in tables]
