"""The page of a changeover, worked by touch, at the smallest and the largest screen."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from station.core.clearance import Explanation, Gate, Point
from station.core.pauses import LOOKS, Reason
from station.line.state import EntryAnswer
from station.screens.bridge import Bridge
from station.screens.change import ChangePage
from station.screens.theme import Ruler
from station.screens.widgets.touch_button import TouchButton
from tests.station.screens.change_states import LEADS, SEALS, SigningSource
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import every_state

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
SIZES = ((1024, 768), (1920, 1080))


class Worked:
    """A page with its intents, and hands for it."""

    def __init__(self, qtbot, source, size=SIZES[0]):
        self.qtbot, self.source, self.intents = qtbot, source, FakeIntents()
        self.page = ChangePage(Bridge(), self.intents, source, LEADS)
        qtbot.addWidget(self.page)
        self.page.resize(*size)
        with qtbot.waitExposed(self.page):
            self.page.show()

    def touch(self, button):
        self.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)

    def hold(self, button):
        with self.qtbot.waitSignal(button.held):
            self.qtbot.mousePress(button, Qt.MouseButton.LeftButton)
        self.qtbot.mouseRelease(button, Qt.MouseButton.LeftButton)

    def key_in(self, digits):
        for digit in digits:
            self.touch(self.page.count.pad.keys[digit])

    def look_at(self, page, things):
        for thing in things:
            page.tiles.buttons[str(thing)].click()

    @property
    def entered(self):
        return [what for name, what in self.intents.asked if name == "enter"]


@pytest.fixture
def work(qtbot):
    return lambda source=None, size=SIZES[0]: Worked(qtbot, source or SigningSource(), size)


def test_the_run_before_is_counted_and_signed_by_a_named_person(work):
    hands = work()
    assert hands.page.pages.currentWidget() is hands.page.count
    hands.touch(hands.page.people[0])
    hands.key_in("312")
    hands.hold(hands.page.sign_button)
    (((fact,), who),) = hands.entered
    assert (who, fact.subject, fact.result) == ("L01", str(Gate.RECONCILED), "signed")
    hands.source.wanting = (Gate.CLEARED,)
    hands.page.show_answer(EntryAnswer((fact.uid,), True, "recorded"))
    assert hands.page.pages.currentWidget() is hands.page.clear


def test_a_difference_is_asked_about_before_it_is_signed(work):
    hands = work()
    hands.touch(hands.page.people[0])
    hands.key_in("310")
    assert hands.page.count.said.text() == "On record 312, counted 310: 2 fewer. Why?"
    hands.hold(hands.page.sign_button)
    assert hands.entered == []
    assert "2 bags fewer than recorded" in hands.page.message.text()
    hands.page.count.reasons.buttons[str(Explanation.SAMPLED)].click()
    hands.hold(hands.page.sign_button)
    (((fact,), _),) = hands.entered
    assert (fact.details["difference"], fact.details["explanation"]) == (-2, "taken by QA")


def test_nothing_is_signed_without_a_name_or_a_count(work):
    hands = work()
    hands.hold(hands.page.sign_button)
    assert "Count the bags first" in hands.page.message.text()
    hands.key_in("312")
    hands.hold(hands.page.sign_button)
    assert "Touch who signs" in hands.page.message.text()
    assert hands.entered == []


def test_every_point_of_a_clear_line_is_touched(work):
    hands = work(SigningSource((Gate.CLEARED,)))
    page = hands.page
    hands.touch(page.people[0])
    hands.look_at(page.clear, list(Point)[:-1])
    hands.hold(page.sign_button)
    assert hands.entered == []
    assert str(list(Point)[-1]) in page.message.text()
    hands.look_at(page.clear, list(Point)[-1:])
    hands.hold(page.sign_button)
    (((fact,), _),) = hands.entered
    assert fact.subject == str(Gate.CLEARED)


def test_a_point_can_be_taken_back(work):
    hands = work(SigningSource((Gate.CLEARED,)))
    hands.look_at(hands.page.clear, [Point.BINS, Point.BINS])
    assert not any(hands.page.clear.points.values())


def test_two_fast_touches_stop_the_line_once(work):
    """A second stop on record would stay open after the line has gone on."""
    hands = work(SigningSource(()))
    hands.touch(hands.page.people[0])
    for _ in range(2):
        hands.touch(hands.page.pause.tiles.buttons[str(Reason.BREAK)])
    assert len(hands.entered) == 1


@pytest.mark.parametrize("reason", Reason)
def test_the_line_stops_for_a_reason_and_goes_on_after_a_look(work, reason):
    hands = work(SigningSource(()))
    assert hands.page.pages.currentWidget() is hands.page.pause
    hands.touch(hands.page.people[1])
    hands.page.pause.tiles.buttons[str(reason)].click()
    (((begun,), who),) = hands.entered
    assert (who, begun.details["reason"]) == ("Q01", str(reason))
    standing = work(SigningSource((), reason=reason))
    page = standing.page
    assert page.sign_button.text() == "GO ON"
    standing.touch(page.people[0])
    standing.look_at(page.pause, LOOKS[reason])
    standing.hold(page.sign_button)
    (((ended,), _),) = standing.entered
    assert ended.result == "resumed"


def test_a_refusal_of_the_store_is_said_and_nothing_is_lost(work):
    hands = work()
    hands.touch(hands.page.people[0])
    hands.key_in("312")
    hands.hold(hands.page.sign_button)
    uid = hands.source.made[-1].uid
    hands.page.show_answer(EntryAnswer(("another",), False, "not mine"))
    assert "asked" in hands.page.message.text()
    hands.page.show_answer(EntryAnswer((uid,), False, "the disk is full"))
    assert hands.page.message.text() == "Refused. the disk is full"
    assert hands.page.count.counted == 312


@pytest.mark.parametrize("size", SIZES)
def test_everything_is_large_enough_and_nothing_is_cut(work, size):
    hands = work(size=size)
    page = hands.page
    from dataclasses import replace

    page.show_state(replace(every_state()["bag_on"], seals=SEALS))
    hands.key_in("310")
    least = Ruler.of(page.screen()).touch(30)
    for tab in page.tabs:
        hands.touch(tab)
        for button in page.findChildren(TouchButton):
            if button.isVisible() and button not in page.count.pad.keys.values():
                assert button.width() >= least, button.text()
                assert button.height() >= least, button.text()
        for label in page.findChildren(QLabel):
            if label.isVisible() and label.text():
                assert label.sizeHint().height() <= label.height() + 1 or label.wordWrap()
    for index, one in enumerate(page.people):
        for other in page.people[index + 1 :]:
            assert not one.geometry().intersects(other.geometry())
