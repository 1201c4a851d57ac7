"""Settings files: what is read, and what is refused in which words."""

import dataclasses
from datetime import date, time, timedelta
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.config.load import FILES, load, load_settings
from station.config.packhouse import Role
from station.core.lots import LotStatus
from station.core.mass import Mass, Unit
from station.core.product import PackMode
from station.errors import BadInput, EnvironmentFault

DEMO = Path(__file__).parents[3] / "demo_config"
TODAY = date(2026, 11, 25)


def test_everything_arrives_frozen_and_exact(folder):
    house = load(folder, TODAY)
    slaw = house.products["SLAW-340"]
    assert slaw.nominal == Mass.parse("340 g")
    assert slaw.mode is PackMode.FILL
    assert [share.percent for share in slaw.recipe] == [Decimal("62.5"), 25, Decimal("12.5")]
    assert slaw.bag is house.bags["BAG-R2"]
    assert slaw.market == "EU", "the station's market holds where a product names none"
    assert house.products["SOUP-MIX-2270"].nominal.digits == "2.27", "digits as written"
    assert house.components["CELERY"].allergen
    assert house.people["L01"].role is Role.LEAD
    assert house.settings.cut_off == time(4)
    assert house.settings.scale.unit is Unit.GRAM
    assert house.settings.scale.port.baud == 9600
    with pytest.raises(TypeError):
        house.products["X"] = slaw
    with pytest.raises(dataclasses.FrozenInstanceError):
        house.settings.zone = "UTC"


@pytest.mark.parametrize("today", [TODAY, date(2028, 2, 29), date(2030, 1, 1)])
def test_days_counted_from_today_move_with_it(folder, today):
    lots = load(folder, today).lots
    yesterday = today - timedelta(days=1)
    rocket, spinach = lots[f"HG-R{yesterday:%y%j}"], lots[f"HG-S{yesterday:%y%j}"]
    assert rocket.received == yesterday
    assert rocket.harvested == today - timedelta(days=2)
    assert spinach.use_by == today + timedelta(days=6)
    assert lots[f"DF-I{yesterday:%y%j}"].status is LotStatus.HELD


@given(days=st.integers(1, 3000))
def test_one_code_never_names_two_deliveries(days):
    """The record refuses a known code with other dates, so a code's dates must never change."""
    first, later = load(DEMO, TODAY).lots, load(DEMO, TODAY + timedelta(days=days)).lots
    assert all(first[code] == later[code] for code in first.keys() & later.keys())


def test_absolute_days_stay(folder, spoil):
    spoil("lots.toml", "harvested_days_ago = 2\nreceived_days_ago = 1", "received = 2026-11-24")
    spoil("lots.toml", "HG-R{received}", "HG-R4471")
    lot = load(folder, date(2027, 3, 1)).lots["HG-R4471"]
    assert (lot.received, lot.harvested) == (date(2026, 11, 24), None)


def test_home_and_label_folder(folder, spoil, monkeypatch):
    monkeypatch.setenv("HOME", "/somewhere")
    monkeypatch.setenv("USERPROFILE", "/somewhere")
    settings = load_settings(folder)
    assert settings.home == Path("/somewhere/pack-line-station/demo").absolute()
    assert settings.printer.folder == settings.home / "labels"
    spoil("station.toml", '"~/pack-line-station/demo"', '"store"')
    assert load_settings(folder).home == (folder / "store").absolute()


def test_a_byte_order_mark_and_crlf_are_read(folder):
    path = folder / "people.toml"
    text = path.read_text(encoding="utf-8").replace("\n", "\r\n")
    path.write_bytes(b"\xef\xbb\xbf" + text.encode())
    assert load(folder, TODAY).people["P02"].name == "Teodor Quay"


