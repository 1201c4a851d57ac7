"""A field for a few characters, typed by whoever services the station."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QWidget

from station.screens.theme import KEY_MM, Face, Palette, Ruler, font_of

_MOST = 60


class EntryField(QLineEdit):
    """Says what belongs into it; no menu of the system opens on it."""

    def __init__(self, palette: Palette, hint: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        ruler = Ruler.of(self.screen())
        self.setPlaceholderText(hint)
        self.setAccessibleName(hint)
        self.setMaxLength(_MOST)
        self.setFont(font_of(Face.CODE, ruler.px(3.4)))
        self.setMinimumHeight(ruler.touch(KEY_MM))
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.NoContextMenu)
        self.setStyleSheet(
            f"QLineEdit {{ color: {palette.ink}; background: {palette.paper};"
            f" border: 2px solid {palette.ink}; padding: 0 {round(ruler.px(2))}px; }}"
            f"QLineEdit:focus {{ border: 4px solid {palette.act}; }}"
        )
