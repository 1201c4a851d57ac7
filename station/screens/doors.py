"""Doors of the lead's panel: pages behind a button and a key, each with a way back."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QKeyCombination, Qt, Signal, Slot
from PySide6.QtGui import QColor, QKeySequence, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QWidget
from typing_extensions import override

from station.line.state import LineState
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

    @Slot(object)
    def show_state(self, state: LineState) -> None:
        """Follow the line; a page that does not hear of it needs nothing."""

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


class Door:
    """One door; the page behind it is made when somebody first asks for it.

    Args:
        name: what its button says.
        key: F3 and on, or Shift and one; shows the page, and the lead's panel again.
        make: makes the page; called once, in the GUI thread.
    """

    def __init__(
        self, name: str, key: Qt.Key | QKeyCombination, make: Callable[[], DoorPage]
    ) -> None:
        self.name, self.key, self._make = name, key, make
        self._page: DoorPage | None = None
        self.made: Callable[[DoorPage], None] = _nobody
        """Told of the page once it is there, before anybody else has it."""

    @property
    def is_made(self) -> bool:
        """Whether the page is there."""
        return self._page is not None

    @property
    def page(self) -> DoorPage:
        """What is behind it, made now where it is not there yet."""
        if self._page is None:
            self._page = self._make()
            self.made(self._page)
        return self._page

    @property
    def key_name(self) -> str:
        """The key as it is written on it."""
        return QKeySequence(self.key).toString()


def _nobody(page: DoorPage) -> None:
    """Tell nobody."""
