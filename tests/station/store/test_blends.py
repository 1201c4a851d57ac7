"""A blend knows between which rows its bags lie, however runs and lots change by turns."""

import random
import sqlite3
from contextlib import closing

import pytest

from station.line.ports import StoreFault
from station.store.queries import run_tally, trace_lot
from station.store.rebuild import rebuild
from station.store.tables import FILLING
from station.store.verify import verify

SPANS = "SELECT id, first_bag, last_bag FROM blend ORDER BY id"
TRUTH = """
    SELECT blend.id, min(pack.id), max(pack.id) FROM blend
    LEFT JOIN pack ON pack.blend_id = blend.id GROUP BY blend.id ORDER BY blend.id
"""


def ask(path, statement):
    with closing(sqlite3.connect(path)) as connection:
        return connection.execute(statement).fetchall()


def checked(world, filling):
    truth = ask(world.database, TRUTH)
    spans = ask(world.database, SPANS)
    assert spans == [
        (its, first, FILLING if its == filling else last) for its, first, last in truth
    ]
    return spans


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_each_blend_has_the_bags_between_its_first_and_its_last(world, seed):
    drawn, count, last = random.Random(seed), [0, 0, 0], 0
    store = world.stocked()
    sets = ((), (("LF-102", "CR-201"),), ())
    runs = [world.start(store, number + 1, *lots) for number, lots in enumerate(sets)]
    for turn in range(24):
        if turn == 9:  # a commit that fails leaves nothing behind
            store._driver.execute("PRAGMA query_only=ON")
            with pytest.raises(StoreFault, match="read-only"):
                store.add_pack(world.draft(runs[(last + 1) % 3]))
            store._driver.execute("PRAGMA query_only=OFF")
        if turn == 15:  # neither does a start
            world.crash(store)
            store = world.open()
        last = drawn.randrange(3) if drawn.random() < 0.4 else last
        store.add_pack(world.draft(runs[last]))
        count[last] += 1
    store.close()
    (newest,) = ask(world.database, "SELECT blend_id FROM pack ORDER BY id DESC LIMIT 1")
    spans = checked(world, newest[0])
    assert [run_tally(world.home, run.id).good for run in runs] == count
    assert len(trace_lot(world.home, "LF-102").packs) == count[1]
    assert verify(world.home).whole
    rebuild(world.home)
    assert ask(world.database, SPANS) == spans


def test_a_changed_bound_is_named(world):
    with world.stocked() as store:
        world.fill(store, world.start(store), 3)
    world.tamper("UPDATE blend SET first_bag = 2")
    assert "first_bag is 2, the journal says 1" in verify(world.home).why
