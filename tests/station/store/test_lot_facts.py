"""Deliveries, holds of lots and changed sets in the record, and the record rebuilt from them."""

import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import date

import pytest

from station.core.blend_change import BlendChange, changed_run, with_change
from station.core.line_lots import LotMove, Move, move_fact
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot, LotStatus
from station.core.receiving import (
    Delivery,
    delivery_fact,
    hold_lot_fact,
    release_lot_fact,
)
from station.line.ports import StoreFault
from station.store.lot_reach import bags_with
from station.store.queries import known_lots, trace_lot
from station.store.rebuild import rebuild
from station.store.verify import verify

NEW = InputLot("LF-103", "LEAF", "Ashbrook Growers", date(2026, 3, 4))


def record(world, store, *facts):
    return store.record(facts, world.clock.now(), "q.fen")


def test_a_trace_names_no_blend_that_was_left_before_its_first_bag(world):
    with world.stocked() as store:
        first = world.start(store)
        world.fill(store, first, 2)
        change(world, store, first, "LF-101", "LF-102")
        after = change(world, store, first, "LF-101", number=3)
        world.fill(store, after, 1)
        store.end_run(first.id, world.clock.now(), "p.marsh")
        empty = world.start(store, 4, ("LF-101", "LF-102", "CR-201"))
    unused = trace_lot(world.home, "LF-102")
    assert (unused.runs, unused.blend_lots, unused.packs) == ((), (), ())
    used = trace_lot(world.home, "LF-101")
    assert used.blend_lots == (first.blend_lot, after.blend_lot)
    assert [run.uid for run in used.runs] == [first.id] != [empty.id]


def statuses(world):
    return {lot.code: lot.status for lot in known_lots(world.home)}


def qualities(world):
    with closing(sqlite3.connect(world.database)) as connection:
        return [row[0] for row in connection.execute("SELECT quality FROM pack ORDER BY id")]


def changed(run, *codes, number=2):
    """A run after a change to other leaf lots."""
    lots = LotSet.of([LotUse("CRESS", "CR-201"), *(LotUse("LEAF", code) for code in codes)])
    by_code = {lot.code: lot for lot in (*run.lots, NEW)}
    by_code |= {code: replace(NEW, code=code) for code in codes}
    code = f"{run.blend_lot[:-2]}{number:02d}"
    return changed_run(run, BlendChange(lots, code, run.dating), by_code)


def change(world, store, run, *codes, number=2):
    after = changed(run, *codes, number=number)
    move = move_fact(LotMove(Move.LOADED, codes[-1], "LEAF"), f"m{number}", "L1", run.id)
    new = BlendChange(after.lot_set, after.blend_lot, after.dating)
    record(world, store, with_change(move, new))
    return after


def test_a_delivery_makes_its_lot_known_and_a_second_one_is_refused(world):
    with world.stocked() as store:
        record(world, store, delivery_fact(Delivery(NEW), "d1"))
        assert NEW in known_lots(world.home)
        with pytest.raises(StoreFault, match="LF-103 is already in the record"):
            record(world, store, delivery_fact(Delivery(NEW), "d2"))


def test_a_bag_is_recorded_under_a_set_that_a_move_brought(world):
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 2)
        both = change(world, store, run, "LF-101", "LF-102")
        assert store.next_blend_number("L1", world.day) == 3
        world.fill(store, both, 2)
        unknown = changed(run, "LF-102", number=3)
        with pytest.raises(StoreFault, match="start a run with it or load it"):
            store.add_pack(world.draft(unknown))
    assert len(trace_lot(world.home, "LF-101").packs) == 4
    assert len(trace_lot(world.home, "LF-102").packs) == 2
    assert trace_lot(world.home, "LF-101").blend_lots == (run.blend_lot, both.blend_lot)


