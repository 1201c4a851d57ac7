"""Keeps the window whole when its screen changes: another size, another one, unplugged and back."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QObject, Slot
from PySide6.QtGui import QGuiApplication, QResizeEvent, QScreen

from station.screens.window import StationWindow


class ScreenKeeper(QObject):
    """Lays a window out anew whenever a screen comes, goes or changes.

    Qt moves a window itself when its screen is gone; millimetres are then others, and a full
    window must be given the new screen's size.

    Args:
        window: of the station.
        full: whether it fills its screen.
    """

    def __init__(self, window: StationWindow, *, full: bool) -> None:
        super().__init__(window)
        self._window, self._full, self._stopped = window, full, False
        application = QGuiApplication.instance()
        assert isinstance(application, QGuiApplication)
        for changed in (
            application.screenAdded,
            application.screenRemoved,
            application.primaryScreenChanged,
        ):
            changed.connect(self.settle)
        application.screenAdded.connect(self._watch)
        for screen in QGuiApplication.screens():
            self._watch(screen)

    def stop(self) -> None:
        """Change nothing any more."""
        self._stopped = True

    @Slot(QScreen)
    def _watch(self, screen: QScreen) -> None:
        screen.geometryChanged.connect(self.settle)
        screen.physicalDotsPerInchChanged.connect(self.settle)

    @Slot()
    def settle(self) -> None:
        """Fit the window to what screens there are now; without any it waits for one."""
        if self._stopped or not QGuiApplication.screens():
            return
        if self._full:
            self.fill()
        packer = self._window.packer
        QCoreApplication.sendEvent(packer, QResizeEvent(packer.size(), packer.size()))

    def fill(self) -> None:
        """Fill the window's screen, or the first one where its own is gone."""
        screens = QGuiApplication.screens()
        if self._stopped or not screens:
            return
        screen = self._window.screen()
        if screen not in screens:
            screen = screens[0]
        self._window.setScreen(screen)
        self._window.setGeometry(screen.geometry())
        self._window.showFullScreen()
