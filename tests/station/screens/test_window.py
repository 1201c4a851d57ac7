"""The station's window: two screens, three keys, one band for what must be known."""

from dataclasses import replace
from itertools import combinations

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QLineEdit
from shiboken6 import delete

from drivers.port import PortSettings
from station.app.assembly import Station
from station.app.places import demo_settings, packhouse
from station.app.station_window import station_window
from station.core.languages import Language
from station.screens import window as window_module
from station.screens.bridge import FOLLOW_MS, Bridge
from station.screens.labels import LabelsPage
from station.screens.lead import LeadPanel
from station.screens.lots import LotsPage
from station.screens.quality import QualityPage
from station.screens.shipping import ShippingPage
from station.screens.trace import TracePage
from station.screens.widgets.lettering import Fitted, ink_of
from station.screens.widgets.sheet import ScanField
from station.screens.widgets.touch_table import TouchTable
from station.screens.window import StationWindow
from tests.end_to_end.line import without_pins
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.legibility import SCREENS, SMALL_UPRIGHT, Screen, reach, ruler_of
from tests.station.screens.states import every_state, make_offer

SMALL = tuple(one for one in SCREENS if one.inches in (10.1, 15.6))
SIZES = ((1024, 768), (1280, 800), (1920, 1080))
pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only


@pytest.fixture
def bridge(qtbot) -> Bridge:
    return Bridge()


@pytest.fixture
def window(qtbot, bridge: Bridge) -> StationWindow:
    one = StationWindow(bridge, FakeIntents(), make_offer())
    qtbot.addWidget(one)
    one.resize(1280, 800)
    with qtbot.waitExposed(one):
        one.show()
    one.activateWindow()
    qtbot.waitUntil(one.isActiveWindow)
    return one


def test_title_and_first_screen(window: StationWindow) -> None:
    assert window.windowTitle() == "Pack line"
    assert window.packer.isVisible()
    assert (window.width(), window.height()) == (1280, 800)


def test_a_closed_window_hears_no_more_of_its_pages(qtbot, bridge: Bridge) -> None:
    """Python empties a window it finds as garbage, and Qt takes the pages off it afterwards."""
    window = StationWindow(bridge, FakeIntents(), make_offer())
    window.close()
    packer, kept = window.packer, dict(vars(window))
    vars(window).clear()
    with qtbot.captureExceptions() as faults:
        delete(packer)
    assert faults == []
    assert isinstance(kept["screens"].currentWidget(), LeadPanel)
    delete(window)


def test_pages_of_a_window_that_is_gone_are_told_nothing_more(qtbot, bridge: Bridge) -> None:
    """The line speaks on until it is stopped, and what it said last may still wait for its turn."""
    window = StationWindow(bridge, FakeIntents(), make_offer())
    told: list[object] = []
    bridge.followed.connect(told.append)
    first, second, third = (every_state()[name] for name in ("bag_on", "short_near", "seal"))
    bridge.publish(first)
    qtbot.waitUntil(lambda: told == [first])
    bridge.publish(second)
    window.close()
    with qtbot.captureExceptions() as faults:
        delete(window)
        bridge.publish(third)
        qtbot.wait(3 * FOLLOW_MS)
    assert faults == []
    assert told == [first]


def test_f2_changes_screens_and_escape_comes_back(qtbot, window: StationWindow) -> None:
    qtbot.keyClick(window, Qt.Key.Key_F2)
    assert window.lead.isVisible()
    qtbot.keyClick(window, Qt.Key.Key_F2)
    assert window.packer.isVisible()
    qtbot.keyClick(window, Qt.Key.Key_F2)
    qtbot.keyClick(window, Qt.Key.Key_Escape)
    assert window.packer.isVisible()


def test_touch_changes_screens(qtbot, window: StationWindow) -> None:
    qtbot.mouseClick(window.packer.run_button, Qt.MouseButton.LeftButton)
    assert window.lead.isVisible()
    qtbot.mouseClick(window.lead.back_button, Qt.MouseButton.LeftButton)
    assert window.packer.isVisible()


