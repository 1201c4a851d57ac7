"""``station batch``: lots by hand for every law, in exact fractions, from a file and the record.

All lots are of 250 g. T = 9 g, T1 = 241 g, T2 = 232 g in every metric law; the US has 12.7 g in
grams (NIST Handbook 133 Table 2-5, from memory), so 237.3 g.
"""

from dataclasses import replace
from fractions import Fraction
from math import isqrt

import pytest

from station.core.metrology.rule_sets import registry


@pytest.fixture
def batch(station, weights):
    """Give a function that judges groups of (count, net) under a law."""

    def judge(rules, groups, *more):
        path = weights(net for count, net in groups for _ in range(count))
        call = ("batch", "--rules", rules, "--nominal", "250g", "--csv", path, "--json", *more)
        return station(*call)

    return judge


# --- the mean clause at its own boundary ----------------------------------------------------------

# rule set, lot, bags taken, bags of the mean check, square of the factor of s, source
MEAN = [
    # R 87:2016 Table 2 (from memory): 50 of 100 to 500, 0.379
    ("oiml-r87-2016", 500, 50, 50, Fraction(379, 1000) ** 2),
    # GB SI 2006/659 Sch.2 4.5: the first 30, 0.503
    ("eu-76-211", 500, 50, 30, Fraction(503, 1000) ** 2),
    ("gb-2006-659", 500, 50, 30, Fraction(503, 1000) ** 2),
    # DE FPackV 2020 Anlage 3 no.6: all 50, 0.379
    ("de-fpackv-2020", 500, 50, 50, Fraction(379, 1000) ** 2),
    # NIST HB 133 Table 2-1 (from memory): 12 of 12 to 250, 0.635
    ("us-hb133", 250, 12, 12, Fraction(635, 1000) ** 2),
    # CA SFCR Sch.5 Part 3: n = 32, t = 2.746, over the root of 32
    ("ca-sfcr", 1000, 32, 32, Fraction(2746, 1000) ** 2 / 32),
    # NZ Sch.7A Table 1: 32 of 400 to 4000, 0.483
    ("nz-sch7a", 400, 32, 32, Fraction(483, 1000) ** 2),
]


