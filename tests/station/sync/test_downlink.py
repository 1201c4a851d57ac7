"""Snapshots from the centre's key to the station's shelf, over a real server."""

import json
import shutil
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from station.app.centre_settings import checked_with
from station.app.places import demo_settings
from station.config.load import load
from station.core.metrology.rule_sets.registry import RULE_SETS
from station.line.centre_duty import Listed, Stop
from station.store.signing import make_key, read_key
from station.sync.connection import connect
from station.sync.downlink import Downlink, Uses
from station.sync.errors import CentreGone
from station.sync.publishing import publish, stops_now
from station.sync.shelf import Series, Shelf
from station.sync.snapshot import CentreStop, Kind, SnapshotRefused, opened
from tests.station.line.lot_rig import PlantClock
from tests.station.sync.centre import WAIT_S, Centre

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
HOUR = timedelta(hours=1)
LISTERIA = CentreStop("0193-h1", Stop(Listed.LOT, "ROM-1", "listeria found"))


class Away:
    """A station of site HA that takes snapshots, and the one who publishes them."""

    def __init__(self, centre: Centre, folder: Path, site: str = "HA") -> None:
        self.centre, self.folder = centre, folder
        key = folder / "centre.key"
        self.key = read_key(key) if key.exists() else make_key(key)
        self.clock = PlantClock(NOW)
        self.house = load(demo_settings(), NOW.date())
        self.home = folder / "home"
        self.home.mkdir(exist_ok=True)
        self.shelf = Shelf(self.home, site, self.key.public)
        self.heard: list[tuple[CentreStop, ...]] = []
        uses = Uses(checked_with(self.house), self.heard.append, {Kind.PRODUCTS: 0})
        self.downlink = Downlink(self.shelf, site, self.key.public, self.clock, uses)

    def publish(self, kind, content, site="*", effective=NOW, key=None):
        with self.centre.owner() as connection:
            return publish(connection, key or self.key, site, kind, content, effective, NOW)

    def visit(self):
        with connect(self.centre.station("HA", "L1A"), "station", WAIT_S) as connection:
            return self.downlink.visit(connection, WAIT_S)


@pytest.fixture
def away(centre, tmp_path):
    return Away(centre, tmp_path)


def stops(*lines):
    return [line.value() for line in lines]


def test_a_hold_reaches_the_station_at_its_next_visit(away):
    assert away.visit() == ()
    away.publish(Kind.STOPS, stops(LISTERIA))
    assert away.visit() == ()
    assert away.heard[-1] == (LISTERIA,)
    away.publish(Kind.STOPS, [])
    away.visit()
    assert away.heard[-1] == ()


def test_what_holds_later_waits_for_its_time_without_the_centre(away):
    away.publish(Kind.STOPS, stops(LISTERIA), effective=NOW + HOUR)
    away.visit()
    assert away.heard[-1] == ()
    away.clock.utc = NOW + HOUR
    away.downlink.look()
    assert away.heard[-1] == (LISTERIA,)


def test_lists_for_every_site_and_for_one_add_up(away):
    other = CentreStop("0193-h2", Stop(Listed.PRODUCT, "SLAW-340", "new recipe"))
    elsewhere = CentreStop("0193-h3", Stop(Listed.LOT, "ZB-9", "elsewhere"))
    away.publish(Kind.STOPS, stops(LISTERIA))
    away.publish(Kind.STOPS, stops(other), site="HA")
    away.publish(Kind.STOPS, stops(elsewhere), site="ZB")
    away.visit()
    assert set(away.heard[-1]) == {LISTERIA, other}


def test_an_unsigned_one_is_refused_and_the_last_good_one_stays(away, tmp_path):
    away.publish(Kind.STOPS, stops(LISTERIA))
    away.visit()
    stranger = make_key(tmp_path / "stranger.key")
    away.publish(Kind.STOPS, [], key=stranger)
    (alarm,) = away.visit()
    assert "stops 2 of the centre is refused, version 1 stays: its signature" in alarm
    assert away.heard[-1] == (LISTERIA,)


def test_changed_in_the_database_is_refused(away):
    away.publish(Kind.STOPS, stops(LISTERIA))
    away.centre.tell(
        "UPDATE centre.snapshot SET body = replace(convert_from(body, 'UTF8'), 'ROM-1', 'ROM-2')"
        "::bytea"
    )
    (alarm,) = away.visit()
    assert "none is in force" in alarm
    assert away.heard[-1] == ()


