"""Why a bag is set aside: four big pictures."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.screens.theme import Face, Palette
from station.screens.tongue import mark, tr
from station.screens.widgets.lettering import draw, fit
from station.screens.widgets.pictograms import Picture
from station.screens.widgets.touch_button import TouchButton

REASONS: tuple[tuple[str, Picture], ...] = (
    (mark("burst seal"), Picture.BURST_SEAL),
    (mark("foreign body"), Picture.FOREIGN_BODY),
    (mark("wrong weight"), Picture.WRONG_WEIGHT),
    (mark("other"), Picture.OTHER),
)


class AsidePanel(QWidget):
    """Four reasons side by side.

    Signals:
        chosen: str, the reason in words.
    """

    chosen = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._palette = palette
        self.unit = 4.0
        self.buttons = tuple(
            TouchButton(palette, words, picture=picture, parent=self) for words, picture in REASONS
        )
        for button in self.buttons:
            button.clicked.connect(self._choose)

    def set_unit(self, unit: float) -> None:
        """Lay out anew for another size of the window."""
        self.unit = unit
        self._place()

    def _choose(self) -> None:
        button = self.sender()
        if isinstance(button, TouchButton):
            self.chosen.emit(button.text())

    def _place(self) -> None:
        gap = round(7 * self.unit)
        top = round(22 * self.unit)
        wide = (self.width() - gap * (len(self.buttons) - 1)) // len(self.buttons)
        tall = min(self.height() - top, round(wide * 1.15))
        for index, button in enumerate(self.buttons):
            button.setGeometry(index * (wide + gap), top, wide, tall)
            button.cap_px = 7.5 * self.unit

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        self._place()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.ground))
        words = fit(tr("Why is it set aside?"), Face.VERB, 11 * self.unit, self.width())
        draw(painter, words, 0, 3 * self.unit, self._palette.ink)
        painter.end()
