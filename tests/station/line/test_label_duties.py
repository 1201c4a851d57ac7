"""What about labels closes acceptance, and what opens it again; the same after a start."""

from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest

from station.core.checks.first_off import FirstOff, first_off_fact
from station.core.checks.rolls import RollCount, accounts, put_in_fact, taken_out_fact
from station.core.checks.scan_back import ScanBack, ScanTrigger, cleared_fact, scan_fact
from station.core.facts import FactRecord
from station.core.pack import Moment, PackId, PackRecord
from station.line.label_duties import DoubtDuty, FirstOffDuty, RollDuty
from station.line.scan_duty import ScanDuty
from station.line.state import Phase, Verb
from tests.end_to_end.checked_line import a_bag
from tests.station.line.runner_rig import Rig
from tests.station.line.scenario import make_run

RUN = make_run(order_size=3)
NINE = datetime(2026, 11, 25, 9, tzinfo=UTC)
DUBLIN = ZoneInfo("Europe/Dublin")
FOUR = time(4)
HOUR, TEN = timedelta(hours=1), timedelta(minutes=10)


def noted(fact, at=NINE):
    return FactRecord(fact, Moment(at, 0, "Europe/Dublin", 1), "L01", 1)


def after(minutes):
    return NINE + timedelta(minutes=minutes)


def pack(duty, number=1, at=NINE):
    bag = a_bag(RUN, at, 252)
    duty.packed(PackRecord(PackId("S", "A1", 1, number), f"u{number}", bag, number, "00"))


def roll_in(uid="r1", roll="LR-1"):
    return noted(put_in_fact(roll, 100, uid))


def roll_out(put_in):
    (account,) = accounts([put_in], [0])
    return noted(taken_out_fact(account, RollCount(100, 0, 0), f"out-{put_in.fact.uid}"))


def approval(run=RUN, at=NINE, refusal="", version=None, uid="f1"):
    version = run.product.version if version is None else version
    said = FirstOff(run.id, run.product.code, version, "0" * 64, 1, "L01", "Q01", refusal)
    return noted(first_off_fact(said, uid), at)


def scan(equal=True, at=NINE, uid="s1", run=RUN):
    made = ScanBack("A1-00-000001", "]C1a", ("]C1a" if equal else "]C1b",), ScanTrigger.FIRST)
    return noted(scan_fact(made, uid, run.id), at)


# --- doubts -------------------------------------------------------------------------------------


def test_doubts_of_the_start_close_until_each_is_answered_and_later_ones_do_not():
    doubts = ["A1-00-000001", "A1-00-000002"]
    duty = DoubtDuty(lambda: doubts)
    duty.opened(RUN, NINE)
    assert "2 labels in doubt, first A1-00-000001" in duty.closing(NINE)
    doubts.remove("A1-00-000001")
    assert "1 labels in doubt, first A1-00-000002" in duty.closing(NINE)
    doubts[:] = ["A1-00-000009"]
    assert duty.closing(NINE) == ""
    duty.opened(RUN, NINE)
    assert "A1-00-000009" in duty.closing(NINE)


# --- rolls --------------------------------------------------------------------------------------


def test_no_bag_without_a_roll():
    duty = RollDuty()
    assert "no label roll is in" in duty.closing(NINE)
    put_in = roll_in()
    duty.noted(put_in)
    assert (duty.closing(NINE), duty.inside) == ("", "LR-1")
    duty.noted(roll_out(put_in))
    assert duty.closing(NINE)


def test_a_roll_stays_in_over_a_start_and_the_same_roll_may_come_again():
    first = roll_in()
    assert RollDuty([first]).inside == "LR-1"
    again = RollDuty([first, roll_out(first), roll_in("r2")])
    assert (again.inside, again.closing(NINE)) == ("LR-1", "")


def test_labels_left_are_those_that_good_bags_did_not_take():
    assert RollDuty().left is None
    first = roll_in()
    duty = RollDuty([first], used=98)
    pack(duty, 1)
    assert duty.left == 1
    pack(duty, 2)
    pack(duty, 3)
    assert duty.left == 0  # copies and tickets take labels too, so it is a forecast
    duty.noted(roll_in("r2"))
    assert duty.left == 100
    duty.noted(roll_out(first))
    assert duty.left is None


# --- first-offs ---------------------------------------------------------------------------------


@pytest.fixture
def first_off():
    duty = FirstOffDuty(DUBLIN, FOUR, each_roll=True)
    duty.opened(RUN, NINE)
    return duty


def test_a_run_begins_with_a_first_off_of_its_own_label(first_off):
    assert first_off.closing(NINE).startswith("the run begins with a first-off")
    first_off.noted(approval(make_run_named("another")))
    first_off.noted(approval(version=RUN.product.version + 1))
    assert first_off.closing(NINE)
    first_off.noted(approval())
    assert first_off.closing(NINE) == ""
    first_off.opened(RUN, NINE)
    assert first_off.closing(NINE)


