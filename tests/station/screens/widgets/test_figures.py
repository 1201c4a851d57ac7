"""Digits drawn once and kept look as the typeface's own text does."""

import numpy as np
import pytest
from PySide6.QtGui import QImage, QPainter

from station.screens.theme import Face, register_fonts
from station.screens.widgets import figures
from station.screens.widgets.figures import draw_figures
from station.screens.widgets.lettering import draw, fit

pytestmark = pytest.mark.gui


def picture(paint, ratio: float) -> np.ndarray:
    image = QImage(round(700 * ratio), round(260 * ratio), QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(ratio)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint(painter)
    painter.end()
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(grey.constBits(), np.uint8).reshape(grey.height(), grey.bytesPerLine())
    return rows[:, : grey.width()].astype(int)


@pytest.mark.parametrize("ratio", [1.0, 2.0])
@pytest.mark.parametrize("number", ["203", "1.250", "-17", "0"])
@pytest.mark.parametrize("cap", [61.0, 181.0])
def test_kept_digits_look_as_the_text_of_the_typeface(qtbot, number, cap, ratio):
    register_fonts()
    fitted = fit(number, Face.FIGURES, cap, 690)
    text = picture(lambda one: draw(one, fitted, 5, 20, "#101010"), ratio)
    kept = picture(lambda one: draw_figures(one, fitted, 5, 20, "#101010"), ratio)
    ink = (text < 128).sum()
    assert ink > 100
    assert ((text < 128) != (kept < 128)).sum() < ink * 0.06
    assert abs((kept < 128).sum() - ink) < ink * 0.02


def test_memory_stays_bounded(qtbot):
    register_fonts()
    for cap in range(20, 100):  # ten signs each
        fitted = fit("0123456789", Face.FIGURES, float(cap), 5000)
        picture(lambda one, fitted=fitted: draw_figures(one, fitted, 0, 0, "#101010"), 1.0)
    assert 10 <= len(figures._KEPT) <= figures._MOST
