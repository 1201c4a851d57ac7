"""A whole station and a real centre: bags go up, a hold comes down and closes the line at once."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from station.config.packhouse import Packhouse
from station.config.sync_settings import SyncSettings
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.line.centre_duty import Listed, Stop
from station.store.facts import fact_named
from station.store.outlet import JournalOutlet
from station.store.signing import make_key
from station.sync.publishing import publish
from station.sync.schema import role
from station.sync.snapshot import CentreStop, Kind
from tests.end_to_end.line import bench_line
from tests.station.sync.centre import Centre, send_all
from tests.station.sync.server import QUICK, Server


@pytest.fixture(scope="module")
def centre():
    server = Server(QUICK)
    yield Centre(server, ("QH", "A1"))
    server.close()


def test_bags_go_up_and_a_hold_of_the_centre_closes_the_line(centre, tmp_path):
    key = make_key(tmp_path / "centre.key")
    sync = SyncSettings(
        centre.server.url(centre.name, role("QH", "A1")), "disable", snapshot_key=key.public.hex()
    )

    def with_centre(house: Packhouse) -> Packhouse:
        return replace(house, settings=replace(house.settings, sync=sync))

    with bench_line(tmp_path / "home", changed=with_centre) as line:
        product = line.open_run()
        with line.packer(product):
            state = line.until(lambda state: state.tally.good >= 3)
            lot = state.run.lot_set.uses[0].lot
            now = datetime.now(UTC)  # noqa: TID251  the station's own clock is the machine's
            uid = new_uid(line.station.clock.now())
            stop = CentreStop(uid, Stop(Listed.LOT, lot, "listeria found"))
            with centre.owner() as connection:
                publish(connection, key, "*", Kind.STOPS, [stop.value()], now, now)
            state = line.until(lambda state: len(state.closed) > 1)
        packed = state.tally
        assert any(f"the centre stops lot {lot} (listeria found)" in one for one in state.closed)
        assert any(f"lot {lot} is held" in one for one in state.closed)
    found = fact_named(tmp_path / "home", uid)
    assert found is not None
    assert found.fact.details["reason"] == "the centre: listeria found"
    assert found.fact.details["ranges"]  # every bag that could hold it is held too
    send_all(tmp_path / "home", centre.station("QH", "A1"))
    with JournalOutlet(tmp_path / "home") as outlet:
        (span,) = outlet.epochs()
    assert centre.mark(span.epoch) == span.last
    kinds = centre.ask("SELECT kind, count(*) FROM centre.entry GROUP BY 1")
    assert dict(kinds)[str(EntryKind.PACK)] >= packed.good
