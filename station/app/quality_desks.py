"""QA's desks at one station, whom the page behind its door asks."""

from __future__ import annotations

from pathlib import Path
from typing import NamedTuple

from station.app.holds_desk import HoldsDesk
from station.app.inbox_desk import InboxDesk
from station.app.inspector_desk import InspectorDesk
from station.app.qa_desk import QaDesk
from station.app.rejects_desk import RejectsDesk
from station.config.packhouse import Packhouse
from station.line.ports import Clock
from station.line.qa_duty import QaDuty


class QualityDesks(NamedTuple):
    """Whom the pages of QA ask."""

    inbox: InboxDesk
    rejects: RejectsDesk
    holds: HoldsDesk
    checks: QaDesk
    inspector: InspectorDesk


def quality_desks(
    house: Packhouse, home: Path, clock: Clock, duty: QaDuty, dwell_ns: int
) -> QualityDesks:
    """Make the desks.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
        duty: knows what is due.
        dwell_ns: how long a reading must stand before it is taken.
    """
    return QualityDesks(
        InboxDesk(house, home, clock),
        RejectsDesk(house, home, clock),
        HoldsDesk(house, home, clock),
        QaDesk(house, home, clock, duty),
        InspectorDesk(house, home, clock, dwell_ns),
    )
