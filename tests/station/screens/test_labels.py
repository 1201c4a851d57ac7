"""The page of labels, worked by touch and by scanner, at the smallest and the largest screen."""

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QLabel

from station.core.checks.first_off import Refusal, first_off_of
from station.core.checks.rolls import Explanation
from station.core.checks.scan_back import Clearing
from station.core.facts import FactRecord
from station.core.label_life import Fate, OldLabel, Reprint, ReprintReason, Resolve
from station.line.state import EntryAnswer
from station.screens.bridge import Bridge
from station.screens.labels import LabelsPage
from station.screens.labels_doubt import AGAIN
from station.screens.theme import Ruler
from station.screens.widgets.touch_button import TouchButton
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.labels_states import (
    ACCOUNTS,
    AT,
    DOUBTS,
    LAST,
    PEOPLE,
    LabelsSourceStub,
    state_with_bag,
)

pytestmark = [
    pytest.mark.gui,
    pytest.mark.qt_log_ignore("propagateSizeHints"),  # Qt's offscreen platform only
]
SIZES = ((1024, 768), (1920, 1080))
DOUBT, FIRST_OFF, SCAN, ROLL, REPRINT = range(5)


class Worked:
    """A page with its intents, and hands for it."""

    def __init__(self, qtbot, source, size=SIZES[0]):
        self.qtbot, self.source, self.intents = qtbot, source, FakeIntents()
        self.page = LabelsPage(Bridge(), self.intents, source, PEOPLE)
        self.state = state_with_bag()
        qtbot.addWidget(self.page)
        self.page.resize(*size)
        self.page.show_state(self.state)
        with qtbot.waitExposed(self.page):
            self.page.show()

    def touch(self, button):
        self.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)

    def go(self, tab):
        self.touch(self.page.tabs[tab])

    def people(self, *ids):
        for one in ids:
            self.touch(self.page.people.buttons[one])

    def sign(self):
        button = self.page.sign_button
        with self.qtbot.waitSignal(button.held):
            self.qtbot.mousePress(button, Qt.MouseButton.LeftButton)
        self.qtbot.mouseRelease(button, Qt.MouseButton.LeftButton)

    def scan_in(self, field, text):
        self.qtbot.keyClicks(field, text)
        self.qtbot.keyClick(field, Qt.Key.Key_Return)

    def wedge(self, code):
        """A scanner that works as a keyboard; the separator comes as Ctrl and ]."""
        field = self.page.focusWidget()
        for text in code:
            ctrl = text == "\x1d"
            how = Qt.KeyboardModifier.ControlModifier if ctrl else Qt.KeyboardModifier.NoModifier
            key = Qt.Key.Key_BracketRight if ctrl else Qt.Key.Key_unknown
            QApplication.sendEvent(field, QKeyEvent(QEvent.Type.KeyPress, key, how, text))
        self.qtbot.keyClick(field, Qt.Key.Key_Return)

    def key_in(self, digits):
        for digit in digits:
            self.page.roll.pad.keys[digit].click()

    def answer(self, uid, recorded=True, words="recorded"):
        self.page.show_answer(EntryAnswer((uid,), recorded, words))

    @property
    def message(self):
        return self.page.message.text()

    @property
    def entered(self):
        return [(facts[0], who) for name, (facts, who) in self.asked("enter")]

    def asked(self, *names):
        return [one for one in self.intents.asked if one[0] in names]


@pytest.fixture
def work(qtbot):
    hands = []

    def begin(source=None, size=SIZES[0]):
        hands.append(Worked(qtbot, source or LabelsSourceStub(), size))
        return hands[-1]

    yield begin
    for one in hands:
        one.page.first_off.preview.wait()


# --- doubts -------------------------------------------------------------------------------------


def test_a_doubt_is_shown_first_and_answered_by_a_named_person(work):
    hands = work(LabelsSourceStub(DOUBTS))
    assert hands.page.pages.currentWidget() is hands.page.doubt
    serial = DOUBTS[0].serial
    hands.touch(hands.page.doubt.cards[serial].buttons[Fate.APPLIED])
    assert hands.message == "Refused. Touch who signs."
    hands.people("L01")
    hands.touch(hands.page.doubt.cards[serial].buttons[Fate.APPLIED])
    assert hands.asked("resolve") == [("resolve", Resolve(serial, Fate.APPLIED, "L01"))]
    hands.source._doubts = DOUBTS[1:]
    hands.answer(serial, words="the label is applied")
    assert list(hands.page.doubt.cards) == [DOUBTS[1].serial]
    assert hands.message == "The label is applied"


