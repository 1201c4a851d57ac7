"""The last label as it went to the printer, drawn off the GUI thread."""

from __future__ import annotations

import logging
import threading
from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt, Signal, Slot
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from labels.errors import LabelError
from station.screens.theme import Face, Palette
from station.screens.tongue import tr
from station.screens.widgets.lettering import draw_centred, fit
from station.screens.widgets.painted import Painted, stroke

_LOG = logging.getLogger(__name__)


DOTS_PER_MM = 6
"""Fine enough for a preview; the picture is made smaller to fit."""


@dataclass(frozen=True, slots=True)
class Page:
    """A label as grey pixels, one byte each, rows without padding."""

    width: int
    height: int
    pixels: bytes


def first_page(pdf: bytes) -> Page:
    """Draw the first page of a label.

    Raises:
        LabelError: the bytes are no PDF.
    """
    from labels.raster import rasterise  # with the first label that is shown

    grey = rasterise(pdf, DOTS_PER_MM)
    height, width = grey.shape
    return Page(width, height, grey.tobytes())


class LabelPreview(Painted[Page | None]):
    """Shows the newest label; older ones still waiting to be drawn are skipped."""

    _drawn = Signal(object)

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        super().__init__(palette, None, parent)
        self._lock = threading.Lock()
        self._wanted: bytes | None = None
        self._thread: threading.Thread | None = None
        self._image: QImage | None = None
        self._small: QImage | None = None
        self.setAccessibleName("last label")
        self._drawn.connect(self._show, Qt.ConnectionType.QueuedConnection)

    @Slot(object)
    def show_pdf(self, pdf: bytes) -> None:
        """Draw a label on a thread of its own and show it when done."""
        with self._lock:
            self._wanted = pdf
            if self._thread is not None:
                return
            self._thread = threading.Thread(target=self._work, name="label preview", daemon=True)
        self._thread.start()

    def wait(self, timeout_s: float = 5.0) -> None:
        """Wait until no label is being drawn."""
        thread = self._thread
        if thread is not None:
            thread.join(timeout_s)

    def _work(self) -> None:
        while True:
            with self._lock:
                wanted, self._wanted = self._wanted, None
                if wanted is None:
                    self._thread = None
                    return
            try:
                self._drawn.emit(first_page(wanted))
            except LabelError:
                _LOG.exception("the last label cannot be shown")
            except RuntimeError:  # the window is gone
                with self._lock:
                    self._thread = None
                return

    @Slot(object)
    def _show(self, page: Page) -> None:
        self._image = QImage(
            page.pixels, page.width, page.height, page.width, QImage.Format.Format_Grayscale8
        )
        self.set(page)
        self.arrange()

    @override
    def arrange(self) -> None:
        if self._image is not None and not self.size().isEmpty():
            self._small = self._image.scaled(
                self.size() * self.devicePixelRatioF(),
                Qt.AspectRatioMode.KeepAspectRatio,
                Qt.TransformationMode.SmoothTransformation,
            )
            self._small.setDevicePixelRatio(self.devicePixelRatioF())

    @override
    def paint(self, painter: QPainter) -> None:
        line = 0.5 * self.unit
        frame = QRectF(self.rect()).adjusted(line, line, -line, -line)
        if self._small is None:
            pen = stroke(self.colours.edge, line)
            pen.setDashPattern([6.0, 4.0])
            painter.setPen(pen)
            painter.drawRect(frame)
            words = fit(tr("last label"), Face.TEXT, 5 * self.unit, frame.width() * 0.9)
            draw_centred(painter, words, frame, self.colours.muted)
            return
        size = self._small.deviceIndependentSize()
        place = QRectF(0, 0, size.width(), size.height())
        place.moveCenter(frame.center())
        painter.drawImage(place, self._small)
        painter.setPen(stroke(self.colours.edge, line))
        painter.drawRect(place.adjusted(line, line, -line, -line))
