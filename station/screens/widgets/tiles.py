"""Rows of touch tiles of which one, or several, are chosen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from station.screens.theme import Palette, Ruler
from station.screens.widgets.touch_button import TouchButton


@dataclass(frozen=True, slots=True)
class Tile:
    """One choice.

    Args:
        key: what is chosen.
        words: what it says.
        small: a second line.
        refused: it can be seen but not chosen; the second line says why.
    """

    key: str
    words: str
    small: str = ""
    refused: bool = False


class Tiles(QWidget):
    """A grid of tiles.

    Signals:
        touched: str, the key of the tile; refused ones too, so that the reason can be said.
    """

    touched = Signal(str)

    def __init__(
        self,
        palette: Palette,
        tiles: Sequence[Tile],
        columns: int,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        ruler = Ruler.of(self.screen())
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(ruler.touch(6))
        self.buttons: dict[str, TouchButton] = {}
        for index, tile in enumerate(tiles):
            button = TouchButton(palette, tile.words, small=tile.small, struck=tile.refused)
            button.setCheckable(not tile.refused)
            button.cap_px = ruler.px(5.2)
            button.setMinimumHeight(ruler.touch())
            button.clicked.connect(self._touch)
            button.setProperty("key", tile.key)
            self.buttons[tile.key] = button
            grid.addWidget(button, index // columns, index % columns)
        for column in range(columns):
            grid.setColumnStretch(column, 1)
        grid.setAlignment(Qt.AlignmentFlag.AlignTop)

    def check(self, keys: Sequence[str]) -> None:
        """Show which tiles are chosen."""
        for key, button in self.buttons.items():
            if button.isCheckable():
                button.setChecked(key in keys)

    def _touch(self) -> None:
        button = self.sender()
        if isinstance(button, TouchButton):
            self.touched.emit(str(button.property("key")))
