"""When a check of the scale is due, and what a failed one closes."""

from datetime import timedelta

import pytest

from station.core.checks.scale import Trigger
from station.core.checks.suspect import Decision, decision_facts, window_fact
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.metrology.scale_check import CheckSchedule, CheckStage
from station.core.pack import PackId, PackRecord
from station.line.scale_duty import ScaleDuty
from tests.end_to_end.checked_line import NINE, SCALE, a_bag, a_check, moment
from tests.station.core.checks.test_facts_of_checks import a_window
from tests.station.line.scenario import make_run

RUN = make_run(order_size=2)


def noted(fact, at=NINE):
    return FactRecord(fact, moment(at), "P01", 1)


def after(minutes):
    return NINE + timedelta(minutes=minutes)


def packed(duty, at):
    duty.packed(PackRecord(PackId("S", "A1", 1, 1), "u", a_bag(RUN, at, 252), 1, "00"))


@pytest.fixture
def duty():
    one = ScaleDuty(SCALE, CheckSchedule())
    one.opened(RUN, NINE)
    return one


def test_a_run_begins_with_a_check(duty):
    assert "begins with a check" in duty.closing(NINE)
    assert duty.trigger is Trigger.START
    assert duty.due(NINE) is None
    duty.noted(noted(a_check(0, NINE)))
    assert duty.closing(NINE) == ""
    duty.opened(RUN, after(1))
    assert "begins with a check" in duty.closing(after(1))


@pytest.mark.parametrize(("minutes", "closed"), [(0, False), (60, False), (70, False), (71, True)])
def test_an_hourly_check_has_its_grace(duty, minutes, closed):
    duty.noted(noted(a_check(0, NINE)))
    assert ("overdue" in duty.closing(after(minutes))) is closed
    assert duty.due(after(minutes)).at == after(60)
    assert duty.trigger is Trigger.HOURLY


def test_a_clock_set_back_closes(duty):
    duty.noted(noted(a_check(0, NINE)))
    assert duty.closing(after(-1))


def test_events_ask_for_a_check_whatever_the_hour(duty):
    duty.noted(noted(a_check(0, NINE)))
    duty.disturbed("its line was lost")
    assert "after its line was lost" in duty.closing(after(1))
    assert duty.trigger is Trigger.EVENT
    duty.noted(noted(a_check(0, after(1)), after(1)))
    assert duty.closing(after(1)) == ""
    duty.noted(noted(Fact(EntryKind.PAUSE, "p", "line", "wash-down"), after(2)))
    assert "after a pause" in duty.closing(after(2))


def test_the_check_at_the_end_is_asked_for_and_does_not_close(duty):
    duty.noted(noted(a_check(0, NINE)))
    packed(duty, after(1))
    assert duty.trigger is Trigger.HOURLY
    packed(duty, after(2))
    assert duty.trigger is Trigger.END
    assert duty.due(after(2)).words == "scale check at the end of the run"
    assert duty.closing(after(2)) == ""
    duty.noted(noted(a_check(0, after(3)), after(3)))
    assert duty.trigger is Trigger.HOURLY


def test_a_failed_check_closes_until_as_left_and_decision(duty):
    duty.noted(noted(a_check(0, NINE)))
    duty.noted(noted(a_check(4, after(5)), after(5)))
    window = a_window()
    duty.noted(noted(window_fact(window), after(5)))
    assert duty.stage is CheckStage.AS_LEFT
    assert "adjust it" in duty.closing(after(6))
    duty.noted(noted(a_check(0, after(7), CheckStage.AS_LEFT), after(7)))
    assert duty.stage is CheckStage.AS_FOUND
    assert "3 suspect bags" in duty.closing(after(7))
    for fact in decision_facts(window, Decision.HOLD_STAYS, "x", ["a", "b", "c"]):
        duty.noted(noted(fact, after(8)))
    assert duty.closing(after(8)) == ""


def test_another_scale_s_check_opens_nothing(duty):
    other = a_check(0, NINE)
    duty.noted(noted(Fact(other.kind, "x", "another scale", "good", details=other.details)))
    assert duty.closing(NINE)


def test_after_a_restart_only_what_is_still_open_closes():
    past = (noted(a_check(0, NINE)), noted(a_check(4, after(5)), after(5)))
    assert ScaleDuty(SCALE, CheckSchedule(), past).failed
    past = (*past, noted(a_check(0, after(6), CheckStage.AS_LEFT), after(6)))
    duty = ScaleDuty(SCALE, CheckSchedule(), past)
    assert not duty.failed
    assert "begins with a check" in duty.closing(after(7))
