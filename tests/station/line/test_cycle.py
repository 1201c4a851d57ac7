"""The pack cycle: the table case by case, then as a whole under random events."""

from dataclasses import replace

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from drivers.frames.base import Kind
from station.core.metrology.verdict import Verdict
from station.core.pack import LabelState, PackDraft, PackId, PackRecord, Quality
from station.core.product import PackMode
from station.line.cycle import step
from station.line.cycle_state import Cycle, LineRules, load_threshold
from station.line.effects import Cue, IssueLabel, MarkLabel, Record, Sound, TakeBack
from station.line.events import (
    Disturbed,
    LabelFailed,
    Labelled,
    LabelLost,
    LabelOut,
    LinkDown,
    LinkUp,
    Recorded,
    RecordFailed,
    Reissued,
    Resumed,
    RunEnded,
    RunStarted,
    SetAside,
    Tick,
    Weighed,
)
from station.line.present import line_state
from station.line.state import Phase, Verb
from tests.station.line.scenario import MS, grams, make_moment, make_product, make_reading, make_run

RULES = LineRules(interval=grams(1), dwell_ns=300 * MS, stale_ns=500 * MS)


class Line:
    """A line with a store that always works and a printer that answers when told."""

    def __init__(self, run=None):
        self.cycle = Cycle(RULES)
        self.now_ms = 1_000
        self.effects = []
        self.records = []
        self.do(LinkUp("bench"))
        self.do(RunStarted(run or make_run()))

    def do(self, event):
        self.cycle, effects = step(self.cycle, event)
        self.effects.extend(effects)
        return effects

    def weigh(self, value, *, ms=100, **more):
        self.now_ms += ms
        return self.do(Weighed(make_reading(value, self.now_ms, **more)))

    def rest(self, value, ms=500):
        """A steady reading that lasts."""
        effects = ()
        for _ in range(ms // 100):
            effects = effects or self.weigh(value)
            if any(isinstance(one, Record) for one in effects):
                break
        return effects

    def record(self, effect):
        number = len(self.records) + 1
        run = self.cycle.run
        draft = PackDraft(
            run.id, effect.weighing, effect.verdict, effect.quality, effect.reason,
            run.blend_lot, run.lot_set.key, run.dating.use_by, run.dating.production_day,
            run.operator, make_moment(self.now_ms),
        )  # fmt: skip
        record = PackRecord(PackId("S", "A1", 1 << 60, number), f"u{number}", draft, number, "00")
        self.records.append(record)
        return self.do(Recorded(record))

    @property
    def verb(self):
        return line_state(self.cycle).verb

    @property
    def phase(self):
        return self.cycle.phase


def accepted(line, gross=258):
    """Bring a line to a labelled bag that still lies on the pan."""
    line.weigh(0)
    [effect] = line.rest(gross)
    line.record(effect)
    line.do(Labelled(line.records[-1].serial))
    return line


def test_a_good_bag_is_recorded_then_labelled_then_counted_as_applied_once_lifted():
    line = Line()
    line.weigh(0)
    assert line.verb is Verb.BAG_ON
    line.weigh(120, steady=False)
    assert line.verb is Verb.ADD
    [record] = line.rest(258)
    assert (record.verdict, record.quality) == (Verdict.IN_WINDOW, Quality.GOOD)
    assert record.weighing.net == grams(252)
    effects = line.record(record)
    serial = line.records[-1].serial
    assert effects == (
        Sound(Cue.ACCEPT),
        MarkLabel(serial, LabelState.SUBMITTED),
        IssueLabel(line.records[-1]),
    )
    assert line.verb is Verb.SEAL
    assert line.do(Labelled(serial)) == (MarkLabel(serial, LabelState.SPOOLED),)
    assert line.verb is Verb.LIFT_BAG
    assert line.weigh(0) == (MarkLabel(serial, LabelState.APPLIED),)
    assert line.verb is Verb.BAG_ON
    assert line.cycle.tally.good == 1
    assert line.cycle.tally.mean == grams(252)


@pytest.mark.parametrize(
    ("gross", "verb", "amount"),
    [
        (6, Verb.ADD, 252),  # the empty bag alone
        (255, Verb.ADD, 3),  # net 249, one below the floor
        (256, Verb.WAIT, None),  # net 250, exactly at the floor: good
        (268, Verb.WAIT, None),  # net 262, exactly at the upper limit: good
        (269, Verb.TAKE_OUT, 11),
    ],
)
def test_guidance_says_how_much_to_the_target(gross, verb, amount):
    line = Line()
    line.weigh(0)
    line.weigh(gross)
    state = line_state(line.cycle)
    assert state.verb is verb
    assert state.amount == (None if amount is None else grams(amount))


def test_a_bag_is_not_judged_before_the_reading_lasted():
    line = Line()
    line.weigh(0)
    assert line.weigh(258) == ()
    assert line.weigh(258, ms=200) == ()
    [record] = line.weigh(258, ms=100)
    assert isinstance(record, Record)


def test_an_unsteady_reading_starts_the_wait_anew():
    line = Line()
    line.weigh(0)
    line.weigh(258, ms=200)
    line.weigh(258, steady=False)
    line.weigh(258)
    assert line.weigh(258, ms=200) == ()
    assert line.phase is Phase.LOADED


def test_top_ups_are_steps_of_more_than_two_intervals():
    line = Line()
    line.weigh(0)
    for gross in (200, 230, 231, 257):
        line.weigh(gross)
    [record] = line.rest(257)
    assert record.weighing.top_ups == 2
    assert record.weighing.dwell_ms == 600


def test_a_bag_taken_off_before_it_was_accepted_leaves_nothing():
    line = Line()
    line.weigh(0)
    line.weigh(200)
    line.weigh(1)
    assert line.phase is Phase.CLEAR_PAN
    line.weigh(0)
    assert line.phase is Phase.READY
    assert not any(isinstance(one, Record) for one in line.effects)


def test_one_bag_left_on_the_pan_gives_one_record():
    line = accepted(Line())
    for _ in range(100):
        line.weigh(258)
    assert len(line.records) == 1
    assert line.verb is Verb.LIFT_BAG


def test_no_second_bag_without_zero_between():
    line = accepted(Line())
    line.weigh(3)
    line.rest(258)
    assert len([one for one in line.effects if isinstance(one, Record)]) == 1


@pytest.mark.parametrize("residue", [2, -20])
def test_a_zero_that_was_lost_closes_the_pan_again(residue):
    line = Line()
    line.weigh(0)
    line.weigh(residue, steady=False)
    assert line.phase is Phase.READY
    line.weigh(residue)
    assert line.verb is Verb.WIPE_PAN
    line.rest(258)
    assert not any(isinstance(one, Record) for one in line.effects)


def test_wipe_pan_when_only_a_residue_is_left():
    line = Line()
    line.weigh(2)
    assert line.verb is Verb.WIPE_PAN
    line.weigh(40)
    assert line.verb is Verb.EMPTY_PAN


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"unit": "kg"}, "the run is in g"),
        ({"kind": Kind.NET}, "clear its tare"),
        ({"over": True}, "over capacity"),
        ({"fault": "scale reports zero error"}, "zero error"),
    ],
)
def test_a_reading_that_cannot_be_believed_stops_the_bag(change, words):
    line = Line()
    line.weigh(0)
    line.weigh(258)
    line.weigh(258, **change)
    state = line_state(line.cycle)
    assert state.verb is Verb.NO_READING
    assert words in state.because
    line.rest(258)
    assert line.phase is Phase.CLEAR_PAN
    assert not any(isinstance(one, Record) for one in line.effects)


