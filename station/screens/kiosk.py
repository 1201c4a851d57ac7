"""The station as the only thing on its screen: full, and left only by somebody with the right.

What reaches Qt of the keys that close, hide or change windows is swallowed. What a window system
keeps to itself (on many a desktop Alt+Tab, on all Ctrl+Alt+Delete) never comes here: for a station
that nobody may leave, the machine's account must offer nothing else to change to.
"""

from __future__ import annotations

import logging
from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Slot
from PySide6.QtGui import QGuiApplication, QKeyEvent
from PySide6.QtWidgets import QApplication, QWidget
from typing_extensions import override

from station.core.facts import Fact
from station.core.rights import Act, signer
from station.line.state import EntryAnswer, Intents
from station.screens.bridge import Bridge
from station.screens.screen_keeper import ScreenKeeper
from station.screens.theme import Palette, Ruler
from station.screens.tongue import mark
from station.screens.widgets.touch_button import TouchButton
from station.screens.window import StationWindow

_LOG = logging.getLogger(__name__)
PATIENCE_MS = 5000
"""So long the line may take to record that somebody leaves."""
LEAVE = mark("LEAVE")
HOW = mark("This screen is left at RUN, MORE, LEAVE, by somebody who may")
_KEYS = QEvent.Type.KeyPress, QEvent.Type.KeyRelease, QEvent.Type.ShortcutOverride
_Key, _With = Qt.Key, Qt.KeyboardModifier
_FUNCTION = frozenset(range(_Key.Key_F1.value, _Key.Key_F35.value + 1))
ALONE = frozenset(
    key.value
    for key in (
        *(_Key.Key_Super_L, _Key.Key_Super_R, _Key.Key_Meta, _Key.Key_Menu),
        *(_Key.Key_Hyper_L, _Key.Key_Hyper_R, _Key.Key_PowerOff, _Key.Key_Sleep),
        *(_Key.Key_HomePage, _Key.Key_Search, _Key.Key_Close, _Key.Key_Explorer),
    )
)
"""Keys that open something of the system's by themselves."""
WITH_ALT = _FUNCTION | frozenset(
    key.value for key in (_Key.Key_Tab, _Key.Key_Backtab, _Key.Key_Escape, _Key.Key_Space)
)
WITH_CONTROL = frozenset(
    key.value
    for key in (
        *(_Key.Key_W, _Key.Key_Q, _Key.Key_F4, _Key.Key_Tab, _Key.Key_Backtab),
        *(_Key.Key_Escape, _Key.Key_Delete, _Key.Key_Backspace),
    )
)


def leads_out(key: int, modifiers: Qt.KeyboardModifier) -> bool:
    """Whether a key with its modifiers could close, hide or change a window on some system."""
    if key in ALONE or modifiers & _With.MetaModifier:
        return True
    if modifiers & _With.AltModifier and key in WITH_ALT:
        return True
    return bool(modifiers & _With.ControlModifier) and key in WITH_CONTROL


class Kiosk(QObject):
    """Keeps a window full screen and open until somebody with the right leaves it.

    Args:
        window: of the station; its lead's panel gets a button more.
        palette: colours of the button.
        bridge: tells what became of the entry.
        line: takes the entry that somebody leaves, signed already.
        leaving: makes it.
    """

    def __init__(
        self,
        window: StationWindow,
        palette: Palette,
        bridge: Bridge,
        line: Intents,
        leaving: Callable[[], Fact],
    ) -> None:
        super().__init__(window)
        self._window, self._line, self._leaving = window, line, leaving
        self._free = False
        self._uid = ""
        bridge.entered.connect(self._entered, Qt.ConnectionType.DirectConnection)
        self.leave_button = TouchButton(palette, LEAVE, small="hold down", hold=True)
        self.leave_button.cap_px = Ruler.of(window.screen()).px(7.0)
        self.leave_button.held.connect(self.ask)
        window.lead.door_grid.place(LEAVE, self.leave_button)
        window.setWindowFlag(Qt.WindowType.FramelessWindowHint)
        window.setWindowFlag(Qt.WindowType.WindowStaysOnTopHint)
        self._keeper = ScreenKeeper(window, full=True)
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        window.installEventFilter(self)
        self._hear(None, application.focusWidget())
        application.focusChanged.connect(self._hear)
        application.applicationStateChanged.connect(self._stay)

    def show(self) -> None:
        """Show the window on all of its screen."""
        self._keeper.fill()

    @Slot()
    def ask(self) -> None:
        """Ask for the signature of somebody who may leave; then record it and end the station."""
        signing = self._window.signing
        if signing is not None and signing.asker is not None:
            needed = (signer(Act.LEAVE, ""),)
            signing.asker.ask(needed, lambda by: self._record(by[0]), lambda: None)

    def _record(self, who: str) -> None:
        """Leave once it is on record; a record that takes nothing more keeps nobody here."""
        fact = self._leaving()
        self._uid = fact.uid
        QTimer.singleShot(PATIENCE_MS, self, self._give_up_waiting)
        self._line.enter((fact,), who)

    @Slot(object)
    def _entered(self, answer: EntryAnswer) -> None:
        if self._uid and self._uid in answer.uids:
            if not answer.recorded:
                _LOG.warning("leaving the full screen is not on record: %s", answer.words)
            self._leave()

    @Slot()
    def _give_up_waiting(self) -> None:
        if not self._free:
            _LOG.warning("leaving the full screen may not be on record: the line did not answer")
            self._leave()

    def release(self) -> None:
        """Let the window be closed; before the station ends."""
        if self._free:
            return
        self._free = True
        self._keeper.stop()
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.focusChanged.disconnect(self._hear)
            application.applicationStateChanged.disconnect(self._stay)

    def _leave(self) -> None:
        self.release()
        self._window.close()
        QApplication.quit()

    @Slot()
    def _stay(self) -> None:
        """Come back to the front after something else did."""
        if QGuiApplication.applicationState() is Qt.ApplicationState.ApplicationActive:
            return
        QTimer.singleShot(0, self, self._to_front)

    @Slot()
    def _to_front(self) -> None:
        if not self._free:
            self._keeper.fill()
            self._window.raise_()
            self._window.activateWindow()

    @Slot(QWidget, QWidget)
    def _hear(self, _: QWidget | None, has_focus: QWidget | None) -> None:
        """Hear the keys of whoever gets them, and what becomes of the window.

        Whoever hears the application itself is asked about every event of every widget, and the
        number on the packer's screen waits for the answers.
        """
        if has_focus is not None:
            has_focus.installEventFilter(self)

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if self._free:
            return False
        key = event if event.type() in _KEYS and isinstance(event, QKeyEvent) else None
        if key is not None and leads_out(key.key(), key.modifiers()):
            event.accept()  # an accepted override becomes a key press, which ends here too
            return True
        if event.type() is QEvent.Type.Close and watched is self._window:
            event.ignore()
            self._window.band.say(HOW)
            return True
        changed = event.type() is QEvent.Type.WindowStateChange and watched is self._window
        if changed and not self._window.isFullScreen():
            QTimer.singleShot(0, self, self._to_front)
        return False
