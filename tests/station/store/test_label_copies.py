import sqlite3
from contextlib import closing

import pytest

from station.core.label_life import OldLabel, Reprint, ReprintReason, reprint_fact
from station.core.pack import LabelState
from station.line.ports import StoreFault
from station.store.rebuild import rebuild
from station.store.verify import verify

STEPS = (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED)


@pytest.fixture
def packed(world):
    with world.stocked() as store:
        world.serials = world.fill(store, world.start(store), 3)
        yield store


@pytest.fixture
def world(world):
    object.__setattr__(world, "serials", [])
    return _Open(world)


class _Open:
    """The invented packhouse, with the serials of its bags."""

    def __init__(self, world):
        self._world, self.serials = world, []

    def __getattr__(self, name):
        return getattr(self._world, name)

    def copy(self, store, serial, number, uid):
        wish = Reprint(serial, ReprintReason.JAMMED, OldLabel.DESTROYED, "p.marsh")
        store.record((reprint_fact(wish, number, "r1", uid),), self.clock.now(), "p.marsh")

    def mark(self, store, serial, *states):
        for state in states:
            store.mark_label(serial, state, self.clock.now(), "station", "")


def shown(world):
    with closing(sqlite3.connect(world.database)) as connection:
        return connection.execute("SELECT label, copies FROM pack ORDER BY id").fetchall()


def test_a_copy_is_counted_and_its_label_is_on_its_way_again(world, packed):
    world.copy(packed, world.serials[0], 1, "u1")
    assert shown(world)[0] == ("submitted", 1)
    world.mark(packed, world.serials[0], LabelState.SPOOLED, LabelState.APPLIED)
    world.copy(packed, world.serials[0], 2, "u2")
    assert shown(world) == [("submitted", 2), ("applied", 0), ("none", 0)]
    bag = packed.labelled(world.serials[0])
    assert (bag.copies, bag.label) == (2, LabelState.SUBMITTED)


@pytest.mark.parametrize("number", [0, 2, 3])
def test_only_the_next_copy_is_taken_so_no_mark_comes_twice(world, packed, number):
    with pytest.raises(StoreFault, match=f"next copy of label .* is 1, not {number}"):
        world.copy(packed, world.serials[0], number, "u1")
    assert shown(world)[0] == ("applied", 0)


def test_a_copy_on_its_way_is_not_copied(world, packed):
    world.copy(packed, world.serials[0], 1, "u1")
    with pytest.raises(StoreFault, match="is submitted: only one that is"):
        world.copy(packed, world.serials[0], 2, "u2")


def test_a_reject_and_an_unknown_bag_have_no_copy(world, packed):
    with pytest.raises(StoreFault, match="is none: only one"):
        world.copy(packed, world.serials[2], 1, "u1")
    with pytest.raises(StoreFault, match="not in the record"):
        world.copy(packed, "L1A-ZZ-000001", 1, "u1")
    with pytest.raises(StoreFault, match="L1A-ZZ-000001"):
        packed.labelled("L1A-ZZ-000001")


@pytest.mark.parametrize("printed", [False, True])
def test_a_copy_under_way_at_a_crash_is_in_doubt_and_the_next_one_has_the_next_mark(world, printed):
    store = world.stocked()
    serial = world.fill(store, world.start(store), 1)[0]
    world.copy(store, serial, 1, "u1")
    if printed:
        world.mark(store, serial, LabelState.SPOOLED)
    world.crash(store)
    with world.open() as store:
        assert store.in_doubt() == (serial,)
        with pytest.raises(StoreFault, match="is 2, not 1"):
            world.copy(store, serial, 1, "u2")
        world.copy(store, serial, 2, "u3")
    assert shown(world) == [("submitted", 2)]


def test_copies_are_built_again_from_the_journal_alone(world, packed):
    world.copy(packed, world.serials[0], 1, "u1")
    world.mark(packed, world.serials[0], LabelState.SPOOLED)
    packed.close()
    before = shown(world)
    rebuild(world.home)
    assert shown(world) == before
    assert verify(world.home).whole
    with closing(sqlite3.connect(world.database)) as connection:
        connection.execute("UPDATE pack SET copies = 0 WHERE copies = 1")
        connection.commit()
    assert not verify(world.home).whole
