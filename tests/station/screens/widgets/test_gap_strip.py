"""The strip paints no more than changed, and that is the same picture."""

from collections.abc import Iterator
from itertools import chain

import numpy as np
import pytest
from PySide6.QtGui import QImage, QPainter, QRegion

from station.core.run import Run
from station.line.state import LineState, Phase, Verb
from station.screens.theme import LIGHT, register_fonts
from station.screens.widgets.gap_geometry import Body, gap_view
from station.screens.widgets.gap_strip import GapStrip
from tests.station.screens.states import grams, make_product, make_run, state

pytestmark = pytest.mark.gui


class Noted(GapStrip):
    """Notes what it asks to have painted anew."""

    asked: QRegion | None = None

    def update(self, *region) -> None:
        self.asked = QRegion(*region) if region else QRegion(self.rect())


def colours(image: QImage) -> np.ndarray:
    flat = image.convertToFormat(QImage.Format.Format_RGB32)
    return np.frombuffer(flat.constBits(), np.uint8).copy()


def filling() -> Iterator[tuple[int, int]]:
    """Net masses one after the other, in grams, and their spreads: upwards, downwards, by leaps."""
    leaps = (228, 3, 249, 249, 249, 249, 249, 0, 244, 60)
    nets = chain(range(0, 250, 5), range(226, 250), range(200, 0, -41), leaps)
    for count, net in enumerate(nets):
        yield net, (0, 1, 7, 30)[count % 4]


def at(net: int, spread: int, run: Run) -> LineState:
    return state(Phase.LOADED, Verb.ADD, net, run=run, steady=not spread, spread=spread)


@pytest.mark.parametrize("target", [250, 252, 261])
@pytest.mark.parametrize("unit", [2.4, 3.63])
def test_painting_only_what_changed_gives_the_same_picture(qtbot, unit, target) -> None:
    register_fonts()
    run = make_run(make_product(target=grams(target)))
    strip = Noted(LIGHT)
    qtbot.addWidget(strip)
    strip.resize(round(325 * unit), round(80 * unit))
    strip.set_unit(unit)
    strip.set(gap_view(state(Phase.LOADED, Verb.ADD, 0, run=run)))
    picture = strip.grab().toImage()
    partly = 0
    for net, spread in filling():
        strip.asked = None
        strip.set(gap_view(at(net, spread, run)))
        if strip.asked is None:
            continue
        partly += strip.asked != QRegion(strip.rect())
        assert strip.view.body is Body.SHORT
        painter = QPainter(picture)
        strip.render(painter, strip.asked.boundingRect().topLeft(), strip.asked)
        painter.end()
        assert np.array_equal(colours(picture), colours(strip.grab().toImage())), net
    assert partly > 40
