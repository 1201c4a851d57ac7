"""What an empty bag brings with it that is heavier than the tare taken off: window and hold.

Its run's bags since the last empty one that fitted hold less than their labels say. All of them
are held in the commit of the weighing, whatever film lot it names: nobody knows with which bag the
heavier film began. A lighter bag is no reason to hold, since its bags hold more than they say.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import chain
from typing import Protocol

from station.core.checks.tare import FITS
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.mass import Mass
from station.core.pack import Moment
from station.line.held_since import HeldBy, held_since
from station.line.suspected import RunSince


class TarePast(Protocol):
    """What the record knows of the time before an empty bag."""

    def empty_bags(self, bag_item: str, run: str) -> Sequence[FactRecord]:
        """The empty bags of an item weighed in a run, oldest first."""
        ...

    def packs_after(self, check: FactRecord | None) -> Sequence[RunSince]:
        """Bags recorded after a check (None for all), by run."""
        ...


class FailedTare:
    """Adds to an empty bag that is too heavy what it brings with it; used on the line's thread.

    Args:
        past: the record.
        new_id: makes a UUID version 7 as text for a moment.
    """

    def __init__(self, past: TarePast, new_id: Callable[[Moment], str]) -> None:
        self._past, self._new_id = past, new_id

    def follow(self, facts: Sequence[Fact], at: Moment, who: str) -> tuple[Fact, ...]:
        """Return the facts to record together with ``facts``: windows and holds, or none."""
        unfit = (fact for fact in facts if fact.kind is EntryKind.EMPTY_BAG and fact.result != FITS)
        return tuple(chain.from_iterable(self._window(fact, at) for fact in unfit))

    def _window(self, unfit: Fact, at: Moment) -> tuple[Fact, ...]:
        weighed = self._past.empty_bags(unfit.subject, unfit.run)
        good = next((one for one in reversed(weighed) if one.fact.result == FITS), None)
        if good is None:
            return ()  # a run takes no bag before an empty one fitted
        group = self._of_run(unfit.run, good)
        shown = _shown(unfit)
        if group is None or shown <= group.run.product.bag.tare:
            return ()
        tare = group.run.product.bag.tare.in_unit(shown.unit)
        since = weighed[weighed.index(good) + 1 :]
        heavy = next((one for one in reversed(since) if _shown(one.fact) > tare), None)
        if heavy is not None:  # the bags before it are held already
            group = self._of_run(unfit.run, heavy)
        words = f"an empty bag weighs {shown}, {shown - tare} more than the tare taken off"
        by = HeldBy(unfit, f"tare of {unfit.subject}", words, good)
        return held_since(by, () if group is None else (group,), at, self._new_id)

    def _of_run(self, run: str, after: FactRecord) -> RunSince | None:
        groups = self._past.packs_after(after)
        return next((group for group in groups if group.run.id == run), None)


def _shown(empty_bag: Fact) -> Mass:
    return Mass.parse(str(empty_bag.details["shown"]))
