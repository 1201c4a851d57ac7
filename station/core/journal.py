"""Journal entries: their canonical bytes and the chain of hashes over them.

An entry's hash is SHA-256(0x00 ‖ hash before ‖ canonical bytes); the leading zero byte is the leaf
prefix of RFC 9162 section 2.1.1. The canonical form follows RFC 8785 for the values used here:
object members sorted (their names are ASCII, so every order of sorting is the same), no white
space, UTF-8, strings and whole numbers up to 2**53 - 1 only. A chain makes a change
evident; it does not prevent one, and who can rewrite the whole file can rewrite the chain, so its
head must be kept elsewhere too.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum

from station.core.pack import Moment

Value = str | int | bool | None | list["Value"] | dict[str, "Value"]

GENESIS = bytes(32)
"""Stands before the first entry of an epoch."""

_MOST = 2**53 - 1
"""Largest whole number that RFC 8785 (section 3.1, by way of RFC 7493) keeps exactly."""
_WRITE = json.JSONEncoder(sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode


class JournalError(ValueError):
    """A value the journal cannot keep exactly."""


class EntryKind(StrEnum):
    """What an entry records."""

    START = "start"
    STOP = "stop"
    LOT = "lot"
    RUN = "run"
    RUN_END = "run end"
    PACK = "pack"
    LABEL = "label"
    EVENT = "event"
    DELIVERY = "delivery"
    LOT_MOVE = "lot move"
    SCALE_CHECK = "scale check"
    SUSPECT = "suspect window"
    TARE_STUDY = "tare study"
    EMPTY_BAG = "empty bag"
    QA_CHECK = "qa check"
    HOLD = "hold"
    RELEASE = "release"
    DISPOSITION = "disposition"
    ROLL = "label roll"
    FIRST_OFF = "first off"
    SCAN_BACK = "scan back"
    REPRINT = "reprint"
    GATE = "gate"
    PAUSE = "pause"
    CALL = "call"
    PROPOSAL = "target proposal"
    SETTING = "setting"
    PERSON = "person"
    CLOCK = "clock"
    STATION_KEY = "station key"
    HEAD = "head"
    BACKUP = "backup"
    RESTORE = "restore"
    PURGE = "purge"
    CASE = "case"
    PALLET = "pallet"
    SHIPMENT = "shipment"
    CORRECTION = "correction"
    UNIT_LABEL = "unit label"
    TICKET = "reject ticket"
    BIN_COUNT = "bin count"
    REVIEW = "review"
    REFERENCE = "reference test"
    DISK = "disk"
    ALARM = "alarm"


@dataclass(frozen=True, slots=True)
class Entry:
    """One entry as it is hashed.

    Args:
        site, station, epoch, seq: its name; ``seq`` counts from 1 without a gap in an epoch.
        kind: what it records.
        at: when, by every clock.
        who: id of the person, or ``station``.
        body: the facts; strings, whole numbers, truth values, lists and objects of them.
    """

    site: str
    station: str
    epoch: int
    seq: int
    kind: EntryKind
    at: Moment
    who: str
    body: Mapping[str, Value]


@dataclass(frozen=True, slots=True)
class Stored:
    """An entry as read back from a store."""

    seq: int
    canonical: bytes
    hash: bytes


@dataclass(frozen=True, slots=True)
class Break:
    """The first place where a chain does not hold."""

    seq: int
    why: str


def canonical(entry: Entry) -> bytes:
    """Return the one byte form of an entry.

    Raises:
        JournalError: a float, a number beyond 2**53 - 1, a name that is not ASCII, half a
            character or another type stands in the body; the message says where.
    """
    body = dict(entry.body)
    _check(body)
    whole = {
        "v": 1,
        "site": entry.site,
        "station": entry.station,
        "epoch": str(entry.epoch),  # beyond 2**53, where RFC 8785 numbers end
        "seq": entry.seq,
        "kind": str(entry.kind),
        "utc": entry.at.utc.isoformat(timespec="microseconds"),
        "offset": entry.at.offset_minutes,
        "zone": entry.at.zone,
        "monotonic": str(entry.at.monotonic_ns),
        "who": entry.who,
        "body": body,
    }
    try:
        return _WRITE(whole).encode()
    except UnicodeEncodeError as half:
        text = half.object[max(0, half.start - 20) : half.end]
        raise JournalError(f"half a surrogate pair stands in a text: {text!r}") from half


def written(value: Value) -> str:
    """Return the canonical text of one value of a body.

    Raises:
        JournalError: the journal cannot keep it exactly.
    """
    if type(value) is int and -_MOST <= value <= _MOST:
        return str(value)
    _check(value)
    return _WRITE(value)


def entry_hash(before: bytes, canonical_bytes: bytes) -> bytes:
    """Return the 32-byte hash of an entry that follows the entry with hash ``before``."""
    return hashlib.sha256(b"\x00" + before + canonical_bytes).digest()


def first_break(entries: Iterable[Stored], before: bytes = GENESIS, seq: int = 1) -> Break | None:
    """Return the first entry that does not follow from the one before, or None.

    Args:
        entries: in order of their seq.
        before: hash of the entry before the first one given.
        seq: the seq the first one must have.
    """
    for stored in entries:
        if stored.seq > seq:
            return Break(seq, f"entry {seq} is missing: entry {stored.seq} stands in its place")
        if stored.seq < seq:
            return Break(stored.seq, f"entry {stored.seq} was added: it stands after {seq - 1}")
        if entry_hash(before, stored.canonical) != stored.hash:
            return Break(seq, f"entry {seq} was changed, or one before it was: its hash differs")
        before, seq = stored.hash, seq + 1
    return None


def _check(value: object) -> None:
    fault = _fault(value)
    if fault is not None:
        raise JournalError(f"body{fault[0]} {fault[1]}")


def _fault(value: object) -> tuple[str, str] | None:
    """Where in a value, and why, the journal cannot keep it; None when it can.

    Every bag passes here, so the exact types come first and a path is built only for a fault.
    """
    kind = type(value)
    if kind is str or value is None or kind is bool:
        return None
    if isinstance(value, int):
        return None if -_MOST <= value <= _MOST else ("", "is beyond 2**53 - 1: give it as text")
    if isinstance(value, dict):
        for name, inner in value.items():
            if not isinstance(name, str) or not name.isascii():
                return "", f"has a name that is not plain ASCII text: {name!r}"
            if type(inner) is not str and (found := _fault(inner)) is not None:
                return f".{name}{found[0]}", found[1]
        return None
    if isinstance(value, list | tuple):
        for index, inner in enumerate(value):
            if type(inner) is not str and (found := _fault(inner)) is not None:
                return f"[{index}]{found[0]}", found[1]
        return None
    if isinstance(value, float):
        return "", "is a binary float: give digits as text"
    if isinstance(value, str):
        return None
    return "", f"is of type {kind.__name__}: allowed are text, whole numbers, lists and objects"
