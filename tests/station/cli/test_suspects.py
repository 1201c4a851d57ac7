"""``station suspects`` and the checks on record, after a failed check with ten bags before it."""

from datetime import timedelta
from fractions import Fraction

import pytest

from station.app.quality_gates import Follows
from station.core.checks.suspect import Decision, decision_facts
from station.core.checks.tare import empty_bag_fact, judge_empty_bag
from station.core.ids import new_uid
from station.store.suspects import open_windows
from tests.end_to_end.checked_line import NINE, CheckedLine, a_bag, a_check, moment
from tests.station.line.scenario import grams

TEN = NINE + timedelta(hours=1)


def fill(store, run):
    store.record((a_check(0, NINE),), moment(NINE), "P01")
    for k in range(1, 11):
        store.add_pack(a_bag(run, NINE + timedelta(minutes=6 * k), 252))


@pytest.fixture
def line(tmp_path):
    one = CheckedLine(tmp_path / "home", fill)
    one.clock.utc = TEN
    one.open_run()
    yield one
    one.close()


def test_without_a_failed_check_nothing_is_suspect(station, line):
    found = station("suspects", "--home", line.home, "--json")
    assert (found.code, found.document) == (0, {"waiting": 0, "windows": []})
    assert "ever suspect" in station("suspects", "--home", line.home).out


def test_a_window_with_both_bounds_and_its_list(station, line):
    """Ten bags of 252 g, +4 g: worst mean 248 g, even growth 252 - 4 * 5.5/10 = 249.8 g."""
    line.enter(a_check(4, TEN))
    found = station("suspects", "--home", line.home, "--json")
    assert found.code == 1
    [window] = found.document["windows"]
    assert (window["bags"], window["sign"], window["decided"]) == (10, "high", None)
    assert window["opened"] == "2026-11-25T09:00:00+00:00"
    [run] = window["runs"]
    assert Fraction(run["worst"]["mean_exact"]) == 248
    assert Fraction(run["drift"]["mean_exact"]) == 252 - Fraction(22, 10)
    assert [one["worst_net"] for one in run["reweigh"]] == ["248"] * 10
    assert run["reweigh"][0]["drift_net"] == "251.6"
    page = station("suspects", "--home", line.home).out
    for words in ("1 wait for a decision", "waits for QA or the lead", "Weigh again"):
        assert words in page


def test_a_decision_is_told(station, line):
    line.enter(a_check(4, TEN))
    [one] = open_windows(line.home)
    uids = [new_uid(line.clock.now()) for _ in range(2)]
    line.enter(*decision_facts(one.window, Decision.HOLD_STAYS, "dump them", uids), who="Q01")
    found = station("suspects", "--home", line.home, "--uid", one.window.uid, "--json")
    assert found.code == 0
    decided = found.document["windows"][0]["decided"]
    assert (decided["decision"], decided["reason"], decided["who"]) == (
        "hold stays", "dump them", "Q01",
    )  # fmt: skip


def empty_bag(run, shown):
    bag = judge_empty_bag("B6", "F-1", grams(shown), grams(1), None, grams(6))
    return empty_bag_fact(bag, new_uid(moment(NINE)), run.id)


def test_a_window_without_bounds_stands_in_the_list_too(station, tmp_path):
    """Three bags since the empty bag of 6 g that fitted; the next weighs 9 g."""
    home = tmp_path / "home"

    def fill_and_fail(store, run):
        store.record((empty_bag(run, "6"),), moment(NINE), "L01")
        for k in range(3):
            store.add_pack(a_bag(run, NINE + timedelta(minutes=k), 252))
        heavy = empty_bag(run, "9")
        brought = Follows(home).follow((heavy,), moment(TEN), "L01")
        store.record((heavy, *brought), moment(TEN), "L01")

    CheckedLine(home, fill_and_fail).close()
    found = station("suspects", "--home", home, "--json")
    assert found.code == 1
    [window] = found.document["windows"]
    assert (window["failed"], window["bags"], window["decided"]) == ("tare of B6", 3, None)
    [run] = window["runs"]
    assert run["why"] == "an empty bag weighs 9 g, 3 g more than the tare taken off"
    assert len(run["serials"]) == 3
    page = " ".join(station("suspects", "--home", home).out.split())
    assert "1 wait for a decision" in page
    assert "tare of B6" in page


def test_an_unknown_window_is_refused(station, line):
    found = station("suspects", "--home", line.home, "--uid", "0190")
    assert found.code == 2
    assert "'0190' is no suspect window" in found.err


def test_the_checks_on_record_are_listed_and_the_last_one_answers(station, line):
    found = station("scale-check", "--home", line.home, "--json")
    assert found.code == 0
    [good] = found.document["checks"]
    assert (good["verdict"], good["stage"], good["certificate"]) == (
        "good", "as found", "invented set",
    )  # fmt: skip
    assert [load["load"] for load in good["loads"]] == ["0", "6", "260", "3000"]
    line.enter(a_check(4, TEN))
    found = station("scale-check", "--home", line.home, "--json")
    assert found.code == 1
    assert [one["verdict"] for one in found.document["checks"]] == ["good", "failed"]
    assert found.document["checks"][1]["loads"][0]["error"] == "4"
    assert "THE LAST CHECK FAILED" in station("scale-check", "--home", line.home).out


def test_loads_need_the_scale(station):
    found = station("scale-check", "--load", "0=0")
    assert found.code == 2
    assert "--interval, --max: give both" in found.err
