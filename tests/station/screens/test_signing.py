"""Every page's signatures, worked by touch: names, PINs on big keys, badges, and nobody."""

import threading

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit, QWidget

from station.core.checks.first_off import FirstOff, first_off_fact
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.label_life import Fate, Resolve
from station.line.state import EntryAnswer, RunAnswer, RunChoice
from station.screens.bridge import Bridge
from station.screens.doors import Door, DoorPage
from station.screens.screen_guard import ScreenGuard
from station.screens.signing import SignedIntents
from station.screens.signing_sheet import SigningSheet
from station.screens.theme import LIGHT, TOUCH_MM, Ruler
from station.screens.window import StationWindow
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.signing_rig import CREW, PINS, PinSource
from tests.station.screens.states import every_state, make_offer

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
PATIENCE_S = 60.0
GATE = Fact(EntryKind.GATE, "g1", "cleared", "signed")
FREE = Fact(EntryKind.RELEASE, "f1", "ROM-1", "released")
HOLD = Fact(EntryKind.HOLD, "h1", "ROM-1", "held")
CHOICE = RunChoice("HARBOUR-250", 1, ("ROM-1",), "L01", "P01")


class Worked:
    """A sheet over an empty page, the line behind it, and hands."""

    def __init__(self, qtbot, size=(1024, 768)):
        self.qtbot, self.line = qtbot, FakeIntents()
        self.source, self.bridge = PinSource(), Bridge()
        self.intents = SignedIntents(self.line, self.source, self.bridge, CREW)
        self.entered, self.answered = [], []
        self.bridge.entered.connect(self.entered.append)
        self.bridge.answered.connect(self.answered.append)
        self.page = QWidget()
        qtbot.addWidget(self.page)
        self.page.resize(*size)
        self.sheet = SigningSheet(self.intents, parent=self.page)
        self.sheet.resize(*size)
        with qtbot.waitExposed(self.page):
            self.page.show()

    def touch(self, button):
        self.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)

    def choose(self, who):
        self.touch(self.sheet.tiles.buttons[who])

    def key_in(self, pin):
        for digit in pin:
            self.touch(self.sheet.pad.keys[digit])
        self.touch(self.sheet.pad.keys["SIGN"])
        self.settle()

    def settle(self):
        self.qtbot.waitUntil(lambda: not self.sheet.work.busy)

    def scan(self, code):
        self.sheet.badge.take("", code)
        self.settle()

    @property
    def asked(self):
        return self.line.asked


@pytest.fixture
def hands(qtbot):
    return Worked(qtbot)


def test_what_needs_a_name_alone_goes_straight_to_the_line(hands):
    hands.intents.enter((HOLD,), "P01")
    assert hands.asked == [("enter", ((HOLD,), "P01"))]
    assert not hands.sheet.isVisible()


def test_the_named_person_keys_in_a_pin_and_the_line_is_asked(hands):
    hands.intents.enter((GATE,), "L01")
    assert hands.sheet.isVisible()
    assert hands.asked == []
    assert hands.sheet.who == "L01"
    hands.key_in(PINS["L01"])
    assert hands.asked == [("enter", ((GATE,), "L01"))]
    assert not hands.sheet.isVisible()


def test_another_person_who_may_signs_instead(hands):
    hands.intents.start_run(CHOICE)
    hands.choose("L02")
    hands.key_in(PINS["L02"])
    (asked,) = hands.asked
    assert (asked[0], asked[1].lead) == ("start_run", "L02")


def test_only_those_who_may_are_shown_and_who_has_no_pin_is_struck(hands):
    hands.intents.enter((FREE,), "L01")
    assert set(hands.sheet.tiles.buttons) == {"Q01", "M01"}
    assert hands.sheet.tiles.buttons["M01"].struck
    assert hands.sheet.who == "Q01"


def test_a_wrong_pin_is_refused_in_words_and_can_be_given_again(hands):
    hands.intents.enter((GATE,), "L01")
    hands.key_in("000111")
    assert hands.sheet.message.text() == "This PIN is not right"
    assert hands.asked == []
    hands.key_in(PINS["L01"])
    assert len(hands.asked) == 1


def test_a_keyboard_alone_signs(hands):
    """Space on a name, then the PIN; or keys of the pad in front, and Enter there."""
    hands.intents.enter((FREE,), "")
    hands.sheet.tiles.buttons["Q01"].setFocus()
    QTest.keyClick(hands.sheet.focusWidget(), Qt.Key.Key_Space)
    QTest.keyClicks(hands.sheet.focusWidget(), PINS["Q01"])
    QTest.keyClick(hands.sheet.focusWidget(), Qt.Key.Key_Return)
    hands.settle()
    assert len(hands.asked) == 1
    hands.intents.enter((FREE,), "Q01")
    hands.sheet.pad.keys["5"].setFocus()
    for key in (*PINS["Q01"], Qt.Key.Key_Return):
        send = QTest.keyClicks if isinstance(key, str) else QTest.keyClick
        send(hands.sheet.focusWidget(), key)
    hands.settle()
    assert len(hands.asked) == 2


