"""The board raises what has held long enough, rings until somebody has seen it, and ends it."""

from datetime import UTC, datetime, timedelta

import pytest

from station.core.alarms import RULES, AlarmKind, acknowledged_fact, shelved_fact
from station.core.facts import FactRecord
from station.core.pack import Moment
from station.line.alarm_board import GONE, AlarmBoard
from station.line.effects import Cue
from tests.station.screens.states import every_state

BEGIN = datetime(2026, 11, 25, 9, tzinfo=UTC)


class Watched:
    """A board with its causes, its sounds, and what it had recorded."""

    def __init__(self):
        self.causes, self.rung, self.kept = {}, [], []
        self.at = BEGIN
        self.board = AlarmBoard(lambda _, __: self.causes, self._uid, self.rung.append)
        self.board.state(every_state()["bag_on"])

    def _uid(self, _):
        return f"uid-{len(self.kept)}"

    def moment(self):
        ns = round((self.at - BEGIN).total_seconds() * 1e9) + 10**9
        return Moment(self.at, 0, "UTC", ns)

    def enter(self, fact, who="station"):
        self.kept.append(fact)
        self.board.noted(FactRecord(fact, self.moment(), who, len(self.kept)))

    def go(self, seconds):
        ends = self.at + timedelta(seconds=seconds)
        while self.at < ends:
            self.at += timedelta(seconds=0.5)
            for fact in self.board.watch(self.moment()):
                self.enter(fact)

    @property
    def results(self):
        return [(fact.subject, fact.result) for fact in self.kept]


@pytest.mark.parametrize("kind", [AlarmKind.NO_READING, AlarmKind.PRINTER])
def test_a_cause_is_raised_once_after_its_time_and_ends(kind):
    watched = Watched()
    watched.causes = {kind: "why"}
    watched.go(RULES[kind].after.total_seconds() - 0.5)
    assert watched.kept == []
    watched.go(30)
    assert watched.results == [(kind.name.lower(), "raised")]
    assert watched.kept[0].run == "0193-run"
    watched.causes = {}
    watched.go(GONE.total_seconds() + 1)
    assert watched.results[1:] == [(kind.name.lower(), "over")]
    assert watched.board.open == ()


def test_a_flickering_cause_is_one_alarm():
    watched = Watched()
    for number in range(40):
        watched.causes = {AlarmKind.NO_READING: "why"} if number % 3 else {}
        watched.go(1)
    assert watched.results == [("no_reading", "raised")]


def test_a_high_one_rings_until_it_is_seen_and_others_never():
    watched = Watched()
    watched.causes = {AlarmKind.MISMATCH: "why", AlarmKind.PRINTER: "why"}
    watched.go(35)
    assert [sound.cue for sound in watched.rung] == [Cue.STOP] * 3
    high, low = watched.board.open
    watched.enter(acknowledged_fact("seen", high, "run"), "P02")
    watched.enter(shelved_fact("put off", low, 15, "run"), "L01")
    watched.go(60)
    assert len(watched.rung) == 3
    assert watched.board.open[1].shelved(watched.at)


def test_nothing_is_alarmed_before_the_line_has_a_state():
    board = AlarmBoard(lambda _, __: pytest.fail("asked"), str, pytest.fail)
    assert board.watch(Watched().moment()) == ()
