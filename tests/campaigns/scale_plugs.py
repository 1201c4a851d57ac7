"""The scale's plug pulled at any byte and put back under the same name, on a real tty.

`python -m tests.campaigns scale-plugs --full` pulls it 100 times, the short form 30 times. Each
plug has another weight on the pan; bytes of the one before come first, cut anywhere. Counted as
faults: a steady reading of another plug's weight, one without the scale's word after the plug, a
link that is not back within 5 seconds.
"""

import random
import select
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from drivers.frames import scp0499_commands as command
from drivers.port import PortSettings
from drivers.steady import Reading
from tests.drivers.listening import bare_line, frame, linked

SHORT, FULL = 30, 100
SEED = 30
MOST_S = 5.0


def pull_plugs(rounds: int, folder: Path, say: Callable[[str], None]) -> list[str]:
    """Pull the plug so many times; return what was wrong."""
    chance = random.Random(SEED)
    name = folder / "tty-scale"
    faults, slowest = [], 0.0
    with linked(PortSettings(str(name))) as (heard, _):
        before = frame("999")
        for n in range(1, rounds + 1):
            now = frame(str(100 + n))
            with bare_line() as line:
                began = time.monotonic()
                name.symlink_to(line.name)
                if heard.up().epoch != n:
                    faults.append(f"plug {n}: another epoch")
                # it has thrown away what was there, and now asks
                assert select.select([line.end], [], [], 10)[0]
                assert line.read() == command.repeat()
                line.write(before[chance.randrange(20) :] + now * chance.randrange(2, 9))
                heard.steady(str(100 + n))
                slowest = max(slowest, time.monotonic() - began)
                line.write(now[: chance.randrange(20)] + chance.choice((b"", b"\n", before[:9])))
                name.unlink()
            heard.down()
            before = now
    steady = [item for item in heard.items if isinstance(item, Reading) and item.steady]
    faults += [f"plug {r.epoch}: {r.digits}" for r in steady if r.digits != str(100 + r.epoch)]
    if {reading.epoch for reading in steady} != set(range(1, rounds + 1)):
        faults.append("a plug without a steady reading")
    if slowest > MOST_S:
        faults.append(f"{slowest:.1f} s from plug to reading")
    say(f"{rounds} plugs, {len(steady)} steady readings, slowest {slowest * 1000:.0f} ms")
    return faults


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    with tempfile.TemporaryDirectory() as folder:
        faults = pull_plugs(FULL if full else SHORT, Path(folder), print)
    for fault in faults[:20]:
        print(fault)
    print(f"seed {SEED}: {len(faults)} faults")
    return len(faults)