def test_touching_a_name_ends_what_was_refused_before(hands):
    hands.sheet.unlock(lambda: None)
    hands.key_in(PINS["Q01"])
    assert hands.sheet.message.text() == "Touch your name first."
    hands.choose("Q01")
    assert hands.sheet.message.text() == ""


def test_what_is_given_up_while_it_is_checked_signs_nothing(hands, monkeypatch):
    checked, sign = threading.Event(), hands.source.sign

    def slow(*words, **named):
        checked.wait(PATIENCE_S)
        return sign(*words, **named)

    monkeypatch.setattr(hands.source, "sign", slow)
    hands.intents.enter((HOLD, GATE), "L01")
    for key in (*PINS["L01"], "SIGN"):
        hands.touch(hands.sheet.pad.keys[key])
    assert hands.sheet.message.text() == "checking …"
    hands.touch(hands.sheet.drop_button)
    assert not hands.sheet.isVisible()
    hands.intents.enter((GATE,), "L01")
    assert hands.sheet.pad.isEnabled()
    checked.set()
    hands.sheet.work.wait()
    hands.qtbot.wait(20)
    assert hands.asked == []
    assert hands.sheet.isVisible()
    hands.key_in(PINS["L01"])
    assert hands.asked == [("enter", ((GATE,), "L01"))]


