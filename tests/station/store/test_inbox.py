"""What the inbox of QA asks for, day by day."""

from dataclasses import replace
from datetime import UTC, date, datetime, time

import pytest

from station.core.day_review import DayReview, review_fact
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.store.inbox import inbox
from tests.station.store.conftest import DAY

NEXT = date(2026, 3, 5)


@pytest.mark.parametrize(
    ("utc", "cut_off", "day"),
    [
        (datetime(2026, 3, 5, 2, tzinfo=UTC), time(4), DAY),  # three at night in Madrid
        (datetime(2026, 3, 4, 23, 30, tzinfo=UTC), time(0), NEXT),
    ],
)
def test_a_clock_found_wrong_at_night_is_settled_with_its_production_day(world, utc, cut_off, day):
    with world.stocked() as store:
        world.fill(store, world.start(store), 2)
        at = replace(world.clock.now(), utc=utc)
        store.record((Fact(EntryKind.CLOCK, "c1", "the clock", "jumped"),), at, "station")

        def asked():
            items = inbox(world.home, date(2026, 3, 7), cut_off)
            return [one.key for one in items if one.words == "The clock: the clock, jumped"]

        assert asked() == [day.isoformat()]
        for signed, left in ((DAY if day == NEXT else NEXT, 1), (day, 0)):
            review = DayReview(signed, (), "", 2, 0, ())
            store.record((review_fact(review, f"r{left}"),), world.clock.now(), "q.fen")
            assert len(asked()) == left
