"""The line's thread: order of effects, faults in words, and never a dead thread."""

import threading
from dataclasses import replace

import pytest

from station.core.product import PackMode
from station.line.effects import Cue
from station.line.events import LabelFailed, Labelled, LinkDown, LinkUp, Weighed
from station.line.ports import LabelRefused, StoreFault
from station.line.state import Phase, RunAnswer, Verb
from tests.station.line.runner_rig import CHOICE, Rig
from tests.station.line.scenario import MS, make_product, make_reading

STORE_LOG = pytest.mark.expects_log("the store could not keep")
BUG_LOG = pytest.mark.expects_log("the line could not handle", "nobody could be told")
SERIAL = "A1-00-000001"


@pytest.fixture
def new_rig():
    rigs = []

    def make(**more):
        rigs.append(Rig(**more))
        return rigs[-1]

    yield make
    for rig in rigs:
        rig.close()


@pytest.fixture
def rig(new_rig):
    return new_rig().open()


# --- order ------------------------------------------------------------------------------------


def test_a_bag_is_durable_before_its_label_and_every_step_is_kept_in_order(rig):
    rig.good_bag()
    rig.runner.post(Labelled(SERIAL))
    rig.weigh(258)
    assert rig.state.verb is Verb.LIFT_BAG
    rig.weigh(0)
    assert rig.log == [
        ("add_pack", "252 g"),
        ("mark_label", SERIAL, "submitted"),
        ("issue", SERIAL),
        ("mark_label", SERIAL, "spooled"),
        ("mark_label", SERIAL, "applied"),
    ]
    assert rig.cues == [Cue.ACCEPT]


def test_the_line_shows_the_bag_as_good_only_once_it_is_durable(rig):
    rig.good_bag()
    tallies = [(state.phase, state.tally.good) for state in rig.states]
    assert (Phase.RECORDING, 0) in tallies
    assert tallies.index((Phase.RECORDING, 0)) < tallies.index((Phase.LABELLING, 1))
    assert all(good == 0 for phase, good in tallies if phase is Phase.RECORDING)


def test_the_line_does_not_wait_for_the_printer(rig):
    rig.good_bag()
    rig.weigh(259)
    assert (rig.state.phase, rig.state.shown.digits) == (Phase.LABELLING, "259")


def test_a_draft_holds_what_the_run_froze(rig):
    rig.good_bag()
    [draft], run = rig.store.drafts, rig.state.run
    assert (draft.run, draft.blend_lot, draft.lot_set) == (run.id, "A2632901", run.lot_set.key)
    assert (draft.use_by, draft.production_day) == (run.dating.use_by, run.dating.production_day)
    assert (draft.operator, draft.judged_at.zone) == ("P02", "Europe/Dublin")


def test_a_reject_gets_no_label(new_rig):
    rig = new_rig(product=make_product(mode=PackMode.CHECK)).open()
    rig.rest(240)
    assert rig.names() == ["add_pack"]
    assert (rig.state.verb, rig.cues) == (Verb.SET_ASIDE, [Cue.WRONG_WAY])


def test_a_bag_set_aside_after_its_label_is_taken_back_by_the_person_on_the_scale(rig):
    rig.good_bag()
    rig.runner.post(Labelled(SERIAL))
    rig.runner.set_aside("burst seal")
    rig.settle()
    assert rig.log[-1] == ("take_back", SERIAL, "burst seal", "P02")
    assert rig.state.tally.rejects == 1


# --- faults of the store ----------------------------------------------------------------------


def test_a_bag_that_was_not_recorded_has_no_label(rig):
    rig.store.faults["add_pack"] = StoreFault("the disk is full: make room")
    rig.good_bag()
    assert (rig.state.phase, rig.state.verb) == (Phase.STOPPED, Verb.CALL_LEAD)
    assert rig.state.because == (
        "this bag is not recorded and has no label: the disk is full: make room"
    )
    assert "issue" not in rig.names()
    assert (rig.cues, rig.state.tally.good) == ([Cue.STOP], 0)


def test_after_a_stop_a_person_goes_on_and_the_pan_must_be_empty_first(rig):
    rig.store.faults["add_pack"] = StoreFault("the disk is full")
    rig.good_bag()
    rig.store.faults.clear()
    rig.runner.resume("P01")
    rig.rest(258)
    assert (rig.state.phase, rig.store.drafts) == (Phase.CLEAR_PAN, [])
    assert rig.log[0][2] == "P01"
    rig.weigh(0)
    rig.good_bag()
    assert rig.names()[-1] == "issue"


@STORE_LOG
def test_no_label_is_printed_whose_start_could_not_be_kept(rig):
    rig.store.faults["mark_label"] = StoreFault("the disk is full")
    rig.good_bag()
    assert rig.names() == ["add_pack"]
    assert rig.state.phase is Phase.STOPPED
    assert rig.state.because == f"label {SERIAL} is in doubt: the disk is full"
    assert rig.cues == [Cue.ACCEPT, Cue.STOP]


