"""A scale that holds at 09:00 and fails at 10:00 with 300 bags between: what follows of itself.

All figures are worked out here by hand, in exact fractions.
"""

from collections import Counter
from datetime import timedelta
from fractions import Fraction

import pytest

from station.core.checks.suspect import Decision, decision_facts
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.metrology.scale_check import CheckStage
from station.core.metrology.suspect import ErrorSign
from station.core.pack import Residue
from station.line.suspect_hold import number_ranges
from station.store.facts import facts
from station.store.queries import trace_pack
from station.store.since import RecordPast
from station.store.suspects import open_windows, suspect_windows
from station.store.verify import verify
from tests.end_to_end.checked_line import NINE, CheckedLine, a_bag, a_check, moment
from tests.station.line.scenario import grams

TEN = NINE + timedelta(hours=1)
BAGS = 300
EVERY = timedelta(seconds=12)
STEPPED_AT = 180
"""The pan before this bag still showed zero, the pan before the next one 4 g."""


def weighed_at(k):
    return NINE + EVERY * k


def net(k):
    return 252 if k % 2 else 255


def fill(store, run, residues=lambda k: None):
    store.add_pack(a_bag(run, NINE - timedelta(seconds=30), 250))
    store.record((a_check(0, NINE),), moment(NINE), "P01")
    for k in range(1, BAGS + 1):
        if k == 151:
            burst = a_bag(run, weighed_at(150) + EVERY / 2, 254, reason="burst")
            store.add_pack(burst)
        store.add_pack(a_bag(run, weighed_at(k), net(k), residues(k)))


def stepped(k):
    return Residue(weighed_at(k) - EVERY / 2, grams(0 if k <= STEPPED_AT else 4))


@pytest.fixture
def line(tmp_path, request):
    residues = getattr(request, "param", lambda k: None)
    one = CheckedLine(tmp_path / "home", lambda store, run: fill(store, run, residues))
    yield one
    one.close()


@pytest.fixture
def failed(line):
    """The line after +4 g at every load at 10:00, in a run of its own."""
    line.clock.utc = TEN - timedelta(minutes=5)
    run = line.open_run()
    line.clock.utc = TEN
    line.enter(a_check(4, TEN, run=run.id))
    return line


def qualities(line):
    until = line.clock.utc
    return Counter(
        str(pack.quality)
        for g in RecordPast(line.home).packs_since(until - timedelta(days=9), until)
        for pack in g.packs
    )


def test_the_window_reaches_from_the_good_check_to_the_failed_one(failed):
    [one] = open_windows(failed.home)
    window = one.window
    assert (window.opened, window.closed) == (NINE, TEN)
    assert window.sign is ErrorSign.HIGH
    assert window.bags == BAGS  # neither the bag before nine nor the burst one
    assert window.step is None


def test_both_bounds_are_exact(failed):
    """Mean net 253.5 g. Worst: less 4 g. Drift: bag k less 4 k/300, on the mean 4 * 301/600."""
    [one] = open_windows(failed.home)
    [run] = one.window.runs
    as_weighed, worst, drift = run.cases
    assert as_weighed.mean == Fraction(507, 2)
    assert worst.mean == Fraction(507, 2) - 4 == Fraction(499, 2)
    assert drift.mean == Fraction(507, 2) - Fraction(301, 150) == Fraction(18862, 75)
    assert (as_weighed.accepted, worst.accepted, drift.accepted) == (True, False, True)
    [judged] = one.runs
    bag = next(bag for bag in judged.window.reweigh if bag.pack.at == weighed_at(75))
    assert (bag.worst_net, bag.drift_net) == (252 - 4, 252 - 1)


def test_the_lightest_bags_are_weighed_again_first(failed):
    [one] = open_windows(failed.home)
    [run] = one.window.runs
    light = [k for k in range(1, BAGS + 1) if net(k) == 252]
    heavy = [k for k in range(1, BAGS + 1) if net(k) == 255]
    numbers = [int(serial[-6:]) for serial in run.reweigh]
    # Bag 1 of the record came before nine, and the burst one after the 150th of the window.
    assert numbers == [k + 1 + (k > 150) for k in (*light, *heavy)]


def test_every_bag_since_is_held_in_the_commit_of_the_check(failed):
    assert qualities(failed) == {"held": BAGS, "good": 1, "reject": 1}
    kinds = (EntryKind.SCALE_CHECK, EntryKind.SUSPECT, EntryKind.HOLD)
    check, window, hold = facts(failed.home, kinds, since=TEN)
    assert [check.fact.kind, window.fact.kind, hold.fact.kind] == list(kinds)
    assert (window.seq, hold.seq) == (check.seq + 1, check.seq + 2)
    assert verify(failed.home).whole


def test_the_line_takes_no_bag_until_it_is_adjusted_and_decided(failed):
    assert "adjust it" in failed.closed[0]
    failed.weigh(0)
    for _ in range(5):
        failed.weigh(259)
    failed.weigh(0)
    assert failed.states[-1].tally.good == 0
    failed.clock.utc = TEN + timedelta(minutes=10)
    failed.enter(a_check(4, failed.clock.utc, CheckStage.AS_LEFT))
    assert "adjust it" in failed.closed[0]
    failed.enter(a_check(0, failed.clock.utc, CheckStage.AS_LEFT))
    assert "300 suspect bags are held" in failed.closed[0]
    decide(failed, Decision.HOLD_STAYS)
    assert failed.closed == ()
    assert qualities(failed)["held"] == BAGS
    failed.weigh(0)
    for _ in range(5):
        failed.weigh(259)
    failed.until(lambda: failed.states[-1].tally.good == 1)