def test_f1_shows_the_notice(qtbot, window: StationWindow) -> None:
    window.packer.show_state(every_state()["bag_on"])
    qtbot.keyClick(window, Qt.Key.Key_F1)
    assert window.packer.about.isVisible()
    qtbot.keyClick(window, Qt.Key.Key_F1)
    assert not window.packer.about.isVisible()


def test_both_screens_follow_the_line(qtbot, window: StationWindow, bridge: Bridge) -> None:
    bridge.publish(every_state()["bag_on"])
    qtbot.waitUntil(lambda: window.packer.state is not None)
    assert window.packer.header.view.product == "Harbour leaf mix"
    assert window.lead.run.name.text() == "Harbour leaf mix"


def test_a_fault_and_a_call_stand_in_a_band_and_nothing_moves(
    qtbot, window: StationWindow, bridge: Bridge
) -> None:
    window.packer.show_state(every_state()["short_t1"])
    before = [part.geometry() for part in (window.packer.strip, window.packer.aside_button)]
    qtbot.mouseClick(window.packer.call_button, Qt.MouseButton.LeftButton)
    bridge.report("the disk is nearly full")
    qtbot.waitUntil(lambda: len(window.band.view) == 2)
    assert window.band.isVisible()
    assert window.band.view == ("the disk is nearly full", "Lead is wanted at this line")
    assert not window.band.geometry().intersects(window.packer.aside_button.geometry())
    after = [part.geometry() for part in (window.packer.strip, window.packer.aside_button)]
    assert before == after
    qtbot.mouseClick(window.band, Qt.MouseButton.LeftButton)
    assert not window.band.isVisible()
    assert window.band.view == ()


def test_a_small_upright_screen_shows_counts_and_faults(qtbot, monkeypatch) -> None:
    """Three buttons for gloves take its whole width; counts and band stand over them."""
    drawn: list[Fitted] = []
    monkeypatch.setattr(window_module, "draw", lambda _, text, *rest: drawn.append(text))
    with ruler_of(SMALL_UPRIGHT):
        window = StationWindow(Bridge(), FakeIntents(), make_offer())
        qtbot.addWidget(window)
        window.resize(SMALL_UPRIGHT.wide, SMALL_UPRIGHT.tall)
        window.show()
        packer = window.packer
        packer.show_state(every_state()["short_t1"])
        QApplication.processEvents()
        assert all(text.whole for text in packer.counts.texts.values())
        parts = [packer.header, packer.figure, packer.strip, packer.counts, packer.label]
        parts += [packer.aside_button, packer.call_button, packer.run_button]
        for one, other in combinations(parts, 2):
            assert not one.geometry().intersects(other.geometry()), (one, other)
        assert all(packer.rect().contains(part.geometry()) for part in parts)
        window.band.say("The disk is nearly full: 180 MB are left. Call maintenance.")
        packer.call_button.click()
        window.band.grab()
    assert len(drawn) >= 2
    assert all(text.whole for text in drawn)


def test_a_scan_goes_to_the_field_in_front(qtbot):
    bridge = Bridge()
    window = StationWindow(bridge, FakeIntents(), make_offer())
    qtbot.addWidget(window)
    with qtbot.waitExposed(window):
        window.show()
    bridge.scan("]C0", "ROM-2611")
    qtbot.waitUntil(lambda: "no field waits" in " ".join(window.band.view))
    window.show_lead()
    window.lead.products.touched.emit("HARBOUR-250")
    with qtbot.waitSignal(window.lead.lots.touched) as touched:
        bridge.scan("]C0", "ROM-2611")
    assert touched.args == ["ROM-2611"]


