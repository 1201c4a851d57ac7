"""The line takes nothing from who may not, or did not sign; bags go on all the while."""

import pytest

from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.label_life import Fate, OldLabel, Reprint, ReprintReason, Resolve
from station.core.rights import Act, Role
from station.line.events import LinkUp
from station.line.state import Phase, RunAnswer
from tests.station.line.runner_rig import CHOICE, Rig

HOLD = Fact(EntryKind.HOLD, "h1", "ROM-1", "held")
FREE = Fact(EntryKind.RELEASE, "f1", "ROM-1", "released")


class Proved:
    """Knows a crew; proves what a test signed."""

    def __init__(self):
        self.roles = {"P01": Role.LEAD, "P02": Role.PACKER, "Q01": Role.QA}
        self.signed = []

    def prove(self, signer):
        if (signer.act, signer.who) in self.signed:
            self.signed.remove((signer.act, signer.who))
            return ""
        return f"{signer.who} did not sign"


@pytest.fixture
def rig():
    rigs = []

    def make():
        proofs = Proved()
        rigs.append(Rig(proofs=proofs))
        rigs[-1].runner.start()
        return rigs[-1], proofs

    yield make
    for one in rigs:
        one.close()


def opened(rig, proofs):
    proofs.signed.append((Act.START_RUN, "P01"))
    rig.runner.post(LinkUp("bench"))
    rig.runner.start_run(CHOICE)
    rig.wait(lambda: rig.answers and rig.answers[-1].started)
    rig.weigh(0)


def asked(rig, ask, answers):
    before = len(answers)
    ask()
    rig.wait(lambda: len(answers) > before)
    return answers[-1]


def test_a_run_starts_and_ends_by_signature_alone(rig):
    line, proofs = rig()
    refused = asked(line, lambda: line.runner.start_run(CHOICE), line.answers)
    assert refused == RunAnswer(False, "P01 did not sign")
    opened(line, proofs)
    assert asked(line, lambda: line.runner.end_run("P02"), line.answers).words == (
        "P02 (packer) may not end a run: allowed is lead, manager"
    )
    proofs.signed.append((Act.END_RUN, "P01"))
    assert asked(line, lambda: line.runner.end_run("P01"), line.answers).started


def test_bags_need_no_signature(rig):
    line, proofs = rig()
    opened(line, proofs)
    line.good_bag()
    assert ("add_pack", "252 g") in line.log


def test_what_holds_is_taken_by_name_and_what_releases_is_not(rig):
    line, proofs = rig()
    enter = line.runner.enter
    assert asked(line, lambda: enter((HOLD,), "P02"), line.entered).recorded
    assert "may not release" in asked(line, lambda: enter((FREE,), "P02"), line.entered).words
    assert asked(line, lambda: enter((FREE,), "Q01"), line.entered).words == "Q01 did not sign"
    proofs.signed.append((Act.RELEASE, "Q01"))
    assert asked(line, lambda: enter((FREE,), "Q01"), line.entered).recorded
    assert not asked(line, lambda: enter((FREE,), "Q01"), line.entered).recorded


def test_the_station_signs_what_it_finds_out_by_itself(rig):
    line, _ = rig()
    found = Fact(EntryKind.CLOCK, "c1", "clock", "stepped")
    assert asked(line, lambda: line.runner.enter((found,), "station"), line.entered).recorded


def test_labels_are_answered_for_and_printed_again_by_signature(rig):
    line, _ = rig()
    again = Reprint("A1-00-000001", ReprintReason.TORN, OldLabel.DESTROYED, "P01")
    answered = asked(line, lambda: line.runner.reprint(again), line.entered)
    assert (answered.uids, answered.words) == (("A1-00-000001",), "P01 did not sign")
    doubt = Resolve("A1-00-000001", Fate.APPLIED, "P01")
    assert asked(line, lambda: line.runner.resolve(doubt), line.entered).words == "P01 did not sign"


def test_going_on_after_a_stop_is_signed(rig):
    line, proofs = rig()
    opened(line, proofs)
    words = asked(line, lambda: line.runner.resume("P02"), line.answers).words
    assert words.startswith("P02 (packer) may not go on after a stop")
    assert line.state.phase is not Phase.STOPPED
