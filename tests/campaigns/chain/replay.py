"""What a disk may hold after a power cut: what was synced, and any part of what was only written.

Names are taken as durable at once: the loss of a folder's entry is not modelled. Of the writes
since a file's last sync each may be there or not, and the last of them may be torn at a sector.
"""

import random
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

_SECTOR = 512


@dataclass(frozen=True)
class Event:
    """One line of the shim's log: Write, Sync, Truncate, Unlink or Rename."""

    what: str
    name: str
    offset: int
    data: bytes


@dataclass
class _File:
    durable: bytearray = field(default_factory=bytearray)
    waiting: list[Event] = field(default_factory=list)


def events_of(log: Path) -> Iterator[Event]:
    """Read a log."""
    with log.open("rb") as file:
        while head := file.readline():
            what, name, offset, length = head.decode().split()
            yield Event(what, name, int(offset), file.read(int(length)))


class Disk:
    """Files in one folder, as they would be found after a cut."""

    def __init__(self) -> None:
        self._files: dict[str, _File] = {}

    def take(self, event: Event) -> None:
        """Take in the next event."""
        if event.what == "U":
            self._files.pop(event.name, None)
        elif event.what == "R":
            self._files[event.data.decode()] = self._files.pop(event.name, _File())
        else:
            file = self._files.setdefault(event.name, _File())
            if event.what == "S":
                for waiting in file.waiting:
                    _apply(file.durable, waiting, len(waiting.data))
                file.waiting.clear()
            else:
                file.waiting.append(event)

    def cut(self, to: Path, chance: random.Random) -> None:
        """Write down what is there when the power goes now."""
        to.mkdir(parents=True)
        for name, file in self._files.items():
            if name.endswith(("-shm", ".lock")):
                continue  # made anew at each start
            kept = bytearray(file.durable)
            share = chance.random()
            for event in file.waiting:
                if chance.random() < share:
                    torn = event is file.waiting[-1] and chance.random() < 0.5
                    sectors = len(event.data) // _SECTOR
                    _apply(kept, event, sectors // 2 * _SECTOR if torn else len(event.data))
            path = to / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(kept)

    def live(self, name: str) -> bytes:
        """All that was written to a file, synced or not."""
        whole = bytearray(self._files[name].durable) if name in self._files else bytearray()
        for event in self._files[name].waiting if name in self._files else ():
            _apply(whole, event, len(event.data))
        return bytes(whole)


def _apply(content: bytearray, event: Event, length: int) -> None:
    if event.what == "T":
        del content[event.offset :]
        content.extend(bytes(event.offset - len(content)))
        return
    ends = event.offset + length
    if len(content) < ends:
        content.extend(bytes(ends - len(content)))
    content[event.offset : ends] = event.data[:length]
