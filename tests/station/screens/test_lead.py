"""The lead's panel, worked by touch and by scanner."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel

from station.line.state import RunAnswer, RunChoice
from station.screens.bridge import Bridge
from station.screens.doors import Door, DoorPage
from station.screens.lead import LeadPanel
from station.screens.theme import KEY_MM, LIGHT, Ruler
from station.screens.widgets.touch_button import TouchButton
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.legibility import SCREENS, reach, ruler_of
from tests.station.screens.states import every_state, make_offer

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only

CHOICE = RunChoice(
    "HARBOUR-250", 3, ("ROM-2611", "RAD-0418", "CAR-7710"), "P01", "P02", order_size=400
)
STATES = every_state()


@pytest.fixture
def intents() -> FakeIntents:
    return FakeIntents()


@pytest.fixture
def bridge(qtbot) -> Bridge:
    return Bridge()


@pytest.fixture
def panel(qtbot, bridge: Bridge, intents: FakeIntents) -> LeadPanel:
    one = LeadPanel(bridge, intents, make_offer(), in_doubt=("P1-7K-000131",))
    qtbot.addWidget(one)
    one.resize(1280, 800)
    one.show()
    one.show_state(STATES["start_run"])
    return one


def touch(qtbot, button: QAbstractButton) -> None:
    assert button.isEnabled()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def scan(qtbot, panel: LeadPanel, code: str) -> None:
    qtbot.keyClicks(panel.lots.scan, code)
    qtbot.keyClick(panel.lots.scan, Qt.Key.Key_Return)


def choose_product(qtbot, panel: LeadPanel, code: str = "HARBOUR-250") -> None:
    assert panel.products.tiles is not None
    touch(qtbot, panel.products.tiles.buttons[code])


def choose_crew(qtbot, panel: LeadPanel, order: str = "400") -> None:
    touch(qtbot, panel.steps[2])
    assert panel.crew.leads is not None
    assert panel.crew.operators is not None
    touch(qtbot, panel.crew.leads.buttons["P01"])
    touch(qtbot, panel.crew.operators.buttons["P02"])
    for digit in order:
        touch(qtbot, panel.crew.pad.keys[digit])


def test_a_run_is_started_by_touch(qtbot, panel: LeadPanel, intents: FakeIntents) -> None:
    choose_product(qtbot, panel)
    for component, lot in (("ROM", "ROM-2611"), ("RAD", "RAD-0418"), ("CAR", "CAR-7710")):
        touch(qtbot, panel.lots.rows[component].buttons[lot])
    choose_crew(qtbot, panel)
    assert panel.start_button.strong
    touch(qtbot, panel.start_button)
    assert intents.asked == [("start_run", CHOICE)]


def test_a_run_is_started_by_scanner(qtbot, panel: LeadPanel, intents: FakeIntents) -> None:
    choose_product(qtbot, panel)
    assert panel.lots.scan.hasFocus()
    for code in ("rom-2611", "RAD-0418", " CAR-7710 "):
        scan(qtbot, panel, code)
        assert panel.lots.scan.text() == ""
    choose_crew(qtbot, panel)
    touch(qtbot, panel.start_button)
    assert intents.asked == [("start_run", CHOICE)]


@pytest.mark.parametrize(
    ("code", "words"),
    [
        ("ROM-2609", "Refused. Lot ROM-2609 is held – call QA"),
        ("CAR-7650", "Refused. Lot CAR-7650 is expired – take it off the line"),
        ("XYZ-1", "Refused. Lot XYZ-1 is not known: receive it first"),
    ],
)
def test_a_scanned_lot_that_may_not_be_used_is_refused_in_words(
    qtbot, panel: LeadPanel, code: str, words: str
) -> None:
    choose_product(qtbot, panel)
    scan(qtbot, panel, code)
    assert panel.message.text() == words
    assert panel.draft.lots == ()


def test_held_lots_are_seen_struck_with_the_reason(qtbot, panel: LeadPanel) -> None:
    choose_product(qtbot, panel)
    held = panel.lots.rows["ROM"].buttons["ROM-2609"]
    assert held.struck
    assert held.small == "held – call QA"
    touch(qtbot, held)
    assert panel.message.text() == "Refused. Lot ROM-2609 is held – call QA"
    assert not held.isChecked()
    assert panel.draft.lots == ()


def test_an_unfinished_choice_is_not_asked_of_the_line(
    qtbot, panel: LeadPanel, intents: FakeIntents
) -> None:
    touch(qtbot, panel.start_button)
    assert panel.message.text() == "Refused. Choose a product"
    choose_product(qtbot, panel)
    touch(qtbot, panel.start_button)
    assert panel.message.text() == "Refused. Choose a lot of Romaine lettuce"
    assert intents.asked == []
    assert not panel.start_button.strong


def test_the_lines_refusal_is_shown_in_its_words(qtbot, panel: LeadPanel, bridge: Bridge) -> None:
    words = "lot ROM-2611 is 9 days old, ROM may be packed for 6 days after harvest"
    bridge.answer(RunAnswer(False, words))
    qtbot.waitUntil(lambda: panel.message.text() == f"Refused. L{words[1:]}")


def test_an_open_run_is_shown_and_cannot_be_chosen_over(qtbot, panel: LeadPanel) -> None:
    panel.show_state(STATES["bag_on"])
    assert panel.pages.currentWidget() is panel.run
    assert panel.run.name.text() == "Harbour leaf mix"
    assert "Good bags: 128 of 400, set aside: 3" in panel.run.facts.text()
    assert "Mean net 252.4\u00a0g" in panel.run.facts.text()
    assert panel.run.doubt.text() == "P1-7K-000131"
    assert not panel.start_button.isVisible()
    assert not any(step.isEnabled() for step in panel.steps)


def test_end_run_is_held_not_tapped(qtbot, panel: LeadPanel, intents: FakeIntents) -> None:
    panel.show_state(STATES["bag_on"])
    touch(qtbot, panel.end_button)
    assert intents.asked == []
    with qtbot.waitSignal(panel.end_button.held):
        qtbot.mousePress(panel.end_button, Qt.MouseButton.LeftButton)
    qtbot.mouseRelease(panel.end_button, Qt.MouseButton.LeftButton)
    assert intents.asked == [("end_run", "P01")]


def test_going_on_only_after_a_stop(qtbot, panel: LeadPanel, intents: FakeIntents) -> None:
    panel.show_state(STATES["bag_on"])
    assert not panel.resume_button.isEnabled()
    panel.show_state(STATES["stopped"])
    assert panel.run.stop.text().startswith("label P1-7K-000131 is in doubt")
    touch(qtbot, panel.resume_button)
    assert intents.asked == [("resume", "P01")]


def test_after_a_run_the_products_are_offered_again(panel: LeadPanel) -> None:
    panel.show_state(STATES["bag_on"])
    panel.show_state(STATES["start_run"])
    assert panel.pages.currentWidget() is panel.products
    assert panel.start_button.isVisible()


@pytest.mark.parametrize(("before", "after"), [("start_run", "bag_on"), ("bag_on", "start_run")])
def test_whoever_went_on_to_the_doors_stays_there_when_the_line_answers_late(
    qtbot, panel: LeadPanel, before: str, after: str
) -> None:
    door = panel.add_door(Door("CHANGE", Qt.Key.Key_F8, lambda: DoorPage(LIGHT)))
    panel.show_state(STATES[before])
    touch(qtbot, panel.more_button)
    panel.show_state(STATES[after])
    assert door.isVisible()
    assert panel.more_button.isChecked()
    touch(qtbot, panel.more_button)
    shown = panel.run if after == "bag_on" else panel.products
    assert panel.pages.currentWidget() is shown
    assert not panel.more_button.isChecked()


def test_a_new_offer_keeps_what_is_still_there(qtbot, panel: LeadPanel) -> None:
    choose_product(qtbot, panel)
    scan(qtbot, panel, "ROM-2611")
    offer = make_offer()
    fewer = type(offer)(offer.products, offer.lots[1:], offer.people)
    panel.set_offer(offer)
    assert panel.draft.lots == ("ROM-2611",)
    panel.set_offer(fewer)
    assert panel.draft.lots == ()
    assert panel.draft.product == offer.products[0]
    assert "ROM-2611" not in panel.lots.rows["ROM"].buttons


def test_the_order_is_at_most_five_digits_and_can_be_cleared(qtbot, panel: LeadPanel) -> None:
    choose_crew(qtbot, panel, order="0123456")
    assert panel.draft.order == "12345"
    touch(qtbot, panel.crew.pad.keys["CLEAR"])
    assert panel.draft.order == ""
    assert panel.crew.order.text() == "Order: open"


def test_every_target_is_large_enough(qtbot, panel: LeadPanel) -> None:
    ruler = Ruler.of(panel.screen())
    choose_product(qtbot, panel)
    for step in panel.steps:
        step.click()
        qtbot.waitUntil(lambda: panel.pages.currentWidget().isVisible())
        for button in panel.findChildren(QAbstractButton):
            if not button.isVisible():
                continue
            least = KEY_MM if button in panel.crew.pad.keys.values() else 30.0
            assert min(button.width(), button.height()) >= ruler.px(least) - 1, button.text()


def test_no_text_is_read_as_markup(panel: LeadPanel) -> None:
    labels = panel.findChildren(QLabel)
    assert labels
    assert {label.textFormat() for label in labels} == {Qt.TextFormat.PlainText}


def test_who_sent_a_lot_is_read_at_arm_s_length_on_a_small_screen(qtbot):
    """From 0.4 m at 16 minutes of arc: a second line that is too long for one stands on two."""
    small = SCREENS[0]
    with ruler_of(small):
        panel = LeadPanel(Bridge(), FakeIntents(), make_offer())
        qtbot.addWidget(panel)
        panel.resize(small.wide, small.tall)
        panel.show()
        panel.show_state(every_state()["start_run"])
        panel.products.touched.emit("HARBOUR-250")
        QApplication.processEvents()
        buttons = panel.lots.findChildren(TouchButton)
    assert len(buttons) == 5
    for button in buttons:
        words, second, place = button.lettering()
        assert words.whole
        assert second.whole
        assert words.height + second.height < place.height()
        assert reach(second.cap / small.px_per_mm) >= 0.4, second.lines
