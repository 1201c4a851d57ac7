"""What a failed check of QA brings with it: the suspect window and the hold of its bags.

Every bag since the last good check of the same kind is held, of all runs, in the commit of the
check itself, as after a failed check of the scale. What is suspect is found by the order of the
journal and not by the clock. A kind that was never checked makes every bag of the record suspect,
so the window then begins with the open run.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import timedelta
from itertools import chain
from typing import Protocol

from station.core.checks.qa import FAILED
from station.core.checks.suspect import FiledWindow, RunWindow, window_fact
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.metrology.suspect import ErrorSign
from station.core.pack import Moment
from station.line.failed_check import number_ranges
from station.line.suspected import SUSPECTED, RunSince

_BEFORE_ALL = timedelta(microseconds=1)


class QaPast(Protocol):
    """What the record knows of the time before a check of QA."""

    def last_good_qa(self, kind: str) -> FactRecord | None:
        """The last good check of a kind, or None."""
        ...

    def packs_after(self, check: FactRecord | None) -> Sequence[RunSince]:
        """Bags recorded after a check (None for all), by run."""
        ...


class FailedQa:
    """Adds to a failed check what it brings with it; used on the line's thread.

    Args:
        past: the record.
        new_id: makes a UUID version 7 as text for a moment.
    """

    def __init__(self, past: QaPast, new_id: Callable[[Moment], str]) -> None:
        self._past, self._new_id = past, new_id

    def follow(self, facts: Sequence[Fact], at: Moment, who: str) -> tuple[Fact, ...]:
        """Return the facts to record together with ``facts``: windows and holds, or none."""
        failed = (
            fact for fact in facts if fact.kind is EntryKind.QA_CHECK and fact.result == FAILED
        )
        return tuple(chain.from_iterable(self._window(fact, at) for fact in failed))

    def _window(self, failed: Fact, at: Moment) -> tuple[Fact, ...]:
        good = self._past.last_good_qa(failed.subject)
        groups = self._past.packs_after(good)
        if good is None and failed.run:
            groups = [group for group in groups if group.run.id == failed.run]
        suspect = [
            (group.run, [pack for pack in group.packs if pack.quality in SUSPECTED])
            for group in groups
        ]
        suspect = [(run, packs) for run, packs in suspect if packs]
        if not suspect:
            return ()
        bags = [pack for _, packs in suspect for pack in packs]
        words = f"{failed.subject} failed its check"
        ranges: list[Value] = [list(one) for one in number_ranges(pack.id for pack in bags)]
        hold = Fact(
            kind=EntryKind.HOLD,
            uid=self._new_id(at),
            subject=failed.uid,
            result="held",
            details={"ranges": ranges, "reason": words},
        )
        first = min(pack.at for pack in bags)
        window = FiledWindow(
            uid=self._new_id(at),
            scale=failed.subject,
            check=failed.uid,
            good="" if good is None else good.fact.uid,
            opened=first - _BEFORE_ALL if good is None else good.at.utc,
            closed=at.utc,
            sign=ErrorSign.NONE,
            step=None,
            holds=(hold.uid,),
            runs=tuple(
                RunWindow(
                    run.id,
                    run.product.code,
                    str(run.window.limits.nominal.unit),
                    (),
                    words,
                    tuple(pack.id.serial for pack in packs),
                )
                for run, packs in suspect
            ),
            cause=failed.subject,
        )
        return (window_fact(window), hold)
