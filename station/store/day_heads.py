"""Heads of the journal, one for each day: made by the writer, signed where there is a key.

The first entry of a new day on the plant's calendar is preceded by a head over all entries before
it, in the same commit; a station that stops with a key signs once more. A head is an entry like any
other (kind *head*), so it lies under the next one.
"""

from __future__ import annotations

from contextlib import suppress
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path

from sqlalchemy import Connection, select

from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.pack import Moment
from station.core.tree_head import SignedHead, TreeHead, key_id
from station.errors import EnvironmentFault, StationError
from station.store.durable import write_whole
from station.store.facts import fact_record, read_facts
from station.store.journal import Head, read_entry
from station.store.signing import StationKey, make_key, read_key
from station.store.tables import fact, journal
from station.store.tree import EpochTree

_NEVER = datetime.min.replace(tzinfo=UTC)
NO_KEY = "no key file is named in the settings"


class DayHeads:
    """Makes heads for the writer, inside its transactions.

    Args:
        site: short code of the packhouse.
        station: short code of the station.
        key: file of the station's key; made at the first start; None for none.
    """

    def __init__(self, site: str, station: str, key: Path | None) -> None:
        self._site, self._station, self._path = site, station, key
        self._epoch = 0
        self._key: StationKey | None = None
        self._day: date | None = None
        self._pending: date | None = None
        self._span = (date.min, 0, _NEVER, _NEVER)
        self._made: SignedHead | None = None
        self.key_made: Path | None = None
        self.unsigned = NO_KEY
        """Why heads are not signed, in words for a person; empty where they are."""

    @property
    def signs(self) -> bool:
        """Whether heads are signed."""
        return self._key is not None

    def opened(self, connection: Connection, epoch: int, head: Head) -> None:
        """Take note of where the journal stands, before its first new entry.

        Raises:
            EnvironmentFault: the journal is not the one of the head kept beside the key.
        """
        self._epoch = epoch
        witness = None if self._path is None else read_witness(self._path)
        if witness is not None and witness.head.epoch == epoch:
            self._compare(connection, head, witness)
        last = connection.execute(
            select(journal.c.canonical).where(journal.c.id == head.row)
        ).scalar_one_or_none()
        if last is not None and head.seq:
            self._day = self._pending = local_day(read_entry(last).at)

    def take_key(self, connection: Connection, at: Moment) -> Fact | None:
        """Read the key, or make it where the record knows none; returns what to record of it.

        A key that is missing or another one than the record knows is not used; packing goes on,
        heads stay unsigned, and :attr:`unsigned` says why.
        """
        if self._path is None:
            return None
        known = known_key(connection)
        try:
            if self._path.exists():
                key = read_key(self._path)
            elif known is None:
                key = make_key(self._path)
                self.key_made = self._path
            else:
                self.unsigned = (
                    f"the station key {key_id(known)} is missing: bring {self._path} back from "
                    "where it was put for safe keeping, or run `station journal key --new`"
                )
                return None
        except StationError as fault:
            self.unsigned = str(fault)
            return None
        if known is not None and key.public != known:
            self.unsigned = (
                f"{self._path} holds the key {key.id} and this record's is {key_id(known)}: bring "
                "the right file back, or run `station journal key --new`"
            )
            return None
        self._key, self.unsigned = key, ""
        return None if known is not None else key_fact(new_uid(at), key.public, "taken", "")

    def begin(self) -> None:
        """A transaction begins."""
        self._pending, self._made = self._day, None

    def committed(self) -> None:
        """It is durable: a head made in it is also kept beside the key."""
        self._day = self._pending
        if self._made is not None and self._path is not None:
            write_witness(self._path, self._made)
            self._made = None

    def due(self, connection: Connection, head: Head, at: Moment) -> Fact | None:
        """The head of the day that is over, before an entry of ``at``; None on the same day.

        Args:
            connection: inside the transaction.
            head: the last entry so far, of this transaction too.
            at: when the next entry is made.
        """
        day, offset, since, until = self._span
        if day == self._pending and offset == at.offset_minutes and since <= at.utc < until:
            return None  # the day of the entry before, told quickly: every bag passes here
        day, over = local_day(at), self._pending
        self._pending = day
        since = datetime.combine(day, time(), UTC) - timedelta(minutes=at.offset_minutes)
        self._span = (day, at.offset_minutes, since, since + timedelta(days=1))
        if over is None or over == day:
            return None
        return self.sign(connection, head, at, over)

    def sign(self, connection: Connection, head: Head, at: Moment, day: date | None = None) -> Fact:
        """Return the head over all entries so far, signed where there is a key."""
        tree = EpochTree(connection, self._epoch, head.row - head.seq + 1)
        made = TreeHead(self._site, self._station, self._epoch, head.seq, tree.root(head.seq))
        when = at.utc.astimezone(UTC).replace(microsecond=0)
        signed = None
        if self._key is not None:
            signature = self._key.sign(made.statement(when))
            signed = self._made = SignedHead(made, when, self._key.public, signature)
        return head_fact(new_uid(at), day or local_day(at), made, signed, self.unsigned)

    def _compare(self, connection: Connection, head: Head, witness: SignedHead) -> None:
        size = witness.head.size
        if size <= head.seq:
            tree = EpochTree(connection, self._epoch, head.row - head.seq + 1)
            if tree.root(size) == witness.head.root:
                return
        raise EnvironmentFault(
            f"the journal is not the one whose head is kept beside the station key: entry {size}",
            f"it ends at entry {head.seq}; entries are missing or were changed, or an older copy "
            "was put here: bring the newest station.sqlite (with its -wal file) back, or restore "
            "a backup with `station restore`, which says so in the record",
        )


