"""The chance of a batch on a plate whose shape says how it stands."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.core.metrology.forecast import Outlook
from station.screens.numbers_words import Shown
from station.screens.theme import Face, Palette
from station.screens.tongue import mark, say
from station.screens.widgets.lettering import Fitted, draw, fit, ink_of
from station.screens.widgets.painted import Painted, barred_frame, hatch, stroke

CHANCE_MM = 22.0
WORD_MM = 12.0
UNDER_MM = 3.6
_TITLE = mark("chance to pass the official test")
_EDGE_MM = 5.0


_Inked = tuple[Fitted, float, float]
"""A text with its ink above its capitals and below its last line."""


class OutlookPlate(Painted[Shown]):
    """Safe is a solid plate, thin a plate with a hatched edge, failing a frame of bars."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.texts: dict[str, Fitted] = {}
        super().__init__(palette, Shown(), parent)

    @override
    def set(self, view: Shown) -> None:
        super().set(view)
        self.setAccessibleName(f"{view.word} {view.chance}".strip())
        self.setAccessibleDescription(f"{_TITLE}, {view.under}")

    @override
    def arrange(self) -> None:
        unit = self.unit
        tall = self.height() - 2 * (_EDGE_MM + 1) * unit
        for step in range(20):  # letters that reach far above and below their line need more room
            self.texts = self._lettered(tall * (1 - 0.03 * step))
            if _height(self._inked()) <= tall:
                return

    def _lettered(self, tall: float) -> dict[str, Fitted]:
        view, unit = self.view, self.unit
        room = self.width() - 2 * (_EDGE_MM + 4) * unit
        small = min(UNDER_MM * unit, tall * 0.09)
        return {
            "title": fit(say(_TITLE), Face.NARROW, small, room),
            "chance": fit(view.chance, Face.FIGURES, min(CHANCE_MM * unit, tall * 0.40), room),
            "word": fit(say(view.word), Face.VERB, min(WORD_MM * unit, tall * 0.24), room),
            "under": fit(
                say(view.under), Face.NARROW, small, room, tall * (0.1 if view.chance else 0.5)
            ),
        }

    def _inked(self) -> list[_Inked]:
        """Texts on show, each with its ink above its capitals and below its last line."""
        shown = [text for text in self.texts.values() if text.lines != ("",)]
        inks = map(ink_of, shown)
        return [
            (text, max(0.0, rise - text.cap), below)
            for text, (rise, below) in zip(shown, inks, strict=True)
        ]

    @override
    def paint(self, painter: QPainter) -> None:
        if not self.texts:
            return
        colour = self._ground(painter, QRectF(self.rect()))
        inked = self._inked()
        gap = (self.height() - 2 * _EDGE_MM * self.unit - _height(inked)) / (len(inked) + 1)
        top = _EDGE_MM * self.unit + gap
        for text, above, below in inked:
            top += above
            draw(painter, text, (self.width() - text.width) / 2, top, colour)
            top += text.height + below + gap

    def _ground(self, painter: QPainter, box: QRectF) -> str:
        """Paint the plate; returns the colour of what stands on it."""
        colours, edge = self.colours, _EDGE_MM * self.unit
        if self.view.outlook is Outlook.SAFE:
            painter.fillRect(box, QColor(colours.ink))
            return colours.on_dark
        if self.view.outlook is Outlook.FAILING:
            barred_frame(painter, box, edge, colours.stop, colours.paper)
            return colours.stop
        inner = box.adjusted(edge, edge, -edge, -edge)
        if self.view.outlook is Outlook.THIN:
            hatch(painter, box, colours.attend, colours.on_attend, 2 * edge)
        painter.fillRect(inner if self.view.outlook else box, QColor(colours.paper))
        line = 0.6 * self.unit
        painter.setPen(stroke(colours.ink, line))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(box.adjusted(line / 2, line / 2, -line / 2, -line / 2))
        return colours.ink


def _height(inked: list[_Inked]) -> float:
    """Of all texts, from the top of their ink to its bottom."""
    return sum(above + text.height + below for text, above, below in inked)
