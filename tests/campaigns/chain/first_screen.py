"""Be `station run`, up to its first screen: say when what was painted, and leave.

`python -m tests.campaigns.chain.first_screen --config DIR --home DIR`. What is loaded here is what
the verb loads too, and not before it is its turn, so the times stay those of the verb.
"""

import sys
import time


def main() -> None:
    """Start the station; print ``starting`` and ``painted`` with the monotonic clock's ns."""
    from station.app.memory import loading

    with loading():
        from station.app.main import main as station

        watch_start()
    sys.argv = ["station", "run", *sys.argv[1:]]
    station()


def watch_start() -> None:
    """Tell the end of the painting that says that the station starts."""
    from PySide6.QtGui import QPaintEvent

    from station.screens.start import StartScreen

    paint = StartScreen.paintEvent

    def noted(screen: StartScreen, event: QPaintEvent) -> None:
        paint(screen, event)
        print("starting", time.monotonic_ns(), flush=True)
        watch_card()

    StartScreen.paintEvent = noted  # type: ignore[method-assign]


def watch_card() -> None:
    """Tell the end of the first painting of the card that says what the station waits for."""
    from PySide6.QtCore import QTimer
    from PySide6.QtGui import QPaintEvent
    from PySide6.QtWidgets import QApplication

    from station.screens.packer import PackerScreen
    from station.screens.widgets.notice_card import NoticeCard

    if NoticeCard.paintEvent.__name__ == "noted":
        return
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
