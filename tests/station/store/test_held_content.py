"""What a hold covers does not get out by way of the reject bin."""

import pytest

from station.core.dispositions import LINKED, Decided, Disposition, disposition_fact
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.line_lots import move_fact
from station.line.ports import StoreFault
from station.store.queries import trace_pack
from station.store.rebuild import rebuild
from tests.station.store.conftest import back_on_the_line


@pytest.fixture
def floor(world):
    """A light bag among others, all under one hold, and a bag packed later."""
    store = world.stocked()
    run = world.start(store)
    light = world.fill(store, run, 3)[2]
    hold(world, store, "h1", 1, 3)
    later = world.fill(store, run, 1)[0]
    yield world, store, run, light, later
    store.close()


def hold(world, store, uid, first, last):
    ranges = {"ranges": [[str(store.epoch), first, last]], "reason": "metal"}
    store.record((Fact(EntryKind.HOLD, uid, "seal 2", "held", details=ranges),),
                 world.clock.now(), "q.wren")  # fmt: skip


def release(world, store, uid):
    free = Fact(EntryKind.RELEASE, f"r{uid}", "seal 2", "released", details={"hold": uid})
    store.record((free,), world.clock.now(), "q.wren")


def decide(world, store, run, light, end, into, uid="d1"):
    decided = Decided(light, end, "light", "p.marsh", into=into if end in LINKED else "")
    made = [disposition_fact(decided, uid, run.id)]
    if end is Disposition.REWORK:
        move = back_on_the_line(world.home, light)
        made.insert(0, move_fact(move, f"m{uid}", "L1", run.id))
    store.record(made, world.clock.now(), "q.wren")


GOES_ON = [one for one in Disposition if one not in (Disposition.DUMP, Disposition.SAMPLE)]


@pytest.mark.parametrize("end", GOES_ON)
def test_its_content_goes_on_only_after_the_last_release(floor, end):
    world, store, run, light, later = floor
    hold(world, store, "h2", 2, 9)
    for uid in ("h1", "h2"):
        with pytest.raises(StoreFault, match=f"bag {light} lies under the hold of seal 2"):
            decide(world, store, run, light, end, later)
        release(world, store, uid)
    decide(world, store, run, light, end, later)


@pytest.mark.parametrize("end", [Disposition.DUMP, Disposition.SAMPLE])
def test_it_may_be_dumped_or_sampled_at_any_time(floor, end):
    world, store, run, light, later = floor
    decide(world, store, run, light, end, later)


def test_what_was_decided_before_the_hold_is_rebuilt_as_it_was(floor):
    world, store, run, _, _ = floor
    light, later = world.fill(store, run, 3)[2], world.fill(store, run, 1)[0]  # beyond the hold
    decide(world, store, run, light, Disposition.DOWNGRADE, later)
    hold(world, store, "h3", 1, 9)
    store.close()
    rebuild(world.home)
    assert str(trace_pack(world.home, light).quality) == "downgraded"
