"""Replies lost after the commit, and a server that ends in the middle, many times over.

`python -m tests.campaigns sync-faults --full` loses 1000 replies and ends the server 100 times
(fast, immediate, killed, by turns); the short form 25 and 3. After every loss the piece must be at
the centre although the station could not know it, and the next handshake must go on behind it;
after every end of the server nothing that was acknowledged may be missing.
"""

import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from station.sync.batch import Pace
from station.sync.errors import CentreGone
from station.sync.status import SyncState
from station.sync.worker import SyncWorker, Timing
from tests.station.store.conftest import World
from tests.station.sync.centre import Centre, assert_level, entries_of, send_all, sender
from tests.station.sync.history import History
from tests.station.sync.proxy import Proxy
from tests.station.sync.server import Server

SHORT, FULL = (25, 3), (1000, 100)
ME = ("HA", "L1A")
TIMING = Timing(look=0.01, beat=0.5, connect=2.0, exchange=5.0, first=0.02, most=0.1)
WAYS = ("fast", "immediate", "kill")


def lose_replies(server: Server, folder: Path, rounds: int, say: Callable[[str], None]):
    """Reset the connection between the commit and its acknowledgement, so many times."""
    world, centre, faults = World(folder / "replies"), Centre(server, ME), []
    began = time.monotonic()
    with world.stocked() as store:
        for number in range(rounds * 2 + 2):
            store.note(f"word {number}", world.clock.now(), "i.sedge")
        epoch = store.epoch
    ours = entries_of(world.home)[epoch]
    with Proxy(server.port) as proxy:
        address = centre.station(*ME, proxy.port)
        for number in range(1, rounds + 1):
            proxy.lose_reply_to = b""
            with sender(world.home, address, Pace(rows=2)) as one:
                one.shake_hands()
                if one.marks[epoch].seq != 2 * (number - 1):
                    faults.append(f"loss {number}: the handshake says {one.marks[epoch].seq}")
                proxy.lose_reply_to = b"COMMIT"
                try:
                    next(one.pieces())
                    faults.append(f"loss {number}: the piece was acknowledged")
                except CentreGone:
                    pass
            if centre.mark(epoch) != 2 * number:
                faults.append(f"loss {number}: the centre stands at {centre.mark(epoch)}")
        lost, proxy.lose_reply_to = proxy.lost, b""
        send_all(world.home, address)
    if centre.entries(epoch) != ours or centre.quarantine():
        faults.append("the centre does not hold every entry once")
    if lost != rounds:
        faults.append(f"{lost} replies were lost instead of {rounds}")
    say(f"{lost} replies lost after the commit in {time.monotonic() - began:.0f} s: "
        f"{len(ours)} entries, each once")  # fmt: skip
    return faults


def end_server(server: Server, folder: Path, rounds: int, say: Callable[[str], None]):
    """End the server while a station packs and sends, in every way."""
    world, centre, history, faults = World(folder / "ends"), Centre(server, ME), History(), []
    began = time.monotonic()
    with Proxy(server.port) as proxy, history.recording(), world.stocked() as store:
        address = centre.station(*ME, proxy.port)
        worker = SyncWorker(world.home, address, "0", world.clock, timing=TIMING)
        worker.start()
        try:
            for number in range(rounds):
                for _ in range(40):
                    store.note("x" * 3000, world.clock.now(), "i.sedge")
                server.stop(WAYS[number % len(WAYS)])
                proxy.refuse = True
                proxy.cut()
                server.start()
                _until(lambda: worker.status.state is SyncState.WAITING)
                with server.connect(centre.name) as connection:
                    faults += [f"end {number + 1}: {one}" for one in history.check(connection)]
                proxy.refuse = False
                _until(lambda: worker.status.state is not SyncState.WAITING)
        finally:
            worker.stop()
    send_all(world.home, centre.station(*ME))
    assert_level(world.home, centre)
    say(f"{rounds} ends of the server in {time.monotonic() - began:.0f} s: {history.ok} pieces "
        f"acknowledged, {history.unknown} unknown, nothing missing")  # fmt: skip
    return faults


def _until(holds: Callable[[], bool]) -> None:
    deadline = time.monotonic() + 60
    while not holds():
        assert time.monotonic() < deadline, "waited a minute"
        time.sleep(0.01)


def faults_of(sizes: tuple[int, int], say: Callable[[str], None]) -> list[str]:
    """Run both; return what was wrong."""
    server = Server()
    try:
        with tempfile.TemporaryDirectory(prefix="sync-faults-") as folder:
            return [
                *lose_replies(server, Path(folder), sizes[0], say),
                *end_server(server, Path(folder), sizes[1], say),
            ]
    finally:
        server.close()


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    found = faults_of(FULL if full else SHORT, print)
    for fault in found[:20]:
        print(fault)
    print(f"{len(found)} faults")
    return len(found)
