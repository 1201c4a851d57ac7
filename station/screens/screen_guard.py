"""Keeps every page but the packer's for who is signed on, and goes back to it after idle time.

The packer's screen is never covered or locked, and the line never waits for it: going back only
changes what is shown. A page with somebody's hands at the scale stays until they are done.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QTimer, Slot
from PySide6.QtWidgets import QApplication, QStackedWidget, QWidget
from typing_extensions import override

from station.screens.doors import DoorPage
from station.screens.signing import SignedIntents
from station.screens.signing_sheet import SigningSheet
from station.screens.theme import Palette

_LOOK_MS = 1_000
_TOUCHES = (
    QEvent.Type.MouseButtonPress,
    QEvent.Type.KeyPress,
    QEvent.Type.TouchBegin,
)


class ScreenGuard(QObject):
    """Lets pages be seen once somebody signed on.

    Args:
        window: the sheet is laid over it.
        screens: its pages.
        packer: the one that is for everybody.
        signing: whose signatures count.
        palette: colours of the sheet.
    """

    def __init__(
        self,
        window: QWidget,
        screens: QStackedWidget,
        packer: QWidget,
        signing: SignedIntents,
        palette: Palette,
    ) -> None:
        super().__init__(window)
        self._screens, self._packer, self._source = screens, packer, signing.source
        self.sheet = SigningSheet(signing, palette, window)
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._look.timeout.connect(self.look)
        self._look.start()
        screens.currentChanged.connect(self._listen)
        self._listen()

    @property
    def signed_on(self) -> str:
        """Id of who is signed on; empty where nobody is."""
        return self._source.signed_on

    def pass_to(self, page: QWidget) -> None:
        """Show a page, now or once somebody signed on."""
        screens = self._screens
        if self._source.open:
            screens.setCurrentWidget(page)
        elif not self.sheet.isVisible():
            self.sheet.unlock(lambda: screens.setCurrentWidget(page))

    @Slot()
    def look(self) -> None:
        """Go back to the packer's screen when nobody is signed on any more."""
        shown = self._screens.currentWidget()
        busy = isinstance(shown, DoorPage) and shown.at_work
        if self._source.open or shown is self._packer or busy or self.sheet.isVisible():
            return
        self._source.sign_off()
        self._screens.setCurrentWidget(self._packer)

    def stop(self) -> None:
        """Look no more; before the window goes."""
        self._look.stop()
        self.sheet.drop()
        self.sheet.work.wait()
        self._listen()

    @Slot()
    def _listen(self) -> None:
        """Hear touches while another page than the packer's is shown.

        Whoever listens is asked about every event of the application; on the packer's screen that
        would hold the number up for nothing.
        """
        application = QApplication.instance()
        if application is None:
            return
        application.removeEventFilter(self)
        if self._look.isActive() and self._screens.currentWidget() is not self._packer:
            application.installEventFilter(self)

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in _TOUCHES:
            self._source.touch()
        return False
