"""Brings the centre's tables for questions up to its entries; started by whoever asks.

Each station's epoch is read in order from where it stood, its hashes are checked again from the
bytes the centre holds, and rows and mark are one transaction. An entry that cannot be read, or
whose hash does not follow, is noted in quarantine; the entries behind it go on.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import LiteralString

from psycopg import sql

from station.core.journal import GENESIS, JournalError, entry_hash
from station.store.journal import read_entry
from station.sync import schema
from station.sync.connection import CentreConnection
from station.sync.projection import COLUMNS, TYPES, Projection

_PIECE = 2000
_WAIT_S = 120.0
_BEHIND: LiteralString = """
    SELECT w.site, w.station, w.epoch, coalesce(p.seq, 0), coalesce(p.hash, %s), w.seq
    FROM centre.watermark w LEFT JOIN centre.projected p USING (site, station, epoch)
    WHERE w.seq > coalesce(p.seq, 0) ORDER BY 1, 2, 3"""
_READ: LiteralString = """
    SELECT seq, hash, canonical FROM centre.entry WHERE site = %s AND station = %s AND epoch = %s
    AND seq > %s AND seq <= %s ORDER BY seq LIMIT %s"""
_GAP: LiteralString = """
    SELECT hash FROM centre.quarantine WHERE site = %s AND station = %s AND epoch = %s AND seq = %s
    ORDER BY found_at LIMIT 1"""
_WITHOUT_DECISIONS: LiteralString = """
    SELECT FROM (SELECT * FROM centre.fact WHERE kind = 'disposition' ORDER BY at LIMIT 1) f
    WHERE NOT EXISTS (SELECT FROM centre.pack_change c WHERE c.site = f.site
        AND c.station = f.station AND c.epoch = f.epoch AND c.seq = f.seq)"""
_CLAIM: LiteralString = """
    UPDATE centre.projected SET seq = %s, hash = %s
    WHERE site = %s AND station = %s AND epoch = %s AND seq = %s"""
_NOTE: LiteralString = """
    INSERT INTO centre.quarantine VALUES (%s, %s, %s, %s, %s, %s, %s, clock_timestamp())
    ON CONFLICT DO NOTHING"""


@dataclass(frozen=True, slots=True)
class BroughtUp:
    """What was done.

    Args:
        entries: read.
        noted: put into quarantine because they cannot be read or do not follow.
    """

    entries: int
    noted: int


def bring_up(connection: CentreConnection) -> BroughtUp:
    """Read every entry that is not in the tables yet.

    Tables an older program filled know no decision about a bag: they are made anew.

    Raises:
        CentreGone: the connection was lost, or the role may not write the tables; what was
            brought up until then stays.
    """
    entries = noted = 0
    with connection.within(_WAIT_S):
        older = connection.execute(_WITHOUT_DECISIONS).fetchone() is not None
    if older:
        start_over(connection)
    with connection.within(_WAIT_S):
        behind = connection.execute(_BEHIND, (GENESIS,)).fetchall()
    for site, station, epoch, seq, digest, upto in behind:
        names, hash_before = (site, station, epoch), bytes(digest)
        with connection.within(_WAIT_S):
            connection.execute(
                "INSERT INTO centre.projected VALUES (%s, %s, %s, 0, %s) ON CONFLICT DO NOTHING",
                (*names, GENESIS),
            )
        while seq < upto:
            with connection.within(_WAIT_S), connection.transaction():
                piece = _Piece(connection, names, seq, hash_before)
                if not piece.read(upto):
                    break
                if not piece.write():
                    break  # somebody else does the same at this moment
            entries, noted = entries + piece.entries, noted + len(piece.notes)
            seq, hash_before = piece.seq, piece.hash
    return BroughtUp(entries, noted)


def start_over(connection: CentreConnection) -> None:
    """Empty every table that follows from the entries; the next bringing up fills them again."""
    with connection.within(_WAIT_S), connection.transaction():
        for name in (*schema.PROJECTIONS, "projected"):
            connection.execute(sql.SQL("TRUNCATE {}").format(sql.Identifier("centre", name)))


class _Piece:
    """Some entries of one epoch, inside one transaction."""

    def __init__(
        self, connection: CentreConnection, names: tuple[str, str, int], seq: int, before: bytes
    ) -> None:
        self._connection, self._names, self._start = connection, names, seq
        self._projection = Projection()
        self.seq, self.hash = seq, before
        self.entries = 0
        self.notes: list[tuple[int, bytes, bytes, str]] = []

    def read(self, upto: int) -> bool:
        """Read the next entries; False where there are none."""
        rows = self._connection.execute(_READ, (*self._names, self.seq, upto, _PIECE)).fetchall()
        for seq, digest, canonical in rows:
            if seq != self.seq + 1:
                self.hash = self._hash_in_gap(seq - 1)
            self._take(seq, bytes(digest), bytes(canonical))
        if not rows and upto > self.seq:  # the rest of the epoch lies in quarantine
            self.seq, self.hash = upto, self._hash_in_gap(upto)
            return True
        return bool(rows)

    def write(self) -> bool:
        """Put the rows into their tables; False where another one did it first."""
        connection = self._connection
        if (
            connection.execute(_CLAIM, (self.seq, self.hash, *self._names, self._start)).rowcount
            != 1
        ):
            return False
        for table, rows in self._projection.rows.items():
            if rows:
                self._copy(table, rows)
        with connection.cursor() as cursor:
            cursor.executemany(
                "INSERT INTO centre.lot_use VALUES (%s, %s, %s, %s, %s, %s) ON CONFLICT DO NOTHING",
                list(self._projection.uses),
            )
            cursor.executemany(_NOTE, [(*self._names, *one) for one in self.notes])
        return True

    def _take(self, seq: int, digest: bytes, canonical: bytes) -> None:
        self.entries += 1
        if self.hash and entry_hash(self.hash, canonical) != digest:
            self.notes.append((seq, digest, canonical, "its bytes do not have its hash"))
        else:
            try:
                self._projection.add(read_entry(canonical))
            except JournalError as unread:
                self.notes.append((seq, digest, canonical, f"it cannot be read: {unread}"))
        self.seq, self.hash = seq, digest

    def _hash_in_gap(self, seq: int) -> bytes:
        """Hash of an entry that lies in quarantine; empty where it lies nowhere."""
        row = self._connection.execute(_GAP, (*self._names, seq)).fetchone()
        return b"" if row is None else bytes(row[0])

    def _copy(self, table: str, rows: Sequence[tuple[object, ...]]) -> None:
        names = ("site", "station", "epoch", "seq", *COLUMNS[table])
        statement = sql.SQL("COPY {} ({}) FROM STDIN (FORMAT BINARY)").format(
            sql.Identifier("centre", table), sql.SQL(", ").join(map(sql.Identifier, names))
        )
        with self._connection.cursor() as cursor, cursor.copy(statement) as copy:
            copy.set_types([TYPES.get(name, "text") for name in names])
            for row in rows:
                copy.write_row(row)
