"""Pages behind doors are made when somebody opens them, or in the quiet after the first screen."""

from dataclasses import dataclass, field

import pytest
from PySide6.QtCore import Qt

from station.screens.bridge import Bridge
from station.screens.doors import Door, DoorPage
from station.screens.late_doors import LateDoors
from station.screens.theme import LIGHT
from station.screens.window import StationWindow
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import every_state, make_offer

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
KEYS = {"ONE": Qt.Key.Key_F3, "TWO": Qt.Key.Key_F4}
NO_RUN = every_state()["start_run"]
BAG_ON = every_state()["bag_on"]


class Seen(DoorPage):
    """A page that keeps what it hears."""

    def __init__(self) -> None:
        super().__init__(LIGHT)
        self.heard: list[object] = []
        self.stopped = False

    def show_state(self, state) -> None:
        self.heard.append(state)

    def stop(self) -> None:
        self.stopped = True


@dataclass
class Room:
    """A window with two doors, and what was done in which order."""

    window: StationWindow
    bridge: Bridge
    done: list[str] = field(default_factory=list)

    def after(self) -> None:
        self.done.append("after")


@pytest.fixture
def room(qtbot) -> Room:
    bridge, done = Bridge(), []

    def door(name: str) -> Door:
        def make() -> Seen:
            done.append(name)
            return Seen()

        return Door(name, KEYS[name], make)

    doors = (door("ONE"), door("TWO"))
    window = StationWindow(bridge, FakeIntents(), make_offer(), doors=doors)
    qtbot.addWidget(window)
    window.show()
    return Room(window, bridge, done)


def test_a_page_is_made_with_the_first_opening_of_its_door(room: Room) -> None:
    one, two = room.window.doors
    room.window.packer.show_state(NO_RUN)
    assert not room.done
    room.window.go_through(two)
    assert room.done == ["TWO"]
    assert room.window.screens.currentWidget() is two.page
    assert two.page.heard == [NO_RUN]  # what the line said before it was there
    room.window.go_through(two)
    assert room.window.screens.currentWidget() is room.window.lead
    room.window.go_through(two)
    two.page.left.emit()
    assert room.window.screens.currentWidget() is room.window.lead
    assert room.done == ["TWO"]
    assert not one.is_made


def test_a_window_that_closes_makes_nothing_and_stops_what_is_there(room: Room) -> None:
    one, two = room.window.doors
    page = one.page
    room.window.close()
    assert page.stopped
    assert not two.is_made


def test_all_is_made_once_the_first_screen_is_there(room: Room, qtbot) -> None:
    late = LateDoors(room.window, (lambda: room.done.append("before"),), room.after)
    late._work()
    assert not room.done  # no state is shown yet
    room.window.packer.show_state(NO_RUN)
    qtbot.waitUntil(lambda: late.over)
    assert room.done == ["before", "ONE", "TWO", "after"]


def test_nothing_is_made_while_a_run_is_open(room: Room, qtbot) -> None:
    late = LateDoors(room.window, (), room.after)
    room.window.packer.show_state(BAG_ON)
    qtbot.waitUntil(lambda: late.over)
    assert room.done == ["after"]
    room.window.go_through(room.window.doors[0])
    assert room.done == ["after", "ONE"]