@pytest.mark.parametrize(
    "event", [LinkDown("the scale's line is gone"), Disturbed("bytes, but no frame")]
)
def test_a_lost_line_never_makes_a_pack_of_the_step_across_it(event):
    line = Line()
    line.weigh(0)
    line.weigh(100)
    line.do(event)
    assert line.verb is Verb.NO_READING
    line.do(LinkUp("bench"))
    line.rest(258)
    assert line.phase is Phase.CLEAR_PAN
    accepted(line)
    assert len(line.records) == 1


def test_a_silent_scale_is_noticed_by_time_alone():
    line = Line()
    line.weigh(0)
    line.weigh(200)
    line.do(Tick((line.now_ms + 500) * MS))
    assert line.phase is Phase.LOADED
    line.do(Tick((line.now_ms + 501) * MS))
    assert line.phase is Phase.CLEAR_PAN
    assert "silent" in line_state(line.cycle).because


def test_a_bag_the_store_cannot_take_gets_no_label():
    line = Line()
    line.weigh(0)
    line.rest(258)
    assert line.do(RecordFailed("the disk is full")) == (Sound(Cue.STOP),)
    state = line_state(line.cycle)
    assert state.verb is Verb.CALL_LEAD
    assert "disk is full" in state.because
    assert not any(isinstance(one, IssueLabel) for one in line.effects)
    line.do(Resumed("P01"))
    assert line.phase is Phase.CLEAR_PAN


def test_a_label_that_failed_is_in_doubt_and_stops_the_line():
    line = Line()
    line.weigh(0)
    [effect] = line.rest(258)
    line.record(effect)
    serial = line.records[-1].serial
    effects = line.do(LabelFailed(serial, "the folder is full"))
    assert effects[0] == MarkLabel(serial, LabelState.IN_DOUBT, "the folder is full")
    assert line.phase is Phase.STOPPED


