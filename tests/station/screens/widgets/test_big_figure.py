"""The big row keeps its parts apart: no ink between the row and the sentence below it."""

import numpy as np
import pytest
from PySide6.QtGui import QImage

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
    return rows[:, : flat.width()]


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
    right_of_plate = round(row._row + 9 * unit)
    band = picture[round(top) : round(top + unit), right_of_plate:]
    assert band.size > 0
    assert np.ptp(band.astype(int)) == 0, "ink between the row and the sentence"
