from station.core.facts import Fact
from station.core.journal import EntryKind
from station.store.run_counts import count_run, last_packed_run
from tests.station.store.conftest import a_run


def test_an_empty_record_has_no_run(world):
    with world.stocked():
        assert last_packed_run(world.home) is None
        assert count_run(world.home, "nothing") is None


def test_labelled_bags_stand_on_the_pallet_held_ones_too(world):
    """Of six bags two were set aside at once; one is taken back, one is held."""
    with world.stocked() as store:
        run = world.start(store)
        serials = world.fill(store, run, 6)
        store.take_back(serials[0], "burst seal", world.clock.now(), "i.sedge")
        ranges = [[str(store.epoch), 2, 2]]
        held = Fact(EntryKind.HOLD, "h1", "scale check", "held", "", {"ranges": ranges})
        store.record((held,), world.clock.now(), "q.wren")
        found = count_run(world.home, run.id)
        assert found is not None
        assert (found.bags, found.open, found.name) == (3, True, run.product.name)
        assert found.blend_lot == run.blend_lot
        store.end_run(run.id, world.clock.now(), "p.marsh")
        ended = count_run(world.home, run.id)
        assert ended is not None
        assert not ended.open


def test_a_run_without_a_bag_is_not_the_last_packed(world):
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 1)
        store.end_run(run.id, world.clock.now(), "p.marsh")
        empty = a_run(2)
        store.start_run(empty, world.clock.now())
        assert last_packed_run(world.home) == run.id
        found = count_run(world.home, empty.id)
        assert found is not None
        assert found.bags == 0
