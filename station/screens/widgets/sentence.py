"""Words in a place of fixed size: they wrap and shrink to fit, and nothing beside them moves."""

from __future__ import annotations

from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.screens.theme import Face, Palette
from station.screens.tongue import say
from station.screens.widgets.lettering import Fitted, draw, fit
from station.screens.widgets.painted import Painted

_LEADING = 1.6


class Sentence(Painted[str]):
    """Paints words in the language shown now, as large as its size takes, up to ``mm``."""

    def __init__(self, palette: Palette, mm: float, parent: QWidget | None = None) -> None:
        self.shown: Fitted | None = None
        self._mm = mm
        super().__init__(palette, "", parent)

    @override
    def set(self, view: str) -> None:
        super().set(view)
        self.setAccessibleName(say(view))

    @override
    def arrange(self) -> None:
        cap = self._mm * self.unit
        room = self.height() - cap  # for what hangs below the last line
        words = say(self.view)
        self.shown = fit(words, Face.NARROW, cap, self.width(), room, least=0.45, leading=_LEADING)

    @override
    def paint(self, painter: QPainter) -> None:
        if self.shown is not None:
            top = (self.height() - self.shown.height) / 2
            draw(painter, self.shown, 0, top, self.colours.ink)
