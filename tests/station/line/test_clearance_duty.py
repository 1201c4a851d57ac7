from dataclasses import replace

import pytest

from station.core.clearance import FIRST, Gate, Point, Reconciliation, cleared_fact, reconciled_fact
from station.core.facts import FactRecord
from station.core.pack import PackId, PackRecord
from station.core.pauses import Look, Reason, resume_fact, stop_fact
from station.line.clearance_duty import ClearanceDuty
from station.line.pause_duty import PauseDuty
from tests.station.line.runner_rig import Rig
from tests.station.line.scenario import make_moment, make_run

NOW = make_moment().utc
RUN = make_run()


def signed(fact):
    return FactRecord(fact, make_moment(), "P01", 1)


def cleared(before):
    return signed(cleared_fact(f"c {before}", before, dict.fromkeys(Point, True)))


def counted(run):
    return signed(reconciled_fact(f"r {run}", Reconciliation(run, 5, 5)))


def test_the_first_run_of_all_needs_a_clear_line_only():
    duty = ClearanceDuty(None)
    duty.opened(RUN, NOW)
    assert duty.wanting(duty.before) == (Gate.CLEARED,)
    assert "clear the line" in duty.closing(NOW)
    duty.noted(cleared(FIRST))
    assert duty.closing(NOW) == ""


def test_the_run_before_is_counted_first_and_then_the_line_is_cleared():
    duty = ClearanceDuty("r0")
    duty.opened(RUN, NOW)
    assert "count the bags" in duty.closing(NOW)
    duty.noted(counted("r0"))
    assert "clear the line" in duty.closing(NOW)
    duty.noted(cleared("r0"))
    assert duty.closing(NOW) == ""


def test_signatures_for_another_run_open_nothing():
    duty = ClearanceDuty("r0", (counted("r9"), cleared("r9"), cleared(FIRST)))
    duty.opened(RUN, NOW)
    assert duty.wanting(duty.before) == (Gate.RECONCILED, Gate.CLEARED)


def test_signatures_on_record_hold_after_a_restart():
    duty = ClearanceDuty("r0", (counted("r0"), cleared("r0")))
    duty.opened(RUN, NOW)
    assert duty.closing(NOW) == ""


def test_a_run_without_a_bag_leaves_nothing_to_count():
    duty = ClearanceDuty("r0", (counted("r0"), cleared("r0")))
    duty.opened(RUN, NOW)
    duty.opened(RUN, NOW)
    assert duty.before == "r0"


def test_the_line_takes_bags_once_it_is_signed_for():
    rig = Rig(duties=(ClearanceDuty(None),)).open()
    try:
        rig.rest(259)
        assert "clear the line" in rig.state.because
        assert not rig.store.drafts
        rig.rest(0)
        rig.runner.enter((cleared(FIRST).fact,), "P01")
        rig.wait(lambda: rig.entered)
        rig.good_bag()
        assert len(rig.store.drafts) == 1
        assert rig.state.closed == ()
    finally:
        rig.close()


def test_a_bag_makes_its_run_the_one_before():
    duty = ClearanceDuty(None, (cleared(FIRST),))
    duty.opened(RUN, NOW)
    rig_draft = _draft_of(RUN)
    duty.packed(PackRecord(PackId("S", "A1", 0, 1), "u1", rig_draft, 1, "00"))
    assert duty.closing(NOW) == ""
    duty.opened(make_run(), NOW)
    assert duty.before == RUN.id
    assert duty.wanting(duty.before) == (Gate.RECONCILED, Gate.CLEARED)


def _draft_of(run):
    rig = Rig().open()
    try:
        rig.good_bag()
        (draft,) = rig.store.drafts
    finally:
        rig.close()
    return replace(draft, run=run.id)


@pytest.mark.parametrize("restarted", [False, True])
def test_a_line_that_stands_takes_no_bag_until_it_was_looked_at(restarted):
    begun = signed(stop_fact("u1", "L1", "r1", Reason.BREAK))
    duty = PauseDuty((begun,)) if restarted else PauseDuty()
    if not restarted:
        duty.noted(begun)
    assert "the line stands, break" in duty.closing(NOW)
    assert duty.standing is not None
    duty.noted(signed(resume_fact("u2", "L1", "r1", duty.standing, frozenset(Look))))
    assert (duty.closing(NOW), duty.standing) == ("", None)
