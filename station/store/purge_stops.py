"""What keeps a run from being purged: one question each, in words for whoever wants to purge."""

from __future__ import annotations

import json
from bisect import bisect_right
from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping, Sequence
from datetime import date
from typing import Any

from sqlalchemy import Connection, select

from station.core.checks.suspect import window_of
from station.core.journal import EntryKind
from station.core.lots import LotStatus
from station.core.pack import Quality
from station.store.day_heads import signed_head_of
from station.store.facts import read_facts
from station.store.opening import TAIL
from station.store.purge_entries import Unit
from station.store.shipping_tables import IN_HOUSE
from station.store.tables import LABEL_OPEN, journal, standing
from station.store.tree import BLOCK

Found = Iterator[tuple[int, str]]
"""Row of a run, and why it stays."""


class Candidates:
    """The runs that are old enough, and what all questions about them need.

    Args:
        connection: inside a transaction.
        units: the runs.
        sent: how far the centre has come, by epoch; None where there is none.
        lived_before: use-by dates before this day are long past.
    """

    def __init__(
        self,
        connection: Connection,
        units: Sequence[Unit],
        sent: Mapping[int, int] | None,
        lived_before: date,
    ) -> None:
        self.connection = connection
        self.units = units
        self.sent = sent
        self.lived_before = lived_before
        self.rows = json.dumps([one.row for one in units])
        spans: dict[str, list[tuple[int, int, int]]] = defaultdict(list)
        for one in units:
            for _, head, first, last in one.bags_of:
                spans[head].append((first, last, one.row))
        self._spans = {head: sorted(its) for head, its in spans.items()}

    @property
    def names(self) -> Mapping[int, str]:
        """Ids of all runs on record, by row."""
        return dict(self.ask("SELECT id, uid FROM run"))

    def ask(self, statement: str, *given: object) -> list[Any]:
        """Rows of a statement."""
        return list(self.connection.exec_driver_sql(statement, given))

    def run_of(self, head: str, number: int) -> int | None:
        """Row of the run of a bag by its serial, where it is one of these."""
        its = self._spans.get(head, [])
        place = bisect_right(its, (number, 1 << 62, 0)) - 1
        return its[place][2] if place >= 0 and its[place][1] >= number else None

    def lots(self) -> Iterator[tuple[int, int, str]]:
        """Pairs of runs, the first one of these, that share an input lot, and which."""
        users: dict[str, set[int]] = defaultdict(set)
        for run, lot in self.ask(
            "SELECT DISTINCT b.run_id, u.lot FROM blend b JOIN lot_use u USING (lot_set_id)"
        ):
            users[lot].add(run)
        mine = {one.row for one in self.units}
        for lot, runs in users.items():
            for run in runs & mine:
                yield from ((run, other, f"its lot {lot} is in") for other in sorted(runs - {run}))

    def stand_ins(self) -> Iterator[tuple[int, int, str]]:
        """Pairs of runs, the first one of these, a bag of one stands for a bag of the other."""
        mine = {one.row for one in self.units}
        stands = (
            "SELECT b1.run_id, b2.run_id, d.serial FROM disposition d"
            " JOIN pack p1 ON p1.serial = d.serial JOIN blend b1 ON b1.id = p1.blend_id"
            " JOIN pack p2 ON p2.serial = d.into_serial JOIN blend b2 ON b2.id = p2.blend_id"
            " WHERE b1.run_id <> b2.run_id"
        )
        for first, second, serial in self.ask(stands):
            if first in mine:
                yield first, second, f"what stands for its bag {serial} is of"
            if second in mine:
                yield second, first, f"a bag of it stands for bag {serial} of"


def _newest(asked: Candidates) -> Found:
    for (row,) in asked.ask("SELECT max(id) FROM run GROUP BY line"):
        yield row, "it is the newest run of its line"
    last = "SELECT run_id FROM pack JOIN blend ON blend.id = blend_id ORDER BY pack.id DESC LIMIT 1"
    for (row,) in asked.ask(last):
        yield row, "it has the newest bag"


def _use_by(asked: Candidates) -> Found:
    for one in asked.units:
        if one.use_by > asked.lived_before:
            yield one.row, f"its use-by date {one.use_by} is less than two years ago"


