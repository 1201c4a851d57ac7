"""Hours of random faults between stations and the centre, and a checker of what each one saw.

`python -m tests.campaigns sync-history --full` goes on for two hours, the short form for twelve
seconds; `python -m tests.campaigns.sync_history --minutes N` for N. Two stations pack without a
pause and send over a proxy to a real server while chance cuts, stalls and slows the lines, loses
replies, stops the server in every way, stands it still, and kills stations. Every now and then all
is quiet and the history is checked (see tests.station.sync.history).
"""

import argparse
import random
import sys
import tempfile
import threading
import time
from collections import Counter
from collections.abc import Callable
from pathlib import Path

from station.sync.worker import SyncWorker, Timing
from tests.station.store.conftest import World
from tests.station.sync.centre import Centre, assert_level
from tests.station.sync.history import History
from tests.station.sync.proxy import Proxy
from tests.station.sync.server import Server

SHORT_S, FULL_S = 12.0, 7200.0
ROUND_S = 60.0
SEED = 29
TIMING = Timing(look=0.05, beat=1.0, connect=2.0, exchange=2.0, first=0.02, most=0.5)
STATIONS = (("HA", "L1A"), ("ZB", "L1A"))


class Station:
    """One that packs without a pause and can be killed."""

    def __init__(self, folder: Path, names: tuple[str, str], centre: Centre, port: int) -> None:
        self.names, self._centre, self._port = names, centre, port
        self.world = World(folder / "-".join(names), site=names[0], station=names[1])
        self.bags = 0
        self._runs = 0
        self._ended = threading.Event()
        self._start()

    def _start(self) -> None:
        self._store = self.world.stocked()
        address = self._centre.station(*self.names, self._port)
        self.worker = SyncWorker(self.world.home, address, "0", self.world.clock, timing=TIMING)
        self._ended.clear()
        self._packer = threading.Thread(target=self._pack, name=f"packer {self.names}")
        self.worker.start()
        self._packer.start()

    def _pack(self) -> None:
        while not self._ended.is_set():
            self._runs += 1
            run = self.world.start(self._store, self._runs)
            for _ in range(50):
                self.bags += len(self.world.fill(self._store, run, 2))
                if self._ended.wait(0.02):
                    break
            self._store.end_run(run.id, self.world.clock.now(), "p.marsh")

    def quiet(self) -> None:
        """End packing and sending; the record is closed."""
        self._ended.set()
        self._packer.join()
        self.worker.stop()
        self._store.close()

    def kill(self) -> None:
        """As a process that is killed: the record is not closed, nothing more is sent."""
        self._ended.set()
        self._packer.join()
        self.worker.stop()
        self.world.crash(self._store)

    def again(self) -> None:
        self._start()


def faults_of(seconds: float, say: Callable[[str], None], seed: int = SEED) -> list[str]:
    """Let faults happen for so long; return what cannot be."""
    chance, server, history = random.Random(seed), Server(), History()
    happened: Counter[str] = Counter()
    found: list[str] = []
    with tempfile.TemporaryDirectory(prefix="sync-history-") as folder, history.recording():
        centre = Centre(server, *STATIONS)
        with Proxy(server.port) as proxy:
            stations = [Station(Path(folder), names, centre, proxy.port) for names in STATIONS]
            end, checked = time.monotonic() + seconds, time.monotonic()
            try:
                while time.monotonic() < end and not found:
                    name = chance.choice(tuple(FAULTS))
                    FAULTS[name](chance, server, proxy, stations)
                    happened[name] += 1
                    time.sleep(chance.random())
                    if time.monotonic() - checked > min(ROUND_S, seconds / 3):
                        found += _quiet_and_check(stations, centre, history)
                        for one in stations:
                            one.again()
                        checked = time.monotonic()
                found += _quiet_and_check(stations, centre, history)
                found += _drained(stations, centre)
            finally:
                for one in stations:
                    one.worker.stop()
                server.close()
        bags = sum(one.bags for one in stations)
        say(f"{seconds:.0f} s, seed {seed}: {bags} bags, {history.ok} pieces acknowledged, "
            f"{history.unknown} unknown")  # fmt: skip
        say(", ".join(f"{name} {count}" for name, count in sorted(happened.items())))
    return found


def _quiet_and_check(stations, centre, history) -> list[str]:
    for one in stations:
        one.quiet()
    with centre.server.connect(centre.name) as connection:
        return history.check(connection)


def _drained(stations, centre) -> list[str]:
    """After the last fault everything comes to the centre by itself."""
    found = []
    for one in stations:
        one.again()
        one._ended.set()
        one._packer.join()
        one._store.close()
        deadline = time.monotonic() + 60
        while time.monotonic() < deadline:
            try:
                assert_level(one.world.home, centre)
                break
            except AssertionError:
                time.sleep(0.2)
        else:
            found.append(f"{one.names}: not level a minute after the last fault")
        one.worker.stop()
    return found


# --- faults -----------------------------------------------------------------------------------


def _cut(chance, server, proxy, stations):
    proxy.cut()


def _stall(chance, server, proxy, stations):
    proxy.stalled = True
    time.sleep(chance.uniform(0.2, 3))
    proxy.stalled = False
    if chance.random() < 0.5:
        proxy.cut()


def _lose_replies(chance, server, proxy, stations):
    proxy.deaf = True
    time.sleep(chance.uniform(0.02, 0.5))
    proxy.cut()
    proxy.deaf = False


def _refuse(chance, server, proxy, stations):
    proxy.refuse = True
    proxy.cut()
    time.sleep(chance.uniform(0.2, 1.5))
    proxy.refuse = False


def _slow(chance, server, proxy, stations):
    proxy.rate = chance.choice((20_000, 200_000))
    proxy.delay_s = chance.choice((0, 0.01, 0.1))
    time.sleep(chance.uniform(0.5, 2))
    proxy.rate, proxy.delay_s = None, 0.0


def _restart(how):
    def fault(chance, server, proxy, stations):
        server.restart(how)

    return fault


def _freeze(chance, server, proxy, stations):
    server.freeze()
    time.sleep(chance.uniform(0.2, 3))
    server.thaw()


def _kill_station(chance, server, proxy, stations):
    one = chance.choice(stations)
    one.kill()
    one.again()


FAULTS = {
    "cut": _cut,
    "stall": _stall,
    "lose replies": _lose_replies,
    "refuse": _refuse,
    "slow": _slow,
    "fast restart": _restart("fast"),
    "immediate restart": _restart("immediate"),
    "kill": _restart("kill"),
    "freeze": _freeze,
    "kill station": _kill_station,
}


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    return _told(FULL_S if full else SHORT_S)


def _told(seconds: float) -> int:
    found = faults_of(seconds, print)
    for fault in found[:20]:
        print(fault)
    print(f"{len(found)} faults")
    return len(found)


def main() -> int:
    """Run for a time of your choice."""
    parser = argparse.ArgumentParser(prog="python -m tests.campaigns.sync_history")
    parser.add_argument("--minutes", type=float, default=SHORT_S / 60)
    return _told(parser.parse_args().minutes * 60)


if __name__ == "__main__":
    sys.exit(1 if main() else 0)
