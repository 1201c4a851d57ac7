"""Day by day the two sides are compared; what differs is found by going down the trees."""

import random
from datetime import date, timedelta
from itertools import pairwise

import pytest

from station.core.merkle import leaf_hash
from station.store.outlet import JournalOutlet
from station.store.queries import summary
from station.sync.connection import connect
from station.sync.reconcile import differing, reconcile
from tests.station.sync.centre import WAIT_S, Centre, entries_of, send_all

ME = ("HA", "L1A")
DAY = date(2026, 3, 4)


@pytest.mark.parametrize("size", [1, 2, 3, 7, 8, 100, 257])
def test_exactly_the_leaves_that_differ_are_found(size):
    chance = random.Random(size)
    ours = [leaf_hash(bytes([n % 251])) for n in range(size)]
    assert differing(ours, list(ours), 5) == []
    for _ in range(20):
        wrong = sorted(chance.sample(range(size), chance.randrange(1, min(size, 6) + 1)))
        theirs = list(ours)
        for place in wrong:
            theirs[place] = bytes(32)
        ranges = differing(ours, theirs, 5)
        found = [seq for first, last in ranges for seq in range(first, last + 1)]
        assert found == [5 + place for place in wrong]
        assert all(a[1] + 1 < b[0] for a, b in pairwise(ranges))


@pytest.fixture
def two_days(world):
    """Bags on two days."""
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 8)
        world.clock.count += 24 * 3600 * 10 // 7
        world.fill(store, run, 5)
    return world


def compared(world, centre: Centre, since=DAY):
    (epoch,) = entries_of(world.home)
    with (
        JournalOutlet(world.home) as outlet,
        connect(centre.station(*ME), "station", WAIT_S) as connection,
    ):
        return list(reconcile(outlet, connection, ME, since, {epoch: centre.mark(epoch)}))


def test_equal_days_have_equal_counts_sums_and_roots(two_days, centre):
    send_all(two_days.home, centre.station(*ME))
    days = compared(two_days, centre)
    assert [one.day for one in days] == [DAY, DAY + timedelta(days=1)]
    assert all(one.equal and one.differing == () for one in days)
    assert sum(one.ours.packs for one in days) == summary(two_days.home).packs == 13
    assert days[0].ours.net_ug == 6 * 252_500_000 + 2 * 240_500_000
    entries = entries_of(two_days.home).popitem()[1]
    assert [one.first for one in days] == [1, days[0].last + 1]
    assert days[1].last == len(entries)
    assert compared(two_days, centre, DAY + timedelta(days=1)) == days[1:]
    assert compared(two_days, centre, DAY + timedelta(days=2)) == []


def test_bytes_changed_at_the_centre_are_named_although_their_hash_stands(two_days, centre):
    send_all(two_days.home, centre.station(*ME))
    (seq,) = centre.ask("SELECT max(seq) FROM centre.entry WHERE kind = 'pack'")[0]
    centre.tell(
        "UPDATE centre.entry SET canonical = replace(encode(canonical, 'escape'), '0.2525 kg', "
        "'0.2425 kg')::bytea WHERE seq = %s", seq,
    )  # fmt: skip
    first, second = compared(two_days, centre)
    assert first.equal
    assert second.differing == ((seq, seq),)
    assert second.theirs.net_ug == second.ours.net_ug - 10_000_000
    assert second.theirs.packs == second.ours.packs


def test_entries_missing_at_the_centre_are_named(two_days, centre):
    send_all(two_days.home, centre.station(*ME))
    centre.tell("DELETE FROM centre.entry WHERE seq IN (4, 5, 6, 11)")
    first, second = compared(two_days, centre)
    assert second.equal
    # what follows a missing entry cannot be checked against it, so it is named too
    assert first.differing == ((4, 7), (11, 12))
    assert first.theirs.entries == first.ours.entries - 4


def test_what_waits_to_be_sent_is_no_difference(two_days, centre):
    send_all(two_days.home, centre.station(*ME))
    with two_days.open() as store:
        store.note("later", two_days.clock.now(), "i.sedge")
    assert all(one.equal for one in compared(two_days, centre))
