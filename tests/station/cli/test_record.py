"""Verbs that ask a record: rejects, trace, journal verify; over a record the store really wrote."""

import sqlite3
from decimal import Decimal
from pathlib import Path
from shutil import copytree

import pytest

from station.store.writer import StationStore
from tests.station.store.dock import shipped_record

DEMO = Path(__file__).parents[3] / "demo_config"
DATABASE = "station.sqlite"


def test_rejects_of_a_day(station, packed):
    found = station("rejects", "--day", "2026-11-25", "--home", packed.home, "--json")
    assert found.code == 0
    document = found.document
    assert (document["day"], document["count"]) == ("2026-11-25", 3)
    rejects = document["rejects"]
    aside = [packed.serials[place] for place in (2, 4, 5)]
    assert [reject["serial"] for reject in rejects] == aside
    assert [reject["net"] for reject in rejects] == ["331", "358", "329"]
    assert [reject["verdict"] for reject in rejects] == ["below floor", "over", "below T1"]
    assert (document["open"], document["bin"]) == (3, {"expected": 3, "counted": None})
    first = rejects[0]
    assert (first["t1"], first["t2"], first["floor"]) == ("329.8", "319.6", "340")
    assert first["lots"]
    assert (first["decision"], first["label"], first["operator"]) == (None, "none", "P01")


def test_rejects_for_people_and_a_day_without_any(station, packed):
    page = station("rejects", "--day", "2026-11-25", "--home", packed.home).out
    for words in ("3 set aside on 2026-11-25 Wed", packed.serials[2], "329 g", "P01"):
        assert words in page
    none = station("rejects", "--day", "2026-11-24", "--home", packed.home)
    assert none.code == 0
    assert "Nothing set aside on 2026-11-24 Tue" in none.out


@pytest.mark.parametrize("day", ["2026-11-31", "25.11.2026", "20261125", "today", "", "2026-W48-3"])
def test_a_wrong_day(station, packed, day):
    found = station("rejects", "--day", day, "--home", packed.home)
    assert found.code == 2
    assert f"--day: {day!r} is no day: write it as YYYY-MM-DD" in found.err


def test_a_lot_to_every_bag_it_could_be_in(station, packed):
    found = station("trace", "--lot", "PW/WCA/26326", "--home", packed.home, "--json")
    assert found.code == 0
    document = found.document
    assert document["lot"] == {
        "code": "PW/WCA/26326",
        "component": "WHITE-CABBAGE",
        "supplier": "Pellow and Daughters Field Crops",
        "received": "2026-11-22",
        "harvested": "2026-11-13",
        "use_by": None,
        "status": "free",
    }
    assert [pack["serial"] for pack in document["packs"]] == packed.serials
    assert document["blend_lots"] == [packed.run.blend_lot] == ["L12632901"]
    assert document["counts"] == {"good": 3, "reject": 3}
    total = sum(Decimal(pack["net"]) for pack in document["packs"])
    assert Decimal(document["kilograms"]) == total / 1000
    (run,) = document["runs"]
    assert (run["product"], run["gtin"], run["ended"]) == ("SLAW-340", "9524007103409", None)


def test_a_bag_back_to_its_lots(station, packed):
    serial = packed.serials[4]
    found = station("trace", "--pack", serial, "--home", packed.home, "--json")
    document = found.document
    assert (found.code, document["serial"]) == (0, serial)
    assert (document["gross"], document["tare"], document["net"]) == ("366", "8", "358")
    assert (document["verdict"], document["quality"], document["reason"]) == (
        "over", "reject", "over",
    )  # fmt: skip
    assert (document["production_day"], document["use_by"]) == ("2026-11-25", "2026-12-04")
    codes = sorted(lot["code"] for lot in document["lots"])
    assert codes == ["PW/WCA/26326", "SM-C26327.1", "SM-RC26323", "SM-WC26323"]
    assert [pack["serial"] for pack in document["neighbours"]] == [
        other for other in packed.serials if other != serial
    ]
    assert len(document["entry_hash"]) == 64


@pytest.fixture(scope="module")
def shipped(tmp_path_factory):
    return shipped_record(tmp_path_factory.mktemp("shipped") / "home")


