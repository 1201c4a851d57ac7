"""Tiles count down what is missing, and pile up beyond the mark when it is too much."""

import numpy as np
import pytest
from PySide6.QtGui import QImage

from station.core.handful import USUAL
from station.line.state import Phase, Verb
from station.screens.theme import PALETTES
from station.screens.widgets.countdown_tiles import MOST, CountdownTiles, TilesView, tiles_view
from tests.station.screens.states import every_state, state

LOADED = Phase.LOADED


@pytest.mark.parametrize(
    ("net", "verb", "missing", "over"),
    [
        (248, Verb.ADD, 1, 0),  # 4 g to the target of 252 g: one tile of 4 g
        (244, Verb.ADD, 2, 0),
        (243, Verb.ADD, 3, 0),  # what is begun is a whole tile
        (92, Verb.ADD, MOST, 0),
        (264, Verb.TAKE_OUT, 0, 3),
    ],
)
def test_a_quarter_of_a_handful_is_a_tile(net, verb, missing, over):
    view = tiles_view(state(LOADED, verb, net), USUAL)
    assert (view.missing, view.over, view.shown) == (missing, over, True)


@pytest.mark.parametrize("name", ["bag_on", "wait", "seal", "lift_bag", "no_reading", "start_run"])
def test_no_tiles_without_grams_to_move(name):
    assert tiles_view(every_state()[name], USUAL) == TilesView()


@pytest.mark.parametrize("palette", PALETTES.values(), ids=PALETTES)
@pytest.mark.parametrize("missing", [1, 7, MOST])
def test_sides_and_textures_differ(qtbot, palette, missing):
    pictures = {}
    for name, view in (
        ("missing", TilesView(missing=missing, shown=True)),
        ("over", TilesView(over=missing, shown=True)),
    ):
        tiles = CountdownTiles(palette)
        qtbot.addWidget(tiles)
        tiles.resize(1200, 100)
        tiles.set(view)
        grey = tiles.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
        pixels = np.frombuffer(grey.constBits(), np.uint8).reshape(100, -1)[:, :1200].astype(int)
        ground = pixels[0, 0]
        pictures[name] = (pixels != ground).sum(0)
    left, right = pictures["missing"], pictures["over"]
    assert left[:580].sum() > 0
    assert left[620:].sum() == 0
    assert right[620:].sum() > 0
    assert right[:580].sum() == 0
    assert left[0] == right[-1] == 0  # nothing is cut at the edge
