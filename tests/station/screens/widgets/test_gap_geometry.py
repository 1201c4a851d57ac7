"""The strip's geometry: landmarks at their places, never backwards, parts that meet."""

from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from station.core.mass import Mass, Unit
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.verdict import Verdict, Window, classify, lowest_floor
from station.line.state import LineState, Phase, Verb
from station.screens.widgets.gap_geometry import (
    COMB_AT_LEAST,
    FARTHEST,
    FEWEST_TEETH,
    MOST_TEETH,
    Body,
    Course,
    gap_view,
    mass_text,
)
from tests.station.screens.states import (
    every_state,
    grams,
    make_product,
    make_run,
    state,
)

PLACES = {"T2": 0.10, "T1": 0.28, "N": 0.52, "target": 0.62, "upper": 0.84}


@st.composite
def windows(draw: st.DrawFn) -> Window:
    """Windows of common products: a floor from Qn - T/2 on, target and upper above it."""
    nominal = draw(st.integers(20, 3000))
    limits = rule_set("eu-76-211").limits(grams(nominal))
    tenths = st.integers(0, 400).map(lambda n: Decimal(n) / 10)
    floor = max(lowest_floor(limits), limits.nominal - grams(draw(tenths)))
    target = floor + grams(draw(tenths))
    upper = target + grams(draw(tenths))
    return Window(floor, target, upper, limits)


@given(windows(), st.lists(st.integers(-500, 50_000), min_size=2, max_size=20))
def test_heavier_is_never_farther_left(window: Window, tenths: list[int]) -> None:
    course = Course(window)
    places = [course.at(grams(Decimal(n) / 10)) for n in sorted(tenths)]
    assert places == sorted(places)
    assert all(0.0 <= place <= 1.0 for place in places)


@given(windows())
def test_landmarks_stand_at_the_same_places_for_every_product(window: Window) -> None:
    limits = window.limits
    assume(limits.t2 < limits.t1 < limits.nominal < window.target < window.upper)
    course = Course(window)
    masses = {
        "T2": limits.t2,
        "T1": limits.t1,
        "N": limits.nominal,
        "target": window.target,
        "upper": window.upper,
    }
    for mark in course.landmarks:
        assert mark.at == PLACES[mark.sign]
        assert mark.mass == mass_text(masses[mark.sign])
        assert course.at(masses[mark.sign]) == pytest.approx(PLACES[mark.sign])


@given(windows())
def test_no_landmark_stands_right_of_its_mass(window: Window) -> None:
    course = Course(window)
    by_mass = sorted(
        (mark.at, course.at(Mass.parse(mark.mass.replace("\u00a0", " "))))
        for mark in course.landmarks
    )
    for at, falls in by_mass:
        assert at <= falls + 1e-9


def loaded(net: Decimal, run, *, spread: Decimal = Decimal(0)) -> LineState:
    verdict = classify(grams(net), run.window)
    verb = {Verdict.OVER: Verb.TAKE_OUT, Verdict.IN_WINDOW: Verb.WAIT}.get(verdict, Verb.ADD)
    return state(Phase.LOADED, verb, net, run=run, steady=not spread, spread=spread)


@given(st.integers(0, 4000), st.integers(0, 300))
def test_parts_meet_and_body_follows_the_verdict(tenths: int, spread_tenths: int) -> None:
    net, spread = Decimal(tenths) / 10, Decimal(spread_tenths) / 10
    line = loaded(net, make_run(), spread=spread)
    view = gap_view(line)
    assert line.shown is not None
    if line.shown.verdict is Verdict.OVER:
        assert view.body is Body.LAP
        assert view.slab.right == view.lap.left == view.slot.right
        assert view.lap.right <= FARTHEST
        assert view.gap.width == 0
    elif line.shown.verdict is Verdict.IN_WINDOW:
        assert view.body is Body.INSIDE
        assert view.slot.left <= view.slab.right <= view.slot.right
        assert view.gap.width == view.lap.width == 0
    else:
        assert view.body is Body.SHORT
        assert view.slab.right == view.gap.left
        assert view.slab.width + view.gap.width == pytest.approx(view.slot.left)
        assert view.lap.width == 0
    assert view.slab.left == 0
    if spread:
        assert FEWEST_TEETH <= view.teeth <= MOST_TEETH
        assert view.comb.width >= COMB_AT_LEAST * 0.99 or view.comb.left == 0
    else:
        assert view.teeth == 0


def test_comb_is_as_wide_as_the_real_spread() -> None:
    run = make_run()
    course = Course(run.window)
    view = gap_view(loaded(Decimal(238), run, spread=Decimal(6)))
    assert view.comb.left == pytest.approx(course.at(grams(235)))
    assert view.comb.right == pytest.approx(course.at(grams(241)))


def test_amount_stands_in_the_gap() -> None:
    view = gap_view(loaded(Decimal(238), make_run()))
    assert view.amount == "14\u00a0g"
    assert view.reach.left == view.slab.right
    assert view.reach.right == pytest.approx(PLACES["target"])


def test_the_slot_begins_at_the_floor_wherever_it_is() -> None:
    run = make_run(make_product(floor=grams(247), target=grams(252)))
    view = gap_view(loaded(Decimal(240), run))
    assert PLACES["T1"] < view.slot.left < PLACES["N"]


def test_a_bag_at_the_floor_has_no_gap_and_at_the_upper_limit_no_lap() -> None:
    run = make_run()
    assert gap_view(loaded(Decimal(250), run)).body is Body.INSIDE
    assert gap_view(loaded(Decimal(262), run)).body is Body.INSIDE
    assert gap_view(loaded(Decimal("249.9"), run)).body is Body.SHORT
    assert gap_view(loaded(Decimal("262.1"), run)).body is Body.LAP


@pytest.mark.parametrize(
    ("name", "body"),
    [
        ("start_run", Body.ABSENT),
        ("empty_pan", Body.EMPTY),
        ("bag_on", Body.EMPTY),
        ("short_t1", Body.SHORT),
        ("wait", Body.INSIDE),
        ("seal", Body.JOINED),
        ("lift_bag", Body.JOINED),
        ("over_near", Body.LAP),
        ("set_aside", Body.SHORT),
        ("no_reading", Body.ABSENT),
        ("stopped", Body.ABSENT),
    ],
)
def test_every_picture(name: str, body: Body) -> None:
    assert gap_view(every_state()[name]).body is body


def test_only_a_bag_being_labelled_says_seal() -> None:
    words = {name: gap_view(one).word for name, one in every_state().items()}
    assert {name for name, word in words.items() if word} == {"seal"}


def test_an_unaccepted_bag_is_never_joined() -> None:
    waiting = every_state()["wait"]
    assert waiting.shown is not None
    steady = replace(waiting, shown=replace(waiting.shown, steady=True))
    assert gap_view(steady).body is Body.INSIDE


@pytest.mark.parametrize(
    ("digits", "unit", "text"),
    [
        ("14", "g", "14\u00a0g"),
        ("14.0", "g", "14\u00a0g"),
        ("14.5", "g", "14.5\u00a0g"),
        ("-2", "g", "−2\u00a0g"),
        ("0.250", "kg", "0.250\u00a0kg"),
    ],
)
def test_mass_text(digits: str, unit: str, text: str) -> None:
    assert mass_text(Mass.of(digits, Unit(unit))) == text
