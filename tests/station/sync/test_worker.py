"""The thread that sends, against a real server and a network that fails."""

import shutil
import threading
import time
from collections.abc import Callable
from contextlib import contextmanager
from datetime import timedelta

import pytest

from station.sync.status import SyncState, remembered
from station.sync.worker import SyncWorker, Timing
from tests.station.store.conftest import World
from tests.station.sync.centre import Centre, assert_level, entries_of

ME = ("HA", "L1A")
QUICK = Timing(look=0.05, beat=0.2, connect=2.0, exchange=1.0, first=0.05, most=0.3, conflict=0.2)
PATIENCE_S = 60.0
DAY = timedelta(hours=24)


@contextmanager
def working(world: World, centre: Centre, port: int | None = None, timing: Timing = QUICK):
    worker = SyncWorker(world.home, centre.station(*ME, port), "0.1.0", world.clock, timing=timing)
    worker.start()
    try:
        yield worker
    finally:
        worker.stop()


def until(holds: Callable[[], object], what: str) -> None:
    deadline = time.monotonic() + PATIENCE_S
    while not holds():
        assert time.monotonic() < deadline, what
        time.sleep(0.02)


def level(worker: SyncWorker) -> Callable[[], bool]:
    return lambda: worker.status.state is SyncState.LEVEL and not worker.status.backlog


def test_bags_reach_the_centre_while_they_are_packed(world, centre):
    with world.stocked() as store, working(world, centre) as worker:
        run = world.start(store)
        world.fill(store, run, 30)
        length = store.head()[0]
        until(lambda: centre.mark(store.epoch) == length, "all of it is sent")
        until(level(worker), "it says so")
    assert_level_but_stop(world, centre)
    assert remembered(world.home).marks == {store.epoch: length}


def assert_level_but_stop(world: World, centre: Centre) -> None:
    ((epoch, ours),) = entries_of(world.home).items()
    theirs = centre.entries(epoch)
    assert theirs == ours[: len(theirs)]


def test_the_centre_hears_of_the_station(packed, centre):
    with working(packed, centre) as worker:
        until(level(worker), "level")
        until(lambda: centre.ask("SELECT FROM centre.register"), "a heartbeat")
        first = centre.ask("SELECT contact FROM centre.register")
        until(lambda: centre.ask("SELECT contact FROM centre.register") > first, "the next one")
    ((site, station, epoch, seq, software),) = centre.ask(
        "SELECT site, station, epoch, head_seq, software FROM centre.register"
    )
    ((ours, entries),) = entries_of(packed.home).items()
    assert (site, station, epoch, seq, software) == (*ME, ours, len(entries), "0.1.0")


def test_a_clock_far_from_the_centre_s_is_told(packed, centre):
    with working(packed, centre) as worker:  # the clock of these tests stands in March
        until(lambda: any("clock" in words for words in worker.status.alarms), "an alarm")


def test_what_cannot_be_reached_is_tried_again_and_its_backlog_told(packed, centre, proxy):
    proxy.refuse = True
    with working(packed, centre, proxy.port) as worker:
        until(lambda: worker.status.state is SyncState.WAITING and worker.status.backlog, "told")
        assert worker.status.oldest is not None
        until(lambda: proxy.accepted > 4, "tried again")
        proxy.refuse = False
        until(level(worker), "level")
    assert_level(packed.home, centre)


def test_a_cut_connection_is_made_again(packed, centre, proxy):
    with working(packed, centre, proxy.port) as worker:
        for _ in range(5):
            until(level(worker), "level")
            before = proxy.accepted
            proxy.cut()
            until(lambda before=before: proxy.accepted > before, "connected again")
        until(level(worker), "level")
    assert_level(packed.home, centre)


def test_a_stalled_connection_is_given_up_in_time(packed, centre, proxy):
    with working(packed, centre, proxy.port) as worker:
        until(level(worker), "level")
        proxy.stalled = True
        began = time.monotonic()
        until(lambda: worker.status.state is SyncState.WAITING, "given up")
        assert time.monotonic() - began < 30  # unwatched, TCP would wait for minutes
        proxy.stalled = False
        proxy.cut()
        until(level(worker), "level")


def test_a_server_that_stands_still_holds_up_nothing(packed, centre, server):
    with working(packed, centre) as worker:
        until(level(worker), "level")
        server.freeze()
        try:
            until(lambda: worker.status.state is SyncState.WAITING, "noticed")
            began = time.monotonic()
            worker.stop()
            assert time.monotonic() - began < 20  # the server stands for ever
        finally:
            server.thaw()


def test_a_line_of_few_bytes_a_second_still_brings_all_of_it(packed, centre, proxy):
    """What takes longer than a deadline in one piece is sent in smaller ones."""
    proxy.rate = 20_000
    timing = Timing(look=0.05, beat=30, connect=4.0, exchange=1.0, first=0.05, most=0.2)
    with working(packed, centre, proxy.port, timing) as worker:
        until(level(worker), "level")
    assert_level(packed.home, centre)


def test_stops_at_once_while_it_waits(packed, centre, proxy):
    proxy.refuse = True
    slow = Timing(first=30, most=60)
    with working(packed, centre, proxy.port, slow) as worker:
        until(lambda: worker.status.state is SyncState.WAITING, "waiting")
        began = time.monotonic()
    assert time.monotonic() - began < 15  # of the 30 it would wait


def test_other_entries_at_the_centre_are_a_conflict_and_need_somebody(packed, centre, tmp_path):
    copy = World(tmp_path / "copy")
    shutil.copytree(packed.home, copy.home)
    for world, count in ((packed, 100), (copy, 9000)):
        world.clock.count = count
        with world.open():
            pass
    with working(packed, centre) as worker:
        until(level(worker), "level")
    with working(copy, centre) as worker:
        until(lambda: worker.status.state is SyncState.CONFLICT, "told")
        words = worker.status.needs(copy.clock.now().utc, DAY)
        assert "two stations have one name" in words
    assert_level(packed.home, centre)


def test_two_stations_of_one_name_with_records_of_their_own_are_found(packed, centre, tmp_path):
    other = World(tmp_path / "other")
    with other.stocked():
        pass
    with working(packed, centre) as one, working(other, centre) as two:

        def told(worker: SyncWorker) -> bool:
            return any("another station speaks" in words for words in worker.status.alarms)

        until(lambda: told(one) or told(two), "found")
        until(lambda: one.status.contact and level(one)(), "and both are kept")
        until(level(two), "both")
    assert_level(packed.home, centre)
    assert_level(other.home, centre)


@pytest.mark.expects_log("the way to the centre failed")
def test_a_fault_of_its_own_does_not_end_the_thread(packed, centre):
    class Broken:
        visits = 0

        def visit(self, connection, wait_s):
            self.visits += 1
            if self.visits < 3:
                raise ZeroDivisionError("a slip")
            return ()

        def look(self):
            return ()

    visitor = Broken()
    worker = SyncWorker(
        packed.home, centre.station(*ME), "0.1.0", packed.clock, visitor=visitor, timing=QUICK
    )
    worker.start()
    try:
        until(lambda: visitor.visits >= 3 and level(worker)(), "went on")
    finally:
        worker.stop()
    assert_level(packed.home, centre)


def test_no_thread_is_left(packed, centre):
    with working(packed, centre):
        assert any(thread.name == "sync" for thread in threading.enumerate())
    assert all(thread.name != "sync" for thread in threading.enumerate())
