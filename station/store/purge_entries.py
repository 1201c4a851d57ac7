"""Which entries of the journal belong to a run, so that they go with it."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime

from sqlalchemy import Connection, select

from station.core.facts import texts_of
from station.core.journal import EntryKind
from station.core.purging import Span
from station.store.facts import read_facts
from station.store.prepared import driver_of
from station.store.tables import fact, journal

OF_BAG = (EntryKind.DISPOSITION, EntryKind.REPRINT, EntryKind.TICKET)
"""Facts about one bag; they go with it."""
OF_RUN = (
    EntryKind.FIRST_OFF,
    EntryKind.GATE,
    EntryKind.SCALE_CHECK,
    EntryKind.QA_CHECK,
    EntryKind.EMPTY_BAG,
)
"""Facts made in a run that go with it, unless an entry that stays names them."""
_LASTING = (EntryKind.SCALE_CHECK, EntryKind.QA_CHECK, EntryKind.EMPTY_BAG)
"""Of these the newest of each subject and result stays: a start asks for it."""
_NAMING = (EntryKind.SUSPECT, EntryKind.HOLD, EntryKind.RELEASE)
"""Kinds that stay and name checks. No kind of ``station.core.standing`` goes with a run: what one
begins another ends, and a start reads what is left."""

_ENTRIES = """
    WITH gone (id) AS (SELECT value FROM json_each(:runs)),
    its (id, run) AS (
        SELECT run.entry_id, run.id FROM run JOIN gone ON gone.id = run.id
        UNION ALL
        SELECT pack.entry_id, blend.run_id FROM pack JOIN blend ON blend.id = pack.blend_id
                AND pack.id BETWEEN blend.first_bag AND blend.last_bag
            JOIN gone ON gone.id = blend.run_id
        UNION ALL
        SELECT j.id, run.id FROM journal j
            JOIN run ON run.uid = json_extract(nullif(CAST(j.canonical AS TEXT), ''), '$.body.run')
            JOIN gone ON gone.id = run.id WHERE j.kind = 'run end'
        UNION ALL
        SELECT j.id, blend.run_id FROM journal j
            JOIN pack ON pack.serial =
                json_extract(nullif(CAST(j.canonical AS TEXT), ''), '$.body.serial')
            JOIN blend ON blend.id = pack.blend_id JOIN gone ON gone.id = blend.run_id
            WHERE j.kind = 'label' AND j.id > :first
        UNION ALL
        SELECT fact.entry_id, blend.run_id FROM fact JOIN pack ON pack.serial = fact.subject
            JOIN blend ON blend.id = pack.blend_id JOIN gone ON gone.id = blend.run_id
            WHERE fact.kind IN (SELECT value FROM json_each(:of_bag))
        UNION ALL
        SELECT fact.entry_id, run.id FROM fact JOIN run ON run.uid = fact.run
            JOIN gone ON gone.id = run.id
            WHERE fact.kind IN (SELECT value FROM json_each(:of_run))
            AND fact.uid NOT IN (SELECT value FROM json_each(:named))
            AND fact.id NOT IN (SELECT max(id) FROM fact
                WHERE kind IN (SELECT value FROM json_each(:lasting))
                GROUP BY kind, subject, result)
    )
    SELECT its.run, j.id, j.epoch, j.seq, length(j.canonical) FROM its
    JOIN journal j ON j.id = its.id ORDER BY j.id
"""


@dataclass(slots=True)
class RunEntries:
    """The entries of a run.

    Args:
        spans: epoch, first and last number, in the order of the journal.
        rows: first and last row of the journal, as many.
        bytes: of all of them.
    """

    spans: list[Span]
    rows: list[tuple[int, int]]
    bytes: int = 0

    @property
    def count(self) -> int:
        """How many entries."""
        return sum(last - first + 1 for first, last in self.rows)

    @property
    def last_row(self) -> int:
        """Row of the last of them."""
        return self.rows[-1][1] if self.rows else 0

    def add(self, row: int, epoch: int, seq: int, size: int) -> None:
        """Take in the next entry."""
        self.bytes += size
        if self.rows and self.rows[-1][1] == row - 1 and self.spans[-1][0] == epoch:
            self.rows[-1] = (self.rows[-1][0], row)
            self.spans[-1] = (epoch, self.spans[-1][1], seq)
        else:
            self.rows.append((row, row))
            self.spans.append((epoch, seq, seq))


@dataclass(frozen=True, slots=True)
class Unit:
    """A run that ended long ago.

    Args:
        row: its row number in the table of runs.
        uid: its id.
        product, name: what was packed.
        ended: when, in the plant's time.
        blend_lots: codes on its labels.
        inputs: codes of the input lots its bags could hold.
        first_day, last_day: production days.
        use_by: the latest on its labels.
        bags: how many.
        bags_of: epoch, head of the serials, first and last number of its bags.
        entries: what would be emptied.
        stops: why it stays; empty where it may go.
    """

    row: int
    uid: str
    product: str
    name: str
    ended: datetime
    blend_lots: tuple[str, ...]
    inputs: tuple[str, ...]
    first_day: date
    last_day: date
    use_by: date
    bags: int
    bags_of: tuple[tuple[int, str, int, int], ...]
    entries: RunEntries
    stops: tuple[str, ...] = ()


def entries_of(connection: Connection, runs: Sequence[int]) -> dict[int, RunEntries]:
    """Return the entries of some runs, by their row numbers; reads the journal since the first.

    A check that another entry names stays, and so does the newest of each subject and result.
    """
    found = {run: RunEntries([], []) for run in runs}
    if not runs:
        return found
    first = connection.exec_driver_sql(
        "SELECT min(entry_id) FROM run WHERE id IN (SELECT value FROM json_each(?))",
        (json.dumps(list(runs)),),
    ).scalar_one()
    given = {
        "runs": json.dumps(list(runs)),
        "first": first,
        "of_bag": json.dumps(OF_BAG),
        "of_run": json.dumps(OF_RUN),
        "lasting": json.dumps(_LASTING),
        "named": json.dumps(sorted(_named(connection))),
    }
    for run, row, epoch, seq, size in driver_of(connection).execute(_ENTRIES, given):
        found[run].add(row, epoch, seq, size)
    return found


def _named(connection: Connection) -> set[str]:
    """Every text in entries that stay and may name a check."""
    statement = (
        select(journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .where(fact.c.kind.in_(_NAMING))
        .order_by(fact.c.id.desc())
    )
    records = read_facts(connection, statement)
    return {text for one in records for text in texts_of(one.fact.details)}
