"""The big row keeps its parts apart: no ink between the row and the sentence below it."""

import numpy as np
import pytest
from PySide6.QtGui import QImage, QPainter, QRegion

from station.line.state import Verb
from station.screens.theme import LIGHT, register_fonts
from station.screens.widgets.big_figure import SENTENCE_MM, BigFigure
from station.screens.words import Instruction

pytestmark = pytest.mark.gui
_SENTENCE_BELOW_PLATE = 5.2  # layout millimetres, as painted
_CLEAR = 2.0  # layout millimetres above the sentence that must stay free; accents reach into them


def grey(image: QImage) -> np.ndarray:
    flat = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(flat.constBits(), np.uint8).reshape(flat.height(), flat.bytesPerLine())
    return rows[:, : flat.width()].copy()  # the bits go with the image


@pytest.mark.parametrize("mass_unit", ["g", "kg", "lb", "oz"])
@pytest.mark.parametrize("number", ["9", "202", "1.250"])
@pytest.mark.parametrize("unit", [3.63, 5.09])  # 1280 x 800 and 1920 x 1080
def test_the_unit_does_not_reach_the_sentence(qtbot, mass_unit, number, unit):
    register_fonts()
    row = BigFigure(LIGHT)
    qtbot.addWidget(row)
    row.resize(round(325 * unit), round(66.5 * unit))
    row.set_unit(unit)
    row.set(Instruction(Verb.ADD, number, mass_unit, "", "in the bag 243 g " * 6))
    assert row.texts is not None
    picture = grey(row.grab().toImage())
    bottom = row.height() - (SENTENCE_MM + 8.0) * unit  # of the plate
    top = bottom + _SENTENCE_BELOW_PLATE * unit - _CLEAR * unit
    right_of_plate = round(row.room.plate.right() + 9 * unit)
    band = picture[round(top) : round(top + unit), right_of_plate:]
    assert band.size > 0
    assert np.ptp(band.astype(int)) == 0, "ink between the row and the sentence"


class Noted(BigFigure):
    """Notes what it asks to have painted anew."""

    asked = None

    def update(self, *region):
        self.asked = QRegion(*region) if region else QRegion(self.rect())
        super().update(*region)

    def repaint(self, *region):
        self.asked = QRegion(*region)
        super().repaint(*region)


ADD_202 = Instruction(Verb.ADD, "202", "g", "", "in the bag 41 g")


@pytest.mark.parametrize(
    ("after", "partly"),
    [
        (Instruction(Verb.ADD, "201", "g", "", "in the bag 42 g"), True),
        (Instruction(Verb.ADD, "9", "g", "", "in the bag 234 g"), True),
        (Instruction(Verb.ADD, "15", "g", "shake the bag", ""), True),
        (Instruction(Verb.ADD, "11111.111", "kg", "", "in the bag 234 g"), False),
        (Instruction(Verb.TAKE_OUT, "12", "g", "", "in the bag 255 g"), False),
        (Instruction(Verb.WAIT, "", "", "", "in the bag 243 g"), False),
    ],
)
def test_painting_only_what_changed_gives_the_same_picture(qtbot, after, partly):
    register_fonts()
    row = Noted(LIGHT)
    qtbot.addWidget(row)
    row.resize(1179, 241)
    row.set_unit(3.63)
    row.set(Instruction(Verb.ADD, "203", "g", "", "in the bag 40 g"))
    row.set(ADD_202)
    picture = row.grab().toImage()
    row.asked = None
    row.set(after)
    assert row.asked is not None
    assert (row.asked != QRegion(row.rect())) == partly
    painter = QPainter(picture)
    row.render(painter, row.asked.boundingRect().topLeft(), row.asked)
    painter.end()
    assert np.array_equal(grey(picture), grey(row.grab().toImage()))
