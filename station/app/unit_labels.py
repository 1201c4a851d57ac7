"""Labels of cases and pallets: each recorded as on its way before the printer gets it.

A filled case is noted on the line's thread; that its label is on its way is then entered, and only
when that is durable the label is drawn, read back and handed over. What the printer says becomes an
entry of its own. No state of a bag's label is ever touched.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from drivers.printer.base import Printer
from station.app.paper import unit_label
from station.app.unit_print import UnitWork, print_unit
from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.label_life import copy_mark
from station.core.pack import LabelState, PackRecord
from station.core.run import Run
from station.core.shipping import Case, Pallet, UnitLabel
from station.core.shipping_entries import case_of, pallet_of, unit_label_fact, unit_label_of
from station.line.ports import Clock
from station.line.state import EntryAnswer, Notice
from station.store.facts import facts
from station.store.shipping import labels_on_their_way

if TYPE_CHECKING:
    from labels.frames import Framed
    from labels.pdf import LabelDrawer

_STOPPED = "the station ended before the label's fate was recorded"


class UnitDesk(Protocol):
    """The printer's thread, as labels of units ask it."""

    def print_unit(self, work: UnitWork) -> None:
        """Print one label; its ``done`` hears what became of it, on the printer's thread."""
        ...


class Direct:
    """Implements UnitDesk without a thread: prints at once, for a station that does not run.

    Args:
        printer: where labels go.
    """

    def __init__(self, printer: Printer) -> None:
        self._printer = printer

    def print_unit(self, work: UnitWork) -> None:
        """Print one label."""
        print_unit(work, self._printer)


class UnitLabels:
    """Implements station.line.duties.Duty; closes nothing.

    Args:
        home: folder of the record.
        clock: tells the time.
        packer: name and address of the packhouse, as printed.
        desk: prints.
        enter: takes facts to the record, on behalf of the station.
        dots_per_mm: of the print head.
    """

    name = ""

    def __init__(
        self,
        home: Path,
        clock: Clock,
        packer: str,
        desk: UnitDesk,
        enter: Callable[[tuple[Fact, ...], str], object],
        dots_per_mm: int,
    ) -> None:
        self._home, self._clock, self._packer = home, clock, packer
        self._desk, self._enter, self._dots = desk, enter, dots_per_mm
        self._own: set[str] = set()

    def opened(self, run: Run, at: datetime) -> None:
        """Runs change nothing."""

    def packed(self, record: PackRecord) -> None:
        """Bags change nothing."""

    def noted(self, record: FactRecord) -> None:
        """Send the label of a new unit on its way, and print what is on its way."""
        fact = record.fact
        if fact.kind in (EntryKind.CASE, EntryKind.PALLET):
            self._say(UnitLabel(fact.subject, LabelState.SUBMITTED))
        elif fact.kind is EntryKind.UNIT_LABEL:
            label = unit_label_of(fact)
            if label.state is LabelState.SUBMITTED:
                self._print(label)

    def closing(self, now: datetime) -> str:
        """Nothing."""
        return ""

    def due(self, now: datetime) -> Notice | None:
        """Nothing."""
        return None

    def mine(self, answer: EntryAnswer) -> bool:
        """Whether an answer is about an entry that nobody but this made."""
        mine = self._own.intersection(answer.uids)
        self._own -= mine
        return bool(mine)

    def _print(self, label: UnitLabel) -> None:
        mark = copy_mark(label.copy)
        name = f"unit-{label.sscc}-{mark}" if mark else f"unit-{label.sscc}"
        drawn = partial(self._drawn, label)
        self._desk.print_unit(UnitWork(name, drawn, partial(self._printed, label.sscc, label.copy)))

    def _drawn(self, label: UnitLabel) -> tuple[LabelDrawer, Framed]:
        unit = unit_on_record(self._home, label.sscc)
        return unit_label(unit, self._packer, label.copy, self._dots)

    def _printed(self, sscc: str, copy: int, state: LabelState, why: str) -> None:
        self._say(UnitLabel(sscc, state, copy, why))

    def _say(self, label: UnitLabel) -> None:
        fact = unit_label_fact(label, new_uid(self._clock.now()))
        self._own.add(fact.uid)
        self._enter((fact,), "station")


def unit_on_record(home: Path, sscc: str) -> Case | Pallet:
    """The case or pallet of an SSCC, as its entry keeps it.

    Raises:
        LookupError: there is none.
    """
    for record in facts(home, (EntryKind.CASE, EntryKind.PALLET), subject=sscc):
        fact = record.fact
        return case_of(fact) if fact.kind is EntryKind.CASE else pallet_of(fact)
    raise LookupError(f"{sscc} is no case or pallet of the record")


def doubts_at_start(home: Path, clock: Clock) -> tuple[Fact, ...]:
    """What is to be recorded of labels that were on their way when the station ended."""
    return tuple(
        unit_label_fact(
            UnitLabel(sscc, LabelState.IN_DOUBT, copies, _STOPPED), new_uid(clock.now())
        )
        for sscc, copies in labels_on_their_way(home)
    )
