"""Where a lead chooses what the packer's screen speaks: every language by its own name."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget
from typing_extensions import override

from station.core.languages import Language
from station.screens.theme import Palette, Ruler
from station.screens.tongue import mark
from station.screens.widgets.sheet import Title
from station.screens.widgets.tiles import Tile, Tiles

_DRAFT = mark("not yet reviewed")
PACKERS_OWN = "own"
"""Key of the tile for the language of whoever is on the scale."""


class LanguagePage(QWidget):
    """A tile for each language, and one for the packer's own.

    Signals:
        chosen: object, a Language, or None for the packer's own.
    """

    chosen = Signal(object)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        own = Tile(PACKERS_OWN, mark("OF THE PACKER"), mark("as people.toml says"))
        tiles = [Tile(str(one), one.own_name) for one in Language]
        self.tiles = Tiles(palette, [own, *tiles], columns=3)
        self.tiles.touched.connect(self._choose)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Ruler.of(self.screen()).touch(4))
        column.addWidget(Title(palette, mark("Language of the packer's screen")))
        column.addWidget(self.tiles)
        column.addStretch(1)
        self.show_chosen(None)

    @override
    def showEvent(self, event: QShowEvent) -> None:
        """Say which nobody has reviewed, once somebody looks: the files that know it are long."""
        from station.screens.unreviewed import unreviewed

        for one in unreviewed():
            button = self.tiles.buttons[str(one.language)]
            button.small = _DRAFT if one.drafts else ""
            button.update()

    def show_chosen(self, language: Language | None) -> None:
        """Show what is chosen."""
        self.tiles.check([PACKERS_OWN if language is None else str(language)])

    def _choose(self, key: str) -> None:
        language = None if key == PACKERS_OWN else Language(key)
        self.show_chosen(language)
        self.chosen.emit(language)