def test_an_older_one_put_under_a_newer_number_is_refused(away):
    away.publish(Kind.STOPS, [])
    away.publish(Kind.STOPS, stops(LISTERIA))
    away.visit()
    away.centre.tell(
        "INSERT INTO centre.snapshot SELECT site, kind, 3, body, signature FROM centre.snapshot "
        "WHERE version = 1"
    )
    (alarm,) = away.visit()
    assert "another name than its own" in alarm
    assert away.heard[-1] == (LISTERIA,)


def test_a_damaged_file_does_not_exist_and_the_one_before_it_is_in_force(away):
    away.publish(Kind.STOPS, stops(LISTERIA))
    away.visit()
    away.publish(Kind.STOPS, [])
    away.visit()
    file = away.home / "centre" / "every-stops-2.json"
    told = json.loads(file.read_text())
    told["body"] = told["body"].replace('"version":2', '"version":3')
    file.write_text(json.dumps(told))
    away.downlink.look()
    assert away.heard[-1] == (LISTERIA,)
    file.write_text("half a fi")
    away.downlink.look()
    assert away.heard[-1] == (LISTERIA,)


def test_products_are_tried_before_they_are_kept(away):
    good = (demo_settings() / "products.toml").read_text()
    away.publish(Kind.PRODUCTS, good)
    (waits,) = away.visit()
    assert "products 1 of every site are in force: start the station again" in waits
    away.publish(Kind.PRODUCTS, good.replace('target = "', 'target = "9', 1))
    alarms = away.visit()
    assert any("products 2 of the centre is refused, version 1 stays" in one for one in alarms)
    assert away.shelf.newest(Series("*", Kind.PRODUCTS)) == 1
    laid = away.shelf.lay_out(Kind.PRODUCTS, NOW)
    assert laid is not None
    assert laid.read_text() == good
    folder = shutil.copytree(demo_settings(), away.folder / "settings")
    (folder / "products.toml").write_text("nothing")
    house = load(folder, NOW.date(), {"products.toml": laid})
    assert house.products.keys() == away.house.products.keys()


def test_the_site_s_own_products_come_before_those_of_every_site(away):
    text = (demo_settings() / "products.toml").read_text()
    away.publish(Kind.PRODUCTS, text)
    away.publish(Kind.PRODUCTS, "# of this site\n" + text, site="HA")
    away.visit()
    found = away.shelf.text(Kind.PRODUCTS, NOW)
    assert found is not None
    assert found.site == "HA"


def test_another_version_of_a_rule_set_is_told(away):
    versions = {name: one.version for name, one in RULE_SETS.items()}
    away.publish(Kind.RULES, versions)
    assert away.visit() == ()
    away.publish(Kind.RULES, {**versions, "eu-76-211": "of the future"})
    (alarm,) = away.visit()
    assert "rule set eu-76-211 in version of the future" in alarm


def test_only_one_snapshot_behind_the_one_in_force_is_kept_and_its_age_known(away):
    assert away.shelf.age(NOW) is None
    for number in range(5):
        away.publish(Kind.STOPS, stops(LISTERIA) if number % 2 else [])
        away.visit()
    names = sorted(one.name for one in (away.home / "centre").iterdir())
    assert names == ["every-stops-4.json", "every-stops-5.json"]
    assert away.shelf.age(away.clock.utc + 3 * HOUR) == 3 * HOUR


@pytest.mark.parametrize(
    ("kind", "content"),
    [
        (Kind.STOPS, "text"),
        (Kind.STOPS, [{"what": "lot"}]),
        (Kind.STOPS, [{"uid": "1", "what": "colour", "code": "A", "reason": "b"}]),
        (Kind.RULES, ["eu"]),
        (Kind.RULES, {"eu": 1}),
        (Kind.PRODUCTS, []),
    ],
)
def test_what_is_not_of_its_kind_is_not_published(away, kind, content):
    with pytest.raises(SnapshotRefused):
        away.publish(kind, content)
    assert away.centre.ask("SELECT count(*) FROM centre.snapshot") == [(0,)]


def test_a_list_can_be_read_back_with_its_key_alone(away, tmp_path):
    away.publish(Kind.STOPS, stops(LISTERIA))
    with away.centre.owner() as connection:
        assert stops_now(connection, away.key, "*") == (LISTERIA,)
        with pytest.raises(SnapshotRefused):
            stops_now(connection, make_key(tmp_path / "other.key"), "*")


def test_a_station_cannot_publish(away):
    with (
        connect(away.centre.station("HA", "L1A"), "station", WAIT_S) as connection,
        pytest.raises(CentreGone, match="denied"),
    ):
        publish(connection, away.key, "*", Kind.STOPS, [], NOW, NOW)


def test_a_body_without_its_form_is_refused(away):
    body = b'{"form":"another"}'
    with pytest.raises(SnapshotRefused, match="form"):
        opened(body, away.key.sign(body), away.key.public)
