"""The last head the station saw, kept beside the database.

A chain of hashes does not show that its end was cut off, nor that an older copy of the whole file
was put in its place. So the head is also written to a small file of its own from time to time; a
journal that ends before it has lost entries. A second file names the last entry of each commit; it
is written in place and not synced, so that it costs nothing, and shows a log that was taken away
from beside the database. Whoever can write all files can still deceive: the head belongs on paper
and at the centre too.
"""

from __future__ import annotations

import json
from contextlib import suppress
from dataclasses import dataclass
from io import FileIO
from pathlib import Path
from zlib import crc32

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


class LastEntry:
    """Names the last entry that was acknowledged; after a power cut it may name an older one.

    Args:
        home: the station's folder.
    """

    def __init__(self, home: Path) -> None:
        self._file: FileIO | None = None
        with suppress(OSError):
            path = _last_path(home)
            path.touch()
            self._file = FileIO(path, "r+")

    def note(self, epoch: int, seq: int, digest: bytes) -> None:
        """Write it down, best effort, in the place of the one before."""
        if self._file is not None:
            line = f"{epoch:019d} {seq:012d} {digest.hex()}".encode("ascii")
            try:
                self._file.seek(0)
                self._file.write(line + b" %08x\n" % crc32(line))
            except OSError:
                return

    def close(self) -> None:
        """Let go of the file."""
        if self._file is not None:
            self._file.close()


def read_head(home: Path) -> SeenHead | None:
    """Return the newest head written down, or None when there is none that can be read."""
    kept, last = _kept(home), _last(home)
    if kept is None or last is None:
        return kept or last
    return last if last.epoch == kept.epoch and last.seq > kept.seq else kept


def _kept(home: Path) -> SeenHead | None:
    try:
        found = json.loads(_path(home).read_text(encoding="ascii"))
        return SeenHead(int(found["epoch"]), int(found["seq"]), str(found["hash"]))
    except (OSError, ValueError, KeyError, TypeError):
        return None


def _last(home: Path) -> SeenHead | None:
    try:
        line, _, check = _last_path(home).read_bytes().rstrip().rpartition(b" ")
        epoch, seq, digest = line.decode("ascii").split(" ")
        return SeenHead(int(epoch), int(seq), digest) if int(check, 16) == crc32(line) else None
    except (OSError, ValueError):
        return None


def _path(home: Path) -> Path:
    return home / "station.head"


def _last_path(home: Path) -> Path:
    return home / "station.last"
