"""What the centre sends, put into use: holds once each, products laid over the station's own."""

import shutil
from datetime import UTC, datetime

import pytest

from station.app.centre_settings import laid_over, running, shelf_of
from station.app.centre_stops import CentreStops
from station.app.places import demo_settings, packhouse
from station.config.load import load_settings
from station.core.lots import InputLot
from station.core.receiving import hold_lot_fact
from station.core.rights import STATION
from station.line.centre_duty import Listed, Stop
from station.store.signing import make_key
from station.sync.snapshot import CentreStop, Kind, Snapshot
from tests.station.store.conftest import World

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
HOLD = CentreStop("0193-h1", Stop(Listed.LOT, "LF-101", "listeria found"))
PRODUCT = CentreStop("0193-h2", Stop(Listed.PRODUCT, "SLAW-340", "new recipe"))


@pytest.fixture
def world(tmp_path):
    world = World(tmp_path / "home")
    with world.stocked():
        pass
    return world


def test_a_listed_lot_is_held_once_and_only_where_it_is_known(world):
    lots: dict[str, InputLot] = {}
    stops, entered = CentreStops(world.home, lots), []
    stops.heard((HOLD, PRODUCT))
    assert stops.now() == (HOLD.stop, PRODUCT.stop)  # closes acceptance at once, lot known or not
    stops.enter = lambda facts, who: entered.append((facts, who))
    stops.heard((HOLD, PRODUCT))
    assert entered == []
    lots["LF-101"] = world.lots[0]
    for _ in range(3):
        stops.heard((HOLD, PRODUCT))
    (((fact,), who),) = entered
    assert (fact.uid, fact.subject, who) == (HOLD.uid, "LF-101", STATION)
    assert fact.details["reason"] == "the centre: listeria found"
    stops.heard(())
    assert stops.now() == ()


def test_a_hold_on_record_is_not_entered_again_after_a_restart(world):
    with world.open() as store:
        store.record((hold_lot_fact(HOLD.uid, "LF-101", "listeria"),), world.clock.now(), STATION)
    stops, entered = CentreStops(world.home, {"LF-101": world.lots[0]}, (HOLD,)), []
    assert stops.now() == (HOLD.stop,)
    stops.enter = lambda facts, who: entered.append(facts)
    stops.heard((HOLD,))
    assert entered == []


@pytest.fixture
def shop(tmp_path):
    """Settings that take snapshots, an empty home, and the centre's key."""
    key = make_key(tmp_path / "centre.key")
    config = shutil.copytree(demo_settings(), tmp_path / "settings")
    with (config / "station.toml").open("a", encoding="utf-8") as file:
        file.write(
            '\n[sync]\ncentre = "postgresql://a@b/c"\ntls = "disable"\n'
            f'snapshot_key = "{key.public.hex()}"\n'
        )
    home = tmp_path / "home"
    home.mkdir()
    return config, home, key


def take_in(shop, kind, text, version=1):
    config, home, key = shop
    shelf = shelf_of(load_settings(config), home)
    snapshot = Snapshot("*", kind, version, datetime(2026, 1, 1, tzinfo=UTC), NOW, text)
    body = snapshot.body()
    shelf.take_in(snapshot, body, key.sign(body), NOW)
    return shelf


def test_products_of_the_centre_take_the_place_of_the_station_s_own(shop):
    config, home, _ = shop
    text = (config / "products.toml").read_text(encoding="utf-8")
    shelf = take_in(shop, Kind.PRODUCTS, text.replace("version = 1\n", "version = 8\n", 1))
    assert running(shelf, NOW) == {Kind.PRODUCTS: 1, Kind.PEOPLE: 0}
    assert set(laid_over(load_settings(config), home, NOW)) == {"products.toml"}
    versions = {one.version for one in packhouse(config, home).products.values()}
    assert 8 in versions
    assert 8 not in {one.version for one in packhouse(demo_settings()).products.values()}


@pytest.mark.expects_log("what the centre sent is left out")
def test_what_does_not_go_together_with_the_rest_is_left_out(shop):
    config, home, _ = shop
    take_in(shop, Kind.PEOPLE, '[[person]]\nid = "X1"\nname = "Nobody"\nrole = "packer"\n')
    assert packhouse(config, home).people.keys() == packhouse(demo_settings()).people.keys()


def test_a_station_that_takes_none_has_no_shelf(tmp_path):
    settings = load_settings(demo_settings())
    assert shelf_of(settings, tmp_path) is None
    assert laid_over(settings, tmp_path, NOW) == {}