def test_a_check_that_ends_in_a_fault_lets_it_be_tried_again(hands, monkeypatch):
    faults = []
    monkeypatch.setattr("threading.excepthook", lambda args: faults.append(args.exc_value))
    with monkeypatch.context() as broken:
        broken.setattr(hands.source, "sign", lambda *_, **__: 1 // 0)
        hands.intents.enter((GATE,), "L01")
        hands.key_in(PINS["L01"])
    hands.sheet.work.wait()
    assert [type(one) for one in faults] == [ZeroDivisionError]
    assert hands.sheet.message.text() == ""
    hands.key_in(PINS["L01"])
    assert hands.asked == [("enter", ((GATE,), "L01"))]


def test_a_badge_signs_for_its_owner_whoever_was_touched(hands):
    hands.intents.enter((GATE,), "L01")
    hands.scan("BADGE-L02")
    assert hands.asked == [("enter", ((GATE,), "L02"))]


def test_the_badge_of_who_may_not_is_refused(hands):
    hands.intents.enter((FREE,), "Q01")
    hands.scan("BADGE-L02")
    assert "L02 cannot sign this" in hands.sheet.message.text()
    hands.scan("BADGE-Q01")
    assert hands.asked == [("enter", ((FREE,), "Q01"))]


def test_two_people_approve_a_label_one_after_the_other(hands):
    fact = first_off_fact(FirstOff("r", "P", 1, "a" * 64, 2, "L01", "Q01"), "o1")
    hands.intents.enter((fact,), "L01")
    assert list(hands.sheet.tiles.buttons) == ["L01"]
    hands.key_in(PINS["L01"])
    assert list(hands.sheet.tiles.buttons) == ["Q01"]
    assert "second person" in hands.sheet.title.text()
    hands.qtbot.waitUntil(lambda: not hands.sheet.work.busy)
    hands.scan("BADGE-L02")
    assert hands.asked == []
    hands.key_in(PINS["Q01"])
    assert hands.asked == [("enter", ((fact,), "L01"))]
    assert hands.source.signed_on == "L01"


def test_who_signed_on_need_not_sign_lesser_acts_again(hands):
    hands.intents.enter((GATE,), "L01")
    hands.key_in(PINS["L01"])
    hands.intents.enter((GATE,), "L01")
    assert len(hands.asked) == 2
    hands.intents.enter((FREE,), "Q01")
    assert hands.sheet.isVisible()


def test_whoever_asked_is_told_that_nobody_signed(hands):
    hands.intents.enter((GATE,), "L01")
    hands.intents.resolve(Resolve("A1-00-000001", Fate.APPLIED, "L01"))
    hands.intents.end_run("L01")
    hands.touch(hands.sheet.drop_button)
    hands.qtbot.waitUntil(lambda: len(hands.entered) == 2 and bool(hands.answered))
    assert hands.entered == [
        EntryAnswer(("g1",), False, "nobody signed"),
        EntryAnswer(("A1-00-000001",), False, "nobody signed"),
    ]
    assert hands.answered == [RunAnswer(False, "nobody signed")]
    assert hands.asked == []
    assert not hands.sheet.isVisible()


def test_what_is_asked_meanwhile_waits_for_its_turn(hands):
    hands.intents.start_run(CHOICE)
    hands.intents.enter((FREE,), "Q01")
    hands.key_in(PINS["L01"])
    assert [name for name, _ in hands.asked] == ["start_run"]
    hands.key_in(PINS["Q01"])
    assert [name for name, _ in hands.asked] == ["start_run", "enter"]


def test_neither_pin_nor_badge_is_ever_shown(hands):
    hands.intents.enter((GATE,), "L01")
    for digit in "482":
        hands.touch(hands.sheet.pad.keys[digit])
    assert hands.sheet.dots.text() == "●●●"
    assert hands.sheet.badge.echoMode() is QLineEdit.EchoMode.Password
    hands.touch(hands.sheet.pad.keys["CLEAR"])
    assert hands.sheet.dots.text() == "PIN"


@pytest.mark.parametrize("size", [(1024, 768), (1920, 1080)])
def test_keys_are_thirty_millimetres_and_all_is_inside(qtbot, size):
    hands = Worked(qtbot, size)
    hands.intents.enter((GATE,), "L01")
    ruler = Ruler.of(hands.sheet.screen())
    for key in hands.sheet.pad.keys.values():
        assert min(key.width(), key.height()) >= ruler.px(TOUCH_MM) - 1
        corner = key.mapTo(hands.sheet, key.rect().bottomRight())
        assert hands.sheet.rect().contains(corner)
    assert hands.sheet.rect().contains(hands.sheet.drop_button.geometry())


# --- the window ---------------------------------------------------------------------------------


class Busy(DoorPage):
    """A page with somebody's hands at the scale."""

    at_work = False


@pytest.fixture
def window(qtbot):
    source, line, bridge = PinSource(), FakeIntents(), Bridge()
    intents = SignedIntents(line, source, bridge, CREW)
    door = Door("CHECKS", Qt.Key.Key_F4, lambda: Busy(LIGHT))
    made = StationWindow(bridge, intents, make_offer(), doors=(door,), signing=intents)
    made.source, made.line = source, line
    qtbot.addWidget(made)
    made.resize(1280, 800)
    with qtbot.waitExposed(made):
        made.show()
    return made


def unlocked(qtbot, window):
    sheet = window.guard.sheet
    sheet.choose("L01")
    for digit in PINS["L01"]:
        sheet.pad.press(digit)
    sheet.pad.press("SIGN")
    qtbot.waitUntil(lambda: not sheet.work.busy and not sheet.isVisible())


def test_the_leads_panel_opens_to_who_signs_on_and_the_packers_screen_to_everybody(qtbot, window):
    QTest.keyClick(window, Qt.Key.Key_F2)
    assert window.guard.sheet.isVisible()
    assert window.screens.currentWidget() is window.packer
    unlocked(qtbot, window)
    assert window.screens.currentWidget() is window.lead
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert window.screens.currentWidget() is window.packer


def test_idle_time_leads_back_to_the_packers_screen_and_asks_the_line_nothing(qtbot, window):
    window.show_lead()
    unlocked(qtbot, window)
    window.packer.show_state(every_state()["short_t1"])
    window.source.sign_off()
    window.guard.look()
    assert window.screens.currentWidget() is window.packer
    assert window.line.asked == []


def test_a_page_with_hands_at_the_scale_stays(qtbot, window):
    window.show_lead()
    unlocked(qtbot, window)
    window.go_through(window.doors[0])
    page = window.doors[0].page
    page.at_work = True
    window.source.sign_off()
    window.guard.look()
    assert window.screens.currentWidget() is page
    page.at_work = False
    window.guard.look()
    assert window.screens.currentWidget() is window.packer


def test_touches_of_the_packer_keep_nobody_signed_on(qtbot, window):
    qtbot.mouseClick(window.packer, Qt.MouseButton.LeftButton)
    assert window.source.touches == 0
    window.show_lead()
    unlocked(qtbot, window)
    before = window.source.touches
    qtbot.mouseClick(window.lead, Qt.MouseButton.LeftButton)
    assert window.source.touches > before


def test_nobody_is_asked_about_events_while_the_packers_screen_is_shown(
    qtbot, monkeypatch, request
):
    asked, own = [], ScreenGuard.eventFilter
    monkeypatch.setattr(
        ScreenGuard, "eventFilter", lambda self, *event: asked.append(event) or own(self, *event)
    )
    window = request.getfixturevalue("window")
    qtbot.mouseClick(window.packer, Qt.MouseButton.LeftButton)
    assert not asked
    window.show_lead()
    unlocked(qtbot, window)
    qtbot.mouseClick(window.lead, Qt.MouseButton.LeftButton)
    assert asked
    window.show_packer()
    asked.clear()
    qtbot.mouseClick(window.packer, Qt.MouseButton.LeftButton)
    assert not asked


def test_a_scan_goes_to_the_badge_field_while_somebody_must_sign(qtbot, window):
    window.show_lead()
    window.take_scan("", "BADGE-L02")
    qtbot.waitUntil(lambda: not window.guard.sheet.isVisible())
    assert window.source.signed_on == "L02"
    assert window.screens.currentWidget() is window.lead


def test_going_to_the_packers_screen_drops_what_nobody_signed(window):
    window.show_lead()
    window.show_packer()
    assert not window.guard.sheet.isVisible()
    assert window.screens.currentWidget() is window.packer
