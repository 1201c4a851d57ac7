"""Names and what is so named, one pair below the other, on a page that scrolls."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QWidget

from station.screens.theme import Face, Palette, Ruler
from station.screens.widgets.sheet import Page, Text, side_by_side

_NAME_MM = 44.0


class FactPage(Page):
    """Pairs of texts."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self._palette = palette
        self.rows: tuple[tuple[str, str], ...] = ()

    def set(self, rows: Sequence[tuple[str, str]]) -> None:
        """Show pairs; those already shown cost nothing."""
        if tuple(rows) == self.rows:
            return
        self.rows = tuple(rows)
        self.clear()
        wide = round(Ruler.of(self.screen()).px(_NAME_MM))
        for name, words in self.rows:
            title = Text(self._palette, name, Face.NARROW, 3.6, self._palette.muted)
            title.setFixedWidth(wide)
            self.column.addWidget(side_by_side(title, Text(self._palette, words, mm=3.6)))
        self.column.addStretch(1)