def test_the_band_lies_over_nothing_to_touch_on_any_page(qtbot, tmp_path):
    house = without_pins(packhouse(demo_settings()))
    station = Station(house, tmp_path / "home", PortSettings("none"), tmp_path / "labels")
    bridge = Bridge()
    window = station_window(bridge, station, house)
    qtbot.addWidget(window)
    for size in SIZES:
        window.resize(*size)
        with qtbot.waitExposed(window):
            window.show()
        window.band.say("The disk is nearly full: 180 MB are left. Call maintenance.")
        for page in (window.packer, window.lead, *(door.page for door in window.doors)):
            window.screens.setCurrentWidget(page)
            QApplication.processEvents()
            touched = [
                part
                for kind in (QAbstractButton, QLineEdit, TouchTable)
                for part in page.findChildren(kind)
                if part.isVisible()
            ]
            assert touched
            for part in touched:
                place = QRect(part.mapTo(window, QPoint()), part.size())
                assert not window.band.geometry().intersects(place), (page, part, size)
    assert window.band.isVisible()
    window.close()
    station.store.close()


def test_what_a_scanner_types_goes_to_the_field_that_asks_for_it(qtbot, tmp_path):
    """Whether a page comes into sight or another of its parts does, nobody touches the field."""
    house = without_pins(packhouse(demo_settings()))
    station = Station(house, tmp_path / "home", PortSettings("none"), tmp_path / "labels")
    window = station_window(Bridge(), station, house)
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    asked = {
        LabelsPage: (lambda page: page.choose(3), "scan the roll, then Enter"),
        LotsPage: (lambda _: None, "scan a lot"),
        TracePage: (lambda _: None, "bag, case, pallet or lot"),
        ShippingPage: (lambda _: None, "scan the bags"),
        QualityPage: (lambda page: page.go_to(1), "scan a ticket or label"),
    }
    pages = {type(door.page): door.page for door in window.doors}
    for kind, (go, hint) in asked.items():
        window.show_packer()
        window.screens.setCurrentWidget(pages[kind])
        go(pages[kind])
        QApplication.processEvents()
        field = window.focusWidget()
        assert isinstance(field, ScanField), kind
        assert field.placeholderText() == hint
    window.close()
    station.store.close()


@pytest.mark.parametrize("language", Language)
@pytest.mark.parametrize("screen", SMALL, ids=str)
def test_the_band_on_a_page_is_read_at_arm_s_length(
    qtbot, monkeypatch, screen: Screen, language: Language
) -> None:
    """From 0.5 m (common practice for an arm) at 16 minutes of arc, and no sign of it is cut."""
    drawn: list[tuple[Fitted, float]] = []
    drawer = window_module.draw

    def note(painter, text, left, top, colour) -> None:
        drawn.append((text, top))
        drawer(painter, text, left, top, colour)

    monkeypatch.setattr(window_module, "draw", note)
    with ruler_of(screen):
        window = StationWindow(Bridge(), FakeIntents(), make_offer(), language=language)
        qtbot.addWidget(window)
        window.resize(screen.wide, screen.tall)
        window.show()
        window.show_lead()
        window.packer.call_button.click()
        QApplication.processEvents()
        window.band.grab()
    text, top = drawn[-1]
    rise, below = ink_of(text)
    assert text.whole
    assert top + text.cap - rise >= 0
    assert top + text.cap + below <= window.band.height()
    assert reach(text.cap / screen.px_per_mm) >= 0.5


@pytest.mark.parametrize("screen", SMALL, ids=str)
def test_however_many_people_there_are_the_window_is_no_larger_than_its_screen(
    qtbot, tmp_path, screen: Screen
):
    house = without_pins(packhouse(demo_settings()))
    people = {
        f"{who}{number}": replace(one, id=f"{who}{number}")
        for number in range(6)
        for who, one in house.people.items()
    }
    house = replace(house, people=people)
    station = Station(house, tmp_path / "home", PortSettings("none"), tmp_path / "labels")
    with ruler_of(screen):
        window = station_window(Bridge(), station, house)
        qtbot.addWidget(window)
        window.make_pages()
        for place in range(window.screens.count()):
            page = window.screens.widget(place)
            least = page.minimumSizeHint()
            assert least.width() <= screen.wide, page
            assert least.height() <= screen.tall, page
        window.resize(screen.wide, screen.tall)
        with qtbot.waitExposed(window):
            window.show()
        assert (window.width(), window.height()) == (screen.wide, screen.tall)
        window.close()
    station.store.close()
