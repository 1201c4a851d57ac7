"""The short form of the campaign, and proof that its checker can see."""

import pytest

from station.sync.batch import Pace
from tests.campaigns.sync_history import SHORT_S, faults_of
from tests.station.store.conftest import World
from tests.station.sync.centre import Centre, send_all
from tests.station.sync.history import History
from tests.station.sync.server import QUICK, Server


def test_random_faults_lose_nothing_and_double_nothing():
    said: list[str] = []
    assert faults_of(SHORT_S, said.append) == []
    assert len(said) == 2


@pytest.fixture(scope="module")
def sent(tmp_path_factory):
    """A history of a record sent whole, and the centre it went to."""
    server, world = Server(QUICK), World(tmp_path_factory.mktemp("sent") / "home")
    with world.stocked() as store:
        world.fill(store, world.start(store), 9)
    yield server, world
    server.close()


@pytest.mark.parametrize(
    ("damage", "words"),
    [
        ("", ""),
        ("DELETE FROM centre.entry WHERE seq = 5", "was acknowledged and is not there"),
        ("DELETE FROM centre.entry WHERE seq = 5", "a gap, or one twice"),
        ("UPDATE centre.entry SET hash = sha256('x') WHERE seq = 7", "was acknowledged and is no"),
        (
            "INSERT INTO centre.entry SELECT site, station, epoch, 9999, kind, hash, canonical "
            "FROM centre.entry WHERE seq = 1",
            "was never sent",
        ),
        ("UPDATE centre.watermark SET seq = 3", "the watermark says"),
        ("INSERT INTO centre.watermark SELECT site, station, 5, 0, hash FROM centre.watermark",
         "epoch 5 never sent"),
    ],
)  # fmt: skip
def test_the_checker_sees_what_is_wrong(sent, damage, words):
    server, world = sent
    centre, history = Centre(server, ("HA", "L1A")), History()
    with history.recording():
        send_all(world.home, centre.station("HA", "L1A"), Pace(rows=9))
    if damage:
        centre.tell(damage)
    with server.connect(centre.name) as connection:
        found = history.check(connection)
    centre.close()
    assert any(words in fault for fault in found) if words else found == []
