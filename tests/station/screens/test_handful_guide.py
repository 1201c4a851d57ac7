"""Leaves say how many handfuls to move, as the line's own steps have taught it."""

from dataclasses import replace

import pytest

from station.core.handful import FEWEST, USUAL
from station.core.mass import Mass
from station.line.state import Phase, Verb
from station.screens.bridge import Bridge
from station.screens.handful_guide import HandfulGuide
from station.screens.packer import PackerScreen
from station.screens.theme import LIGHT
from station.screens.widgets.handful_leaves import MOST
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import every_state, state

SIZES = ((1024, 768), (1280, 800), (1920, 1080))
STATES = every_state()


@pytest.fixture
def guided(qtbot):
    def show(size=SIZES[1], *, tiles=False):
        screen = PackerScreen(Bridge(), FakeIntents())
        qtbot.addWidget(screen)
        guide = HandfulGuide(Bridge(), screen, LIGHT)
        if tiles:
            guide.show_tiles()
        screen.resize(*size)
        with qtbot.waitExposed(screen):
            screen.show()

        def see(one):
            screen.show_state(one)
            guide.show_state(one)

        return screen, guide, see

    return show


def add(net, cycle=129):
    return replace(state(Phase.LOADED, Verb.ADD, net), cycle=cycle)


@pytest.mark.parametrize(
    ("net", "verb", "halves"),
    [(236, Verb.ADD, 2), (244, Verb.ADD, 1), (228, Verb.ADD, 3), (276, Verb.TAKE_OUT, 3)],
)
def test_half_handfuls_of_sixteen_grams(guided, net, verb, halves):
    _, guide, see = guided()
    see(state(Phase.LOADED, verb, net))
    assert guide.leaves.isVisible()
    assert guide.leaves.view.halves == halves
    assert guide.leaves.view.over is (verb is Verb.TAKE_OUT)


def test_steps_of_the_line_teach_it(guided):
    _, guide, see = guided()
    for cycle in range(FEWEST):
        see(add(200, cycle))
        see(add(208, cycle))
    assert guide.handful.mass == Mass.parse("8 g")
    see(add(244, 99))
    assert guide.leaves.view.halves == 2
    assert guide.handful.mass < USUAL


def test_an_unsteady_weight_teaches_nothing(guided):
    _, guide, see = guided()
    for cycle in range(2 * FEWEST):
        see(add(200, cycle))
        see(replace(state(Phase.LOADED, Verb.ADD, 208, steady=False, spread=3), cycle=cycle))
    assert guide.handful.mass == USUAL


@pytest.mark.parametrize("name", ["bag_on", "wait", "seal", "lift_bag", "no_reading", "stopped"])
def test_no_leaves_without_grams_to_move(guided, name):
    _, guide, see = guided()
    see(STATES["short_t1"])
    see(STATES[name])
    assert not guide.leaves.isVisible()


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("name", ["short_far", "short_t1", "over_near", "over_far"])
def test_leaves_cover_nothing(guided, size, name):
    screen, guide, see = guided(size)
    see(STATES[name])
    leaves, texts = guide.leaves, screen.figure.texts
    assert texts is not None
    assert leaves.view.leaves <= MOST
    if leaves.isVisible():
        right = screen.figure.x() + texts.sentence.width
        assert right < leaves.geometry().right() - leaves.room
    assert not leaves.geometry().intersects(screen.strip.geometry())
    assert screen.figure.geometry().contains(leaves.geometry())


def test_tiles_stand_over_the_landmarks_alone(guided):
    screen, guide, see = guided(tiles=True)
    see(STATES["short_t1"])
    assert guide.tiles is not None
    assert guide.tiles.isVisible()
    assert screen.strip.geometry().contains(guide.tiles.geometry())
    band = screen.strip.band.translated(screen.strip.x(), screen.strip.y())
    assert guide.tiles.y() >= band.bottom()
    see(STATES["bag_on"])
    assert not guide.tiles.isVisible()
