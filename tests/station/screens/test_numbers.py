"""The numbers page, worked by touch and by keys, at the smallest and the largest screen."""

import threading

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QAbstractButton

from station.core.metrology.clause import RuleRefused
from station.line.numbers import Span
from station.line.state import EntryAnswer
from station.screens.bridge import Bridge
from station.screens.doors import Door
from station.screens.lead import LeadPanel
from station.screens.numbers import NumbersPage
from station.screens.numbers_words import rows, shown
from station.screens.theme import Ruler
from station.screens.window import StationWindow
from tests.station.screens import numbers_states
from tests.station.screens.numbers_rig import SIZES, STATES, ProposalIntents, Shown, touch
from tests.station.screens.states import every_state, make_offer

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only


@pytest.fixture
def show(qtbot, tmp_path):
    """Give a function that shows a source on a page and waits for its figures."""
    return lambda source, size=(1024, 768): Shown(qtbot, source, tmp_path / "charts", size)


# --- what it says -------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("name", "word"), [("safe", "SAFE"), ("thin", "THIN"), ("failing", "FAILING")]
)
def test_the_plate_says_the_chance_and_its_word(show, name, word):
    source = STATES[name]()
    plate = show(source).page.plate.view
    chance = source.figures(Span.RUN).batch.outlook
    assert plate.word == word
    assert plate.chance == f"{chance.passing:.4f}"


