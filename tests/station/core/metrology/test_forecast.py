"""Forecasts against seeded simulation with exact verdicts, within 0.015."""

from random import Random

import pytest

from station.core.mass import Mass
from station.core.metrology.batch import judge_running
from station.core.metrology.forecast import Forecast, Outlook, forecast
from station.core.metrology.plans import PlanKind
from station.core.metrology.rehearsal import rehearse
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.running import RunningBatch

Q = Mass.parse("340 g")
WITHIN = 0.015


def filled(count: int, mean: float, spread: float, seed: int) -> list[Mass]:
    random = Random(seed)
    return [Mass.of(f"{random.gauss(mean, spread):.1f}") for _ in range(count)]


@pytest.mark.parametrize(
    ("rules", "kind", "count", "mean", "spread"),
    [
        ("eu-76-211", "sample", 1000, 339.0, 5.0),
        ("eu-76-211", "double", 1000, 340.5, 6.0),
        ("eu-76-211", "sample", 400, 338.5, 4.0),
        ("oiml-r87-2016", "sample", 4000, 339.0, 5.5),
        ("de-fpackv-2020", "destructive", 1000, 341.0, 6.0),
        ("us-hb133", "sample", 700, 339.5, 6.5),
        ("ca-sfcr", "sample", 700, 338.5, 6.0),
        ("nz-sch7a", "sample", 200, 339.0, 6.0),
    ],
)
def test_finished_batch_agrees_with_the_rehearsal(rules, kind, count, mean, spread):
    law = rule_set(rules)
    limits, plan = law.limits(Q), law.plan(count, PlanKind(kind))
    nets = filled(count, mean, spread, seed=11)
    chance = forecast(RunningBatch(limits).add_all(nets), plan)
    draws = 10_000
    seen = rehearse(nets, limits, plan, draws=draws, seed=4)
    assert chance.mean == pytest.approx(1 - seen.mean_failed / draws, abs=WITHIN)
    assert chance.t1 == pytest.approx(1 - seen.t1_failed / draws, abs=WITHIN)
    assert chance.t2 == pytest.approx(1 - seen.t2_failed / draws, abs=WITHIN)
    assert chance.passing == pytest.approx(seen.share, abs=WITHIN)


@pytest.mark.parametrize("floor", [337, 339, 340])
@pytest.mark.parametrize("rules", ["eu-76-211", "de-fpackv-2020", "us-hb133"])
def test_fills_topped_up_to_a_floor_agree_with_the_rehearsal(rules, floor):
    """They are skewed, so that mean and s of a sample rise and fall together."""
    law, random, nets = rule_set(rules), Random(3), []
    while len(nets) < 800:
        fill = random.gauss(floor + 0.5, 2.4)
        if fill >= floor:
            nets.append(Mass.of(f"{fill - (floor - 337.7):.1f}"))
    limits, plan = law.limits(Q), law.plan(800)
    chance = forecast(RunningBatch(limits).add_all(nets), plan)
    seen = rehearse(nets, limits, plan, draws=10_000, seed=4)
    assert chance.passing == pytest.approx(seen.share, abs=WITHIN)


def test_running_batch_agrees_with_batches_packed_to_the_end():
    """200 of 600 packs weighed; the rest, and the sample, drawn 4 000 times from the process.

    As in the forecast, the process mean is uncertain by s / sqrt(200) and s is known.
    """
    law = rule_set("eu-76-211")
    limits, plan = law.limits(Q), law.plan(600)
    batch = RunningBatch(limits).add_all(filled(200, 339.5, 5.0, seed=2))
    chance = forecast(batch, plan, expected=600)
    random = Random(8)
    mean, spread = 340 + float(batch.mean_error), float(batch.spread())
    known = filled(200, 339.5, 5.0, seed=2)
    shares = {"mean": 0, "t1": 0, "t2": 0, "all": 0}
    rounds = 4000
    for _ in range(rounds):
        level = random.gauss(mean, spread / 200**0.5)
        lot = [float(one.amount) for one in known]
        lot += [random.gauss(level, spread) for _ in range(400)]
        drawn = random.sample(lot, plan.n)
        first = drawn[: plan.mean_size]
        average = sum(first) / len(first)
        scatter = sum((one - average) ** 2 for one in first) / (len(first) - 1)
        held = (
            average + 0.379 * scatter**0.5 >= 340,
            sum(one < 329.8 for one in drawn) <= plan.accept,
            not any(one < 319.6 for one in drawn),
        )
        for clause, good in zip(shares, (*held, all(held)), strict=True):
            shares[clause] += good
    assert chance.mean == pytest.approx(shares["mean"] / rounds, abs=WITHIN)
    assert chance.t1 == pytest.approx(shares["t1"] / rounds, abs=WITHIN)
    assert chance.t2 == pytest.approx(shares["t2"] / rounds, abs=WITHIN)
    assert chance.passing == pytest.approx(shares["all"] / rounds, abs=WITHIN)


