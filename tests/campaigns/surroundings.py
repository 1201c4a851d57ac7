"""What surrounds a station goes wrong: a full disk, a locked record, a long reader, little memory.

`python -m tests.campaigns surroundings --full` runs each part at full length, the short form a few
seconds of each. Counted as faults: a bag the screen had shown and the record has not, a serial
twice, a gap, a bag taken while there is no room, something else than a bag that could not be
recorded then, a line that needs a restart, words that do not say what to do.
"""

import tempfile
from collections.abc import Callable
from pathlib import Path

from tests.campaigns.chain.mounts import own_mounts
from tests.campaigns.chain.nursery import Nursery
from tests.campaigns.chain.proof import Count

_TMPFS = "32m"
Say = Callable[[str], None]


def full_disk(full: bool, folder: Path, say: Say) -> Count:
    """A disk fills up to the last byte under a line, and is made free again."""
    count = Count()
    shell = own_mounts()
    if not shell:
        count.wrong("full disk: not run: needs unshare and the right to mount")
        return count
    mount = f"mount -t tmpfs -o size={_TMPFS} none {folder} &&"
    with Nursery(within=(*shell, mount)) as nursery:
        for number in range(10 if full else 1):
            nursery.ask("full_disk", folder / f"home-{number}", bags=20 if full else 2)
            _take(nursery, count, f"full disk {number + 1}", say)
    return count


def _take(nursery: Nursery, count: Count, where: str, say: Say) -> None:
    """Hear what one process counted."""
    heard = False
    for line in nursery.lines():
        what, _, words = line.partition(" ")
        if what == "counted":
            bags, lost, twice, gaps, took = words.split()
            count.acknowledged += int(bags)
            count.lost += int(lost)
            count.duplicates += int(twice)
            count.gaps += int(gaps)
            say(f"{where}: {bags} bags, told within {took} s")
            heard = True
        elif what == "levels":
            say(f"{where}: {words}")
        else:
            count.wrong(f"{where}: {line}")
    count.rounds += 1
    if nursery.ended or not heard:
        count.wrong(f"{where}: it ended with {nursery.ended}")


PARTS = (full_disk,)


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    faults: list[str] = []
    for part in PARTS:
        with tempfile.TemporaryDirectory(prefix="surroundings-") as folder:
            count = part(full, Path(folder), print)
        print(f"{part.__doc__} {count.told()}")
        faults += count.faults
    for fault in faults[:20]:
        print(fault)
    print(f"verdict: {len(faults)} faults")
    return len(faults)
