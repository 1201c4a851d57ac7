"""Qt's application of this process, alone: nothing of a station is loaded for it."""

from __future__ import annotations

import os
import sys

from PySide6.QtWidgets import QApplication

from station.errors import EnvironmentFault


def the_application() -> QApplication:
    """The application there is, or a new one.

    Raises:
        EnvironmentFault: there is no screen to show a window on.
    """
    named = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    if sys.platform == "linux" and not any(os.environ.get(name) for name in named):
        raise EnvironmentFault(
            "there is no screen", "start in a desktop session, or use demo --headless"
        )
    application = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(application, QApplication)
    return application