def test_a_held_lot_holds_its_bags_of_all_runs_and_epochs_and_no_others(world):
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 2)
        store.end_run(run.id, world.clock.now(), "p.marsh")
    with world.open() as store:
        other = world.start(store, 2, ("LF-102", "CR-201"))
        world.fill(store, other, 1)
        store.end_run(other.id, world.clock.now(), "p.marsh")
        again = world.start(store, 3)
        world.fill(store, again, 2)
        ranges = bags_with(world.home, "LF-101")
        assert [(first, last) for _, first, last in ranges] == [(1, 2), (4, 5)]
        record(world, store, hold_lot_fact("h1", "LF-101", "supplier called", ranges))
        assert qualities(world) == ["held", "held", "good", "held", "held"]
        assert statuses(world)["LF-101"] is LotStatus.HELD
        with pytest.raises(StoreFault, match="lot LF-101 is held: set the bag aside"):
            store.add_pack(world.draft(again))
        store.add_pack(world.draft(again, reason="lot held"))
        record(world, store, release_lot_fact("r1", "LF-101", "h1", "result came back"))
        assert qualities(world)[:5] == ["released", "released", "good", "released", "released"]
        assert statuses(world)["LF-101"] is LotStatus.FREE
        store.add_pack(world.draft(again))


def test_a_lot_is_free_only_after_its_last_hold(world):
    with world.stocked() as store:
        for uid in ("h1", "h2"):
            record(world, store, hold_lot_fact(uid, "LF-102", "wash water"))
        record(world, store, release_lot_fact("r1", "LF-102", "h1", "well"))
        assert statuses(world)["LF-102"] is LotStatus.HELD
        with pytest.raises(StoreFault, match="hold h1 of lot LF-102 is not open"):
            record(world, store, release_lot_fact("r2", "LF-102", "h1", "well"))
        record(world, store, release_lot_fact("r3", "LF-102", "h2", "well"))
        assert statuses(world)["LF-102"] is LotStatus.FREE


def test_what_a_person_holds_no_settings_file_lets_go(world):
    with world.stocked() as store:
        record(world, store, hold_lot_fact("h1", "LF-102", "wash water"))
        store.add_lots(world.lots, world.clock.now(), "station")
        assert statuses(world)["LF-102"] is LotStatus.HELD
        with pytest.raises(StoreFault, match="LF-999 is not in the record"):
            record(world, store, hold_lot_fact("h2", "LF-999", "wash water"))


def test_what_the_settings_hold_is_held_again_after_a_persons_release(world):
    held = replace(next(one for one in world.lots if one.code == "LF-102"), status=LotStatus.HELD)
    with world.stocked() as store:
        record(world, store, hold_lot_fact("h1", "LF-102", "wash water"))
        store.add_lots((held,), world.clock.now(), "station")  # as at a start: a person's holds
        record(world, store, release_lot_fact("r1", "LF-102", "h1", "well"))
        assert statuses(world)["LF-102"] is LotStatus.HELD
        record(world, store, hold_lot_fact("h2", "LF-102", "wash water"))
        store.add_lots((replace(held, status=LotStatus.FREE),), world.clock.now(), "station")
        record(world, store, release_lot_fact("r2", "LF-102", "h2", "well"))
        assert statuses(world)["LF-102"] is LotStatus.FREE
    before = dump(world.database)
    rebuild(world.home)
    assert dump(world.database) == before


def test_a_record_rebuilt_has_the_same_lots_holds_and_blends(world):
    with world.stocked() as store:
        record(world, store, delivery_fact(Delivery(NEW), "d1"))
        run = world.start(store)
        world.fill(store, run, 2)
        both = change(world, store, run, "LF-101", "LF-103")
        world.fill(store, both, 2)
        change(world, store, run, "LF-103", number=3)
        ranges = bags_with(world.home, "LF-101")
        record(world, store, hold_lot_fact("h1", "LF-101", "supplier called", ranges))
        record(world, store, hold_lot_fact("h2", "CR-201", "supplier called", ranges))
        record(world, store, release_lot_fact("r1", "LF-101", "h1", "well"))
    before = dump(world.database)
    rebuild(world.home)
    assert dump(world.database) == before


def dump(path):
    with closing(sqlite3.connect(path)) as connection:
        return [line for line in connection.iterdump() if "sqlite_" not in line]


def test_a_record_in_which_a_lot_was_held_and_released_is_whole(world):
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 3)
        at, ranges = world.clock.now(), ((str(store.epoch), 1, 3),)
        store.record((hold_lot_fact("h1", "LF-101", "too warm", ranges),), at, "q.wren")
        store.record((release_lot_fact("r1", "LF-101", "h1", "cooled"),), at, "q.wren")
    report = verify(world.home)
    assert report.whole, report.why
