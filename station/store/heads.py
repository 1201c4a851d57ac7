"""The last head the station saw, kept beside the database.

A chain of hashes does not show that its end was cut off, nor that an older copy of the whole file
was put in its place. So the head is also written to a small file of its own from time to time; a
journal that ends before it has lost entries. Whoever can write both files can still deceive: the
head belongs on paper and at the centre too.
"""

from __future__ import annotations

import json
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from station.store.durable import write_whole


@dataclass(frozen=True, slots=True)
class SeenHead:
    """A head as written down: ``hash`` is 64 hex digits."""

    epoch: int
    seq: int
    hash: str


def write_head(home: Path, head: SeenHead) -> None:
    """Write the head down, best effort: an older one stays a true statement."""
    text = json.dumps({"epoch": str(head.epoch), "seq": head.seq, "hash": head.hash})
    with suppress(OSError):
        write_whole(_path(home), f"{text}\n".encode("ascii"))


def read_head(home: Path) -> SeenHead | None:
    """Return the head written last, or None when there is none that can be read."""
    try:
        found = json.loads(_path(home).read_text(encoding="ascii"))
        return SeenHead(int(found["epoch"]), int(found["seq"]), str(found["hash"]))
    except (OSError, ValueError, KeyError, TypeError):
        return None


def _path(home: Path) -> Path:
    return home / "station.head"
