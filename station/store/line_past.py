"""What the record knows of the lots that are on a line, as a station must know it while it runs."""

from __future__ import annotations

from collections.abc import Collection
from pathlib import Path

from sqlalchemy import select

from station.core.balance import PackedSum
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.line_lots import LineLots, line_of, lots_after
from station.core.lot_set import LotUse
from station.store.engine import reading
from station.store.lot_usage import packed_at
from station.store.number_range import bags_after
from station.store.standing import moves_at, standing_facts
from station.store.tables import fact, journal


def lots_on_lines(home: Path) -> dict[str, LineLots]:
    """Return the lots on each line that has some, by the line's short code."""
    moves = standing_facts(home, EntryKind.LOT_MOVE)
    lines = sorted({line_of(move.fact) for move in moves})
    there = {line: lots_after(moves_at(home, line), line) for line in lines}
    return {line: lots for line, lots in there.items() if lots.uses}


class LinePast:
    """Implements station.line.lot_duty.LotRecord.

    Args:
        home: folder of the record.
        line: short code of the line.
    """

    def __init__(self, home: Path, line: str) -> None:
        self._home, self._line = home, line

    def moves(self) -> tuple[FactRecord, ...]:
        """The moves that tell which lots are there and what became of them, oldest first."""
        return moves_at(self._home, self._line)

    def packed(self, uses: Collection[LotUse]) -> tuple[PackedSum, ...]:
        """The bags that could hold one of these lots, summed."""
        return packed_at(self._home, uses) if uses else ()

    def bags_since(self, move: str) -> int:
        """How many bags were recorded after a move, by its uid."""
        with reading(self._home) as connection:
            entry = select(fact.c.entry_id).where(fact.c.uid == move)
            return bags_after(connection, connection.execute(entry).scalar_one())

    def newest(self) -> int:
        """Number of the newest entry in the journal of its epoch."""
        with reading(self._home) as connection:
            newest = select(journal.c.seq).order_by(journal.c.id.desc()).limit(1)
            return int(connection.execute(newest).scalar_one())