def test_a_case_or_pallet_to_its_bags_and_lots(station, shipped):
    for text in (shipped.pallet, f"]C100{shipped.pallet}"):
        found = station("trace", "--unit", text, "--home", shipped.home, "--json").document
        assert (found["sscc"], found["kind"], found["cases"]) == (
            shipped.pallet, "pallet", shipped.cases,
        )  # fmt: skip
        assert found["serials"] == shipped.good[:5]
        assert [lot["code"] for lot in found["lots"]] == ["CR-201", "LF-101"]
        assert (found["bags"], found["held"], found["shipment"]) == (5, 5, "S-1")
        assert Decimal(found["kilograms"]) == 5 * Decimal("0.2525")
    page = station("trace", "--unit", shipped.cases[1], "--home", shipped.home).out
    for words in ("case", f"on pallet {shipped.pallet}, left with S-1", "LF-101", shipped.good[4]):
        assert words in page


def test_a_lot_leads_on_to_its_cases_pallets_and_customers(station, shipped):
    found = station("trace", "--lot", "LF-101", "--home", shipped.home, "--json").document
    assert found["cases"] == sorted([*shipped.cases, shipped.single])
    assert found["pallets"] == [shipped.pallet]
    (gone,) = found["shipments"]
    assert (gone["shipment"], gone["customer"]) == ("S-1", "Marshgate Grocers")
    page = station("trace", "--lot", "LF-101", "--home", shipped.home).out
    assert "cases: 3, pallets: 1" in page
    assert "S-1 to Marshgate Grocers" in page


def test_a_bag_says_in_which_case_it_left(station, shipped):
    bag = station("trace", "--pack", shipped.good[4], "--home", shipped.home, "--json").document
    assert bag["place"].startswith(f"case {shipped.cases[1]}, pallet {shipped.pallet}, left ")
    loose = station("trace", "--pack", shipped.good[6], "--home", shipped.home, "--json").document
    assert loose["place"] == "in no case"


def test_traces_for_people(station, packed):
    lot = station("trace", "--lot", "PW/WCA/26326", "--home", packed.home).out
    for words in ("could be in 6 bags", "Pellow and Daughters", "3 good, 3 reject", "2.048 kg"):
        assert words in lot
    bag = station("trace", "--pack", packed.serials[0], "--home", packed.home).out
    for words in ("Crunchy slaw mix, 340 g", "gross 350 g - tare 8 g", "SM-C26327.1", "2026-12-04"):
        assert words in bag


def test_a_lot_in_no_bag_is_known_and_empty(station, packed):
    found = station("trace", "--lot", "HG-R26328", "--home", packed.home, "--json")
    assert (found.code, found.document["packs"], found.document["count"]) == (0, [], 0)
    assert "could be in 0 bags" in station("trace", "--lot", "HG-R26328", "--home", packed.home).out


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ((), "give one of --lot CODE, --pack SERIAL, --unit SSCC"),
        (("--lot", "A", "--pack", "B"), "give one of --lot CODE, --pack SERIAL, --unit SSCC"),
        (("--lot", "PW/WCA/26325"), "PW/WCA/26326"),
        (("--lot", "L12632901"), "is a blend lot"),
        (("--pack", "A1-00-000001"), "not in the record"),
    ],
)
def test_what_cannot_be_traced(station, packed, arguments, words):
    found = station("trace", *arguments, "--home", packed.home)
    assert (found.code, found.out) == (2, "")
    assert words in found.err


def test_a_whole_journal(station, packed):
    found = station("journal", "verify", "--home", packed.home, "--json")
    assert found.code == 0
    document = found.document
    assert list(document) == [
        "whole", "entries", "first_break", "page", "why", "epoch", "head_seq", "head",
        "purged", "heads", "signed_head", "key",
    ]  # fmt: skip
    assert (document["whole"], document["first_break"], document["why"]) == (True, None, "")
    assert document["entries"] == document["head_seq"] > 6
    assert len(document["head"]) == 64
    page = station("journal", "verify", "--home", packed.home).out
    assert f"The journal is whole: {document['entries']} entries" in page


def _change(home, statement, *values):
    connection = sqlite3.connect(home / DATABASE)
    names = [
        row[0]
        for row in connection.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'")
    ]
    for name in names:
        connection.execute(f"DROP TRIGGER {name}")
    changed = connection.execute(statement, values).rowcount
    connection.commit()
    connection.close()
    assert changed == 1


def test_a_changed_entry_is_named(station, home):
    _change(
        home,
        "UPDATE journal SET canonical = CAST(replace(CAST(canonical AS TEXT), '331', '341')"
        " AS BLOB) WHERE kind = 'pack' AND instr(CAST(canonical AS TEXT), '331') > 0",
    )
    found = station("journal", "verify", "--home", home, "--json")
    document = found.document
    assert (found.code, document["whole"]) == (1, False)
    assert document["first_break"] == document["entries"] + 1
    assert f"entry {document['first_break']}" in document["why"]
    page = station("journal", "verify", "--home", home)
    assert page.code == 1
    assert f"THE RECORD DOES NOT HOLD at entry {document['first_break']}" in page.out


