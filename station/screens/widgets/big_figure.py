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


_ROWS = 512
"""Rows that are kept as they are set; a number that runs comes by again and again."""


@dataclass(frozen=True)
class _Room:
    """Where the parts of the row lie, and what they lie in.

    Args:
        size: of the whole, with its layout millimetre in pixels.
        plate: with the picture on it.
        sentence: from the foot of the plate on.
    """

    size: tuple[int, int, float]
    plate: QRectF
    sentence: QRect


@dataclass(frozen=True)
class _Row:
    """Verb, number and unit as they are set, and the line they stand on.

    Args:
        verb: as it is set.
        number: as it is set.
        unit: as it is set.
        baseline: on which verb and number stand; what reaches above or below a verb moves it.
        left: of the number, in pixels.
    """

    verb: Fitted
    number: Fitted
    unit: Fitted
    baseline: float
    left: float

    def changed(self, before: _Row, room: _Room) -> QRect:
        """Where it looks other than a row with the same verb."""
        left, over = round(self.left), round(_ROUND_MM * room.size[2]) + 2
        above = QRect(left - over, 0, room.size[0] - left + over, room.sentence.top())
        number, was = self.number, before.number
        if (number.cap, number.width) != (was.cap, was.width) or self.unit is not before.unit:
            return above
        ink = QRectF(left, self.baseline - number.cap, number.width, number.cap).toAlignedRect()
        return ink.adjusted(-over, -over, over, over).intersected(above)


@dataclass(frozen=True)
class _Set:
    """The row and its sentence as they are set."""

    row: _Row
    sentence: Fitted


class BigFigure(Painted[Instruction]):
    """Paints an Instruction."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.texts: _Set | None = None
        self._was: _Set | None = None
        """As the row was set when it was last compared."""
        self._room: _Room | None = None
        self._rows: dict[tuple[str, str, str], _Row] = {}
        super().__init__(palette, Instruction(Verb.START_RUN, "", "", "", ""), parent)

    @property
    def room(self) -> _Room:
        """Where the parts lie in the present size."""
        size = (self.width(), self.height(), self.unit)
        if self._room is None or self._room.size != size:
            unit = self.unit
            tall = self.height() - (_ROUND_MM + SENTENCE_MM + 8.0) * unit
            plate = QRectF(0, _ROUND_MM * unit, tall, tall)
            top = round(plate.bottom() + 2 * unit)
            self._room = _Room(size, plate, QRect(0, top, self.width(), self.height() - top))
            self._rows.clear()
        return self._room

    @override
    def arrange(self) -> None:
        view, room = self.view, self.room
        key = (tr(view.verb), view.number, view.unit)
        row = self._rows.get(key)
        if row is None:
            if len(self._rows) >= _ROWS:
                self._rows.clear()
            row = self._rows[key] = _row(*key, room)
        wide, unit = self.width(), self.unit
        if view.because:
            sentence = fit(view.because, Face.NARROW, SENTENCE_MM * unit, wide, least=0.6)
        else:
            sentence = fit(view.note, Face.NARROW, NOTE_MM * unit, wide, least=0.6)
        self.texts = _Set(row, sentence)
        self.setAccessibleName(" ".join(filter(None, key)))
        self.setAccessibleDescription(view.because)

    @override
    def changed(self, before: Instruction) -> QRegion | None:
        """Only the number, its unit and a new sentence, while the verb stands as it stood."""
        view, texts, was = self.view, self.texts, self._was
        self._was = texts
        if texts is None or was is None or texts.row.verb is not was.row.verb:
            return None
        if view.verb is not before.verb or not (view.number and before.number):
            return None
        room, region = self.room, QRegion()
        if texts.row is not was.row:
            region = QRegion(texts.row.changed(was.row, room))
        return region if texts.sentence is was.sentence else region.united(room.sentence)

    @override
    def at_once(self, before: Instruction) -> bool:
        """A number hands follow does not wait."""
        return self.view.number != before.number

    @override
    def paint(self, painter: QPainter) -> None:
        if self.texts is None:
            return
        view, unit, row, room = self.view, self.unit, self.texts.row, self.room
        plate, ink = room.plate, self.colours.ink
        if self.within.intersects(plate.toRect()):
            paint_plate(painter, plate, *SHOWN_AS[view.verb], self.colours, unit)
            draw(painter, row.verb, plate.right() + 9 * unit, row.baseline - row.verb.cap, ink)
        if view.number:
            left, ground = row.left, self.colours.ground
            draw_figures(painter, row.number, left, row.baseline - row.number.cap, ink, ground)
            left += row.number.width + 5 * unit
            # A unit such as g stands on its descender, clear of the sentence below.
            foot = row.baseline - row.unit.descent
            draw_figures(painter, row.unit, left, foot - row.unit.cap, ink, ground)
        if not self.within.intersects(room.sentence):
            return
        colour = ink if view.because else self.colours.muted
        top = plate.bottom() + SENTENCE_TOP_MM * unit
        draw(painter, self.texts.sentence, 0, top, colour)


def _row(word: str, figures: str, measure: str, room: _Room) -> _Row:
    """Set a verb, its number and the unit as large as the room takes them together."""
    plate, unit = room.plate, room.size[2]
    wide_most = room.size[0] - plate.width() - 9 * unit
    tall_most = plate.height() + (0 if figures else _SPARE_MM * unit)
    share = 1.0
    while True:
        verb = fit(word, Face.VERB, VERB_MM * unit * share, wide_most)
        number = fit(figures, Face.FIGURES, NUMBER_MM * unit * share, wide_most)
        mass_unit = fit(measure, Face.FIGURES, UNIT_MM * unit * share, wide_most)
        wide = verb.width + number.width + mass_unit.width + (16 * unit if figures else 0)
        if (wide <= wide_most and verb.rise + verb.descent <= tall_most) or share < 0.5:
            break
        share -= 0.03
    middle = plate.center().y()
    if figures:
        low = middle + min(NUMBER_MM * unit, number.cap) / 2
        baseline = min(low, room.sentence.top() + _SPARE_MM * unit / 2 - verb.descent)
    else:
        baseline = middle + (verb.rise - verb.descent) / 2
    left = plate.right() + 20 * unit + verb.width
    return _Row(verb, number, mass_unit, baseline, left)


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
