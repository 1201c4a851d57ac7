"""The desk of QA's checks: what is due of the open run, and the facts of checks made."""

from __future__ import annotations

from datetime import datetime, tzinfo
from decimal import Decimal
from pathlib import Path
from zoneinfo import ZoneInfo

from station.config.packhouse import Packhouse
from station.core.checks.qa import QaCheck, QaLimit, qa_fact
from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.run import Run
from station.line.ports import Clock
from station.line.qa_duty import QaDuty
from station.store.facts import facts

_SHOWN = 60


class QaDesk:
    """Implements station.screens.quality_sources.QaSource; any thread.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
        duty: knows what is due.
    """

    def __init__(self, house: Packhouse, home: Path, clock: Clock, duty: QaDuty) -> None:
        self._house, self._home, self._clock, self._duty = house, home, clock, duty

    @property
    def zone(self) -> tzinfo:
        """The plant's time zone."""
        return ZoneInfo(self._house.settings.zone)

    @property
    def now(self) -> datetime:
        """Now, in UTC."""
        return self._clock.now().utc

    def limits(self, run: Run | None) -> tuple[QaLimit, ...]:
        """The checks of a run's product; without a run those of any product, each kind once."""
        if run is not None:
            return self._house.qa.get(run.product.code, ())
        every = {one.kind: one for limits in self._house.qa.values() for one in limits}
        return tuple(every.values())

    def due_at(self, limit: QaLimit) -> datetime | None:
        """When a check of the open run is due; None while it is not wanted."""
        return self._duty.due_at(limit)

    def failed(self, limit: QaLimit) -> bool:
        """Whether the last check of this kind failed."""
        return limit.kind in self._duty.failed

    @property
    def wanted(self) -> tuple[QaLimit, ...]:
        """Checks that close acceptance now, or would with the next bag."""
        now = self.now
        return tuple(
            one
            for one in self._duty.limits
            if self.failed(one) or ((at := self._duty.due_at(one)) is not None and at <= now)
        )

    def made(self) -> tuple[FactRecord, ...]:
        """The newest checks on record, oldest first; reads it."""
        return facts(self._home, (EntryKind.QA_CHECK,), newest=_SHOWN)

    def check(
        self,
        limit: QaLimit,
        run: Run | None,
        value: Decimal | None = None,
        *,
        passed: bool = True,
        found: tuple[str, ...] = (),
        instrument: str = "",
        note: str = "",
        action: str = "",
    ) -> Fact:
        """The fact that keeps a check.

        Raises:
            QaError: something is missing or cannot be; the message says what.
        """
        product = "" if run is None else run.product.code
        made = QaCheck(limit, product, value, passed, found, instrument, note, action)
        return qa_fact(made, new_uid(self._clock.now()), "" if run is None else run.id)
