from dataclasses import replace

import pytest

from station.core.label_life import (
    Fate,
    LabelledBag,
    OldLabel,
    Reprint,
    ReprintReason,
    ReprintRule,
    Resolve,
)
from station.core.pack import LabelState, Quality
from station.line.events import LabelFailed, Labelled
from station.line.ports import StoreFault
from station.line.state import Phase
from tests.station.line.runner_rig import Rig
from tests.station.line.scenario import grams, make_run


@pytest.fixture
def rig():
    rig = Rig(copies=ReprintRule(frozenset({"P01"}), alone=1))
    yield rig.open()
    rig.close()


def keep(rig, serial, label, copies=0, quality=Quality.GOOD, net=252):
    """Let the record hold a bag of the open run."""
    run = replace(make_run(), id="0193-run")
    rig.store.bags[serial] = LabelledBag(serial, run, grams(net), quality, label, copies)


def ask(rig, wish):
    said = len(rig.entered)
    (rig.runner.reprint if isinstance(wish, Reprint) else rig.runner.resolve)(wish)
    rig.wait(lambda: len(rig.entered) > said)
    return rig.entered[-1]


def copy_of(serial, who="P02", old=OldLabel.DESTROYED):
    return Reprint(serial, ReprintReason.TORN, old, who)


def applied_bag(rig):
    """One good bag from load to lift."""
    serial = rig.good_bag()
    rig.runner.post(Labelled(serial))
    rig.settle()
    rig.weigh(0)
    rig.log.clear()
    return serial


def test_a_copy_is_on_record_before_it_is_at_the_printer(rig):
    serial = applied_bag(rig)
    keep(rig, serial, LabelState.APPLIED)
    answer = ask(rig, copy_of(serial))
    assert (answer.recorded, answer.uids) == (True, (serial,))
    assert "marked R1" in answer.words
    assert rig.log == [("record", "0193-run", "P02"), ("reissue", serial, 1)]
    rig.runner.post(Labelled(serial))
    rig.settle()
    assert rig.log[-1] == ("mark_label", serial, "spooled")
    assert rig.state.phase is Phase.READY


def test_a_copy_that_is_not_recorded_is_not_printed(rig):
    serial = applied_bag(rig)
    keep(rig, serial, LabelState.APPLIED)
    rig.store.faults["record"] = StoreFault("the disk is full")
    assert ask(rig, copy_of(serial)).words == "the disk is full"
    assert rig.log == []
    assert rig.state.phase is Phase.READY


def test_a_second_copy_wants_the_lead(rig):
    serial = applied_bag(rig)
    keep(rig, serial, LabelState.APPLIED, copies=1)
    assert "the lead signs" in ask(rig, copy_of(serial)).words
    assert ask(rig, copy_of(serial, "P01")).recorded
    assert rig.log[-1] == ("reissue", serial, 2)


def test_a_copy_that_fails_is_in_doubt_and_does_not_stop_the_line(rig):
    serial = applied_bag(rig)
    keep(rig, serial, LabelState.APPLIED)
    ask(rig, copy_of(serial))
    rig.runner.post(LabelFailed(serial, "out of paper"))
    rig.settle()
    assert rig.log[-1] == ("mark_label", serial, "in doubt", "out of paper")
    assert rig.state.phase is Phase.READY
    rig.runner.post(Labelled(serial))  # nobody waits for it any more
    rig.settle()
    assert rig.log[-1] == ("mark_label", serial, "in doubt", "out of paper")


def test_a_bag_lifted_while_its_copy_is_at_the_printer_is_not_taken_for_labelled(rig):
    serial = rig.good_bag()
    rig.runner.post(Labelled(serial))
    rig.settle()
    keep(rig, serial, LabelState.SPOOLED)
    ask(rig, copy_of(serial))
    rig.log.clear()
    rig.weigh(0)
    assert rig.log == []
    rig.runner.post(Labelled(serial))
    rig.settle()
    assert rig.log == [("mark_label", serial, "spooled")]


