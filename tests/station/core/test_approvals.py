"""Approvals of targets and product versions: what they hold for, and when they are lost."""

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from station.core.approvals import (
    digest_of,
    open_proposals,
    refused_fact,
    target_answer,
    target_fact,
    version_approval,
    version_fact,
    why_not,
    with_target,
)
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.mass import Mass
from station.core.pack import Moment
from station.core.product import ProductError
from tests.station.screens.states import make_product

DAY = date(2026, 11, 20)
PRODUCT = make_product()


def recorded(fact: Fact) -> FactRecord:
    return FactRecord(fact, Moment(datetime(2026, 11, 20, tzinfo=UTC), 0, "UTC", 0), "M01", 1)


def higher(grams: int) -> Mass:
    return PRODUCT.target + Mass.of(grams).in_unit(PRODUCT.target.unit)


def test_an_approved_target_holds_for_the_product_it_was_made_for():
    answer = target_answer(recorded(target_fact("u", PRODUCT, higher(1), "p")))
    assert with_target(PRODUCT, answer).target == higher(1)
    assert with_target(replace(PRODUCT, version=PRODUCT.version + 1), answer).target != higher(1)
    changed = replace(PRODUCT, target=higher(2))
    assert with_target(changed, answer) == changed, "the settings moved on"


def test_a_target_outside_the_window_is_refused():
    with pytest.raises(ProductError, match="must rise"):
        target_fact("u", PRODUCT, PRODUCT.upper + higher(0), "p")


def test_a_refusal_needs_a_reason_and_changes_nothing():
    with pytest.raises(ProductError, match="reason"):
        refused_fact("u", PRODUCT, higher(1), "p", " ")
    answer = target_answer(recorded(refused_fact("u", PRODUCT, higher(1), "p", "not now")))
    assert with_target(PRODUCT, answer) == PRODUCT


def test_a_proposal_is_open_until_it_is_answered():
    proposal = recorded(Fact(EntryKind.PROPOSAL, "p", PRODUCT.code, "proposed"))
    other = recorded(Fact(EntryKind.SETTING, "s", "x", "approved"))
    assert open_proposals([proposal, other]) == (proposal,)
    for answer in (
        target_fact("u", PRODUCT, higher(1), "p"),
        refused_fact("u", PRODUCT, higher(1), "p", "not now"),
    ):
        assert open_proposals([proposal, recorded(answer)]) == ()


def test_a_digest_changes_with_everything_a_version_says():
    changes = {
        "name": "Other",
        "gtin": "9524007103401",
        "target": higher(1),
        "life_days": PRODUCT.life_days + 1,
        "storage": "dry",
        "bag": replace(PRODUCT.bag, basis="another study"),
        "recipe": tuple(replace(one, least=one.percent - 1) for one in PRODUCT.recipe),
        "label": replace(PRODUCT.label, e_mark=not PRODUCT.label.e_mark),
    }
    digests = {digest_of(replace(PRODUCT, **{name: value})) for name, value in changes.items()}
    assert len(digests) == len(changes)
    assert digest_of(PRODUCT) not in digests
    assert digest_of(replace(PRODUCT)) == digest_of(PRODUCT)


def test_a_version_may_be_run_from_its_day_on_and_only_as_it_was_approved():
    later = date(2026, 12, 1)
    approval = version_approval(recorded(version_fact("u", PRODUCT, later)))
    assert "is not approved" in why_not(PRODUCT, (), DAY)
    assert f"from {later} on" in why_not(PRODUCT, (approval,), DAY)
    assert why_not(PRODUCT, (approval,), later) == ""
    assert "is not approved" in why_not(replace(PRODUCT, storage="dry"), (approval,), later)


def test_facts_of_other_settings_are_left_out():
    assert version_approval(recorded(Fact(EntryKind.SETTING, "s", "x", "set"))) is None
    assert target_answer(recorded(Fact(EntryKind.PROPOSAL, "p", "x", "proposed"))) is None
