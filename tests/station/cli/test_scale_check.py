"""``station scale-check``: loads against R 76 and HB 44, and the window of a +4 g failure."""

from dataclasses import replace
from fractions import Fraction

import pytest

from station.core.metrology.rule_sets import registry

SCALE = ("scale-check", "--unit", "g", "--interval", "1", "--max", "3000", "--class", "III")
FOUR_HIGH = (*SCALE, "--load", "0=4", "--load", "250=254", "--load", "1000=1004")
TIMES = ("--good-at", "2026-11-25T09:00", "--failed-at", "2026-11-25T10:00")


# --- the loads ------------------------------------------------------------------------------------


# OIML R 76-1 Table 6, class III: 0.5 e to 500 e, 1 e to 2000 e, 1.5 e beyond; in service twice
@pytest.mark.parametrize(
    ("load", "error", "limits", "verdict"),
    [
        ("0=0", "0", ("0.5", "1"), "good"),
        ("0=-2", "-2", ("0.5", "1"), "failed"),
        ("250=251", "1", ("0.5", "1"), "warn"),
        ("250=252", "2", ("0.5", "1"), "failed"),
        ("500=501", "1", ("0.5", "1"), "warn"),
        ("501=502", "1", ("1", "2"), "good"),
        ("2000=1998", "-2", ("1", "2"), "warn"),
        ("2001=2004", "3", ("1.5", "3.0"), "warn"),
        ("3000=3004", "4", ("1.5", "3.0"), "failed"),
        ("0.25kg=251 g", "1", ("0.5", "1"), "warn"),
        # E = I + e/2 - added - L (R 76-1 A.4.4.3, from memory):
        # 250 + 0.5 - 0.3 - 250, 251 + 0.5 - 0.4 - 250
        ("250=250+0.3", "0.2", ("0.5", "1"), "good"),
        ("200+50=251+0.4", "1.1", ("0.5", "1"), "failed"),
    ],
)
def test_one_load(station, load, error, limits, verdict):
    found = station(*SCALE, "--load", load, "--json")
    (one,) = found.document["loads"]
    assert Fraction(one["error"]) == Fraction(error)
    assert tuple(map(Fraction, (one["warn_limit"], one["limit"]))) == tuple(map(Fraction, limits))
    assert (one["verdict"], one["passed"]) == (verdict, verdict != "failed")
    assert (found.document["verdict"], found.document["passed"]) == (verdict, verdict != "failed")
    assert found.code == (verdict == "failed")


# NIST HB 44 2.20 Table 6, class III: maintenance 1, 2, 3, 5 d to 500, 2000, 4000 and beyond
@pytest.mark.parametrize(
    ("system", "load", "limit"),
    [
        ("hb-44", "5000=5000", "5"),
        ("hb-44", "4000=4000", "3"),
        ("r-76", "5000=5000", "3"),
    ],
)
@pytest.mark.parametrize("name", ["--system", "--rules"])
def test_whose_limits(station, system, load, limit, name):
    found = station("scale-check", "--interval", "1 g", "--max", "6 kg", name, system,
                    "--load", load, "--json")  # fmt: skip
    assert Fraction(found.document["loads"][0]["limit"]) == Fraction(limit)


def test_weights_are_made_up_of_single_ones(station):
    asked = (*SCALE, "--load", "487=487", "--load", "100+100=200", "--load", "3kg=3000", "--json")
    loads = station(*asked).document["loads"]
    assert [one["weights"] for one in loads] == [
        ["100", "100"],
        ["200", "200", "50", "20", "10", "5", "2"],
        ["2000", "1000"],
    ]
    assert [one["load"] for one in loads] == ["200", "487", "3000"]


