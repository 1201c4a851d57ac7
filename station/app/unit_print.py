"""One label of a case or pallet on the printer's thread: drawn, read back, handed over once."""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from drivers.errors import DriverError
from drivers.printer.base import Printer, PrintJob, PrintState
from labels.errors import LabelError
from station.app.paper import release
from station.core.pack import LabelState

if TYPE_CHECKING:
    from labels.frames import Framed
    from labels.pdf import LabelDrawer

_LOG = logging.getLogger(__name__)
_LOST = (PrintState.FAILED, PrintState.SUBMITTED)
_GLANCE_S = 0.1


@dataclass(frozen=True, slots=True)
class UnitWork:
    """One label to print.

    Args:
        name: of its job.
        drawn: returns its drawer and what it says.
        done: hears what became of it, on the printer's thread.
    """

    name: str
    drawn: Callable[[], tuple[LabelDrawer, Framed]]
    done: Callable[[LabelState, str], None]


def print_unit(work: UnitWork, printer: Printer) -> None:
    """Print one label; any fault leaves it in doubt, with its words."""
    try:
        drawer, label = work.drawn()
        released = release(drawer, label)
        design = drawer.design
        outcome = printer.submit(PrintJob(work.name, released.pdf, design.width, design.height))
        if outcome.state not in _LOST:
            outcome = printer.settle(work.name, _GLANCE_S)
    except (LabelError, DriverError) as refused:
        work.done(LabelState.IN_DOUBT, str(refused))
        return
    except Exception as bug:  # noqa: BLE001  the thread must live on for the next label
        _LOG.exception("label %s", work.name)
        work.done(LabelState.IN_DOUBT, f"{type(bug).__name__}: {bug}")
        return
    if outcome.state in _LOST:
        work.done(LabelState.IN_DOUBT, outcome.why)
    else:
        work.done(LabelState.SPOOLED, "")