def head_fact(
    uid: str, day: date, head: TreeHead, signed: SignedHead | None, unsigned: str
) -> Fact:
    """The fact of a head: about the day it closes."""
    return Fact(
        EntryKind.HEAD,
        uid,
        day.isoformat(),
        "signed" if signed else "not signed",
        details={
            "size": head.size,
            "root": head.root.hex(),
            "words": head.words,
            "signed": signed.text() if signed else None,
            "why": unsigned,
        },
    )


def key_fact(uid: str, public: bytes, how: str, why: str) -> Fact:
    """The fact that heads are signed with a key from now on."""
    details = {"public": public.hex(), "why": why}
    return Fact(EntryKind.STATION_KEY, uid, key_id(public), how, details=dict(details))


def known_key(connection: Connection) -> bytes | None:
    """Return the public key the record's heads are signed with, or None before the first."""
    newest = (
        select(journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .where(fact.c.kind == EntryKind.STATION_KEY)
        .order_by(fact.c.id.desc())
        .limit(1)
    )
    found = read_facts(connection, newest)
    return public_of(found[0].fact) if found else None


def public_of(taken: Fact) -> bytes:
    """Return the key of such a fact."""
    return bytes.fromhex(str(taken.details["public"]))


def newest_head(connection: Connection) -> tuple[Fact, int] | None:
    """Return the newest signed head with the row of its entry, or None."""
    newest = (
        select(journal.c.id, journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .where(fact.c.kind == EntryKind.HEAD, fact.c.result == "signed")
        .order_by(fact.c.at.desc(), fact.c.id.desc())
        .limit(1)
    )
    found = connection.execute(newest).one_or_none()
    return None if found is None else (fact_record(read_entry(found.canonical)).fact, found.id)


def signed_head_of(connection: Connection, epoch: int) -> SignedHead | None:
    """Return the newest signed head of an epoch, or None.

    Raises:
        JournalError: it was changed.
    """
    newest = (
        select(journal.c.canonical)
        .join(fact, fact.c.entry_id == journal.c.id)
        .where(fact.c.kind == EntryKind.HEAD, fact.c.result == "signed", journal.c.epoch == epoch)
        .order_by(fact.c.id.desc())
        .limit(1)
    )
    found = read_facts(connection, newest)
    return signed_of(found[0].fact) if found else None


def signed_of(head: Fact) -> SignedHead | None:
    """Return the signed head of such a fact, or None where it is not signed.

    Raises:
        HeadError: what stands in its place is none.
    """
    text = head.details["signed"]
    return None if text is None else SignedHead.parse(str(text))


def local_day(moment: Moment) -> date:
    """The day of a moment on the plant's calendar."""
    return (moment.utc + timedelta(minutes=moment.offset_minutes)).date()


def write_witness(key: Path, head: SignedHead) -> None:
    """Keep a head beside the key, best effort: an older one stays a true statement."""
    with suppress(OSError):
        write_whole(witness_of(key), f"{head.text()}\n".encode("ascii"))


def read_witness(key: Path) -> SignedHead | None:
    """Return the head kept last beside a key, or None when there is none that can be read."""
    try:
        return SignedHead.parse(witness_of(key).read_text(encoding="ascii"))
    except (OSError, ValueError):
        return None


def witness_of(key: Path) -> Path:
    """The file of the head beside a key."""
    return key.with_name(f"{key.name}.head")
