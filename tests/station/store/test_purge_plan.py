"""What keeps a run from being purged, each in words that name it."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from station.core.facts import Fact
from station.core.holds import Released, Scope, ScopeKind, hold_fact, release_fact
from station.core.journal import EntryKind
from station.store.engine import reading
from station.store.purge_plan import plan_purge, years_before
from station.store.rebuild import rebuild
from station.store.verify import verify
from tests.station.store.old_runs import LOTS, OldRuns, run_with
from tests.station.store.signed_world import DayClock


@pytest.fixture
def made(world) -> OldRuns:
    return OldRuns(world, DayClock(world.clock))


def stops_of(made: OldRuns, number: int = 1, years: int = 5, sent=None) -> tuple[str, ...]:
    with reading(made.home) as connection:
        plan = plan_purge(connection, made.clock.now().utc, years, sent)
    return next(one.stops for one in plan.units if one.uid == made.runs[number].id)


def packed(made: OldRuns, *between) -> None:
    """An old run that could go, with something more done to it, and six years."""
    with made.open() as store:
        made.pack(store, 1, 9)
        made.dump(store, 1)
        for one in between:
            one(store)
        made.years_on(store)


def test_years_are_those_of_the_calendar():
    leap = datetime(2032, 2, 29, 12, tzinfo=UTC)
    assert years_before(leap, 5) == datetime(2027, 2, 28, 12, tzinfo=UTC)
    assert years_before(leap, 4) == datetime(2028, 2, 29, 12, tzinfo=UTC)


def test_a_settled_run_may_go_once_it_is_old_enough(made):
    packed(made)
    assert stops_of(made) == ()
    with reading(made.home) as connection:
        assert plan_purge(connection, made.clock.now().utc, 7, None).units == ()


def test_entries_that_are_not_at_the_centre_stay(made):
    packed(made)
    epoch = verify(made.home).epoch
    assert stops_of(made, sent={epoch: 10_000}) == ()
    (why,) = stops_of(made, sent={epoch: 10})
    assert why.endswith("is not at the centre")
    assert stops_of(made, sent={}) != ()


def test_an_open_reject_stays(made):
    with made.open() as store:
        made.pack(store, 1, 9)
        made.years_on(store)
    assert stops_of(made) == (f"nobody decided about reject {made.serials[1][2]}",)


def test_an_open_hold_stays_and_a_released_one_does_not(made):
    def hold(store):
        ranges = ((str(store.epoch), 1, 4),)
        made.record(store, hold_fact(Scope(ScopeKind.TIME, "bags"), "a smell", ranges, "h1"))

    packed(made, hold)
    found = stops_of(made)
    assert "hold h1 is open" in found
    assert any(one.startswith("held is bag") for one in found)
    with made.open() as store:
        released = Released("h1", "", "looked at: fine", "", 4)
        made.record(store, release_fact(released, "bags", "r1", "q.fen", two=False))
    assert stops_of(made) == ()
    made.purge(made.home.with_name("out"))
    assert verify(made.home).whole
    rebuild(made.home)
    assert verify(made.home).whole


def test_a_label_in_doubt_stays(made):
    def lose(store):
        run = made.runs[1]
        store.start_run(replace(run, id="019cb76f-7160-7000-8000-0000000000aa"), made.clock.now())
        again = replace(run, id="019cb76f-7160-7000-8000-0000000000aa")
        made.runs[4] = again
        serial = store.add_pack(made.world.draft(again)).serial
        store.mark_label(serial, "submitted", made.clock.now(), "station", "")
        store.end_run(again.id, made.clock.now(), "p.marsh")
        made.serials[4] = [serial]

    packed(made, lose)
    serial = made.serials[4][0]
    assert stops_of(made, 4) == (f"nobody said what became of the label of bag {serial}",)
    (why,) = stops_of(made)  # the run with the same lots stays with it
    assert why.endswith(f"is in run {made.runs[4].id}, which stays")


def test_a_case_that_did_not_leave_stays(made):
    packed(made, lambda store: made.case(store, 1, 1))
    (why,) = stops_of(made)
    assert why.startswith("case ")
    assert why.endswith("has not left")


def test_a_lot_of_a_run_that_stays_is_not_cut(made):
    with made.open() as store:
        made.pack(store, 1, 9)
        made.dump(store, 1)
        made.clock.days = 6 * 365
        made.pack(store, 3, 6, (LOTS[3][0], LOTS[1][1]))
        made.record(store, *(Fact(EntryKind.CALL, made.uid(), "L1", "made") for _ in range(1300)))
    assert stops_of(made) == (f"its lot CR-201 is in run {made.runs[3].id}, which stays",)


def test_lots_that_reach_from_run_to_run_do_not_keep_every_run_for_ever(made):
    """Each of the old runs shares a lot with the next, and the last with one of today."""
    with made.open() as store:
        for run, lots in ((1, (LOTS[1][0], LOTS[1][1])), (2, (LOTS[2][0], LOTS[1][1]))):
            made.pack(store, run, 2, lots)
        made.clock.days = 6 * 365
        made.pack(store, 3, 2, (LOTS[2][0], LOTS[3][1]))
        made.record(store, *(Fact(EntryKind.CALL, made.uid(), "L1", "made") for _ in range(1300)))
    [why] = stops_of(made, 2)
    assert why == f"its lot {LOTS[2][0].code} is in run {made.runs[3].id}, which stays"
    assert stops_of(made, 1) == ()
    made.purge(made.home.with_name("out"))
    assert verify(made.home).whole


def on_another_line(made: OldRuns, store) -> None:
    """A later run, without a bag, of another line."""
    made.clock.days += 1
    run = made.runs[5] = replace(run_with(5, LOTS[2]), line="L2")
    store.add_lots(run.lots, made.clock.now(), "p.marsh")
    store.start_run(run, made.clock.now())
    store.end_run(run.id, made.clock.now(), "p.marsh")


def test_the_newest_run_and_the_last_entries_stay(made):
    with made.open() as store:
        made.pack(store, 1, 9)
        made.dump(store, 1)
        on_another_line(made, store)
    assert stops_of(made, years=0)[:2] == (
        "it is the newest run of its line",
        "it has the newest bag",
    )
    assert "an entry of it is among the last 1000 of the journal" in stops_of(made, years=0)


def test_what_no_signed_head_covers_stays(made):
    with made.open() as store:
        made.pack(store, 1, 9)
        made.dump(store, 1)
        on_another_line(made, store)  # the head of the day before lies over too few entries
    with made.open() as store:
        pass
    assert any(one.endswith("is not under a signed head yet") for one in stops_of(made, years=0))


def test_a_clock_that_jumped_ahead_makes_no_run_old(made):
    with made.open() as store:
        made.pack(store, 1, 9)
        made.dump(store, 1)
        on_another_line(made, store)
        made.clock.days = 20 * 365
        made.record(store, *(Fact(EntryKind.CALL, made.uid(), "L1", "made") for _ in range(1300)))
    with reading(made.home) as connection:
        plan = plan_purge(connection, made.clock.now().utc, 5, None)
    assert plan.units == ()
    assert plan.before.year == 2021


def test_bags_whose_use_by_is_not_long_past_stay(made):
    with made.open() as store:
        made.pack(store, 1, 9)
        on_another_line(made, store)
    assert any("is less than two years ago" in one for one in stops_of(made, years=0))
