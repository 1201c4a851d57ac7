"""Doors of the lead's panel: pages behind a button and a key, each with a way back."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QKeyCombination, Qt, Signal
from PySide6.QtGui import QColor, QKeySequence, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QWidget
from typing_extensions import override

from station.screens.theme import Palette, Ruler
from station.screens.widgets.touch_button import TouchButton


class DoorPage(QWidget):
    """A page behind a door, on the ground of its palette.

    Args:
        palette: colours.

    Signals:
        left: whoever looked wants the lead's panel back.
    """

    left = Signal()

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._palette = palette

    def head_row(self, buttons: Sequence[TouchButton], cap_mm: float) -> QHBoxLayout:
        """Return the row of buttons at the head of the page, the way back last."""
        ruler = Ruler.of(self.screen())
        row = QHBoxLayout()
        row.setSpacing(ruler.touch(6))
        for button in buttons:
            button.cap_px = ruler.px(cap_mm)
            row.addWidget(button, 1)
        return row

    @property
    def at_work(self) -> bool:
        """Whether somebody's hands are busy elsewhere for this page, so that it must stay."""
        return False

    def stop(self) -> None:
        """Give up what is going on; before the window goes."""

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.ground))
        painter.end()


@dataclass(frozen=True, slots=True)
class Door:
    """One door.

    Args:
        name: what its button says.
        key: F3 and on, or Shift and one; shows the page, and the lead's panel again.
        page: what is behind it.
    """

    name: str
    key: Qt.Key | QKeyCombination
    page: DoorPage

    @property
    def key_name(self) -> str:
        """The key as it is written on it."""
        return QKeySequence(self.key).toString()
