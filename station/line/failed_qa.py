"""What a failed check of QA brings with it: the suspect window and the hold of its bags.

Every bag since the last good check of the same kind is held, of all runs, in the commit of the
check itself, as after a failed check of the scale. What is suspect is found by the order of the
journal and not by the clock. A kind that was never checked makes every bag of the record suspect,
so the window then begins with the open run.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import chain
from typing import Protocol

from station.core.checks.qa import FAILED
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.pack import Moment
from station.line.held_since import HeldBy, held_since
from station.line.suspected import RunSince


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
        words = f"{failed.subject} failed its check"
        return held_since(HeldBy(failed, failed.subject, words, good), groups, at, self._new_id)
