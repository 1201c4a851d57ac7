"""A whole station whose lead puts a roll in, approves a first-off and scans written files."""

import time

import pytest

from station.app.practice import lead_of, second_of
from station.app.practice_labels import PracticeLabels
from station.core.journal import EntryKind
from station.core.label_life import Fate, OldLabel, Reprint, ReprintReason, Resolve
from station.errors import EnvironmentFault
from station.line.state import Verb
from station.store.facts import facts
from station.store.verify import verify
from tests.end_to_end.line import PATIENCE_S, bench_line


@pytest.fixture
def line(tmp_path):
    with bench_line(tmp_path, papers=True) as one:
        yield one


@pytest.fixture
def papers(line):
    return PracticeLabels(
        line.station.label_checks,
        line.station.line,
        line.watch,
        line.labels,
        lead_of(line.house),
        second_of(line.house),
    )


def packed(line, papers, bags):
    """Open a run, pass its gates and pack some bags."""
    product = line.open_run(order=bags)
    run = line.until(lambda state: len(state.closed) == 2).run
    papers.open_closed_gates(run)
    with line.packer(product), papers.at_hand(run):
        state = line.until(lambda state: state.verb is Verb.ORDER_DONE)
    return run, state.last.serial


def answered(line):
    answer = line.watch.next_entry(PATIENCE_S)
    assert answer.recorded, answer.words
    return answer


def test_bags_are_taken_once_roll_first_off_and_first_scan_are_made(tmp_path, line, papers):
    packed(line, papers, 5)
    kinds = (EntryKind.ROLL, EntryKind.FIRST_OFF, EntryKind.SCAN_BACK)
    assert [one.fact.result for one in facts(tmp_path, kinds)] == ["put in", "approved", "equal"]
    assert papers.scanned == 1
    papers.roll_out()
    (account,) = line.station.label_checks.rolls()
    assert (account.used, account.difference) == (len(list(line.labels.glob("*.pdf"))), 0)
    line.until(lambda state: any("no label roll" in words for words in state.closed))


def test_a_label_file_of_another_bag_stops_the_line_until_the_lead_clears_it(line, papers):
    run, serial = packed(line, papers, 3)
    desk = line.station.label_checks
    _, fact = desk.scan(run, "]C10109521234543213" + "10OLD", serial)
    line.station.line.enter((fact,), "P01")
    answered(line)
    state = line.until(lambda state: state.closed)
    assert "does not match" in state.closed[0]
    line.station.line.enter((desk.clear("L01", "wrong roll taken out"),), "L01")
    answered(line)
    line.until(lambda state: not state.closed)


def test_a_copy_has_its_mark_its_file_and_the_same_bar_codes(line, papers):
    run, serial = packed(line, papers, 3)
    wish = Reprint(serial, ReprintReason.TORN, OldLabel.DESTROYED, "P01")
    line.station.line.reprint(wish)
    assert "marked R1" in answered(line).words
    copy = line.labels / f"{serial}-R1.pdf"
    end = time.monotonic() + PATIENCE_S
    desk = line.station.label_checks
    while not desk.doubts():
        assert time.monotonic() < end, "the copy never came out"
        time.sleep(0.01)
    assert copy.read_bytes() != (line.labels / f"{serial}.pdf").read_bytes()
    papers.scan_back(run, serial)
    line.station.line.reprint(wish)
    assert "the lead signs" in line.watch.next_entry(PATIENCE_S).words
    line.station.line.resolve(Resolve(serial, Fate.APPLIED, "P01"))
    answered(line)
    assert desk.doubts() == ()
    assert sorted(one.name for one in line.labels.glob(f"{serial}*")) == [
        f"{serial}-R1.pdf",
        f"{serial}.pdf",
    ]
    assert verify(line.station.home).whole


def test_a_file_that_says_something_else_is_found(line, papers):
    run, serial = packed(line, papers, 3)
    other = next(one for one in line.labels.glob("*.pdf") if one.stem != serial)
    (line.labels / f"{serial}.pdf").write_bytes(other.read_bytes())
    with pytest.raises(EnvironmentFault, match="does not say what the record says"):
        papers.scan_back(run, serial)
