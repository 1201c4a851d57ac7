"""The lots page: what is touched becomes facts, and the answer is said."""

import pytest
from PySide6.QtCore import Qt

from station.core.journal import EntryKind
from station.core.line_lots import Move, move_of
from station.core.receiving import delivery_of, held_lot
from station.line.state import EntryAnswer
from station.screens.bridge import Bridge
from station.screens.lots import LotsPage
from station.screens.lots_words import bar_of, left_words
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.lots_states import (
    BAG,
    CROWDED,
    NAMES,
    OVERLAP,
    PEOPLE,
    LotsSourceStub,
    row,
)
from tests.station.screens.states import every_state

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
SIZES = ((1024, 768), (1920, 1080))


@pytest.fixture
def intents():
    return FakeIntents()


@pytest.fixture
def page(qtbot, intents):
    page = LotsPage(Bridge(), intents, LotsSourceStub(), PEOPLE)
    qtbot.addWidget(page)
    page.resize(*SIZES[0])
    page.show()
    page.show_state(every_state()["bag_on"])
    return page


def entered(intents):
    name, (facts, who) = intents.asked[-1]
    assert name == "enter"
    return facts, who


def scan(field, text):
    field.setText(text)
    field.returnPressed.emit()


def test_a_scanned_lot_is_loaded_with_its_mass_by_whoever_leads_the_run(page, intents):
    scan(page.line.scan, "rad-0418")
    page.line.mass_button.click()
    for digit in "1205":
        page.line.pad.keys[digit].click()
    page.line.buttons["LOAD"].click()
    (fact,), who = entered(intents)
    move = move_of(fact)
    assert (move.move, move.lot, str(move.quantity)) == (Move.LOADED, "RAD-0418", "120.5 kg")
    assert who == "P01"
    page.show_answer(EntryAnswer((fact.uid,), True, "recorded"))
    assert page.message.text() == "Lot RAD-0418: loaded, on record."
    assert page.line.quantity is None


def test_a_case_label_names_its_lot_at_the_line_too(page):
    scan(page.line.scan, "01095212345432131026325-X")
    assert page.line.chosen == "26325-X"
    scan(page.line.scan, "010952123454321310RAD-0418")
    assert page.line.chosen == "RAD-0418"


def test_a_clean_load_takes_the_old_lots_of_the_component_off_in_the_same_entry(page, intents):
    page.line.choose("ROM-26327-B")
    page.line.buttons["LOAD CLEAN"].click()
    facts, _ = entered(intents)
    assert [(fact.result, fact.subject) for fact in facts] == [
        ("empty", "ROM-26325-A"),
        ("loaded", "ROM-26327-B"),
    ]


@pytest.mark.parametrize(
    ("button", "move"), [("FINISHING", "finishing"), ("EMPTY", "empty"), ("RETURN", "returned")]
)
def test_a_lot_on_the_line_may_leave_it(page, intents, button, move):
    page.line.bars.touched.emit("ROM-26325-A")
    page.line.buttons[button].click()
    (fact,), _ = entered(intents)
    assert (fact.result, fact.subject) == (move, "ROM-26325-A")


def test_a_lot_that_is_not_on_the_line_cannot_leave_it(page):
    page.line.choose("RAD-0418")
    enabled = {word for word, button in page.line.buttons.items() if button.isEnabled()}
    assert enabled == {"LOAD", "LOAD CLEAN", "HOLD"}
    page.line.choose("NO-SUCH")
    assert not any(button.isEnabled() for button in page.line.buttons.values())
    assert "receive it first" in page.line.words.text()


def test_two_fast_touches_record_one_thing(page, intents):
    """A second touch before the line has answered would take the same kilograms off twice."""
    page.line.choose("ROM-26327-B")
    page.line.mass_button.click()
    page.line.pad.keys["9"].click()
    for _ in range(2):
        page.line.buttons["WASTE"].click()
    assert len(intents.asked) == 1
    (fact,), _ = entered(intents)
    page.show_answer(EntryAnswer((fact.uid,), False, "the disk is full"))
    page.line.buttons["WASTE"].click()
    assert len(intents.asked) == 2


def test_waste_without_its_mass_is_refused_before_the_line_is_asked(page, intents):
    page.line.choose("ROM-26325-A")
    page.line.buttons["WASTE"].click()
    assert not intents.asked
    assert "weigh it" in page.message.text()


def test_a_lot_is_held_from_the_line(page, intents):
    page.line.choose("ROM-26325-A")
    page.line.buttons["HOLD"].held.emit()
    (fact,), _ = entered(intents)
    assert (fact.kind, held_lot(fact)) == (EntryKind.HOLD, "ROM-26325-A")


def test_a_held_lot_is_released_by_qa_alone(page, intents):
    page.line.choose("ROM-HELD")
    button = page.line.buttons["HOLD"]
    assert button.text() == "RELEASE"
    button.held.emit()
    assert not intents.asked
    assert "QA or a manager releases" in page.message.text()
    page.choose_person("Q01")
    button.held.emit()
    (fact,), who = entered(intents)
    assert (fact.kind, fact.subject, who) == (EntryKind.RELEASE, "ROM-HELD", "Q01")


def test_the_content_of_a_scanned_bag_goes_back_as_rework(page, intents):
    scan(page.line.scan, BAG)
    assert "rework of A2632901" in page.line.words.text()
    page.line.buttons["LOAD"].click()
    (fact,), _ = entered(intents)
    move = move_of(fact)
    assert (move.move, move.serials, str(move.quantity)) == (Move.REWORK, (BAG,), "252 g")