def _holds(asked: Candidates) -> Found:
    open_ones = asked.ask("SELECT hold, epoch, first, last FROM hold_range WHERE released = 0")
    for one in asked.units:
        for its_epoch, _, its_first, its_last in one.bags_of:
            for hold, epoch, first, last in open_ones:
                if epoch == its_epoch and first <= its_last and its_first <= last:
                    yield one.row, f"hold {hold} is open"
    lots = (
        "SELECT DISTINCT b.run_id, l.code FROM blend b JOIN lot_use u USING (lot_set_id)"
        " JOIN lot l ON l.code = u.lot WHERE l.status = ?"
        " AND b.run_id IN (SELECT value FROM json_each(?))"
    )
    for row, code in asked.ask(lots, str(LotStatus.HELD), asked.rows):
        yield row, f"its lot {code} is held"


_BAGS = (
    "SELECT b.run_id, min(p.serial), count(*) FROM pack p JOIN blend b ON b.id = p.blend_id"
    " WHERE {} AND b.run_id IN (SELECT value FROM json_each(?)) GROUP BY b.run_id"
)


def _bags(asked: Candidates) -> Found:
    kept = (
        (f"p.rejected = 1 AND p.quality = '{Quality.REJECT}'", "nobody decided about reject"),
        (f"p.quality = '{Quality.HELD}'", "held is bag"),
        (str(LABEL_OPEN).replace("pack.", "p."), "nobody said what became of the label of bag"),
    )
    for condition, words in kept:
        for row, serial, count in asked.ask(_BAGS.format(condition), asked.rows):
            more = f" and {count - 1} more" if count > 1 else ""
            yield row, f"{words} {serial}{more}"


def _windows(asked: Candidates) -> Found:
    open_ones = (
        select(journal.c.canonical)
        .join(standing, standing.c.entry_id == journal.c.id)
        .where(standing.c.kind == EntryKind.SUSPECT)
        .order_by(standing.c.entry_id.desc())
    )
    rows = {one.uid: one.row for one in asked.units}
    for record in read_facts(asked.connection, open_ones):
        window = window_of(record)
        for part in window.runs if window is not None else ():
            row = rows.get(part.run)
            if row is not None:
                yield row, f"suspect window {record.fact.uid} waits for a decision"


def _units(asked: Candidates) -> Found:
    in_house = (
        "SELECT c.sscc, s.head, s.first FROM unit c JOIN case_span s ON s.unit_id = c.id"
        f" WHERE s.undone = 0 AND (c.id IN (SELECT id FROM unit WHERE {IN_HOUSE})"
        f" OR c.pallet_id IN (SELECT id FROM unit WHERE {IN_HOUSE}))"
    )
    for sscc, head, first in asked.ask(in_house):
        row = asked.run_of(head, first)
        if row is not None:
            yield row, f"case {sscc} has not left"


def _proved(asked: Candidates) -> Found:
    ((newest,),) = asked.ask("SELECT max(id) FROM journal")
    signed: dict[int, int] = {}
    for one in asked.units:
        if one.entries.last_row > newest - TAIL:
            yield one.row, f"an entry of it is among the last {TAIL} of the journal"
        for epoch, last in {epoch: last for epoch, _, last in one.entries.spans}.items():
            if epoch not in signed:
                signed[epoch] = _signed_size(asked.connection, epoch)
            if last > signed[epoch]:
                yield one.row, f"its entry {last} is not under a signed head yet"
            if asked.sent is not None and last > asked.sent.get(epoch, 0):
                yield one.row, f"its entry {last} is not at the centre"


def _signed_size(connection: Connection, epoch: int) -> int:
    """Entries of the whole blocks under the newest signed head of an epoch."""
    signed = signed_head_of(connection, epoch)
    return 0 if signed is None else signed.head.size // BLOCK * BLOCK


STOPS: tuple[Callable[[Candidates], Found], ...] = (
    _newest,
    _use_by,
    _holds,
    _bags,
    _windows,
    _units,
    _proved,
)
"""Each yields rows of runs that stay; rows of runs that are not old enough count for nothing."""
