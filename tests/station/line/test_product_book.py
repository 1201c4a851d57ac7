"""The book of products: approved targets reach the next run, unapproved versions are not run."""

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from station.core.approvals import refused_fact, target_fact, version_fact
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.mass import Mass
from station.core.pack import Moment
from station.core.product import ProductError
from station.line.opening import open_run
from station.line.product_book import ProductBook
from tests.station.line.scenario import make_product
from tests.station.line.test_opening import CHOICE, DAY, NINE, catalogue

PRODUCT = make_product()
MORE = PRODUCT.target + Mass.of(1)


def recorded(fact: Fact) -> FactRecord:
    return FactRecord(fact, Moment(datetime(2026, 11, 25, tzinfo=UTC), 0, "UTC", 0), "M01", 1)


def book_of(*facts: Fact, needed: bool = False) -> ProductBook:
    past = [recorded(fact) for fact in facts]
    return ProductBook({PRODUCT.code: PRODUCT}, approval_needed=needed, past=past)


def opened(book):
    whole = replace(catalogue(), products=book, refusal=book.refusal)
    return open_run(CHOICE, whole, NINE, 1, "0193-run")


def test_an_approved_target_is_frozen_with_the_next_run():
    book = book_of()
    assert opened(book).window.target == PRODUCT.target
    book.noted(recorded(target_fact("u", PRODUCT, MORE, "p")))
    assert opened(book).window.target == MORE
    assert book.as_set[PRODUCT.code].target == PRODUCT.target
    assert list(book) == [PRODUCT.code]
    assert len(book) == 1


def test_the_newest_approval_holds_and_a_refusal_takes_none_away():
    again = PRODUCT.target + Mass.of(2)
    facts = (
        target_fact("a", PRODUCT, MORE, "p"),
        target_fact("b", PRODUCT, again, "q"),
        refused_fact("c", PRODUCT, MORE, "r", "not now"),
    )
    assert book_of(*facts)[PRODUCT.code].target == again


def test_proposals_wait_until_they_are_answered():
    book = book_of(Fact(EntryKind.PROPOSAL, "p", PRODUCT.code, "proposed"))
    assert [one.fact.uid for one in book.proposals()] == ["p"]
    book.noted(recorded(target_fact("u", PRODUCT, MORE, "p")))
    assert book.proposals() == ()


def test_where_the_policy_wants_it_only_approved_versions_are_run():
    book = book_of(needed=True)
    with pytest.raises(ProductError, match="a manager approves it"):
        opened(book)
    assert book.approval(PRODUCT.code) is None
    book.noted(recorded(version_fact("u", PRODUCT, date(2026, 12, 1))))
    with pytest.raises(ProductError, match="from 2026-12-01 on"):
        opened(book)
    book.noted(recorded(version_fact("v", PRODUCT)))
    assert opened(book).product == PRODUCT
    assert book.approval(PRODUCT.code).fact.uid == "v"


def test_an_approved_target_leaves_the_approval_of_its_version():
    book = book_of(version_fact("v", PRODUCT), target_fact("u", PRODUCT, MORE, "p"), needed=True)
    assert opened(book).window.target == MORE


def test_without_the_policy_every_version_is_run():
    assert book_of().refusal(PRODUCT.code, DAY) == ""
    assert not book_of().approval_needed
    assert book_of(needed=True).refusal("NOTHING", DAY) == ""


def test_it_closes_nothing_and_asks_for_nothing():
    book = book_of()
    assert book.closing(NINE.utc) == ""
    assert book.due(NINE.utc) is None
