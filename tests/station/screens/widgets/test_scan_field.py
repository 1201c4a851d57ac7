"""The scan field under the keys of a person, of a scanner that types, and of a hostile code."""

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication

from station.screens.theme import LIGHT
from station.screens.widgets.sheet import GS, ScanField

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
NONE, CONTROL = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ControlModifier
MS = 1_000_000


class Typist:
    """Types with a pace of its own."""

    def __init__(self, qtbot, field=ScanField):
        self.now = 0
        self.field = field(LIGHT, "scan a lot", clock=lambda: self.now)
        qtbot.addWidget(self.field)
        self.ended = []
        self.field.returnPressed.connect(self._end)
        self.field.show()

    def _end(self):
        self.ended.append(self.field.text())
        self.field.clear()

    def key(self, key, text="", modifiers=NONE, ms=5):
        self.now += ms * MS
        QApplication.sendEvent(self.field, QKeyEvent(QEvent.Type.KeyPress, key, modifiers, text))

    def type(self, text, ms=5):
        for letter in text:
            self.key(Qt.Key.Key_A, letter, ms=ms)

    def enter(self, ms=5):
        self.key(Qt.Key.Key_Return, "\r", ms=ms)


@pytest.mark.parametrize("ms", [5, 180])
def test_a_scanner_and_a_person_may_type(qtbot, ms):
    hands = Typist(qtbot)
    hands.type("LF-101", ms)
    hands.enter(ms)
    assert hands.ended == ["LF-101"]


def test_the_separator_is_kept_however_qt_sees_it(qtbot):
    hands = Typist(qtbot)
    hands.type("10TR26")
    hands.key(Qt.Key.Key_BracketRight, GS, CONTROL)
    hands.type("21A1")
    hands.enter()
    assert hands.ended == [f"10TR26{GS}21A1"]


def test_a_code_that_presses_control_keys_is_dropped_whole(qtbot):
    hands = Typist(qtbot)
    hands.type("LF-1")
    hands.key(Qt.Key.Key_W, "\x17", CONTROL)
    hands.type("01")
    hands.enter()
    assert hands.ended == []
    assert hands.field.text() == ""
    assert hands.field.placeholderText().startswith("refused: ")
    hands.type("LF-101")
    assert hands.field.placeholderText() == "scan a lot"
    hands.enter()
    assert hands.ended == ["LF-101"]


def test_a_command_of_a_person_does_nothing_in_the_field(qtbot):
    hands = Typist(qtbot)
    hands.type("LF-101", 200)
    hands.key(Qt.Key.Key_X, "\x18", CONTROL, 200)
    hands.enter(200)
    assert hands.ended == ["LF-101"]


@pytest.mark.parametrize(
    ("identifier", "data", "taken"),
    [("]C0", "LF-101", "LF-101"), ("", "LF-101", "LF-101"), ("]C1", "10TR26", "]C110TR26")],
)
def test_a_scan_is_taken_as_if_it_were_typed(qtbot, identifier, data, taken):
    hands = Typist(qtbot)
    hands.field.take(identifier, data)
    assert hands.ended == [taken]


def test_a_field_may_want_every_identifier(qtbot):
    class Identified(ScanField):
        identified = True

    hands = Typist(qtbot, Identified)
    hands.field.take("]C0", "LF-101")
    assert hands.ended == ["]C0LF-101"]


def test_a_scan_that_is_too_long_is_never_cut(qtbot):
    hands = Typist(qtbot)
    hands.field.take("]C1", "1" * 60)
    assert hands.ended == []
    assert "63 characters, at most 40" in hands.field.placeholderText()


@pytest.mark.parametrize("ms", [2, 200])
def test_a_code_typed_beyond_the_field_is_never_cut(qtbot, ms):
    hands = Typist(qtbot)
    hands.type("1" * 41, ms)
    hands.enter(ms)
    assert hands.ended == []
    assert "41 characters, at most 40" in hands.field.placeholderText()
    hands.type("1" * 40, ms)
    hands.enter(ms)
    assert hands.ended == ["1" * 40]
