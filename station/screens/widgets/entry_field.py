"""A field for a few characters, typed by whoever services the station."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from station.screens.theme import KEY_MM, Palette, Ruler
from station.screens.widgets.hinted_field import HintedField

_MOST = 60


class EntryField(HintedField):
    """Says what belongs into it; no menu of the system opens on it."""

    def __init__(self, palette: Palette, hint: str, parent: QWidget | None = None) -> None:
        super().__init__(hint, 3.4, parent)
        ruler = Ruler.of(self.screen())
        self.setMaxLength(_MOST)
        self.setMinimumHeight(ruler.touch(KEY_MM))
        self.setStyleSheet(
            f"QLineEdit {{ color: {palette.ink}; background: {palette.paper};"
            f" placeholder-text-color: {palette.muted};"
            f" border: 2px solid {palette.ink}; padding: 0 {round(ruler.px(2))}px; }}"
            f"QLineEdit:focus {{ border: 4px solid {palette.act}; }}"
        )
        self.set_hint(hint)
