"""Lots built by hand, one per clause, worked out in exact fractions."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from station.core.mass import Mass
from station.core.metrology.batch import judge_full, judge_sample, t1_left
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import at_least_minus_root
from station.core.metrology.plans import PlanKind
from station.core.metrology.rule_sets.registry import RULE_SETS, rule_set
from station.core.metrology.running import RunningBatch

Q = Mass.parse("250 g")


def packs(*groups: tuple[int, str]) -> list[Mass]:
    return [Mass.of(net) for count, net in groups for _ in range(count)]


def test_eu_mean_of_the_first_thirty_exactly_at_the_limit():
    """15 packs at 250 + a, 15 at 250 - b: mean - Qn = (a - b)/2, s^2 = 15 (a + b)^2 / 58.

    The limit is b - a <= 2 * 0.503 s. With a = 1: (b - 1)^2 <= 4 * 0.503^2 * 15/58 (b + 1)^2.
    r^2 = 4 * 0.253009 * 15/58 = 0.261733..., r = 0.511599...; b <= (1 + r)/(1 - r) = 3.0949949...
    """
    rules = rule_set("eu-76-211")
    root = float(4 * Fraction(503, 1000) ** 2 * Fraction(15, 58)) ** 0.5
    assert (1 + root) / (1 - root) == pytest.approx(3.0949949, abs=1e-7)
    for light, good in (("246.9051", True), ("246.90501", True), ("246.905", False)):
        nets = packs((15, "251"), (15, light), (20, "250"))
        judged = judge_sample(rules, Q, nets, 500)
        assert judged.mean_ok is good, light
        assert judged.t1_ok
        assert judged.t2_ok
        assert judged.accepted is good
        assert judged.mean_packs.n == 30


def test_only_the_packs_of_the_mean_check_count_for_the_mean():
    nets = packs((30, "250"), (20, "245"))
    judged = judge_sample(rule_set("eu-76-211"), Q, nets, 500)
    assert judged.accepted
    assert judged.mean == Fraction(30 * 250 + 20 * 245, 50)
    assert not judge_sample(rule_set("eu-76-211"), Q, nets[::-1], 500).mean_ok


@pytest.mark.parametrize(("light", "accepted"), [(3, True), (4, False)])
def test_eu_t1_clause(light, accepted):
    """GB SI 2006/659 Sch.2 3.5: 50 packs, 3 pass, 4 fail; 240.9 g is below T1 = 241 g."""
    judged = judge_sample(
        rule_set("eu-76-211"), Q, packs((light, "240.9"), (50 - light, "252")), 500
    )
    assert judged.t1_count == light
    assert judged.mean_ok
    assert judged.t2_ok
    assert judged.t1_ok is accepted
    assert judged.accepted is accepted


@pytest.mark.parametrize(("lightest", "accepted"), [("232", True), ("231.9", False)])
def test_eu_t2_clause(lightest, accepted):
    judged = judge_sample(rule_set("eu-76-211"), Q, packs((1, lightest), (49, "252")), 500)
    assert (judged.t1_count, judged.t2_count) == (1, 0 if accepted else 1)
    assert judged.mean_ok
    assert judged.t1_ok
    assert judged.accepted is accepted


def test_german_t2_is_a_tenth_higher_than_twice_t():
    """142 g: T = 6.39 up to 6.4; second limit 12.78 up to 12.8, as twice T. 145 g: 6.525 up to
    6.6, twice is 13.2; its own table gives 13.05 up to 13.1, so 131.85 g is a T2 pack in Germany
    only."""
    nominal = Mass.parse("145 g")
    assert rule_set("de-fpackv-2020").limits(nominal).t2 == Mass.parse("131.9 g")
    assert rule_set("eu-76-211").limits(nominal).t2 == Mass.parse("131.8 g")
    nets = [Mass.of("131.85"), *packs((49, "146"))]
    assert not judge_sample(rule_set("de-fpackv-2020"), nominal, nets, 400).accepted
    assert judge_sample(rule_set("eu-76-211"), nominal, nets, 400).accepted


@pytest.mark.parametrize(("light", "accepted"), [(2, True), (3, False)])
def test_germany_allows_two_percent_of_a_full_batch(light, accepted):
    """DE FPackV 2020 Anlage 3 no.7 b; 2 of 100 pass, 3 do not; 250 g."""
    nets = packs((light, "240"), (100 - light, "251"))
    judged = judge_full(rule_set("de-fpackv-2020"), Q, nets)
    assert judged.accepted is accepted
    assert judged.t1_accept == 2


def test_batch_mean_exactly_nominal_is_good_and_the_least_less_is_not():
    nets = packs((50, "249.9"), (50, "250.1"))
    assert judge_full(rule_set("eu-76-211"), Q, nets).accepted
    less = [*nets[:-1], Mass.of("250.0999")]
    judged = judge_full(rule_set("eu-76-211"), Q, less)
    assert judged.mean == 250 - Fraction(1, 1_000_000)
    assert not judged.mean_ok


def test_ninety_five_packs_are_weighed_in_full():
    """Scenario: a batch of 95 packs. GB SI 2006/659 Sch.2 3.6 and 4.7: mean, and at most 5 %."""
    for light, accepted in ((4, True), (5, False)):
        nets = packs((light, "240"), (95 - light, "251"))
        assert judge_full(rule_set("gb-2006-659"), Q, nets).accepted is accepted
    with pytest.raises(RuleRefused, match="weigh every pack"):
        judge_sample(rule_set("gb-2006-659"), Q, packs((50, "251")), 95)


@pytest.mark.parametrize(("gross_short", "accepted"), [(1, True), (2, False)])
def test_canada_tolerates_one_pack_beyond_twice_t_not_two(gross_short, accepted):
    """CA SFCR s.200(4): two or more short by more than twice the tolerance; 231.9 g at 250 g."""
    nets = packs((gross_short, "231.9"), (32 - gross_short, "254"))
    judged = judge_sample(rule_set("ca-sfcr"), Q, nets, 1000)
    assert judged.t1_ok
    assert judged.mean_ok
    assert judged.t2_ok is accepted
    assert judged.accepted is accepted


def test_canadian_mean_uses_the_printed_t():
    """n = 10 of 40: t = 3.250. 5 packs 250 + a, 5 packs 250 - b: (b - a)/2 <= t s / sqrt(10),
    s^2 = 10 (a + b)^2 / 36; so (b - a)^2 <= 4 * 3.25^2 / 36 (a + b)^2, r = 3.25/3 > 1: any pair
    passes. With nine packs 250 + a and one 250 - b: mean -> (9a - b)/10, s^2 = (a + b)^2 / 10,
    limit b - 9a <= 3.25 (a + b): always for b > 0. So the sample of ten can only fail by all packs
    short alike."""
    rules = rule_set("ca-sfcr")
    assert judge_sample(rules, Q, packs((9, "249.9"), (1, "249.5")), 40).mean_ok is False
    assert judge_sample(rules, Q, packs((9, "250.0"), (1, "245")), 40).mean_ok
    assert judge_sample(rules, Q, packs((10, "250")), 10).mean_ok
    assert not judge_sample(rules, Q, packs((9, "250"), (1, "249.9")), 10).mean_ok


def test_us_average_and_individual_tests_are_both_needed():
    """HB 133: MAV at 250 g is 12.7 g, so 237.3 g passes and 237.2 g does not; n = 12."""
    rules = rule_set("us-hb133")
    assert judge_sample(rules, Q, packs((1, "237.3"), (11, "252")), 250).accepted
    short = judge_sample(rules, Q, packs((1, "237.2"), (11, "252")), 250)
    assert (short.mean_ok, short.t1_ok, short.accepted) == (True, False, False)
    light = judge_sample(rules, Q, packs((12, "249.9")), 250)
    assert (light.mean_ok, light.t1_ok) == (False, True)


def test_us_large_lot_allows_one_mav_and_has_no_second_limit():
    rules = rule_set("us-hb133")
    judged = judge_sample(rules, Q, packs((1, "200"), (47, "253")), 5000)
    assert (judged.t1_count, judged.t2_count, judged.t2_ok, judged.accepted) == (1, 1, True, True)
    assert not judge_sample(rules, Q, packs((2, "237"), (46, "253")), 5000).accepted


def test_us_category_b_has_no_correction_factor():
    rules = rule_set("us-hb133")
    nets = packs((9, "250"), (1, "249.9"))
    assert not judge_sample(rules, Q, nets, 100, PlanKind.CATEGORY_B).accepted
    assert judge_sample(rules, Q, packs((10, "250")), 100, PlanKind.CATEGORY_B).accepted


@pytest.mark.parametrize(
    ("first", "then", "second_needed", "accepted"),
    [
        (1, None, False, True),
        (2, None, True, False),
        (2, 2, False, True),
        (2, 3, False, False),
        (3, None, False, False),
        (3, 0, False, False),
    ],
)
def test_double_plan_by_stages(first, then, second_needed, accepted):
    """EU Annex II 2.2.1, batch of 400: 30 packs 1/3, then 30 more, together 4/5."""
    nets = packs((first, "240"), (30 - first, "254"))
    if then is not None:
        nets += packs((then, "240"), (30 - then, "254"))
    judged = judge_sample(rule_set("eu-76-211"), Q, nets, 400, PlanKind.DOUBLE)
    assert judged.second_needed is second_needed
    assert judged.accepted is accepted


def test_destructive_plan():
    nets = packs((1, "240"), (19, "252"))
    judged = judge_sample(rule_set("eu-76-211"), Q, nets, 1000, PlanKind.DESTRUCTIVE)
    assert judged.accepted
    assert judged.plan.factor == Decimal("0.640")


@pytest.mark.parametrize("count", [49, 51])
def test_another_number_of_packs_than_the_plan_takes_is_refused(count):
    with pytest.raises(RuleRefused, match=f"takes 50 packs, {count} were given"):
        judge_sample(rule_set("eu-76-211"), Q, packs((count, "251")), 400)


def test_a_full_batch_needs_every_pack():
    with pytest.raises(RuleRefused, match="needs 100 net weights, 99 were given"):
        judge_sample(rule_set("eu-76-211"), Q, packs((99, "251")), 100, PlanKind.FULL)


def test_judgement_shows_mean_and_spread():
    """Three packs 249, 250, 252: mean 250 1/3, s^2 = 7/3."""
    judged = judge_full(rule_set("eu-76-211"), Q, packs((1, "249"), (1, "250"), (1, "252")))
    assert judged.mean == Fraction(751, 3)
    assert str(judged.mean_shown) == "250.333333333"
    assert str(judged.s) == "1.527525232"
    assert judged.n == 3


def test_t1_packs_still_allowed():
    """EU guidance 2.5 %: 25 of 1 000, 5 of 200; Germany 2 %: 20 and 4."""
    for rules, whole, now in (("eu-76-211", 25, 5), ("de-fpackv-2020", 20, 4)):
        law = rule_set(rules)
        batch = RunningBatch(law.limits(Q)).add_all(packs((3, "240"), (197, "252")))
        assert t1_left(law, batch, 1000) == whole - 3
        assert t1_left(law, batch, batch.n) == now - 3


fractions = st.fractions(-10, 10, max_denominator=1000)


@given(fractions, st.fractions(0, 3, max_denominator=1000))
def test_root_comparison_is_exact_at_its_own_boundary(margin, root):
    square = root * root
    assert at_least_minus_root(-root, Fraction(1), square)
    tiny = Fraction(1, 10**30)
    assert not at_least_minus_root(-root - tiny, Fraction(1), square)
    assert at_least_minus_root(margin, Fraction(1), square) is (margin + root >= 0)


@settings(max_examples=30)
@given(
    st.sampled_from(sorted(RULE_SETS)),
    st.lists(st.integers(2300, 2600), min_size=200, max_size=200),
    st.randoms(use_true_random=False),
)
def test_a_full_verdict_does_not_depend_on_order(rules, tenths, random):
    nets = [Mass.of(f"{one // 10}.{one % 10}") for one in tenths]
    judged = judge_full(rule_set(rules), Q, nets)
    random.shuffle(nets)
    assert judge_full(rule_set(rules), Q, nets) == judged
