"""What surrounds a station goes wrong: a full disk, a locked record, a long reader, little memory.

`python -m tests.campaigns surroundings --full` runs each part at full length (a record locked for
30 seconds, a reader of ten minutes, a backup every five minutes for an hour), the short form some
seconds of each. Needs a C compiler and the right to mount. Counted as faults: a bag the screen had
shown and the record has not, a serial twice, a gap, a label without a record, a bag taken while
there is no room, something else than a bag that could not be recorded then, a line that needs a
restart where it needs none, words that do not say what to do, a log that goes on growing after its
reader has left.
"""

import tempfile
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

from tests.campaigns.chain.hindered import OUT
from tests.campaigns.chain.mounts import own_mounts
from tests.campaigns.chain.nursery import PATIENCE_S, Nursery
from tests.campaigns.chain.proof import Count, check, check_whole
from tests.campaigns.chain.shim import compiled

SMALL = "32m"
MEMORY_S, SHORT_MEMORY_S = 6.0, 2.0
"""A station is watched for so long once its memory has run out."""


class Part:
    """One kind of surroundings, in processes of their own.

    Args:
        nursery: lends them.
        folder: takes the records.
        full: at full length.
    """

    def __init__(self, nursery: Nursery, folder: Path, full: bool) -> None:
        self.nursery, self.folder, self.full = nursery, folder, full
        self.count = Count()

    def once(self, work: str, home: Path, rests_s: float = 0.0, **options: object) -> None:
        """Let a process work, which rests for so long in all, and take in what it counted."""
        self.nursery.ask(work, home, **options)
        where, heard, count = f"{work}, {home.name}", False, self.count
        for line in self.nursery.lines(PATIENCE_S + 2 * rests_s):
            what, _, words = line.partition(" ")
            if what == "counted":
                bags, lost, twice, gaps, took = words.split()
                count.acknowledged += int(bags)
                count.lost += int(lost)
                count.duplicates += int(twice)
                count.gaps += int(gaps)
                print(f"{where}: {bags} bags, told within {took} s", flush=True)
                heard = True
            elif what == "told":
                print(f"{where}: {words}", flush=True)
            else:
                count.wrong(f"{where}: {line}")
        count.rounds += 1
        if self.nursery.ended or not heard:
            count.wrong(f"{where}: it ended with {self.nursery.ended}")


def full_disk(part: Part) -> None:
    """A disk fills up to the last byte under a line, and is made free again:"""
    for number in range(10 if part.full else 1):
        bags = 20 if part.full else 1
        part.once("full_disk", part.folder / "small" / f"home-{number}", bags=bags)


def read_only(part: Part) -> None:
    """A disk turns read-only under a line, and can be written again at the next start:"""
    for number in range(10 if part.full else 1):
        part.once("read_only", part.folder / f"read-only-{number}")


def locked(part: Part) -> None:
    """Another program locks the record:"""
    seconds, busy_ms = (30.0, 5_000) if part.full else (0.5, 200)
    part.once("locked", part.folder / "locked", seconds, seconds=seconds, busy_ms=busy_ms)


def long_reader(part: Part) -> None:
    """Another program reads one view of the record for long:"""
    bags, pause = (1_200, 0.5) if part.full else (70, 0.0)
    part.once("long_reader", part.folder / "reader", bags * pause, bags=bags, pause=pause)


def backups(part: Part) -> None:
    """Backups while bags are packed:"""
    count, pause = (12, 300.0) if part.full else (1, 0.0)
    part.once("backups", part.folder / "backed", count * pause, count=count, pause=pause)


def little_memory(part: Part) -> None:
    """Memory runs out anywhere in the chain:"""
    for left in range(1, 61, 2) if part.full else (24,):
        home = part.folder / f"memory-{left}"
        where = f"{left} MiB left"
        part.nursery.ask("little_memory", home, left_mib=left)
        heard = _until_out_of_memory(part.nursery, MEMORY_S if part.full else SHORT_MEMORY_S)
        serials = [line.split()[1] for line in heard if line.startswith("bag ")]
        if heard[-1] == "ended 0" and OUT not in heard:
            part.count.wrong(f"{where}: memory did not run out")
        part.count.rounds += 1
        part.count.acknowledged += len(serials)
        found = check(home, serials, part.count, where)
        check_whole(home, part.count, where)
        if {path.stem for path in (home / "labels").glob("*.pdf")} - found.keys():
            part.count.wrong(f"{where}: labels without a record")


def _until_out_of_memory(nursery: Nursery, watched_s: float) -> list[str]:
    """What a station said until it ended or, a while after its memory ran out, was killed."""
    heard, ends = [nursery.line()], float("inf")
    while not heard[-1].startswith("ended "):
        if heard[-1] == OUT:
            ends = time.monotonic() + watched_s
        try:
            heard.append(nursery.line(min(PATIENCE_S, ends - time.monotonic())))
        except TimeoutError:
            with suppress(ProcessLookupError):
                nursery.kill()
            heard += [*nursery.lines(), "ended "]
    return heard


PARTS: tuple[Callable[[Part], None], ...] = (
    full_disk, read_only, locked, long_reader, little_memory, backups,
)  # fmt: skip


def surround(full: bool, folder: Path) -> list[str]:
    """Go through all parts; returns what was wrong."""
    shell, library = own_mounts(), compiled(folder)
    if not shell or library is None:
        return ["not run: needs a C compiler, unshare and the right to mount"]
    (folder / "small").mkdir()
    mount = f"mount -t tmpfs -o size={SMALL} none {folder / 'small'} &&"
    faults: list[str] = []
    with Nursery(library, within=(*shell, mount)) as nursery:
        for way in PARTS:
            part = Part(nursery, folder, full)
            way(part)
            print(f"{way.__doc__} {part.count.told()}", flush=True)
            faults += part.count.faults
    return faults


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    with tempfile.TemporaryDirectory(prefix="surroundings-") as folder:
        faults = surround(full, Path(folder))
    for fault in faults[:20]:
        print(fault)
    print(f"verdict: {len(faults)} faults")
    return len(faults)