def make_run_named(uid):
    from dataclasses import replace

    return replace(RUN, id=uid)


def test_a_run_ends_with_its_production_day(first_off):
    """Dublin is at UTC+0 in November: the day changes at the cut-off there, not at midnight."""
    first_off.noted(approval())
    midnight = datetime.combine(RUN.dating.production_day + timedelta(days=1), time(), UTC)
    before = midnight + timedelta(hours=3, minutes=59)
    assert first_off.closing(before) == ""
    first_off.noted(approval(at=before, uid="f2"))
    cut_off = before + timedelta(minutes=1)
    assert "end the run, start it anew" in first_off.closing(cut_off)
    first_off.noted(approval(at=cut_off, uid="f3"))
    assert first_off.closing(cut_off)


def test_a_roll_change_wants_a_new_one_where_the_settings_say_so(first_off):
    first_off.noted(approval())
    first_off.noted(roll_in())
    assert first_off.closing(NINE).startswith("a new roll begins with a first-off")
    easy = FirstOffDuty(DUBLIN, FOUR, each_roll=False)
    easy.opened(RUN, NINE)
    easy.noted(approval())
    easy.noted(roll_in())
    assert easy.closing(NINE) == ""


def test_a_refusal_takes_an_approval_away(first_off):
    first_off.noted(approval())
    first_off.noted(approval(refusal="wrong date", uid="f2"))
    assert "the label was refused (wrong date)" in first_off.closing(NINE)
    first_off.noted(approval(uid="f3"))
    assert first_off.closing(NINE) == ""


# --- scans --------------------------------------------------------------------------------------


@pytest.fixture
def scans():
    duty = ScanDuty(HOUR, TEN)
    duty.opened(RUN, NINE)
    return duty


def test_the_first_label_is_scanned_before_the_second_bag(scans):
    assert scans.closing(NINE) == ""  # there is no label yet
    pack(scans)
    assert scans.closing(NINE).startswith("scan the first label")
    assert scans.trigger is ScanTrigger.FIRST
    scans.noted(scan())
    assert scans.closing(NINE) == ""


def test_a_scan_of_another_run_is_none(scans):
    pack(scans)
    scans.noted(scan(run=make_run_named("another")))
    assert scans.closing(NINE)


def test_an_hourly_scan_is_due_and_then_overdue(scans):
    pack(scans)
    scans.noted(scan())
    pack(scans, 2)
    assert scans.trigger is ScanTrigger.HOURLY
    assert scans.due(NINE).at == NINE + HOUR
    assert scans.closing(after(70)) == ""
    assert "overdue" in scans.closing(after(71))


def test_the_last_label_is_asked_for_at_once(scans):
    for number in (1, 2, 3):
        pack(scans, number)
        if number == 1:
            scans.noted(scan())
    assert scans.trigger is ScanTrigger.LAST
    assert (scans.due(after(5)).words, scans.due(after(5)).at) == ("scan the last label", after(5))
    assert scans.closing(after(5)) == ""
    scans.noted(scan(at=after(6), uid="s2"))
    assert scans.due(after(6)).words == "scan of a label"


def test_a_roll_change_wants_a_scan_of_the_next_label(scans):
    pack(scans)
    scans.noted(scan())
    scans.noted(roll_in())
    assert scans.closing(NINE) == ""
    pack(scans, 2)
    assert scans.closing(NINE).startswith("scan the label of the roll")
    assert scans.trigger is ScanTrigger.ROLL_CHANGE


def test_a_mismatch_closes_over_starts_until_it_is_cleared(scans):
    pack(scans)
    wrong = scan(equal=False)
    scans.noted(wrong)
    assert "the scan of label A1-00-000001 does not match" in scans.closing(NINE)
    scans.noted(scan(uid="s2"))  # a good scan does not make it undone
    assert "does not match" in scans.closing(NINE)
    started = ScanDuty(HOUR, TEN, [wrong])
    started.opened(RUN, NINE)
    assert "does not match" in started.closing(NINE)
    cleared = noted(cleared_fact(wrong, "wrong roll taken out", "c1"))
    for duty in (scans, started):
        duty.noted(cleared)
        assert duty.mismatch is None
        assert duty.closing(NINE) == ""
    assert ScanDuty(HOUR, TEN, [wrong, cleared]).mismatch is None


def test_a_mismatch_stops_a_running_line():
    duty = ScanDuty(HOUR, TEN)
    rig = Rig(duties=(duty,)).open()
    try:
        rig.runner.enter((scan(equal=False).fact,), "P02")
        rig.wait(lambda: rig.entered and rig.state.closed)
        rig.rest(258)
        assert (rig.state.phase, rig.state.verb) == (Phase.READY, Verb.CALL_LEAD)
        assert "add_pack" not in rig.names()
        rig.runner.enter((cleared_fact(scan(equal=False), "bags looked at", "c1"),), "P01")
        rig.wait(lambda: not rig.state.closed)
        rig.rest(258)
        assert "add_pack" in rig.names()
    finally:
        rig.close()
