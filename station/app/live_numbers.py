"""Feeds the numbers of a run from the line, and from the record where the line cannot know.

The line hands each bag over and goes on; nothing is worked out on its thread. Whoever asks, asks
from a thread that may wait. The record is read when a run is first looked at, and again when a bag
left the batch after it was labelled: taken back, dumped, sampled.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Mapping
from datetime import datetime, timedelta, timezone
from decimal import Decimal
from pathlib import Path

from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.pack import IN_THE_BATCH, Moment, PackRecord
from station.core.run import Run
from station.line.fill_target import Advice, advise, proposal_fact
from station.line.numbers import Bag, RunFigures, RunNumbers, Span, habit_of
from station.line.ports import Clock
from station.line.state import LineState, Notice
from station.store.queries import last_run
from station.store.weighed import bags_of, packs_of_run, run_before

_MOVES_BAGS = (EntryKind.HOLD, EntryKind.RELEASE, EntryKind.DISPOSITION)
"""Facts after which bags of the record may have another quality."""


class LiveNumbers:
    """Numbers of the open run, or of the last one.

    The line's thread calls :meth:`state` and the methods of a duty; it waits for nothing. One other
    thread at a time calls the rest.

    Args:
        home: folder of the record.
        clock: tells the time.
        prices: of a kilogram, by product; None for none.
    """

    def __init__(
        self, home: Path, clock: Clock, prices: Mapping[str, Decimal] | None = None
    ) -> None:
        self._home, self._clock, self._prices = home, clock, prices or {}
        self._lock = threading.Lock()
        self._new: list[Bag] = []
        self._stale = True
        self._last_good = ""
        self._numbers: RunNumbers | None = None
        self._open = False

    name = ""
    """Numbers have no seal."""

    # --- on the line's thread -----------------------------------------------------------------

    def opened(self, run: Run, at: datetime) -> None:
        """A run was opened: the next question starts from the record."""
        with self._lock:
            self._stale, self._new = True, []

    def packed(self, record: PackRecord) -> None:
        """Keep a bag until somebody asks."""
        with self._lock:
            self._new.append(_recorded(record))

    def noted(self, record: FactRecord) -> None:
        """A fact that moves bags makes the next question start from the record."""
        if record.fact.kind in _MOVES_BAGS:
            with self._lock:
                self._stale = True

    def taken_back(self, serial: str) -> None:
        """A bag left the batch after it was recorded, the last one or an older one."""
        with self._lock:
            self._stale = True

    def closing(self, now: datetime) -> str:
        """Numbers close nothing."""
        return ""

    def due(self, now: datetime) -> Notice | None:
        """Numbers ask for nothing in time."""
        return None

    def state(self, state: LineState) -> None:
        """See the end of a run, and a labelled bag that was taken back."""
        last = state.last
        if last is not None and last.good:
            self._last_good = last.serial
        elif last is not None and last.serial == self._last_good:
            self._last_good = ""
            with self._lock:
                self._stale = True
        self._open = state.run is not None

    # --- on the thread of who asks ------------------------------------------------------------

    def figures(self, span: Span | None) -> RunFigures | None:
        """Return the figures of the open or the last run; None before the first.

        Args:
            span: the batch to look at; None for the one the rules judge.

        Raises:
            ValueError: (RuleRefused, MassError) the run cannot be judged here.
            StationError: the record cannot be read.
        """
        numbers = self._up_to_date()
        if numbers is None:
            return None
        return numbers.figures(span, self._local_now(), still_open=self._open)

    def advice(self, tried: Callable[[int], None]) -> Advice | None:
        """Work out a target; see :func:`station.line.fill_target.advise`."""
        numbers = self._up_to_date()
        return None if numbers is None else advise(numbers.run, numbers.bags, tried)

    def proposal(self, figures: RunFigures, advice: Advice) -> Fact:
        """Return the fact that keeps a proposal."""
        return proposal_fact(new_uid(self._clock.now()), figures.run, advice, figures.batch)

    def _up_to_date(self) -> RunNumbers | None:
        with self._lock:
            new, self._new = self._new, []
            stale, self._stale = self._stale, False
        try:
            if stale:
                self._numbers = self._read()
            if self._numbers is not None:
                self._numbers.add(new)
        except Exception:
            with self._lock:  # nothing of it is lost for the next question
                self._stale = True
            raise
        return self._numbers

    def _read(self) -> RunNumbers | None:
        last = last_run(self._home)
        if last is None:
            return None
        packs, before = packs_of_run(self._home, last.run.id), run_before(self._home, last.run.id)
        habit = None
        if before is not None and before.run.window.limits == packs.run.window.limits:
            unit = packs.run.product.nominal.unit
            habit = habit_of([bag.net.in_unit(unit) for bag in bags_of(before) if bag.in_batch])
        price = self._prices.get(packs.run.product.code)
        return RunNumbers(packs.run, habit, price, bags_of(packs))

    def _local_now(self) -> datetime:
        return _local(self._clock.now())


def _recorded(record: PackRecord) -> Bag:
    draft = record.draft
    in_batch = draft.quality in IN_THE_BATCH
    return Bag(record.serial, _local(draft.judged_at), draft.weighing.net, in_batch)


def _local(moment: Moment) -> datetime:
    zone = timezone(timedelta(minutes=moment.offset_minutes))
    return moment.utc.astimezone(zone)
