"""The printer's thread: draws each label, reads it back, and hands it to the printer once."""

from __future__ import annotations

import logging
import queue
import threading
from collections.abc import Callable

from drivers.errors import DriverError
from drivers.printer.base import Printer, PrintJob, PrintState
from labels.errors import LabelError
from labels.pdf import LabelDrawer
from labels.release import release
from station.core.label_life import copy_mark
from station.core.pack import PackRecord
from station.core.run import Run
from station.line.events import Barred, Event, LabelFailed, Labelled, LabelLost
from station.line.ports import LabelRefused
from station.reports.label_facts import pack_label, specimen_label

_LOG = logging.getLogger(__name__)
_LOST = (PrintState.FAILED, PrintState.SUBMITTED)
"""The label did not come out, or nobody knows."""
_SOURCE = "printer"
_LOOK_S = 2.0
"""How often the printer is looked at while no label is due."""
_GLANCE_S = 0.1
_SETTLE_S = 0.5
"""How long a label that the printer has is followed."""


class PrintingDesk:
    """Implements station.line.ports.LabelDesk on a thread of its own.

    Args:
        drawer: of the label of a run.
        printer: where labels go.
        packer: name and address of the packhouse, as printed.
        site: short code of the packhouse.
        station: short code of the station.
        answer: tells the line what became of a label.
        show: given the PDF of each label handed to the printer.
    """

    def __init__(
        self,
        drawer: Callable[[Run], LabelDrawer],
        printer: Printer,
        packer: str,
        site: str,
        station: str,
        answer: Callable[[Event], None],
        show: Callable[[bytes], None],
    ) -> None:
        self._drawer = drawer
        self._printer = printer
        self._packer = packer
        self._site = site
        self._station = station
        self._answer = answer
        self._show = show
        self._queue: queue.SimpleQueue[tuple[str, Run, str] | None] = queue.SimpleQueue()
        self._thread = threading.Thread(target=self._work, name="printer")
        self._trouble = ""
        self._open: tuple[str, str] | None = None
        self.read_back_equal = 0
        """Labels whose bar codes read back equal before they went to the printer."""

    def start(self) -> None:
        """Start the printer's thread."""
        self._thread.start()

    def stop(self, timeout_s: float = 10.0) -> None:
        """Finish the labels on the queue and end the thread.

        Raises:
            TimeoutError: the thread did not end in time.
        """
        self._queue.put(None)
        self._thread.join(timeout_s)
        if self._thread.is_alive():
            raise TimeoutError(f"printer {self._printer.describe()} did not finish in time")

    def rehearse(self, run: Run) -> None:
        """Draw and read back a specimen of the run's label.

        Raises:
            LabelRefused: it cannot be drawn, does not fit, or does not read back equal.
        """
        try:
            label = specimen_label(run, self._site, self._station, self._packer)
            released = release(self._drawer(run), label)
        except LabelError as refused:
            raise LabelRefused(str(refused)) from refused
        self._show(released.pdf)

    def issue(self, record: PackRecord, run: Run) -> None:
        """Start printing one label; the answer goes to the line."""
        self._queue.put((record.serial, run, ""))

    def reissue(self, serial: str, run: Run, copy: int) -> None:
        """Start printing a copy of a label; the answer goes to the line."""
        self._queue.put((serial, run, copy_mark(copy)))

    def _work(self) -> None:
        self._look()
        while True:
            try:
                work = self._queue.get(timeout=_LOOK_S)
            except queue.Empty:
                self._look()
                continue
            if work is None:
                return
            serial, run, mark = work
            try:
                self._print(serial, run, mark)
            except Exception as bug:  # noqa: BLE001  the line must hear of every label
                _LOG.exception("label %s", serial)
                self._answer(LabelFailed(serial, f"{type(bug).__name__}: {bug}"))
            self._look()

    def _look(self) -> None:
        """Close acceptance while the printer needs a person; nothing is printed late for it."""
        try:
            self._follow(_GLANCE_S)
            trouble = self._printer.trouble()
        except Exception as bug:  # noqa: BLE001  the thread must live on for the next label
            _LOG.exception("looking at %s", self._printer.describe())
            trouble = f"it cannot be looked at ({type(bug).__name__}: {bug})"
        if trouble != self._trouble:
            self._trouble = trouble
            self._answer(Barred(_SOURCE, f"the printer: {trouble}" if trouble else ""))

    def _print(self, serial: str, run: Run, mark: str) -> None:
        """Print one label; the line is answered once it is handed over, and again if it is lost."""
        name = f"{serial}-{mark}" if mark else serial
        try:
            drawer = self._drawer(run)
            released = release(drawer, pack_label(serial, run, self._packer, mark))
            self.read_back_equal += 1
            job = PrintJob(name, released.pdf, drawer.design.width, drawer.design.height)
            outcome = self._printer.submit(job)
            self._follow(0.0)  # the printer may only now have told of the label before
        except (LabelError, DriverError) as refused:
            self._answer(LabelFailed(serial, str(refused)))
            return
        if outcome.state in _LOST:
            self._answer(LabelFailed(serial, outcome.why))
            return
        self._show(released.pdf)
        self._answer(Labelled(serial))
        self._open = (serial, name)
        self._follow(_SETTLE_S)

    def _follow(self, wait_s: float) -> None:
        """Follow the label printed last until its fate is known, also over a stop in mid-label."""
        if self._open is None:
            return
        serial, name = self._open
        settled = self._printer.settle(name, wait_s)
        if settled.state is not PrintState.SPOOLED:
            self._open = None
        if settled.state in _LOST:
            self._answer(LabelLost(serial, settled.why))
