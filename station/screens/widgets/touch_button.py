"""A button for a gloved, wet hand: acts on release inside, or after it was held."""

from __future__ import annotations

from PySide6.QtCore import QElapsedTimer, QEvent, QRectF, QSize, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QWidget
from typing_extensions import override

from station.screens.theme import HOLD_MS, TOUCH_MM, Face, Palette, Ruler
from station.screens.tongue import say
from station.screens.widgets.lettering import Fitted, draw, fit
from station.screens.widgets.painted import stroke
from station.screens.widgets.pictograms import Picture, draw_picture

_FILL_STEP_MS = 40
_SMALL, _TWO_LINES = 0.62, 1.75
"""Size of the second line, and the height in which it stands on two where it is too long for one,
both in capitals of the word."""


class TouchButton(QAbstractButton):
    """Paints a word, a smaller second line and a picture; checked is inverse video.

    Its text stays English, whoever reads it; it is painted in the language shown now.

    Args:
        words: the word on it; blanks may wrap.
        small: a second, smaller line.
        picture: drawn above or left of the word.
        struck: draws the word struck through: there to be seen, not to be chosen.
        hold: acts only after it was held for HOLD_MS; ``held`` is emitted, not ``clicked``.
        least_mm: least side in millimetres of the screen.

    Signals:
        held: the button was held long enough.
    """

    held = Signal()

    def __init__(
        self,
        palette: Palette,
        words: str,
        *,
        small: str = "",
        picture: Picture | None = None,
        struck: bool = False,
        hold: bool = False,
        least_mm: float = TOUCH_MM,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.colours = palette
        self.small = small
        self.picture = picture
        self.struck = struck
        self.strong = False
        """The one thing to do next is a solid plate."""
        self.cap_px = 0.0
        """Height of a capital; 0 takes a fifth of the button's height."""
        self._least_mm = least_mm
        self._hold = hold
        self._pressed_for = QElapsedTimer()
        self._filling = QTimer(self)
        self._filling.setInterval(_FILL_STEP_MS)
        self._filling.timeout.connect(self._fill)
        self.setText(words)
        self._name()
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        if hold:
            self.pressed.connect(self._begin)
            self.released.connect(self._end)

    def _name(self) -> None:
        self.setAccessibleName(f"{say(self.text())} {say(self.small)}".strip())

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self._name()
            self.update()

    @override
    def minimumSizeHint(self) -> QSize:
        side = Ruler.of(self.screen()).touch(self._least_mm)
        return QSize(side, side)

    @override
    def sizeHint(self) -> QSize:
        return self.minimumSizeHint()

    @Slot()
    def _begin(self) -> None:
        self._pressed_for.start()
        self._filling.start()

    @Slot()
    def _end(self) -> None:
        self._filling.stop()
        self.update()

    @Slot()
    def _fill(self) -> None:
        if self._pressed_for.hasExpired(HOLD_MS):
            self._filling.stop()
            self.setDown(False)
            self.held.emit()
        self.update()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours, box = self.colours, QRectF(self.rect())
        dark = self.isEnabled() and (self.isChecked() or self.isDown() or self.strong)
        ground = colours.act if self.strong else colours.ink
        painter.fillRect(box, QColor(ground if dark else colours.paper))
        if self._filling.isActive():
            share = min(self._pressed_for.elapsed() / HOLD_MS, 1.0)
            painter.fillRect(QRectF(0, 0, box.width() * share, box.height()), QColor(colours.act))
        line = max(1.5, box.height() / 60)
        pen = stroke(colours.ink if self.isEnabled() else colours.edge, line)
        if self.struck:
            pen.setDashPattern([5.0, 4.0])
        painter.setPen(pen)
        painter.drawRect(box.adjusted(line / 2, line / 2, -line / 2, -line / 2))
        colour = colours.on_dark if dark else colours.ink
        self._write(painter, box, colour if self.isEnabled() else colours.muted)
        if self.hasFocus():
            painter.setPen(stroke(colours.act, 2 * line))
            painter.drawRect(box.adjusted(2 * line, 2 * line, -2 * line, -2 * line))
        painter.end()

    def lettering(self) -> tuple[Fitted, Fitted, QRectF]:
        """Word and second line as they are set, and the place they share."""
        return self._set(self._room(QRectF(self.rect()))[0])

    def _room(self, box: QRectF) -> tuple[QRectF, QRectF]:
        """Places of the words and of the picture."""
        pad = box.height() * 0.1
        inner, place = box.adjusted(pad, pad, -pad, -pad), QRectF()
        if self.picture is not None:
            beside = box.width() > 2.4 * box.height()
            side = inner.height() if beside else inner.height() * 0.58
            place = QRectF(inner.left(), inner.top(), side, side)
            if beside:
                inner.setLeft(place.right() + pad * 1.5)
            else:
                place.moveLeft(inner.center().x() - side / 2)
                inner.setTop(place.bottom() + pad * 0.8)
        return inner, place

    def _set(self, inner: QRectF) -> tuple[Fitted, Fitted, QRectF]:
        cap = self.cap_px or self.height() * 0.19
        words, second = self._lines(inner, cap, cap)
        if second.cap < cap * _SMALL:
            parted, larger = self._lines(inner, cap, cap * _TWO_LINES)
            if parted.whole and parted.cap >= words.cap and larger.cap > second.cap:
                return parted, larger, inner
        return words, second, inner

    def _lines(self, inner: QRectF, cap: float, tall: float) -> tuple[Fitted, Fitted]:
        """Word and second line, when the second line takes so much height."""
        second = fit(say(self.small), Face.TEXT, cap * _SMALL, inner.width(), tall, least=0.45)
        below = second.height + cap * 0.6 if self.small else 0.0
        room = inner.height() - below
        return fit(say(self.text()), Face.VERB, cap, inner.width(), room, least=0.4), second

    def _write(self, painter: QPainter, box: QRectF, colour: str) -> None:
        inner, place = self._room(box)
        if self.picture is not None:
            draw_picture(painter, self.picture, place, colour)
        words, second, _ = self._set(inner)
        cap = self.cap_px or box.height() * 0.19
        below = second.height + cap * 0.6 if self.small else 0.0
        top = inner.center().y() - (words.height + below) / 2
        for fitted, y in ((words, top), (second, top + words.height + cap * 0.6)):
            draw(painter, fitted, inner.center().x() - fitted.width / 2, y, colour)
        if self.struck:
            painter.setPen(stroke(colour, max(1.5, cap * 0.1)))
            y = round(top + words.cap / 2)
            reach = words.width / 2 + cap * 0.3
            middle = inner.center().x()
            painter.drawLine(round(middle - reach), y, round(middle + reach), y)
