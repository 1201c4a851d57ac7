"""The keys of a PIN for a gloved hand, and a dot for each digit keyed in."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QGridLayout, QWidget
from typing_extensions import override

from station.core.pins import LEAST_DIGITS, MOST_DIGITS
from station.screens.theme import Palette, Ruler
from station.screens.tongue import mark
from station.screens.widgets.touch_button import TouchButton

CLEAR, DONE = mark("CLEAR"), mark("SIGN")
_ORDER = ("1", "2", "3", "4", "5", "6", "7", "8", "9", CLEAR, "0", DONE)
_COLUMNS = 3


class PinPad(QWidget):
    """Keys 0 to 9 of 30 mm, CLEAR and SIGN. What was keyed in is never shown.

    Signals:
        changed: int, how many digits there are.
        done: str, the digits, when SIGN or Enter is pressed; they are forgotten here at once.
    """

    changed = Signal(int)
    done = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        ruler = Ruler.of(self.screen())
        self._digits = ""
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(ruler.touch(3))
        self.keys: dict[str, TouchButton] = {}
        for index, words in enumerate(_ORDER):
            key = TouchButton(palette, words)
            key.cap_px = ruler.px(8.0 if words.isdigit() else 4.2)
            key.clicked.connect(lambda _=False, words=words: self.press(words))
            self.keys[words] = key
            grid.addWidget(key, index // _COLUMNS, index % _COLUMNS)

    def press(self, key: str) -> None:
        """Press one of the keys."""
        digits = self._digits
        self._digits = "" if key in (CLEAR, DONE) else (digits + key)[:MOST_DIGITS]
        self.keys[DONE].strong = len(self._digits) >= LEAST_DIGITS
        self.keys[DONE].update()
        self.changed.emit(len(self._digits))
        if key == DONE and digits:
            self.done.emit(digits)

    def clear(self) -> None:
        """Forget what was keyed in."""
        self.press(CLEAR)

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.text().isdigit() and event.text() in self.keys:
            self.press(event.text())
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.press(DONE)
        else:
            super().keyPressEvent(event)
