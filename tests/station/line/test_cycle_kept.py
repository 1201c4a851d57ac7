"""A bag that was recorded and changed before it left the pan is taken back."""

import pytest

from station.core.mass import Mass
from station.core.pack import LabelState
from station.line.cycle_kept import CHANGED, allowance
from station.line.cycle_state import LineRules
from station.line.effects import Cue, MarkLabel, Note, Sound, TakeBack
from station.line.events import Labelled, LinkDown, RunEnded, SetAside
from station.line.present import line_state
from station.line.state import Phase, Verb
from tests.station.line.scenario import grams, make_product, make_run
from tests.station.line.test_cycle import RULES, Line, accepted


def rest(line, value, ms=500):
    """Readings that stand; everything that comes of them."""
    return [one for _ in range(ms // 100) for one in line.weigh(value)]


@pytest.mark.parametrize("now", [240, 284])
def test_a_bag_changed_after_it_was_weighed_is_told_at_once_and_taken_back_when_lifted(now):
    line = accepted(Line())
    serial = line.records[-1].serial
    assert line.verb is Verb.LIFT_BAG
    told = rest(line, now)
    assert [type(one) for one in told] == [Note, Sound]
    assert serial in told[0].words
    assert told[1] == Sound(Cue.WRONG_WAY)
    state = line_state(line.cycle)
    assert state.verb is Verb.SET_ASIDE
    assert state.because == f"{CHANGED}: 252 g is recorded, {now - 6} g is on the pan"
    assert line.weigh(0) == (TakeBack(serial, CHANGED), Sound(Cue.WRONG_WAY))
    assert line.phase is Phase.READY
    assert (line.cycle.tally.good, line.cycle.tally.rejects) == (0, 1)
    assert line.cycle.tally.net_micrograms == 0


def test_a_bag_changed_while_its_label_is_printed_is_taken_back_too():
    line = Line()
    line.weigh(0)
    [effect] = line.rest(258)
    line.record(effect)
    serial = line.records[-1].serial
    assert line.phase is Phase.LABELLING
    rest(line, 278)
    line.do(Labelled(serial))
    assert line.verb is Verb.SET_ASIDE
    assert TakeBack(serial, CHANGED) in line.weigh(0)


def test_what_was_added_and_taken_out_again_leaves_the_bag_as_it_was_weighed():
    line = accepted(Line())
    rest(line, 284)
    rest(line, 258)
    assert line.verb is Verb.LIFT_BAG
    assert line.weigh(0) == (MarkLabel(line.records[-1].serial, LabelState.APPLIED),)


@pytest.mark.parametrize(
    "readings",
    [
        [(284, True, 200)],
        [(300, False, 900)],
        [(284, True, 200), (120, False, 300)],
        [(260, True, 900)],
    ],
    ids=["a short touch", "a hand that never rests", "a touch, then the lift", "a label put on"],
)
def test_a_hand_or_a_label_on_the_bag_is_no_change_of_it(readings):
    line = accepted(Line())
    for value, steady, ms in readings:
        for _ in range(ms // 100):
            line.weigh(value, steady=steady)
    assert line.verb is Verb.LIFT_BAG
    assert line.weigh(0) == (MarkLabel(line.records[-1].serial, LabelState.APPLIED),)


def test_the_change_stays_told_while_the_pan_moves():
    line = accepted(Line())
    rest(line, 284)
    line.weigh(500, steady=False)
    assert line.verb is Verb.SET_ASIDE


@pytest.mark.parametrize(
    ("nominal", "tolerable", "expected"),
    [(20, "1.8", "2"), (250, "9", "2.25"), (2000, "30", "7.5")],
    ids=["two intervals", "a quarter of 9 g", "a quarter of 30 g"],
)
def test_the_allowance_by_the_tolerable_shortage(nominal, tolerable, expected):
    """T of 76/211/EEC, Annex I 2.4: 9 % to 50 g, 9 g from 200 to 300 g, 1.5 % from 1 to 10 kg."""
    quantity = grams(nominal)
    product = make_product(
        nominal=quantity, floor=quantity, target=quantity, upper=grams(nominal + 1)
    )
    run = make_run(product)
    assert run.window.limits.tolerable == grams(tolerable)
    assert allowance(run, RULES) == grams(expected)


def test_a_reject_may_change_as_it_likes():
    line = Line()
    line.weigh(0)
    line.weigh(258, steady=True)
    line.do(SetAside("leaf"))
    [effect] = line.rest(258)
    line.record(effect)
    assert rest(line, 300) == []
    assert line.weigh(0) == ()


def test_a_run_ends_under_a_bag_only_while_no_reading_tells_of_it():
    line = accepted(Line())
    assert line.do(RunEnded()) == ()
    assert line.phase is Phase.LIFT
    line.do(LinkDown("the cable is out"))
    serial = line.records[-1].serial
    [mark] = line.do(RunEnded())
    assert (mark.serial, mark.state) == (serial, LabelState.IN_DOUBT)
    assert "did not tell" in mark.why
    assert (line.phase, line.cycle.run) == (Phase.CLOSED, None)


def test_a_changed_bag_is_taken_back_with_a_run_that_ends_under_it():
    line = accepted(Line())
    rest(line, 284)
    line.do(LinkDown("the cable is out"))
    took = line.do(RunEnded())
    assert took == (TakeBack(line.records[-1].serial, CHANGED), Sound(Cue.WRONG_WAY))


@pytest.mark.parametrize(("interval", "expected"), [("0.01 oz", "2.25 g"), ("0.05 oz", "0.1 oz")])
def test_the_allowance_of_a_product_in_grams_on_a_scale_in_ounces(interval, expected):
    """9 g have no exact value in ounces: 1 oz is 28.349523125 g (NIST HB 44, Appendix C)."""
    rules = LineRules(Mass.parse(interval))
    assert allowance(make_run(), rules) == Mass.parse(expected)
