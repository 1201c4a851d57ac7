"""``station target``: the knee by hand, and the proposal from a run's own bags."""

import pytest
from scipy.stats import norm

KNEE = ("target", "--rules", "eu-76-211", "--nominal", "340g", "--json", "--sigma")


@pytest.mark.parametrize("sigma", [0, 2.5, 5.2, 5.21, 6, 8])
def test_the_lowest_mean_of_a_normal_process(station, sigma):
    """340 g: T1 = 329.8 g with 2.5 % below it, T2 = 319.6 g with 1 in 10 000 below it."""
    document = station(*KNEE, str(sigma)).document
    lines = {
        "mean": 340,
        "T1": 329.8 - norm.ppf(0.025) * sigma,
        "T2": 319.6 - norm.ppf(0.0001) * sigma,
    }
    assert document["target"] == pytest.approx(max(lines.values()), abs=1e-5)
    assert document["governing"] == max(lines, key=lines.get)
    # the first line to rise above 340 g: 10.2/1.96 = 5.2042 g before 20.4/3.719 = 5.485 g
    assert document["knee"] == pytest.approx(10.2 / norm.ppf(0.975), abs=1e-5)
    assert document["sigma"] == sigma


def test_the_curve_is_flat_up_to_the_knee_and_rises_beyond(station):
    document = station(*KNEE, "6g").document
    curve = document["curve"]
    assert [point["sigma"] for point in curve] == pytest.approx([0.85 * step for step in range(13)])
    for point in curve:
        assert (point["target"] == 340) is (point["sigma"] < document["knee"])


def test_money(station):
    """6 g of spread: T2 + 3.719 * 6 = 341.914 g; 1.914 g on 4000 bags are 7.656 kg, at 3.20."""
    given = station(*KNEE, "0.006kg", "--bags-per-shift", 4000, "--price", 3.2).document["giveaway"]
    assert given["g_per_bag"] == pytest.approx(1.914, abs=5e-4)
    assert given["kg_per_shift"] == pytest.approx(7.656, abs=2e-3)
    assert given["money_per_shift"] == pytest.approx(24.50, abs=0.01)
    bare = station(*KNEE, "6").document["giveaway"]
    assert (bare["kg_per_shift"], bare["money_per_shift"]) == (None, None)
    page = station(*[one for one in KNEE if one != "--json"], "6", "--bags-per-shift", 4000).out
    for words in ("Fill to a mean of 341.914 g", "the T2 rule", "7.66 kg a shift"):
        assert words in page


def test_a_proposal_from_a_run_s_own_bags(station, shift):
    """Sealed bags at the target less 6 to more 8 g, evenly: 1 g over on average, s^2 = 224/12.

    For a batch of 150 the mean is sure to 99 % from 2.33 * 4.32/12.25 = 0.82 g over the nominal
    quantity, so a target of 2270 g with its mean of 2271 g does, and one of 2269 g does not.
    """
    asked = ("target", "--run", "last", "--home", shift.home, "--json")
    document = station(*asked, "--bags-per-shift", 4000, "--price", 2.5).document
    proposal = document["proposal"]
    assert (document["fills"], document["lot_size"], document["interval"]) == (150, 150, 0.001)
    assert document["floor"] is None
    assert (proposal["target"], proposal["mean"]) == (2.27, pytest.approx(2.271))
    assert proposal["s"] == pytest.approx((224 / 12) ** 0.5 / 1000, abs=1e-6)
    assert proposal["governing"] == "mean of the whole batch"
    whole = proposal["clauses"][0]
    assert whole["chance"] == pytest.approx(norm.cdf(150**0.5 / (224 / 12) ** 0.5), abs=1e-5)
    assert all(one["chance"] >= one["wanted"] for one in proposal["clauses"])
    assert document["now"]["giveaway"] == {
        "g_per_bag": pytest.approx(11), "kg_per_shift": pytest.approx(44), "money_per_shift": 110,
    }  # fmt: skip
    assert document["giveaway"] == {
        "g_per_bag": pytest.approx(1), "kg_per_shift": pytest.approx(4), "money_per_shift": 10,
    }  # fmt: skip


def test_more_assurance_a_coarser_step_or_a_smaller_batch_ask_for_more(station, shift):
    asked = ("target", "--run", "last", "--home", shift.home, "--json")
    sure = station(*asked, "--assurance", 0.9999).document["proposal"]
    assert sure["target"] == 2.271  # 3.72 * 4.32/12.25 = 1.31 g over
    step = station(*asked, "--interval", "2 g", "--assurance", 0.9999).document
    assert (step["proposal"]["target"], step["interval"]) == (2.272, 0.002)
    small = station(*asked, "--lot-size", 10).document
    assert small["proposal"]["target"] == 2.273  # 2.33 * 4.32/3.16 = 3.18 g over
    assert small["plan"]["kind"] == "full"


def test_open_bags_are_held_by_their_floor(station, shift):
    document = station("target", "--run", shift.slaw.id, "--home", shift.home, "--json").document
    assert (document["floor"], document["fills"]) == (340, 90)
    assert document["proposal"]["target"] == 340
    assert document["proposal"]["governing"] == "the floor"


def test_pages_for_people(station, shift):
    page = station("target", "--run", "last", "--home", shift.home).out
    for words in (
        "Fill to 2.27 kg; it is 2.28 kg now",
        "mean of the whole batch",
        "11.000 g a bag",
    ):
        assert words in page


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ((), "give --sigma S with --rules and --nominal, or --run UID or --blend LOT"),
        (("--sigma", "4"), "needs --rules ID and --nominal MASS"),
        ((*KNEE[1:], "4g", "--run", "last"), "leave out --run and --blend"),
        ((*KNEE[1:], "-4g"), "is below zero"),
        ((*KNEE[1:], "4,5"), "'4,5' is not a mass"),
        ((*KNEE[1:], "4", "--price", "3"), "needs --bags-per-shift"),
        ((*KNEE[1:], "4", "--price", "-3", "--bags-per-shift", "9"), "must be above zero"),
        ((*KNEE[1:], "4", "--price", "nan", "--bags-per-shift", "9"), "must be above zero"),
        ((*KNEE[1:], "4", "--bags-per-shift", "0"), "must be 1 or more"),
        (("--run", "last", "--assurance", "1"), "strictly between 0 and 1"),
        (("--run", "last", "--assurance", "nan"), "strictly between 0 and 1"),
        (("--run", "last", "--lot-size", "0"), "batch of 0 packs"),
        (("--run", "last", "--interval", "0 g"), "must be above zero"),
        (("--run", "last", "--interval", "1"), "'1' is not a mass"),
    ],
)
def test_what_cannot_be_proposed(station, shift, arguments, words):
    found = station("target", *arguments, "--home", shift.home)
    assert (found.code, found.out) == (2, "")
    assert words in found.err


def test_too_few_bags(station, packed):
    found = station("target", "--run", "last", "--home", packed.home)
    assert (found.code, "3 fills are too few" in found.err) == (2, True)
