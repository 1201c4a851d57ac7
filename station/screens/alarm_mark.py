"""Counts alarms on the way to them: on RUN, on MORE, and on their own door."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Slot

from station.screens.window import StationWindow

if TYPE_CHECKING:
    from station.screens.alarms import AlarmSource

DOOR = "ALARMS"
_LOOK_MS = 500


class AlarmMark(QObject):
    """Shows how many alarms nobody has seen, with a sign that needs no language.

    Args:
        window: of the station, with the door of alarms.
        source: knows the alarms.
    """

    def __init__(self, window: StationWindow, source: AlarmSource) -> None:
        super().__init__(window)
        self._source = source
        lead = window.lead
        self._buttons = (window.packer.run_button, lead.more_button, lead.doors[DOOR])
        self._plain = tuple(button.small for button in self._buttons)
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._look.timeout.connect(self.look)
        self._look.start()
        self.look()

    @Slot()
    def look(self) -> None:
        """Show what is unseen now; put-off alarms count again once their time is over."""
        now = self._source.now
        alarms = self._source.open
        unseen = sum(not one.acknowledged and not one.shelved(now) for one in alarms)
        for button, plain in zip(self._buttons, self._plain, strict=True):
            words = f"! {unseen}" if unseen else plain
            if button.small != words:
                button.small = words
                button.setAccessibleName(f"{button.text()} {words}".strip())
                button.update()