def test_the_answer_for_another_label_changes_nothing():
    line = Line()
    line.weigh(0)
    [effect] = line.rest(258)
    line.record(effect)
    assert line.do(Labelled("A1-00-999999")) == ()
    assert line.phase is Phase.LABELLING


def test_check_mode_makes_a_reject_of_a_short_bag():
    line = Line(make_run(make_product(mode=PackMode.CHECK)))
    line.weigh(0)
    [record] = line.rest(237)  # net 231; T1 of 250 g is 241 g, T2 is 232 g
    assert (record.verdict, record.quality) == (Verdict.BELOW_T2, Quality.REJECT)
    assert line.record(record) == (Sound(Cue.WRONG_WAY),)
    assert line.verb is Verb.SET_ASIDE
    assert line.weigh(0) == ()
    assert (line.cycle.tally.good, line.cycle.tally.rejects) == (0, 1)


def test_a_bag_set_aside_on_the_pan_is_recorded_with_its_weight_and_reason():
    line = Line()
    line.weigh(0)
    line.weigh(240, steady=False)
    line.do(SetAside("foreign body"))
    [record] = line.rest(240)
    assert (record.quality, record.reason) == (Quality.REJECT, "foreign body")
    assert record.weighing.net == grams(234)


@pytest.mark.parametrize("lifted", [False, True])
def test_the_last_labelled_bag_can_be_set_aside_once(lifted):
    line = accepted(Line())
    if lifted:
        line.weigh(0)
    effects = line.do(SetAside("burst seal"))
    assert effects[0] == TakeBack(line.records[-1].serial, "burst seal")
    assert line.do(SetAside("burst seal")) == ()
    tally = line.cycle.tally
    assert (tally.good, tally.rejects, tally.net_micrograms) == (0, 1, 0)
    assert not any(isinstance(one, MarkLabel) for one in line.weigh(0))


def test_a_run_ends_only_with_an_empty_pan():
    line = Line()
    line.weigh(0)
    line.weigh(100)
    line.do(RunEnded())
    assert line.phase is Phase.LOADED
    line.weigh(0)
    line.do(RunEnded())
    assert line.verb is Verb.START_RUN


def test_no_bag_is_taken_beyond_the_order():
    line = accepted(Line(make_run(order_size=1)))
    line.weigh(0)
    assert line.verb is Verb.ORDER_DONE
    line.rest(258)
    assert line.phase is Phase.READY
    line.do(SetAside("burst seal"))
    line.weigh(0)
    assert line.verb is Verb.BAG_ON


def test_something_is_on_the_pan_from_half_a_bag_or_two_intervals_on():
    assert load_threshold(make_run(), RULES) == grams(3)
    light = replace(make_product().bag, tare=grams(2))
    assert load_threshold(make_run(make_product(bag=light)), RULES) == grams(2)


class AnyLine(RuleBasedStateMachine):
    """Random wire, store and printer: every label has its own earlier record, one per load."""

    def __init__(self):
        super().__init__()
        self.line = Line()
        self.zeros_before_record = []
        self.zeros = 0
        self.asked = []

    def _take(self, effects):
        for effect in effects:
            if isinstance(effect, Record):
                self.asked.append(effect)
                self.zeros_before_record.append(self.zeros)

    @rule(
        value=st.integers(-5, 400),
        steady=st.booleans(),
        ms=st.sampled_from([50, 100, 300, 400]),
        fault=st.sampled_from([None, None, None, None, "scale reports zero error"]),
    )
    def weigh(self, value, steady, ms, fault):
        if steady and value == 0 and fault is None:
            self.zeros += 1
        self._take(self.line.weigh(value, steady=steady, ms=ms, fault=fault))

    @rule(value=st.sampled_from([0, 6, 240, 256, 258, 268, 300]))
    def rest(self, value):
        for _ in range(5):
            self.zeros += value == 0
            self._take(self.line.weigh(value))

    @rule(event=st.sampled_from([LinkDown("gone"), LinkUp("bench"), Disturbed("noise")]))
    def wire(self, event):
        self._take(self.line.do(event))

    @rule(ms=st.integers(1, 2000))
    def time(self, ms):
        self.line.now_ms += ms
        self._take(self.line.do(Tick(self.line.now_ms * MS)))

    @rule(reason=st.sampled_from(["burst seal", "foreign body"]))
    def aside(self, reason):
        self._take(self.line.do(SetAside(reason)))

    @precondition(lambda self: self.line.phase is Phase.RECORDING)
    @rule(works=st.booleans())
    def store(self, works):
        self._take(
            self.line.record(self.asked[-1]) if works else self.line.do(RecordFailed("disk full"))
        )

    @precondition(lambda self: self.line.phase is Phase.LABELLING)
    @rule(works=st.booleans())
    def print(self, works):
        serial = self.line.records[-1].serial
        event = Labelled(serial) if works else LabelFailed(serial, "paper out")
        self._take(self.line.do(event))

    @precondition(lambda self: self.line.phase is Phase.STOPPED)
    @rule()
    def resume(self):
        self._take(self.line.do(Resumed("P01")))

    @invariant()
    def one_stored_pack_per_label(self):
        issued = [one.record.serial for one in self.line.effects if isinstance(one, IssueLabel)]
        good = [one.serial for one in self.line.records if one.draft.quality is Quality.GOOD]
        assert issued == good

    @invariant()
    def one_record_per_zero(self):
        assert len(set(self.zeros_before_record)) == len(self.zeros_before_record)

    @invariant()
    def good_means_in_the_window(self):
        for record in self.line.records:
            if record.draft.quality is Quality.GOOD:
                assert grams(250) <= record.draft.weighing.net <= grams(262)

    @invariant()
    def a_screen_can_always_be_shown(self):
        state = line_state(self.line.cycle)
        assert (state.amount is not None) == (state.verb in (Verb.ADD, Verb.TAKE_OUT))
        assert state.tally.good + state.tally.rejects == len(self.line.records)


