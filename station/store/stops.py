"""Stops of the line by when they began, each with its end, whenever that was."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from station.core.journal import EntryKind
from station.core.pauses import Pause, pauses_of
from station.store.facts import facts
from station.store.standing import standing_facts

_KIND = (EntryKind.PAUSE,)


def stops_begun(home: Path, since: datetime, until: datetime) -> tuple[Pause, ...]:
    """Return the stops that began between two moments, in order.

    A stop over the change of day counts, with its whole time, to the day it began on and to no
    other, so that days add up to their week.

    Args:
        home: folder of the record.
        since: first moment, aware.
        until: last moment, aware.
    """
    begun = facts(home, _KIND, since=since, until=until)
    found = pauses_of(begun)
    still = {one.uid for one in found if one.ended is None}
    if still <= {one.uid for one in standing_stops(home)}:
        return found
    whole = pauses_of((*begun, *facts(home, _KIND, since=until)))
    mine = {one.uid for one in found}
    return tuple(one for one in whole if one.uid in mine)


def standing_stops(home: Path) -> tuple[Pause, ...]:
    """Return the stops that go on now, of any day."""
    return pauses_of(standing_facts(home, *_KIND))