def test_the_line_s_refusal_is_said_and_the_mass_stays(page, intents):
    page.line.choose("RAD-0418")
    page.line.pad.keys["7"].click()
    page.line.buttons["LOAD"].click()
    (fact,), _ = entered(intents)
    page.show_answer(EntryAnswer((fact.uid,), False, "6 lots do not fit this label"))
    assert page.message.text() == "Refused. 6 lots do not fit this label"
    assert page.line.quantity is not None


def test_two_stacked_symbols_scanned_one_by_one_and_two_touches_are_a_delivery(page, intents):
    page.go_to(1)
    assert not page.receive.take_button.isEnabled()
    scan(page.receive.scan, "1326112410TR26-118")
    scan(page.receive.scan, "01095212345432133102041250")
    page.receive.components.touched.emit("CAR")
    page.receive.suppliers.touched.emit("Tarn Roots")
    page.receive.pad.keys["3"].click()
    page.receive.pad.keys["4"].click()
    page.receive.warmth_button.click()
    page.receive.take_button.click()
    (fact,), _ = entered(intents)
    delivery = delivery_of(fact)
    assert (delivery.lot.code, str(delivery.quantity)) == ("TR26-118", "412.50 kg")
    assert (str(delivery.temperature), delivery.lot.component) == ("3.4", "CAR")
    page.show_answer(EntryAnswer((fact.uid,), True, "recorded"))
    assert page.receive.notes.code is None


def test_a_symbol_of_another_case_is_refused_and_what_was_noted_stays(page):
    page.go_to(1)
    scan(page.receive.scan, "1326112410TR26-118")
    scan(page.receive.scan, "10TR26-119")
    assert "Code stands for TR26-118 and for TR26-119" in page.message.text()
    assert page.receive.notes.code == "TR26-118"


def test_a_day_shows_its_year_and_ends_what_was_refused_before(page):
    """31 December keyed in November is one of last year, which a weekday alone does not tell."""
    receive = page.receive
    receive.pad.digits = "999"
    receive.harvest_button.click()
    assert "is no day" in page.message.text()
    receive.pad.digits = "2411"
    receive.packed_button.click()
    assert page.message.text() == ""
    said = receive.told.text()
    assert f"{receive.notes.packed.year}" in said.split("Packed")[1]
    for digit in "3112":
        receive.pad.keys[digit].click()
    day = page.receive._source.day("3112")
    assert receive.harvest_button.small.endswith(str(day.year))


def test_a_delivery_without_a_label_is_received_by_touch_and_keys(page, intents):
    receive = page.receive
    receive.components.touched.emit("ROM")
    receive.suppliers.touched.emit(next(iter(page.receive.suppliers.buttons)))
    for key, day in ((receive.harvest_button, "2311"), (receive.packed_button, "2411")):
        receive.pad.digits = day
        key.click()
    receive.scan.setText("FIELD 7-B")
    receive.code_button.click()
    receive.scan.setText("delivery note 4711")
    receive.paper_button.click()
    notes = receive.notes
    assert (notes.code, notes.reference) == ("FIELD 7-B", "delivery note 4711")
    assert (notes.harvested.day, notes.packed.day) == (23, 24)
    receive.pad.digits = "3102"
    receive.harvest_button.click()
    assert "3102 is no day" in page.message.text()


def test_a_warm_delivery_is_received_and_held_in_one_entry(page, intents):
    page.go_to(1)
    page.receive.components.touched.emit("CAR")
    page.receive.suppliers.touched.emit("Tarn Roots")
    page.receive.hold_button.click()
    facts, _ = entered(intents)
    assert [fact.kind for fact in facts] == [EntryKind.DELIVERY, EntryKind.HOLD]


def test_nobody_acts_without_a_name(qtbot, intents):
    page = LotsPage(Bridge(), intents, LotsSourceStub(), PEOPLE)
    qtbot.addWidget(page)
    page.line.choose("ROM-26325-A")
    page.line.buttons["EMPTY"].click()
    assert not intents.asked
    assert "who says so?" in page.message.text().lower()
    page.crew.touched.emit("Q01")
    page.line.buttons["EMPTY"].click()
    assert entered(intents)[1] == "Q01"


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("tab", range(3))
def test_every_page_keeps_the_size_of_its_window(qtbot, size, tab):
    page = LotsPage(Bridge(), FakeIntents(), LotsSourceStub(CROWDED), PEOPLE)
    qtbot.addWidget(page)
    page.resize(*size)
    page.show()
    page.go_to(tab)
    qtbot.wait_until(lambda: page.pages.currentIndex() == tab)
    assert (page.width(), page.height()) == size


def test_bars_say_what_is_left_and_strike_a_held_lot(page):
    bars = [bar_of(one, NAMES.get, "CAR-7710") for one in CROWDED]
    by_lot = {bar.lot: bar for bar in bars}
    assert (by_lot["RAD-0418"].held, by_lot["RAD-0418"].state) == (True, "HELD")
    assert by_lot["CAB-3301"].state == "empty by now?"
    assert by_lot["ROM-HELD"].left == "not weighed in"
    assert by_lot["CAR-7710"].chosen
    assert left_words(row("CAR-7710", 71, 4).balance) == "71.0 kg ± 4.0"
    page.line.bars.set(tuple(bars))
    assert "HELD" in page.line.bars.accessibleName()
    assert len(page.line.bars.cells()) == len(bars)


def test_a_touch_on_a_bar_chooses_its_lot(page, qtbot):
    cell = page.line.bars.cells()[1]
    qtbot.mouseClick(page.line.bars, Qt.MouseButton.LeftButton, pos=cell.center().toPoint())
    assert page.line.chosen == OVERLAP[1].lot
