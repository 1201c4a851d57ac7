"""What a paper says of runs that were purged, so that a gap is not read as nothing."""

from __future__ import annotations

from collections.abc import Sequence

from reportlab.platypus import Flowable

from station.reports.paper import heading, note
from station.store.purged import GoneRun


def purged_story(gone: Sequence[GoneRun]) -> list[Flowable]:
    """A part of its own where something was purged, else nothing."""
    if not gone:
        return []
    count = "1 run was" if len(gone) == 1 else f"{len(gone)} runs were"
    return [
        *heading(f"Not on this paper: {count} purged"),
        *(note(f"{', '.join(one.run.blend_lots)} {one.words}") for one in gone),
    ]
