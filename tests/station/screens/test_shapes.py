"""Every verb has a sign of its own shape, told from all others without any colour.

The three kinds of colour vision are simulated with the matrices of Machado, Oliveira and Fernandes,
"A Physiologically-based Model for Simulation of Color Vision Deficiency" (IEEE TVCG 15/6, 2009),
severity 1.0, on linear light; grey is the relative luminance of WCAG 2.2.
"""

import itertools

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from station.line.state import Verb
from station.screens.theme import PALETTES
from station.screens.widgets.big_figure import SHOWN_AS, paint_plate

SIDE, UNIT, CELLS = 192, 4.0, 24
LEAST = 0.05  # of the range from black to white, root mean square over the sign
LUMINANCE = (0.2126, 0.7152, 0.0722)
SEEN_AS = {
    "grey": (LUMINANCE, LUMINANCE, LUMINANCE),
    "without red cones": (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    "without green cones": (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    "without blue cones": (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}


def sign(verb, palette):
    """The sign of a verb as linear light, shape (SIDE, SIDE, 3)."""
    image = QImage(SIDE, SIDE, QImage.Format.Format_RGB888)
    image.fill(QColor(palette.ground))
    painter = QPainter(image)
    picture, tone = SHOWN_AS[verb]
    paint_plate(painter, QRectF(0, 0, SIDE, SIDE), picture, tone, palette, UNIT)
    painter.end()
    values = np.frombuffer(image.constBits(), np.uint8).reshape(SIDE, -1)[:, : SIDE * 3] / 255
    light = np.where(values <= 0.04045, values / 12.92, ((values + 0.055) / 1.055) ** 2.4)
    return light.reshape(SIDE, SIDE, 3)


def seen(light, matrix):
    """How light a sign looks, at a resolution that a glance has."""
    changed = np.clip(light @ np.array(matrix).T, 0, 1)
    lightness = np.cbrt(changed @ np.array(LUMINANCE))
    step = SIDE // CELLS
    return lightness.reshape(CELLS, step, CELLS, step).mean((1, 3))


@pytest.mark.parametrize("matrix", SEEN_AS.values(), ids=SEEN_AS)
@pytest.mark.parametrize("palette", PALETTES.values(), ids=PALETTES)
def test_signs_differ_by_shape_for_every_eye(qapp, palette, matrix):
    signs = {verb: seen(sign(verb, palette), matrix) for verb in Verb}
    apart = {
        (one, other): float(np.sqrt(np.mean((signs[one] - signs[other]) ** 2)))
        for one, other in itertools.combinations(Verb, 2)
    }
    nearest = min(apart, key=apart.__getitem__)
    assert apart[nearest] >= LEAST, f"{nearest[0]} and {nearest[1]}: {apart[nearest]:.3f}"


def test_the_matrices_leave_white_white():
    for matrix in SEEN_AS.values():
        assert np.array(matrix).sum(1) == pytest.approx(np.ones(3), abs=2e-6)
