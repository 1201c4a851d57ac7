"""The aid to a reference test, held against a law's table and against scipy's own sampling."""

from dataclasses import replace
from decimal import Decimal

import pytest

from station.core.facts import FactRecord
from station.core.mass import Mass
from station.core.metrology.rule_sets.registry import rule_set
from station.core.pack import Moment
from station.core.reference_test import (
    AID,
    Picked,
    ReferenceTest,
    ReferenceTestError,
    draw,
    picked_serials,
    reference_fact,
    standing,
    verdict,
)
from tests.station.core.checks.test_qa import AT

RULES = rule_set("eu-76-211")
NOMINAL = Mass.parse("340 g")
TARE = Mass.parse("8 g")


def a_test(lot_size=100):
    return ReferenceTest("r1", RULES.id, NOMINAL, lot_size, RULES.official_plan(lot_size))


def picked(number):
    return Picked(f"A1-7K-{number:06d}", TARE, Mass.parse("343 g"))


def with_nets(test, nets):
    for number, net in enumerate(nets):
        test = test.pick(picked(number)).weigh(Mass.of(net, "g") + TARE)
    return test


def test_the_plan_is_that_of_the_directive():
    # Council Directive 76/211/EEC Annex II 2.1.2, non-destructive single plans: batch, n, accepted
    for lot_size, n, accept in ((100, 50, 3), (500, 50, 3), (501, 80, 5), (3201, 125, 7)):
        plan = a_test(lot_size).plan
        assert (plan.n, plan.accept) == (n, accept)


def test_the_criterion_is_shown_live_and_judged_when_the_sample_is_whole():
    test = a_test()
    assert standing(test, RULES) is None
    test = with_nets(test, ["340", "345"])
    live = standing(test, RULES)
    assert (live.n, live.t1_count, live.mean_ok) == (2, 0, True)
    whole = with_nets(a_test(), ["341"] * test.plan.n)
    judged = verdict(whole, RULES)
    assert judged.accepted
    # T = 3 % of 340 g = 10.2 g (Annex I 2.4), so 329.7 g is below T1 = 329.8 g and 329.8 g is not
    short = with_nets(a_test(), ["344"] * (test.plan.n - 2) + ["329.7", "329.8"])
    assert verdict(short, RULES).t1_count == 1


def test_a_half_sample_has_no_verdict():
    with pytest.raises(ValueError, match="packs"):
        verdict(with_nets(a_test(), ["340"] * 3), RULES)


def test_a_bag_is_picked_once_and_never_more_than_the_plan_takes():
    test = a_test().pick(picked(1))
    with pytest.raises(ReferenceTestError, match="picked already"):
        test.pick(picked(1))
    full = replace(test, picked=tuple(picked(n) for n in range(test.most)))
    with pytest.raises(ReferenceTestError, match="takes"):
        full.pick(picked(9999))


def test_bags_are_weighed_in_the_order_they_were_picked():
    test = a_test().pick(picked(1)).pick(picked(2)).weigh(Mass.parse("350 g"))
    assert test.next_to_weigh.serial == picked(2).serial
    assert test.picked[0].net == Mass.parse("342 g")
    with pytest.raises(ReferenceTestError, match="empty bag"):
        test.weigh(Mass.parse("8 g"))
    with pytest.raises(ReferenceTestError, match="every picked bag"):
        test.weigh(Mass.parse("350 g")).weigh(Mass.parse("350 g"))


def test_a_draw_is_random_without_putting_back_and_can_be_repeated():
    serials = [f"S{n:04d}" for n in range(400)]
    drawn = draw(serials, 50, 7)
    assert len(set(drawn)) == 50
    assert drawn == draw(serials, 50, 7) != draw(serials, 50, 8)
    assert list(drawn) == sorted(drawn)  # in the order they stand on the pallet
    with pytest.raises(ReferenceTestError, match="cannot be drawn"):
        draw(serials[:10], 11, 1)


def test_each_bag_has_the_same_chance_of_being_drawn():
    scipy_stats = pytest.importorskip("scipy.stats")
    serials = [str(n) for n in range(20)]
    counts = dict.fromkeys(serials, 0)
    for seed in range(2000):
        for one in draw(serials, 5, seed):
            counts[one] += 1
    assert scipy_stats.chisquare(list(counts.values())).pvalue > 0.001


def test_the_record_says_that_it_is_an_aid():
    whole = with_nets(a_test(), ["341"] * a_test().plan.n)
    fact = reference_fact(whole, verdict(whole, RULES), " S. Weir, inspector ", "u1")
    assert fact.details["aid"] == AID
    assert fact.result == "would be accepted"
    record = FactRecord(fact, Moment(AT.utc, 0, "UTC", 1), "Q01", 1)
    assert picked_serials(record)[0] == picked(0).serial
    with pytest.raises(ReferenceTestError, match="name the inspector"):
        reference_fact(whole, verdict(whole, RULES), " ", "u1")
    assert Decimal(str(fact.details["n"])) == whole.plan.n
