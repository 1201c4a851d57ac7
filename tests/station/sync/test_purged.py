"""What a station purged: the centre keeps it, and neither side calls it damage."""

from datetime import date
from pathlib import Path

import pytest

from station.errors import BadInput
from station.store.outlet import JournalOutlet
from station.store.verify import verify
from station.sync.batch import PURGED
from station.sync.connection import connect
from station.sync.reconcile import DayCompared, reconcile
from tests.station.store.old_runs import BAGS, OldRuns, old_runs
from tests.station.sync.centre import WAIT_S, Centre, send_all

ME = ("HA", "L1A")


@pytest.fixture
def made(world) -> OldRuns:
    return old_runs(world)


def compared(made: OldRuns, centre: Centre) -> list[DayCompared]:
    epoch = verify(made.home).epoch
    with (
        JournalOutlet(made.home) as outlet,
        connect(centre.station(*ME), "station", WAIT_S) as connection,
    ):
        since, upto = date(2026, 1, 1), {epoch: centre.mark(epoch)}
        return list(reconcile(outlet, connection, ME, since, upto))


def sent(made: OldRuns, centre: Centre) -> dict[int, int]:
    epoch = verify(made.home).epoch
    return {epoch: centre.mark(epoch)}


def test_what_the_centre_has_not_is_not_purged(made, centre, tmp_path: Path):
    with pytest.raises(BadInput, match="is not at the centre"):
        made.purge(tmp_path / "out", sent={})
    assert verify(made.home).whole


def test_a_purged_record_goes_on_sending_and_compares_equal(made, centre, tmp_path):
    send_all(made.home, centre.station(*ME))
    gone = made.purge(tmp_path / "out", sent=sent(made, centre)).entries
    send_all(made.home, centre.station(*ME))
    assert centre.ask("SELECT count(*) FROM centre.quarantine") == [(0,)]
    days = compared(made, centre)
    assert all(one.equal for one in days)
    assert sum(one.purged for one in days) == gone
    assert sum(one.ours.packs for one in days) == BAGS + 12
    # the day's bags weigh what the centre alone still knows
    (first, *_) = days
    assert first.theirs.net_ug > first.ours.net_ug


def test_bytes_changed_at_the_centre_are_named_although_the_station_purged_them(
    made, centre, tmp_path
):
    send_all(made.home, centre.station(*ME))
    made.purge(tmp_path / "out", sent=sent(made, centre))
    (seq,) = centre.ask("SELECT min(seq) FROM centre.entry WHERE kind = 'pack'")[0]
    centre.tell(
        "UPDATE centre.entry SET canonical = replace(encode(canonical, 'escape'), '0.2525 kg', "
        "'0.2425 kg')::bytea WHERE seq = %s", seq,
    )  # fmt: skip
    assert [one.differing for one in compared(made, centre) if not one.equal] == [((seq, seq),)]


def test_a_centre_that_never_had_it_is_told_that_it_was_purged(made, centre, tmp_path):
    gone = made.purge(tmp_path / "out").entries
    send_all(made.home, centre.station(*ME))
    assert centre.ask("SELECT why, count(*) FROM centre.quarantine GROUP BY why") == [
        (PURGED, gone)
    ]
    entries = verify(made.home).entries
    assert centre.ask("SELECT count(*) FROM centre.entry") == [(entries - gone,)]
    unequal = [one for one in compared(made, centre) if not one.equal]
    assert sum(last - first + 1 for one in unequal for first, last in one.differing) >= gone
    assert all(one.purged for one in unequal)
