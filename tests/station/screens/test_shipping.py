"""The shipping page: what is scanned becomes cases, pallets and shipments; refusals in words."""

import pytest
from PySide6.QtCore import Qt

from station.core.shipping import Undoing
from station.core.shipping_entries import case_of, correction_of, pallet_of, shipment_of
from station.line.state import EntryAnswer
from station.screens.bridge import Bridge
from station.screens.shipping import ShippingPage
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.lots_states import PEOPLE
from tests.station.screens.shipping_states import (
    FIRST,
    GONE,
    HELD,
    PALLET,
    SECOND,
    ShippingSourceStub,
    Unset,
    serial,
)
from tests.station.screens.states import every_state

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
SIZES = ((1024, 768), (1920, 1080))


@pytest.fixture
def intents():
    return FakeIntents()


@pytest.fixture
def page(qtbot, intents):
    page = ShippingPage(Bridge(), intents, ShippingSourceStub(), PEOPLE)
    qtbot.addWidget(page)
    page.resize(*SIZES[0])
    page.show()
    page.show_state(every_state()["bag_on"])
    return page


def scan(qtbot, field, text):
    """Type a scan and Enter, as a scanner that types does."""
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def entered(intents):
    name, (facts, who) = intents.asked[-1]
    assert name == "enter"
    return facts, who


def test_scanned_bags_become_a_case_by_whoever_leads_the_run(page, intents, qtbot):
    for number in (1, 2, 4):
        scan(qtbot, page.case.scan, serial(number))
    assert page.case.title.text() == "3 of 12 bags, 0.603 kg"
    assert page.case.rows[2:] == (f"{serial(1)} to {serial(2)}", serial(4))
    qtbot.mouseClick(page.case.do_button, Qt.MouseButton.LeftButton)
    (fact,), who = entered(intents)
    assert case_of(fact).spans == ((serial(1), serial(2)), (serial(4), serial(4)))
    assert who == "P01"
    page.show_answer(EntryAnswer((fact.uid,), True, "recorded"))
    assert page.message.text() == f"Case {fact.subject} is filled; its label comes."
    assert page.bags == ()


def test_next_case_takes_the_loose_bags_of_the_line_in_one_touch(page, intents):
    page.case.buttons["NEXT CASE"].click()
    assert page.case.title.text() == "12 of 12 bags, 2.412 kg"
    page.case.do_button.click()
    (fact,), _ = entered(intents)
    assert case_of(fact).spans == ((serial(1), serial(12)),)


def test_two_fast_touches_fill_one_case(page, intents):
    """Else the line refuses the second, and the last word is that the case was refused."""
    page.case.buttons["NEXT CASE"].click()
    for _ in range(2):
        page.case.do_button.click()
    assert len(intents.asked) == 1


def test_an_answer_ends_its_own_page_whatever_is_shown_by_then(page, intents):
    page.go_to(1)
    page.pallet.scanned.emit(FIRST)
    page.go_to(0)
    page.case.buttons["NEXT CASE"].click()
    page.case.do_button.click()
    (fact,), _ = entered(intents)
    page.go_to(1)
    page.show_answer(EntryAnswer((fact.uid,), True, "recorded"))
    assert [one.sscc for one in page.cases] == [FIRST]
    assert page.bags == ()


def test_a_range_of_serials_is_typed_first_to_last(page, qtbot):
    scan(qtbot, page.case.scan, f"{serial(5)}..{serial(9)}")
    assert page.case.rows[-1] == f"{serial(5)} to {serial(9)}"
    scan(qtbot, page.case.scan, serial(7))
    assert page.message.text() == f"Refused. Bag {serial(7)} was scanned already"
    scan(qtbot, page.case.scan, f"{serial(9)}..{serial(5)}")
    assert "give the first serial first" in page.message.text()
    scan(qtbot, page.case.scan, "A1-7K-000999")
    assert "is not in the record" in page.message.text()
    page.case.buttons["START OVER"].click()
    assert page.bags == ()
    assert not page.case.do_button.isEnabled()


