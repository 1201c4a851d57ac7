"""The instruction: a picture, one verb, its number, and one sentence under them."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from PySide6.QtCore import QRect, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QRegion
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.line.state import Verb
from station.screens.theme import Face, Palette
from station.screens.tongue import tr
from station.screens.widgets.figures import draw_figures
from station.screens.widgets.lettering import Fitted, draw, fit
from station.screens.widgets.painted import Painted, hatch, stroke
from station.screens.widgets.pictograms import Picture, draw_picture
from station.screens.words import Instruction

NUMBER_MM = 50.0
"""Height of the main number, read at 2 m."""
LEAST_NUMBER_MM = 35.0
VERB_MM = 34.0
UNIT_MM = 17.0
SENTENCE_MM = 7.5
NOTE_MM = 5.2
SENTENCE_TOP_MM = 5.2
"""From the plate to the capitals of the sentence."""
_SPARE_MM = 3.0
"""By which the ink of a verb alone may be higher than the plate."""
_ROUND_MM = 1.2
"""By which a round digit stands above its neighbours."""


class Tone(Enum):
    """How the plate behind a picture looks; each differs by shape, not by colour alone."""

    PLAIN = "outlined plate"
    ACT = "solid plate"
    DONE = "solid plate, inverse"
    ATTEND = "hatched edge"
    STOP = "frame of bars"


SHOWN_AS: dict[Verb, tuple[Picture, Tone]] = {
    Verb.EMPTY_PAN: (Picture.EMPTY_PAN, Tone.PLAIN),
    Verb.BAG_ON: (Picture.BAG_ON, Tone.PLAIN),
    Verb.ADD: (Picture.ADD, Tone.ACT),
    Verb.TAKE_OUT: (Picture.TAKE_OUT, Tone.ACT),
    Verb.WAIT: (Picture.WAIT, Tone.PLAIN),
    Verb.SEAL: (Picture.TICK, Tone.DONE),
    Verb.LIFT_BAG: (Picture.LIFT_BAG, Tone.PLAIN),
    Verb.SET_ASIDE: (Picture.SET_ASIDE, Tone.ACT),
    Verb.WIPE_PAN: (Picture.WIPE_PAN, Tone.ATTEND),
    Verb.NO_READING: (Picture.NO_READING, Tone.ATTEND),
    Verb.CALL_LEAD: (Picture.CALL_LEAD, Tone.STOP),
    Verb.START_RUN: (Picture.START_RUN, Tone.PLAIN),
    Verb.ORDER_DONE: (Picture.ORDER_DONE, Tone.DONE),
}


@dataclass(frozen=True)
class _Set:
    """The row as it is set."""

    verb: Fitted
    number: Fitted
    unit: Fitted
    sentence: Fitted


class BigFigure(Painted[Instruction]):
    """Paints an Instruction."""

    at_once = True

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.texts: _Set | None = None
        self._was: _Set | None = None
        """As the row was set when it was last compared."""
        super().__init__(palette, Instruction(Verb.START_RUN, "", "", "", ""), parent)

    @property
    def _row(self) -> float:
        """Height of the row without the sentence, in pixels."""
        return self.height() - (_ROUND_MM + SENTENCE_MM + 8.0) * self.unit

    @override
    def arrange(self) -> None:
        view, unit = self.view, self.unit
        word = tr(view.verb)
        self.setAccessibleName(" ".join(filter(None, (word, view.number, view.unit))))
        self.setAccessibleDescription(view.because)
        plate = self._row
        room = self.width() - plate - 9 * unit
        share = 1.0
        while True:
            verb = fit(word, Face.VERB, VERB_MM * unit * share, room)
            number = fit(view.number, Face.FIGURES, NUMBER_MM * unit * share, room)
            measure = fit(view.unit, Face.FIGURES, UNIT_MM * unit * share, room)
            wide = verb.width + number.width + measure.width + (16 * unit if view.number else 0)
            tall = plate if view.number else plate + _SPARE_MM * unit
            if (wide <= room and verb.rise + verb.descent <= tall) or share < 0.5:
                break
            share -= 0.03
        if view.because:
            sentence = fit(view.because, Face.NARROW, SENTENCE_MM * unit, self.width(), least=0.6)
        else:
            sentence = fit(view.note, Face.NARROW, NOTE_MM * unit, self.width(), least=0.6)
        self.texts = _Set(verb, number, measure, sentence)

    @property
    def _plate(self) -> QRectF:
        return QRectF(0, _ROUND_MM * self.unit, self._row, self._row)

    @property
    def baseline(self) -> float:
        """On which verb and number stand; what reaches above or below a verb moves it."""
        middle = self._plate.center().y()
        if self.texts is None:
            return middle
        verb = self.texts.verb
        if not self.view.number:
            return middle + (verb.rise - verb.descent) / 2
        low = middle + min(NUMBER_MM * self.unit, self.texts.number.cap) / 2
        return min(low, self._sentence.top() + _SPARE_MM * self.unit / 2 - verb.descent)

    @property
    def _sentence(self) -> QRect:
        """The sentence, from the foot of the plate on."""
        top = round(self._plate.bottom() + 2 * self.unit)
        return QRect(0, top, self.width(), self.height() - top)

    @override
    def changed(self, before: Instruction) -> QRegion | None:
        """Only the number, its unit and a new sentence, while the verb stands as it stood."""
        view, texts, was = self.view, self.texts, self._was
        self._was = texts
        if texts is None or was is None or texts.verb is not was.verb:
            return None
        if view.verb is not before.verb or not (view.number and before.number):
            return None
        left = round(self._plate.right() + 15 * self.unit + texts.verb.width)
        row = QRect(left, 0, self.width() - left, self._sentence.top())
        sentence = self._sentence if texts.sentence is not was.sentence else QRect()
        return QRegion(row).united(sentence)

    @override
    def paint(self, painter: QPainter) -> None:
        if self.texts is None:
            return
        view, unit, texts = self.view, self.unit, self.texts
        plate = self._plate
        whole = self.within.intersects(plate.toRect())
        if whole:
            paint_plate(painter, plate, *SHOWN_AS[view.verb], self.colours, unit)
        baseline = self.baseline
        left = plate.right() + 9 * unit
        if whole:
            draw(painter, texts.verb, left, baseline - texts.verb.cap, self.colours.ink)
        if view.number:
            left += texts.verb.width + 11 * unit
            top = baseline - texts.number.cap
            draw_figures(painter, texts.number, left, top, self.colours.ink)
            left += texts.number.width + 5 * unit
            # A unit such as g stands on its descender, clear of the sentence below.
            foot = baseline - texts.unit.descent
            draw_figures(painter, texts.unit, left, foot - texts.unit.cap, self.colours.ink)
        if not self.within.intersects(self._sentence):
            return
        colour = self.colours.ink if view.because else self.colours.muted
        draw(painter, texts.sentence, 0, plate.bottom() + SENTENCE_TOP_MM * unit, colour)


def paint_plate(
    painter: QPainter, plate: QRectF, picture: Picture, tone: Tone, colours: Palette, unit: float
) -> None:
    """Paint a picture on the plate its tone asks for."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    solid = {Tone.ACT: colours.act, Tone.DONE: colours.ink}.get(tone)
    inner = plate.adjusted(*(sign * plate.width() * 0.14 for sign in (1, 1, -1, -1)))
    if solid is not None:
        painter.fillRect(plate, QColor(solid))
        draw_picture(painter, picture, inner, colours.on_dark)
        return
    edge = 1.2 * unit
    painter.setPen(stroke(colours.ink, edge))
    frame = plate.adjusted(edge / 2, edge / 2, -edge / 2, -edge / 2)
    if tone is Tone.ATTEND:
        hatch(painter, plate, colours.attend, colours.on_attend, plate.width() / 9)
        inset = plate.width() * 0.1
        core = plate.adjusted(inset, inset, -inset, -inset)
        painter.fillRect(core, QColor(colours.attend))
        inner = core.adjusted(*(sign * core.width() * 0.1 for sign in (1, 1, -1, -1)))
    else:
        painter.fillRect(plate, QColor(colours.paper))
    painter.drawRect(frame)
    ink = {Tone.STOP: colours.stop, Tone.ATTEND: colours.on_attend}.get(tone, colours.ink)
    draw_picture(painter, picture, inner, ink)
