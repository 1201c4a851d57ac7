"""The contract of delivery, as SQL: where the centre stands, a piece more, nothing twice.

The centre's word counts: on every connection it is asked how far it has come, and the station goes
on from there, whatever it remembers. A piece is one transaction: its entries, those set apart, and
the watermark, which only moves from the entry in front of the piece. So the watermark never passes
a gap, and what it says is durable before the station believes it.

A piece is copied straight into the station's own part of the entries. Where something of it is
there already, which the watermark makes rare, or where the engine has no such part, it goes by
INSERT … ON CONFLICT DO NOTHING, and what is there is compared by its hash. Equal: it was delivered
before. Different: the other one stays, ours goes to quarantine, and nothing more of the epoch is
sent.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime

import psycopg
from psycopg import sql

from station.core.journal import GENESIS
from station.store.outlet import Sent
from station.sync.batch import Apart, Batch, copy_stream
from station.sync.connection import CentreConnection
from station.sync.errors import REFUSALS, TakenElsewhere, TwoRecords
from station.sync.founding import check_shape
from station.sync.schema import leaf

_PART = "SELECT to_regclass(%s) IS NOT NULL"
_COPY = sql.SQL("COPY {} FROM STDIN (FORMAT BINARY)")
_KEEP = (
    "INSERT INTO centre.entry SELECT %s, %s, %s, a.seq, a.kind, a.hash, a.canonical "
    "FROM unnest(%b::bigint[], %b::text[], %b::bytea[], %b::bytea[]) "
    "AS a (seq, kind, hash, canonical) ON CONFLICT DO NOTHING"
)
_THERE = (
    "SELECT seq, hash FROM centre.entry "
    "WHERE site = %s AND station = %s AND epoch = %s AND seq BETWEEN %s AND %s"
)
_SET_APART = (
    "INSERT INTO centre.quarantine VALUES (%s, %s, %s, %s, %s, %s, %s, clock_timestamp()) "
    "ON CONFLICT DO NOTHING"
)
_MOVE = (
    "UPDATE centre.watermark SET seq = %s, hash = %s "
    "WHERE site = %s AND station = %s AND epoch = %s AND seq = %s AND hash = %s"
)
OTHER_ENTRY = "the centre has another entry under this number"


@dataclass(frozen=True, slots=True)
class Mark:
    """How far the centre has come in an epoch: every entry up to ``seq``; ``hash`` is its hash."""

    seq: int = 0
    hash: bytes = GENESIS


@dataclass(frozen=True, slots=True)
class Heartbeat:
    """What a station says about itself.

    Args:
        epoch: its present one.
        head: its last entry.
        oldest: when the oldest entry that is not at the centre was made; None where all are.
        now: the station's own time.
        software: version of its program.
        words: what needs somebody; empty when nothing does.
    """

    epoch: int
    head: Mark
    oldest: datetime | None
    now: datetime
    software: str
    words: str


@dataclass(frozen=True, slots=True)
class Heard:
    """What the centre answers to a heartbeat.

    Args:
        other_epoch: another epoch under this station's name spoke after this one began; or None.
        ahead_s: seconds the station's clock is before the centre's.
        quarantined: entries of this station in quarantine that nobody has settled.
    """

    other_epoch: int | None
    ahead_s: float
    quarantined: int


class Delivery:
    """One station's way of sending on one connection.

    Args:
        connection: fresh.
        site, station: whose entries.
        wait_s: the longest one exchange may take.

    Raises:
        CentreGone: the centre did not answer.
        EnvironmentFault: the centre is of another shape or does not know the station.
    """

    def __init__(
        self, connection: CentreConnection, site: str, station: str, wait_s: float
    ) -> None:
        self.connection, self._wait_s = connection, wait_s
        self.names = (site, station)
        self._part = leaf(site, station)
        with connection.within(wait_s):
            check_shape(connection)
            row = connection.execute(_PART, (f"centre.{self._part}",)).fetchone()
        # An engine that lays its tables out by itself has no part for each station.
        self._first = self._add if row is not None and row[0] else self._keep

    def marks(self) -> dict[int, Mark]:
        """How far the centre has come, by epoch."""
        with self.connection.within(self._wait_s):
            rows = self.connection.execute(
                "SELECT epoch, seq, hash FROM centre.watermark WHERE site = %s AND station = %s",
                self.names,
            ).fetchall()
        return {epoch: Mark(seq, bytes(digest)) for epoch, seq, digest in rows}

    def begin(self, epoch: int) -> None:
        """Make an epoch known that the centre has not heard of."""
        with self.connection.within(self._wait_s):
            self.connection.execute(
                "INSERT INTO centre.watermark VALUES (%s, %s, %s, 0, %s) ON CONFLICT DO NOTHING",
                (*self.names, epoch, GENESIS),
            )

    def hash_at(self, epoch: int, seq: int) -> bytes | None:
        """Hash of an entry at the centre; None where it has none, or it is in quarantine."""
        with self.connection.within(self._wait_s):
            row = self.connection.execute(
                "SELECT hash FROM centre.entry WHERE site = %s AND station = %s AND epoch = %s "
                "AND seq = %s",
                (*self.names, epoch, seq),
            ).fetchone()
        return None if row is None else bytes(row[0])

    def send(self, epoch: int, batch: Batch) -> Mark:
        """Bring a piece to the centre; returns once it is durable there.

        Raises:
            CentreGone: whether it is there is not known.
            TakenElsewhere: the centre does not stand in front of this piece any more.
            TwoRecords: it holds another entry under one of these numbers.
        """
        try:
            try:
                self._send(epoch, batch, batch.good, batch.apart, self._first)
            except psycopg.errors.UniqueViolation:  # some of it is there already
                self._send(epoch, batch, batch.good, batch.apart, self._keep)
        except REFUSALS as refused:
            good, apart = self._sift(epoch, batch.good, refused)
            apart = sorted((*batch.apart, *apart), key=lambda one: one.entry.seq)
            self._send(epoch, batch, good, apart, self._keep)
        return Mark(batch.last, batch.hash)

    def set_apart(self, epoch: int, entry: Sent, why: str) -> None:
        """Put one entry into quarantine; nothing else changes."""
        with self.connection.within(self._wait_s), self.connection.transaction():
            self._quarantine(epoch, Apart(entry, why))

    def beat(self, beat: Heartbeat) -> Heard:
        """Tell the centre where the station stands, and hear what it knows."""
        with self.connection.within(self._wait_s), self.connection.transaction():
            told = (beat.epoch, beat.head.seq, beat.head.hash, beat.oldest, beat.now)
            last = self.connection.execute(
                "SELECT epoch, head_seq FROM centre.register WHERE site = %s AND station = %s",
                self.names,
            ).fetchone()
            self.connection.execute(
                "INSERT INTO centre.register VALUES (%s, %s, %s, %s, %s, %s, %s, "
                "clock_timestamp(), %s, %s) ON CONFLICT DO NOTHING",
                (*self.names, *told, beat.software, beat.words),
            )
            self.connection.execute(
                "UPDATE centre.register SET epoch = %s, head_seq = %s, head_hash = %s, "
                "oldest_unsent = %s, station_utc = %s, contact = clock_timestamp(), "
                "software = %s, words = %s WHERE site = %s AND station = %s",
                (*told, beat.software, beat.words, *self.names),
            )
            row = self.connection.execute(
                "SELECT extract(epoch FROM %s - clock_timestamp())::float8, (SELECT count(*) FROM "
                "centre.quarantine LEFT JOIN centre.settled s USING (site, station, epoch, seq, "
                "hash) WHERE site = %s AND station = %s AND s.who IS NULL)",
                (beat.now, *self.names),
            ).fetchone()
        assert row is not None
        other = None if last is None or last[0] == beat.epoch else last[0]
        return Heard(other, float(row[0]), row[1])

    # --- inside one transaction ---------------------------------------------------------------

    def _send(
        self,
        epoch: int,
        batch: Batch,
        good: Sequence[Sent],
        apart: Sequence[Apart],
        bring: Callable[[int, Sequence[Sent]], None],
    ) -> None:
        connection = self.connection
        with connection.within(self._wait_s), connection.transaction():
            if good:
                bring(epoch, good)
            for one in apart:
                self._quarantine(epoch, one)
            place = (*self.names, epoch, batch.after, batch.before)
            if connection.execute(_MOVE, (batch.last, batch.hash, *place)).rowcount != 1:
                raise TakenElsewhere(f"the centre does not stand at entry {batch.after} any more")

    def _add(self, epoch: int, good: Sequence[Sent]) -> None:
        """Straight into the station's own part; refused where one of them is there."""
        copying = _COPY.format(sql.Identifier("centre", self._part))
        with self.connection.cursor() as cursor, cursor.copy(copying) as copy:
            copy.write(copy_stream(self.names, epoch, good))

    def _keep(self, epoch: int, good: Sequence[Sent]) -> None:
        """Keep those that are not there yet, and compare the others."""
        columns = [list(column) for column in zip(*good, strict=True)]
        if self.connection.execute(_KEEP, (*self.names, epoch, *columns)).rowcount == len(good):
            return
        key = (*self.names, epoch, good[0].seq, good[-1].seq)
        there = {seq: bytes(digest) for seq, digest in self.connection.execute(_THERE, key)}
        for entry in good:
            if there.get(entry.seq) != entry.hash:
                raise TwoRecords(f"{OTHER_ENTRY}: {entry.seq}", entry.seq)

    def _quarantine(self, epoch: int, one: Apart) -> None:
        entry = one.entry
        self.connection.execute(
            _SET_APART,
            (*self.names, epoch, entry.seq, entry.hash, entry.canonical, one.why),
        )

    def _sift(
        self, epoch: int, entries: Sequence[Sent], refused: psycopg.Error
    ) -> tuple[list[Sent], list[Apart]]:
        """Find the entries the centre refuses, by halves; nothing is kept by this."""
        if len(entries) == 1:
            words = str(refused).splitlines()[0]
            return [], [Apart(entries[0], f"the centre refused it: {words}")]
        good: list[Sent] = []
        apart: list[Apart] = []
        middle = len(entries) // 2
        for half in (entries[:middle], entries[middle:]):
            try:
                with (
                    self.connection.within(self._wait_s),
                    self.connection.transaction(force_rollback=True),
                ):
                    self._keep(epoch, half)
                good += half
            except REFUSALS as again:
                fine, bad = self._sift(epoch, half, again)
                good += fine
                apart += bad
        return good, apart
