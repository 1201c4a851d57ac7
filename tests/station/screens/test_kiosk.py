"""The kiosk keeps its screen: keys that lead out end in it, and only a signature leaves it.

Which keys change or close windows differs from system to system; those here are common practice.
"""

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtGui import QCloseEvent, QGuiApplication, QKeyEvent
from PySide6.QtWidgets import QApplication, QLineEdit

from station.core.people import left_fact
from station.core.rights import Act, signers
from station.line.state import EntryAnswer
from station.screens.bridge import Bridge
from station.screens.kiosk import HOW, LEAVE, Kiosk, leads_out
from station.screens.screen_keeper import ScreenKeeper
from station.screens.signing import SignedIntents
from station.screens.theme import LIGHT, Ruler
from station.screens.window import StationWindow
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.signing_rig import CREW, PINS, PinSource
from tests.station.screens.states import every_state, make_offer

pytestmark = pytest.mark.qt_log_ignore(
    "propagateSizeHints", "raise"
)  # Qt's offscreen platform only
Key, Mod = Qt.Key, Qt.KeyboardModifier
NONE = Mod.NoModifier


@pytest.fixture
def window(qtbot):
    bridge = Bridge()
    signed = SignedIntents(FakeIntents(), PinSource(), bridge, CREW)
    made = StationWindow(bridge, signed, make_offer(), signing=signed)
    made.bridge = bridge
    qtbot.addWidget(made)
    yield made
    made.close()


@pytest.fixture
def kiosk(qtbot, window):
    made = Kiosk(window, LIGHT, window.bridge, FakeIntents(), lambda: left_fact("u1"))
    with qtbot.waitExposed(window):
        made.show()
    window.packer.show_state(every_state()["short_t1"])
    yield made
    made.release()


OUT = [
    (Key.Key_F4, Mod.AltModifier),
    (Key.Key_Tab, Mod.AltModifier),
    (Key.Key_Backtab, Mod.AltModifier | Mod.ShiftModifier),
    (Key.Key_Escape, Mod.AltModifier),
    (Key.Key_Space, Mod.AltModifier),
    (Key.Key_F2, Mod.AltModifier),
    (Key.Key_W, Mod.ControlModifier),
    (Key.Key_Q, Mod.ControlModifier),
    (Key.Key_F4, Mod.ControlModifier),
    (Key.Key_Escape, Mod.ControlModifier),
    (Key.Key_Escape, Mod.ControlModifier | Mod.ShiftModifier),
    (Key.Key_Delete, Mod.ControlModifier | Mod.AltModifier),
    (Key.Key_F1, Mod.ControlModifier | Mod.AltModifier),
    (Key.Key_Super_L, NONE),
    (Key.Key_Meta, NONE),
    (Key.Key_D, Mod.MetaModifier),
    (Key.Key_Menu, NONE),
]
IN = [
    *((key, NONE) for key in (Key.Key_F1, Key.Key_F2, Key.Key_F12, Key.Key_Escape)),
    *((key, NONE) for key in (Key.Key_Q, Key.Key_Tab, Key.Key_7, Key.Key_Return)),
    (Key.Key_F2, Mod.ShiftModifier),
    (Key.Key_A, Mod.ShiftModifier),
    (Key.Key_V, Mod.ControlModifier),
]


