"""What the plans do to packer and consumer: the station's verdicts, simulated, against exact risk.

The exact risks are binomial (T1 clause) and noncentral t (mean clause); the simulation judges each
sample by `rehearse`, the same integer arithmetic a real verdict uses.
"""

from math import sqrt
from random import Random

import pytest
from scipy import stats

from station.core.mass import Mass
from station.core.metrology.batch import mean_holds
from station.core.metrology.plans import PlanKind
from station.core.metrology.probability import binomial_cdf, mean_check_probability
from station.core.metrology.rehearsal import rehearse
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.running import RunningBatch

Q = Mass.parse("250 g")
EU = rule_set("eu-76-211")
LIMITS = EU.limits(Q)


@pytest.mark.parametrize(
    ("n", "accept", "chances"),
    [
        (50, 3, (0.964, 0.760, 0.250)),
        (80, 5, (0.985, 0.789, 0.177)),
        (125, 7, (0.986, 0.712, 0.060)),
    ],
)
def test_t1_plans_accept_lots_of_known_quality(n, accept, chances):
    """2.5, 5 and 10 % of T1 packs; own computation, equal to the ISO 2859-1 AQL 2.5 curves."""
    for share, chance in zip((0.025, 0.05, 0.10), chances, strict=True):
        exact = float(stats.binom.cdf(accept, n, share))
        assert exact == pytest.approx(chance, abs=0.0006)
        assert binomial_cdf(accept, n, share) == pytest.approx(exact, abs=1e-9)


def test_destructive_plan_accepts_a_lot_at_the_limit_less_often():
    assert binomial_cdf(1, 20, 0.025) == pytest.approx(0.912, abs=0.001)


@pytest.mark.parametrize(("rules", "size", "rejected"), [
    ("eu-76-211", 400, 0.005), ("eu-76-211", 4000, 0.005), ("oiml-r87-2016", 4000, 0.005),
    ("us-hb133", 100, 0.025), ("us-hb133", 1000, 0.025), ("us-hb133", 9000, 0.0248),
])  # fmt: skip
def test_a_mean_exactly_at_nominal_is_rejected_with_the_stated_risk(rules, size, rejected):
    plan = rule_set(rules).plan(size)
    chance = mean_check_probability(0.0, plan.mean_size, sqrt(plan.factor_squared))
    assert 1 - chance == pytest.approx(rejected, abs=2e-4)


@pytest.mark.parametrize(
    ("rules", "size", "deficit"),
    [
        ("eu-76-211", 400, 0.50),
        ("eu-76-211", 4000, 0.38),
        ("oiml-r87-2016", 1000, 0.29),
        ("oiml-r87-2016", 9999, 0.23),
        ("ca-sfcr", 1000, 0.48),
        ("us-hb133", 100, 0.62),
        ("us-hb133", 1000, 0.42),
        ("us-hb133", 9999, 0.29),
    ],
)
def test_half_the_lots_pass_at_this_deficit(rules, size, deficit):
    """A sample pass does not prove the mean: deficits in standard deviations, own computation."""
    plan = rule_set(rules).plan(size)
    chance = mean_check_probability(-deficit, plan.mean_size, sqrt(plan.factor_squared))
    assert chance == pytest.approx(0.5, abs=0.035)


def test_simulated_mean_verdicts_agree_with_the_noncentral_t():
    """2 500 samples of 30 from a process 0.4 s short, each judged exactly."""
    plan, random = EU.plan(400), Random(20240229)
    empty = RunningBatch(LIMITS)
    passed = 0
    draws = 2500
    for _ in range(draws):
        nets = [Mass.of(f"{random.gauss(250 - 1.2, 3.0):.2f}") for _ in range(plan.mean_size)]
        passed += mean_holds(empty.add_all(nets), plan.factor_squared)
    exact = float(stats.nct.sf(-0.503 * sqrt(30), 29, -0.4 * sqrt(30)))
    assert passed / draws == pytest.approx(exact, abs=3.5 * sqrt(exact * (1 - exact) / draws))


def test_rehearsed_t1_failures_agree_with_the_hypergeometric():
    """60 T1 packs in 1 000, samples of 80, at most 5."""
    nets = [Mass.of("240")] * 60 + [Mass.of("252")] * 940
    rehearsal = rehearse(nets, LIMITS, EU.plan(1000), draws=3000, seed=7)
    exact = 1 - float(stats.hypergeom.cdf(5, 1000, 60, 80))
    assert rehearsal.t1_failed / 3000 == pytest.approx(
        exact, abs=3.5 * sqrt(exact * (1 - exact) / 3000)
    )
    assert rehearsal.passed == 3000 - rehearsal.t1_failed


def test_rehearsal_of_a_double_plan_agrees_with_the_two_stage_sum():
    nets = [Mass.of("240")] * 24 + [Mass.of("252")] * 376
    plan = EU.plan(400, PlanKind.DOUBLE)
    exact = float(stats.hypergeom.cdf(1, 400, 24, 30)) + float(
        stats.hypergeom.pmf(2, 400, 24, 30) * stats.hypergeom.cdf(2, 370, 22, 30)
    )
    rehearsal = rehearse(nets, LIMITS, plan, draws=3000, seed=3)
    assert 1 - rehearsal.t1_failed / 3000 == pytest.approx(
        exact, abs=3.5 * sqrt(exact * (1 - exact) / 3000)
    )


def test_the_same_seed_rehearses_the_same():
    nets = [Mass.of(f"{Random(i).gauss(249, 5):.1f}") for i in range(300)]
    first = rehearse(nets, LIMITS, EU.plan(300), draws=200, seed=5)
    assert first == rehearse(nets, LIMITS, EU.plan(300), draws=200, seed=5)
    assert first != rehearse(nets, LIMITS, EU.plan(300), draws=200, seed=6)
    assert 0 < first.share < 1
    assert first.standard_error == pytest.approx(sqrt(first.share * (1 - first.share) / 200))


def test_a_sample_larger_than_the_batch_cannot_be_rehearsed():
    with pytest.raises(ValueError, match="cannot be drawn from 49"):
        rehearse([Q] * 49, LIMITS, EU.plan(400))
