"""Lots on a line: overlap, clean break, rework, the rule that ends an overlap."""

from datetime import UTC, date, datetime, timedelta

import pytest

from station.core.facts import FactRecord
from station.core.line_lots import (
    LineLots,
    LotMove,
    Move,
    Overlap,
    Stage,
    check_rework,
    lots_after,
    move_fact,
    move_of,
)
from station.core.lot_set import LotUse
from station.core.lots import LotError
from station.core.mass import Mass
from station.core.pack import Moment

AT = datetime(2026, 11, 25, 9, tzinfo=UTC)
KG = Mass.parse("120.5 kg")


def load(lot, component="ROM"):
    return LotMove(Move.LOADED, lot, component, KG)


def rework(lot="A2632901", members=("ROM-1", "ROM-2"), day=28, hour=8):
    return LotMove(
        Move.REWORK,
        lot,
        members=tuple(LotUse("ROM", code) for code in members),
        use_by=date(2026, 11, day),
        packed_at=datetime(2026, 11, 25, hour, tzinfo=UTC),
        serials=("A1-00-000007",),
    )


def line(*moves):
    state = LineLots()
    for move in moves:
        state = state.after(move, AT)
    return state


def test_both_lots_are_in_the_set_until_the_old_one_is_empty():
    state = line(load("CAR-7", "CAR"), load("ROM-1"), load("ROM-2"))
    assert state.codes == ("CAR-7", "ROM-1", "ROM-2")
    assert [one.stage for one in state.of("ROM")] == [Stage.FINISHING, Stage.LOADED]
    assert state.after(LotMove(Move.EMPTY, "ROM-1"), AT).codes == ("CAR-7", "ROM-2")
    assert state.after(LotMove(Move.RETURNED, "ROM-1", quantity=KG), AT).codes[1:] == ("ROM-2",)


def test_waste_and_another_bin_of_the_same_lot_change_no_set():
    state = line(load("ROM-1"))
    assert state.after(LotMove(Move.WASTED, "ROM-1", quantity=KG), AT) == state
    again = state.after(load("ROM-1"), AT + timedelta(hours=1))
    assert (again.codes, again.lots[0].since) == (("ROM-1",), AT)


def test_a_lot_that_finishes_may_be_loaded_again():
    state = line(load("ROM-1"), load("ROM-2"), load("ROM-1"))
    assert {one.lot: one.stage for one in state.lots} == {
        "ROM-2": Stage.FINISHING,
        "ROM-1": Stage.LOADED,
    }


def test_a_lot_that_is_not_on_the_line_cannot_leave_it():
    with pytest.raises(LotError, match="ROM-9 is not on the line: on it are ROM-1"):
        line(load("ROM-1"), LotMove(Move.EMPTY, "ROM-9"))


@pytest.mark.parametrize(
    ("rule", "bags", "minutes", "over"),
    [
        (Overlap(), 1000, 1000, False),
        (Overlap(bags=40), 39, 1000, False),
        (Overlap(bags=40), 40, 0, True),
        (Overlap(time=timedelta(minutes=5)), 1000, 4, False),
        (Overlap(time=timedelta(minutes=5)), 0, 5, True),
        (Overlap(40, timedelta(minutes=5)), 40, 4, False),
        (Overlap(40, timedelta(minutes=5)), 39, 5, False),
        (Overlap(40, timedelta(minutes=5)), 40, 5, True),
    ],
)
def test_the_rule_ends_an_overlap_only_when_all_of_it_is_over(rule, bags, minutes, over):
    state = line(load("ROM-1"), load("ROM-2"))
    for _ in range(bags):
        state = state.packed()
    gone = state.run_clear(rule, AT + timedelta(minutes=minutes))
    assert gone == (("ROM-1",) if over else ())


def test_rework_brings_all_its_lots_and_its_earliest_day():
    state = line(load("ROM-3"), rework(), rework(members=("ROM-4",), day=27, hour=7))
    assert state.codes == ("ROM-1", "ROM-2", "ROM-3", "ROM-4")
    assert state.reworks[0].use_by == date(2026, 11, 27)
    assert state.reworks[0].packed_at.hour == 7
    assert state.after(LotMove(Move.EMPTY, "A2632901"), AT).codes == ("ROM-3",)


def test_rework_has_an_age_limit():
    check_rework(rework(hour=8), timedelta(hours=1), AT)
    with pytest.raises(LotError, match=r"packed 2.0 h ago: .* for 1.0 h"):
        check_rework(rework(hour=7), timedelta(hours=1), AT)


def test_what_a_move_lacks_is_refused():
    with pytest.raises(LotError, match="weigh it"):
        LotMove(Move.WASTED, "ROM-1")
    with pytest.raises(LotError, match="below nothing"):
        LotMove(Move.RETURNED, "ROM-1", quantity=Mass.parse("-1 kg"))
    with pytest.raises(LotError, match="rework needs"):
        LotMove(Move.REWORK, "A1")
    with pytest.raises(LotError, match="needs its component"):
        line(LotMove(Move.LOADED, "ROM-1"))


def test_moves_read_back_and_give_the_line_again():
    moves = (load("ROM-1"), rework(), LotMove(Move.EMPTY, "ROM-1", note="bin tipped"))
    facts = [move_fact(move, f"u{n}", "A") for n, move in enumerate(moves)]
    assert tuple(move_of(fact) for fact in facts) == moves
    elsewhere = move_fact(load("ROM-8"), "u8", "B")
    records = [
        FactRecord(fact, Moment(AT, 0, "Europe/Dublin", 0), "P01", n)
        for n, fact in enumerate((*facts, elsewhere), 1)
    ]
    assert lots_after(records, "A") == line(*moves)
    assert lots_after(records, "B").codes == ("ROM-8",)
