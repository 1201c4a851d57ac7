"""The bench window moves the hand; what is held goes on."""

import pytest
from PySide6.QtCore import Qt

from station.screens.bench import BenchWindow
from station.screens.theme import Ruler
from tests.station.screens.fakes import FakeHand

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def hand() -> FakeHand:
    return FakeHand()


@pytest.fixture
def bench(qtbot, hand: FakeHand) -> BenchWindow:
    window = BenchWindow(hand)
    qtbot.addWidget(window)
    window.show()
    return window


def test_a_bag_from_empty_pan_to_lift(qtbot, bench: BenchWindow, hand: FakeHand) -> None:
    assert not bench.pour_button.isEnabled()
    qtbot.mouseClick(bench.bag_button, LEFT)
    assert not bench.bag_button.isEnabled()
    qtbot.mouseClick(bench.pour_button, LEFT)
    qtbot.mouseClick(bench.take_button, LEFT)
    qtbot.mouseClick(bench.lift_button, LEFT)
    assert [what for what, _ in hand.done] == ["put_bag", "pour", "take_out", "lift"]
    assert all(grams > 0 for what, grams in hand.done if what in ("pour", "take_out"))
    assert bench.bag_button.isEnabled()


def test_a_bag_stays_in_the_hand_while_something_lies_on_the_pan(
    qtbot, bench: BenchWindow, hand: FakeHand
) -> None:
    hand.is_taken = True
    qtbot.mouseClick(bench.bag_button, LEFT)
    assert bench.bag_button.isEnabled()
    assert not bench.pour_button.isEnabled()
    hand.is_taken = False
    qtbot.mouseClick(bench.bag_button, LEFT)
    assert bench.pour_button.isEnabled()


@pytest.mark.parametrize("what", ["pour", "take_out"])
def test_holding_goes_on_and_grows(qtbot, bench: BenchWindow, hand: FakeHand, what: str) -> None:
    qtbot.mouseClick(bench.bag_button, LEFT)
    button = bench.pour_button if what == "pour" else bench.take_button
    qtbot.mousePress(button, LEFT)
    qtbot.waitUntil(lambda: len(hand.done) >= 5)
    qtbot.mouseRelease(button, LEFT)
    moved = [grams for done, grams in hand.done if done == what]
    assert len(moved) >= 4
    assert moved == sorted(moved)
    count = len(hand.done)
    qtbot.mouseClick(bench.zero_button, LEFT)
    assert hand.done[count:] == [("press_zero", 0)]


def test_the_cable(qtbot, bench: BenchWindow, hand: FakeHand) -> None:
    qtbot.mouseClick(bench.plug_button, LEFT)
    assert bench.plug_button.text() == "PLUG IN"
    assert not bench.drawing.plugged
    qtbot.mouseClick(bench.plug_button, LEFT)
    assert bench.plug_button.text() == "UNPLUG"
    assert [what for what, _ in hand.done] == ["unplug", "plug_in"]


def test_it_is_called_simulated_and_can_be_touched(bench: BenchWindow) -> None:
    assert "simulated" in bench.windowTitle()
    least = Ruler.of(bench.screen()).px(30) - 1
    for button in (bench.bag_button, bench.pour_button, bench.plug_button):
        assert min(button.width(), button.height()) >= least