def decide(line, decision, reason="weighed again, all true"):
    [one] = open_windows(line.home)
    uids = [new_uid(line.clock.now()) for _ in range(len(one.window.holds) + 1)]
    line.enter(*decision_facts(one.window, decision, reason, uids), who="Q01")


def test_released_bags_are_good_again_and_the_decision_is_kept(failed):
    decide(failed, Decision.RELEASED)
    assert qualities(failed) == {"released": BAGS, "good": 1, "reject": 1}
    assert open_windows(failed.home) == ()
    [one] = suspect_windows(failed.home)
    assert one.decision.who == "Q01"
    assert one.decision.fact.details["reason"] == "weighed again, all true"
    assert one.runs[0].window.worst.mean == Fraction(499, 2)


def test_a_decision_needs_a_reason_and_a_step_before_what_it_releases(failed):
    [one] = open_windows(failed.home)
    with pytest.raises(ValueError, match="reason"):
        decision_facts(one.window, Decision.RELEASED, " ", ["u1", "u2"])
    with pytest.raises(ValueError, match="no step"):
        decision_facts(one.window, Decision.RELEASED_BEFORE_STEP, "x", ["u1", "u2"])


def test_a_window_still_open_closes_the_line_after_a_restart(failed):
    failed.close()
    again = CheckedLine(failed.home)
    again.clock.utc = TEN + timedelta(minutes=20)
    again.open_run()
    assert "failed its check" in again.closed[0]
    again.close()
    failed.close = lambda: None


@pytest.mark.parametrize("line", [stepped], indirect=True)
def test_a_step_of_zero_is_dated_within_one_bag_and_halves_the_hold(failed):
    """121 of 300 bags carry 4 g: mean 507/2 - 4 * 121/300."""
    [one] = open_windows(failed.home)
    step = one.window.step
    assert step.last_before < weighed_at(STEPPED_AT) < step.first_after
    assert step.first_after - step.last_before == EVERY
    assert step.size == "+4 g"
    *_, after_step = one.window.runs[0].cases
    assert after_step.mean == Fraction(507, 2) - Fraction(4 * 121, 300)
    assert after_step.accepted
    decide(failed, Decision.RELEASED_BEFORE_STEP, "the pan dates the step")
    assert qualities(failed) == {"released": 179, "held": 121, "good": 1, "reject": 1}
    serial = one.window.runs[0].reweigh[0]
    assert trace_pack(failed.home, serial).quality == "released"


def creeping(k):
    return Residue(weighed_at(k) - EVERY / 2, grams(k % 2))


@pytest.mark.parametrize("line", [creeping], indirect=True)
def test_an_unsteady_pan_dates_nothing(failed):
    [one] = open_windows(failed.home)
    assert one.window.step is None
    assert len(one.window.holds) == 1


def test_a_failed_check_without_bags_holds_nothing(tmp_path):
    line = CheckedLine(tmp_path / "home")
    line.open_run()
    line.enter(a_check(4, line.clock.utc))
    assert open_windows(line.home) == ()
    assert "adjust it" in line.closed[0]
    line.enter(a_check(0, line.clock.utc, CheckStage.AS_LEFT))
    assert line.closed == ()
    line.close()


def test_without_any_good_check_every_bag_is_suspect(tmp_path):
    def unchecked(store, run):
        for k in range(1, 4):
            store.add_pack(a_bag(run, weighed_at(k), 252))

    line = CheckedLine(tmp_path / "home", unchecked)
    line.clock.utc = TEN
    line.open_run()
    line.enter(a_check(-4, TEN))
    [one] = open_windows(line.home)
    assert (one.window.good, one.window.bags, one.window.sign) == ("", 3, ErrorSign.LOW)
    assert one.window.runs[0].cases[1].mean == 256
    line.close()


def test_a_clock_set_back_hides_no_bag(tmp_path):
    """Bags recorded after the good check at 09:00, with a clock that says 08:30."""

    def set_back(store, run):
        store.record((a_check(0, NINE),), moment(NINE), "P01")
        for k in range(1, 4):
            store.add_pack(a_bag(run, NINE - timedelta(minutes=30) + EVERY * k, 252))

    line = CheckedLine(tmp_path / "home", set_back)
    line.clock.utc = NINE - timedelta(minutes=20)
    line.open_run()
    line.enter(a_check(4, line.clock.utc))
    [one] = open_windows(line.home)
    assert (one.window.bags, one.window.runs[0].cases) == (3, ())
    assert "clock was set" in one.window.runs[0].refused
    held = [p.quality for g in RecordPast(line.home).packs_after(None) for p in g.packs]
    assert held == ["held"] * 3
    line.close()


def test_number_ranges_are_as_few_as_can_be(failed):
    ids = [pack.id for g in RecordPast(failed.home).packs_since(NINE, TEN) for pack in g.packs]
    assert [one[1:] for one in number_ranges(ids)] == [(2, BAGS + 2)]
    gap = [one for one in ids if one.number != 100]
    assert [one[1:] for one in number_ranges(gap)] == [(2, 99), (101, BAGS + 2)]
