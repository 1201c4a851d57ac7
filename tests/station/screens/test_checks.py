"""The checks page, worked by touch and by what the scale shows, at both sizes."""

from datetime import UTC
from fractions import Fraction

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton

from station.core.checks.scale import check_of
from station.core.checks.suspect import Decision
from station.core.checks.tare import empty_bag_of, study_of
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.metrology.scale_check import CheckResult, CheckStage
from station.screens.checks_words import reweigh_rows
from station.screens.doors import Door
from station.screens.theme import Ruler
from station.screens.widgets.live_figure import Live
from station.screens.window import StationWindow
from tests.station.screens.checks_rig import ChecksRig, StillClock, suspected
from tests.station.screens.numbers_rig import touch
from tests.station.screens.states import make_offer

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
TRUE = ("0", "6", "260", "3000")


@pytest.fixture
def make(qtbot):
    def rig(*windows, size=(1024, 768)):
        one = ChecksRig(windows, size)
        qtbot.addWidget(one.page, before_close_func=lambda page: page.stop())
        qtbot.waitUntil(lambda: not one.page.suspect.busy)
        return one

    return rig


@pytest.fixture
def rig(make):
    return make()


def entered(rig) -> tuple[FactRecord, ...]:
    facts, who = rig.asked("enter")[-1]
    return tuple(FactRecord(fact, StillClock().now(), who, 1) for fact in facts)


# --- the scale ----------------------------------------------------------------------------------


