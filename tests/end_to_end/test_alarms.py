"""Alarms of a whole station: raised by what happens to it, answered, ended, all on record."""

import time

import pytest

from station.core.alarms import AlarmKind
from station.core.journal import EntryKind
from station.store.facts import facts
from tests.end_to_end.line import bench_line

DEADLINE_S = 30.0


@pytest.fixture(scope="module")
def unplugged(tmp_path_factory):
    """The scale's cable is pulled with a run open, somebody sees the alarm, the cable is put in."""
    home = tmp_path_factory.mktemp("alarms")
    with bench_line(home) as line:
        line.open_run()
        line.until(lambda state: str(state.verb) == "BAG ON")
        board, desk = line.station.alarms.board, line.station.alarms.desk
        line.bench.unplug()
        until(lambda: board.open)
        [alarm] = board.open
        line.station.line.enter((desk.acknowledge(alarm),), "L01")
        assert line.watch.next_entry(DEADLINE_S).recorded
        seen = board.open[0].acknowledged
        line.bench.plug_in()
        until(lambda: not board.open)
    return alarm, seen, facts(home, (EntryKind.ALARM,))


def until(holds):
    ends = time.monotonic() + DEADLINE_S
    while not holds():
        assert time.monotonic() < ends
        time.sleep(0.02)


def test_a_scale_that_is_silent_is_alarmed_and_seen(unplugged):
    alarm, seen, _ = unplugged
    assert alarm.kind is AlarmKind.NO_READING
    assert alarm.words
    assert seen == "L01"


def test_each_step_is_on_record_with_its_run(unplugged):
    alarm, _, records = unplugged
    steps = [(record.fact.result, record.who) for record in records]
    assert steps == [("raised", "station"), ("acknowledged", "L01"), ("over", "station")]
    assert len({record.fact.run for record in records}) == 1
    assert records[0].fact.run
    assert {record.fact.details.get("alarm") for record in records[1:]} == {alarm.uid}
