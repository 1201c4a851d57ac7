"""Be `station run`, up to its first screen: say when that was painted, and leave.

`python -m tests.campaigns.chain.first_screen --config DIR --home DIR`. What is loaded here before
the verb is what the verb loads too, so the time to the first screen stays that of the verb.
"""

import sys
import time


def main() -> None:
    """Start the station; print ``painted`` and the monotonic clock's nanoseconds."""
    from station.app.memory import loading

    with loading():
        watch()
        from station.app.main import main as station
    sys.argv = ["station", "run", *sys.argv[1:]]
    station()


def watch() -> None:
    """Tell the end of the first painting of the card that says what the station waits for."""
    from PySide6.QtCore import QTimer
    from PySide6.QtGui import QPaintEvent
    from PySide6.QtWidgets import QApplication

    from station.screens.packer import PackerScreen
    from station.screens.widgets.notice_card import NoticeCard

    paint = NoticeCard.paintEvent

    def noted(card: NoticeCard, event: QPaintEvent) -> None:
        paint(card, event)
        screen = card.parentWidget()
        assert isinstance(screen, PackerScreen)
        if screen.state is not None:
            print("painted", time.monotonic_ns(), flush=True)
            QTimer.singleShot(0, QApplication.quit)

    NoticeCard.paintEvent = noted  # type: ignore[method-assign]


if __name__ == "__main__":
    main()
