"""What a screen may show: one verb, the amount in the product's unit, the reason."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.frames.base import Kind
from station.core.mass import Mass, Unit
from station.core.metrology.verdict import Verdict, Window
from station.core.pack import PackDraft, PackId, PackRecord, Quality, Weighing
from station.core.product import BagItem, PackMode
from station.line.cycle_state import NO_FRAME_YET, Cycle, LineRules, Load
from station.line.present import line_state, units_fit
from station.line.state import LastPack, Phase, Tally, Verb
from tests.station.line.scenario import MS, grams, make_moment, make_product, make_reading, make_run

GRAMS = LineRules(interval=grams(1))
KILOGRAMS = LineRules(interval=Mass.of("0.001", Unit.KILOGRAM))
RUN = make_run()
CHECK = make_run(make_product(mode=PackMode.CHECK))
ON_KG = replace(RUN, unit=Unit.KILOGRAM)


def packed(quality=Quality.GOOD, reason=""):
    weighing = Weighing(grams(258), grams(6), grams(252), grams(0), 900, 0, "0a31")
    draft = PackDraft(
        RUN.id, weighing, Verdict.IN_WINDOW, quality, reason, RUN.blend_lot, RUN.lot_set.key,
        date(2026, 12, 1), date(2026, 11, 25), "P02", make_moment(),
    )  # fmt: skip
    return PackRecord(PackId("S", "A1", 0, 7), "u7", draft, 7, "00")


def at(phase, gross="0", *, run=RUN, rules=GRAMS, **more):
    """A line in a phase, with a reading that can be believed."""
    steady, unit = more.pop("steady", True), "kg" if rules is KILOGRAMS else "g"
    reading = make_reading(gross, 1000, steady=steady, unit=unit)
    load = Load(900 * MS) if phase is Phase.LOADED else None
    known = {"run": None if phase is Phase.CLOSED else run, "reading": reading, "load": load}
    return Cycle(rules, phase, trouble="", port="bench", **known | more)


GOOD = {"last": packed(), "last_is_good": True}
REJECT = {"last": packed(Quality.REJECT, "burst seal"), "last_is_good": False}
VOID = {"last": packed(), "last_is_good": False}
DONE = {"run": make_run(order_size=1), "tally": Tally(good=1)}

SITUATIONS = {
    "closed": (at(Phase.CLOSED), Verb.START_RUN, None, "no run is open"),
    "closed, loaded": (at(Phase.CLOSED, "258"), Verb.START_RUN, None, "no run is open"),
    "pan not empty": (at(Phase.CLEAR_PAN, "258"), Verb.EMPTY_PAN, None, "must be empty"),
    "pan moving": (at(Phase.CLEAR_PAN, "2", steady=False), Verb.EMPTY_PAN, None, ""),
    "residue": (at(Phase.CLEAR_PAN, "2"), Verb.WIPE_PAN, None, "the empty pan shows 2 g: wipe it"),
    "below zero": (at(Phase.CLEAR_PAN, "-4"), Verb.WIPE_PAN, None, "shows -4 g"),
    "zero seen": (at(Phase.CLEAR_PAN), Verb.EMPTY_PAN, None, ""),
    "ready": (at(Phase.READY), Verb.BAG_ON, None, ""),
    "order done": (at(Phase.READY, **DONE), Verb.ORDER_DONE, None, "1 bags are packed"),
    "only a bag": (at(Phase.LOADED, "6"), Verb.ADD, grams(252), ""),
    "below T2": (at(Phase.LOADED, "200"), Verb.ADD, grams(58), ""),
    "below T1": (at(Phase.LOADED, "240"), Verb.ADD, grams(18), ""),
    "below floor": (at(Phase.LOADED, "255"), Verb.ADD, grams(3), ""),
    "on the floor": (at(Phase.LOADED, "256"), Verb.WAIT, None, ""),
    "on target": (at(Phase.LOADED, "258"), Verb.WAIT, None, ""),
    "on the upper limit": (at(Phase.LOADED, "268"), Verb.WAIT, None, ""),
    "over": (at(Phase.LOADED, "269"), Verb.TAKE_OUT, grams(11), ""),
    "moving, short": (at(Phase.LOADED, "100", steady=False), Verb.ADD, grams(158), ""),
    "check, short": (at(Phase.LOADED, "240", run=CHECK), Verb.WAIT, None, ""),
    "check, over": (at(Phase.LOADED, "300", run=CHECK), Verb.WAIT, None, ""),
    "setting aside": (
        at(Phase.LOADED, "100", load=Load(0, aside="foreign body")),
        Verb.WAIT, None, "setting aside: foreign body",
    ),
    "recording": (at(Phase.RECORDING, "258"), Verb.SEAL, None, ""),
    "labelling": (at(Phase.LABELLING, "258", **GOOD), Verb.SEAL, None, ""),
    "labelled": (at(Phase.LIFT, "258", **GOOD), Verb.LIFT_BAG, None, ""),
    "rejected": (at(Phase.LIFT, "258", **REJECT), Verb.SET_ASIDE, None, "not labelled: burst seal"),
    "taken back": (at(Phase.LIFT, "258", **VOID), Verb.SET_ASIDE, None, "label is void"),
    "stopped": (at(Phase.STOPPED, stop="the disk is full"), Verb.CALL_LEAD, None, "disk is full"),
}  # fmt: skip


@pytest.mark.parametrize("situation", SITUATIONS)
def test_each_situation_has_one_verb_an_amount_where_it_helps_and_a_reason(situation):
    cycle, verb, amount, because = SITUATIONS[situation]
    state = line_state(cycle)
    assert (state.phase, state.verb, state.amount) == (cycle.phase, verb, amount)
    assert because in state.because
    assert bool(state.because) == bool(because)


def test_every_phase_and_every_verb_is_among_the_situations():
    assert {cycle.phase for cycle, *_ in SITUATIONS.values()} == set(Phase)
    assert {verb for _, verb, *_ in SITUATIONS.values()} == set(Verb) - {Verb.NO_READING}


@pytest.mark.parametrize("phase", [one for one in Phase if one is not Phase.STOPPED])
def test_without_a_reading_that_can_be_believed_there_is_no_other_verb(phase):
    for reading in (None, make_reading("258", 1000)):
        cycle = replace(at(phase, **GOOD), reading=reading, trouble=NO_FRAME_YET)
        state = line_state(cycle)
        assert (state.verb, state.amount) == (Verb.NO_READING, None)
        assert state.because == NO_FRAME_YET
        if state.shown is not None:
            assert (state.shown.net, state.shown.verdict, state.shown.spread) == (None, None, None)


def test_a_stop_is_shown_even_without_a_reading():
    cycle = replace(at(Phase.STOPPED, stop="label A1-00-000001 is in doubt"), trouble="silent")
    assert line_state(cycle).verb is Verb.CALL_LEAD
    assert line_state(replace(cycle, reading=None)).because == "label A1-00-000001 is in doubt"


def test_a_reading_of_another_unit_or_kind_is_shown_as_sent():
    for change in ({"unit": "oz"}, {"unit": "?"}, {"digits": ""}, {"kind": Kind.NET}):
        reading = make_reading("258", 1000, **change)
        state = line_state(replace(at(Phase.READY), reading=reading, trouble="not in g"))
        assert (state.shown.digits, state.shown.unit) == (reading.digits, reading.unit)


# --- amounts ----------------------------------------------------------------------------------


@given(st.integers(6, 400))
def test_amounts_lead_to_the_target_exactly(gross):
    state = line_state(at(Phase.LOADED, str(gross)))
    net = state.shown.net
    assert net == grams(gross - 6)
    if state.verb is Verb.ADD:
        assert net < RUN.window.floor
        assert net + state.amount == RUN.window.target
    elif state.verb is Verb.TAKE_OUT:
        assert net > RUN.window.upper
        assert net - state.amount == RUN.window.target
    else:
        assert RUN.window.floor <= net <= RUN.window.upper


@given(st.integers(6, 400))
def test_a_scale_in_kilograms_gives_the_very_same_amounts(gross):
    in_kg = format(Decimal(gross).scaleb(-3), ".3f")
    on_grams = line_state(at(Phase.LOADED, str(gross)))
    on_kg = line_state(at(Phase.LOADED, in_kg, run=ON_KG, rules=KILOGRAMS))
    assert (on_kg.shown.digits, on_kg.shown.unit) == (in_kg, "kg")  # as the scale shows it
    assert on_kg.shown.net.unit is Unit.GRAM
    assert str(on_kg.shown.net) == str(on_grams.shown.net)
    assert (on_kg.verb, str(on_kg.amount)) == (on_grams.verb, str(on_grams.amount))
    assert on_kg.shown.verdict is on_grams.shown.verdict


def test_half_gram_steps_of_a_kilogram_scale_are_kept():
    state = line_state(at(Phase.LOADED, "0.2555", run=ON_KG, rules=KILOGRAMS))
    assert str(state.shown.net) == "249.5 g"
    assert (state.verb, str(state.amount)) == (Verb.ADD, "2.5 g")


def test_the_spread_is_shown_in_the_unit_of_the_product():
    cycle = at(Phase.LOADED, "0.258", run=ON_KG, rules=KILOGRAMS)
    cycle = replace(cycle, reading=replace(cycle.reading, spread=Decimal("0.002")))
    assert str(line_state(cycle).shown.spread) == "2 g"


def test_a_verdict_needs_something_on_the_pan():
    assert line_state(at(Phase.READY)).shown.verdict is None
    assert line_state(at(Phase.LOADED, "2")).shown.verdict is None
    assert line_state(at(Phase.LOADED, "3")).shown.verdict is Verdict.BELOW_T2


def test_the_rest_is_passed_on():
    state = line_state(at(Phase.LIFT, "258", number=4, tally=Tally(good=3), **GOOD))
    assert (state.cycle, state.tally, state.port, state.run) == (4, Tally(good=3), "bench", RUN)
    assert state.last == LastPack("A1-00-000007", grams(252), True)
    assert line_state(at(Phase.READY)).last is None


def test_the_mean_is_exact_to_a_microgram():
    assert Tally().mean is None
    assert Tally(good=3, net_micrograms=750_000_001).mean == Mass.of("250")


# --- units ------------------------------------------------------------------------------------


def test_units_fit_says_why_not():
    assert units_fit(RUN) == units_fit(ON_KG) == ""
    words = units_fit(replace(RUN, unit=Unit.OUNCE))
    assert words.startswith("product HARBOUR-250 cannot run on this scale: ")
    ounce_bag = BagItem("B", "bag", Mass.of("0.2", Unit.OUNCE), "mean of 25")
    # An ounce is an exact number of grams, so such a tare fits a scale in grams.
    assert units_fit(replace(RUN, product=make_product(bag=ounce_bag))) == ""
    assert units_fit(replace(RUN, unit=Unit.POUND)) != ""


def test_the_window_of_these_tests_is_the_one_they_speak_of():
    assert RUN.window == Window(grams(250), grams(252), grams(262), RUN.window.limits)
