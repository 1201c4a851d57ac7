"""What a lead chooses, without a screen."""

import pytest

from station.line.state import RunChoice
from station.screens.offer import Draft, choice, lacking, with_lot, with_product
from tests.station.screens.states import make_offer

OFFER = make_offer()
HARBOUR, TARN = OFFER.products[0], OFFER.products[1]
LOTS = ("ROM-2611", "RAD-0418", "CAR-7710")


def test_each_step_says_what_is_lacking() -> None:
    draft = Draft()
    assert lacking(draft, OFFER) == "choose a product"
    draft = with_product(draft, HARBOUR)
    for code, then in zip(LOTS, ("Radicchio", "Carrot", ""), strict=True):
        draft, refusal = with_lot(draft, code, OFFER)
        assert refusal == ""
        if then:
            assert lacking(draft, OFFER) == f"choose a lot of {then}"
    assert lacking(draft, OFFER) == "say who leads"
    draft = Draft(draft.product, draft.lots, lead="P01")
    assert lacking(draft, OFFER) == "say who is on the scale"


def test_choice_of_a_full_draft() -> None:
    draft = Draft(HARBOUR, LOTS, "P01", "P02", "400")
    assert lacking(draft, OFFER) == ""
    assert choice(draft) == RunChoice("HARBOUR-250", 3, LOTS, "P01", "P02", 400)
    assert choice(Draft(HARBOUR, LOTS, "P01", "P02")).order_size is None


def test_a_lot_touched_again_is_taken_off() -> None:
    draft, _ = with_lot(with_product(Draft(), HARBOUR), "ROM-2611", OFFER)
    draft, refusal = with_lot(draft, "ROM-2611", OFFER)
    assert (draft.lots, refusal) == ((), "")


def test_another_product_begins_without_lots() -> None:
    draft, _ = with_lot(with_product(Draft(), HARBOUR), "ROM-2611", OFFER)
    assert with_product(draft, HARBOUR).lots == ("ROM-2611",)
    assert with_product(draft, TARN).lots == ()


@pytest.mark.parametrize(
    ("code", "words"),
    [
        ("ROM-2609", "lot ROM-2609 is held – call QA"),
        ("CAR-7650", "lot CAR-7650 is expired – take it off the line"),
        ("ROM-0000", "lot ROM-0000 is not known: receive it first"),
    ],
)
def test_refused_lots_say_why(code: str, words: str) -> None:
    draft, refusal = with_lot(with_product(Draft(), HARBOUR), code, OFFER)
    assert (draft.lots, refusal) == ((), words)


def test_a_lot_needs_a_product_first() -> None:
    assert with_lot(Draft(), "ROM-2611", OFFER)[1] == "choose the product first, then its lots"


def test_a_lot_of_another_recipe_is_refused() -> None:
    other = OFFER.products[3]
    assert other.name == "Glen rocket & radicchio"
    draft, refusal = with_lot(with_product(Draft(), other), "CAR-7710", OFFER)
    assert draft.lots == ()
    assert "does not contain: allowed are" in refusal


def test_lots_that_may_be_used_come_first() -> None:
    assert [lot.code for lot in OFFER.lots_of("ROM")] == ["ROM-2611", "ROM-2609"]


def test_only_leads_lead() -> None:
    assert [person.id for person in OFFER.leads] == ["P01", "P05"]
