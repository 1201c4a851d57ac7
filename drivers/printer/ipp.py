"""A label printer, or a queue, that speaks the Internet Printing Protocol.

How a label is printed once, and no line waits longer than it must:

1. ``submit`` sends nothing while the label before is not out, or while the printer, when last
   looked at, waited for a person (no labels, a door, a jam, paused, offline): labels must not pile
   up and come out later. At most one is ever in the printer.
2. It returns as soon as the printer has taken the page (SPOOLED). A busy printer did not take it
   and is asked again, with growing waits.
3. When the connection is cut after sending, the page may have been taken: the queue is asked for a
   job of that name. A page is never sent a second time under one name. One that is out, but whose
   taking was never acknowledged, stays in doubt: printers print the half of a page that reached
   them before a cut, and report it as completed.
4. ``settle`` follows the page until the printer says that it is over, or the time is up.

Printers tell when a page has left them, more or less truly; that a label is on its bag only a scan
or a person can say.
"""

from __future__ import annotations

import hashlib
import ssl
import time
from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass

from drivers.backoff import Backoff
from drivers.errors import PrinterError
from drivers.printer.base import PrintJob, PrintOutcome, PrintState
from drivers.printer.ipp_document import FORMATS, Rasterise, document_for, settings_for
from drivers.printer.ipp_facts import JobFacts, PrinterFacts
from drivers.printer.ipp_link import Address, ReplyLost
from drivers.printer.ipp_queue import Busy, IppQueue, NoSuchJob
from drivers.printer.ipp_values import Attribute

_REMEMBERED = 1000
"""Pages, by name."""
_LAST_QUESTION_S = 0.2


@dataclass(frozen=True, slots=True)
class Patience:
    """How long to wait for a printer, in seconds, all above 0.

    Args:
        answer_s: for the answer to one question.
        previous_s: for the label before to come out.
        busy_s: for a busy printer to take the page.
        lost_s: for a page to show in the queue after its reply was lost.
        fresh_s: a look at the printer that found no trouble holds so long for the next page. What
            happens to it meanwhile shows at the page itself, which then does not come out.
    """

    answer_s: float = 5.0
    previous_s: float = 2.0
    busy_s: float = 3.0
    lost_s: float = 2.0
    fresh_s: float = 2.5

    def __post_init__(self) -> None:
        waits = (self.answer_s, self.previous_s, self.busy_s, self.lost_s, self.fresh_s)
        if not all(0 < wait_s < float("inf") for wait_s in waits):
            raise ValueError("waits for a printer must be above 0 seconds and have an end")

    @property
    def submit_s(self) -> float:
        """The longest that ``submit`` takes: four questions beside the waits."""
        return 4 * self.answer_s + self.previous_s + self.busy_s + self.lost_s


@dataclass(slots=True)
class _Page:
    """What is known of a page that was sent."""

    digest: bytes
    outcome: PrintOutcome
    number: int | None = None
    """The printer's number for it; None where not even that is known."""
    is_acknowledged: bool = False
    """The printer said that it took the page, and so all of it."""
    is_over: bool = False


