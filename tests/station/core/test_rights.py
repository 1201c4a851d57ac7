"""Who may do what: every act has a right, bad news is never hindered, two people are two."""

import pytest

from station.core.checks.first_off import FirstOff, first_off_fact
from station.core.facts import FACT_KINDS, Fact
from station.core.journal import EntryKind
from station.core.rights import (
    RIGHTS,
    Act,
    Proof,
    Role,
    act_of,
    refusal,
    signer,
    signers,
)

CREW = {
    "P01": Role.PACKER,
    "L01": Role.LEAD,
    "L02": Role.LEAD,
    "Q01": Role.QA,
    "M01": Role.MANAGER,
    "S01": Role.SERVICE,
}


def fact(kind, result="", **details):
    return Fact(kind, "0190", "it", result, details=details)


def first_off(lead="L01", second="Q01", why=""):
    return first_off_fact(FirstOff("r", "P", 1, "a" * 64, 2, lead, second, why), "0191")


def test_every_act_has_a_right_that_somebody_has():
    assert set(RIGHTS) == set(Act)
    assert all(right.roles for right in RIGHTS.values())


@pytest.mark.parametrize(
    ("kind", "result"),
    [
        (EntryKind.HOLD, "held"),
        (EntryKind.SCALE_CHECK, "failed"),
        (EntryKind.EMPTY_BAG, "does not fit"),
        (EntryKind.PAUSE, "stopped"),
        (EntryKind.CALL, "lead"),
        (EntryKind.FIRST_OFF, "refused"),
    ],
)
def test_what_stops_or_holds_is_open_to_everybody_by_name(kind, result):
    needed = signers([fact(kind, result)], "P01")
    assert [one.proof for one in needed] == [Proof.NAME]
    assert all(refusal(signers([fact(kind, result)], who), CREW) == "" for who in CREW)


@pytest.mark.parametrize(
    ("act", "allowed"),
    [
        (Act.START_RUN, {"L01", "L02", "M01"}),
        (Act.RELEASE, {"Q01", "M01"}),
        (Act.CHECK_SCALE, {"L01", "L02", "Q01", "M01", "S01"}),
        (Act.DECIDE_SUSPECT, {"L01", "L02", "Q01", "M01"}),
        (Act.MOVE_LOT, {"P01", "L01", "L02", "Q01", "M01"}),
        (Act.MANAGE_PEOPLE, {"M01"}),
    ],
)
def test_a_role_may_what_its_row_says_and_nothing_else(act, allowed):
    assert {who for who in CREW if not refusal((signer(act, who),), CREW)} == allowed


def test_a_refusal_names_person_role_act_and_what_is_allowed():
    words = refusal((signer(Act.RELEASE, "L01"),), CREW)
    assert words == "L01 (lead) may not release what is held: allowed is qa, manager"
    assert "people.toml" in refusal((signer(Act.RELEASE, "X1"),), CREW)


def test_a_good_check_opens_acceptance_and_so_needs_more_than_a_name():
    for kind, result in ((EntryKind.SCALE_CHECK, "good"), (EntryKind.EMPTY_BAG, "fits")):
        assert signers([fact(kind, result)], "L01")[0].proof > Proof.NAME


def test_two_people_approve_a_label_each_by_their_own_signature():
    needed = signers([first_off()], "L01")
    assert [(one.who, one.proof, one.fixed) for one in needed] == [
        ("L01", Proof.SIGNATURE, True),
        ("Q01", Proof.SIGNATURE, True),
    ]
    assert refusal(needed, CREW) == ""


def test_one_person_never_signs_an_act_of_two_people_twice():
    twice = fact(EntryKind.FIRST_OFF, "approved", lead="L01", second="L01")
    assert "two different people" in refusal(signers([twice], "L01"), CREW)
    assert "nobody may not sign" in refusal(
        signers([fact(EntryKind.FIRST_OFF, "approved", lead="L01")], "L01"), CREW
    )


def test_a_packer_is_no_second_person():
    assert "P01 (packer) may not approve" in refusal(
        signers([first_off(second="P01")], "L01"), CREW
    )


def test_one_signature_for_several_facts_needs_the_right_to_each_and_the_greatest_proof():
    together = [fact(EntryKind.HOLD, "held"), fact(EntryKind.RELEASE, "released")]
    (needed,) = signers(together, "L01")
    assert (needed.proof, needed.act) == (Proof.SIGNATURE, Act.RELEASE)
    assert needed.roles == (Role.QA, Role.MANAGER)


def test_a_kind_without_a_row_falls_to_the_checking_roles():
    unknown = [kind for kind in FACT_KINDS if act_of(fact(kind, "new")) is Act.OTHER]
    for kind in unknown:
        assert refusal(signers([fact(kind)], "P01"), CREW)
        assert not refusal(signers([fact(kind)], "L01"), CREW)


@pytest.mark.parametrize(
    ("kind", "result", "act"),
    [
        (EntryKind.PROPOSAL, "proposed", Act.PROPOSE),
        (EntryKind.PROPOSAL, "approved", Act.ANSWER_TARGET),
        (EntryKind.PROPOSAL, "refused", Act.ANSWER_TARGET),
        (EntryKind.SETTING, "approved", Act.APPROVE_PRODUCT),
    ],
)
def test_a_manager_alone_answers_targets_and_approves_products(kind, result, act):
    assert act_of(fact(kind, result)) is act
    if act is not Act.PROPOSE:
        assert RIGHTS[act].roles == (Role.MANAGER,)
        assert RIGHTS[act].proof is Proof.SIGNATURE
