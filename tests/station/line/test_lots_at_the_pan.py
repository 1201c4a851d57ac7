"""Lots that change while a bag waits on the pan, and rework: a bag names what could be in it."""

from datetime import UTC, date, datetime

import pytest

from station.core.line_lots import LotMove, Move
from station.line.events import Barred, Resumed, SetAside
from station.line.ports import LabelRefused
from station.store.queries import trace_pack
from station.store.rebuild import rebuild
from tests.station.line.lot_rig import LOTS, LotLine, PlantClock, lot, qualities, rework


@pytest.fixture
def line(tmp_path):
    line = LotLine(tmp_path / "home")
    yield line
    line.close()


def test_a_bag_that_waits_on_the_pan_keeps_the_lots_it_was_filled_from(line):
    line.start("ROM-1", "CAR-7")
    line.take(Barred("check", "the scale is checked"))
    line.weigh(100, 2)
    clean = (LotMove(Move.EMPTY, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    assert line.move(*clean).recorded
    line.take(Barred("check", ""))
    waited = line.bag()
    after = line.bag()
    assert (line.recall("ROM-1"), line.recall("ROM-2")) == ([waited], [waited, after])


def test_a_bag_topped_up_after_a_clean_break_names_the_lots_of_both(line):
    line.start("ROM-1", "CAR-7")
    old = line.bag()
    line.weigh(100, 2)  # the lot runs out while this bag is filled
    clean = (LotMove(Move.EMPTY, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    assert line.move(*clean).recorded
    line.weigh(180, 2)
    both = line.bag()
    new = line.bag()
    assert (line.recall("ROM-1"), line.recall("ROM-2")) == ([old, both], [both, new])
    codes = [trace_pack(line.home, one).record.draft.blend_lot for one in (old, both, new)]
    assert codes == ["A2632901", "A2632902", "A2632903"]
    assert [name for what, name in line.log if what == "rehearse"][-2:] == codes[1:]
    line.close()
    rebuild(line.home)
    assert (line.recall("ROM-1"), line.recall("ROM-2")) == ([old, both], [both, new])


def test_a_break_that_the_label_of_the_bag_on_the_pan_cannot_carry_is_refused(line):
    line.start("ROM-1", "CAR-7")
    line.weigh(100, 2)
    line.desk.refusal = LabelRefused("3 lots do not fit this label: 2 do")
    clean = (LotMove(Move.EMPTY, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    assert line.move(*clean).words == "3 lots do not fit this label: 2 do"
    assert line.duty.line.codes == ("CAR-7", "ROM-1")
    bag = line.bag()
    assert (line.recall("ROM-1"), line.recall("ROM-2")) == ([bag], [])


def test_a_bag_lifted_while_it_waited_leaves_the_new_lots_to_the_next(line):
    line.start("ROM-1", "CAR-7")
    line.take(Barred("check", "the scale is checked"))
    line.weigh(100, 2)
    line.move(LotMove(Move.EMPTY, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    line.weigh(0)
    line.take(Barred("check", ""))
    after = line.bag()
    assert (line.recall("ROM-1"), line.recall("ROM-2")) == ([], [after])


def test_a_bag_put_on_after_its_lot_was_held_is_set_aside_before_the_lot_is_changed(line):
    line.start("ROM-1", "CAR-7")
    good = line.bag()
    line.hold("ROM-1")
    line.weigh(100, 2)
    clean = (LotMove(Move.RETURNED, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    assert "set it aside and lift it" in line.move(*clean).words
    line.take(SetAside("lot held"))
    line.weigh(100, 5)
    line.weigh(0)
    assert line.move(*clean).recorded
    (kept, aside) = line.recall("ROM-1")
    assert (kept, qualities(line, [good]), qualities(line, [aside])) == (good, {"held"}, {"reject"})


def test_lots_are_changed_after_a_run_that_ended_while_a_change_waited(line):
    line.start("ROM-1", "CAR-7")
    line.load("ROM-2")
    line.weigh(100, 2)
    line.empty("ROM-1")
    line.weigh(2)  # the bag is off, a drop is left
    line.end()
    assert line.load("ROM-3").recorded


def test_rework_of_lots_that_are_all_on_the_line_still_brings_its_earlier_last_day(line):
    line.start("ROM-1", "CAR-7")
    before = line.run
    burst = [line.bag_aside()]
    again = rework(line, burst, line.clock.utc, date(2026, 11, 30))
    assert line.move(again).recorded
    assert (line.run.dating.use_by, line.run.dating.shortened_by) == (
        date(2026, 11, 30),
        again.lot,
    )
    assert line.run.blend_lot != before.blend_lot
    mixed = line.bag()
    line.weigh(100, 2)
    assert line.empty(again.lot).recorded
    on_the_pan, pure = line.bag(), line.bag()
    days = [trace_pack(line.home, one).record.draft.use_by for one in (mixed, on_the_pan, pure)]
    assert days == [date(2026, 11, 30), date(2026, 11, 30), before.dating.use_by]


def test_rework_the_run_before_left_on_the_line_shortens_the_next_run_too(line):
    line.start("ROM-1", "CAR-7")
    burst = [line.bag_aside()]
    line.move(LotMove(Move.EMPTY, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    again = rework(line, burst, line.clock.utc, date(2026, 11, 30))
    assert line.move(again).recorded
    line.end()
    run = line.start("ROM-1", "ROM-2", "CAR-7")
    assert (run.dating.use_by, run.dating.shortened_by) == (date(2026, 11, 30), again.lot)
    assert trace_pack(line.home, line.bag()).record.draft.use_by == date(2026, 11, 30)


def test_rework_past_its_last_day_goes_into_no_bag(line):
    line.start("ROM-1", "CAR-7")
    past = rework(line, [line.bag_aside()], line.clock.utc, date(2026, 11, 24))
    answer = line.move(past)
    assert not answer.recorded
    assert answer.words == f"lot {past.lot} had its last day on 2026-11-24: it must not be used"


@pytest.mark.parametrize(
    ("dates", "last"),
    [
        ({"harvested": date(2026, 11, 19), "received": date(2026, 11, 24)}, date(2026, 11, 25)),
        ({"received": date(2026, 11, 19)}, date(2026, 11, 25)),
        ({"received": date(2026, 11, 20)}, None),
    ],
)
def test_a_lot_that_grows_too_old_at_midnight_goes_into_no_more_bags(tmp_path, dates, last):
    """Romaine may be packed for 6 days here; that its age goes by the calendar is our own rule."""
    lots = (lot("ROM-1", **dates), *LOTS[1:])
    clock = PlantClock(datetime(2026, 11, 25, 22, 50, tzinfo=UTC), "Europe/Paris")
    line = LotLine(tmp_path / "home", lots=lots, clock=clock)
    line.start("ROM-1", "CAR-7")
    fresh = [line.bag()]
    clock.pass_by(20 * 60_000)
    line.weigh(0)
    if last is None:
        fresh.append(line.bag())
    else:
        line.on_pan()
        assert line.state.because.endswith(
            f"lot ROM-1 had its last day on {last}: it must not be used"
        )
        line.take(Resumed("P01"))
        line.weigh(0)
        clean = (LotMove(Move.EMPTY, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
        assert line.move(*clean).recorded
        after = line.bag()
        assert line.recall("ROM-2") == [after]
    assert line.recall("ROM-1") == fresh
    line.close()
