"""Target proposals: the knee, the clauses, the floor."""

from random import Random

import pytest

from station.core.mass import Mass
from station.core.metrology.plans import PlanKind, find_full_rule
from station.core.metrology.rehearsal import rehearse
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.target import (
    Shares,
    TargetModel,
    Wanted,
    giveaway,
    knee_curve,
    knee_point,
    knee_spread,
    step_towards,
)

EU = rule_set("eu-76-211")


def model(
    spread: float,
    *,
    nominal: str = "340 g",
    floor: float | None = None,
    count: int = 800,
    lot: int = 1000,
    draws: int = 400,
) -> TargetModel:
    random = Random(17)
    return TargetModel(
        [random.gauss(0.0, spread) for _ in range(count)],
        EU.limits(Mass.parse(nominal)),
        EU.plan(lot),
        find_full_rule(EU.full_rules, lot, EU.id),
        lot,
        floor,
        Wanted(draws=draws),
    )


@pytest.mark.parametrize(
    ("nominal", "spread", "mean"),
    [
        ("340 g", 4, 340.0),
        ("340 g", 6, 341.9),
        ("340 g", 8, 349.4),
        ("1360 g", 8, 1360.0),
        ("1360 g", 12, 1363.8),
        ("1360 g", 16, 1378.7),
        ("2270 g", 12, 2270.0),
        ("2270 g", 20, 2276.2),
    ],
)
def test_lowest_mean_under_the_three_rules(nominal, spread, mean):
    """Normal model, 2.5 % at T1 and 1 in 10 000 at T2 (own computation)."""
    point = knee_point(EU.limits(Mass.parse(nominal)), spread)
    assert point.mean == pytest.approx(mean, abs=0.06)


def test_the_knee_lies_at_half_t():
    """Rule 1 governs to s = 0.510 T, rule 2 to 0.568 T, rule 3 beyond (own computation)."""
    limits = EU.limits(Mass.parse("200 g"))
    points = knee_curve(limits, [9 * share for share in (0.509, 0.511, 0.566, 0.57)])
    assert [point.governing for point in points] == ["mean", "T1", "T1", "T2"]
    means = [point.mean for point in points]
    assert means == sorted(means)


def test_german_law_allows_fewer_short_packs_in_the_long_run():
    """At most 2 % beyond T, so z is 2.054 and not 1.96 (FPackV 2020 section 9(3))."""
    shares = Shares.of(rule_set("de-fpackv-2020"))
    assert (shares.t1, shares.t2) == (0.02, 1e-4)
    limits = rule_set("de-fpackv-2020").limits(Mass.parse("200 g"))
    assert knee_spread(limits, shares) == pytest.approx(9 / 2.0537, rel=1e-4)


def test_without_a_second_limit_only_the_mean_and_the_first_limit_rule():
    """Handbook 133 has one limit, the MAV, and no pack of a whole batch may lie beyond it."""
    rules = rule_set("us-hb133")
    limits, shares = rules.limits(Mass.parse("200 g")), Shares.of(rules)
    assert shares.t2 is None
    wide = knee_point(limits, float(limits.tolerable.amount), shares)
    assert wide.governing == "T1"
    # z of 1 in 10 000 is 3.719 (normal table)
    assert wide.mean == pytest.approx(float(limits.t1.amount) + 3.719 * wide.spread, abs=0.01)


def test_clauses_a_rule_set_lacks_are_not_asked():
    rules = rule_set("us-hb133")
    full = find_full_rule(rules.full_rules, 1000, rules.id)
    residuals = [n / 10 for n in range(60)]
    limits = rules.limits(Mass.parse("340 g"))
    plan = rules.plan(1000, PlanKind.SAMPLE)
    model = TargetModel(residuals, limits, plan, full, 1000, None, Wanted(draws=100))
    assert not [one.clause for one in model.chances(345.0) if one.clause.startswith("T2")]


def test_a_narrow_fill_is_held_by_the_mean_alone():
    proposal = model(2.0).propose(0.1)
    assert proposal.governing == "mean of the whole batch"
    assert 340.0 <= proposal.mean < 340.3
    assert proposal.giveaway == pytest.approx(proposal.mean - 340)


def test_a_wide_fill_is_held_by_t2():
    proposal = model(7.0, draws=200).propose(0.1)
    assert proposal.governing.startswith("T2")
    assert proposal.mean > knee_point(EU.limits(Mass.parse("340 g")), 7.0).mean - 1.5


def test_every_clause_is_met_at_the_proposal_and_one_fails_just_below():
    one = model(5.0, draws=200)
    proposal = one.propose(0.1)
    assert all(clause.met for clause in proposal.clauses)
    lower = one.chances(proposal.target - 0.1)
    assert not all(clause.met for clause in lower)
    assert proposal.governing == next(clause.clause for clause in lower if not clause.met)


def test_lots_at_the_proposed_target_pass_the_rehearsed_sample():
    """1 000 fresh fills at the proposed target, 2 000 samples: at least 0.985 pass."""
    proposal = model(5.0, draws=400).propose(0.1)
    random = Random(5)
    nets = [Mass.of(f"{random.gauss(proposal.target, 5.0):.1f}") for _ in range(5000)]
    assert rehearse(nets, EU.limits(Mass.parse("340 g")), EU.plan(5000), seed=2).share > 0.985


def test_a_floor_at_nominal_leaves_only_the_floor():
    """Topped up to the floor, no bag is short: the lowest target is the floor itself."""
    proposal = model(4.0, floor=340.0, draws=100).propose(0.5)
    assert proposal.target == 340.0
    assert proposal.governing == "the floor"
    assert proposal.giveaway == pytest.approx(4.0 * 0.798, abs=0.25)  # mean of a half normal


def test_the_same_seed_proposes_the_same():
    assert model(5.0, draws=200).propose(0.1) == model(5.0, draws=200).propose(0.1)


def test_other_laws_can_be_asked():
    us = rule_set("us-hb133")
    random = Random(3)
    proposal = TargetModel(
        [random.gauss(0.0, 4.0) for _ in range(400)],
        us.limits(Mass.parse("340 g")),
        us.plan(500),
        find_full_rule(us.full_rules, 500, us.id),
        500,
        None,
        Wanted(draws=200),
    ).propose(0.5)
    assert proposal.mean > 340
    assert us.plan(500, PlanKind.SAMPLE).n == 24


def test_too_few_fills_and_hopeless_fills_are_refused():
    with pytest.raises(ValueError, match="49 fills are too few"):
        model(3.0, count=49)
    with pytest.raises(ValueError, match="scatter too much"):
        model(400.0, count=60, draws=100).propose(1.0)


def test_wanted_chances_are_checked():
    with pytest.raises(ValueError, match="strictly between 0 and 1"):
        Wanted(assurance=1.0)


def test_giveaway_in_grams_kilograms_and_money():
    """2.5 g on 4 000 bags is 10 kg; at 3.20 a kilogram 32.00."""
    found = giveaway(2.5, 4000, 3.20)
    assert (found.per_bag_g, found.per_shift_kg) == (2.5, 10.0)
    assert found.money_per_shift == pytest.approx(32.0)


@pytest.mark.parametrize(
    ("current", "proposed", "to"), [(254.0, 251.0, 253.0), (250.0, 250.4, 250.4), (250, 255, 251)]
)
def test_targets_move_by_one_step_at_a_time(current, proposed, to):
    assert step_towards(current, proposed, 1.0) == to


def test_a_negative_spread_is_refused():
    with pytest.raises(ValueError, match="cannot be negative"):
        knee_point(EU.limits(Mass.parse("340 g")), -1.0)
