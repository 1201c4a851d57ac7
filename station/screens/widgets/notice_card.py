"""What fills the middle of the screen when there is no bag to guide: one word and its reason."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.line.state import Verb
from station.screens.theme import Face, Palette
from station.screens.tongue import tr
from station.screens.widgets.big_figure import SHOWN_AS, Tone, paint_plate
from station.screens.widgets.lettering import Fitted, draw, fit
from station.screens.widgets.painted import Painted, barred_frame, stroke
from station.screens.widgets.pictograms import draw_picture

WORD_MM = 36.0
REASON_MM = 10.0
_BARS_MM = 11.0
_WORD_SHARE, _WORD_LEADING = 0.62, 1.4
"""Of the card's height the word may take in two lines, where one would be small."""


@dataclass(frozen=True, slots=True)
class Notice:
    """One word and the sentence that says why and what to do."""

    verb: Verb = Verb.START_RUN
    because: str = ""


class NoticeCard(Painted[Notice]):
    """Paints a Notice; a stop has a frame of thick diagonal bars."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.word: Fitted | None = None
        self.reason: Fitted | None = None
        super().__init__(palette, Notice(), parent)

    @property
    def _core(self) -> QRectF:
        edge = (_BARS_MM + 9) * self.unit
        return QRectF(self.rect()).adjusted(edge, edge * 0.9, -edge, -edge * 0.9)

    @property
    def _plate(self) -> QRectF:
        core = self._core
        side = min(core.height() * 0.52, 58 * self.unit)
        below = 0.0 if self.reason is None else 9 * self.unit + self.reason.height
        over = 0.0 if self.word is None else max(0.0, self.word.height - side)
        top = core.top() + over / 2 + max(0.0, core.height() - side - over - below) / 2
        return QRectF(core.left(), top, side, side)

    @override
    def arrange(self) -> None:
        core, unit = self._core, self.unit
        side = min(core.height() * 0.52, 58 * unit)
        word = tr(self.view.verb)
        self.setAccessibleName(word)
        self.setAccessibleDescription(self.view.because)
        self.word = fit(
            word,
            Face.VERB,
            WORD_MM * unit,
            core.width() - side - 10 * unit,
            core.height() * _WORD_SHARE,
            leading=_WORD_LEADING,
        )
        room = core.height() - max(side, self.word.height) - 9 * unit
        self.reason = fit(self.view.because, Face.TEXT, REASON_MM * unit, core.width(), room)

    @override
    def paint(self, painter: QPainter) -> None:
        if self.word is None or self.reason is None:
            return
        core, plate, colours = self._core, self._plate, self.colours
        picture, tone = SHOWN_AS[self.view.verb]
        colour = colours.ink
        whole = QRectF(self.rect())
        if tone is Tone.STOP:
            colour = colours.stop
            barred_frame(painter, whole, _BARS_MM * self.unit, colours.stop, colours.paper)
            draw_picture(painter, picture, plate, colour)
        else:
            paint_plate(painter, plate, picture, tone, colours, self.unit)
            pen = stroke(colours.edge, 0.8 * self.unit)
            if tone is Tone.ATTEND:
                pen = stroke(colours.ink, 1.4 * self.unit)
                pen.setDashPattern([6.0, 4.0])
            painter.setPen(pen)
            inset = 0.8 * self.unit
            painter.drawRect(whole.adjusted(inset, inset, -inset, -inset))
        top = plate.center().y() - self.word.height / 2
        draw(painter, self.word, plate.right() + 10 * self.unit, top, colour)
        foot = max(plate.bottom(), top + self.word.height) + 9 * self.unit
        draw(painter, self.reason, core.left(), foot, colours.ink)