# file, text there, text instead, words the refusal must have
REFUSED = [
    # products.toml: one product that cannot be packed
    ("products.toml", "life_days = 9", "life_days = 0",
     ["product[2].life_days (SLAW-340)", "0 is outside its range",
      "whole number of days from 1 to 365"]),
    ("products.toml", "life_days = 9", 'life_days = "9"',
     ["product[2].life_days", '"9" is not a whole number', "whole number of days from 1 to 365"]),
    ("products.toml", "life_days = 9", "life_days = 9.0",
     ["product[2].life_days", "9.0 is not a whole number"]),
    ("products.toml", "life_days = 9", "life_days = true",
     ["product[2].life_days", "true is not a whole number"]),
    ("products.toml", "life_days = 9\n", "", ["product[2].life_days", "is missing", "days"]),
    ("products.toml", "life_days = 9", "life_day = 9",
     ["product[2].life_day", "is no key here", 'did you mean "life_days"?']),
    ("products.toml", 'tare = "8 g"', 'tare = "400 g"',
     ["product[2].bag", "BAG-R2 has a tare of 400 g", "340 g", "below the nominal quantity"]),
    ("products.toml", 'tare = "8 g"', 'tare = "0 g"', ["bag[2].tare", '"0 g" is not above zero']),
    ("products.toml", 'tare = "8 g"', "tare = 8",
     ["bag[2].tare", "8 needs its unit, in quotes", '"340 g"']),
    ("products.toml", 'tare = "8 g"', "tare = 7.6",
     ["bag[2].tare", "7.6 needs its unit, in quotes"]),
    ("products.toml", 'nominal = "340 g"', 'nominal = "0,34 kg"',
     ["product[2].nominal", '"0,34 kg" is not a mass', '"2.27 kg"']),
    ("products.toml", 'nominal = "340 g"', 'nominal = "3 g"',
     ["product[2].nominal", "3 g", "at least 5 g"]),
    ("products.toml", 'nominal = "340 g"', 'nominal = "12 oz"',
     ["product[2].nominal", "12 oz", "eu-76-211"]),
    ("products.toml", 'floor = "340 g"', 'floor = "330 g"',
     ["product[2].floor, target, upper", "330 g", "334.90 g"]),
    ("products.toml", 'upper = "355 g"', 'upper = "341 g"',
     ["product[2].floor, target, upper", "upper limit 341 g is below the target 343 g"]),
    ("products.toml", 'upper = "355 g"', 'upper = "0.355 kg"',
     ["product[2].floor, target, upper", "0.355 kg must be given in g"]),
    ("products.toml", 'upper = "355 g"', 'upper = "343 g"', ["product[2]", "must rise"]),
    ("products.toml", 'upper = "2.330 kg"', 'upper = "2.980 kg"',
     ["product[4].upper", "more than the scale can weigh", "3000 g"]),
    ("products.toml", 'component = "CARROT", percent = 25', 'component = "CAROT", percent = 25',
     ["product[2].recipe[2].component", '"CAROT" is not known, did you mean "CARROT"?']),
    ("products.toml", '"CARROT", percent = 25', '"WHITE-CABBAGE", percent = 25',
     ["product[2].recipe[2].component", "stands twice"]),
    ("products.toml", "percent = 62.5", "percent = 60",
     ["product[2].recipe", "the shares add up to 97.5 %", "100 %"]),
    ("products.toml", "percent = 62.5", "percent = 0",
     ["product[2].recipe[1].percent", "0 is outside its range", "at most 100"]),
    ("station.toml", 'kind = "folder"', 'kind = "ipp"', ["printer.url", "is missing", "ipp://"]),
    ("station.toml", 'kind = "folder"', 'kind = "queue"', ["printer.queue", "is missing"]),
    ("station.toml", 'theme = "light"', 'theme = "blue"', ["screen.theme", "light", "dark"]),
    ("station.toml", "sounds = true", 'language = "xx"', ["screen.language", "es", "zh"]),
    ("people.toml", 'language = "es"', 'language = "Spanish"', ["language", "one of", "pa", "tl"]),
    ("station.toml", "dpi = 203", "dpi = 204", ["printer.dpi", "203", "600"]),
    ("station.toml", "out_within_s = 10", "out_within_s = 0", ["printer.out_within_s", "1"]),
    ("station.toml", 'kind = "folder"', 'kind = "folder"\nurl = "ipp://p/ipp/print"',
     ["printer.url", 'goes with kind = "ipp" only']),
    ("station.toml", 'kind = "folder"', 'kind = "ipp"\nurl = "http://p/"',
     ["printer.url", "ipp://"]),
    ("products.toml", "price_per_kg = 6.40", "price_per_kg = 0",
     ["product[1].price_per_kg", "0 is outside its range", "such as 4.20"]),
    ("products.toml", "price_per_kg = 6.40", 'price_per_kg = "6.40"',
     ["product[1].price_per_kg", '"6.40" is not a number', "without quotes"]),
    ("products.toml", "percent = 62.5", "percent = nan", ["product[2].recipe[1].percent", "NaN"]),
    ("products.toml", "percent = 62.5", 'percent = "62.5"',
     ["product[2].recipe[1].percent", '"62.5" is not a number', "without quotes"]),
    ("products.toml", "percent = 62.5", "procent = 62.5",
     ["product[2].recipe[1].procent", "is no key here", 'did you mean "percent"?']),
    ("products.toml", "9524007103409", "9524007103408",
     ["product[2].gtin", "its check digit is 9"]),
    ("products.toml", "9524007103409", "952400710340",
     ["product[2].gtin", "12 characters", "13 or 14 digits"]),
    ("products.toml", "9524007103409", "9524007102006",
     ["product[2].gtin", "is the GTIN of product ROCKET-SPINACH-200 already"]),
    ("products.toml", '"9524007103409"', "9524007103409",
     ["product[2].gtin", "is not text in quotes", "13 or 14 digits in quotes"]),
    ("products.toml", 'code = "SLAW-340"', 'code = "ROCKET-SPINACH-200"',
     ["product[2].code", "stands already in product[1]"]),
    ("products.toml", 'code = "SLAW-340"', 'code = "slaw 340"',
     ["product[2].code", '"slaw 340" has another form', "1 to 20 of A-Z and 0-9"]),
    ("products.toml", 'rule_set = "eu-76-211"', 'rule_set = "eu-76-212"',
     ["product[1].rule_set", '"eu-76-212" is not known, did you mean "eu-76-211"?',
      "gb-2006-659"]),
    ("products.toml", 'bag = "BAG-R2"', 'bag = "BAG-R9"',
     ["product[2].bag", '"BAG-R9" is not known', "BAG-R1, BAG-R2, BAG-F1, BAG-F2"]),
    ("products.toml", 'mode = "check"', 'mode = "checking"',
     ["product[4].mode", '"checking" is none of them', '"fill" or "check"']),
    ("products.toml", "version = 3", "version = 0", ["product[2].version", "from 1 to 9999"]),
    ("products.toml", "[[bag]]", "[[bags]]", ["bags", "is no key here", 'did you mean "bag"?']),
    ("products.toml", 'name = "Crunchy slaw mix"', 'name = "Crunchy\\tslaw"',
     ["product[2].name", "cannot be printed"]),
    ("products.toml", 'name = "Crunchy slaw mix"', 'name = " "', ["product[2].name", "is empty"]),
    # lots.toml
    ("lots.toml", "PW/ICE/{received}", "PW_ICE_118",
     ["lot[4].code", '"PW_ICE_118" cannot be printed', "A-Z, 0-9, point, slash and hyphen"]),
    ("lots.toml", "PW/ICE/{received}", "PW/{day}", ["lot[4].code", "cannot be printed"]),
    ("lots.toml", "PW/ICE/{received}", "PW/{received}{received}", ["cannot be printed"]),
    ("lots.toml", "PW/ICE/{received}", "PW/ICEBERG/LONG/{received}", ["cannot be printed"]),
    ("lots.toml", "PW/ICE/{received}", "PW/ICE/118",
     ["lot[4] (PW/ICE/118)", "under a code that stays", "{received} within the code"]),
    ("lots.toml", "received_days_ago = 1", "received_days_ago = 1\nreceived = 2026-11-24",
     ["lot[1]", "gives received twice", "only one of"]),
    ("lots.toml", "received_days_ago = 1\n", "",
     ["lot[1]", "has no day of receipt", "exactly one of received and received_days_ago"]),
    ("lots.toml", "received_days_ago = 1", "received_days_ago = -1",
     ["lot[1].received_days_ago", "-1 is outside its range"]),
    ("lots.toml", "received_days_ago = 1", 'received = "2026-11-24"',
     ["lot[1].received", '"2026-11-24" is not a date', "without quotes"]),
    ("lots.toml", "received_days_ago = 1", "received = 2026-11-24T10:00:00Z",
     ["lot[1].received", "a date without quotes"]),
    ("lots.toml", "received_days_ago = 1", "received_days_ago = 5",
     ["lot[1]", "harvested 2026-11-23 after it was received 2026-11-20"]),
    ("lots.toml", "use_by_in_days = 6", "use_by_in_days = 6\nuse_by = 2026-12-01",
     ["lot[3]", "gives use_by twice"]),
    ("lots.toml", 'component = "ROCKET"', 'component = "ROQUETTE"',
     ["lot[1].component", '"ROQUETTE" is not known', "SPINACH"]),
    ("lots.toml", 'supplier = "PELLOW"', 'supplier = "PELOW"',
     ["lot[4].supplier", 'did you mean "PELLOW"?']),
    ("lots.toml", 'status = "held"', 'status = "hold"',
     ["lot[5].status", '"hold" is none of them', '"free", "held", "expired"']),
    ("lots.toml", "DF-R{received}", "HG-R{received}",
     ["lot[2].code", "stands already in lot[1]"]),
    ("lots.toml", 'code = "DF-R{received}"\ncomponent = "ROCKET"\nsupplier = "DUNFALLOW"\n'
     "harvested_days_ago = 1\nreceived_days_ago = 0",
     'code = "HG-R26328"\ncomponent = "ROCKET"\nsupplier = "DUNFALLOW"\nreceived = 2026-11-20',
     ["lot[2].code", "HG-R26328 stands twice"]),
    # people.toml
    ("people.toml", 'role = "manager"', 'role = "boss"', ["person[7].role (M01)", '"lead"']),
    ("people.toml", 'id = "P02"', 'id = "P01"', ["person[2].id", "stands already in person[1]"]),
    ("people.toml", 'name = "Ilse Varnholm"', "name = 7", ["person[1].name", "7 is not text"]),
    # station.toml
    ("station.toml", 'time_zone = "Europe/Dublin"', 'time_zone = "Europe"',
     ["site.time_zone", '"Europe" is not known', "IANA"]),
    ("station.toml", "production_day_starts = 04:00:00", "production_day_starts = 14:00:00",
     ["site.production_day_starts", "14:00:00 is not before noon", "00:00:00 to 11:59:59"]),
    ("station.toml", "production_day_starts = 04:00:00", 'production_day_starts = "04:00"',
     ["site.production_day_starts", "is not a time of day", "04:00:00"]),
    ("station.toml", "baud = 9600", "baud = 9601", ["scale.port.baud", "9601", "9600, 19200"]),
    ("station.toml", 'parity = "none"', 'parity = "N"', ["scale.port.parity", '"none", "even"']),
    ("station.toml", "bits = 8", "bits = 9", ["scale.port.bits", "7 or 8"]),
    ("station.toml", 'unit = "g"', 'unit = "grams"', ["scale.unit", '"grams"', '"kg"']),
    ("station.toml", 'interval = "1 g"', 'interval = "0.001 kg"',
     ["scale.interval", "another unit than the scale", "a mass in g"]),
    ("station.toml", 'capacity = "3000 g"', 'capacity = "1 g"',
     ["scale.capacity", "not above the interval 1 g"]),
    ("station.toml", "stale_ms = 500", "stale_ms = 200",
     ["timing.stale_ms", "200 is shorter than dwell_ms 300", "300 or more"]),
    ("station.toml", 'code = "A1"', 'code = "A1-LONG-ONE"', ["station.code", "1 to 6 of A-Z"]),
    ("station.toml", 'market = "EU"', 'market = "XX"', ["label.market", '"XX"', '"GB"']),
    ("station.toml", "[timing]", "[timings]", ["timings", 'did you mean "timing"?']),
    ("station.toml", "[timing]\ndwell_ms", "dwell_ms", ["timing", "is missing", "[timing]"]),
    ("station.toml", "[scale.port]", "[scale.prot]",
     ["scale.prot", 'did you mean "port"?']),
    # not TOML at all
    ("station.toml", 'code = "QH"', "code = QH", ["line 5, column 8", "TOML"]),
    ("station.toml", 'code = "QH"', 'code = "QH"\ncode = "QI"', ["line 6", "TOML"]),
]  # fmt: skip


