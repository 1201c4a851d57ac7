from dataclasses import replace

import pytest

from station.core.label_life import (
    MOST_COPIES,
    STATE_AFTER,
    Fate,
    LabelledBag,
    LabelLifeError,
    OldLabel,
    Reprint,
    ReprintReason,
    ReprintRule,
    awaits_answer,
    copy_mark,
    may_become,
    next_copy,
    reprint_fact,
)
from station.core.pack import LabelState, Quality
from tests.station.line.scenario import grams, make_run

RULE = ReprintRule(frozenset({"lead"}), alone=1)
L = LabelState

# The ways of a label, written out pair by pair beside the product's own table.
WAYS = {
    (L.RECORDED, L.SUBMITTED),
    (L.SUBMITTED, L.SPOOLED),
    (L.SPOOLED, L.APPLIED),
    (L.RECORDED, L.IN_DOUBT),
    (L.SUBMITTED, L.IN_DOUBT),
    (L.SPOOLED, L.IN_DOUBT),
    (L.APPLIED, L.IN_DOUBT),
    (L.IN_DOUBT, L.APPLIED),
    (L.RECORDED, L.VOIDED),
    (L.SUBMITTED, L.VOIDED),
    (L.SPOOLED, L.VOIDED),
    (L.APPLIED, L.VOIDED),
    (L.IN_DOUBT, L.VOIDED),
}


def bag(label=L.IN_DOUBT, copies=0):
    return LabelledBag("A1-00-000007", make_run(), grams(250), Quality.GOOD, label, copies)


def wish(who="packer", old=OldLabel.DESTROYED):
    return Reprint("A1-00-000007", ReprintReason.TORN, old, who)


@pytest.mark.parametrize("before", list(L))
@pytest.mark.parametrize("after", list(L))
def test_each_state_is_followed_by_those_of_the_table_and_no_other(before, after):
    if (before, after) in WAYS:
        may_become("A1-00-000007", before, after)
    else:
        with pytest.raises(LabelLifeError, match=f"is {before} and cannot become {after}"):
            may_become("A1-00-000007", before, after)


@pytest.mark.parametrize("label", [L.NONE, L.RECORDED, L.SUBMITTED, L.VOIDED])
def test_no_copy_of_a_label_that_is_on_its_way_or_void(label):
    with pytest.raises(LabelLifeError, match=f"is {label}: only one that is spooled"):
        next_copy(bag(label), wish("lead"), RULE)


@pytest.mark.parametrize("label", [L.SPOOLED, L.APPLIED, L.IN_DOUBT])
def test_anybody_may_have_the_first_copy_and_the_lead_signs_for_more(label):
    assert next_copy(bag(label), wish(), RULE) == 1
    with pytest.raises(LabelLifeError, match="has had R1 already: the lead"):
        next_copy(bag(label, copies=1), wish(), RULE)
    assert next_copy(bag(label, copies=1), wish("lead"), RULE) == 2


def test_a_held_bag_gets_no_label():
    held = replace(bag(), quality=Quality.HELD)
    with pytest.raises(LabelLifeError, match="is held: it gets no label before QA"):
        next_copy(held, wish("lead"), RULE)


def test_a_copy_needs_a_person():
    with pytest.raises(LabelLifeError, match="id of who"):
        next_copy(bag(), wish(who=""), RULE)


def test_the_marks_end_where_the_label_has_no_room_for_them():
    with pytest.raises(LabelLifeError, match="set it aside"):
        next_copy(bag(copies=MOST_COPIES), wish("lead"), RULE)
    assert [copy_mark(copy) for copy in (0, 1, 99)] == ["", "R1", "R99"]


def test_only_a_label_in_doubt_can_have_been_never_printed():
    assert next_copy(bag(), wish(old=OldLabel.NEVER_PRINTED), RULE) == 1
    with pytest.raises(LabelLifeError, match="so it was printed: destroy it first"):
        next_copy(bag(L.APPLIED), wish(old=OldLabel.NEVER_PRINTED), RULE)


def test_a_doubt_and_a_copy_that_came_out_wait_for_an_answer():
    waiting = {(label, n) for label in L for n in (0, 1) if awaits_answer(bag(label, n))}
    assert waiting == {(L.IN_DOUBT, 0), (L.IN_DOUBT, 1), (L.SPOOLED, 1)}


def test_each_fate_ends_the_doubt():
    assert set(STATE_AFTER) == set(Fate)
    for state in STATE_AFTER.values():
        may_become("A1-00-000007", L.IN_DOUBT, state)


def test_a_copys_entry_names_mark_reason_and_what_became_of_the_label_before():
    fact = reprint_fact(wish(), 2, "run", "u1")
    assert (fact.subject, fact.result) == ("A1-00-000007", "R2")
    assert fact.details == {"copy": 2, "reason": "torn or creased", "old": "destroyed"}