def test_the_second_answer_takes_the_bag_out_and_the_third_prints_a_copy(work):
    hands = work(LabelsSourceStub(DOUBTS))
    first, second = (one.serial for one in DOUBTS)
    hands.people("L01")
    hands.touch(hands.page.doubt.cards[first].buttons[Fate.DESTROYED])
    hands.touch(hands.page.doubt.cards[first].buttons[AGAIN])
    hands.touch(hands.page.doubt.cards[second].buttons[AGAIN])
    assert [what for _, what in hands.asked("resolve", "reprint")] == [
        Resolve(first, Fate.DESTROYED, "L01"),
        Reprint(first, ReprintReason.NEVER_CAME_OUT, OldLabel.NEVER_PRINTED, "L01"),
        Reprint(second, ReprintReason.UNREADABLE, OldLabel.DESTROYED, "L01"),
    ]


def test_a_refusal_of_the_line_is_shown(work):
    hands = work(LabelsSourceStub(DOUBTS))
    hands.people("Q01")
    hands.touch(hands.page.doubt.cards[DOUBTS[0].serial].buttons[AGAIN])
    hands.answer(DOUBTS[0].serial, recorded=False, words="the lead signs for the next one")
    assert hands.message == "Refused. The lead signs for the next one"


# --- first-off ----------------------------------------------------------------------------------


def test_two_people_approve_the_label_they_see(work):
    hands = work()
    hands.go(FIRST_OFF)
    assert hands.page.first_off.date.text() == "Use by Tuesday 1\u00a0December"
    hands.qtbot.waitUntil(lambda: hands.page.first_off.preview.view is not None)
    hands.people("L01")
    hands.sign()
    assert "the two who sign" in hands.message
    hands.people("Q01")
    hands.sign()
    ((fact, who),) = hands.entered
    said = first_off_of(FactRecord(fact, AT, who, 1))
    assert (who, said.lead, said.second, fact.result) == ("L01", "L01", "Q01", "approved")
    hands.answer(fact.uid)
    assert not any(button.isChecked() for button in hands.page.people.buttons.values())


def test_one_person_refuses_with_a_reason(work):
    hands = work()
    hands.go(FIRST_OFF)
    hands.people("Q01")
    hands.touch(hands.page.first_off.reasons.buttons[str(Refusal.DATE)])
    ((fact, _),) = hands.entered
    assert (fact.result, fact.details["refusal"]) == ("refused", "wrong date")


# --- scan-back ----------------------------------------------------------------------------------


def test_a_scan_goes_in_without_a_touch_and_the_next_one_too(work):
    hands = work()
    hands.go(SCAN)
    field = hands.page.scan.field
    assert hands.page.focusWidget() is field
    for code in hands.source.symbols(hands.state.run):
        hands.wedge(code)
        assert hands.page.scan.outcome.view is True
        assert hands.page.focusWidget() is field
    assert [fact.result for fact, _ in hands.entered] == ["equal", "equal"]
    assert {fact.subject for fact, _ in hands.entered} == {LAST}
    assert hands.page.scan.outcome.accessibleName() == "OK"


def test_a_mismatch_is_named_and_cleared_by_a_person_with_a_reason(work):
    hands = work()
    hands.go(SCAN)
    assert hands.page.scan.reasons.isHidden()
    hands.scan_in(hands.page.scan.field, "]C1010952123400001310OLD")
    ((fact, who),) = hands.entered
    assert (fact.result, who) == ("differs", hands.state.run.operator)
    hands.answer(fact.uid)
    assert hands.page.scan.outcome.accessibleName() == "MISMATCH"
    assert "]C1010952123400001310OLD" in hands.page.scan.detail.text()
    assert not hands.page.scan.reasons.isHidden()
    hands.people("L01")
    assert hands.page.focusWidget() is hands.page.scan.field
    hands.page.scan.reasons.buttons[str(Clearing.ROLL)].click()
    fact, who = hands.entered[-1]
    assert (fact.result, fact.details["reason"], who) == ("cleared", "wrong roll taken out", "L01")


def test_a_scanner_that_sends_no_identifier_is_told_so(work):
    hands = work()
    hands.go(SCAN)
    hands.scan_in(hands.page.scan.field, "0109521234000013")
    assert "set the scanner to send it" in hands.message
    assert hands.entered == []


