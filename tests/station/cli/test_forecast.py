"""``station forecast``: finished and running batches, against scipy and by hand."""

import pytest
from scipy.stats import hypergeom

ASKED = ("forecast", "--rules", "eu-76-211", "--nominal", "250g", "--json", "--csv")


@pytest.mark.parametrize("light", [0, 12, 20, 40])
def test_a_finished_batch_with_light_bags_is_hypergeometric(station, weights, light):
    """500 bags, 50 are drawn, 3 below T1 pass (76/211/EEC, single plan of 100 to 500)."""
    path = weights(["240.9"] * light + ["255"] * (500 - light))
    found = station(*ASKED, path)
    document = found.document
    chance = hypergeom.cdf(3, 500, light, 50)
    assert document["t1"] == pytest.approx(chance, abs=1e-5)
    assert document["passing"] == pytest.approx(chance, abs=0.015)
    assert (document["finished"], document["mean_needed"]) == (True, None)
    assert (document["n"], document["expected"], document["plan"]["n"]) == (500, 500, 50)
    assert document["t1_left"] == 12 - light  # 2.5 % of 500, downwards
    outlook = "safe" if chance >= 0.99 else "thin" if chance >= 0.9 else "failing"
    assert (document["outlook"], found.code) == (outlook, int(outlook == "failing"))


def test_a_running_batch_says_what_the_rest_must_be(station, weights):
    """100 bags of 249 g, 400 expected: the other 300 need 250 + 100/300 g on average."""
    found = station(*ASKED, weights(["249"] * 98 + ["240"] + ["258"]), "--expected", 400)
    document = found.document
    assert document["mean_needed"] == "250.333333333"
    assert (document["t1_count"], document["t1_left"]) == (1, 9)  # 2.5 % of 400 less one
    assert (document["finished"], document["mean_so_far"]) == (False, "249")
    assert 0 <= document["passing"] < 0.9
    assert found.code == 1


def test_a_rehearsal_on_the_same_bags_agrees(station, weights):
    path = weights([f"{248 + place % 9}" for place in range(480)] + ["240"] * 20)
    document = station(*ASKED, path, "--rehearse", 4000, "--seed", 3).document
    rehearsal = document["rehearsal"]
    assert (rehearsal["draws"], rehearsal["seed"]) == (4000, 3)
    assert rehearsal["passed"] == round(rehearsal["share"] * 4000)
    assert 0.5 < document["passing"] < 0.99
    assert document["passing"] == pytest.approx(
        rehearsal["share"], abs=0.015 + 2 * rehearsal["standard_error"]
    )
    again = station(*ASKED, path, "--rehearse", 4000, "--seed", 3).document
    assert again["rehearsal"] == rehearsal


def test_other_plans(station, weights):
    path = weights(["251"] * 200)
    double = station(*ASKED, path, "--plan", "double").document
    assert (double["plan"]["kind"], double["plan"]["second"]["n"]) == ("double", 30)
    full = station(*ASKED, path, "--plan", "full", "--expected", 300).document
    assert (full["plan"]["n"], full["passing"]) == (300, 1.0)
    small = station(*ASKED, weights(["251"] * 40)).document
    assert small["plan"]["kind"] == "full"  # no sample below 100 bags


def test_an_open_run_is_forecast_for_its_order(station, shift):
    """150 bags of 400, 11 g over on average: the rest needs 2270 - 150 * 11 / 250 = 2263.4 g."""
    found = station("forecast", "--run", "last", "--home", shift.home, "--json")
    document = found.document
    assert (found.code, document["outlook"], document["unit"]) == (0, "safe", "kg")
    assert (document["n"], document["expected"], document["finished"]) == (150, 400, False)
    assert (document["mean_so_far"], document["mean_needed"]) == ("2.281", "2.2634")
    assert document["t1_left"] == 10
    less = station("forecast", "--run", "last", "--home", shift.home, "--json", "--expected", 200)
    assert less.document["expected"] == 200
    ended = station("forecast", "--run", shift.slaw.id, "--home", shift.home, "--json").document
    assert (ended["finished"], ended["n"]) == (True, 90)


def test_pages_for_people(station, shift, weights):
    page = station("forecast", "--run", "last", "--home", shift.home).out
    for words in ("SAFE: it would pass", "150 of 400", "2.2634 kg on the 250 bags to come", "10"):
        assert words in page
    asked = [one for one in ASKED if one != "--json"]
    page = station(*asked, weights(["249"] * 200), "--rehearse", 10).out
    for words in ("FAILING", "0 of 10 samples drawn from these bags passed"):
        assert words in page


@pytest.mark.parametrize(
    ("count", "more", "words"),
    [
        (1, (), "at least two packs"),
        (200, ("--expected", 150), "more than 150 expected"),
        (200, ("--plan", "destructive-e-mark"), "has no destructive-e-mark plan"),
        (60, ("--plan", "sample"), "only from 100 on"),
        (200, ("--plan", "some"), "'some' is none of sample"),
        (200, ("--rehearse", 0), "1 to 100000 draws"),
        (200, ("--rehearse", 10, "--expected", 300), "from a finished batch only"),
        (200, ("--expected", -1), "more than -1 expected"),
        (200, ("--expected", 0), "more than 0 expected"),
    ],
)
def test_what_cannot_be_forecast(station, weights, count, more, words):
    found = station(*ASKED, weights(["250"] * count), *more)
    assert (found.code, found.out) == (2, "")
    assert words in f"{found.error['title']}: {found.error['detail']}"
