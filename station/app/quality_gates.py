"""QA's work at one station: its duty, what failed checks bring with them, and its desks."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property, partial
from pathlib import Path
from typing import TYPE_CHECKING

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

if TYPE_CHECKING:
    from station.app.quality_desks import QualityDesks


class QualityGates:
    """What a station needs of it.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
        duty: primed from the record.
        dwell_ns: how long a reading must stand before it is taken.
    """

    def __init__(
        self, house: Packhouse, home: Path, clock: Clock, duty: QaDuty, dwell_ns: int
    ) -> None:
        self.duties = (duty,) if any(house.qa.values()) else ()
        """None where no product has a check."""
        self._desks = partial(_desks, house, home, clock, duty, dwell_ns)

    @cached_property
    def desks(self) -> QualityDesks:
        """Whom the page asks, made when somebody first does."""
        return self._desks()


def _desks(house: Packhouse, home: Path, clock: Clock, duty: QaDuty, dwell_ns: int) -> QualityDesks:
    from station.app.quality_desks import quality_desks

    return quality_desks(house, home, clock, duty, dwell_ns)


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
    return QualityGates(house, home, clock, duty, dwell_ns)
