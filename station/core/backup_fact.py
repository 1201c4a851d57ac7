"""A backup as the record keeps it: made where and up to which entry, or why none was made."""

from __future__ import annotations

from station.core.facts import Fact
from station.core.journal import EntryKind, Value

MADE, FAILED = "made", "failed"


def made_fact(uid: str, name: str, seq: int, head: str, *, same_disk: bool) -> Fact:
    """The fact of a backup that was checked on its medium.

    Args:
        uid: of the fact.
        name: of the file.
        seq: number of its last entry.
        head: hash of that entry, 64 hex digits.
        same_disk: it lies on the disk of the record.
    """
    details: dict[str, Value] = {"seq": seq, "hash": head, "same_disk": same_disk}
    return Fact(EntryKind.BACKUP, uid, name, MADE, details=details)


def failed_fact(uid: str, folder: str, why: str) -> Fact:
    """The fact that the station could not make a backup."""
    return Fact(EntryKind.BACKUP, uid, folder, FAILED, details={"why": why})