AnyLine.TestCase.settings = settings(max_examples=60, stateful_step_count=60)
TestAnyLine = AnyLine.TestCase


def test_a_label_the_printer_takes_back_is_in_doubt_whatever_bag_is_on_the_pan():
    line = Line()
    line.weigh(0)
    [effect] = line.rest(258)
    line.record(effect)
    serial = line.records[-1].serial
    line.do(Labelled(serial))
    line.weigh(0)
    line.weigh(258)
    effects = line.do(LabelLost(serial, "the printer reports a fault"))
    assert effects[0] == MarkLabel(serial, LabelState.IN_DOUBT, "the printer reports a fault")
    assert line.phase is Phase.STOPPED
    assert serial in line.cycle.stop


def labelled_line(coming=True):
    """A line whose first bag has its label in the printer, not out yet."""
    line = Line()
    line.weigh(0)
    [effect] = line.rest(258)
    line.record(effect)
    serial = line.records[-1].serial
    line.do(Labelled(serial, coming=coming))
    return line, serial


def test_a_label_still_in_the_printer_is_not_applied_when_its_bag_is_lifted():
    line, serial = labelled_line()
    assert line.weigh(0) == ()
    assert line.phase is Phase.READY
    assert line.do(LabelOut(serial)) == (MarkLabel(serial, LabelState.APPLIED),)


def test_a_label_that_is_out_before_its_bag_is_lifted_is_applied_with_the_lift():
    line, serial = labelled_line()
    assert line.do(LabelOut(serial)) == ()
    assert line.weigh(0) == (MarkLabel(serial, LabelState.APPLIED),)


def test_no_good_bag_is_taken_before_the_label_before_it_is_out():
    line, serial = labelled_line()
    line.weigh(0)
    assert line.rest(258) == ()
    assert line.phase is Phase.LOADED
    line.do(LabelOut(serial))
    [effect] = line.rest(258)
    assert isinstance(effect, Record)


def test_a_label_that_never_came_out_is_in_doubt_when_its_run_ends():
    line, serial = labelled_line()
    line.weigh(0)
    [mark] = line.do(RunEnded())
    assert (mark.serial, mark.state) == (serial, LabelState.IN_DOUBT)
    assert line.do(LabelOut(serial)) == ()


def test_a_lost_label_is_not_awaited_any_more():
    line, serial = labelled_line()
    line.weigh(0)
    line.do(LabelLost(serial, "it was not out after 10 s"))
    assert line.phase is Phase.STOPPED
    line.do(Resumed("P01"))
    assert line.do(LabelOut(serial)) == ()
    line.weigh(0)
    [effect] = line.rest(258)
    assert isinstance(effect, Record)


def test_a_bag_set_aside_while_its_label_is_coming_keeps_its_void_label():
    line, serial = labelled_line()
    line.do(SetAside("burst"))
    assert line.weigh(0) == ()
    assert line.do(LabelOut(serial)) == ()
    assert line.cycle.coming == ""


def test_a_label_printed_again_no_longer_waits_for_its_first_print():
    line, serial = labelled_line()
    line.weigh(0)
    line.do(Reissued(serial))
    assert line.do(LabelOut(serial)) == ()
