"""The printer's thread: draws each label, reads it back, and hands it to the printer once.

The label of the next bag is drawn and read back while its bag is filled, since all on it but the
weight's verdict is known by then. It goes nowhere before that bag is on record, and is drawn anew
where the bag turns out another.
"""

from __future__ import annotations

import logging
import queue
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from drivers.errors import DriverError
from drivers.printer.base import Printer, PrintJob, PrintOutcome, PrintState
from labels.errors import LabelError
from station.app.paper import pack_label, reject_ticket, release, specimen_label
from station.app.unit_print import UnitWork, print_unit
from station.core.label_life import copy_mark
from station.core.pack import LabelState, PackRecord
from station.core.run import Run
from station.line.events import (
    Barred,
    Event,
    LabelFailed,
    Labelled,
    LabelLost,
    LabelOut,
    Ticketed,
)
from station.line.ports import LabelRefused

if TYPE_CHECKING:
    from labels.pdf import LabelDrawer
    from labels.release import ReleasedLabel

_LOG = logging.getLogger(__name__)
_LOST = (PrintState.FAILED, PrintState.SUBMITTED)
"""The label did not come out, or nobody knows."""
_SOURCE = "printer"
_LOOK_S = 2.0
"""How often the printer is looked at while no label is due."""
_GLANCE_S = 0.1
_SETTLE_S = 0.5
"""How long a label that the printer has is followed before the lead is told."""


@dataclass(slots=True)
class _Coming:
    """A label that the printer has and that is not out yet, as far as is known."""

    serial: str
    name: str
    since_s: float
    lost: bool = False
    """The line was told that it is in doubt; it may still come out."""


@dataclass(frozen=True, slots=True)
class _Work:
    """One label to print.

    Args:
        serial: of the bag.
        run: as it stands for this bag.
        mark: of a copy; empty for the first label.
        following: serial of the bag after it; empty where nobody knows.
    """

    serial: str
    run: Run
    mark: str = ""
    following: str = ""


