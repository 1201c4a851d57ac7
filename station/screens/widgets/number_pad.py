"""A number pad for the lead's glove: digits, clear, and the number so far."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from station.screens.theme import KEY_MM, Palette, Ruler
from station.screens.widgets.touch_button import TouchButton

CLEAR = "CLEAR"
MOST_DIGITS = 5


POINT, MINUS = ".", "\u2212"


class NumberPad(QWidget):
    """Keys 0 to 9 and CLEAR.

    Args:
        palette: colours.
        signed: a figure may have a point and a minus; else it is a whole number.

    Signals:
        changed: str, the digits so far, without leading zeros; may be empty.
    """

    changed = Signal(str)

    def __init__(
        self, palette: Palette, parent: QWidget | None = None, *, signed: bool = False
    ) -> None:
        super().__init__(parent)
        ruler = Ruler.of(self.screen())
        self.digits = ""
        keys = (*"1234567890", *((POINT, MINUS) if signed else ()), CLEAR)
        columns = 7 if signed else 6
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(ruler.touch(3))
        self.keys: dict[str, TouchButton] = {}
        for index, words in enumerate(keys):
            key = TouchButton(palette, words, least_mm=KEY_MM)
            key.cap_px = ruler.px(4.0 if words == CLEAR else 7.0)
            key.clicked.connect(self._press)
            self.keys[words] = key
            grid.addWidget(key, index // columns, index % columns)

    def _press(self) -> None:
        key = self.sender()
        if not isinstance(key, TouchButton):
            return
        digits = self._with(key.text())
        if len(digits) <= MOST_DIGITS:
            self.digits = digits
            self.changed.emit(digits)

    def _with(self, key: str) -> str:
        if key == CLEAR:
            return ""
        if key == MINUS:
            return self.digits.removeprefix("-") if self.digits[:1] == "-" else f"-{self.digits}"
        if key == POINT:
            return self.digits if "." in self.digits else f"{self.digits or '0'}."
        grown = self.digits + key
        return grown if grown[:2] in ("0.", "-0") else grown.lstrip("0") or "0"
