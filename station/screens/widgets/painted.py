"""A part of a screen that paints itself from one frozen value."""

from __future__ import annotations

from collections.abc import Callable
from typing import Generic, TypeVar

from PySide6.QtCore import QEvent, QRectF, QSize, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QRegion,
    QResizeEvent,
)
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.screens.theme import Palette

View = TypeVar("View")


class Painted(QWidget, Generic[View]):
    """Paints ``view``; a value equal to the one shown costs nothing.

    Args:
        palette: colours.
        view: what is shown first.

    Attributes:
        unit: pixels of one layout millimetre; set by the screen that owns the part.
        within: what lies outside of it need not be painted now.
    """

    def __init__(self, palette: Palette, view: View, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours = palette
        self.unit = 4.0
        self.within = QRegion()
        self._view = view
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)

    @property
    def view(self) -> View:
        """What is shown."""
        return self._view

    def set(self, view: View) -> None:
        """Show a value."""
        if view == self._view:
            return
        before, self._view = self._view, view
        self.arrange()
        changed = self.changed(before)
        if changed is None:
            self.update()
        elif self.at_once(before):
            self.repaint(changed)
        else:
            self.update(changed)

    def set_unit(self, unit: float) -> None:
        """Lay out anew for another size of the window."""
        self.unit = unit
        self.arrange()
        self.update()

    def changed(self, before: View) -> QRegion | None:
        """Where the view, as it is arranged now, looks other than ``before``; None for all over."""
        return None

    def at_once(self, before: View) -> bool:
        """Whether what changed since ``before`` is painted now, ahead of all else that changed."""
        return False

    def arrange(self) -> None:
        """Fit the texts of the view into the part's present size."""

    def paint(self, painter: QPainter) -> None:
        """Paint the view; the ground is already there."""
        raise NotImplementedError

    def drawn(self, size: QSize, draw: Callable[[QPainter], None]) -> QPixmap:
        """A picture on the part's ground, for whoever keeps it and lays it down again and again."""
        ratio = self.devicePixelRatioF()
        picture = QPixmap(size * ratio)
        picture.setDevicePixelRatio(ratio)
        picture.fill(QColor(self.colours.ground))
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        draw(painter)
        painter.end()
        return picture

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        self.arrange()

    @override
    def changeEvent(self, event: QEvent) -> None:
        if event.type() is QEvent.Type.LanguageChange:
            self.arrange()
            self.update()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(event.rect(), QColor(self.colours.ground))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.within = event.region()
        self.paint(painter)
        painter.end()


def stroke(colour: str, width: float) -> QPen:
    """Return a pen with sharp corners."""
    pen = QPen(QColor(colour), width)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    return pen


def hatch(painter: QPainter, box: QRectF, fill: str, bar: str, pitch: float) -> None:
    """Fill a box with a colour under diagonal bars."""
    painter.save()
    painter.setClipRect(box, Qt.ClipOperation.IntersectClip)
    painter.fillRect(box, QBrush(QColor(fill)))
    painter.setPen(stroke(bar, pitch * 0.28))
    x = box.left() - box.height()
    while x < box.right() + pitch:
        painter.drawLine(
            round(x), round(box.bottom() + 1), round(x + box.height()), round(box.top() - 1)
        )
        x += pitch
    painter.restore()


def barred_frame(painter: QPainter, box: QRectF, thick: float, bar: str, ground: str) -> None:
    """Draw a frame of thick diagonal bars inside ``box``."""
    painter.save()
    painter.setPen(Qt.PenStyle.NoPen)
    pitch = thick * 2.2
    inner = box.adjusted(thick, thick, -thick, -thick)
    painter.fillRect(box, QColor(ground))
    painter.setClipRect(box, Qt.ClipOperation.IntersectClip)
    painter.setPen(stroke(bar, pitch * 0.36))
    x = box.left() - box.height()
    while x < box.right() + pitch:
        painter.drawLine(
            round(x), round(box.bottom() + 1), round(x + box.height()), round(box.top() - 1)
        )
        x += pitch
    painter.fillRect(inner, QColor(ground))
    painter.restore()
