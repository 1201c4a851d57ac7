"""What a blend's bags weigh stands with it and follows every change, live and rebuilt."""

import random
import sqlite3
from contextlib import closing

import pytest

from station.core.balance import Water, balance
from station.core.dispositions import LINKED, Decided, Disposition
from station.core.lot_set import LotUse
from station.core.pack import LabelState
from station.store.lot_usage import packed_at, packed_with
from station.store.rebuild import rebuild
from station.store.shape import KEPT
from station.store.verify import verify
from tests.station.store.old_runs import disposition_fact

SUMS = "SELECT id, kept_ug, aside_ug FROM blend ORDER BY id"
TRUTH = """
    SELECT blend.id, sum(iif(quality IN ('reject', 'reworked', 'repacked'), 0, net_ug)),
        sum(iif(quality IN ('reject', 'reworked'), net_ug, 0))
    FROM blend JOIN pack ON pack.blend_id = blend.id GROUP BY blend.id ORDER BY blend.id
"""
SETS = (("LF-101", "CR-201"), ("LF-102", "CR-201"), ("LF-101", "LF-102", "CR-201"))
NET, LIGHT_NET = 252_500_000, 240_500_000
"""Micrograms in a bag of the world's, and in a light one."""
USES = (LotUse("LEAF", "LF-101"), LotUse("LEAF", "LF-102"), LotUse("CRESS", "CR-201"))


def ask(path, statement):
    with closing(sqlite3.connect(path)) as connection:
        return connection.execute(statement).fetchall()


def packed_by_turns(world, seed):
    """Runs that change by turns; bags are taken back and decided while others are packed."""
    drawn, store, aside, labelled = random.Random(seed), world.stocked(), [], []
    runs = [world.start(store, number + 1, codes) for number, codes in enumerate(SETS)]
    for turn in range(40):
        if turn == 20:
            world.crash(store)
            store = world.open()
        run = drawn.choice(runs)
        light = drawn.random() < 0.4
        bag = store.add_pack(world.draft(run, *(("0.2405", "too light") if light else ())))
        if light:
            aside.append((bag.serial, run))
        else:
            for state in (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED):
                store.mark_label(bag.serial, state, world.clock.now(), "station", "")
            labelled.append((bag.serial, run))
        if labelled and drawn.random() < 0.2:
            back = labelled.pop(drawn.randrange(len(labelled)))
            store.take_back(back[0], "torn", world.clock.now(), "i.sedge")
            aside.append(back)
        if aside and drawn.random() < 0.3:
            serial, its = aside.pop(drawn.randrange(len(aside)))
            what = drawn.choice((Disposition.DUMP, Disposition.SAMPLE, Disposition.TOP_UP))
            into = store.add_pack(world.draft(its)).serial if what in LINKED else ""
            decided = Decided(serial, what, "seal", witness="p.marsh", into=into)
            fact = disposition_fact(decided, f"d{turn}", its.id)
            store.record((fact,), world.clock.now(), "q.wren")
    store.close()
    return runs


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_sums_follow_every_bag_and_are_the_same_rebuilt(world, seed):
    packed_by_turns(world, seed)
    (filling,) = ask(world.database, "SELECT blend_id FROM pack ORDER BY id DESC LIMIT 1")[0]
    truth = [
        (its, *((None, None) if its == filling else sums))
        for its, *sums in ask(world.database, TRUTH)
    ]
    assert ask(world.database, SUMS) == truth
    assert sum(1 for _, _, aside in truth if aside) >= 1
    assert verify(world.home).whole
    rebuild(world.home)
    assert ask(world.database, SUMS) == truth


def test_balances_are_the_same_by_component_as_by_set(world):
    packed_by_turns(world, 4)
    whole = packed_with(world.home, [use.lot for use in USES])
    assert len(whole) == 3
    at = packed_at(world.home, USES)
    for use in USES:
        told = [balance(use.lot, use.component, (), packed, Water()) for packed in (whole, at)]
        assert told[0] == told[1]
        assert told[0].used.high > 0


def test_runs_that_differ_in_other_lots_are_one_sum(world):
    store = world.stocked()
    for number, leaf in enumerate(("LF-101", "LF-102", "LF-101"), start=1):
        world.fill(store, world.start(store, number, (leaf, "CR-201")), 3)
    store.close()
    cress = USES[-1:]
    assert len(packed_with(world.home, ["CR-201"])) == 3
    (one,) = packed_at(world.home, cress)
    assert one.lot_set.uses == cress


def test_a_reject_that_another_bag_stands_for_takes_nothing_of_its_lots_twice(world):
    store = world.stocked()
    run = world.start(store, 1, SETS[0])
    light = store.add_pack(world.draft(run, "0.2405", "too light"))
    (whole,) = packed_with(world.home, ["LF-101"])
    assert (whole.kept, whole.rejected) == (0, LIGHT_NET)
    new = store.add_pack(world.draft(run))
    for corrects, what, kept in (
        ("", Disposition.TOP_UP, NET),
        ("d0", Disposition.DUMP, NET + LIGHT_NET),
        ("d1", Disposition.REWEIGH, NET),
    ):
        into = new.serial if what in LINKED else ""
        decided = Decided(light.serial, what, "light", into=into, corrects=corrects)
        uid = f"d{int(corrects[1:]) + 1}" if corrects else "d0"
        store.record((disposition_fact(decided, uid, run.id),), world.clock.now(), "q.wren")
        (whole,) = packed_with(world.home, ["LF-101"])
        assert (whole.kept, whole.rejected) == (kept, 0)
    world.fill(store, world.start(store, 2, SETS[0]), 1)  # the sums of the first stand now
    assert ask(world.database, SUMS)[0] == (1, NET, 0)
    store.close()


def test_sums_of_an_older_file_are_made_anew(world):
    packed_by_turns(world, 6)
    right = ask(world.database, SUMS)
    world.tamper(
        "UPDATE blend SET kept_ug = kept_ug + 1",
        "DROP INDEX ix_journal_purge",  # so that a file looked at before is looked at again
        f"PRAGMA user_version = {KEPT - 1}",
    )
    world.open().close()
    assert ask(world.database, SUMS) == right


def test_a_changed_sum_is_named(world):
    packed_by_turns(world, 5)
    world.tamper("UPDATE blend SET kept_ug = kept_ug + 1")
    assert "kept_ug is" in verify(world.home).why
