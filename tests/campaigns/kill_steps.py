"""The station killed exactly at each named step of its chain.

`python -m tests.campaigns kill-steps --full` kills 20 times at each of the steps of
`tests.campaigns.chain.packing.STEPS`, the short form once at every fourth. After each kill a start
must find a legal record and ask about exactly the labels whose fate is unknown. A step that comes
once a run, or only where lots are put on the line, is killed each time on a new record.
"""

import random
import tempfile
from collections.abc import Callable
from pathlib import Path

from station.app.places import demo_settings
from station.config.load import load_settings
from station.store.writer import StationStore
from tests.campaigns.chain.drafts import CLOCK
from tests.campaigns.chain.nursery import Nursery
from tests.campaigns.chain.packing import STEPS
from tests.campaigns.chain.proof import Count, check, check_whole, doubts_of, on_the_way

FULL = 20
SEED = 2


def kill_at_steps(steps: list[str], times: int, folder: Path, say: Callable[[str], None]) -> Count:
    """Kill so many times at each step, on a record of its own; return what was counted."""
    chance = random.Random(SEED)
    count = Count()
    settings = load_settings(demo_settings())
    with Nursery() as nursery:
        for place, step in enumerate(steps):
            rare = "fact" in step or "run" in step
            bags, acknowledged = 0, list[str]()
            for number in range(times):
                where = f"{step}, kill {count.rounds + 1}"
                home = folder / f"step-{place}-{number if rare else 0}"
                if rare:
                    acknowledged = []
                hit = 1 if rare else chance.randint(1, 9)
                late = not rare and count.rounds % 2 == 1
                nursery.ask("chain", home, step=step, hit=hit, late=late)
                for line in nursery.lines():
                    if line.startswith("bag "):
                        acknowledged.append(line.split()[1])
                        count.acknowledged += 1
                    elif not line.startswith("opened"):
                        count.wrong(f"{where}: {line}")
                if nursery.ended != -9:
                    count.wrong(f"{where}: it ended with {nursery.ended}")
                count.rounds += 1
                found = check(home, acknowledged, count, where)
                bags = bags + len(found) if rare else len(found)
                before, unknown = doubts_of(home), on_the_way(found)
                StationStore.open(home, settings.site, settings.station, CLOCK).close()
                if doubts_of(home) != before | unknown:
                    count.wrong(f"{where}: asked about {doubts_of(home)}, unknown are {unknown}")
                if rare or number == times - 1:
                    check_whole(home, count, step)
            say(f"{step}: {times} kills, {bags} bags on record")
    say(f"seed {SEED}: {len(steps)} steps, {count.told()}")
    return count


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    steps = list(STEPS) if full else list(STEPS)[::4]
    with tempfile.TemporaryDirectory(prefix="kill-steps-") as folder:
        count = kill_at_steps(steps, FULL if full else 1, Path(folder), print)
    for fault in count.faults[:20]:
        print(fault)
    print(f"verdict: {len(count.faults)} faults")
    return len(count.faults)
