"""What a station process does in the soak: it packs for long, and tells what it takes."""

import gc
import threading
import time
from pathlib import Path

from station.line.listeners import Timing
from station.line.state import LineState
from station.store.engine import database
from tests.campaigns.chain.nursery import say
from tests.end_to_end.line import PATIENCE_S, Bench

PRODUCT = "ROCKET-SPINACH-200"
_MS = 1e6


def last(home: Path, seconds: float, look_s: float, run_s: float) -> None:
    """Pack run after run; say each serial, and from time to time what the process takes.

    Args:
        home: the record.
        seconds: how long.
        look_s: from one look to the next.
        run_s: how long a run is open; there are 99 a day at most.
    """
    shown = [""]

    def seen(state: LineState) -> None:
        if state.last is not None and state.last.serial != shown[0]:
            shown[0] = state.last.serial
            say(f"bag {state.last.serial}")

    line, began, idle = Bench(home, seen), time.monotonic(), threading.Event()
    lifted = 0
    try:
        while (left := began + seconds - time.monotonic()) > 0:
            ends = time.monotonic() + min(run_s, left)
            product = line.open_run(PRODUCT)
            with line.packer(product, seed=int(left)) as hands:
                while time.monotonic() < ends:
                    idle.wait(min(look_s, max(0.0, ends - time.monotonic())))
                    _look(line, time.monotonic() - began)
            lifted += hands.lifted
            _end(line)
        say(f"lifted {lifted}")
    finally:
        line.close()


def _end(line: Bench) -> None:
    """Clear the pan and end the run; a bag that is being recorded is waited for."""
    answer = ""
    while "ended" not in answer:
        line.bench.lift()
        line.station.line.end_run("L01")
        answer = line.watch.next_answer(PATIENCE_S).words


def _look(line: Bench, at: float) -> None:
    """Say what the process takes now, and let go of what only this campaign keeps."""
    timings: list[Timing] = line.watch.timings[:]
    del line.watch.timings[: len(timings)]
    line.pages.clear()
    for path in line.labels.glob("*.pdf"):
        path.unlink()
    gc.collect()
    took = sorted((one.durable - one.stable) / _MS for one in timings) or [0.0]
    status = Path("/proc/self/status").read_text(encoding="ascii")
    rows = dict(row.split(":", 1) for row in status.splitlines() if ":" in row)
    taken = (
        int(rows["VmRSS"].split()[0]),
        len(list(Path("/proc/self/fd").iterdir())),
        int(rows["Threads"]),
        database(line.station.home).with_name("station.sqlite-wal").stat().st_size,
    )
    half, most = took[len(took) // 2], took[len(took) * 99 // 100]
    say(f"look {at:.1f} {len(timings)} {half:.3f} {most:.3f} {' '.join(map(str, taken))}")
