"""Tare studies: when a mean may stand for every bag, and when it is stale."""

from datetime import UTC, datetime, timedelta
from decimal import Decimal
from fractions import Fraction

import pytest

from station.core.mass import Mass, MassError
from station.core.metrology.clause import RuleRefused
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.tare import (
    TareRule,
    TareStudy,
    TareUse,
    empty_bag_due,
    plausible,
    stale_reason,
    tare_use,
)

AT = datetime(2024, 5, 1, 6, 0, tzinfo=UTC)
TENTH = Mass.parse("0.1 g")


def study(*tares: str) -> TareStudy:
    return TareStudy("bag 250", "F-17", ("clip", "label"), AT, tuple(Mass.of(t) for t in tares))


def spread_study(low: str, high: str, bags: int = 26) -> TareStudy:
    return study(*[low, high] * (bags // 2))


def limits(nominal: str):
    return rule_set("eu-76-211").limits(Mass.parse(nominal))


def test_mean_and_spread_are_exact():
    one = study("7.0", "7.1", "7.3")
    assert one.mean == Fraction(214, 30)
    assert one.variance == Fraction(7, 300)
    assert one.shown() == "mean 7.133 g, s 0.153 g, 3 bags"


def test_mean_tare_is_rounded_up_so_that_no_net_is_overstated():
    assert study("7.0", "7.1", "7.3").mean_tare(TENTH) == Mass.of("7.2")
    assert study("7.0", "7.0").mean_tare(TENTH) == Mass.of("7.0")


@pytest.mark.parametrize(
    ("low", "high", "nominal", "use"),
    [
        # 12.4 g is below 5 % of 250 g = 12.5 g: scatter does not matter
        ("10.4", "14.4", "250 g", TareUse.MEAN_SMALL),
        # 12.5 g is not below 5 %: s against 0.25 T = 2.25 g; s^2 = 26/25 d^2 for +/- d
        ("10.3", "14.7", "250 g", TareUse.MEAN_STEADY),  # d 2.2, s 2.2436
        ("10.2", "14.8", "250 g", TareUse.EACH_PACK),  # d 2.3, s 2.3456
    ],
)
def test_rule_for_a_mean_tare(low, high, nominal, use):
    """Brazil, Portaria Inmetro 248/2008."""
    assert tare_use(spread_study(low, high), limits(nominal)) is use


def test_ten_percent_is_a_setting():
    """DE FPackV 2020 Anlage 3 no.5 b: 10 %."""
    rule = TareRule(small_share=Decimal("0.10"))
    assert tare_use(spread_study("10.2", "14.8"), limits("250 g"), rule) is TareUse.MEAN_SMALL


def test_too_few_bags_are_refused():
    with pytest.raises(RuleRefused, match="24 empty bags are too few for a mean tare: weigh 25"):
        tare_use(spread_study("7.0", "7.1", bags=24), limits("250 g"))


@pytest.mark.parametrize(
    ("tare", "good"), [("7.4", True), ("7.3", True), ("7.5", False), ("6.6", True), ("6.5", False)]
)
def test_plausible_band_is_four_standard_deviations(tare, good):
    """Tares 6.9 and 7.1: mean 7, s^2 = 0.01 * 26/25, 4 s = 0.408 g."""
    assert plausible(Mass.of(tare), spread_study("6.9", "7.1"), TENTH) is good


def test_bags_all_alike_still_allow_one_scale_interval():
    assert plausible(Mass.of("7.1"), study("7.0", "7.0"), TENTH)
    assert not plausible(Mass.of("7.2"), study("7.0", "7.0"), TENTH)


@pytest.mark.parametrize(
    ("bag", "film", "days", "said"),
    [
        ("bag 250", "F-17", 90, None),
        ("bag 340", "F-17", 1, "studied on bag 250, the run uses bag 340"),
        ("bag 250", "F-18", 1, "changed from F-17 to F-18"),
        ("bag 250", "F-17", 91, "91 days old, at most 90"),
        ("bag 250", "F-17", -1, "in the future"),
    ],
)
def test_stale_tares(bag, film, days, said):
    reason = stale_reason(study("7.0", "7.1"), bag, film, AT + timedelta(days=days))
    assert reason is None if said is None else said in reason


@pytest.mark.parametrize(
    ("film", "checked", "packs", "said"),
    [
        ("F-17", None, 0, "before the first pack"),
        ("F-18", "F-17", 5, "new film lot F-18"),
        ("F-17", "F-17", 1000, "1000 packs since"),
        ("F-17", "F-17", 999, None),
    ],
)
def test_empty_bag_prompt(film, checked, packs, said):
    reason = empty_bag_due(film, checked, packs)
    assert reason is None if said is None else said in reason


def test_a_study_needs_two_real_bags_in_one_unit():
    with pytest.raises(ValueError, match="at least two"):
        study("7.0")
    with pytest.raises(MassError, match="more than nothing"):
        study("7.0", "0")
    with pytest.raises(MassError, match="one unit, not g, oz"):
        TareStudy("b", "f", (), AT, (Mass.parse("7 g"), Mass.parse("0.25 oz")))