class IppPrinter:
    """Prints each page once on an IPP printer; to be used by one thread at a time.

    Args:
        address: ``ipp://host[:port]/path`` or ``ipps://…``.
        rasterise: makes dots of a PDF for printers that take none.
        preferred: document formats to try, the best first.
        user: name the jobs go under.
        patience: how long to wait for what.
        tls: how the printer's certificate is checked; None trusts what the system trusts.

    Raises:
        PrinterError: the address is none.
    """

    def __init__(
        self,
        address: str,
        rasterise: Rasterise | None = None,
        preferred: Sequence[str] = FORMATS,
        user: str = "pack-line-station",
        patience: Patience | None = None,
        tls: ssl.SSLContext | None = None,
    ) -> None:
        self._address = Address(address)
        self._queue = IppQueue(self._address, user, tls)
        self._rasterise = rasterise
        self._preferred = tuple(preferred)
        self._patience = patience or Patience()
        self._pages: OrderedDict[str, _Page] = OrderedDict()
        self._last = ""
        """Name of the page sent last."""
        self._looked: tuple[float, PrinterFacts] | None = None
        """The newest look at the printer, and when it was."""

    def describe(self) -> str:
        """Name the printer's address."""
        return f"printer {self._address.text}"

    def status(self) -> PrinterFacts:
        """Ask the printer for its state; ``trouble()`` says why nothing may be sent, if so.

        Raises:
            PrinterError: it does not answer.
        """
        return self._look(self._patience.answer_s)

    def trouble(self) -> str:
        """Why nothing may be sent now, in words; a printer that does not answer is trouble too."""
        try:
            return self.status().trouble()
        except PrinterError as fault:
            return str(fault)

    def check(self, job: PrintJob) -> None:
        """Find out whether the printer would take a page like this; nothing is printed.

        Raises:
            PrinterError: it would not, and why.
        """
        facts = self.status()
        mime, _ = document_for(job, facts, self._rasterise, self._preferred)
        self._queue.validate(job.name, mime, settings_for(job, facts), self._patience.answer_s)

    def submit(self, job: PrintJob) -> PrintOutcome:
        """Hand over one page; takes at most ``Patience.submit_s``.

        Returns:
            SPOOLED once the printer has it (or DONE, FAILED where it says so at once), SUBMITTED
            when that is not known. For a name that was sent before: what became of it, and nothing
            is sent.

        Raises:
            PrinterError: the page was not taken; to try again is safe.
        """
        digest = hashlib.sha256(job.document).digest()
        if (page := self._pages.get(job.name)) is not None:
            return self._again(job, page, digest)
        self._await_previous(job)
        facts = self._ready_printer(job)
        mime, document = document_for(job, facts, self._rasterise, self._preferred)
        page = _Page(digest, PrintOutcome(PrintState.SUBMITTED))
        self._send(job, page, mime, document, settings_for(job, facts))
        return page.outcome

    @property
    def tells_end(self) -> bool:
        """RFC 8011, 5.3.7: a job's state says when its page has left the printer."""
        return True

    def settle(self, name: str, wait_s: float) -> PrintOutcome:
        """Follow a page until it is over.

        Args:
            name: the job's name, as submitted.
            wait_s: the longest to wait, in seconds; the last question has a fifth of a second more.

        Returns:
            DONE, FAILED or SUBMITTED (in doubt) when it is over. SPOOLED with the reason in words
            when it still waits: at the end of the time, or sooner when the printer needs a person.

        Raises:
            PrinterError: no such page was sent by this object; ``look_up`` asks the printer.
        """
        page = self._pages.get(name)
        if page is None:
            raise PrinterError(f"page {name} was not sent from here", "look it up at the printer")
        waits = Backoff(0.02, 0.5)
        until = time.monotonic() + wait_s
        while not self._is_over(name, page, until) and time.monotonic() < until:
            if page.outcome.state is PrintState.SPOOLED and (trouble := self._trouble(until)):
                page.outcome = PrintOutcome(PrintState.SPOOLED, trouble)
                break
            time.sleep(min(waits.next_s(), max(0.0, until - time.monotonic())))
        return page.outcome

    def look_up(self, name: str) -> PrintOutcome | None:
        """Ask the printer what became of a page by its name; None where it lists no such job.

        It is the printer's word alone: DONE does not say that the whole page had reached it, and
        None is no proof that no label came out, for printers forget.

        Raises:
            PrinterError: it does not answer.
        """
        found = self._queue.find(name, self._patience.answer_s)
        return found.outcome() if found else None

    def cancel(self, name: str, wait_s: float) -> PrintOutcome:
        """Ask the printer to drop a page, and follow it as ``settle`` does.

        Raises:
            PrinterError: the page was not sent from here, or the printer does not answer.
        """
        page = self._pages.get(name)
        if page and not page.is_over and page.number is not None:
            self._queue.cancel(page.number, self._patience.answer_s)
        return self.settle(name, wait_s)

    # --- Sending -------------------------------------------------------------------------

    def _again(self, job: PrintJob, page: _Page, digest: bytes) -> PrintOutcome:
        if page.digest != digest:
            raise PrinterError(
                f"page {job.name} was sent with other content",
                "one name stands for one page; use another name",
            )
        if not page.is_over:
            self._follow(job.name, page, self._patience.answer_s)
        return page.outcome

    def _await_previous(self, job: PrintJob) -> None:
        """Let the label before come out; at most one is ever waiting in the printer."""
        if self._last in self._pages:
            before = self.settle(self._last, self._patience.previous_s)
            if not self._pages[self._last].is_over:
                raise PrinterError(
                    f"page {job.name} was not sent",
                    f"{self._last} is not out yet: {before.why or 'it is still being printed'}",
                )

    def _ready_printer(self, job: PrintJob) -> PrinterFacts:
        if self._looked is not None:
            seen_s, facts = self._looked
            if time.monotonic() - seen_s <= self._patience.fresh_s and not facts.trouble():
                return facts
        facts = self.status()
        if trouble := facts.trouble():
            raise PrinterError(f"page {job.name} was not sent", trouble)
        return facts

    def _send(
        self,
        job: PrintJob,
        page: _Page,
        mime: str,
        document: bytes,
        settings: tuple[Attribute, ...],
    ) -> None:
        waits = Backoff(0.05, 0.5)
        until = time.monotonic() + self._patience.busy_s
        while True:
            try:
                taken, ignored = self._queue.print_job(
                    job.name, mime, document, settings, self._patience.answer_s
                )
            except Busy:
                wait_s = waits.next_s()
                if time.monotonic() + wait_s > until:
                    raise
                time.sleep(wait_s)
            except ReplyLost as lost:
                self._remember(job.name, page)
                self._search(job.name, page, lost)
                return
            else:
                self._remember(job.name, page)
                page.is_acknowledged = True
                _note(page, taken)
                if ignored:
                    page.outcome = PrintOutcome(
                        page.outcome.state, f"the printer ignored {ignored}: check the label"
                    )
                return

    def _remember(self, name: str, page: _Page) -> None:
        self._pages[name] = page
        self._last = name
        if len(self._pages) > _REMEMBERED:
            self._pages.popitem(last=False)

    def _search(self, name: str, page: _Page, lost: ReplyLost) -> None:
        """After a lost reply: look for the page in the queue for a while, never send it again."""
        page.outcome = _doubt(lost)
        waits = Backoff(0.05, 0.5)
        until = time.monotonic() + self._patience.lost_s
        while page.number is None and time.monotonic() < until:
            try:
                found = self._queue.find(name, self._patience.answer_s)
            except PrinterError as fault:
                page.outcome = _doubt(lost, fault)
            else:
                page.outcome = _doubt(lost)
                if found:
                    _note(page, found)
                    return
            time.sleep(min(waits.next_s(), max(0.0, until - time.monotonic())))

    # --- Following -----------------------------------------------------------------------

    def _answer_by(self, until: float) -> float:
        """Return how long to wait for an answer, in seconds, when all must be over at a time."""
        return min(self._patience.answer_s, max(_LAST_QUESTION_S, until - time.monotonic()))

    def _is_over(self, name: str, page: _Page, until: float) -> bool:
        """Whether a page is over, asking once where that is not known."""
        if not page.is_over:
            self._follow(name, page, self._answer_by(until))
        return page.is_over

    def _follow(self, name: str, page: _Page, answer_s: float) -> None:
        """Ask once how far a page is."""
        try:
            if page.number is not None:
                _note(page, self._queue.job(page.number, name, answer_s))
            elif found := self._queue.find(name, answer_s):
                _note(page, found)
            else:
                page.is_over = True  # the printer answers and lists it nowhere
        except NoSuchJob as gone:
            page.outcome = _doubt(gone)
            page.is_over = True
        except PrinterError as fault:
            page.outcome = _doubt(fault)

    def _trouble(self, until: float) -> str:
        """Say why the printer does not go on; empty when it does, or does not tell."""
        try:
            return self._look(self._answer_by(until)).trouble()
        except PrinterError:
            return ""

    def _look(self, answer_s: float) -> PrinterFacts:
        self._looked = None
        facts = self._queue.printer(answer_s)
        self._looked = (time.monotonic(), facts)
        return facts


def _note(page: _Page, job: JobFacts) -> None:
    page.number = job.number
    page.outcome = job.outcome()
    page.is_over = job.is_over
    if page.outcome.state is PrintState.DONE and not page.is_acknowledged:
        page.outcome = PrintOutcome(
            PrintState.SUBMITTED,
            "the printer says that it is out, but its reply to the page was lost: "
            "look whether the label is whole",
        )


def _doubt(*faults: PrinterError) -> PrintOutcome:
    words = "; ".join(str(fault) for fault in faults)
    return PrintOutcome(PrintState.SUBMITTED, f"{words}: look whether a label came out")
