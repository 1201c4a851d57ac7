"""The bench window of the demo: put a bag on a simulated scale, pour, take out, lift."""

from __future__ import annotations

from typing import Protocol

from PySide6.QtCore import QPointF, QRectF, QTimer, Slot
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent
from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget
from typing_extensions import override

from station.screens.theme import LIGHT, Face, Palette, Ruler
from station.screens.widgets.lettering import draw_centred, fit
from station.screens.widgets.painted import hatch, stroke
from station.screens.widgets.touch_button import TouchButton

_TICK_MS = 100
_FIRST_GRAMS, _MOST_GRAMS, _GROWTH = 2.0, 40.0, 1.08
"""A tap moves a leaf or two; a held button moves more with each tick."""
_FULL_BAG_G = 300.0
"""The drawing's bag looks full from here on."""


class BenchHand(Protocol):
    """The hand of a person at the simulated scale."""

    @property
    def is_plugged(self) -> bool:
        """Whether the scale's cable is in."""
        ...

    def put_bag(self) -> bool:
        """Put an empty bag on the pan; False where something lies there already."""
        ...

    def pour(self, grams: float) -> None:
        """Put product into the bag."""
        ...

    def take_out(self, grams: float) -> None:
        """Take product out of the bag."""
        ...

    def lift(self) -> None:
        """Take the bag off the pan."""
        ...

    def press_zero(self) -> None:
        """Press the scale's zero key."""
        ...

    def unplug(self) -> None:
        """Pull the scale's cable."""
        ...

    def plug_in(self) -> None:
        """Put the scale's cable in."""
        ...


