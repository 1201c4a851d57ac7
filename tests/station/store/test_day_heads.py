"""Heads of days: when they are made, over what, and with which key."""

import re

import pytest

from station.core.journal import EntryKind
from station.core.merkle import leaf_hash, root
from station.line.ports import StoreFault
from station.store import journal as j
from station.store.day_heads import signed_of
from station.store.engine import reading
from station.store.facts import facts
from station.store.signing import is_signed, make_key, read_key
from station.store.verify import verify
from tests.station.store.signed_world import DayClock, opened


@pytest.fixture
def days(world):
    return DayClock(world.clock)


def heads(world):
    return facts(world.home, (EntryKind.HEAD,))


def hashes(world):
    with reading(world.home) as connection:
        return [kept.stored.hash for kept in j.entries(connection)]


def root_of(world, size):
    return root(map(leaf_hash, hashes(world)[:size])).hex()


def test_the_first_entry_of_a_day_is_preceded_by_the_head_of_the_day_before(world, days):
    with opened(world, days) as store:
        for _ in range(600):
            store.note("on the first day", days.now(), "station")
        assert heads(world) == ()
        days.days = 1
        store.note("on the second day", days.now(), "station")
        (head,) = heads(world)
        assert (head.seq, head.fact.details["size"]) == (602, 601)
        assert head.fact.subject == "2026-03-04"
        assert head.fact.details["root"] == root_of(world, 601)
        store.note("later that day", days.now(), "station")
        assert len(heads(world)) == 1
    assert verify(world.home).whole


def test_a_day_that_ended_in_a_crash_gets_its_head_at_the_next_start(world, days):
    world.crash(opened(world, days))
    days.days = 2
    world.crash(opened(world, days))
    (head,) = heads(world)
    assert (head.seq, head.fact.details["size"], head.fact.subject) == (2, 1, "2026-03-04")


def test_without_a_key_heads_say_that_they_are_not_signed(world, days):
    with opened(world, days) as store:
        days.days = 1
        store.note("on the second day", days.now(), "station")
        assert "no key file" in store.day_heads.unsigned
    (head,) = heads(world)
    assert head.fact.result == "not signed"
    assert signed_of(head.fact) is None
    assert "no key file" in head.fact.details["why"]


def test_a_key_is_made_at_the_first_start_and_signs_each_head(world, days, tmp_path):
    path = tmp_path / "keys" / "station.key"
    with opened(world, days, path) as store:
        assert store.day_heads.unsigned == ""
        days.days = 1
        store.note("on the second day", days.now(), "station")
    day, stop = heads(world)
    assert (day.fact.subject, stop.fact.subject) == ("2026-03-04", "2026-03-05")
    for head in (day, stop):
        found = signed_of(head.fact)
        assert is_signed(found)
        assert found.key == read_key(path).public
        assert found.head.root.hex() == root_of(world, found.head.size)
        assert found.head.size == head.seq - 1
    (taken,) = facts(world.home, (EntryKind.STATION_KEY,))
    assert (taken.fact.subject, taken.fact.result) == (read_key(path).id, "taken")
    with opened(world, days, path):
        pass
    assert len(facts(world.home, (EntryKind.STATION_KEY,))) == 1


@pytest.mark.parametrize("spoil", ["missing", "another", "readable"])
def test_a_key_that_is_not_the_record_s_is_not_used_and_packing_goes_on(
    world, days, tmp_path, spoil
):
    path = tmp_path / "station.key"
    opened(world, days, path).close()
    if spoil == "readable":
        path.chmod(0o644)
    else:
        path.unlink()
    if spoil == "another":
        make_key(path)
    with opened(world, days, path) as store:
        words = store.day_heads.unsigned
        days.days = 1
        store.note("packing goes on", days.now(), "station")
    expected = {
        "missing": "is missing: bring .* back",
        "another": "holds the key .* and this record's is",
        "readable": "chmod 600",
    }[spoil]
    assert re.search(expected, words)
    assert heads(world)[-1].fact.result == "not signed"
    assert path.exists() is (spoil != "missing")


def test_a_refused_entry_takes_its_head_with_it(world, days):
    with opened(world, days) as store:
        days.days = 1
        with pytest.raises(StoreFault):
            store.end_run("no such run", days.now(), "p.marsh")
        with pytest.raises(StoreFault):
            store.mark_label("none", "applied", days.now(), "station", "")
        assert heads(world) == ()
        store.note("on the second day", days.now(), "station")
        assert len(heads(world)) == 1
    assert verify(world.home).whole
