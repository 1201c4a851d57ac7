"""What the record can still say of runs that were purged: when, by whom, and where they are now."""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from sqlalchemy import Connection, select

from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.purging import Purge, PurgedRun, purge_of
from station.core.shipping import ShippingError, serial_parts
from station.errors import BadInput
from station.store.engine import reading
from station.store.facts import read_facts
from station.store.tables import fact, journal


@dataclass(frozen=True, slots=True)
class GoneRun:
    """A purged run and the purge it went by.

    Args:
        run: the run.
        purge: the purge.
        record: its entry: when, by whom.
    """

    run: PurgedRun
    purge: Purge
    record: FactRecord

    @property
    def day(self) -> date:
        """Day of the purge, in UTC."""
        return self.record.at.utc.date()

    @property
    def words(self) -> str:
        """When it went, by whom, and where its entries are."""
        return (
            f"went with run {self.run.uid} ({self.run.name}, {self.run.bags} bags, "
            f"{_days(self.run)}) by the purge of {self.day} by {self.record.who}: "
            f"{self.purge.why}; its entries are in the export {self.purge.folder}, whose "
            f"manifest.json has SHA-256 {self.purge.digest}"
        )


def gone_runs(connection: Connection) -> tuple[GoneRun, ...]:
    """Every purged run, in the order they went."""
    statement = (
        select(journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .where(fact.c.kind == EntryKind.PURGE)
        .order_by(fact.c.id.desc())
    )
    return tuple(
        GoneRun(run, purge, record)
        for record in read_facts(connection, statement)
        for purge in (purge_of(record.fact),)
        for run in purge.runs
    )


def gone_with_bag(home: Path, serial: str) -> GoneRun | None:
    """The purged run of a bag, or None."""
    with reading(home) as connection:
        return _bag(connection, serial)


def gone_with_bags(home: Path, serials: Collection[str]) -> tuple[GoneRun, ...]:
    """Purged runs of some bags, each once."""
    heads = [serial_parts(serial) for serial in serials]
    return _those(
        home,
        lambda run: any(
            head == its and first <= number <= last
            for its, first, last in run.serials
            for head, number in heads
        ),
    )


def gone_with_lot(home: Path, code: str) -> tuple[GoneRun, ...]:
    """Purged runs whose bags could hold an input lot."""
    return _those(home, lambda run: code in run.inputs)


def lots_of_gone(home: Path) -> frozenset[str]:
    """Input lots that bags of purged runs could hold: what bags took of them is not known."""
    return frozenset(code for gone in _those(home, lambda run: True) for code in gone.run.inputs)


def gone_between(home: Path, first: date, last: date) -> tuple[GoneRun, ...]:
    """Purged runs with a production day from ``first`` to ``last``, both counted in."""
    return _those(home, lambda run: run.first_day <= last and run.last_day >= first)


def purge_words(gone: Sequence[GoneRun]) -> str:
    """How many runs went when, and the export they are in; empty for none."""
    if not gone:
        return ""
    runs, last = len(gone), gone[-1]
    day, folder = last.day, last.purge.folder
    if runs == 1:
        return f"1 run was purged on {day}, export {folder}"
    if any(one.purge.folder != folder for one in gone):
        return f"{runs} runs were purged, the last on {day}, export {folder}"
    return f"{runs} runs were purged on {day}, export {folder}"


def table_notes(gone: Sequence[GoneRun]) -> tuple[str, ...]:
    """Lines under a table of what is left: each purged run, so that none is missed unseen."""
    if not gone:
        return ()
    return (f"NOT IN THIS TABLE: {purge_words(gone)}", *(one.words for one in gone))


def refusal_of_bag(connection: Connection, serial: str) -> BadInput | None:
    """Why a bag is not in the record, where it was purged."""
    gone = _bag(connection, serial)
    return None if gone is None else BadInput(f"bag {serial} was purged", f"it {gone.words}")


def refusal_of(connection: Connection, name: str) -> BadInput | None:
    """Why a run or blend lot is not in the record, where it was purged."""
    for gone in gone_runs(connection):
        if name == gone.run.uid or name in gone.run.blend_lots:
            return BadInput(f"{name} was purged", f"it {gone.words}")
    return None


def refusal_between(home: Path, first: date, last: date) -> BadInput | None:
    """Why nothing is on record of some production days, where it was purged."""
    gone = gone_between(home, first, last)
    if not gone:
        return None
    more = f"; so did {len(gone) - 1} more" if len(gone) > 1 else ""
    return BadInput(f"{first} to {last} was purged", f"what was packed {gone[0].words}{more}")


def _bag(connection: Connection, serial: str) -> GoneRun | None:
    try:
        head, number = serial_parts(serial)
    except ShippingError:
        return None
    for gone in gone_runs(connection):
        for its, first, last in gone.run.serials:
            if its == head and first <= number <= last:
                return gone
    return None


def _those(home: Path, wanted: Callable[[PurgedRun], bool]) -> tuple[GoneRun, ...]:
    with reading(home) as connection:
        return tuple(gone for gone in gone_runs(connection) if wanted(gone.run))


def _days(run: PurgedRun) -> str:
    if run.first_day == run.last_day:
        return f"of {run.first_day}"
    return f"of {run.first_day} to {run.last_day}"
