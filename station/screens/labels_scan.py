"""Scan-back: a field that waits for the scanner, and its answer as a word and a shape."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt, Signal, Slot
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.core.checks.scan_back import Clearing, ScanBack
from station.screens.theme import Face, Palette, Ruler
from station.screens.tongue import mark, say
from station.screens.widgets.lettering import draw, fit
from station.screens.widgets.painted import Painted, stroke
from station.screens.widgets.sheet import Page, ScanField, Text, Title
from station.screens.widgets.tiles import Tile, Tiles

_MOST_SCANNED = 400
SEPARATOR = "\x1d"
_SHOWN = str.maketrans({SEPARATOR: "\u2423"})
"""A separator of elements is drawn as an open box."""
_OK, _MISMATCH = mark("OK"), mark("MISMATCH")


class LabelField(ScanField):
    """Wants to know which kind of bar code was scanned."""

    identified = True


class Outcome(Painted[bool | None]):
    """OK in a ring with a tick, MISMATCH in a plate with a cross; empty before a scan."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, None, parent)
        self.setMinimumHeight(Ruler.of(self.screen()).touch(34))

    @override
    def set(self, view: bool | None) -> None:
        super().set(view)
        self.setAccessibleName({None: "", True: _OK, False: _MISMATCH}[view])

    @override
    def paint(self, painter: QPainter) -> None:
        if self.view is None:
            return
        colours, box = self.colours, QRectF(self.rect())
        painter.fillRect(box, QColor(colours.paper if self.view else colours.stop))
        colour = colours.ink if self.view else colours.on_dark
        side = box.height() * 0.62
        mark = QRectF(box.left() + side * 0.4, box.center().y() - side / 2, side, side)
        painter.setPen(stroke(colour, side * 0.09))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if self.view:
            painter.drawEllipse(mark)
            for one, other in (((0.25, 0.52), (0.44, 0.7)), ((0.44, 0.7), (0.76, 0.32))):
                painter.drawLine(_in(mark, *one), _in(mark, *other))
        else:
            painter.drawRect(mark)
            for one, other in (((0.25, 0.25), (0.75, 0.75)), ((0.75, 0.25), (0.25, 0.75))):
                painter.drawLine(_in(mark, *one), _in(mark, *other))
        words = say(_OK if self.view else _MISMATCH)
        left = mark.right() + side * 0.4
        text = fit(words, Face.VERB, box.height() * 0.4, box.right() - left - side * 0.2)
        draw(painter, text, left, box.center().y() - text.cap / 2, colour)


class ScanPage(Page):
    """The field has the focus whenever the page is shown.

    Signals:
        scanned: what the scanner sent.
        cleared: why a lead goes on after a mismatch.
    """

    scanned = Signal(str)
    cleared = Signal(str)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, parent)
        self.title = Title(palette, "Scan the label on a bag")
        self.field = LabelField(palette, "scan the label")
        self.field.setMaxLength(_MOST_SCANNED)
        self.field.returnPressed.connect(self._scanned)
        self.outcome = Outcome(palette)
        self.detail = Text(palette, "", Face.TEXT, 4.2)
        self.why = Title(palette, "Who leads touches why the line may go on")
        self.reasons = Tiles(palette, [Tile(str(one), str(one)) for one in Clearing], columns=2)
        self.reasons.touched.connect(self.cleared)
        parts = (self.title, self.field, self.outcome, self.why, self.reasons, self.detail)
        for part in parts:
            self.column.addWidget(part)
        self.column.addStretch(1)
        self.show_mismatch("")

    def show_scan(self, scan: ScanBack | None) -> None:
        """Show the outcome of a scan; None before one."""
        self.outcome.set(None if scan is None else scan.equal)
        if scan is None:
            self.detail.setText("")
        elif scan.equal:
            self.detail.setText(f"{scan.serial}: as recorded")
        else:
            wanted = "\n".join(one.translate(_SHOWN) for one in scan.expected)
            told = f"{scan.serial} must say\n{wanted}\nread\n{scan.scanned.translate(_SHOWN)}"
            self.detail.setText(told)

    def show_mismatch(self, serial: str) -> None:
        """Show that a mismatch keeps the line closed; empty serial for none."""
        self.why.setVisible(bool(serial))
        self.reasons.setVisible(bool(serial))
        if serial and self.outcome.view is None:
            self.outcome.set(False)
            self.detail.setText(f"the scan of label {serial} did not match")

    def take_focus(self) -> None:
        """Let the next scan come here."""
        self.field.setFocus()

    @Slot()
    def _scanned(self) -> None:
        text = self.field.text()
        self.field.clear()
        if text:
            self.scanned.emit(text)
        self.take_focus()


def _in(box: QRectF, x: float, y: float) -> QPointF:
    return QPointF(box.left() + x * box.width(), box.top() + y * box.height())
