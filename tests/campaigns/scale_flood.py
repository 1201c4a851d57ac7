"""A line at 115 200 baud full of noise, on a real tty: what it costs, and that the link lives.

`python -m tests.campaigns scale-flood --full` lasts ten minutes, the short form three seconds.
Counted as faults: more than a quarter of a core for link and noise together, a steady reading, a
link that does not say what is wrong within ten seconds, or does not read a good frame after it.
"""

import random
import time
from collections.abc import Callable

from drivers.link_items import LinkDegraded
from drivers.port import PortSettings
from drivers.steady import Reading
from tests.drivers.listening import bare_line, frame, linked

SHORT_S, FULL_S = 3.0, 600.0
SEED = 25
STEP_S = 0.05
BYTES = 576
MOST_CPU = 0.25


def flood(seconds: float, say: Callable[[str], None]) -> list[str]:
    """Flood a link for so long; return what was wrong."""
    chance = random.Random(SEED)
    noise = [chance.randbytes(BYTES) for _ in range(200)]
    faults: list[str] = []
    with bare_line() as line, linked(PortSettings(line.name)) as (heard, link):
        heard.up()
        cpu_s, began = time.process_time(), time.monotonic()
        due, rounds = began, 0
        while time.monotonic() - began < seconds:
            line.write(noise[rounds % len(noise)])
            rounds += 1
            due += STEP_S
            link._stopping.wait(max(0.0, due - time.monotonic()))
            del heard.items[:-5000]
            heard._seen = min(heard._seen, len(heard.items))
        used = (time.process_time() - cpu_s) / (time.monotonic() - began)
        told = [item for item in heard.items if isinstance(item, LinkDegraded)]
        if any(isinstance(item, Reading) and item.steady for item in heard.items):
            faults.append("a steady reading")
        heard.forget()
        line.write(frame("254") * 3)
        if heard.next(Reading, lambda r: r.digits == "254").fault is None:
            faults.append("a reading without the word that the line is disturbed")
    if not told and seconds < 11:
        faults.append("nothing was said")
    if used > MOST_CPU:
        faults.append(f"{used:.0%} of a core")
    say(f"{seconds:.0f} s, {rounds * BYTES:,} bytes, {used:.1%} of a core")
    return faults


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    faults = flood(FULL_S if full else SHORT_S, print)
    for fault in faults:
        print(fault)
    print(f"seed {SEED}: {len(faults)} faults")
    return len(faults)