@STORE_LOG
@pytest.mark.parametrize(
    ("call", "happens"),
    [
        ("note", lambda rig: rig.runner.post(LinkDown("the cable is out"))),
        ("take_back", lambda rig: rig.runner.set_aside("burst seal")),
        ("mark_label", lambda rig: rig.weigh(0)),
    ],
)
def test_what_cannot_be_kept_stops_the_line_in_words(rig, call, happens):
    rig.good_bag()
    rig.runner.post(Labelled(SERIAL))
    rig.settle()
    rig.store.faults[call] = StoreFault("the disk is full: make room")
    happens(rig)
    rig.settle()
    assert (rig.state.verb, rig.state.because) == (Verb.CALL_LEAD, "the disk is full: make room")
    assert rig.cues[-1] is Cue.STOP


@STORE_LOG
def test_the_first_reason_of_a_stop_stays(rig):
    rig.good_bag()
    rig.runner.post(LabelFailed(SERIAL, "paper out"))
    rig.settle()
    rig.store.faults["note"] = StoreFault("the disk is full")
    rig.runner.post(LinkDown("the cable is out"))
    rig.settle()
    assert rig.state.because == f"label {SERIAL} is in doubt: paper out"
    rig.runner.resume("P01")  # its note cannot be kept either, and now that is the reason
    rig.settle()
    assert (rig.state.phase, rig.state.because) == (Phase.STOPPED, "the disk is full")


@STORE_LOG
def test_a_store_that_fails_before_any_run_is_heard_and_refuses_the_run(new_rig):
    rig = new_rig()
    rig.store.faults["note"] = rig.store.faults["start_run"] = StoreFault("the disk is full")
    rig.runner.start()
    rig.runner.post(LinkUp("bench"))
    rig.runner.start_run(CHOICE)
    rig.wait(lambda: rig.answers)
    assert rig.answers == [RunAnswer(False, "the disk is full")]
    assert (rig.state.phase, rig.cues) == (Phase.CLOSED, [Cue.STOP])


# --- faults nobody foresaw --------------------------------------------------------------------


@BUG_LOG
@pytest.mark.parametrize("call", ["add_pack", "mark_label"])
def test_a_fault_nobody_foresaw_stops_the_line_in_words(rig, call):
    rig.store.faults[call] = ZeroDivisionError("division by zero")
    rig.good_bag()
    assert (rig.state.verb, rig.cues[-1]) == (Verb.CALL_LEAD, Cue.STOP)
    assert "the station has a fault (ZeroDivisionError: division by zero)" in rig.state.because
    assert rig.state.because.endswith("call maintenance")
    rig.store.faults.clear()
    rig.runner.resume("P01")
    rig.weigh(0)
    assert rig.state.phase is Phase.READY


@BUG_LOG
def test_a_desk_with_a_fault_leaves_its_label_in_doubt(rig):
    rig.desk.fault = RuntimeError("no such printer")
    rig.good_bag()
    assert rig.state.because.startswith(f"label {SERIAL} is in doubt: the station has a fault")


@BUG_LOG
@pytest.mark.parametrize("listener", ["state", "sound", "timing"])
def test_a_listener_with_a_fault_stops_the_line_but_not_its_thread(rig, listener):
    rig.deaf.add(listener)
    rig.clock.ms += 100
    for value in (258, 258, 258, 258, 258):
        rig.clock.ms += 100
        rig.runner.post(Weighed(make_reading(value, rig.clock.ms)))
        rig.settle()
    rig.runner.post(Labelled(SERIAL))
    rig.settle()
    assert rig.runner._thread.is_alive()
    rig.deaf.clear()
    rig.settle()
    assert rig.runner._cycle.phase is Phase.STOPPED
    rig.runner.resume("P01")
    rig.weigh(0)
    assert rig.state.phase is Phase.READY


@BUG_LOG
def test_a_clock_with_a_fault_does_not_end_the_thread(rig, monkeypatch):
    def broken():
        raise OSError("no clock")

    with monkeypatch.context() as patch:
        patch.setattr(rig.clock, "monotonic_ns", broken)
        rig.wait(lambda: rig.state.phase is Phase.STOPPED)  # a tick of its own asked the clock
    assert "OSError: no clock" in rig.state.because
    rig.runner.resume("P01")
    rig.weigh(0)
    assert rig.state.phase is Phase.READY


# --- time -------------------------------------------------------------------------------------


def test_a_silent_scale_is_noticed_without_any_event(rig):
    rig.clock.ms += 501
    rig.wait(lambda: rig.state.verb is Verb.NO_READING)
    assert "silent" in rig.state.because