def test_cases_become_a_pallet_with_its_gross_weight(page, intents, qtbot):
    page.go_to(1)
    for code in (FIRST, SECOND):
        scan(qtbot, page.pallet.scan, f"]C100{code}")
    assert page.pallet.title.text() == "2 cases, 24 bags, 4.824 kg"
    assert not page.pallet.do_button.isEnabled()
    for digit in "1215":
        page.pad.keys[digit].click()
    page.pallet.do_button.click()
    (fact,), _ = entered(intents)
    pallet = pallet_of(fact)
    assert (pallet.cases, str(pallet.gross)) == ((FIRST, SECOND), "121.5 kg")


def test_a_held_case_is_refused_when_it_is_scanned(page, qtbot):
    page.go_to(2)
    scan(qtbot, page.ship.scan, HELD)
    assert page.message.text() == f"Refused. Case {HELD}: 3 bags held or out, QA decides"
    assert page.leaving == ()
    scan(qtbot, page.ship.scan, FIRST)
    scan(qtbot, page.ship.scan, FIRST)
    assert "was scanned already" in page.message.text()


def test_units_leave_for_a_customer_under_a_paper(page, intents, qtbot):
    page.go_to(2)
    scan(qtbot, page.ship.scan, PALLET)
    page.customers.buttons["MARSHGATE"].click()
    assert not page.ship.do_button.isEnabled()
    qtbot.keyClicks(page.reference, "delivery note 4713")
    page.ship.do_button.click()
    (fact,), _ = entered(intents)
    gone = shipment_of(fact)
    assert (gone.customer.code, gone.reference, gone.units) == (
        "MARSHGATE", "delivery note 4713", (PALLET,),
    )  # fmt: skip
    page.show_answer(EntryAnswer((fact.uid,), False, f"case {FIRST} must not leave"))
    assert page.message.text() == f"Refused. Case {FIRST} must not leave"
    assert page.leaving != ()


def test_what_stands_here_is_opened_or_labelled_again_and_what_left_comes_back(page, intents):
    page.go_to(3)
    page.house.choose(FIRST)
    assert not page.house.buttons["CAME BACK"].isEnabled()
    page.house.buttons["PRINT AGAIN"].click()
    (fact,), _ = entered(intents)
    assert (fact.subject, fact.details["copy"]) == (FIRST, 1)
    page.show_answer(EntryAnswer((fact.uid,), True, "recorded"))
    page.house.choose(FIRST)
    page.house.buttons["UNDO"].held.emit()
    (fact,), _ = entered(intents)
    assert correction_of(fact).how is Undoing.OPENED
    page.show_answer(EntryAnswer((fact.uid,), True, "recorded"))
    page.house.choose(GONE[0].number)
    assert not page.house.buttons["PRINT AGAIN"].isEnabled()
    page.house.buttons["CAME BACK"].held.emit()
    (fact,), _ = entered(intents)
    assert correction_of(fact).how is Undoing.CAME_BACK
    page.house.choose(GONE[1].number)
    assert not page.house.buttons["UNDO"].isEnabled()


def test_nobody_acts_without_a_name(qtbot, intents):
    page = ShippingPage(Bridge(), intents, ShippingSourceStub(), PEOPLE)
    qtbot.addWidget(page)
    page.case.buttons["NEXT CASE"].click()
    page.case.do_button.click()
    assert "Touch WHO" in page.message.text()
    assert intents.asked == []


def test_without_customers_the_page_says_what_is_missing(qtbot, intents):
    page = ShippingPage(Bridge(), intents, Unset(), PEOPLE)
    qtbot.addWidget(page)
    page.show()
    assert "customers.toml is missing" in page.message.text()


@pytest.mark.parametrize("size", SIZES)
def test_every_page_fits_the_screen(page, size):
    page.resize(*size)
    for tab in range(5):
        page.go_to(tab)
        hint = page.minimumSizeHint()
        assert hint.width() <= size[0]
        assert hint.height() <= size[1]
