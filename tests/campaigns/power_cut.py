"""The power cut at any point of what was written: the disk keeps what was synced, the rest maybe.

`python -m tests.campaigns power-cut --full` cuts 400 times, the short form 10 times, each with the
control that must fail: `synchronous=NORMAL` loses bags at the same cuts, so the campaign can see. A
shim written in C logs each write and sync of a packing process; a disk is then rebuilt for a cut
between any two of them. Needs a C compiler, and says so where there is none. Counted as faults: an
acknowledged bag that is not in the rebuilt record, a record that does not verify, a control without
loss.
"""

import random
import shutil
import tempfile
from collections.abc import Callable
from pathlib import Path

from station.app.places import demo_settings
from station.config.load import load_settings
from station.errors import StationError
from station.store.writer import StationStore
from tests.campaigns.chain.drafts import CLOCK
from tests.campaigns.chain.nursery import Nursery
from tests.campaigns.chain.proof import Count, bags_of, check_whole
from tests.campaigns.chain.replay import Disk, events_of
from tests.campaigns.chain.shim import compiled

SHORT, FULL = 10, 400
SEED = 3
BAGS, FOLD_EVERY = 60, 25


def cut_often(cuts: int, folder: Path, say: Callable[[str], None]) -> Count:
    """Cut so many times with full and with normal sync; return what was counted with full."""
    library = compiled(folder)
    if library is None:
        say("no C compiler is here: the power cut cannot be played; install gcc")
        return Count(faults=["not run: no C compiler"])
    counts = {}
    with Nursery(library) as nursery:
        for mode in ("FULL", "NORMAL"):
            home, log = folder / mode, folder / f"{mode}.log"
            words = {"count": BAGS, "log": str(log), "synchronous": mode}
            nursery.ask("bags", home, **words, fold_every=FOLD_EVERY)
            said = list(nursery.lines())
            counts[mode] = _replay(log, cuts, folder / "after", full=mode == "FULL")
            counts[mode].faults += said
            if counts[mode].rounds < cuts:
                counts[mode].wrong(f"{mode}: only {counts[mode].rounds} of {cuts} cuts were played")
            told = counts[mode]
            losing = f"{told.strangers} cuts with loss"
            say(f"seed {SEED}, synchronous={mode}: {told.rounds} cuts, {told.lost} lost, {losing}")
    if not counts["NORMAL"].lost:
        counts["FULL"].wrong("the control lost nothing: the campaign cannot see a loss")
    return counts["FULL"]


def _replay(log: Path, cuts: int, after: Path, *, full: bool) -> Count:
    chance = random.Random(SEED)
    events = list(events_of(log))
    first = next(n for n, event in enumerate(events) if event.name == "acknowledged")
    places = sorted(chance.sample(range(first, len(events)), min(cuts, len(events) - first)))
    disk, count, done = Disk(), Count(), 0
    for place in places:
        for event in events[done:place]:
            disk.take(event)
        done = place
        acknowledged = disk.live("acknowledged").decode().split()
        disk.cut(after, chance)
        try:
            _look(after, acknowledged, count, f"cut {place} of {len(events)}", full=full)
        finally:
            shutil.rmtree(after)
        count.rounds += 1
    return count


def _look(home: Path, acknowledged: list[str], count: Count, where: str, *, full: bool) -> None:
    settings = load_settings(demo_settings())
    try:
        found = bags_of(home)
        if full:  # it must also go on
            StationStore.open(home, settings.site, settings.station, CLOCK).close()
            check_whole(home, count, where)
    except StationError as fault:
        count.wrong(f"{where}: {fault}")
        found = {}
    lost = [serial for serial in acknowledged if serial not in found]
    count.lost += len(lost)
    count.strangers += bool(lost)
    if lost and full:
        count.wrong(f"{where}: lost {lost}")


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    with tempfile.TemporaryDirectory(prefix="power-cut-") as folder:
        count = cut_often(FULL if full else SHORT, Path(folder), print)
    for fault in count.faults[:20]:
        print(fault)
    print(f"verdict: {len(count.faults)} faults")
    return len(count.faults)