@pytest.mark.parametrize(("rules", "lot", "n", "mean_n", "square"), MEAN)
def test_the_mean_may_lie_k_s_below_nominal_and_not_a_millionth_of_a_gram_more(
    batch, rules, lot, n, mean_n, square
):
    """Half the bags at 251, half at 250 - b, by turns.

    In the mean check mean - Qn = (1 - b)/2 and s^2 = m/(m - 1) ((1 + b)/2)^2, so it holds as long
    as (b - 1)/(b + 1) <= r with r^2 = k^2 m/(m - 1): b <= (1 + r)/(1 - r).
    """
    r_square = square * mean_n / (mean_n - 1)
    most = 10**6 * (1 + _root(r_square)) / (1 - _root(r_square))
    for micrograms, holds in ((int(most), True), (int(most) + 1, False)):
        b = Fraction(micrograms, 10**6)
        assert ((b - 1) ** 2 <= r_square * (b + 1) ** 2) is holds
        light = f"{float(250 - b):.6f}"
        assert Fraction(light) == 250 - b
        found = batch(rules, [(1, "251"), (1, light)] * (n // 2), "--lot-size", lot)
        document = found.document
        assert (document["mean_ok"], document["t1_ok"], document["t2_ok"]) == (holds, True, True)
        assert (document["accepted"], found.code) == (holds, 0 if holds else 1)
        assert Fraction(document["mean_exact"]) == 250 + (1 - b) / 2
        assert document["plan"]["kind"] == "sample"
        assert (document["n"], document["mean_check"]["n"]) == (n, mean_n)
        s_square = Fraction(n, n - 1) * ((1 + b) / 2) ** 2
        assert float(document["s"]) ** 2 == pytest.approx(float(s_square), rel=1e-8)


def _root(square: Fraction) -> Fraction:
    """Root of a fraction, to 30 decimals and downwards."""
    return Fraction(isqrt(square.numerator * 10**60 // square.denominator), 10**30)


# --- T1 and T2 in a sample ------------------------------------------------------------------------

# rule set, lot, bags taken, most T1 bags, T1 + T2 limits, most T2 bags
SAMPLES = [
    ("oiml-r87-2016", 500, 50, 3, "241", "232", 0),
    ("oiml-r87-2016", 5000, 125, 7, "241", "232", 0),
    ("eu-76-211", 500, 50, 3, "241", "232", 0),
    ("eu-76-211", 3200, 80, 5, "241", "232", 0),
    ("gb-2006-659", 3201, 125, 7, "241", "232", 0),
    ("de-fpackv-2020", 10001, 160, 8, "241", "232", 0),
    ("us-hb133", 251, 24, 0, "237.3", "224.6", None),
    ("us-hb133", 3201, 48, 1, "237.3", "224.6", None),
    ("ca-sfcr", 1000, 32, 2, "241", "232", 1),
    ("nz-sch7a", 79, 12, 1, "241", "232", 0),
    ("nz-sch7a", 4000, 32, 4, "241", "232", 0),
]


def _less(limit: str) -> str:
    """The least weight below a limit that a scale of 0.1 g shows."""
    return f"{float(limit) - 0.1:.1f}"


@pytest.mark.parametrize(("rules", "lot", "n", "most", "t1", "t2", "most_t2"), SAMPLES)
def test_as_many_bags_below_t1_as_the_plan_allows_and_one_more(
    batch, rules, lot, n, most, t1, t2, most_t2
):
    for light in (most, most + 1):
        groups = [(light, _less(t1)), (1, t1), (n - light - 1, "262")]
        found = batch(rules, groups, "--lot-size", lot)
        document = found.document
        assert (document["T1"], document["T2"]) == (t1, t2)
        assert (document["t1_count"], document["t1_accept"]) == (light, most)
        assert document["mean_ok"]
        assert document["t1_ok"] is document["accepted"] is (light == most)
        assert found.code == (light > most)


@pytest.mark.parametrize(("rules", "lot", "n", "most", "t1", "t2", "most_t2"), SAMPLES)
def test_bags_below_t2(batch, rules, lot, n, most, t1, t2, most_t2):
    allowed = most if most_t2 is None else most_t2
    for gross in (allowed, allowed + 1):
        groups = [(gross, _less(t2)), (n - gross, "262")]
        document = batch(rules, groups, "--lot-size", lot).document
        assert (document["t2_count"], document["t2_accept"]) == (gross, most_t2)
        assert document["t2_ok"] is (most_t2 is None or gross <= most_t2)
        assert document["accepted"] is (gross <= allowed and gross <= most)
    at_the_limit = batch(rules, [(min(1, most), t2), (n - min(1, most), "262")], "--lot-size", lot)
    assert (at_the_limit.document["t2_count"], at_the_limit.code) == (0, 0)


# --- whole batches --------------------------------------------------------------------------------

# rule set, bags, most below T1: 2.5 % in most laws, 2 % in DE (Anlage 3 no.7 b), 5 % below 100 bags
# in GB (Sch.2 3.6), none beyond the MAV in the US, no short one in NZ lots taken whole
FULL = [
    ("oiml-r87-2016", 200, 5),
    ("eu-76-211", 399, 9),
    ("gb-2006-659", 99, 4),
    ("gb-2006-659", 200, 5),
    ("de-fpackv-2020", 200, 4),
    ("us-hb133", 200, 0),
    ("ca-sfcr", 200, 5),
    ("ca-sfcr", 10, 1),
    ("nz-sch7a", 12, 0),
    ("nz-sch7a", 200, 5),
]


@pytest.mark.parametrize(("rules", "n", "most"), FULL)
def test_a_whole_batch_by_its_shares(batch, rules, n, most):
    for light in (most, most + 1):
        found = batch(rules, [(light, "237"), (n - light, "262")])
        document = found.document
        assert (document["plan"]["kind"], document["lot_size"], document["n"]) == ("full", n, n)
        assert (document["t1_accept"], document["accepted"]) == (most, light == most)


@pytest.mark.parametrize("rules", sorted({row[0] for row in FULL}))
def test_a_whole_batch_may_not_be_light_by_the_least(batch, rules):
    """50 at 249.9 and 50 at 250.1 average 250 exactly; 0.0001 g less on one bag does not."""
    exact = batch(rules, [(50, "249.9"), (50, "250.1")], "--lot-size", 100)
    assert (exact.document["mean"], exact.code) == ("250", 0)
    less = batch(rules, [(50, "249.9"), (49, "250.1"), (1, "250.0999")])
    assert (less.document["mean_exact"], less.document["mean_ok"]) == ("249999999/1000000", False)
    assert less.code == 1


# --- the other plans ------------------------------------------------------------------------------


def test_destructive_plans(batch):
    """20 bags, one below T1, 0.640 (76/211/EEC Annex II 2.2.2); DE: 5 of 10 to 99 bags."""
    more = ("--plan", "destructive", "--lot-size")
    assert batch("eu-76-211", [(1, "240.9"), (19, "252")], *more, 400).code == 0
    assert batch("eu-76-211", [(2, "240.9"), (18, "252")], *more, 400).code == 1
    assert batch("de-fpackv-2020", [(5, "250")], *more, 60).code == 0
    assert batch("de-fpackv-2020", [(1, "240.9"), (4, "262")], *more, 60).code == 1
    refused = batch("nz-sch7a", [(5, "250")], *more, 60)
    assert refused.code == 2
    assert "has no destructive plan here: use one of full, sample" in refused.error["detail"]


def test_a_double_plan_asks_for_its_second_stage(batch):
    """76/211/EEC Annex II 2.2.1: 30 bags, 1 passes, 3 fail, 2 ask for 30 more, then 4 pass."""
    more = ("--plan", "double", "--lot-size", 500)
    first = batch("eu-76-211", [(2, "240"), (28, "252")], *more)
    assert (first.code, first.document["second_needed"]) == (1, True)
    both = batch("eu-76-211", [(2, "240"), (28, "252"), (2, "240"), (28, "252")], *more)
    assert (both.code, both.document["second_needed"]) == (0, False)
    assert both.document["t1_accept"] == 4


def test_the_size_of_the_batch_is_needed_only_where_the_law_needs_it(batch):
    fifty = batch("eu-76-211", [(50, "251")], "--plan", "sample")
    assert (fifty.code, fifty.document["plan"]["lot_from"]) == (0, 100)
    assert fifty.document["lot_size"] is None
    twelve = batch("us-hb133", [(12, "251")], "--plan", "sample")
    assert (twelve.code, twelve.document["plan"]["lot_to"]) == (0, 250)
    # CA SFCR Sch.5: ten bags are all of 10, or the sample of 11 to 40
    ten = batch("ca-sfcr", [(10, "251")], "--plan", "sample")
    assert (ten.code, ten.error["title"]) == (2, "--lot-size")
    assert "were drawn from" in ten.error["detail"]


@pytest.mark.parametrize(
    ("groups", "more", "words"),
    [
        ([(49, "250")], ("--lot-size", 500), "takes 50 packs, 49 were given: draw exactly 50"),
        ([(50, "250")], ("--lot-size", 99), "only from 100 on: weigh every pack"),
        (
            [(50, "250")],
            ("--lot-size", 60, "--plan", "full"),
            "needs 60 net weights, 50 were given",
        ),
        ([(50, "250")], ("--lot-size", 0), "batch of 0 packs"),
        ([(50, "250")], ("--lot-size", -3), "batch of -3 packs"),
        ([(50, "250")], ("--plan", "half"), "'half' is none of sample, double, full, destructive"),
        ([(50, "250")], ("--run", "last"), "give one of --csv FILE, --run UID or --blend LOT"),
    ],
)
def test_what_cannot_be_judged(batch, groups, more, words):
    found = batch("eu-76-211", groups, *more)
    assert (found.code, found.out) == (2, "")
    assert words in f"{found.error['title']}: {found.error['detail']}"


def test_the_document_has_these_keys(batch):
    document = batch("eu-76-211", [(50, "250")], "--lot-size", 500).document
    assert list(document) == [
        "rule_set", "version", "nominal", "unit", "T1", "T2", "from", "lot_size", "n", "mean",
        "mean_exact", "s", "t1_count", "t2_count", "t1_accept", "t2_accept", "mean_check",
        "mean_ok", "t1_ok", "t2_ok", "second_needed", "accepted", "plan",
    ]  # fmt: skip


def test_pages_for_people(station, weights):
    asked = ("batch", "--rules", "ca-sfcr", "--nominal", "250g", "--lot-size", "500", "--csv")
    good = station(*asked, weights(["251"] * 32))
    assert good.code == 0
    for words in ("THE BATCH PASSES", "mean + 2.746 s / √32", "at most 2", "251 g", "no official"):
        assert words in good.out
    short = station(*asked, weights(["249"] * 32))
    assert (short.code, "THE BATCH DOES NOT PASS" in short.out) == (1, True)
    double = ("--rules", "eu-76-211", "--nominal", "250g", "--plan", "double", "--lot-size", "500")
    stage = station("batch", *double, "--csv", weights(["240"] * 2 + ["252"] * 28))
    assert (stage.code, "OPEN: draw and weigh the second stage" in stage.out) == (1, True)


# --- from the record ------------------------------------------------------------------------------


def test_a_run_is_judged_in_full_by_its_own_rules(station, packed):
    """The three good bags, 342, 345 and 343 g, average 1030/3 g; the rejects are not in it."""
    for which in (("--run", packed.run.id), ("--run", "last"), ("--blend", packed.run.blend_lot)):
        found = station("batch", *which, "--home", packed.home, "--json")
        document = found.document
        assert (found.code, document["mean_exact"], document["n"]) == (0, "1030/3", 3)
        assert (document["rule_set"], document["nominal"]) == ("eu-76-211", "340")
        assert document["from"]["runs"] == [packed.run.id]
    page = station("batch", "--run", "last", "--home", packed.home)
    assert "Crunchy slaw mix v3" in page.out


def test_a_run_can_be_judged_by_another_law(station, packed):
    asked = ("batch", "--run", "last", "--home", packed.home, "--json", "--rules")
    document = station(*asked, "us-hb133").document
    assert (document["rule_set"], document["T1"]) == ("us-hb133", "323.7")  # MAV 16.3 g
    unknown = station(*asked, "us-133")
    assert (unknown.code, unknown.error["title"]) == (2, "--rules")


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("--run", "last", "--nominal", "340g"), "is for --csv"),
        (("--run", "last", "--plan", "sample"), "the record holds every bag"),
        (("--run", "last", "--lot-size", "50"), "the record holds every bag"),
        (("--run", "0198"), "run '0198' is not in the record"),
        (("--blend", "L9"), "blend lot 'L9' is not in the record"),
        ((), "give one of --csv FILE, --run UID or --blend LOT"),
        (("--run", "last", "--blend", "L9"), "give one of --csv FILE"),
    ],
)
def test_what_the_record_cannot_answer(station, packed, arguments, words):
    found = station("batch", *arguments, "--home", packed.home)
    assert (found.code, found.out) == (2, "")
    assert words in found.err


def test_a_run_under_another_edition_of_its_law_is_not_judged_by_this_one(
    station, packed, monkeypatch
):
    newer = replace(registry.RULE_SETS["eu-76-211"], version="transcription 2")
    monkeypatch.setattr(registry, "RULE_SETS", {**registry.RULE_SETS, "eu-76-211": newer})
    asked = ("batch", "--run", "last", "--home", packed.home, "--json")
    refused = station(*asked)
    assert refused.code == 2
    assert "give --rules eu-76-211 to judge it by that" in refused.error["detail"]
    assert station(*asked, "--rules", "eu-76-211").document["version"] == "transcription 2"
