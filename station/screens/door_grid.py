"""All doors of the lead's panel on one page, each as large as a glove needs."""

from __future__ import annotations

from PySide6.QtWidgets import QGridLayout, QWidget

from station.screens.doors import Door
from station.screens.theme import Palette, Ruler
from station.screens.widgets.touch_button import TouchButton

_COLUMNS = 4


class DoorGrid(QWidget):
    """A grid of doors, in the order they were added; the language of the packer's screen last."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette = palette
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(Ruler.of(self.screen()).touch(6))
        self.buttons: dict[str, TouchButton] = {}
        """By name of the door."""
        self.language_button = TouchButton(palette, "LANGUAGE")
        for column in range(_COLUMNS):
            self._grid.setColumnStretch(column, 1)

    def add(self, door: Door) -> TouchButton:
        """Return the button of one more door."""
        button = TouchButton(self._palette, door.name, small=door.key_name)
        self.place(door.name, button)
        return button

    def place(self, name: str, button: TouchButton) -> None:
        """Put a button behind the doors."""
        self._place(button, len(self.buttons))
        self.buttons[name] = button
        self._place(self.language_button, len(self.buttons))

    def _place(self, button: TouchButton, index: int) -> None:
        button.cap_px = Ruler.of(self.screen()).px(7.0)
        row, column = divmod(index, _COLUMNS)
        self._grid.addWidget(button, row, column)
        self._grid.setRowStretch(row, 1)