def test_a_document_and_a_page(station):
    found = station(*SCALE, "--load", "250=251", "--load", "0=0", "--json")
    assert list(found.document) == ["verdict", "passed", "unit", "loads", "windows"]
    assert list(found.document["loads"][0]) == [
        "load", "weights", "shown", "added", "error", "warn_limit", "limit", "verdict", "passed",
    ]  # fmt: skip
    assert found.document["windows"] is None
    page = station(*SCALE, "--load", "250=251+0.6").out
    for words in ("THE SCALE HOLDS, beyond its first limit", "251 g + 0.6 g", "warn", "0.9 g"):
        assert words in page
    assert "THE SCALE FAILS: stop" in station(*FOUR_HIGH).out


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("--load", "250"), "--load 250: write MASS=INDICATION"),
        (("--load", "=250"), "write MASS=INDICATION"),
        (("--load", "250="), "write MASS=INDICATION"),
        (("--load", "250=25l"), "'25l' is no mass in g"),
        (("--load", "250=251,5"), "write a number with a decimal point"),
        (("--load", "250=1=2"), "'1=2' is no mass"),
        (("--load", "3001=3001"), "is above Max 3000 g"),
        (("--load", "-5=0"), "a test weight is not below zero"),
        (("--load", "0.5=0"), "is no sum of few weights from 1 g to 20 kg"),
        (("--load", "300+7=307"), "no single test weight of 300 g"),
        (("--load", "250=250", "--weights", "M3"), "'M3' is none of F1, F2, M1, M2"),
        (("--load", "250=250", "--interval", "0.01"), "use a finer class"),
        (("--load", "250=250", "--class", "V"), "'V' is none of I, II, III, IIII"),
        (("--load", "250=250", "--class", "I"), "no errors of class I of R 76 are transcribed"),
        (("--load", "250=250", "--unit", "st"), "'st' is none of mg, g, kg, lb, oz"),
        (("--load", "250=250", "--system", "eu"), "'eu' is none of r-76, hb-44"),
        (("--load", "250=250", "--interval", "0"), "0 g must be above zero"),
        (("--load", "250=250", "--max", "1"), "must be above the interval"),
        ((), "--load: give a load, such as 250=251"),
    ],
)
def test_what_cannot_be_checked(station, arguments, words):
    found = station(*SCALE, *arguments)
    assert (found.code, found.out) == (2, "")
    assert words in found.err


# --- the suspect window ---------------------------------------------------------------------------


def test_four_grams_high_at_ten_after_good_at_nine(station, shift):
    """60 bags from 09:01 to 10:00: 59 of 343 g and the one of 09:30 of 340 g; 340 g nominal.

    As weighed the mean is 343 - 3/60 = 342.95 g. The whole error from the first bag on: 338.95 g,
    which fails, with none below T1 = 329.8 g. An error growing evenly is 4 k/60 g at minute k, on
    average 4 (1 + ... + 60)/3600 = 61/30 g: 340.91667 g, which passes.
    """
    found = station(*FOUR_HIGH, *TIMES, "--home", shift.home, "--json")
    assert found.code == 1
    (window,) = found.document["windows"]
    assert (window["run"], window["held"], window["sign"]) == (shift.slaw.id, 60, "high")
    assert window["sign_words"] == "the scale read high: packs may be short"
    assert window["opened"] == "2026-11-25T09:00:00+00:00"
    assert window["closed"] == "2026-11-25T10:00:00+00:00"
    cases = {name: window[name] for name in ("as_weighed", "worst", "drift")}
    as_weighed = 343 - Fraction(3, 60)
    assert {name: Fraction(case["mean_exact"]) for name, case in cases.items()} == {
        "as_weighed": as_weighed,
        "worst": as_weighed - 4,
        "drift": as_weighed - Fraction(61, 30),
    }
    assert {name: case["accepted"] for name, case in cases.items()} == {
        "as_weighed": True,
        "worst": False,
        "drift": True,
    }
    assert all((case["n"], case["t1_count"], case["t2_count"]) == (60, 0, 0)
               for case in cases.values())  # fmt: skip
    assert window["stepped"] is None


