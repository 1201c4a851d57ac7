import pytest

from station.core.clearance import (
    FIRST,
    ClearanceError,
    Explanation,
    Gate,
    Point,
    Reconciliation,
    cleared_fact,
    gate_of,
    reconciled_fact,
)
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from tests.station.line.scenario import make_moment

ALL = dict.fromkeys(Point, True)


def recorded(fact):
    return FactRecord(fact, make_moment(), "P01", 1)


def test_a_count_that_agrees_is_signed_without_a_word():
    fact = reconciled_fact("u1", Reconciliation("r1", 120, 120, Explanation.SAMPLED))
    assert (fact.result, fact.details["explanation"]) == ("signed", None)
    assert gate_of(recorded(fact)) == (Gate.RECONCILED, "r1")


@pytest.mark.parametrize(
    ("counted", "words"),
    [(119, "1 bags fewer"), (122, "2 bags more"), (-1, "cannot be counted")],
)
def test_a_difference_needs_a_reason(counted, words):
    with pytest.raises(ClearanceError, match=words):
        Reconciliation("r1", 120, counted)


def test_a_difference_is_kept_with_its_reason():
    fact = reconciled_fact("u1", Reconciliation("r1", 120, 118, Explanation.SAMPLED))
    assert fact.result == "signed with a difference"
    assert (fact.details["difference"], fact.details["explanation"]) == (-2, "taken by QA")


@pytest.mark.parametrize("point", Point)
def test_no_point_may_be_left_out(point):
    with pytest.raises(ClearanceError, match=str(point)):
        cleared_fact("u1", FIRST, {**ALL, point: False})
    with pytest.raises(ClearanceError, match=str(point)):
        cleared_fact("u1", FIRST, {one: True for one in Point if one is not point})


@pytest.mark.parametrize("before", [FIRST, "r1"])
def test_a_clear_line_names_the_run_before(before):
    fact = cleared_fact("u1", before, ALL)
    assert gate_of(recorded(fact)) == (Gate.CLEARED, before)


def test_another_fact_signs_nothing():
    assert gate_of(recorded(Fact(EntryKind.HOLD, "u1", "lot", "held"))) is None
    assert gate_of(recorded(Fact(EntryKind.GATE, "u1", "another gate", "signed"))) is None
