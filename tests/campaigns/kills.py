"""The station killed with -9 anywhere in its whole chain, again and again.

`python -m tests.campaigns kills --full` kills 1000 times, the short form 8 times. A whole station
packs on the bench scale; it is killed after a random number of bags and a random part of a bag's
time, and started again on the same record, where a person answers for each label in doubt. Each
start opens a run, and a line has 99 blend lots a day, so each record takes 90 kills. Counted as
faults: a bag the screen had shown and the record has not, a serial twice, a gap, a label file
without a record, a doubt too many, a start above three seconds of work, a chain that breaks.
"""

import random
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from station.store.engine import database
from tests.campaigns.chain.nursery import Nursery
from tests.campaigns.chain.proof import Count, check, check_whole, on_the_way

SHORT, FULL = 8, 1000
SEED = 1
MOST_BAGS = 6
MOST_START_S = 3.0
A_RECORD = 90
"""Kills on one record."""


class Killing:
    """Kills stations on one record after the other and counts.

    Args:
        folder: takes the records.
    """

    def __init__(self, folder: Path) -> None:
        self.count = Count()
        self.times: list[tuple[float, ...]] = []
        """Of each start: seconds on the clock, seconds of work."""
        self.asked = 0
        self._folder = folder
        self._chance = random.Random(SEED)
        self._shown: list[str] = []

    def begin_record(self, number: int) -> Path:
        """Begin the record of a kill; the one before has been told of."""
        self._shown = []
        return self._folder / f"record-{number}"

    def once(self, nursery: Nursery, home: Path, where: str) -> None:
        """Start, pack, kill, and look at the record."""
        nursery.ask("chain", home)
        if self._listen(nursery, where):
            time.sleep(self._chance.random() * 0.2)
            nursery.kill()
            for line in nursery.lines():
                self._take(line, where)
        self.count.rounds += 1
        if not database(home).exists():
            self.count.wrong(f"{where}: it ended before it made a record")
            return
        found = check(home, self._shown, self.count, where)
        unknown = on_the_way(found)
        self.asked += len(unknown)
        if len(unknown) > 2:  # one at the printer and one on the pan
            self.count.wrong(f"{where}: {len(unknown)} labels on their way")
        strangers = {path.stem for path in (home / "labels").glob("*.pdf")} - found.keys()
        self.count.strangers += len(strangers)
        if strangers:
            self.count.wrong(f"{where}: label without a record {sorted(strangers)[:3]}")

    def _listen(self, nursery: Nursery, where: str) -> bool:
        """Hear so many bags; whether the station is there to be killed."""
        left, opened = self._chance.randint(0, MOST_BAGS), False
        while left > 0 or not opened:
            line = nursery.line()
            if line.startswith("ended "):
                self.count.wrong(f"{where}: it ended by itself")
                return False
            left -= line.startswith("bag ")
            opened |= line.startswith("opened ")
            self._take(line, where)
        return True

    def _take(self, line: str, where: str) -> None:
        what, _, words = line.partition(" ")
        if what == "bag":
            self._shown.append(words)
            self.count.acknowledged += 1
        elif what == "opened":
            self.times.append(tuple(map(float, words.split())))
        else:
            self.count.wrong(f"{where}: {line}")


def kill_often(kills: int, folder: Path, say: Callable[[str], None]) -> Count:
    """Kill so many times; return what was counted."""
    killing, home = Killing(folder), folder
    with Nursery() as nursery:
        for number in range(1, kills + 1):
            if number % A_RECORD == 1:
                home = killing.begin_record(number)
            killing.once(nursery, home, f"kill {number}")
            if number % A_RECORD == 0 or number == kills:
                check_whole(home, killing.count, f"kill {number}")
                say(f"{number} kills, {killing.count.acknowledged} bags acknowledged")
    count, times = killing.count, killing.times
    usual, work = (sorted(column)[len(times) // 2] for column in zip(*times, strict=True))
    most = max(used for _, used in times)  # the clock would measure the machine's other work
    if most > MOST_START_S:
        count.wrong(f"a start took {most:.1f} s of work, allowed are {MOST_START_S} s")
    say(f"seed {SEED}: {count.told()}; {killing.asked} labels asked about")
    say(f"starts: {usual:.2f} s on the clock, {work:.2f} s of work (medians), at most {most:.2f} s")
    return count


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    with tempfile.TemporaryDirectory(prefix="kills-") as folder:
        count = kill_often(FULL if full else SHORT, Path(folder), print)
    for fault in count.faults[:20]:
        print(fault)
    print(f"verdict: {len(count.faults)} faults")
    return len(count.faults)
