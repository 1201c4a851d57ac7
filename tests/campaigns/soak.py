"""A whole station that packs for long: whether it takes more and more, or grows slow.

`python -m tests.campaigns soak --full` packs for 24 hours, `--minutes 10` for ten minutes, the
short form for some seconds. A run is open for an hour at most. Counted as faults: a bag shown and
not on record, one twice, a gap, a bag lifted as good and not on record; memory, open files, threads
or the log that grow from the first part after warming up to the last; bags that take half as long
again to their record at the end (by the median, since the slowest are those of the machine's other
work). The full form also allows 50 ms at most from reading to record, for 99 of 100 bags.
"""

import tempfile
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from tests.campaigns.chain.nursery import Nursery
from tests.campaigns.chain.proof import Count, check, check_whole

SHORT_S, FULL_S = 6.0, 86_400.0
LOOKS, MOST_LOOK_S = 40, 60.0
RUN_S = 3_600.0
WARM = 0.1
"""A station takes what it needs in the first part of the time."""
LONG_S = 300.0
"""From here on there is enough to see a drift in."""
MOST_GROWTH = 0.05
MOST_SLOWER = 1.5
MOST_MS = 50.0
MOST_LOG = 64 * 2**20


@dataclass(frozen=True, slots=True)
class Look:
    """What a station takes at one moment.

    Args:
        at: seconds since its start.
        bags: labelled since the look before.
        half_ms, most_ms: from reading to record, median and 99th of a hundred of them.
        memory: KiB resident.
        files: open ones.
        threads: all of the process.
        log: bytes of the record's log.
    """

    at: float
    bags: int
    half_ms: float
    most_ms: float
    memory: int
    files: int
    threads: int
    log: int

    @classmethod
    def read(cls, words: str) -> "Look":
        """From what the process says."""
        at, bags, half, most, *taken = words.split()
        return cls(float(at), int(bags), float(half), float(most), *map(int, taken))


def drift(looks: Sequence[Look]) -> list[str]:
    """What grew from the first part after warming up to the last."""
    warm = [one for one in looks if one.at >= looks[-1].at * WARM]
    size = max(len(warm) // 5, 1)
    first, last = warm[:size], warm[-size:]
    faults = []
    for name in ("files", "threads"):
        # The least of some looks: a file that is open for a moment is none that stays open.
        before, after = (min(getattr(one, name) for one in part) for part in (first, last))
        if after > before:
            faults.append(f"{name} grew from {before} to {after}")
    before, after = (_middle([float(one.memory) for one in part]) for part in (first, last))
    if after > before * (1 + MOST_GROWTH):
        faults.append(f"memory grew from {before / 1024:.1f} to {after / 1024:.1f} MiB")
    before, after = (_middle([one.half_ms for one in part if one.bags]) for part in (first, last))
    if after > before * MOST_SLOWER + 1:
        faults.append(f"a bag took {before:.1f} ms to its record at first, {after:.1f} at last")
    if max(one.log for one in looks) > MOST_LOG:
        faults.append(f"the log grew to {max(one.log for one in looks)} bytes")
    return faults


def soak(seconds: float, folder: Path, say: Callable[[str], None]) -> Count:
    """Let a station pack for so long; return what was counted."""
    home, count = folder / "home", Count()
    serials, looks, lifted = list[str](), list[Look](), 0
    look_s = min(max(seconds / LOOKS, 0.5), MOST_LOOK_S)
    with Nursery() as nursery:
        nursery.ask("last", home, seconds=seconds, look_s=look_s, run_s=RUN_S)
        for line in nursery.lines():
            what, _, words = line.partition(" ")
            if what == "bag":
                serials.append(words)
            elif what == "look":
                looks.append(Look.read(words))
            elif what == "lifted":
                lifted = int(words)
            else:
                count.wrong(line)
        if nursery.ended or not looks:
            count.wrong(f"the station ended with {nursery.ended}")
            return count
    count.rounds, count.acknowledged = 1, len(serials)
    check(home, serials, count, "at the end")
    check_whole(home, count, "at the end")
    if lifted > len(serials):
        count.wrong(f"{lifted} bags were lifted as good, {len(serials)} shown")
    if seconds >= LONG_S:
        for words in drift(looks):
            count.wrong(words)
    most = sorted(one.most_ms for one in looks)[len(looks) * 99 // 100]
    if seconds >= FULL_S and most > MOST_MS:
        count.wrong(f"a bag took {most:.1f} ms to its record, allowed are {MOST_MS:.0f}")
    for one in (looks[0], looks[len(looks) // 2], looks[-1]):
        say(
            f"after {one.at:.0f} s: {one.memory / 1024:.1f} MiB, {one.files} files, "
            f"{one.threads} threads, log {one.log / 2**20:.1f} MiB, reading to record "
            f"{one.half_ms:.1f} ms (median), {one.most_ms:.1f} ms (99 of 100)"
        )
    say(f"{count.told()}; {len(serials) / seconds:.2f} bags a second")
    return count


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    return run_for((FULL_S if full else SHORT_S) / 60)


def run_for(minutes: float) -> int:
    """Run it for a time of your choice."""
    with tempfile.TemporaryDirectory(prefix="soak-") as folder:
        count = soak(minutes * 60, Path(folder), print)
    for fault in count.faults[:20]:
        print(fault)
    print(f"verdict: {len(count.faults)} faults")
    return len(count.faults)


def _middle(values: list[float]) -> float:
    return sorted(values)[len(values) // 2] if values else 0.0
