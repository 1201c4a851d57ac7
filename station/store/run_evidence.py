"""What proves a run: where it lies in the journal, and how far its labels came."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from sqlalchemy import func, select

from station.core.pack import LabelState
from station.store.engine import reading
from station.store.tables import OF_BLEND, blend, identity, journal, pack, run


@dataclass(frozen=True, slots=True)
class Place:
    """One journal entry: its number in its epoch, and its hash as 64 hex digits."""

    seq: int
    hash: str


@dataclass(frozen=True, slots=True)
class RunEvidence:
    """Where a run lies in the journal.

    Args:
        site: short code of the packhouse.
        station: short code of the station.
        epoch: incarnation of the record the run was started in.
        started: entry of the start of the run.
        last_bag: entry of its last bag; None before the first.
        head: last entry of the record when this was read.
        labels: bags of the run by label state.
    """

    site: str
    station: str
    epoch: int
    started: Place
    last_bag: Place | None
    head: Place
    labels: Mapping[LabelState, int]


def run_evidence(home: Path, uid: str) -> RunEvidence:
    """Return the evidence of a run that is in the record."""
    with reading(home) as connection:
        owner = connection.execute(select(identity.c.site, identity.c.station)).one()
        run_id, entry_id = connection.execute(
            select(run.c.id, run.c.entry_id).where(run.c.uid == uid)
        ).one()
        bags = select(pack).select_from(pack).join(blend, OF_BLEND)
        its_bags = bags.where(blend.c.run_id == run_id).subquery()
        last_bag = connection.execute(select(func.max(its_bags.c.entry_id))).scalar_one()
        head = connection.execute(select(func.max(journal.c.id))).scalar_one()
        wanted = [row for row in (entry_id, last_bag, head) if row is not None]
        entries = {
            row.id: row
            for row in connection.execute(
                select(journal.c.id, journal.c.epoch, journal.c.seq, journal.c.hash).where(
                    journal.c.id.in_(wanted)
                )
            )
        }
        counted = connection.execute(
            select(its_bags.c.label, func.count()).group_by(its_bags.c.label)
        )
        labels = {LabelState(label): count for label, count in counted}
    places = {row: Place(entry.seq, entry.hash.hex()) for row, entry in entries.items()}
    return RunEvidence(
        site=owner.site,
        station=owner.station,
        epoch=entries[entry_id].epoch,
        started=places[entry_id],
        last_bag=None if last_bag is None else places[last_bag],
        head=places[head],
        labels=labels,
    )


def runs_of_day(home: Path, day: date) -> tuple[str, ...]:
    """Return the ids of the runs of a production day, in the order they were started."""
    with reading(home) as connection:
        found = connection.execute(
            select(run.c.uid)
            .join(blend)
            .where(blend.c.production_day == day)
            .distinct()
            .order_by(run.c.id)
        )
        return tuple(found.scalars())