def test_a_reading_that_waited_too_long_does_not_exist(rig):
    rig.rest(258, readings=3)
    rig.weigh(258, ms=200, age_ms=501)
    rig.weigh(258, age_ms=600)
    assert (rig.state.verb, rig.state.phase) == (Verb.NO_READING, Phase.CLEAR_PAN)
    assert "behind the scale" in rig.state.because
    rig.rest(258)
    assert rig.names() == ["note", "note"]  # the doubt once, and that it is over
    rig.weigh(0)
    rig.good_bag()
    assert rig.names().count("add_pack") == 1


def test_a_flood_of_readings_does_not_fill_memory(new_rig):
    rig = new_rig()
    for number in range(5_000):
        rig.runner.post(Weighed(make_reading("0", 1_000 + number)))
    rig.runner.post(LinkUp("bench"))  # what is no reading is never dropped
    assert 2_990 <= rig.runner.dropped <= 3_000
    assert rig.runner._queue.qsize() == 5_001 - rig.runner.dropped
    rig.runner.start()
    rig.settle()
    assert rig.state.port == "bench"


def test_no_bag_is_packed_after_the_runs_use_by(rig):
    rig.clock.days = 6  # the use-by itself
    rig.good_bag()
    rig.runner.post(Labelled(SERIAL))
    rig.weigh(0)
    assert rig.names().count("add_pack") == 1
    rig.clock.days = 7
    rig.good_bag()
    assert rig.names().count("add_pack") == 1
    assert rig.state.because == (
        "this bag is not recorded and has no label: its use-by 2026-12-01 is past: end the run"
    )


def test_timings_come_from_the_judged_frame_and_the_steady_count(rig):
    rig.good_bag()
    judged = rig.store.drafts[0].judged_at.monotonic_ns // MS * MS
    rig.clock.ms += 40
    rig.runner.post(Labelled(SERIAL))
    rig.settle()
    [timing] = rig.timings
    assert (timing.serial, timing.stable) == (SERIAL, judged)
    assert timing.stable < timing.durable < timing.labelled
    assert timing.labelled // MS == rig.clock.ms


def test_neither_a_reject_nor_a_failed_label_has_a_timing(rig):
    rig.good_bag()
    rig.runner.post(LabelFailed(SERIAL, "paper out"))
    rig.runner.post(Labelled(SERIAL))
    rig.settle()
    assert (rig.timings, rig.runner._waiting) == ([], {})


# --- labels that answer late ------------------------------------------------------------------


def test_a_failed_label_is_in_doubt_and_stops_the_line(rig):
    rig.good_bag()
    rig.runner.post(LabelFailed(SERIAL, "paper out"))
    rig.settle()
    assert rig.log[-1] == ("mark_label", SERIAL, "in doubt", "paper out")
    assert rig.state.because == f"label {SERIAL} is in doubt: paper out"
    assert rig.cues[-1] is Cue.STOP


@STORE_LOG
@pytest.mark.parametrize(
    ("answer", "kept"),
    [(Labelled(SERIAL), ("spooled",)), (LabelFailed(SERIAL, "jam"), ("in doubt", "jam"))],
)
def test_the_printers_answer_is_kept_though_the_line_stopped_meanwhile(rig, answer, kept):
    rig.good_bag()
    rig.store.faults["note"] = StoreFault("the disk is full")
    rig.runner.post(LinkDown("the cable is out"))
    rig.settle()
    rig.store.faults.clear()
    rig.runner.post(answer)
    rig.settle()
    assert rig.log[-1] == ("mark_label", SERIAL, *kept)
    assert rig.state.phase is Phase.STOPPED


@STORE_LOG
def test_a_label_that_fails_after_its_run_ended_is_kept_as_in_doubt(rig):
    rig.good_bag()
    rig.store.faults["note"] = StoreFault("the disk is full")
    rig.runner.post(LinkDown("the cable is out"))
    rig.settle()
    rig.store.faults.clear()
    rig.runner.end_run("P01")
    rig.wait(lambda: rig.answers)
    rig.runner.post(LabelFailed(SERIAL, "jam"))
    rig.wait(lambda: rig.log[-1] == ("mark_label", SERIAL, "in doubt", "jam"))
    assert rig.state.phase is Phase.CLOSED


# --- runs -------------------------------------------------------------------------------------


def started(rig, choice=CHOICE):
    rig.runner.start()
    rig.runner.start_run(choice)
    rig.wait(lambda: rig.answers)
    return rig.answers.pop()


def test_a_run_is_rehearsed_then_kept_then_open(new_rig):
    rig = new_rig()
    assert started(rig) == RunAnswer(True, "run of Harbour mix open, blend lot A2632901")
    assert [call for call in rig.names() if call != "note"] == [
        "next_blend_number", "rehearse", "start_run"
    ]  # fmt: skip


