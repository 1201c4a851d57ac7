"""What the packer's screen counts while held bags of the open run are decided about."""

import pytest

from station.core.dispositions import Decided, Disposition, disposition_fact
from station.core.holds import Scope, ScopeKind, hold_fact
from station.core.ids import new_uid
from station.core.line_lots import LotMove, Move
from station.line.events import Labelled, SetAside
from station.store import hold_scopes
from station.store.queries import run_tally
from station.store.run_counts import count_run
from tests.station.line.lot_rig import LotLine


@pytest.fixture
def line(tmp_path):
    one = LotLine(tmp_path / "home")
    yield one
    one.close()


def decide(line, run, serial, end=Disposition.DUMP, corrects=""):
    decided = Decided(serial, end, "metal found", "Q02", corrects=corrects)
    fact = disposition_fact(decided, new_uid(line.clock.now()), run.id)
    assert line.enter(fact).recorded
    return fact.uid


def counts(line, run):
    """Good bags and rejects, by the screen, the record and its count of the pallet."""
    shown, record = line.state.tally, run_tally(line.home, run.id)
    pallet = count_run(line.home, run.id)
    assert (shown.good, shown.rejects) == (record.good, record.rejects)
    assert (shown.net_micrograms, shown.good) == (pallet.net_ug, pallet.bags)
    assert record.net_micrograms == pallet.net_ug
    return shown.good, shown.rejects


def test_held_bags_count_until_they_are_decided_about_and_each_leaves_once(line):
    run = line.start("ROM-1", "CAR-7")
    bags = line.bags(4)
    aside = line.bag_aside()
    line.hold("ROM-1")
    assert counts(line, run) == (4, 1)
    made = decide(line, run, bags[0])
    assert counts(line, run) == (3, 2)
    decide(line, run, bags[0], Disposition.SAMPLE, corrects=made)
    decide(line, run, aside)
    assert counts(line, run) == (3, 2)
    decide(line, run, bags[3])
    line.take(SetAside("burst seal"))  # the last bag is gone already
    assert counts(line, run) == (2, 3)
    line.release("ROM-1")
    assert counts(line, run) == (2, 3)


def test_a_bag_of_another_run_does_not_change_what_the_open_one_shows(line):
    first = line.start("ROM-1", "CAR-7")
    bags = line.bags(2)
    line.end()
    line.move(LotMove(Move.RETURNED, "ROM-1"))
    second = line.start("ROM-2", "CAR-7")
    line.bag()
    line.hold("ROM-1")
    decide(line, first, bags[0])
    assert counts(line, second) == (1, 0)
    assert run_tally(line.home, first.id).good == 1


def test_a_bag_on_the_pan_is_decided_about_when_it_was_lifted(line):
    """Else the line would wait for ever for the label of a bag that does not count."""
    run = line.start("ROM-1", "CAR-7")
    first = line.bag()
    line.on_pan()
    last = line.state.last.serial
    ranges = hold_scopes.of_run(line.home, run.id)
    line.enter(hold_fact(Scope(ScopeKind.RUN, run.id), "metal", ranges, "h1"))
    decided = Decided(last, Disposition.DUMP, "metal found", "Q02")
    for step in (None, Labelled(last)):
        if step is not None:
            line.take(step)
        answer = line.enter(disposition_fact(decided, "d1", run.id))
        assert (answer.recorded, "has not left the scale" in answer.words) == (False, True)
    line.weigh(0)
    decide(line, run, last)
    decide(line, run, first)
    assert counts(line, run) == (0, 2)
    line.bag()
    assert counts(line, run) == (1, 2)
