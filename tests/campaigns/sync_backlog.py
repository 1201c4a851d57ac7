"""A long backlog drained while bags are packed, and what that does to a bag.

`python -m tests.campaigns sync-backlog --full` makes a record of a million bags, `--short` one of
2 000; `python -m tests.campaigns.sync_backlog --packs N` any other. Twenty bags a second are packed
throughout, with and without sending by turns. Counted as faults: an entry that is not at the centre
once, fewer than 500 entries a second, and a median bag that takes more than a fifth longer while
the backlog drains.
"""

import argparse
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from datetime import date
from pathlib import Path

from station.app.places import demo_settings
from station.app.speed.long_record import _LAST_DAY, _kinds, _opened, make_long_record
from station.clock import SystemClock
from station.config.load import load
from station.store.writer import StationStore
from station.sync.worker import SyncWorker
from tests.station.sync.centre import Centre, assert_level
from tests.station.sync.server import Server

SHORT, FULL = 2_000, 1_000_000
ME = ("QH", "A1")
WINDOW_S, EVERY_S = 2.0, 0.05
LEAST_A_SECOND, MOST_SLOWER = 500, 1.2


class Packer:
    """Packs at a steady pace and takes the time of each bag."""

    def __init__(self, store: StationStore, day: date) -> None:
        house = load(demo_settings(), day)
        clock = SystemClock(house.settings.zone)
        product = next(iter(house.products.values()))
        run = _opened(house, product, day, clock.now(), 99)
        store.add_lots(run.lots, clock.now(), "station")
        store.start_run(run, clock.now())
        self._store, self._draft = store, _kinds(run, clock.now())[0]

    def pack(self, until: Callable[[], bool]) -> list[float]:
        """Seconds of each bag, packed until a condition holds."""
        times = []
        while not until():
            began = time.perf_counter()
            self._store.add_pack(self._draft)
            times.append(time.perf_counter() - began)
            time.sleep(max(0.0, EVERY_S - times[-1]))
        return times


def faults_of(packs: int, say: Callable[[str], None], judge_speed: bool = True) -> list[str]:
    """Make a backlog and drain it; return what was wrong."""
    server, faults = Server(), []
    sys.setswitchinterval(0.0005)  # as the station's window does
    try:
        with tempfile.TemporaryDirectory(prefix="sync-backlog-") as folder:
            home = Path(folder) / "home"
            home.mkdir()
            record = make_long_record(demo_settings(), home, packs)
            centre = Centre(server, ME)
            store = StationStore.open(home, *ME, SystemClock("UTC"))
            packer = Packer(store, _LAST_DAY)
            alone, beside, rate = _drain(home, centre, store, packer)
            store.close()
            worker = SyncWorker(home, centre.station(*ME), "0", SystemClock("UTC"))
            worker.start()
            deadline = time.monotonic() + 60
            while centre.mark(store.epoch) < store.head()[0]:
                if time.monotonic() > deadline:
                    faults.append("the rest was not sent within a minute")
                    break
                time.sleep(0.1)
            worker.stop()
            assert_level(home, centre)
    finally:
        server.close()
    slower = statistics.median(beside) / statistics.median(alone)
    say(f"{record.packs:,} bags drained at {rate:,.0f} entries a second, each there once")
    say(f"a bag {_told(alone)} alone, {_told(beside)} while draining: {slower:.2f} times")
    if rate < LEAST_A_SECOND:
        faults.append(f"{rate:.0f} entries a second, at least {LEAST_A_SECOND}")
    if judge_speed and slower > MOST_SLOWER:
        faults.append(f"a bag takes {slower:.2f} times as long, at most {MOST_SLOWER}")
    return faults


def _drain(home, centre, store, packer):
    """Send and do not send by turns until the backlog is gone."""
    alone, beside, sending, start = [], [], 0.0, centre.mark(store.epoch)
    while True:
        end = time.monotonic() + WINDOW_S
        alone += packer.pack(lambda end=end: time.monotonic() > end)
        worker = SyncWorker(home, centre.station(*ME), "0", SystemClock("UTC"))
        worker.start()
        began = time.monotonic()
        end = began + WINDOW_S * 4

        def done(end=end, worker=worker) -> bool:
            left = store.head()[0] - sum(worker._known.marks.values())
            return time.monotonic() > end or left < 200

        beside += packer.pack(done)
        sending += time.monotonic() - began
        worker.stop()
        there = centre.mark(store.epoch)
        if store.head()[0] - there < 400:
            return alone, beside, (there - start) / sending


def _told(times: list[float]) -> str:
    ordered = sorted(times)
    p99 = ordered[int(len(ordered) * 0.99)]
    return f"p50 {statistics.median(ordered) * 1000:.2f} ms, p99 {p99 * 1000:.1f} ms"


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    return _report(FULL if full else SHORT)


def _report(packs: int) -> int:
    found = faults_of(packs, print)
    for fault in found:
        print(fault)
    print(f"{len(found)} faults")
    return len(found)


def main() -> int:
    """Run with a backlog of any length."""
    parser = argparse.ArgumentParser(prog="python -m tests.campaigns.sync_backlog")
    parser.add_argument("--packs", type=int, default=SHORT)
    return _report(parser.parse_args().packs)


if __name__ == "__main__":
    sys.exit(1 if main() else 0)
