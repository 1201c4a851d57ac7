"""Lots that change during an open run, in front of the real store."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

import pytest

from station.core.line_lots import LotMove, Move, Overlap
from station.core.lots import LotStatus
from station.core.product import Component, Share
from station.line.events import SetAside
from station.line.lot_change import LotRules
from station.line.ports import LabelRefused
from station.line.state import Verb
from station.store.queries import trace_pack
from station.store.run_counts import count_run
from tests.station.line.lot_rig import (
    LOTS,
    LotLine,
    PlantClock,
    lot,
    qualities,
    rework,
    with_shares,
)
from tests.station.line.scenario import make_product


@pytest.fixture
def make(tmp_path):
    lines = []

    def line(**options):
        lines.append(LotLine(tmp_path / f"home{len(lines)}", **options))
        return lines[-1]

    yield line
    for one in lines:
        one.close()


@pytest.fixture
def line(make):
    return make()


def test_a_recall_after_an_overlap_of_40_bags_returns_old_and_overlap_and_nothing_else(line):
    line.start("ROM-1", "CAR-7")
    old = line.bags(12)
    assert line.load("ROM-2").recorded
    overlap = line.bags(40)
    assert line.empty("ROM-1").recorded
    new = line.bags(9)
    assert line.recall("ROM-1") == old + overlap
    assert line.recall("ROM-2") == overlap + new
    assert line.recall("CAR-7") == old + overlap + new
    codes = [trace_pack(line.home, bags[-1]).record.draft.blend_lot for bags in (old, overlap, new)]
    assert codes == ["A2632901", "A2632902", "A2632903"]


def test_the_new_label_is_rehearsed_first_and_where_it_cannot_be_the_old_set_stays(line):
    run = line.start("ROM-1", "CAR-7")
    line.desk.refusal = LabelRefused("6 lots do not fit this label: 5 do")
    answer = line.load("ROM-2")
    assert (answer.recorded, answer.words) == (False, "6 lots do not fit this label: 5 do")
    assert line.run == run
    assert line.duty.line.codes == ("CAR-7", "ROM-1")
    line.desk.refusal = None
    assert line.load("ROM-2").recorded
    assert line.log[-1] == ("rehearse", "A2632902")


def test_a_lot_declared_empty_stays_in_the_set_of_the_bag_on_the_pan(line):
    line.start("ROM-1", "CAR-7")
    line.load("ROM-2")
    line.weigh(100, 2)
    assert line.empty("ROM-1").recorded
    with_old = line.bag()
    without = line.bag()
    assert line.recall("ROM-1") == [with_old]
    assert line.recall("ROM-2") == [with_old, without]


def test_a_lot_loaded_while_a_bag_is_filled_is_in_its_set_at_once(line):
    line.start("ROM-1", "CAR-7")
    line.weigh(100, 2)
    line.load("ROM-2")
    serial = line.bag()
    assert line.recall("ROM-2") == [serial]


def test_a_second_change_waits_until_the_bag_was_lifted(line):
    line.start("ROM-1", "CAR-7")
    line.load("ROM-2")
    line.weigh(100, 2)
    line.empty("ROM-1")
    assert "lift it before the next change" in line.load("ROM-3").words
    line.bag()
    assert line.load("ROM-3").recorded


def test_the_last_lot_of_a_component_leaves_only_with_the_next_in_one_step(line):
    line.start("ROM-1", "CAR-7")
    first = line.bag()
    refused = line.empty("ROM-1")
    assert not refused.recorded
    assert (
        "no lot yet for: ROM; take the old lot off and load the next in one step" in refused.words
    )
    clean = (LotMove(Move.EMPTY, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    assert line.move(*clean).recorded
    second = line.bag()
    assert (line.recall("ROM-1"), line.recall("ROM-2")) == ([first], [second])


def test_the_rule_of_the_packhouse_ends_an_overlap_by_itself(make):
    line = make(rules=LotRules(Overlap(bags=5)))
    line.start("ROM-1", "CAR-7")
    line.load("ROM-2")
    overlap = line.bags(5)
    line.clock.pass_by(1_100)
    line.weigh(0)
    line.bags(3)
    assert line.recall("ROM-1") == overlap
    assert line.duty.line.codes == ("CAR-7", "ROM-2")


def test_use_by_follows_the_lots_that_are_in_the_bag(make):
    short = lot("ROM-9", use_by=date(2026, 11, 27))
    line = make(lots=(*LOTS, short))
    line.start("ROM-1", "CAR-7")
    days = [line.run.dating.use_by]
    line.load("ROM-9")
    days.append(line.run.dating.use_by)
    assert line.run.dating.shortened_by == "ROM-9"
    line.load("ROM-2")
    line.empty("ROM-9")
    line.empty("ROM-1")
    days.append(line.run.dating.use_by)
    assert days == [date(2026, 12, 1), date(2026, 11, 27), date(2026, 12, 1)]


@pytest.mark.parametrize(
    ("code", "words"),
    [
        ("ROM-99", "not known: receive it first"),
        ("HELD", "lot HELD is held"),
        ("PAST", "had its last day on 2026-11-24"),
        ("OLD", "15 days old"),
        ("KALE", "does not contain"),
    ],
)
def test_what_must_not_be_loaded_is_refused_in_words(make, code, words):
    lots = (
        *LOTS,
        lot("HELD", status=LotStatus.HELD),
        lot("PAST", received=date(2026, 11, 20), use_by=date(2026, 11, 24)),
        lot("OLD", received=date(2026, 11, 10)),
        lot("KALE", "KALE"),
    )
    line = make(lots=lots)
    run = line.start("ROM-1", "CAR-7")
    answer = line.load(code)
    assert not answer.recorded
    assert words in answer.words
    assert line.run == run


# --- holds ------------------------------------------------------------------------------------


def test_a_lot_held_after_200_bags_holds_them_all_and_closes_the_line_until_it_is_changed(line):
    line.start("ROM-1", "CAR-7")
    held = line.bags(200)
    assert line.hold("ROM-1").recorded
    assert line.state.verb is Verb.CALL_LEAD
    assert "lot ROM-1 is held" in line.state.because
    assert qualities(line, held) == {"held"}
    line.on_pan()
    assert line.state.verb is Verb.CALL_LEAD
    assert line.state.last.serial == held[-1]
    line.weigh(0)
    assert "held" in line.load("ROM-2").words
    clean = (LotMove(Move.RETURNED, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    assert line.move(*clean).recorded
    after = line.bags(3)
    assert qualities(line, after) == {"good"}
    assert line.recall("ROM-1") == held
    assert line.release("ROM-1").recorded
    assert qualities(line, held) == {"released"}
    assert line.load("ROM-1").recorded


def test_a_bag_on_the_pan_that_may_hold_a_held_lot_is_set_aside_first(line):
    line.start("ROM-1", "CAR-7")
    line.weigh(100, 2)
    line.hold("ROM-1")
    clean = (LotMove(Move.RETURNED, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    assert "set it aside and lift it" in line.move(*clean).words
    line.take(SetAside("lot held"))
    line.weigh(100, 5)
    line.weigh(0)
    assert line.move(*clean).recorded
    assert line.recall("ROM-1") != []


def test_a_held_bag_that_bursts_is_set_aside_and_no_release_lets_it_go(line):
    run = line.start("ROM-1", "CAR-7")
    held = line.bags(3)
    line.hold("ROM-1")
    line.take(SetAside("burst seal"))
    assert (line.state.tally.good, line.state.tally.rejects) == (2, 1)
    assert qualities(line, held[:2]) == {"held"}
    line.release("ROM-1")
    assert qualities(line, held[:2]) == {"released"}
    assert qualities(line, held[2:]) == {"reject"}
    assert count_run(line.home, run.id).bags == 2


def test_a_held_lot_of_an_earlier_run_holds_its_bags_too(line):
    line.start("ROM-1", "CAR-7")
    first = line.bags(3)
    line.end()
    line.move(LotMove(Move.RETURNED, "ROM-1"))
    line.start("ROM-2", "CAR-7")
    second = line.bags(2)
    line.hold("ROM-1")
    assert qualities(line, first) == {"held"}
    assert qualities(line, second) == {"good"}
    assert line.state.verb is not Verb.CALL_LEAD


def test_an_unknown_lot_cannot_be_held(line):
    assert "not known" in line.hold("ROM-77").words


# --- carry-over and rework --------------------------------------------------------------------

SLAW = replace(
    make_product(),
    code="TIDE-250",
    gtin="9521234000020",
    recipe=(
        Share(Component("CAR", "Carrot"), Decimal(60)),
        Share(Component("CAB", "Cabbage"), Decimal(40)),
    ),
)


def test_a_lot_is_carried_over_to_a_product_that_contains_it_and_no_other(make):
    line = make(products=(make_product(), SLAW), lots=(*LOTS, lot("CAB-1", "CAB")))
    line.start("ROM-1", "CAR-7")
    first = line.bags(2)
    line.end()
    line.start("CAR-7", "CAB-1", product=SLAW)
    assert "ROM-1 is on the line and on no label" in line.state.because
    line.move(LotMove(Move.RETURNED, "ROM-1"))
    assert line.state.verb is not Verb.CALL_LEAD
    second = line.bags(2)
    assert line.recall("CAR-7") == first + second
    assert line.recall("ROM-1") == first
    assert "does not contain" in line.load("ROM-1").words


def test_rework_into_the_next_hour_brings_its_lots_and_its_day_and_has_an_age_limit(make):
    line = make(rules=LotRules(rework=timedelta(hours=2)))
    line.start("ROM-1", "CAR-7")
    began = line.clock.utc
    burst = [line.bag_aside(), line.bag_aside()]
    clean = (LotMove(Move.EMPTY, "ROM-1"), LotMove(Move.LOADED, "ROM-2"))
    line.move(*clean)
    good = line.bag()
    line.clock.pass_by(3_600_000)
    line.weigh(0)
    again = rework(line, burst, began, date(2026, 11, 30))
    kept = replace(again, serials=(good,))
    assert f"bag {good} is not among those set aside" in line.move(kept).words
    assert line.move(again).recorded
    assert line.run.dating.use_by == date(2026, 11, 30)
    assert line.run.dating.shortened_by == again.lot
    mixed = line.bags(3)
    assert line.empty(again.lot).recorded
    pure = line.bags(1)
    assert line.recall("ROM-1") == burst + mixed
    assert line.recall("ROM-2") == [good, *mixed, *pure]
    assert qualities(line, burst) == {"reworked"}
    assert "not among those set aside" in line.move(again).words
    line.clock.pass_by(3_700_000)
    assert "for 2.0 h" in line.move(again).words


# --- the clock --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("utc", "zone"),
    [
        (datetime(2026, 12, 31, 21, 40, tzinfo=UTC), "Europe/Dublin"),
        (datetime(2027, 3, 27, 23, 40, tzinfo=UTC), "Europe/Dublin"),  # forward at 01:00
        (datetime(2026, 10, 24, 21, 40, tzinfo=UTC), "Europe/Dublin"),  # back at 02:00
        (datetime(2028, 2, 28, 21, 40, tzinfo=UTC), "Europe/Dublin"),
    ],
)
def test_six_lots_loaded_across_midnight_keep_one_production_day_and_codes_of_their_own(
    make, utc, zone
):
    clock = PlantClock(utc, zone)
    day = clock.utc.date()
    lots = (
        *(lot(f"ROM-{n}", received=day) for n in range(1, 7)),
        lot("CAR-7", "CAR", received=day),
    )
    line = make(lots=lots, clock=clock)
    line.start("ROM-1", "CAR-7")
    bags = {1: line.bags(2)}
    for number in range(2, 7):
        clock.pass_by(40 * 60_000)
        line.weigh(0)
        change = (LotMove(Move.EMPTY, f"ROM-{number - 1}"), LotMove(Move.LOADED, f"ROM-{number}"))
        assert line.move(*change).recorded
        bags[number] = line.bags(2)
    for number in range(1, 7):
        assert line.recall(f"ROM-{number}") == bags[number]
    drafts = [trace_pack(line.home, bag).record.draft for one in bags.values() for bag in one]
    assert {draft.production_day for draft in drafts} == {day}
    assert {draft.use_by for draft in drafts} == {day + timedelta(days=6)}
    assert len({draft.blend_lot for draft in drafts}) == 6
    assert clock.now().utc.date() > day


# --- balance ----------------------------------------------------------------------------------


def test_the_balance_asks_for_a_change_that_was_missed_and_blocks_nothing(make):
    product = with_shares(make_product(), ROM=(66, 70, 74), CAR=(26, 30, 34))
    line = make(products=(product,))
    line.load("ROM-1", "1.5")
    line.start("ROM-1", "CAR-7")
    line.bags(8)
    assert line.state.due == ()
    (row,) = [row for row in line.duty.rows() if row.lot == "ROM-1"]
    assert row.balance.left.low < 1500 - 8 * 252 * Decimal("0.7") < row.balance.left.high
    line.bags(1)
    line.clock.pass_by(1_100)
    line.weigh(0)
    assert "ROM-1 should be empty" in line.state.due[0].words
    assert line.state.verb is Verb.BAG_ON


def test_a_lot_that_finishes_for_half_an_hour_is_asked_about(line):
    line.start("ROM-1", "CAR-7")
    line.load("ROM-2")
    began = line.clock.now().utc
    assert line.duty.lingering(began + timedelta(minutes=29)) == ()
    assert line.duty.lingering(began + timedelta(minutes=31)) == ("ROM-1",)
    line.empty("ROM-1")
    line.bags(1)
    assert line.duty.lingering(began + timedelta(hours=2)) == ()
