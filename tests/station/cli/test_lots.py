"""``station lots``: deliveries, holds and releases on a stopped station."""

from pathlib import Path

import pytest

from station.access.credentials import Credentials
from station.store.lock import HomeLock

DEMO = Path(__file__).parents[3] / "demo_config"


@pytest.fixture
def lots(station, tmp_path):
    def call(verb, *rest, home="home", keyed=""):
        arguments = ("--home", tmp_path / home, "--json")
        settings = () if verb == "list" else ("--config", DEMO)
        return station("lots", verb, *map(str, rest), *settings, *arguments, keyed=keyed)

    return call


HAND = ("--who", "L01", "--supplier", "Dunfallow Growers", "--component", "ROCKET")
CASE = ("--scan", "]C101095212345432133102041250", "--scan", "]C110TR26-118~13261101")


def test_a_case_label_and_a_hand_make_a_delivery_that_is_listed(lots):
    found = lots("receive", *HAND, *CASE, "--temperature", "3.4", "--reference", "note 4711")
    assert found.code == 0, found.err
    assert found.document["code"] == "TR26-118"
    assert found.document["quantity"] == "412.50 kg"
    assert found.document["packed"] == "2026-11-01"
    (row,) = [one for one in lots("list").document["lots"] if one["code"] == "TR26-118"]
    assert (row["status"], row["supplier"], row["holds"]) == ("free", "Dunfallow Growers", [])
    again = lots("receive", *HAND, *CASE)
    assert (again.code, "received already" in again.err) == (2, True)


def test_a_lot_without_a_code_gets_one_and_may_be_held_from_the_start(lots):
    found = lots("receive", *HAND, "--quantity", "80 kg", "--hold", "9 °C on arrival")
    code = found.document["code"]
    assert (code.startswith("QH"), code.endswith("-001")) == (True, True)
    assert found.document["status"] == "held"
    (row,) = [one for one in lots("list").document["lots"] if one["code"] == code]
    assert row["status"] == "held"
    assert row["holds"][0]["why"] == "9 °C on arrival"
    assert row["holds"][0]["who"] == "L01"


def test_a_lot_is_held_by_anyone_and_released_by_qa_alone(lots, tmp_path):
    Credentials(tmp_path / "home").set_pin("Q01", "615204")
    code = lots("receive", *HAND).document["code"]
    held = lots("hold", code, "--why", "the grower called", "--who", "L01")
    assert held.document == {"lot": code, "status": "held", "bags": 0}
    refused = lots("release", code, "--why", "well", "--who", "L01")
    assert (refused.code, "allowed is qa, manager" in refused.err) == (2, True)
    wrong = lots("release", code, "--why", "results came", "--who", "Q01", keyed="000111\n")
    assert (wrong.code, "this PIN is not right" in wrong.err) == (2, True)
    freed = lots("release", code, "--why", "results came", "--who", "Q01", keyed="615204\n")
    assert freed.document["status"] == "free"
    none = lots("release", code, "--why", "results came", "--who", "Q01", keyed="615204\n")
    assert (none.code, "no person holds it" in none.err) == (2, True)


def test_a_persons_release_does_not_free_what_the_settings_hold(lots, tmp_path):
    Credentials(tmp_path / "home").set_pin("Q01", "615204")
    lots("receive", *HAND)
    (code,) = [one["code"] for one in lots("list").document["lots"] if one["status"] == "held"]
    lots("hold", code, "--why", "the grower called", "--who", "L01")
    freed = lots("release", code, "--why", "well", "--who", "Q01", keyed="615204\n")
    assert freed.document == {"lot": code, "status": "held", "released": 1}
    rows = {one["code"]: one for one in lots("list").document["lots"]}
    assert (rows[code]["status"], rows[code]["holds"]) == ("held", [])


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("receive", *HAND[:4], "--component", "KALE"), "component 'KALE' is not known"),
        (("receive", *HAND, "--temperature", "warm"), "no number of °C"),
        (("receive", *HAND, "--packed", "1.11.2026"), "write it as YYYY-MM-DD"),
        (("receive", *HAND, "--scan", "HELLO"), "the scan cannot be taken"),
        (("receive", "--who", "X9", *HAND[2:]), "is nobody of people.toml"),
        (("hold", "NO-LOT", "--why", "called", "--who", "L01"), "NO-LOT is not in the record"),
        (("hold", "NO-LOT", "--why", " ", "--who", "L01"), "without a reason"),
    ],
)
def test_what_cannot_be_done_is_refused_in_words(lots, arguments, words):
    found = lots(*arguments)
    assert (found.code, found.out) == (2, "")
    assert words in found.err


def test_while_the_station_runs_its_screen_is_named(lots, tmp_path):
    (tmp_path / "home").mkdir()
    lock = HomeLock(tmp_path / "home")
    try:
        found = lots("receive", *HAND)
    finally:
        lock.release()
    assert found.code == 3
    assert "the station runs" in found.err
    assert "LOTS (F6)" in found.err
