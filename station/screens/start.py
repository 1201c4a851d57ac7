"""What is shown while a station starts: that it does, and that no bag is taken yet.

It knows neither line nor record, and nothing on it can be touched. The station's window comes over
it, and says then what the line waits for.
"""

from __future__ import annotations

import time

from PySide6.QtCore import QCoreApplication, QEventLoop, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.screens.theme import HEIGHT_MM, WIDTH_MM, Face, Palette
from station.screens.tongue import mark, say, tr
from station.screens.widgets.lettering import draw, fit
from station.screens.widgets.painted import stroke

WORD = mark("STARTING")
WHY = mark("Settings and record are being read: no bag is taken yet")
_MARGIN_MM, _CAP_MM, _SENTENCE_MM = 16.0, 36.0, 10.0
_BETWEEN = 0.6
"""Of the word's capitals, between it and the sentence: some scripts reach far below the line."""
_PATIENCE_S, _LOOK_MS = 0.5, 20
"""A window system that shows nothing by then keeps the station no longer."""


class StartScreen(QWidget):
    """A word and a sentence in a frame.

    Args:
        palette: colours.
    """

    def __init__(self, palette: Palette) -> None:
        super().__init__()
        self._palette = palette
        self.is_painted, self._left = False, False
        # Whoever closes it ends nothing: the station's own window comes all the same.
        self.setAttribute(Qt.WidgetAttribute.WA_QuitOnClose, on=False)
        self.setWindowTitle(tr(WORD))
        self.setAccessibleName(tr(WORD))
        self.setAccessibleDescription(say(WHY))

    def show_now(self, *, full: bool) -> None:
        """Show it and wait until it is painted."""
        self.setGeometry(self.screen().availableGeometry())  # also where nobody manages windows
        if full:
            self.showFullScreen()
        else:
            self.showMaximized()
        end = time.monotonic() + _PATIENCE_S
        while not self.is_painted and time.monotonic() < end:
            QCoreApplication.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, _LOOK_MS)

    def leave(self) -> None:
        """Be there no longer; more than once is once."""
        if not self._left:
            self._left = True
            self.hide()
            self.deleteLater()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        unit = min(self.width() / WIDTH_MM, self.height() / HEIGHT_MM)
        colours, margin = self._palette, _MARGIN_MM * unit
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(colours.ground))
        frame = QRectF(self.rect()).adjusted(margin, margin, -margin, -margin)
        painter.setPen(stroke(colours.edge, 0.8 * unit))
        painter.drawRect(frame)
        core = frame.adjusted(margin, margin, -margin, -margin)
        word = fit(tr(WORD), Face.VERB, _CAP_MM * unit, core.width(), core.height() / 2)
        why = fit(say(WHY), Face.TEXT, _SENTENCE_MM * unit, core.width(), core.height() / 3)
        gap = _BETWEEN * word.cap
        top = core.center().y() - (word.height + gap + why.height) / 2
        draw(painter, word, core.left(), top, colours.ink)
        draw(painter, why, core.left(), top + word.height + gap, colours.ink)
        painter.end()
        self.is_painted = True
