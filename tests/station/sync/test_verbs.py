"""The verbs of the centre and of sync, on a real server."""

import re
import shutil

import pytest

from station.app.places import demo_settings
from station.app.speed.long_record import make_long_record
from station.sync.schema import role
from tests.station.cli.conftest import station as station
from tests.station.sync.server import Server

DAY = "2026-11-24"
PLAIN = ("--tls", "disable")


@pytest.fixture(scope="module")
def shop(server: Server, tmp_path_factory):
    """A settings folder with its record of 200 bags, and a database that is no centre yet."""
    folder = tmp_path_factory.mktemp("shop")
    server.make_database("shop")
    config = shutil.copytree(demo_settings(), folder / "settings")
    home = folder / "home"
    home.mkdir()
    record = make_long_record(config, home, 200)
    with (config / "station.toml").open("a", encoding="utf-8") as file:
        file.write(
            f'\n[sync]\ncentre = "{server.url("shop", role("QH", "A1"))}"\ntls = "disable"\n'
        )
    return server.url("shop"), config, home, record


def test_a_centre_is_made_filled_and_asked(station, shop):
    url, config, home, record = shop
    asked = station("sync", "status", "--config", config, "--home", home, "--json")
    assert asked.code == 3  # the centre has no tables
    made = station("centre", "init", url, *PLAIN, "--station", "QH/A1", "--json")
    assert made.code == 0
    ((admitted),) = made.document["stations"]
    assert (admitted["station"], admitted["role"]) == ("QH/A1", "station_QH_A1")

    waits = station("sync", "status", "--config", config, "--home", home, "--json")
    assert (waits.code, waits.document["left"] > 200) == (1, True)
    sent = station("sync", "once", "--config", config, "--home", home, "--json")
    assert (sent.code, sent.document["sent"]) == (0, waits.document["left"])
    level = station("sync", "drain", "--config", config, "--home", home, "--json")
    assert (level.code, level.document["sent"], level.document["left"]) == (0, 0, 0)

    at = ("--centre", url, *PLAIN)
    rejects = station("centre", "rejects", *at, "--day", DAY, "--json").document["rejects"]
    own = station("rejects", "--day", DAY, "--home", home, "--json").document["rejects"]
    assert [one["serial"] for one in rejects] == [one["serial"] for one in own]
    assert rejects

    recalled = station("centre", "recall", *at, record.lot, "--json")
    mine = station("recall", "--lot", record.lot, "--home", home, "--json")
    assert recalled.code == mine.code == 1  # bags are free to leave
    assert recalled.document["bags"] == mine.document["bags"]

    given = station("centre", "giveaway", *at, "--day", DAY, "--json").document["lines"]
    assert sum(one["bags"] for one in given) == 200 - len(rejects)
    serial = rejects[0]["serial"]
    (pack,) = station("centre", "trace", *at, serial, "--json").document["packs"]
    assert pack["now"] == "reject"
    blend = station("centre", "trace", *at, pack["blend_lot"], "--json").document
    assert blend["bags"] >= 1
    assert station("centre", "trace", *at, "NOPE").code == 2
    assert station("centre", "recall", *at, "NOPE").code == 2
    for verb in (("rejects", "--day", DAY), ("recall", record.lot), ("giveaway", "--day", DAY),
                 ("trace", serial), ("stations",)):  # fmt: skip
        page = station("centre", verb[0], *at, *verb[1:])
        assert "QH" in page.out, verb


def test_the_record_is_compared_day_by_day(station, shop):
    _, config, home, _ = shop
    page = station("sync", "reconcile", "--config", config, "--home", home, "--days", "9000")
    assert page.code == 0, page.err
    assert "equal" in page.out
    told = station(
        "sync", "reconcile", "--config", config, "--home", home, "--days", "9000", "--json"
    ).document["days"]
    assert sum(one["packs"][0] for one in told) == 200


def test_a_purge_asks_the_centre_what_it_has(station, shop, tmp_path):
    _, config, home, _ = shop
    told = station("purge", "--config", config, "--home", home, "--json")
    assert (told.code, told.document["going"]) == (0, []), told.err
    gone = shutil.copytree(config, tmp_path / "settings")
    path = gone / "station.toml"
    text = path.read_text(encoding="utf-8")
    path.write_text(
        re.sub(r"localhost:\d+|127\.0\.0\.1:\d+", "127.0.0.1:1", text), encoding="utf-8"
    )
    assert path.read_text(encoding="utf-8") != text
    nobody = station("purge", "--config", gone, "--home", home, "--json")
    assert nobody.code == 3
    assert "does not say what it has" in nobody.error["title"]


