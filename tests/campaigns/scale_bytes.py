"""Random bytes and bytes of the formats' own alphabets into every parser and the whole chain.

`python -m tests.campaigns scale-bytes --full` sends 10 million bytes of each kind to each parser,
and as many through the chain of link, steadiness and line; the short form, a hundredth, runs with
the tests. Counted as faults: an exception, bytes lost or invented, more kept than allowed, memory
that grows, a bag captured.
"""

import random
import time
import tracemalloc
from collections.abc import Callable, Iterator
from functools import partial

from drivers.connection import LinkRules
from drivers.frames.base import FrameParser, WeightFrame
from drivers.frames.described import DescribedParser
from drivers.frames.hid_scale import HidScaleParser
from drivers.frames.scp0499 import Scp0499Parser
from drivers.scanner import ScanReader, ScanRules
from drivers.steady import SteadyRules
from tests.drivers.chain import Chain
from tests.drivers.frames.test_described import SHIPPED

SHORT, FULL = 100_000, 10_000_000
SEED = 20261125
CHUNK = 576  # 50 ms at 115 200 baud
MOST_MORE = 1_048_576
"""Memory a parser may hold at any time, in bytes, the chunk it is given included."""
ALPHABETS = {
    "scp0499": b"\n\r ZOUEITe1GNTgnM-0123456789.kglboz_",
    "heron": b"<>A@BCDE+-0123456789; 52",
    "lantern": b"qzwn= ~-0123456789.gk\r\n",
    "tern": b"\x02\x03pan yesno 0123456789,kg",
    "hid": bytes(range(13)),
}
PARSERS: dict[str, Callable[[], FrameParser]] = {
    "scp0499": Scp0499Parser,
    **{name: partial(DescribedParser, form) for name, form in SHIPPED.items()},
    "hid": HidScaleParser,
}
KINDS = ("random", "alphabet")


def chunks(kind: str, name: str, count: int) -> Iterator[bytes]:
    """Give ``count`` bytes of a kind in chunks of any size."""
    chance = random.Random(f"{SEED} {kind} {name}")
    letters = ALPHABETS[name]
    left = count
    while left > 0:
        size = min(left, chance.randint(1, 2 * CHUNK))
        left -= size
        if kind == "random":
            yield chance.randbytes(size)
        else:
            yield bytes(chance.choices(letters, k=size))


def parse(kind: str, name: str, count: int) -> tuple[list[str], int]:
    """Feed one parser; return what was wrong and how many weights it made of it."""
    parser, faults, weights, given, told = PARSERS[name](), [], 0, 0, 0
    for chunk in chunks(kind, name, count):
        given += len(chunk)
        for item in parser.feed(chunk):
            told += len(item.raw)
            weights += isinstance(item, WeightFrame)
        if parser.pending > parser.MAX_PENDING:
            faults.append(f"{name}, {kind}: keeps {parser.pending} bytes")
    if name != "hid" and told + parser.pending != given:
        faults.append(f"{name}, {kind}: {given} bytes came, {told} told, {parser.pending} kept")
    return faults, weights


def chain(kind: str, name: str, count: int) -> tuple[list[str], int]:
    """Feed the whole chain at 115 200 baud; return what was wrong and the bags captured."""
    line = Chain(PARSERS[name], SteadyRules(unit="g"), LinkRules(most_bytes_per_s=10**9))
    at_ms = iter(range(50, 10**12, 50))
    captured = line.feed((next(at_ms), chunk) for chunk in chunks(kind, name, count))
    faults = [f"chain of {name}, {kind}: captured {digits}" for digits in captured]
    return faults, len(captured)


def scan(kind: str, count: int) -> list[str]:
    """Feed the scanner's reader."""
    rules = ScanRules(pair_ns=50_000_000)
    reader, now_ns, faults = ScanReader(rules), 0, []
    for chunk in chunks(kind, "scp0499", count):
        now_ns += 50_000_000
        reader.feed(chunk, now_ns)
        if reader.pending > rules.longest:
            faults.append(f"scanner, {kind}: keeps {reader.pending} bytes")
    return faults


def measured(work: Callable[[], list[str]], what: str) -> list[str]:
    """Do the work; add a fault where it holds too much memory at any time."""
    tracemalloc.start()
    try:
        faults = work()
        _, held = tracemalloc.get_traced_memory()
    finally:
        tracemalloc.stop()
    return [*faults, f"{what}: held {held} bytes"] if held > MOST_MORE else faults


def faults_of(count: int, say: Callable[[str], None]) -> list[str]:
    """Run everything with ``count`` bytes of each kind; return what was wrong."""
    faults = []
    for kind in KINDS:
        for name in PARSERS:
            began = time.perf_counter()
            wrong, weights = parse(kind, name, count)
            faults += wrong
            speed = count / (time.perf_counter() - began) / 1e6
            say(f"{name}, {kind}: {count:,} bytes, {weights} weights, {speed:.1f} MB/s")
        for name in ("scp0499", "lantern"):
            wrong, captured = chain(kind, name, count)
            faults += wrong
            say(f"chain of {name}, {kind}: {count:,} bytes, {captured} captures")
        faults += scan(kind, count)
        for name in ("scp0499", "lantern"):
            small = min(count, 1_000_000)  # tracing makes it ten times slower
            what = f"memory of {name}, {kind}"
            faults += measured(lambda n=name, k=kind, s=small: parse(k, n, s)[0], what)
    return faults


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    faults = faults_of(FULL if full else SHORT, print)
    for fault in faults[:20]:
        print(fault)
    print(f"seed {SEED}: {len(faults)} faults")
    return len(faults)