@pytest.mark.parametrize(("file", "old", "new", "words"), REFUSED)
def test_a_wrong_file_is_refused_by_name_place_value_and_what_is_allowed(
    folder, spoil, refusal, file, old, new, words
):
    spoil(file, old, new)
    said = refusal()
    assert file in said
    for part in words:
        assert part in said


def test_a_fault_is_named_once_and_draws_no_others_after_it(spoil, refusal):
    """A misspelt component breaks three recipes and two lots, but the cause is one line."""
    spoil("products.toml", 'name = "carrot"', 'name = ""')
    said = refusal()
    assert "component[7].name (CARROT)" in said
    assert "faults" not in said


def test_all_faults_of_all_files_come_at_once(spoil, refusal):
    spoil("products.toml", "life_days = 9", "life_days = 0")
    spoil("products.toml", 'tare = "6 g"', 'tare = "6"')
    spoil("products.toml", "9524007209071", "9524007209070")
    spoil("products.toml", "percent = 55", "percent = 54")
    spoil("lots.toml", 'status = "held"', 'status = "hold"')
    spoil("people.toml", 'role = "qa"', 'role = "q"')
    spoil("station.toml", "baud = 9600", "baud = 1")
    said = refusal()
    assert said.startswith("7 faults in the settings of ")
    for part in (
        "products.toml: product[2].life_days",
        "products.toml: bag[1].tare",
        "products.toml: product[3].gtin",
        "products.toml: product[3].recipe (LEAF-MIX-907): the shares add up to 99 %",
        "lots.toml: lot[5].status",
        "people.toml: person[6].role",
        "station.toml: scale.port.baud",
    ):
        assert part in said


