"""The gates of a line on the bench: closed until scale and tare were really weighed."""

import pytest

from drivers.bench import BenchScale
from station.app.practice import lead_of
from station.app.practice_lead import LeadAtHand, PracticeLead
from station.core.checks.scale import Trigger, check_of
from station.core.journal import EntryKind
from station.core.metrology.scale_check import CheckStage
from station.line.state import Phase, Verb
from station.store.facts import facts
from station.store.suspects import open_windows
from tests.end_to_end.line import bench_line


@pytest.fixture
def line(tmp_path):
    with bench_line(tmp_path, gates=True) as one:
        yield one


@pytest.fixture
def lead(line):
    station = line.station
    return PracticeLead(
        line.bench,
        line.watch,
        station.checks,
        station.change,
        station.line,
        lead_of(line.house),
        station.quality.checks,
    )


def both_wanted(state) -> bool:
    words = " ".join(state.closed)
    return "begins with a check of the scale" in words and "one empty bag" in words


def test_no_bag_is_taken_before_scale_and_tare_were_weighed(tmp_path, line, lead):
    product = line.open_run()
    run = line.until(both_wanted).run
    lead.clear_line()
    with line.packer(product):
        line.until(lambda state: state.verb is Verb.CALL_LEAD)
    lead.check_scale(run)
    line.until(lambda state: "check of the scale" not in " ".join(state.closed))
    assert line.watch.newest.closed != ()
    lead.weigh_empty_bag(run)
    line.until(lambda state: "metal detector" in " ".join(state.closed))
    lead.check_quality(run)
    line.until(lambda state: state.closed == () and state.phase is Phase.READY)
    with line.packer(product):
        line.until(lambda state: state.tally.good >= 2)
    check, bag = facts(tmp_path, (EntryKind.SCALE_CHECK, EntryKind.EMPTY_BAG))
    shown = [load.reading.indication.digits for load in check_of(check).check.loads]
    assert shown == ["0", "6", "210", "3000"]
    assert (bag.fact.result, bag.fact.details["shown"]) == ("fits", "6 g")


def test_a_lost_line_asks_for_a_check_and_the_lead_at_hand_makes_it(tmp_path, line, lead):
    desk = line.station.checks
    line.open_run()
    line.until(both_wanted)
    lead.clear_line()
    helper = LeadAtHand(lead, line.watch)
    helper.start()
    try:
        line.until(lambda state: state.closed == ())
        assert not desk.scale_wanted
        line.bench.unplug()
        line.until(lambda state: state.verb is Verb.NO_READING)
        assert desk.scale_wanted
        line.bench.plug_in()
        line.until(lambda state: state.verb is Verb.BAG_ON and not desk.scale_wanted)
    finally:
        helper.stop()
    triggers = [check_of(one).trigger for one in facts(tmp_path, (EntryKind.SCALE_CHECK,))]
    assert triggers == [Trigger.START, Trigger.EVENT]


class LyingScale(BenchScale):
    """Weighs everything heavier than an empty bag 4 g too heavy."""

    off = 0.0

    def put_bag(self, grams: float) -> None:
        super().put_bag(grams + (self.off if grams > 20 else 0.0))


def test_a_scale_that_went_wrong_between_two_checks_holds_the_bags_between(tmp_path, line, lead):
    product = line.open_run()
    run = line.until(lambda state: state.run is not None).run
    lead.open_gates(run)
    with line.packer(product):
        packed = line.until(lambda state: state.tally.good >= 3)
    line.bench.lift()
    line.until(lambda state: state.shown is not None and state.shown.digits == "0")
    line.bench.__class__ = LyingScale
    line.bench.off = 4.0
    lead.check_scale(run)
    line.until(lambda state: "adjust it" in " ".join(state.closed))
    [window] = open_windows(tmp_path)
    assert window.window.bags >= packed.tally.good
    line.bench.off = 0.0
    lead.check_scale(run)
    line.until(lambda state: len(state.closed) == 1 and "suspect bags" in state.closed[0])
    stages = [check_of(one).check.stage for one in facts(tmp_path, (EntryKind.SCALE_CHECK,))]
    assert stages == [CheckStage.AS_FOUND, CheckStage.AS_FOUND, CheckStage.AS_LEFT]