def test_quarantine_is_listed_and_signed_for(station, server, shop):
    url = shop[0]
    at = ("--centre", url, *PLAIN)
    assert station("centre", "quarantine", *at).code == 0
    with server.connect("shop") as connection:
        connection.execute(
            "INSERT INTO centre.quarantine SELECT site, station, epoch, seq, hash, canonical, "
            "'a reason', clock_timestamp() FROM centre.entry WHERE seq IN (3, 4)"
        )
    listed = station("centre", "quarantine", *at, "--json")
    assert (listed.code, listed.document["open"]) == (1, 2)
    told = station("centre", "stations", *at, "--json")
    assert "2 entries in quarantine" in told.document["stations"][0]["trouble"]
    assert station("centre", "quarantine", *at, "--settle", "QH/A1").code == 2
    signed = station("centre", "quarantine", *at, "--settle", "QH/A1", "--who", "Q01",
                     "--reason", "a test", "--json")  # fmt: skip
    assert (signed.code, signed.document["open"]) == (0, 0)
    assert signed.document["quarantine"][0]["settled"] == "Q01: a test"
    told = station("centre", "stations", *at, "--json")
    assert told.document["stations"][0]["trouble"] == ""


def test_a_stop_is_listed_and_taken_off_again(station, shop, tmp_path):
    url = shop[0]
    key = tmp_path / "centre.key"
    public = station("centre", "key", key, "--json").document["public"]
    assert len(public) == 64
    at = ("--centre", url, *PLAIN, "--key", key)
    first = station("centre", "stop", *at, "lot", "HG-1", "--reason", "metal", "--json").document
    second = station("centre", "stop", *at, "product", "SLAW-340", "--reason", "recipe", "--json")
    assert (first["version"], second.document["version"]) == (1, 2)
    assert station("centre", "free", *at, "HG-1", "--json").document["version"] == 3
    refused = station("centre", "free", *at, "HG-1")
    assert (refused.code, "SLAW-340" in refused.err) == (2, True)
    assert station("centre", "stop", *at, "colour", "A", "--reason", "b").code == 2
    products = demo_settings() / "products.toml"
    when = "2026-12-01T04:00+00:00"
    made = station("centre", "publish", *at, "products", "--file", products, "--site", "QH",
                   "--effective", when, "--json").document  # fmt: skip
    assert (made["version"], made["site"]) == (1, "QH")
    assert made["effective"].startswith("2026-12-01T04:00")
    assert station("centre", "publish", *at, "rules", "--json").code == 0
    assert station("centre", "publish", *at, "people").code == 2
    assert station("centre", "publish", *at, "rules", "--effective", "2026-12-01T04:00").code == 2
    assert station("centre", "key", key).code == 3


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("centre", "init", "http://x/y", *PLAIN), "no address of a centre"),
        (("centre", "init", "postgresql://a@b/c"), "certificate of the authority"),
        (("centre", "init", "postgresql://a:b@c/d", *PLAIN), "holds a password"),
        (("centre", "init", "postgresql://a@b/c", "--tls", "prefer"), "one of verify-full"),
        (("centre", "init", "postgresql://a@b/c", *PLAIN, "--station", "qh a1"), "SITE/STATION"),
    ],
)
def test_what_is_wrong_is_named(station, arguments, words):
    refused = station(*arguments)
    assert refused.code == 2
    assert words in refused.err


def test_a_station_without_a_centre_is_told_where_to_name_it(station, tmp_path):
    refused = station("sync", "once", "--config", demo_settings(), "--home", tmp_path)
    assert refused.code == 2
    assert "[sync]" in refused.err


def test_a_centre_nobody_answers_at_is_a_fault_of_the_surroundings(station):
    refused = station("centre", "stations", "--centre", "postgresql://a@127.0.0.1:1/c", *PLAIN)
    assert refused.code == 3
    assert "does not serve" in refused.err


def test_a_drain_waits_for_the_centre_and_for_nothing_else(station, shop, tmp_path):
    _, config, _, _ = shop
    (tmp_path / "station.sqlite").write_bytes(b"no database " * 1000)
    drained = station("sync", "drain", "--config", config, "--home", tmp_path)
    assert drained.code == 3
    assert "station.sqlite" in drained.err