def test_the_list_to_weigh_again_begins_with_the_lightest(station, shift):
    found = station(*FOUR_HIGH, *TIMES, "--home", shift.home, "--json")
    again = found.document["windows"][0]["reweigh"]
    by_time = [shift.serials[9 + minute // 60, minute % 60] for minute in range(1, 61)]
    half_past = by_time.pop(29)
    assert [one["serial"] for one in again] == [half_past, *by_time]
    assert again[0] == {
        "serial": half_past,
        "at": "2026-11-25T09:30:00+00:00",
        "net": "340",
        "worst_net": "336",
        "drift_net": "338",  # 340 - 4 * 30/60
    }
    assert again[1]["drift_net"] == "342.933333333"  # 343 - 4/60


def test_a_dated_step_narrows_the_window(station, shift):
    """From 09:50 on 11 bags carry 4 g: 342.95 - 44/60 = 342.21667 g."""
    asked = (*FOUR_HIGH, *TIMES, "--step-at", "2026-11-25T09:50", "--home", shift.home, "--json")
    stepped = station(*asked).document["windows"][0]["stepped"]
    assert Fraction(stepped["mean_exact"]) == 343 - Fraction(3, 60) - Fraction(44, 60)
    assert stepped["accepted"]


def test_a_scale_that_read_low_gave_product_away(station, shift):
    low = (*SCALE, "--load", "0=-4", "--load", "1000=996", *TIMES, "--home", shift.home, "--json")
    (window,) = station(*low).document["windows"]
    assert (window["sign"], window["worst"]["mean"]) == ("low", "346.95")


def test_each_run_of_the_span_has_its_own_window(station, shift):
    """09:59 to 11:01: one slaw, two soups; soup is packed in kg."""
    span = ("--good-at", "2026-11-25 09:59", "--failed-at", "2026-11-25T12:01:00+01:00")
    found = station(*FOUR_HIGH, *span, "--home", shift.home, "--json")
    slaw, soup = found.document["windows"]
    assert (slaw["held"], soup["held"], soup["unit"]) == (1, 2, "kg")
    # 2274 and 2275 g; the error beyond the last load checked stays at 4 g
    assert [one["worst_net"] for one in soup["reweigh"]] == ["2.27", "2.271"]


def test_a_newer_edition_of_the_law_keeps_no_bag_from_being_named(station, shift, monkeypatch):
    newer = replace(registry.RULE_SETS["eu-76-211"], version="transcription 2")
    monkeypatch.setattr(registry, "RULE_SETS", {"eu-76-211": newer})
    found = station(*FOUR_HIGH, *TIMES, "--home", shift.home, "--json")
    assert found.document["windows"][0]["held"] == 60


def test_no_bag_and_no_failure_make_nothing_suspect(station, shift):
    night = ("--good-at", "2026-11-24T22:00", "--failed-at", "2026-11-24T23:00")
    empty = station(*FOUR_HIGH, *night, "--home", shift.home, "--json")
    assert (empty.code, empty.document["windows"]) == (1, [])
    asked = (*SCALE, "--load", "250=251", *TIMES, "--home", shift.home)
    assert station(*asked, "--json").document["windows"] == []
    page = station(*asked)
    assert (page.code, "No bag in the record is suspect" in page.out) == (0, True)


def test_a_page_for_people(station, shift):
    page = station(*FOUR_HIGH, *TIMES, "--home", shift.home).out
    for words in (
        "THE SCALE FAILS", "HOLD 60 bags of Crunchy slaw mix", "the scale read high",
        "342.95 g", "338.95 g", "340.9167 g", "DOES NOT PASS", "Weigh again in this order",
        shift.serials[9, 30], "336 g", "and 20 more: --json lists them all",
    ):  # fmt: skip
        assert words in page


@pytest.mark.parametrize(
    ("times", "words"),
    [
        (("--good-at", "2026-11-25T09:00"), "--good-at, --failed-at: give both"),
        (("--failed-at", "2026-11-25T09:00"), "--good-at, --failed-at: give both"),
        (("--good-at", "09:00", *TIMES[2:]), "--good-at: '09:00' is no time: write it as"),
        ((*TIMES[:2], "--failed-at", "2026-11-25"), "--failed-at: '2026-11-25' is no time"),
        ((*TIMES[:2], "--failed-at", "2026-11-31T10:00"), "--failed-at: '2026-11-31T10:00': day"),
        ((*TIMES[:2], "--failed-at", "2026-11-25T09:00"), "is not after the good check"),
        ((*TIMES, "--step-at", "2026-11-25T10:01"), "--step-at: 2026-11-25 10:01:00+00:00 is not"),
        # Europe/Dublin: 01:00 to 02:00 comes twice on 2026-10-25, never on 2026-03-29
        (("--good-at", "2026-10-25T01:30", *TIMES[2:]), "comes twice in Europe/Dublin"),
        (("--good-at", "2026-03-29T01:30", *TIMES[2:]), "comes never in Europe/Dublin"),
    ],
)
def test_times_that_open_no_window(station, shift, times, words):
    found = station(*FOUR_HIGH, *times, "--home", shift.home)
    assert (found.code, found.out) == (2, "")
    assert words in found.err


def test_an_hour_that_comes_twice_is_clear_with_its_offset(station, shift):
    times = ("--good-at", "2026-10-25T01:30+01:00", "--failed-at", "2026-10-25T01:30Z")
    found = station(*FOUR_HIGH, *times, "--home", shift.home, "--json")
    assert found.document["windows"] == []


def test_a_window_needs_a_record(station, tmp_path):
    assert "no home is named" in station(*FOUR_HIGH, *TIMES).err
    found = station(*FOUR_HIGH, *TIMES, "--home", tmp_path)
    assert (found.code, "no station record" in found.err) == (2, True)
