"""Whom the pages of QA ask; what reads the record says so and is not asked on Qt's thread."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime, tzinfo
from decimal import Decimal
from typing import Protocol

from station.core.checks.qa import QaLimit
from station.core.checks.suspect import Decision, FiledWindow
from station.core.complaint import Complaint
from station.core.day_review import DayReview, DaySeen
from station.core.dispositions import Disposition
from station.core.facts import Fact, FactRecord
from station.core.holds import Releasable, ScopeKind
from station.core.metrology.batch import Judgement
from station.core.metrology.rehearsal import Rehearsal
from station.core.reference_test import Batch, ReferenceTest
from station.core.reject_ledger import BinState, LedgerRow
from station.core.run import Run


class InboxSource(Protocol):
    """Knows what is open, signs days, looks bags up."""

    @property
    def zone(self) -> tzinfo:
        """The plant's time zone."""
        ...

    @property
    def today(self) -> date:
        """The production day that goes on."""
        ...

    def seen(self, day: date) -> DaySeen:
        """What is open, and what would be signed for a day; reads the record."""
        ...

    def sign(self, review: DayReview, who: str) -> Fact:
        """The fact that keeps a review; raises ValueError."""
        ...

    def complaint(self, text: str, at: str = "") -> Complaint:
        """Everything about a bag; reads the record; raises BadInput."""
        ...


class RejectsSource(Protocol):
    """Knows a day's rejects and makes the facts of decisions."""

    @property
    def today(self) -> date:
        """The production day that goes on."""
        ...

    @property
    def witnessed(self) -> frozenset[Disposition]:
        """Dispositions that want a second person."""
        ...

    def shift(self, row: LedgerRow) -> str:
        """The shift of a reject."""
        ...

    def day_seen(self, day: date) -> tuple[tuple[LedgerRow, ...], BinState]:
        """The rejects of a day, and what lies in its bin; reads the record."""
        ...

    def gone(self, day: date) -> str:
        """What was purged of a day, in words; empty for nothing; reads the record."""
        ...

    def serial(self, text: str) -> str:
        """The serial of a scanned ticket or label."""
        ...

    def day_of_bag(self, serial: str) -> date:
        """The production day of a bag; reads the record; raises BadInput."""
        ...

    def decide(
        self,
        rows: Sequence[LedgerRow],
        disposition: Disposition,
        who: str,
        reason: str,
        witness: str = "",
        into: str = "",
    ) -> tuple[Fact, ...]:
        """The facts of a decision; raises ValueError or BadInput."""
        ...

    def count(self, day: date, counted: int, explanation: str, who: str) -> Fact:
        """The fact of a count; raises ValueError."""
        ...


class HoldsSource(Protocol):
    """Knows what is held and what may go."""

    @property
    def two(self) -> bool:
        """Whether two people release."""
        ...

    def releases(self) -> tuple[Releasable, ...]:
        """Open holds, then runs; reads the record."""
        ...

    def windows(self) -> tuple[FiledWindow, ...]:
        """Undecided windows of failed QA checks; reads the record."""
        ...

    def hold(self, kind: ScopeKind, first: str, second: str, reason: str, who: str) -> Fact:
        """The fact that holds bags; raises ValueError or BadInput."""
        ...

    def release(self, one: Releasable, who: str, second: str, reason: str) -> Fact:
        """The fact that lets bags go; raises ValueError."""
        ...

    @property
    def witnessed(self) -> bool:
        """Whether dumping wants a second person."""
        ...

    def dump(self, one: Releasable, who: str, witness: str, reason: str) -> tuple[Fact, ...]:
        """The facts that throw away what a hold keeps; raises ValueError."""
        ...

    def decide(
        self, window: FiledWindow, decision: Decision, reason: str, who: str
    ) -> tuple[Fact, ...]:
        """The facts that decide about a window; raises ValueError."""
        ...


class QaSource(Protocol):
    """Knows which checks are due."""

    @property
    def zone(self) -> tzinfo:
        """The plant's time zone."""
        ...

    @property
    def now(self) -> datetime:
        """Now, in UTC."""
        ...

    def limits(self, run: Run | None) -> tuple[QaLimit, ...]:
        """The checks of a run's product."""
        ...

    def due_at(self, limit: QaLimit) -> datetime | None:
        """When a check of the open run is due."""
        ...

    def failed(self, limit: QaLimit) -> bool:
        """Whether the last check of this kind failed."""
        ...

    def made(self) -> tuple[FactRecord, ...]:
        """The newest checks, oldest first; reads the record."""
        ...

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
        """The fact of a check; raises ValueError."""
        ...


class InspectorSource(Protocol):
    """Knows batches and the criterion of their rules."""

    @property
    def dwell_ns(self) -> int:
        """How long a reading must stand before it is taken."""
        ...

    def batches(self) -> tuple[Batch, ...]:
        """The last batches, newest first; reads the record."""
        ...

    def begin(self, batch: Batch) -> ReferenceTest:
        """A test without a bag; raises ValueError."""
        ...

    def pick(self, test: ReferenceTest, batch: Batch, text: str) -> ReferenceTest:
        """With one more bag; raises ValueError."""
        ...

    def draw(self, test: ReferenceTest, batch: Batch, seed: int | None = None) -> ReferenceTest:
        """With a sample drawn at random; raises ValueError."""
        ...

    def standing(self, test: ReferenceTest) -> Judgement | None:
        """The criterion so far."""
        ...

    def rehearsal(self, test: ReferenceTest, batch: Batch) -> Rehearsal:
        """Samples of the stored bags; takes long; raises ValueError."""
        ...

    def record(self, test: ReferenceTest, inspector: str, who: str) -> Fact:
        """The fact of a test; raises ValueError."""
        ...
