"""What QA's work follows: who witnesses, who releases, shifts, reject tickets; frozen."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import time, timedelta

from station.core.dispositions import Disposition


@dataclass(frozen=True, slots=True)
class QualitySettings:
    """The policy of a packhouse.

    Args:
        tickets: whether a ticket is printed for each reject.
        grace: how much later a check of QA may be before acceptance closes.
        witnessed: dispositions that want a second person.
        release_two: whether two people release.
        shifts: when shifts begin, rising; empty for none.
    """

    tickets: bool = False
    grace: timedelta = field(default=timedelta(minutes=10))
    witnessed: frozenset[Disposition] = frozenset()
    release_two: bool = True
    shifts: tuple[time, ...] = ()