@pytest.mark.parametrize(("key", "modifiers"), OUT)
def test_keys_that_lead_out_end_in_the_kiosk(window, kiosk, key, modifiers):
    assert leads_out(key.value, modifiers)
    heard = []
    window.packer.keyPressEvent = heard.append
    for kind in (QEvent.Type.ShortcutOverride, QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
        event = QKeyEvent(kind, key.value, modifiers)
        assert QCoreApplication.sendEvent(window.packer, event)
        assert event.isAccepted()
    assert heard == []
    assert window.isVisible()
    assert window.isFullScreen()


def test_keys_that_lead_out_end_in_the_kiosk_whoever_has_the_focus(qtbot, window, kiosk):
    field = QLineEdit("Harbour leaf mix", window)
    field.show()
    window.activateWindow()
    field.setFocus()
    qtbot.waitUntil(field.hasFocus)
    qtbot.keyClick(field, Key.Key_Backspace, Mod.ControlModifier)
    assert field.text() == "Harbour leaf mix"
    qtbot.keyClick(field, Key.Key_Backspace)
    assert field.text() == "Harbour leaf mi"


@pytest.mark.parametrize(("key", "modifiers"), IN)
def test_keys_of_the_station_are_its_own(key, modifiers):
    assert not leads_out(key.value, modifiers)


def test_the_stations_own_keys_still_work(qtbot, window, kiosk):
    qtbot.keyClick(window, Key.Key_F1)
    assert window.packer.about.isVisible()
    qtbot.keyClick(window, Key.Key_Escape)
    assert window.isFullScreen()


def test_a_wish_to_close_is_refused_and_says_how(window, kiosk):
    event = QCloseEvent()
    QCoreApplication.sendEvent(window, event)
    assert not event.isAccepted()
    assert window.isVisible()
    assert window.band.view == (HOW,)


def test_a_window_made_small_comes_back(qtbot, window, kiosk):
    window.showMinimized()
    qtbot.waitUntil(window.isFullScreen)
    window.showNormal()
    qtbot.waitUntil(window.isFullScreen)


def test_somebody_with_the_right_leaves_with_a_pin(qtbot, window, kiosk, monkeypatch):
    ended = []
    monkeypatch.setattr(QApplication, "quit", lambda: ended.append(True))
    button = window.lead.doors[LEAVE]
    window.screens.setCurrentWidget(window.lead)
    window.lead.more_button.click()
    assert min(button.width(), button.height()) >= Ruler.of(window.screen()).touch()
    with qtbot.waitSignal(button.held):
        qtbot.mousePress(button, Qt.MouseButton.LeftButton)
    qtbot.mouseRelease(button, Qt.MouseButton.LeftButton)
    sheet = window.guard.sheet
    assert sheet.isVisible()
    offered = set(sheet.tiles.buttons)
    assert offered == {"L01", "L02", "M01"}  # no packer, and QA neither
    sheet.choose("L01")
    sheet.pad.done.emit("000000")
    qtbot.waitUntil(lambda: "not right" in sheet.message.text())
    assert window.isVisible()
    assert not ended
    sheet.pad.done.emit(PINS["L01"])
    qtbot.waitUntil(lambda: bool(kiosk._line.asked))
    assert kiosk._line.asked == [("enter", ((left_fact("u1"),), "L01"))]
    assert signers((left_fact("u1"),), "")[0].act is Act.LEAVE
    assert window.isVisible()  # nobody leaves before it is on record
    window.bridge.enter(EntryAnswer(("other",), True, "recorded"))
    QApplication.processEvents()
    assert not ended
    window.bridge.enter(EntryAnswer(("u1",), True, "recorded"))
    qtbot.waitUntil(lambda: bool(ended))
    assert not window.isVisible()


@pytest.mark.expects_log("leaving the full screen")
@pytest.mark.parametrize("answered", [True, False])
def test_a_record_that_takes_nothing_more_keeps_nobody(
    qtbot, window, kiosk, monkeypatch, answered, caplog
):
    ended = []
    monkeypatch.setattr(QApplication, "quit", lambda: ended.append(True))
    monkeypatch.setattr("station.screens.kiosk.PATIENCE_MS", 50)
    kiosk._record("L01")
    if answered:
        window.bridge.enter(EntryAnswer(("u1",), False, "the disk is broken"))
    qtbot.waitUntil(lambda: bool(ended))
    assert "record" in caplog.text


def test_a_tap_does_not_ask(qtbot, window, kiosk):
    window.screens.setCurrentWidget(window.lead)
    window.lead.more_button.click()
    qtbot.mouseClick(window.lead.doors[LEAVE], Qt.MouseButton.LeftButton)
    assert not window.guard.sheet.isVisible()


# --- screens that change ----------------------------------------------------------------------


def whole(window):
    """Every part of the packer's screen lies in it, and the sheet and band fit it."""
    packer = window.packer
    parts = (packer.header, packer.counts, packer.label, packer.aside_button, packer.run_button)
    return all(packer.rect().contains(part.geometry()) for part in parts)


@pytest.mark.parametrize("full", [True, False], ids=["kiosk", "window"])
def test_a_screen_unplugged_and_back_leaves_the_layout_whole(qtbot, window, full):
    keeper = ScreenKeeper(window, full=full)
    window.resize(1280, 800)
    with qtbot.waitExposed(window):
        window.show()
    window.packer.show_state(every_state()["over_near"])
    application, screen = QApplication.instance(), QGuiApplication.primaryScreen()
    for signal in (application.screenRemoved, application.screenAdded):
        signal.emit(screen)
        assert whole(window)
    screen.physicalDotsPerInchChanged.emit(120.0)
    screen.geometryChanged.emit(screen.geometry())
    assert whole(window)
    assert window.isFullScreen() is full
    keeper.stop()


def test_without_any_screen_it_waits(qtbot, window, monkeypatch):
    keeper = ScreenKeeper(window, full=True)
    monkeypatch.setattr(QGuiApplication, "screens", staticmethod(list))
    keeper.settle()
    keeper.fill()
    assert not window.isVisible()
    keeper.stop()


@pytest.mark.parametrize("size", [(1024, 768), (1920, 1080), (768, 1024), (480, 320), (1280, 800)])
def test_resized_in_mid_bag_nothing_is_lost(qtbot, window, size):
    with qtbot.waitExposed(window):
        window.show()
    window.packer.show_state(every_state()["short_far"])
    shown = window.packer.state
    window.packer.resize(*size)
    assert window.packer.state is shown
    assert window.packer.unit > 0
    window.packer.resize(1280, 800)
    assert whole(window)