def test_a_role_nobody_holds(folder, refusal):
    path = folder / "people.toml"
    path.write_text(path.read_text(encoding="utf-8").replace('"lead"', '"qa"'), encoding="utf-8")
    assert "nobody has the role lead" in refusal()


@pytest.mark.parametrize("file", FILES)
def test_a_missing_file_is_named(folder, refusal, file):
    (folder / file).unlink()
    said = refusal()
    assert f"{folder / file}: file: is missing" in said


@pytest.mark.parametrize("file", FILES)
def test_an_empty_file_says_what_it_needs(folder, refusal, file):
    (folder / file).write_text("", encoding="utf-8")
    assert f"{file}: " in refusal()


@pytest.mark.parametrize("file", FILES)
@pytest.mark.parametrize("key", ["product", "component", "lot", "person", "site", "scale"])
@pytest.mark.parametrize("value", ["7", '"text"', "[]", "[[]]", "[7]", "{}", "[{}]"])
def test_no_shape_of_file_breaks_the_reader(folder, refusal, file, key, value):
    (folder / file).write_text(f"{key} = {value}\n", encoding="utf-8")
    assert file in refusal()


def test_a_file_in_another_encoding(folder, refusal):
    path = folder / "people.toml"
    path.write_bytes(path.read_bytes().replace(b"Quay", "Quäy".encode("latin-1")))
    said = refusal()
    assert "line 17: is not UTF-8 text" in said


def test_a_folder_that_is_not_there(tmp_path):
    with pytest.raises(BadInput, match="no folder") as refused:
        load(tmp_path / "nowhere", TODAY)
    assert "station.toml" in refused.value.detail


def test_a_file_that_cannot_be_read_is_the_surroundings_fault(folder):
    (folder / "lots.toml").unlink()
    (folder / "lots.toml").mkdir()
    with pytest.raises(EnvironmentFault, match="cannot be read"):
        load(folder, TODAY)


def test_settings_alone_need_no_other_file(folder):
    (folder / "lots.toml").write_text("nonsense", encoding="utf-8")
    assert load_settings(folder).station == "A1"
