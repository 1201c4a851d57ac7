"""What the scale shows now, to be read from two metres; a rule under it while it stands still."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.line.guided import steady_indication
from station.line.state import LineState, Verb
from station.screens.theme import Face, Palette
from station.screens.tongue import say, tr
from station.screens.widgets.lettering import Fitted, draw, fit
from station.screens.widgets.painted import Painted, stroke

_FIGURE_MM = 26.0
_COMB = 9
"""Teeth under a figure that still moves."""


@dataclass(frozen=True, slots=True)
class Live:
    """An indication: its digits with the unit, or why there is none, and whether it stands."""

    digits: str = ""
    unit: str = ""
    steady: bool = False
    why: str = ""


def live(state: LineState) -> Live:
    """What the scale shows in a state."""
    shown = state.shown
    if shown is None or state.verb is Verb.NO_READING:
        return Live(why=say(state.because) or tr("no reading"))
    return Live(shown.digits, shown.unit, steady_indication(state) is not None)


class LiveFigure(Painted[Live]):
    """Paints an indication: a solid rule under it when steady, a comb while it moves."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.texts: tuple[Fitted, ...] = ()
        super().__init__(palette, Live(), parent)

    @override
    def set(self, view: Live) -> None:
        super().set(view)
        said = view.why or f"{view.digits} {view.unit}{'' if view.steady else ', moving'}"
        self.setAccessibleName(f"scale shows {said}")

    @override
    def arrange(self) -> None:
        room, tall = self.width() - 12 * self.unit, self.height() - 12 * self.unit
        cap = min(_FIGURE_MM * self.unit, tall * 0.8)
        if self.view.why:
            self.texts = (fit(self.view.why, Face.NARROW, 6 * self.unit, room, tall),)
            return
        figure = fit(self.view.digits, Face.FIGURES, cap, room * 0.8)
        self.texts = (figure, fit(self.view.unit, Face.FIGURES, figure.cap * 0.45, room * 0.2))

    @override
    def paint(self, painter: QPainter) -> None:
        box, unit = QRectF(self.rect()), self.unit
        painter.fillRect(box, QColor(self.colours.paper))
        line = 0.6 * unit
        painter.setPen(stroke(self.colours.ink, line))
        painter.drawRect(box.adjusted(line / 2, line / 2, -line / 2, -line / 2))
        if not self.texts:
            return
        gap = 3 * unit
        wide = sum(text.width for text in self.texts) + gap * (len(self.texts) - 1)
        left = (box.width() - wide) / 2
        base = (box.height() - 6 * unit + self.texts[0].height) / 2
        for text in self.texts:
            draw(painter, text, left, base - text.height, self.colours.ink)
            left += text.width + gap
        if not self.view.why:
            self._rule(painter, QRectF((box.width() - wide) / 2, base + 6 * unit, wide, 2 * unit))

    def _rule(self, painter: QPainter, box: QRectF) -> None:
        if self.view.steady:
            painter.fillRect(box, QColor(self.colours.ink))
            return
        tooth = box.width() / (2 * _COMB - 1)
        for number in range(_COMB):
            at = QRectF(box.left() + 2 * number * tooth, box.top(), tooth, box.height())
            painter.fillRect(at, QColor(self.colours.ink))