def test_an_unknown_serial_is_refused_in_words(rig):
    answer = ask(rig, copy_of("A1-00-000099"))
    assert (answer.recorded, answer.words) == (
        False,
        "bag A1-00-000099 is not in the record: check the serial",
    )


def test_a_label_seen_on_its_bag_is_applied_and_the_bag_counts(rig):
    serial = rig.good_bag()
    rig.runner.post(LabelFailed(serial, "jammed"))
    rig.settle()
    keep(rig, serial, LabelState.IN_DOUBT)
    rig.log.clear()
    assert ask(rig, Resolve(serial, Fate.APPLIED, "P02")).recorded
    assert rig.log == [("mark_label", serial, "applied", "seen on its bag")]
    assert rig.state.tally.good == 1


@pytest.mark.parametrize(
    ("fate", "words"),
    [(Fate.DESTROYED, "label destroyed"), (Fate.NOT_PRINTED, "label never printed")],
)
def test_a_bag_without_a_label_leaves_the_count(rig, fate, words):
    serial = rig.good_bag()
    rig.runner.post(LabelFailed(serial, "jammed"))
    rig.settle()
    keep(rig, serial, LabelState.IN_DOUBT)
    rig.log.clear()
    assert ask(rig, Resolve(serial, fate, "P02")).recorded
    assert rig.log == [("take_back", serial, words, "P02")]
    rig.settle()
    assert (rig.state.tally.good, rig.state.tally.rejects) == (0, 1)
    assert rig.state.tally.net_micrograms == 0


def test_a_bag_of_another_run_does_not_touch_the_open_runs_figures(rig):
    serial = applied_bag(rig)
    keep(rig, serial, LabelState.IN_DOUBT)
    other = replace(rig.store.bags[serial].run, id="0100-run")
    rig.store.bags[serial] = replace(rig.store.bags[serial], run=other)
    assert ask(rig, Resolve(serial, Fate.DESTROYED, "P02")).recorded
    rig.settle()
    assert rig.state.tally.good == 1


@pytest.mark.parametrize("quality", [Quality.HELD, Quality.RELEASED])
def test_a_held_bag_leaves_the_count_too_when_its_label_is_void(rig, quality):
    """Else a release would let go a bag without a label, which nobody could decide about."""
    serial = applied_bag(rig)
    keep(rig, serial, LabelState.IN_DOUBT, quality=quality)
    assert ask(rig, Resolve(serial, Fate.DESTROYED, "P02")).recorded
    assert rig.log == [("take_back", serial, "label destroyed", "P02")]
    rig.settle()
    assert (rig.state.tally.good, rig.state.tally.rejects) == (0, 1)


def test_the_label_of_a_bag_that_left_the_count_is_void_and_nothing_else_changes(rig):
    serial = applied_bag(rig)
    keep(rig, serial, LabelState.IN_DOUBT, quality=Quality.DUMPED)
    assert ask(rig, Resolve(serial, Fate.DESTROYED, "P02")).recorded
    assert rig.log == [("mark_label", serial, "voided", "label destroyed")]


def test_what_nobody_doubts_needs_no_answer(rig):
    serial = applied_bag(rig)
    keep(rig, serial, LabelState.APPLIED)
    assert "nothing to answer" in ask(rig, Resolve(serial, Fate.APPLIED, "P02")).words
    keep(rig, serial, LabelState.IN_DOUBT)
    assert "id of who looked" in ask(rig, Resolve(serial, Fate.APPLIED, "")).words


@pytest.mark.expects_log("could not handle Reprint")
def test_a_fault_of_the_desk_is_answered_and_stops_the_line(rig):
    serial = applied_bag(rig)
    keep(rig, serial, LabelState.APPLIED)
    rig.desk.reissue = None
    answer = ask(rig, copy_of(serial))
    assert not answer.recorded
    assert rig.state.phase is Phase.STOPPED