def test_a_changed_table_is_named(station, home, packed):
    _change(home, "UPDATE pack SET net_digits = '341' WHERE serial = ?", packed.serials[2])
    found = station("journal", "verify", "--home", home, "--json")
    assert (found.code, found.document["first_break"]) == (1, None)
    assert packed.serials[2] in found.document["why"]
    assert "at a table" in station("journal", "verify", "--home", home).out


def test_tables_are_built_again_from_the_journal(station, home, packed):
    _change(home, "UPDATE pack SET net_digits = '341' WHERE serial = ?", packed.serials[2])
    entries = station("journal", "verify", "--home", home, "--json").document["entries"]
    found = station("journal", "rebuild", "--home", home, "--json")
    assert (found.code, found.document) == (0, {"rebuilt": True, "entries": entries, "why": ""})
    assert station("journal", "verify", "--home", home, "--json").code == 0
    page = station("journal", "rebuild", "--home", home).out
    assert f"built again from {entries} journal entries" in page


def test_nothing_is_built_from_a_journal_that_does_not_hold(station, home):
    _change(
        home,
        "UPDATE journal SET canonical = CAST(replace(CAST(canonical AS TEXT), '331', '341')"
        " AS BLOB) WHERE kind = 'pack' AND instr(CAST(canonical AS TEXT), '331') > 0",
    )
    found = station("journal", "rebuild", "--home", home, "--json")
    assert (found.code, found.document["rebuilt"], found.err) == (1, False, "")
    assert "was changed" in found.document["why"]
    page = station("journal", "rebuild", "--home", home)
    assert (page.code, "NOTHING WAS REBUILT" in page.out) == (1, True)


def test_nothing_is_built_under_a_running_station(station, home, packed):
    with StationStore.open(home, "QH", "A1", packed.clock):
        found = station("journal", "rebuild", "--home", home)
    assert (found.code, found.out) == (3, "")
    assert "in use by another station" in found.err


# --- which record ---------------------------------------------------------------------------------

VERBS = [
    ("rejects", "--day", "2026-11-25"),
    ("trace", "--lot", "PW/WCA/26326"),
    ("journal", "verify"),
    ("journal", "rebuild"),
]


@pytest.mark.parametrize("verb", VERBS)
def test_no_home_named(station, verb):
    found = station(*verb)
    assert found.code == 2
    for way in ("--home DIR", "STATION_HOME", "--config DIR", "STATION_CONFIG"):
        assert way in found.err


@pytest.mark.parametrize("verb", VERBS)
def test_a_home_that_is_not_there_or_holds_no_record(station, tmp_path, verb):
    missing = station(*verb, "--home", tmp_path / "nowhere")
    assert (missing.code, missing.out) == (2, "")
    assert "nowhere: is no folder" in missing.err
    empty = station(*verb, "--home", tmp_path)
    assert (empty.code, empty.out) == (2, "")
    assert "no station record" in empty.err


def test_a_file_that_is_no_record(station, tmp_path):
    """It can answer nothing, a fault of the surroundings; and it is not whole, which is a no."""
    (tmp_path / DATABASE).write_bytes(b"this is not a record at all" * 400)
    for verb in VERBS[:2]:
        found = station(*verb, "--home", tmp_path, "--json")
        assert (found.code, found.out, found.error["exit"]) == (3, "", 3)
        assert "no station record" in found.error["detail"]
    verified = station("journal", "verify", "--home", tmp_path, "--json")
    assert (verified.code, verified.document["whole"]) == (1, False)
    assert "no station record" in verified.document["why"]


def test_home_from_the_surroundings_and_from_the_settings(station, packed, tmp_path, monkeypatch):
    settings = copytree(DEMO, tmp_path / "settings")
    path = settings / "station.toml"
    text = path.read_text(encoding="utf-8")
    path.write_text(text.replace("~/pack-line-station/demo", str(packed.home)), encoding="utf-8")
    verb = ("rejects", "--day", "2026-11-25", "--json")
    assert station(*verb, "--config", settings).document["count"] == 3
    monkeypatch.setenv("STATION_CONFIG", str(settings))
    assert station(*verb).document["count"] == 3
    monkeypatch.setenv("STATION_HOME", str(tmp_path / "other"))
    assert station(*verb).code == 2, "a named home goes before the settings"
    assert station(*verb, "--home", packed.home).document["count"] == 3