def test_a_label_that_cannot_be_drawn_refuses_the_run(new_rig):
    rig = new_rig()
    rig.desk.refusal = LabelRefused("the name does not fit: shorten it")
    assert started(rig) == RunAnswer(False, "the name does not fit: shorten it")
    assert "start_run" not in rig.names()
    assert rig.state.run is None


def test_a_choice_that_cannot_be_packed_is_answered_in_words(new_rig):
    rig = new_rig()
    answer = started(rig, replace(CHOICE, lots=("ROM-1",)))
    assert answer == RunAnswer(False, "product HARBOUR-250 has no lot yet for: CAR")


@pytest.mark.parametrize("call", ["next_blend_number", "start_run"])
def test_a_run_that_cannot_be_kept_is_not_open(new_rig, call):
    rig = new_rig()
    rig.store.faults[call] = StoreFault("the disk is full")
    assert started(rig) == RunAnswer(False, "the disk is full")
    assert rig.state.phase is Phase.CLOSED


@BUG_LOG
def test_a_fault_nobody_foresaw_still_gives_an_answer(new_rig):
    rig = new_rig()
    rig.store.faults["start_run"] = KeyError("seq")
    answer = started(rig)
    assert not answer.started
    assert "KeyError" in answer.words
    rig.store.faults.clear()
    rig.runner.start_run(CHOICE)
    rig.wait(lambda: rig.answers)
    assert rig.answers.pop().started


def test_a_second_run_waits_for_the_end_of_the_first(rig):
    rig.runner.start_run(CHOICE)
    rig.wait(lambda: rig.answers)
    assert rig.answers == [
        RunAnswer(False, "a run is open: end it before the next one starts")
    ]  # fmt: skip
    assert rig.log == []


def ended(rig):
    rig.runner.end_run("P01")
    rig.wait(lambda: rig.answers)
    return rig.answers.pop()


def test_a_run_ends_with_an_empty_pan(rig):
    assert ended(rig) == RunAnswer(True, "run of Harbour mix ended")
    assert rig.log == [("end_run", "0193-run", "P01")]
    assert (rig.state.phase, rig.state.run) == (Phase.CLOSED, None)
    assert ended(rig) == RunAnswer(False, "no run is open")


def test_a_run_does_not_end_under_a_bag(rig):
    words = "a bag is on the pan: finish it and lift it, then end the run"
    rig.weigh(100)
    assert ended(rig) == RunAnswer(False, words)
    rig.good_bag()
    assert ended(rig) == RunAnswer(False, words)
    assert "end_run" not in rig.names()


def test_a_run_ends_under_a_labelled_bag_where_the_scale_is_silent(rig):
    rig.runner.post(Labelled(rig.good_bag()))
    rig.runner.post(LinkDown("the cable is out"))
    rig.settle()
    assert ended(rig).started
    assert rig.names()[-2:] == ["end_run", "mark_label"]
    assert rig.state.phase is Phase.CLOSED


def test_a_stopped_run_can_be_ended(rig):
    rig.good_bag()
    rig.runner.post(LabelFailed(SERIAL, "paper out"))
    rig.settle()
    assert ended(rig).started
    assert rig.state.phase is Phase.CLOSED


def test_an_end_that_cannot_be_kept_leaves_the_run_open(rig):
    rig.store.faults["end_run"] = StoreFault("the disk is full")
    assert ended(rig) == RunAnswer(False, "the disk is full")
    assert rig.state.run is not None


# --- the thread -------------------------------------------------------------------------------


def test_stop_finishes_what_is_on_the_queue_and_joins(rig):
    for number in range(50):
        rig.runner.post(LinkUp(f"port {number}"))
    rig.runner.stop()
    assert rig.names() == ["note"] * 50
    assert "line" not in [thread.name for thread in threading.enumerate()]


def test_a_line_that_cannot_stop_says_so(rig):
    rig.desk.gate.clear()
    rig.rest(258, readings=3)
    rig.clock.ms += 100
    rig.runner.post(Weighed(make_reading("258", rig.clock.ms)))
    rig.wait(lambda: rig.names()[-1:] == ["mark_label"])  # and now it waits at the desk
    with pytest.raises(TimeoutError, match="did not stop in time"):
        rig.runner.stop(timeout_s=0.05)
    rig.desk.gate.set()
    rig.runner.stop()
    assert not rig.runner._thread.is_alive()


def test_of_readings_that_wait_the_newest_is_shown(rig):
    rig.weigh(0)
    with rig._said:  # nobody takes in a state meanwhile
        rig.clock.ms += 100
        for n in range(60):
            rig.runner.post(Weighed(make_reading(100 + n, rig.clock.ms, steady=False)))
        shown = len(rig.states)
    rig.wait(lambda: rig.state.shown.digits == "159")
    assert len(rig.states) - shown < 20
