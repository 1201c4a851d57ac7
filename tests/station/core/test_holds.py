from datetime import UTC, date, datetime

import pytest

from station.core.day_review import DayReview, ReviewError, review_fact, review_of
from station.core.facts import FactRecord
from station.core.holds import (
    HoldError,
    Released,
    Scope,
    ScopeKind,
    hold_fact,
    ranges_of,
    reason_of,
    release_fact,
    released_run,
    scope_of,
)
from station.core.pack import Moment

AT = Moment(datetime(2026, 11, 25, 9, tzinfo=UTC), 0, "UTC", 1)
SCOPE = Scope(ScopeKind.TIME, "09:00-09:40")
RANGES = (("77", 3, 9), ("77", 12, 12))


def test_a_hold_keeps_its_scope_reason_and_bags():
    record = FactRecord(hold_fact(SCOPE, "leaf on the jaw", RANGES, "u1"), AT, "Q01", 1)
    assert (scope_of(record), reason_of(record)) == ("time", "leaf on the jaw")
    assert ranges_of(record.fact) == RANGES


def test_a_hold_without_reason_or_bags_is_refused():
    with pytest.raises(HoldError, match="needs a reason"):
        hold_fact(SCOPE, " ", RANGES, "u1")
    with pytest.raises(HoldError, match="nothing is held"):
        hold_fact(SCOPE, "why", (), "u1")


def test_two_people_release_where_policy_says():
    released = Released("h1", "", "checked again", "", 8)
    with pytest.raises(HoldError, match="second one is missing"):
        release_fact(released, "seal", "u1", "Q01", two=True)
    same = Released("h1", "", "checked again", "Q01", 8)
    with pytest.raises(HoldError, match="another person"):
        release_fact(same, "seal", "u1", "Q01", two=False)
    with pytest.raises(HoldError, match="needs a reason"):
        release_fact(Released("h1", "", "", "M01", 8), "seal", "u1", "Q01", two=True)
    fact = release_fact(Released("h1", "", "checked", "M01", 8), "seal", "u1", "Q01", two=True)
    assert released_run(fact) == ""


def test_a_run_is_released_without_a_hold():
    fact = release_fact(Released("", "r1", "complete", "", 400), "r1", "u1", "Q01", two=False)
    assert released_run(fact) == "r1"


def test_a_day_with_open_things_is_signed_with_a_remark_only():
    day = date(2026, 11, 25)
    with pytest.raises(ReviewError, match="2 things are open, first: a roll"):
        review_fact(DayReview(day, ("a roll differs", "a hold"), "", 400, 7), "u1")
    review = DayReview(day, ("a roll differs",), "counted again tomorrow", 400, 7)
    record = FactRecord(review_fact(review, "u1"), AT, "Q01", 1)
    assert review_of(record) == review
    assert record.fact.result == "reviewed with exceptions"
    assert review_fact(DayReview(day, (), "", 400, 7), "u2").result == "reviewed"