@dataclass(frozen=True, slots=True)
class _Ticket:
    """The ticket of one reject, to be printed where bag labels are."""

    paper: UnitWork


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
        late_s: a label that is not out after so many seconds is in doubt, and called back.
        units: printer of the labels of cases and pallets; None for the same one.
        tickets: drawer of the tickets of a run; None where none are printed.
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
        late_s: float = 10.0,
        units: Printer | None = None,
        tickets: Callable[[Run], LabelDrawer] | None = None,
    ) -> None:
        self._drawer = drawer
        self._printer = printer
        self._packer = packer
        self._site = site
        self._station = station
        self._answer = answer
        self._show = show
        self._late_s = late_s
        self._units = units or printer
        self._queue: queue.SimpleQueue[_Work | UnitWork | _Ticket | None] = queue.SimpleQueue()
        self._tickets = tickets
        self._thread = threading.Thread(target=self._work, name="printer")
        self._trouble = ""
        self._coming: _Coming | None = None
        self._ahead: tuple[_Work, ReleasedLabel] | None = None
        self.read_back_equal = 0
        """Labels whose bar codes read back equal before they went to the printer."""

    @property
    def trouble(self) -> str:
        """What the printer needs somebody for; empty while nothing; any thread."""
        return self._trouble

    @property
    def printer_words(self) -> str:
        """The printer, and what it needs; any thread."""
        return f"{self._printer.describe()}: {self._trouble or 'ready'}"

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
        following = replace(record.id, number=record.id.number + 1).serial
        self._queue.put(_Work(record.serial, run, following=following))

    def reissue(self, serial: str, run: Run, copy: int) -> None:
        """Start printing a copy of a label; the answer goes to the line."""
        self._queue.put(_Work(serial, run, copy_mark(copy)))

    def print_unit(self, work: UnitWork) -> None:
        """Start printing the label of a case or pallet; its ``done`` hears what became of it."""
        self._queue.put(work)

    def ticket(self, record: PackRecord, run: Run, reason: str) -> None:
        """Start printing the ticket of a reject; the answer goes to the line."""
        if self._tickets is None:
            return
        drawer, serial = self._tickets(run), record.serial

        def done(state: LabelState, why: str) -> None:
            lost = (why or str(state)) if state is LabelState.IN_DOUBT else ""
            self._answer(Ticketed(serial, run.id, lost))

        paper = UnitWork(
            f"{serial}-REJECT", lambda: (drawer, reject_ticket(record, run, reason)), done
        )
        self._queue.put(_Ticket(paper))

    def _work(self) -> None:
        self._look()
        while True:
            try:
                work = self._queue.get(timeout=_LOOK_S if self._coming is None else _GLANCE_S)
            except queue.Empty:
                self._look()
                continue
            if work is None:
                return
            if isinstance(work, UnitWork):
                print_unit(work, self._units)
                continue
            if isinstance(work, _Ticket):
                print_unit(work.paper, self._printer)
                continue
            try:
                self._print(work)
            except Exception as bug:  # noqa: BLE001  the line must hear of every label
                _LOG.exception("label %s", work.serial)
                self._answer(LabelFailed(work.serial, f"{type(bug).__name__}: {bug}"))
            self._look()
            if work.following and self._queue.empty():
                self._draw_ahead(_Work(work.following, work.run))

    def _draw_ahead(self, work: _Work) -> None:
        try:
            self._ahead = work, self._release(work)
        except Exception:  # noqa: BLE001  it is drawn again, and refused in words, with its bag
            self._ahead = None

    def _drawn(self, work: _Work) -> ReleasedLabel:
        """Return the label of a bag: the one drawn ahead, where that is of this bag and run."""
        ahead, self._ahead = self._ahead, None
        if ahead is not None and not work.mark:
            of, released = ahead
            if (of.serial, of.run) == (work.serial, work.run):
                return released
        return self._release(work)

    def _release(self, work: _Work) -> ReleasedLabel:
        label = pack_label(work.serial, work.run, self._packer, work.mark)
        return release(self._drawer(work.run), label)

    def _look(self) -> None:
        """Close acceptance while the printer needs a person; nothing is printed late for it."""
        try:
            self._follow(_GLANCE_S)
            trouble = self._printer.trouble() or self._not_out()
        except Exception as bug:  # noqa: BLE001  the thread must live on for the next label
            _LOG.exception("looking at %s", self._printer.describe())
            trouble = f"it cannot be looked at ({type(bug).__name__}: {bug})"
        if trouble != self._trouble:
            self._trouble = trouble
            self._answer(Barred(_SOURCE, f"the printer: {trouble}" if trouble else ""))

    def _print(self, work: _Work) -> None:
        """Print one label; the line is answered once it is handed over, and again if it is lost."""
        serial = work.serial
        name = f"{serial}-{work.mark}" if work.mark else serial
        try:
            released = self._drawn(work)
            self.read_back_equal += 1
            design = self._drawer(work.run).design
            job = PrintJob(name, released.pdf, design.width, design.height)
            outcome = self._printer.submit(job)
            self._follow(0.0)  # the printer may only now have told of the label before
        except (LabelError, DriverError) as refused:
            self._answer(LabelFailed(serial, str(refused)))
            return
        if outcome.state in _LOST:
            self._answer(LabelFailed(serial, outcome.why))
            return
        self._show(released.pdf)
        coming = outcome.state is PrintState.SPOOLED and self._printer.tells_end
        self._answer(Labelled(serial, coming))
        if coming:
            self._coming = _Coming(serial, name, time.monotonic())
            self._follow(_SETTLE_S)

    def _follow(self, wait_s: float) -> None:
        """Follow the label printed last until its fate is known, also over a stop in mid-label."""
        label = self._coming
        if label is None:
            return
        settled = self._printer.settle(label.name, wait_s)
        if settled.state is PrintState.SPOOLED and self._is_late(label):
            settled = self._call_back(label, settled.why)
        if settled.state is not PrintState.SPOOLED:
            self._coming = None
        if label.lost:
            return  # whatever comes of it now, a person looks
        if settled.state is PrintState.DONE:
            self._answer(LabelOut(label.serial))
        elif settled.state in _LOST:
            self._answer(LabelLost(label.serial, settled.why))

    def _is_late(self, label: _Coming) -> bool:
        return not label.lost and time.monotonic() - label.since_s > self._late_s

    def _call_back(self, label: _Coming, why: str) -> PrintOutcome:
        """Put a late label in doubt, and ask the printer not to bring it out any more."""
        words = f"it was not out after {self._late_s:g} s{f' ({why})' if why else ''}"
        self._answer(LabelLost(label.serial, f"{words}: look whether it comes out"))
        label.lost = True
        try:
            return self._printer.cancel(label.name, _SETTLE_S)
        except DriverError as fault:
            return PrintOutcome(PrintState.SPOOLED, str(fault))

    def _not_out(self) -> str:
        """Why the next label cannot follow, while the one before it is in the printer."""
        label = self._coming
        if label is None:
            return ""
        if label.lost:
            return f"label {label.serial} may still come out: cancel it at the printer, or wait"
        return f"label {label.serial} is not out yet: look at the printer"