def test_a_finished_batch_weighed_in_full_is_certain_and_agrees_with_the_verdict():
    law = rule_set("eu-76-211")
    for mean, certain in ((341.0, 1.0), (339.0, 0.0)):
        batch = RunningBatch(law.limits(Q)).add_all(filled(500, mean, 3.0, seed=1))
        chance = forecast(batch, law.plan(500, PlanKind.FULL))
        assert chance.passing == certain
        assert judge_running(law, batch).accepted is bool(certain)


def test_small_batch_weighed_in_full_agrees_with_batches_packed_to_the_end():
    """45 of 90 packs weighed; the law weighs them all (GB SI 2006/659 Sch.2 3.6 and 4.7)."""
    law = rule_set("gb-2006-659")
    plan = law.official_plan(90)
    known = filled(45, 340.2, 6.0, seed=9)
    batch = RunningBatch(law.limits(Q)).add_all(known)
    chance = forecast(batch, plan, expected=90)
    random = Random(21)
    mean, spread = 340 + float(batch.mean_error), float(batch.spread())
    mean_held = t1_held = 0
    rounds = 4000
    for _ in range(rounds):
        level = random.gauss(mean, spread / 45**0.5)
        rest = [random.gauss(level, spread) for _ in range(45)]
        mean_held += sum(rest) + float(batch.total.amount) >= 340 * 90
        rest = [random.gauss(mean, spread) for _ in range(45)]
        t1_held += batch.t1_count + sum(one < 329.8 for one in rest) <= plan.accept
    assert chance.mean == pytest.approx(mean_held / rounds, abs=WITHIN)
    assert chance.t1 == pytest.approx(t1_held / rounds, abs=WITHIN)


def test_packs_all_alike_leave_no_doubt():
    law = rule_set("eu-76-211")
    for net, passing in (("340", 1.0), ("339.9", 0.0)):
        batch = RunningBatch(law.limits(Q)).add_all([Mass.of(net)] * 200)
        assert forecast(batch, law.plan(400), expected=400).passing == passing


@pytest.mark.parametrize(
    ("chance", "outlook"),
    [(1.0, "safe"), (0.99, "safe"), (0.989, "thin"), (0.90, "thin"), (0.899, "failing")],
)
def test_outlook_in_one_word(chance, outlook):
    plan = rule_set("eu-76-211").plan(400)
    assert Forecast(1.0, 1.0, 1.0, chance, plan, 400).outlook is Outlook(outlook)


@pytest.mark.parametrize(
    ("weighed", "expected", "said"),
    [
        (1, None, "at least two packs"),
        (200, 150, "more than the 150 expected"),
        (200, 210, None),
        (40, None, "takes 50 packs, the batch will have only 40"),
    ],
)
def test_what_cannot_be_forecast_is_refused(weighed, expected, said):
    law = rule_set("eu-76-211")
    batch = RunningBatch(law.limits(Q)).add_all([Q] * weighed)
    if said is None:
        assert forecast(batch, law.plan(210), expected=expected).passing == 1.0
        return
    with pytest.raises(ValueError, match=said):
        forecast(batch, law.plan(400), expected=expected)
