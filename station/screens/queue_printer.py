"""Labels to a queue of the operating system, through Qt's print support.

The page is turned into the dots of the print head and drawn dot for dot: whatever the queue's
driver does with a PDF, bars would be at its mercy. A queue only says that it has the page; whether
a label came out, nobody is told, so somebody must look where a label is missing.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
from PySide6.QtCore import QMarginsF, QSizeF
from PySide6.QtGui import QImage, QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrinter, QPrinterInfo

from drivers.errors import PrinterError
from drivers.printer.base import PDF, PrintJob, PrintOutcome, PrintState
from labels.errors import LabelError
from labels.raster import rasterise_pages

_MM_PER_INCH = 25.4
_DARK = 128


def queues() -> tuple[str, ...]:
    """Names of the queues this machine knows; needs a QGuiApplication."""
    return tuple(QPrinterInfo.availablePrinterNames())


class QueuePrinter:
    """Implements drivers.printer.base.Printer; needs a QGuiApplication, works on any one thread.

    Args:
        name: of the queue.
        dots_per_mm: of the print head.
        file: writes a PDF of the dots there instead, as a queue "print to file" would.

    Raises:
        PrinterError: there is no such queue; the message names those there are.
    """

    def __init__(self, name: str, dots_per_mm: int = 8, file: Path | None = None) -> None:
        self._name, self._dots, self._file = name, dots_per_mm, file
        known = queues()
        if file is None and name not in known:
            raise PrinterError(
                f"there is no print queue {name!r}",
                f"known are: {', '.join(known)}"
                if known
                else "this machine knows none: set one up",
            )

    def describe(self) -> str:
        """Name the queue."""
        return f"print queue {self._name}"

    def submit(self, job: PrintJob) -> PrintOutcome:
        """Hand the page over.

        Raises:
            PrinterError: the page is no PDF, or the queue does not take it; nothing is printed.
        """
        if job.format != PDF:
            raise PrinterError(f"page {job.name} is {job.format}", f"a queue takes {PDF} only")
        try:
            pages = rasterise_pages(job.document, self._dots)
        except LabelError as fault:
            raise PrinterError(f"page {job.name} cannot be drawn", str(fault)) from fault
        printer = self._printer(job)
        painter = QPainter()
        if not painter.begin(printer):
            raise PrinterError(
                f"{self.describe()} does not take page {job.name}",
                "look at the queue: is it there, and not paused?",
            )
        try:
            for number, page in enumerate(pages):
                if number and not printer.newPage():
                    return PrintOutcome(
                        PrintState.SUBMITTED, f"the queue stopped at sheet {number + 1}"
                    )
                dots = np.ascontiguousarray(np.where(page < _DARK, 0, 255).astype(np.uint8))
                rows, columns = dots.shape
                image = QImage(dots.data, columns, rows, columns, QImage.Format.Format_Grayscale8)
                painter.drawImage(0, 0, image)  # a dot a pixel: nothing is scaled
        finally:
            ended = painter.end()
        failed = printer.printerState() in (
            QPrinter.PrinterState.Error,
            QPrinter.PrinterState.Aborted,
        )
        if failed or not ended:
            return PrintOutcome(PrintState.SUBMITTED, "the queue reported a fault while it printed")
        return PrintOutcome(PrintState.SPOOLED)

    @property
    def tells_end(self) -> bool:
        """A queue has the page; it tells no more."""
        return False

    def settle(self, name: str, wait_s: float) -> PrintOutcome:
        """A queue has the page; it tells no more."""
        return PrintOutcome(PrintState.SPOOLED)

    def cancel(self, name: str, wait_s: float) -> PrintOutcome:
        """A queue gives no page back to Qt: look at the queue itself."""
        return PrintOutcome(PrintState.SPOOLED)

    def trouble(self) -> str:
        """Say that the queue is gone; of its printer a queue tells nothing to rely on."""
        if self._file is not None or self._name in queues():
            return ""
        return f"the print queue {self._name} is gone: set it up again"

    def _printer(self, job: PrintJob) -> QPrinter:
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        if self._file is None:
            printer.setPrinterName(self._name)
        else:
            printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
            printer.setOutputFileName(str(self._file))
        printer.setDocName(job.name)
        printer.setCreator("")
        printer.setCopyCount(1)
        printer.setFullPage(True)
        printer.setResolution(round(self._dots * _MM_PER_INCH))
        size = QPageSize(
            QSizeF(float(job.media_width_mm), float(job.media_height_mm)),
            QPageSize.Unit.Millimeter,
            "label",
            QPageSize.SizeMatchPolicy.ExactMatch,
        )
        layout = QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0))
        printer.setPageLayout(layout)
        return printer
