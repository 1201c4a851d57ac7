"""The suspect window and the hold of the bags since the last good check; no bounds of weight."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from station.core.checks.suspect import FiledWindow, RunWindow, window_fact
from station.core.facts import Fact, FactRecord
from station.core.metrology.suspect import ErrorSign
from station.core.pack import Moment
from station.line.suspect_hold import suspect_hold, window_opens
from station.line.suspected import SUSPECTED, RunSince


@dataclass(frozen=True, slots=True)
class HeldBy:
    """What makes bags suspect.

    Args:
        failed: the fact of the failed check.
        cause: what failed, as people name it.
        words: why the bags are held.
        good: the last good check of its kind, or None.
    """

    failed: Fact
    cause: str
    words: str
    good: FactRecord | None


def held_since(
    by: HeldBy, groups: Iterable[RunSince], at: Moment, new_id: Callable[[Moment], str]
) -> tuple[Fact, ...]:
    """Return the window and the hold of the bags that are or may be sold; nothing without any.

    Args:
        by: what failed.
        groups: the bags since the last good check, by run.
        at: time of the failed check.
        new_id: makes a UUID version 7 as text for a moment.
    """
    suspect = [
        (group.run, packs)
        for group in groups
        if (packs := [pack for pack in group.packs if pack.quality in SUSPECTED])
    ]
    if not suspect:
        return ()
    bags = [pack for _, packs in suspect for pack in packs]
    hold = suspect_hold(new_id(at), by.failed.uid, bags, by.words)
    good = by.good
    window = FiledWindow(
        uid=new_id(at),
        scale=by.cause,
        check=by.failed.uid,
        good="" if good is None else good.fact.uid,
        opened=window_opens(good, bags),
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
                by.words,
                tuple(pack.id.serial for pack in packs),
            )
            for run, packs in suspect
        ),
        cause=by.cause,
    )
    return (window_fact(window), hold)
