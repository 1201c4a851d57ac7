"""Doors of the lead's panel: pages behind a button and a key, each with a way back."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QWidget


class DoorPage(QWidget):
    """A page behind a door.

    Signals:
        left: whoever looked wants the lead's panel back.
    """

    left = Signal()

    def stop(self) -> None:
        """Give up what is going on; before the window goes."""


@dataclass(frozen=True, slots=True)
class Door:
    """One door.

    Args:
        name: what its button says.
        key: F3 and on; shows the page, and the lead's panel again.
        page: what is behind it.
    """

    name: str
    key: Qt.Key
    page: DoorPage

    @property
    def key_name(self) -> str:
        """The key as it is written on it."""
        return QKeySequence(self.key).toString()
