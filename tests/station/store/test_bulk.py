"""The writer of long records: what it left unfinished, it says nothing of."""

from datetime import timedelta

import pytest

from station.store.bulk import BulkRecord, BulkRun
from station.store.heads import read_head
from station.store.journal import count_entries
from station.store.verify import verify


def test_an_interruption_leaves_a_record_that_opens_and_holds(world):
    with world.open():
        pass
    at = world.clock.now()
    run = world.run()
    kinds = (world.draft(run),)
    given = BulkRun(run, world.lots, at, 600, timedelta(seconds=7), kinds)

    def broken_off():
        yield given
        raise KeyboardInterrupt

    record = BulkRecord(world.home, world.site, world.station, at)
    with pytest.raises(KeyboardInterrupt):
        record.add(broken_off())
    record.close()
    assert read_head(world.home).seq == count_entries(world.home) == 2  # a start and a stop
    assert verify(world.home).whole
    record = BulkRecord(world.home, world.site, world.station, at)
    assert record.add([given]) == 600
    record.close()
    with world.open() as store:
        assert store.head()[0] > 600
    assert verify(world.home).whole
