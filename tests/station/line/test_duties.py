from datetime import UTC, datetime, timedelta

import pytest

from station.core.facts import Fact
from station.core.journal import EntryKind
from station.line.duties import Duties
from station.line.ports import StoreFault
from station.line.state import Notice, Phase, Seal, Verb
from tests.station.line.runner_rig import Rig

NOON = datetime(2026, 3, 4, 12, tzinfo=UTC)
CHECK = Fact(EntryKind.SCALE_CHECK, "u1", "bench", "good")


class UntilChecked:
    """Closes acceptance until a scale check is recorded; counts what it is told."""

    name = "CHECK"

    def __init__(self, words="check the scale", due_at=NOON):
        self.words, self.due_at = words, due_at
        self.told = []

    def opened(self, run, at):
        self.told.append(("opened", run.blend_lot))

    def packed(self, record):
        self.told.append(("packed", record.serial))

    def noted(self, record):
        self.told.append(("noted", record.fact.uid))
        self.words = ""

    def closing(self, now):
        return self.words

    def due(self, now):
        return Notice("scale check", self.due_at)


def test_every_reason_is_given_and_the_earliest_duty_stands_first():
    duties = Duties((UntilChecked("a", NOON + timedelta(hours=1)), UntilChecked("", NOON)))
    seen = duties.seen(NOON)
    assert seen.closing == ("a",)
    assert seen.seals == (Seal("CHECK", "a"), Seal("CHECK", ""))
    assert [notice.at for notice in seen.due] == [NOON, NOON + timedelta(hours=1)]


class KnowsBags(UntilChecked):
    """Counts bags by what they are worth."""

    def taken_back(self, serial):
        self.told.append(("taken back", serial))


def test_a_bag_taken_back_is_told_to_those_who_count_by_worth_alone():
    knows, does_not = KnowsBags(), UntilChecked()
    Duties((does_not, knows)).taken_back("A1-00-000007")
    assert (knows.told, does_not.told) == ([("taken back", "A1-00-000007")], [])


@pytest.fixture
def duty():
    return UntilChecked()


@pytest.fixture
def rig(duty):
    rig = Rig(duties=(duty,))
    yield rig.open()
    rig.close()


def test_no_bag_is_taken_until_the_duty_is_done(rig, duty):
    assert rig.state.closed == ("check the scale",)
    rig.rest(259)
    assert (rig.state.verb, rig.state.because) == (Verb.CALL_LEAD, "check the scale")
    assert not rig.store.drafts
    rig.rest(0)
    rig.runner.enter((CHECK,), "P01")
    rig.wait(lambda: rig.entered)
    assert rig.entered[-1].recorded
    serial = rig.good_bag()
    assert duty.told == [("opened", duty.told[0][1]), ("noted", "u1"), ("packed", serial)]


def test_a_bag_on_the_pan_waits_until_acceptance_is_open_again(rig, duty):
    duty.words = ""
    rig.runner.enter((CHECK,), "P01")
    rig.wait(lambda: rig.entered)
    rig.weigh(0)
    rig.weigh(258)
    rig.runner.bar("printer", "no labels: load a roll")
    rig.rest(258)
    assert not rig.store.drafts
    rig.runner.bar("printer", "")
    rig.rest(258)
    assert len(rig.store.drafts) == 1


def test_facts_the_store_refuses_change_nothing(rig):
    rig.store.faults["record"] = StoreFault("the disk is full")
    rig.runner.enter((CHECK,), "P01")
    rig.wait(lambda: rig.entered)
    assert (rig.entered[-1].recorded, rig.entered[-1].words) == (False, "the disk is full")
    assert rig.state.closed == ("check the scale",)


def test_a_bar_closes_acceptance_and_only_its_source_opens_it(rig, duty):
    duty.words = ""
    rig.runner.enter((CHECK,), "P01")
    rig.runner.bar("printer", "no labels: load a roll")
    rig.wait(lambda: rig.state.closed == ("no labels: load a roll",))
    rig.runner.bar("another", "")
    rig.rest(0)
    assert rig.state.closed == ("no labels: load a roll",)
    rig.runner.bar("printer", "")
    rig.wait(lambda: not rig.state.closed)
    assert ("note", "bags are taken again: no labels: load a roll", "station") in rig.log
    assert rig.state.phase in (Phase.CLEAR_PAN, Phase.READY)
