"""Qt's application while it lasts, and what is left of it afterwards."""

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QMainWindow

from station.app.qt_side import application

pytestmark = pytest.mark.gui


def test_an_application_that_ended_ends_no_later_loop(qtbot):
    """A quit closes the last window, which wishes to quit again: nobody is there to hear it."""
    window = QMainWindow()
    qtbot.addWidget(window)
    window.show()
    with application() as qt:
        QTimer.singleShot(0, qt.quit)
        qt.exec()
    qt.processEvents()
    heard = []
    QTimer.singleShot(0, lambda: heard.append(True))
    qtbot.waitUntil(lambda: bool(heard))