def test_each_outlook_has_another_shape_without_colour(show):
    """As a photograph in grey: the corner, the edge and the middle tell them apart."""
    pictures = {}
    for name in ("safe", "thin", "failing"):
        grey = show(STATES[name]()).page.plate.grab().toImage()
        grey = grey.convertToFormat(QImage.Format.Format_Grayscale8)
        edge = {grey.pixelColor(3, y).lightness() // 40 for y in range(0, grey.height(), 2)}
        inside = grey.pixelColor(30, grey.height() // 2).lightness() // 40
        pictures[name] = (len(edge) > 1, inside)
    assert len(set(pictures.values())) >= 2
    assert pictures["safe"][0] is False  # solid to its edge; the others are barred or hatched
    assert pictures["thin"][0]
    assert pictures["failing"][0]


def test_no_green_is_on_the_page(show):
    shown_page = show(STATES["safe"](), (1280, 800))
    shown_page.work_out()
    for tab in shown_page.page.tabs:
        tab.click()
        picture = shown_page.page.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
        pixels = np.frombuffer(picture.constBits(), np.uint8).reshape(-1, 4).astype(int)
        blue, green, red = pixels[:, 0], pixels[:, 1], pixels[:, 2]
        assert (green <= np.maximum(red, blue) + 12).all()


def test_the_figures_come_in_their_order_and_size(show):
    source = STATES["safe"]()
    one = show(source)
    page = one.page
    look_at_the_run(one)
    names = [row.name for row in page.figures.view]
    assert names == ["Mean so far", "Mean needed", "Below T1", "Given away", "Target"]
    caps = [value.cap for _, _, value, _ in page.figures.texts]
    assert caps == sorted(caps, reverse=True)
    assert page.plate.texts["chance"].cap > 1.5 * caps[0]
    values = {row.name: (row.value, row.note) for row in page.figures.view}
    figures = source.figures(Span.RUN)
    assert values["Mean so far"][0].startswith(f"{float(figures.batch.packs.mean):.3f}")
    assert values["Below T1"] == ("0 of 30 allowed", "net below 241 g")
    assert values["Mean needed"][1] == "on the 300 bags to come, any above the floor will do"


def test_a_lasting_change_is_asked_about_beside_a_hatched_edge(show):
    last = show(STATES["wandering"]()).page.figures.view[-1]
    assert last.attend
    assert "is this still the same product?" in last.value


def test_a_light_mean_is_marked_and_money_is_said():
    source = STATES["failing"]()
    assert source.numbers is not None
    source.numbers.price_per_kg = numbers_states.grams("4.2").amount
    found = {row.name: row for row in rows(source.figures(Span.RUN), None)}
    assert found["Mean so far"].attend
    assert "in money" in found["Given away"].note


def test_without_a_forecast_the_reason_stands_in_its_place(show):
    plate = show(STATES["begun"]()).page.plate.view
    assert (plate.word, plate.chance) == ("NO FORECAST", "")
    assert "at least two" in plate.under
    assert show(STATES["none"]()).page.plate.view == shown(None)


def test_what_cannot_be_read_is_said(show):
    source = STATES["safe"]()
    source.refusal = RuleRefused("the run was packed under another edition")
    one = show(source)
    one.qtbot.waitUntil(lambda: "another edition" in one.page.message.view)


# --- what a person does -------------------------------------------------------------------------


def look_at_the_run(one: Shown) -> None:
    touch(one.qtbot, one.page.span_button)
    one.qtbot.waitUntil(lambda: one.page.plate.view.under.startswith("whole run"))


def test_the_batch_is_the_run_or_the_hour(show):
    one = show(STATES["safe"]())
    assert one.page.span_button.text() == "THIS HOUR"  # its rules judge hourly output
    look_at_the_run(one)
    assert one.page.span_button.text() == "WHOLE RUN"
    touch(one.qtbot, one.page.span_button)
    one.qtbot.waitUntil(lambda: one.page.plate.view.under.startswith("this hour"))
    assert show(STATES["thin"]()).page.span_button.text() == "WHOLE RUN"  # it has ended


def test_keys_do_what_buttons_do(show, qtbot):
    one = show(STATES["safe"]())
    page = one.page
    page.activateWindow()
    page.setFocus()
    for key, index in ((Qt.Key.Key_W, 1), (Qt.Key.Key_D, 2), (Qt.Key.Key_T, 0)):
        qtbot.keyClick(page, key)
        assert page.pages.currentIndex() == index
    with qtbot.waitSignal(page._advising.done):
        qtbot.keyClick(page, Qt.Key.Key_O)
    qtbot.waitUntil(lambda: page.record_button.isEnabled())
    qtbot.keyClick(page, Qt.Key.Key_R)
    assert len(one.intents.entered) == 1
    qtbot.keyClick(page, Qt.Key.Key_K)
    assert page.reading.view.startswith("Kept as")
    qtbot.keyClick(page, Qt.Key.Key_B)
    qtbot.waitUntil(lambda: page.plate.view.under.startswith("whole run"))


def test_a_proposal_is_worked_out_and_recorded_once(show):
    one = show(STATES["safe"]())
    page = one.page
    assert not page.record_button.isEnabled()
    one.work_out()
    assert page.record_button.strong
    assert "A manager approves" in page.message.view
    assert "Target 250" in page.message.view
    touch(one.qtbot, page.record_button)
    assert not page.record_button.isEnabled()
    ((facts, who),) = one.intents.entered
    assert (facts[0].result, who) == ("proposed", "P01")
    one.bridge.entered.emit(EntryAnswer((facts[0].uid,), True, "recorded"))
    assert "on record" in page.message.view
    assert not page.record_button.isEnabled()


def test_a_refused_record_may_be_asked_again(show):
    one = show(STATES["safe"]())
    one.work_out()
    touch(one.qtbot, one.page.record_button)
    ((facts, _),) = one.intents.entered
    one.bridge.entered.emit(EntryAnswer(("another",), False, "not yours"))
    assert not one.page.record_button.isEnabled()
    one.bridge.entered.emit(EntryAnswer((facts[0].uid,), False, "the disk is full"))
    assert one.page.message.view == "Not recorded: the disk is full"
    assert one.page.record_button.isEnabled()


def test_long_work_shows_how_far_it_is_and_is_given_up(show):
    source = STATES["safe"]()
    go_on = threading.Event()

    def slow(tried):
        for count in range(1, 10_000):
            tried(count)
            go_on.wait(0.005)
        raise AssertionError("nobody stopped it")

    source.advice = slow
    one = show(source)
    touch(one.qtbot, one.page.work_button)
    one.qtbot.waitUntil(lambda: "tried" in one.page.message.view)
    assert one.page.work_button.text() == "GIVE UP"
    with one.qtbot.waitSignal(one.page._advising.ended):
        touch(one.qtbot, one.page.work_button)
    assert one.page.work_button.text() == "WORK OUT"
    assert one.page.message.view == "Given up."
    assert not one.page.record_button.isEnabled()


def test_figures_are_asked_for_when_the_line_counted_a_bag_and_not_otherwise(show):
    one = show(STATES["safe"]())
    before = len(one.source.asked)
    one.page._look()
    one.qtbot.waitUntil(lambda: not one.page._looking.busy)
    assert len(one.source.asked) == before
    one.page.show_state(every_state()["bag_on"])
    one.page._look()
    one.qtbot.waitUntil(lambda: not one.page._looking.busy)
    assert len(one.source.asked) == before + 1


# --- geometry -----------------------------------------------------------------------------------


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("name", STATES)
def test_nothing_is_cut_off_or_overlaps(show, name, size):
    one = show(STATES[name](), size)
    if name in ("safe", "thin", "failing"):
        one.work_out()
    page = one.page
    assert (page.width(), page.height()) == size
    texts = [*page.plate.texts.values()]
    texts += [text for row in page.figures.texts for text in row[1:]]
    texts += [page.message.shown]
    assert all(text.whole for text in texts), [text.lines for text in texts if not text.whole]
    for box, label, value, note in page.figures.texts:
        assert box.bottom() <= page.figures.height() + 0.5
        assert label.width + value.width < page.figures.width()
        assert value.height + note.height < box.height()
    for tab in page.tabs:
        tab.click()
        parts = [page.plate, page.figures, page.pages, page.reading, *page.tabs]
        parts += [page.span_button, page.keep_button, page.back_button]
        parts += [page.offer] if page.offer.isVisible() else []
        boxes = [part.geometry() for part in parts]
        assert all(page.rect().contains(box) for box in boxes)
        for index, box in enumerate(boxes):
            assert not any(box.intersects(other) for other in boxes[index + 1 :])
        assert page.pages.height() > 0.35 * page.height()
        assert page.reading.shown.whole, page.reading.view


@pytest.mark.parametrize("size", SIZES)
def test_every_target_is_large_enough(show, size):
    page = show(STATES["safe"](), size).page
    least = Ruler.of(page.screen()).px(30.0) - 1
    for button in page.findChildren(QAbstractButton):
        if button.isVisible():
            assert min(button.width(), button.height()) >= least, button.text()


# --- its place in the window --------------------------------------------------------------------


@pytest.fixture
def window(qtbot, tmp_path):
    bridge, intents = Bridge(), ProposalIntents()
    page = NumbersPage(bridge, intents, STATES["safe"](), tmp_path)
    door = Door("NUMBERS", Qt.Key.Key_F3, lambda: page)
    one = StationWindow(bridge, intents, make_offer(), doors=(door,))
    qtbot.addWidget(one)
    one.show()
    one.activateWindow()
    return one


def test_the_lead_s_button_and_f3_lead_there_and_back(qtbot, window):
    window.show_lead()
    touch(qtbot, window.lead.more_button)
    touch(qtbot, window.lead.doors["NUMBERS"])
    assert window.screens.currentWidget() is window.doors[0].page
    touch(qtbot, window.doors[0].page.back_button)
    assert window.screens.currentWidget() is window.lead
    qtbot.keyClick(window, Qt.Key.Key_F3)
    assert window.screens.currentWidget() is window.doors[0].page
    qtbot.keyClick(window, Qt.Key.Key_F3)
    assert window.screens.currentWidget() is window.lead


def test_the_page_rests_while_it_is_not_seen(qtbot, window):
    assert not window.doors[0].page._timer.isActive()
    window.go_through(window.doors[0])
    assert window.doors[0].page._timer.isActive()
    window.show_packer()
    assert not window.doors[0].page._timer.isActive()


def test_without_doors_there_is_no_button(qtbot):
    panel = LeadPanel(Bridge(), ProposalIntents(), make_offer())
    qtbot.addWidget(panel)
    assert not panel.doors
