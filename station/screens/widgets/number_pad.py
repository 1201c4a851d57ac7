"""A number pad for the lead's glove: digits, clear, and the number so far."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from station.screens.theme import KEY_MM, Palette, Ruler
from station.screens.widgets.touch_button import TouchButton

CLEAR = "CLEAR"
MOST_DIGITS = 5


class NumberPad(QWidget):
    """Keys 0 to 9 and CLEAR.

    Signals:
        changed: str, the digits so far, without leading zeros; may be empty.
    """

    changed = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        ruler = Ruler.of(self.screen())
        self.digits = ""
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(ruler.touch(3))
        self.keys: dict[str, TouchButton] = {}
        for index, words in enumerate(("1", "2", "3", "4", "5", "6", "7", "8", "9", "0", CLEAR)):
            key = TouchButton(palette, words, least_mm=KEY_MM)
            key.cap_px = ruler.px(4.0 if words == CLEAR else 7.0)
            key.clicked.connect(self._press)
            self.keys[words] = key
            grid.addWidget(key, index // 6, index % 6)

    def _press(self) -> None:
        key = self.sender()
        if not isinstance(key, TouchButton):
            return
        digits = "" if key.text() == CLEAR else (self.digits + key.text()).lstrip("0")
        if len(digits) <= MOST_DIGITS:
            self.digits = digits
            self.changed.emit(digits)
