"""QA's work at one station: its duty, what failed checks bring with them, and its desks."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import NamedTuple

from station.app.holds_desk import HoldsDesk
from station.app.inbox_desk import InboxDesk
from station.app.inspector_desk import InspectorDesk
from station.app.qa_desk import QaDesk
from station.app.rejects_desk import RejectsDesk
from station.config.packhouse import Packhouse
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.pack import Moment
from station.line.failed_check import FailedChecks
from station.line.failed_qa import FailedQa
from station.line.failed_tare import FailedTare
from station.line.ports import Clock
from station.line.qa_duty import QaDuty
from station.store.at_start import qa_past
from station.store.since import RecordPast


class QualityDesks(NamedTuple):
    """Whom the pages of QA ask."""

    inbox: InboxDesk
    rejects: RejectsDesk
    holds: HoldsDesk
    checks: QaDesk
    inspector: InspectorDesk


@dataclass(frozen=True, slots=True)
class QualityGates:
    """What a station needs of it; no duty where no product has a check."""

    duties: tuple[QaDuty, ...]
    desks: QualityDesks


class Follows:
    """What entered facts bring with them: windows and holds after a failed check of any kind.

    Args:
        home: folder of the record.
    """

    def __init__(self, home: Path) -> None:
        past = RecordPast(home)
        self._scale = FailedChecks(past, new_uid)
        self._qa = FailedQa(past, new_uid)
        self._tare = FailedTare(past, new_uid)

    def follow(self, entered: Sequence[Fact], at: Moment, who: str) -> tuple[Fact, ...]:
        """The facts to record together with those entered."""
        failed = (self._scale, self._qa, self._tare)
        return tuple(fact for one in failed for fact in one.follow(entered, at, who))


def quality_gates(house: Packhouse, home: Path, clock: Clock, dwell_ns: int) -> QualityGates:
    """Read the record and return QA's work as it left it.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
        dwell_ns: how long a reading must stand before it is taken.
    """
    duty = QaDuty(house.qa, house.settings.quality.grace, qa_past(home))
    desks = QualityDesks(
        InboxDesk(house, home, clock),
        RejectsDesk(house, home, clock),
        HoldsDesk(house, home, clock),
        QaDesk(house, home, clock, duty),
        InspectorDesk(house, home, clock, dwell_ns),
    )
    return QualityGates((duty,) if any(house.qa.values()) else (), desks)
