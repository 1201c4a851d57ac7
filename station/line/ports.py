"""What the line needs from outside, as the line sees it."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Protocol

from station.core.facts import Fact, FactRecord
from station.core.label_life import LabelledBag
from station.core.lots import InputLot
from station.core.pack import LabelState, Moment, PackDraft, PackRecord
from station.core.run import Run


class Clock(Protocol):
    """Tells the time by every clock the station has."""

    def now(self) -> Moment:
        """The present moment."""
        ...

    def monotonic_ns(self) -> int:
        """The steady count, in nanoseconds."""
        ...


class StoreFault(Exception):
    """The store could not make something durable; the message says what to do.

    Nothing of the failed call is recorded, unless the message says that this is not known: after
    an error of the disk itself only the next start can tell.
    """


class Store(Protocol):
    """The only way to the disk. Every call returns once its facts are durable.

    All calls come from one thread. Each raises StoreFault where it cannot.
    """

    def add_lots(self, lots: Sequence[InputLot], at: Moment, who: str) -> int:
        """Record input lots that are not known yet; returns how many were new."""
        ...

    def next_blend_number(self, line: str, day: date) -> int:
        """The number, from 1, of the next blend lot of a line and production day."""
        ...

    def start_run(self, run: Run, at: Moment) -> None:
        """Record a run with its frozen product, limits, dates and lot set."""
        ...

    def end_run(self, run_id: str, at: Moment, who: str) -> None:
        """Record the end of a run."""
        ...

    def add_pack(self, draft: PackDraft) -> PackRecord:
        """Give the bag its number and record bag, lot set and journal entry in one commit."""
        ...

    def mark_label(self, serial: str, state: LabelState, at: Moment, who: str, why: str) -> None:
        """Record how far the label of a bag has come."""
        ...

    def take_back(self, serial: str, reason: str, at: Moment, who: str) -> None:
        """Record that a labelled bag became a reject and its label is void, in one commit."""
        ...

    def labelled(self, serial: str) -> LabelledBag:
        """The bag of a serial, with its run and what became of its label."""
        ...

    def note(self, words: str, at: Moment, who: str) -> None:
        """Record an event in words."""
        ...

    def record(self, facts: Sequence[Fact], at: Moment, who: str) -> tuple[FactRecord, ...]:
        """Record facts in one commit, all or none."""
        ...


class LabelRefused(ValueError):
    """A label that must not be printed; the message says why and what to do."""


class LabelDesk(Protocol):
    """Draws, reads back and prints labels off the line's thread."""

    def rehearse(self, run: Run) -> None:
        """Draw and read back a specimen of a run's label before the run opens.

        Raises:
            LabelRefused: the label cannot be drawn, does not fit, or does not read back equal.
        """
        ...

    def issue(self, record: PackRecord, run: Run) -> None:
        """Start printing one label; the answer comes as Labelled or LabelFailed."""
        ...

    def reissue(self, serial: str, run: Run, copy: int) -> None:
        """Start printing copy ``copy`` (from 1) of a label; the answer comes as for a first one.

        Args:
            serial: of the bag; the same as on its first label.
            run: the run as it stood for this bag.
            copy: as the record counts it, printed beside the serial.
        """
        ...

    def ticket(self, record: PackRecord, run: Run, reason: str) -> None:
        """Start printing the ticket of a reject, where the packhouse wants one.

        The answer comes as Ticketed; a ticket that fails stops nothing.

        Args:
            record: the bag.
            run: its run.
            reason: why it was set aside.
        """
        ...
