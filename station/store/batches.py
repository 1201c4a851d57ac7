"""Batches of a run, hour by hour of the clock, as a reference test takes them."""

from __future__ import annotations

from pathlib import Path

from station.core.pack import IN_THE_BATCH
from station.core.reference_test import Batch, StoredBag
from station.line.hours import by_hour
from station.store.weighed import packs_of_run


def batches_of(home: Path, uid: str) -> tuple[Batch, ...]:
    """Return the batches of a run, in order.

    Raises:
        BadInput: no such run.
    """
    packs = packs_of_run(home, uid)
    sold = [one for one in packs.packs if one.quality in IN_THE_BATCH]
    return tuple(
        Batch(packs.run, hour, tuple(StoredBag(one.serial, one.at, one.net) for one in its))
        for hour, its in by_hour(sold)
    )