def test_a_mismatch_of_before_is_shown_when_the_page_opens(work):
    hands = work(LabelsSourceStub(mismatch="A1-7K-000001"))
    assert hands.page.pages.currentWidget() is hands.page.scan
    assert hands.page.scan.outcome.view is False
    assert "A1-7K-000001" in hands.page.scan.detail.text()


# --- rolls --------------------------------------------------------------------------------------


def test_a_roll_goes_in_by_scan_and_number(work):
    hands = work(LabelsSourceStub(roll_wanted=True))
    assert hands.page.pages.currentWidget() is hands.page.roll
    hands.people("L01")
    hands.sign()
    assert "Scan the roll and key in its labels first" in hands.message
    hands.scan_in(hands.page.roll.scan, "lr-0414")
    hands.key_in("1000")
    hands.sign()
    ((fact, _),) = hands.entered
    assert (fact.subject, fact.result, fact.details) == ("LR-0414", "put in", {"issued": 1000})


def test_a_roll_comes_out_by_three_counts(work):
    hands = work(LabelsSourceStub(roll="LR-0413", rolls=ACCOUNTS))
    hands.go(ROLL)
    hands.people("L01")
    hands.key_in("655")
    hands.sign()
    assert "all three counts" in hands.message
    for name, digits in (("spoiled", "20"), ("samples", "0")):
        hands.page.roll.fields.buttons[name].click()
        hands.key_in(digits)
    hands.sign()
    ((fact, _),) = hands.entered
    counted = {name: fact.details[name] for name in ("returned", "spoiled", "samples")}
    assert counted == {"returned": 655, "spoiled": 20, "samples": 0}


def test_each_roll_shows_its_difference_and_an_open_one_is_explained(work):
    hands = work(LabelsSourceStub(roll="LR-0413", rolls=ACCOUNTS))
    hands.go(ROLL)
    told = hands.page.roll.table.accessibleName()
    for words in ("LR-0413 in the printer", "LR-0412 5 missing", "LR-0411 0", "= 5, open"):
        assert words in told
    assert "LR-0412: why 5 missing?" in hands.page.roll.why.text()
    hands.people("L01")
    hands.page.roll.reasons.buttons[str(Explanation.SET_UP)].click()
    ((fact, _),) = hands.entered
    assert (fact.subject, fact.result) == ("LR-0412", "explained")


# --- reprint ------------------------------------------------------------------------------------


def test_the_last_label_is_printed_again_with_a_reason_and_the_fate_of_the_old(work):
    hands = work()
    hands.go(REPRINT)
    hands.people("L01")
    hands.page.reprint.last.buttons["last"].click()
    hands.sign()
    assert "Say which label, why" in hands.message
    hands.page.reprint.reasons.buttons[str(ReprintReason.TORN)].click()
    hands.page.reprint.olds.buttons[str(OldLabel.DESTROYED)].click()
    hands.sign()
    wish = Reprint(LAST, ReprintReason.TORN, OldLabel.DESTROYED, "L01")
    assert hands.asked("reprint") == [("reprint", wish)]


def test_any_label_is_printed_again_by_its_serial(work):
    hands = work()
    hands.go(REPRINT)
    hands.scan_in(hands.page.reprint.scan, "a1-7k-000012")
    assert hands.page.reprint.serial == "A1-7K-000012"
    hands.page.reprint.scan.take("]C1", "10B261124-2\x1d21A1-7K-000013")
    assert hands.page.reprint.serial == "A1-7K-000013"


# --- the whole page -----------------------------------------------------------------------------


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("tab", range(5))
def test_every_touched_side_is_30_mm_and_every_word_stands_in_the_window(work, size, tab):
    source = LabelsSourceStub(DOUBTS, roll="LR-0413", rolls=ACCOUNTS)
    hands = work(source, size)
    hands.go(tab)
    assert (hands.page.width(), hands.page.height()) == size
    least = Ruler.of(hands.page.screen()).touch(30)
    keys = set(hands.page.roll.pad.keys.values())
    for button in hands.page.findChildren(TouchButton):
        if button.isVisible() and button not in keys:
            assert min(button.width(), button.height()) >= least, button.text()
    for label in hands.page.findChildren(QLabel):
        if label.isVisible():
            right = label.mapTo(hands.page, label.rect().topRight()).x()
            assert right <= hands.page.width(), label.text()


def test_leaving(work):
    hands = work()
    with hands.qtbot.waitSignal(hands.page.left):
        hands.touch(hands.page.back_button)