class PanDrawing(QWidget):
    """The pan, the bag on it and how full it is; a drawing, not an indication."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette = palette
        self.bag = False
        self.grams = 0.0
        self.plugged = True
        self.setMinimumHeight(round(Ruler.of(self.screen()).px(46)))

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours, box = self._palette, QRectF(self.rect())
        painter.fillRect(box, QColor(colours.ground))
        unit = box.height() / 100
        tape = QRectF(0, 0, box.width(), 20 * unit)
        hatch(painter, tape, colours.attend, colours.on_attend, 12 * unit)
        words = fit("SIMULATED SCALE", Face.VERB, 9 * unit, tape.width() - 40 * unit)
        plate = QRectF(0, 0, words.width + 16 * unit, 16 * unit)
        plate.moveCenter(tape.center())
        painter.fillRect(plate, QColor(colours.paper))
        draw_centred(painter, words, plate, colours.ink)
        middle = box.center().x()
        pan_y = 88 * unit
        painter.setPen(stroke(colours.ink, 2.4 * unit))
        painter.drawLine(QPointF(middle - 70 * unit, pan_y), QPointF(middle + 70 * unit, pan_y))
        painter.drawLine(
            QPointF(middle - 18 * unit, pan_y + 7 * unit),
            QPointF(middle + 18 * unit, pan_y + 7 * unit),
        )
        self._cable(painter, middle, pan_y, unit)
        if self.bag:
            self._bag(painter, QRectF(middle - 34 * unit, 26 * unit, 68 * unit, 60 * unit))
        painter.end()

    def _bag(self, painter: QPainter, box: QRectF) -> None:
        wide, tall = box.width(), box.height()
        path = QPainterPath(box.topLeft())
        path.lineTo(box.topLeft() + QPointF(wide * 0.06, tall * 0.86))
        path.quadTo(
            box.bottomLeft() + QPointF(wide * 0.07, 0), box.bottomLeft() + QPointF(wide * 0.2, 0)
        )
        path.lineTo(box.bottomRight() - QPointF(wide * 0.2, 0))
        path.quadTo(
            box.bottomRight() - QPointF(wide * 0.07, 0),
            box.topRight() + QPointF(-wide * 0.06, tall * 0.86),
        )
        path.lineTo(box.topRight())
        for step in range(5, -1, -1):  # the cut mouth of an open bag
            dip = tall * (0.05 if step % 2 else 0.0)
            path.lineTo(box.topLeft() + QPointF(wide * step / 6, dip))
        full = min(self.grams / _FULL_BAG_G, 1.0) * 0.86
        painter.save()
        painter.setClipPath(path)
        level = QRectF(box)
        level.setTop(box.bottom() - box.height() * full)
        level.adjust(-box.width(), 0, box.width(), 0)
        painter.fillRect(level, QColor(self._palette.muted))
        painter.restore()
        painter.setPen(stroke(self._palette.ink, box.width() / 30))
        painter.drawPath(path)

    def _cable(self, painter: QPainter, middle: float, pan_y: float, unit: float) -> None:
        start = QPointF(middle + 18 * unit, pan_y + 7 * unit)
        end = start + QPointF((96 if self.plugged else 62) * unit, 0)
        painter.drawLine(start, end)
        if not self.plugged:
            gap = end + QPointF(10 * unit, 0)
            painter.drawLine(end + QPointF(0, -5 * unit), end + QPointF(0, 5 * unit))
            painter.drawLine(gap + QPointF(0, -5 * unit), gap + QPointF(0, 5 * unit))
            painter.drawLine(gap, gap + QPointF(24 * unit, 0))


class BenchWindow(QWidget):
    """Buttons for the hand; POUR and TAKE OUT go on while they are held.

    Args:
        hand: moves the simulated scale; its calls return at once.
        palette: colours.
    """

    def __init__(
        self, hand: BenchHand, palette: Palette = LIGHT, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._hand = hand
        self._palette = palette
        self.setWindowTitle("Bench – simulated scale")
        self.setStyleSheet(f"background: {palette.ground};")
        ruler = Ruler.of(self.screen())
        self.drawing = PanDrawing(palette)
        self.bag_button = TouchButton(palette, "PUT BAG ON")
        self.pour_button = TouchButton(palette, "POUR", small="hold to go on")
        self.take_button = TouchButton(palette, "TAKE OUT", small="hold to go on")
        self.lift_button = TouchButton(palette, "LIFT BAG")
        self.zero_button = TouchButton(palette, "ZERO")
        self.plug_button = TouchButton(palette, "UNPLUG")
        grid = QGridLayout()
        grid.setSpacing(ruler.touch(6))
        self._buttons = (
            *(self.bag_button, self.pour_button, self.take_button),
            *(self.lift_button, self.zero_button, self.plug_button),
        )
        for index, button in enumerate(self._buttons):
            button.cap_px = ruler.px(5.6)
            grid.addWidget(button, index // 2, index % 2)
        self.column = column = QVBoxLayout(self)
        column.setSpacing(ruler.touch(6))
        column.addWidget(self.drawing, 3)
        column.addLayout(grid, 5)
        self.resize(ruler.touch(120), ruler.touch(170))
        self._grams = _FIRST_GRAMS
        self._repeat = QTimer(self)
        self._repeat.setInterval(_TICK_MS)
        self._repeat.timeout.connect(self._move)
        self._connect()
        self._refresh()

    def _connect(self) -> None:
        self.bag_button.clicked.connect(self._put_bag)
        self.lift_button.clicked.connect(self._lift)
        self.zero_button.clicked.connect(self._zero)
        self.plug_button.clicked.connect(self._plug)
        for button in (self.pour_button, self.take_button):
            button.pressed.connect(self._begin)
            button.released.connect(self._repeat.stop)

    @Slot()
    def _put_bag(self) -> None:
        if self._hand.put_bag():
            self.drawing.bag, self.drawing.grams = True, 0.0
        self._refresh()

    @Slot()
    def _lift(self) -> None:
        self._repeat.stop()
        self._hand.lift()
        self.drawing.bag, self.drawing.grams = False, 0.0
        self._refresh()

    @Slot()
    def _zero(self) -> None:
        self._hand.press_zero()

    @Slot()
    def _plug(self) -> None:
        if self._hand.is_plugged:
            self._hand.unplug()
        else:
            self._hand.plug_in()
        self._refresh()

    @Slot()
    def _begin(self) -> None:
        self._grams = _FIRST_GRAMS
        self._move()
        self._repeat.start()

    @Slot()
    def _move(self) -> None:
        if self.pour_button.isDown():
            self._hand.pour(self._grams)
            self.drawing.grams += self._grams
        elif self.take_button.isDown():
            self._hand.take_out(self._grams)
            self.drawing.grams = max(0.0, self.drawing.grams - self._grams)
        else:
            self._repeat.stop()
        self._grams = min(self._grams * _GROWTH, _MOST_GRAMS)
        self.pour_button.strong = False
        self.drawing.update()

    def _refresh(self) -> None:
        on = self.drawing.bag
        self.bag_button.setEnabled(not on)
        for button in (self.pour_button, self.take_button, self.lift_button):
            button.setEnabled(on)
        self.bag_button.strong = not on
        self.pour_button.strong = on and self.drawing.grams == 0
        self.drawing.plugged = self._hand.is_plugged
        self.plug_button.setText("UNPLUG" if self._hand.is_plugged else "PLUG IN")
        for part in (*self._buttons, self.drawing):
            part.update()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.ground))
        painter.end()
