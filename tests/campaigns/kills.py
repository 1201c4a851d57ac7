"""The station killed with -9 anywhere in its whole chain, again and again, on one record.

`python -m tests.campaigns kills --full` kills 1000 times, the short form 8 times. A whole station
packs on the bench scale; it is killed after a random number of bags and a random part of a bag's
time, and started again on the same record, where a person answers for each label in doubt. Counted
as faults: a bag the screen had shown and the record has not, a serial twice, a gap, a label file
without a record, a doubt too many or too few, a start above three
seconds of work, a chain that breaks.
"""

import random
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from tests.campaigns.chain.nursery import Nursery
from tests.campaigns.chain.proof import Count, check, check_whole, on_the_way

SHORT, FULL = 8, 1000
SEED = 1
MOST_BAGS = 6
MOST_START_S = 3.0
WHOLE_EVERY = 100


def kill_often(kills: int, home: Path, say: Callable[[str], None]) -> Count:
    """Kill so many times; return what was counted."""
    chance = random.Random(SEED)
    count, acknowledged, times = Count(), [], []
    asked = 0
    with Nursery() as nursery:
        for number in range(1, kills + 1):
            nursery.ask("chain", home)
            left = chance.randint(0, MOST_BAGS)
            opened = False
            while left or not opened:
                line = nursery.line()
                what, _, words = line.partition(" ")
                if what == "bag":
                    acknowledged.append(words)
                    left -= 1
                elif what == "opened":
                    opened = True
                    times.append(tuple(map(float, words.split())))
                else:
                    count.wrong(f"kill {number}: {line}")
                    break
            time.sleep(chance.random() * 0.2)
            nursery.kill()
            for line in nursery.lines():
                if line.startswith("bag "):
                    acknowledged.append(line.split()[1])
                else:
                    count.wrong(f"kill {number}: {line}")
            count.rounds += 1
            found = check(home, acknowledged, count, f"kill {number}")
            asked += len(on_the_way(found))
            if len(on_the_way(found)) > 2:  # one at the printer and one on the pan
                count.wrong(f"kill {number}: {len(on_the_way(found))} labels on their way")
            printed = {path.stem for path in (home / "labels").glob("*.pdf")}
            strangers = printed - found.keys()
            count.strangers += len(strangers)
            if strangers:
                count.wrong(f"kill {number}: label without a record {sorted(strangers)[:3]}")
            if number % WHOLE_EVERY == 0:
                check_whole(home, count, f"kill {number}")
                say(f"{number} kills, {len(found)} bags on record")
    check_whole(home, count, "after all kills")
    count.acknowledged = len(acknowledged)
    usual, work = (sorted(column)[len(times) // 2] for column in zip(*times, strict=True))
    most = max(
        used for _, used in times
    )  # time on the clock would measure the machine's other work
    if most > MOST_START_S:
        count.wrong(f"a start took {most:.1f} s of work, allowed are {MOST_START_S} s")
    say(f"seed {SEED}: {count.told()}; {asked} labels asked about")
    say(f"starts: {usual:.2f} s on the clock, {work:.2f} s of work (medians), at most {most:.2f} s")
    return count


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    with tempfile.TemporaryDirectory(prefix="kills-") as folder:
        count = kill_often(FULL if full else SHORT, Path(folder) / "home", print)
    for fault in count.faults[:20]:
        print(fault)
    print(f"verdict: {len(count.faults)} faults")
    return len(count.faults)