def test_a_check_that_holds_is_recorded_by_itself_load_by_load(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    assert rig.asked("bar")[-1][1]
    for shown, verb in zip(TRUE, ("EMPTY", "5 g, 1 g", "200 g, 50 g", "2 kg"), strict=True):
        assert verb in rig.page.scale.verb.view
        rig.rest(shown)
    [record] = entered(rig)
    made = check_of(record)
    assert made.check.result is CheckResult.GOOD
    assert made.check.stage is CheckStage.AS_FOUND
    assert [load.reading.indication.digits for load in made.check.loads] == list(TRUE)
    assert made.certificate
    assert record.who == "P01"
    rig.answer()
    assert rig.page.scale.verb.view == "THE SCALE HOLDS"


def test_bags_wait_until_the_weights_are_off(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    for shown in TRUE:
        rig.rest(shown)
    rig.answer()
    rig.show("3000")
    assert len(rig.asked("bar")) == 1
    rig.show("0", steady=False)
    assert len(rig.asked("bar")) == 1
    rig.show("0")
    assert rig.asked("bar")[-1] == (rig.asked("bar")[0][0], "")


def test_the_keys_written_on_the_buttons_press_them(qtbot, make):
    rig = make(suspected())
    with qtbot.waitActive(rig.page):
        rig.page.activateWindow()
    rig.page.choose(0)
    qtbot.keyClick(rig.page.scale, "s")
    assert rig.page.scale.under_way
    qtbot.keyClick(rig.page.scale, "t")
    assert len(rig.page.scale._guided.readings) == 1
    qtbot.keyClick(rig.page.scale, "a")
    assert rig.page.scale._guided.readings == []
    rig.page.scale.give_up()
    qtbot.keyClick(rig.page.scale, "3")
    qtbot.waitUntil(lambda: not rig.page.suspect.busy)
    qtbot.keyClick(rig.page.suspect, "d")
    assert rig.page.suspect.pages.currentIndex() == 1


def test_an_empty_pan_is_never_taken_for_a_small_weight(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    rig.rest("0")
    rig.rest("0")
    rig.rest("2")
    assert len(rig.page.scale._guided.readings) == 1


def test_a_reading_that_moves_is_not_taken_by_touch_either(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    rig.show("0", steady=False)
    rig.page.scale.take_button.click()
    assert rig.page.scale._guided.readings == []
    assert "steady" in rig.page.scale.message.view
    rig.show("0")
    rig.page.scale.take_button.click()
    assert len(rig.page.scale._guided.readings) == 1


def test_a_failing_load_is_shown_with_its_number_and_limit(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    rig.rest("0")
    rig.rest("6")
    rig.rest("264")
    row = rig.page.scale.loads.view[2]
    assert (row.shown, row.error, row.result) == ("264 g", "+4 g, may be 1 g", CheckResult.FAILED)


def test_giving_up_never_hides_a_load_that_failed(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    rig.rest("0")
    rig.rest("6")
    rig.rest("264")
    rig.page.scale.give_up()
    [record] = entered(rig)
    assert record.fact.result == "failed"
    rig.answer()
    assert "FAILS" in rig.page.scale.verb.view


def test_giving_up_before_records_nothing(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    rig.rest("0")
    rig.page.scale.give_up()
    assert rig.asked("enter") == []
    rig.show("0")
    assert rig.asked("bar")[-1][1] == ""


def test_a_check_that_could_not_be_recorded_says_so(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    for shown in TRUE:
        rig.rest(shown)
    rig.answer(recorded=False, words="the disk is full")
    assert rig.page.scale.verb.view == "Not recorded: the disk is full"


def test_without_a_run_no_check_begins(rig):
    rig.open = False
    rig.show("0")
    assert not rig.page.scale.start_button.isEnabled()
    assert rig.page.scale.verb.view == "NO RUN IS OPEN"


def test_a_run_that_ends_gives_the_check_up(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    rig.open = False
    rig.rest("0")
    assert not rig.page.scale.under_way
    assert rig.asked("bar")[-1][1] == ""


def test_other_panels_wait_while_weights_are_on(qtbot, rig):
    touch(qtbot, rig.page.scale.start_button)
    touch(qtbot, rig.page.tabs[1])
    assert rig.page.panels.currentWidget() is rig.page.scale


# --- empty bags ---------------------------------------------------------------------------------


def start_bag(qtbot, rig, button):
    touch(qtbot, rig.page.tabs[1])
    assert not rig.page.tare.one_button.isEnabled()
    qtbot.keyClicks(rig.page.tare.film, "f-0917")
    touch(qtbot, button(rig.page.tare))


def test_a_film_lot_is_scanned_without_touching_its_field(qtbot, rig):
    """What a scanner types would press the keys of tabs and buttons instead: 1, S, W."""
    page = rig.page
    with qtbot.waitActive(page):
        page.activateWindow()
    touch(qtbot, page.tabs[1])
    for letter in "sw-0917":
        qtbot.keyClicks(page.focusWidget(), letter)
    qtbot.keyClick(page.focusWidget(), Qt.Key.Key_Return)
    assert page.panels.currentWidget() is page.tare
    assert page.tare.film_lot == "SW-0917"
    assert not page.at_work
    qtbot.keyClicks(page.focusWidget(), "w")
    assert page.tare.under_way


def test_the_next_film_lot_takes_the_place_of_the_one_before(qtbot, rig):
    """Behind it, both would be recorded as one code."""
    page = rig.page
    with qtbot.waitActive(page):
        page.activateWindow()
    touch(qtbot, page.tabs[1])
    for code in ("F-0917", "F-0918"):
        touch(qtbot, page.tare.film)
        qtbot.keyClicks(page.tare.film, code)
        qtbot.keyClick(page.tare.film, Qt.Key.Key_Return)
        assert page.tare.film_lot == code


@pytest.mark.parametrize(("shown", "fits"), [("6", True), ("9", False)])
def test_one_empty_bag_is_held_against_the_declared_tare(qtbot, rig, shown, fits):
    start_bag(qtbot, rig, lambda tare: tare.one_button)
    rig.rest("0")
    rig.rest(shown)
    [record] = entered(rig)
    bag = empty_bag_of(record)
    assert (bag.film_lot, bag.shown.digits, bag.fits) == ("F-0917", shown, fits)
    rig.answer()
    assert ("DOES NOT FIT" in rig.page.tare.verb.view) is not fits


def test_a_study_takes_each_bag_between_two_zeros(qtbot, rig):
    start_bag(qtbot, rig, lambda tare: tare.study_button)
    rig.rest("0")
    rig.rest("6")
    rig.rest("7")  # no zero before it
    assert rig.page.tare.count.view == "1 of 25"
    for number in range(24):
        rig.rest("0")
        rig.rest(str(6 + number % 2))
    [record] = entered(rig)
    study = study_of(record)
    assert record.fact.kind is EntryKind.TARE_STUDY
    assert (study.n, study.bag_item, study.film_lot) == (25, "B6", "F-0917")
    assert study.mean == Fraction(13 * 6 + 12 * 7, 25)


def test_a_bag_weighed_wrong_is_weighed_again(qtbot, rig):
    start_bag(qtbot, rig, lambda tare: tare.study_button)
    rig.rest("0")
    rig.rest("6")
    rig.page.tare.again()
    assert rig.page.tare.count.view == "0 of 25"
    rig.rest("6")
    assert rig.page.tare.count.view == "0 of 25"


# --- suspect bags -------------------------------------------------------------------------------


def test_a_window_shows_its_times_its_bags_and_both_bounds(make):
    one = suspected()
    panel = make(one).page.suspect
    assert "240 bags" in panel.words.view
    assert "read high" in panel.words.view
    assert len(panel.picture.view.bags) == 240
    assert panel.picture.view.error == "+4 g"
    assert "249.5 g" in panel.cases.text()  # 253.5 less 4
    assert not panel.before_button.isVisible()


def test_the_list_starts_with_the_lightest(make):
    rows = reweigh_rows(suspected().runs, 3, UTC)
    assert [row[0][-3:] for row in rows] == ["001", "003", "005"]
    # bag 1 came 15 s into an hour: its even growth is 4 * 15/3600 g
    assert rows[0][2:] == ("252", "248", "251.98")


def test_a_decision_needs_a_person_and_a_reason(qtbot, make):
    rig = make(suspected())
    panel = rig.page.suspect
    rig.page.choose(2)
    qtbot.waitUntil(lambda: not panel.busy)
    touch(qtbot, panel.decide_button)
    assert not panel.release_button.isEnabled()
    panel.people.touched.emit("P01")
    assert not panel.release_button.isEnabled()
    panel.ready_made.touched.emit("weighed again")
    assert panel.release_button.isEnabled()
    rig.desk.found = ()
    panel.release_button.held.emit()
    release, decided = (one.fact for one in entered(rig))
    assert (release.kind, release.details["hold"]) == (EntryKind.RELEASE, "h1")
    assert (decided.kind, decided.result) == (EntryKind.SUSPECT, Decision.RELEASED)
    assert decided.details["reason"] == "weighed again"
    rig.answer()
    qtbot.waitUntil(lambda: not panel.busy)
    assert panel.words.view == "No bag is suspect."


def test_bags_before_a_dated_step_can_be_released_alone(qtbot, make):
    rig = make(suspected(step=True))
    panel = rig.page.suspect
    rig.page.choose(2)
    qtbot.waitUntil(lambda: not panel.busy)
    panel.people.touched.emit("P01")
    panel.ready_made.touched.emit("within both bounds")
    touch(qtbot, panel.decide_button)
    assert panel.before_button.isVisible()
    panel.before_button.held.emit()
    facts, _ = rig.asked("enter")[-1]
    assert [fact.details.get("hold") for fact in facts] == ["h1", None]


# --- its place ----------------------------------------------------------------------------------


@pytest.mark.parametrize("size", [(1024, 768), (1920, 1080)])
def test_every_button_is_large_enough_for_a_glove(qtbot, make, size):
    rig = make(suspected(step=True), size=size)
    least = Ruler.of(rig.page.screen()).touch()
    for index in range(3):
        rig.page.choose(index)
        qtbot.waitUntil(lambda: not rig.page.suspect.busy)
        for step in range(2):
            rig.page.suspect.pages.setCurrentIndex(step)
            for button in rig.page.findChildren(QAbstractButton):
                if button.isVisible():
                    assert min(button.width(), button.height()) >= least, button.text()


def test_the_figure_can_be_read_from_two_metres(rig):
    """1/200 of the distance: 10 mm for a capital; common practice of human factors."""
    rig.show("3000")
    figure = rig.page.scale.figure
    assert figure.view == Live("3000", "g", steady=True)
    assert figure.texts[0].cap >= 10 * Ruler.of(rig.page.screen()).px(1)


def test_f4_leads_there_and_back(qtbot, rig):
    window = StationWindow(
        rig.bridge, rig.intents, make_offer(), doors=(Door("CHECKS", rig.key, lambda: rig.page),)
    )
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    qtbot.keyClick(window, rig.key)
    assert window.screens.currentWidget() is rig.page
    touch(qtbot, rig.page.back_button)
    assert window.screens.currentWidget() is window.lead
