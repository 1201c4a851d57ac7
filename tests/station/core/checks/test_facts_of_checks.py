"""Checks, tares and windows come back from their entries as they went in."""

from datetime import UTC, datetime, timedelta
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.checks.scale import CheckMade, Trigger, check_fact, check_of, held_true
from station.core.checks.suspect import (
    Decision,
    FiledStep,
    FiledWindow,
    RunWindow,
    decided_window,
    decision_facts,
    window_fact,
    window_of,
)
from station.core.checks.tare import (
    empty_bag_fact,
    empty_bag_of,
    judge_empty_bag,
    study_fact,
    study_of,
)
from station.core.facts import FactRecord
from station.core.journal import Entry, canonical
from station.core.mass import Mass, Unit
from station.core.metrology.instrument_errors import ErrorSystem, ScaleClass, WeightClass
from station.core.metrology.scale_check import (
    CheckLoad,
    CheckReading,
    CheckStage,
    TestWeights,
    judge_check,
)
from station.core.metrology.scale_suitability import Scale
from station.core.metrology.suspect import CaseVerdict, ErrorSign
from station.core.metrology.tare import TareStudy
from station.core.pack import Moment

AT = datetime(2026, 11, 25, 9, tzinfo=UTC)
MOMENT = Moment(AT, 0, "Europe/Dublin", 1)


def grams(text) -> Mass:
    return Mass.of(text, Unit.GRAM)


def record(fact) -> FactRecord:
    return FactRecord(fact, MOMENT, "P01", 7)


@given(
    stage=st.sampled_from(CheckStage),
    trigger=st.sampled_from(Trigger),
    system=st.sampled_from(ErrorSystem),
    errors=st.lists(st.integers(-9, 9), min_size=1, max_size=4),
    added=st.none() | st.integers(0, 9),
    minimum=st.none() | st.just("20"),
)
def test_a_check_comes_back_whole(stage, trigger, system, errors, added, minimum):
    plate = Scale(
        ScaleClass.III, grams("1"), grams("3000"), None if minimum is None else grams(minimum),
        system,
    )  # fmt: skip
    extra = None if added is None else grams(Decimal(added) / 10)
    readings = [
        CheckReading(load, TestWeights((grams("200"),) * n, WeightClass.M1), grams(200 * n + error),
                     extra)
        for n, (load, error) in enumerate(zip(CheckLoad, errors, strict=False))
    ]  # fmt: skip
    made = CheckMade(judge_check(plate, readings, AT, stage), plate, "SN 4", trigger, "set 2")
    assert check_of(record(check_fact(made, "u1"))) == made
    assert held_true(made) is (made.check.result != "failed")


def test_the_digits_shown_are_kept():
    plate = Scale(ScaleClass.III, grams("0.5"), grams("3000"))
    reading = CheckReading(CheckLoad.EMPTY, TestWeights((), WeightClass.F2), grams("0.0"))
    made = CheckMade(judge_check(plate, [reading], AT, CheckStage.AS_FOUND), plate, "s",
                     Trigger.START, "c")  # fmt: skip
    back = check_of(record(check_fact(made, "u1")))
    assert back.check.loads[0].reading.indication.digits == "0.0"


@given(st.lists(st.integers(1, 99), min_size=2, max_size=30))
def test_a_study_comes_back_whole(tenths):
    tares = tuple(grams(Decimal(n) / 10) for n in tenths)
    study = TareStudy("BAG-1", "F-1", ("clip", "label"), AT, tares)
    assert study_of(record(study_fact(study, "u1", "r1"))) == study


# A declared tare is a mean rounded up to the interval: from two intervals below to one above.
@pytest.mark.parametrize(
    ("shown", "fits"), [("3", False), ("4", True), ("6", True), ("7", True), ("8", False)]
)
def test_an_empty_bag_against_the_declared_tare(shown, fits):
    bag = judge_empty_bag("B", "F", grams(shown), grams("1"), None, grams("6"))
    assert bag.fits is fits
    assert empty_bag_of(record(empty_bag_fact(bag, "u", "r"))) == bag


def test_an_empty_bag_against_its_study():
    """Mean 6, s 0: one interval either side."""
    study = TareStudy("B", "F", (), AT, (grams("6.0"),) * 25)
    for shown, fits in (("5.0", True), ("7.0", True), ("7.5", False), ("4.5", False)):
        bag = judge_empty_bag("B", "F", grams(shown), grams("1"), study, grams("9"))
        assert bag.fits is fits
        assert "study" in bag.against


def a_window(step=True) -> FiledWindow:
    case = CaseVerdict("as weighed", 3, Fraction(757, 3), 1, 0, accepted=True)
    return FiledWindow(
        uid="w1",
        scale="SN 4",
        check="c2",
        good="c1",
        opened=AT,
        closed=AT + timedelta(hours=1),
        sign=ErrorSign.MIXED,
        step=FiledStep(AT, AT + timedelta(seconds=12), "+4 g") if step else None,
        holds=("h1", "h2") if step else ("h1",),
        runs=(
            RunWindow("r1", "P-250", "g", (case,), "", ("A1-00-000001", "A1-00-000002")),
            RunWindow("r2", "P-9", "kg", (), "not known", ("A1-00-000003",)),
        ),
    )


@pytest.mark.parametrize("step", [True, False])
def test_a_window_comes_back_whole(step):
    window = a_window(step)
    back = record(window_fact(window))
    assert window_of(back) == window
    assert decided_window(back) == ""
    assert window.bags == 3


@pytest.mark.parametrize(
    ("decision", "released"),
    [
        (Decision.RELEASED, ["h1", "h2"]),
        (Decision.RELEASED_BEFORE_STEP, ["h1"]),
        (Decision.HOLD_STAYS, []),
    ],
)
def test_a_decision_releases_what_it_says(decision, released):
    *releases, decided = decision_facts(a_window(), decision, "why", ["a", "b", "c"])
    assert [fact.details["hold"] for fact in releases] == released
    assert (decided.subject, decided.result) == ("w1", str(decision))
    assert decided_window(record(decided)) == "w1"
    assert window_of(record(decided)) is None
    assert len({fact.uid for fact in (*releases, decided)}) == len(releases) + 1


def test_bodies_are_what_a_journal_can_keep():
    for fact in (window_fact(a_window()), *decision_facts(a_window(), Decision.RELEASED, "x",
                                                          ["a", "b", "c"])):  # fmt: skip
        assert b'"uid"' in canonical_body(fact)


def canonical_body(fact) -> bytes:
    return canonical(Entry("S", "A1", 1, 1, fact.kind, MOMENT, "P01", fact.body()))
