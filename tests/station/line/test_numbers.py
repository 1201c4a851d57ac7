"""The figures of a run while it is packed: batches, sums, charts, the question."""

from dataclasses import replace
from datetime import datetime, timedelta, timezone
from decimal import Decimal
from fractions import Fraction
from statistics import fmean, stdev
from time import process_time

import pytest

from station.core.mass import Mass
from station.core.metrology.changeover import Habit
from station.core.metrology.clause import RuleRefused
from station.core.metrology.forecast import Outlook, forecast
from station.core.metrology.rehearsal import rehearse
from station.core.metrology.running import RunningBatch
from station.line.numbers import HABIT_BAGS, RunNumbers, Span, habit_of, hour_of, rules_of
from tests.station.screens.numbers_states import START, bags, fills, run_with_floor
from tests.station.screens.states import grams, make_product, make_run

RUN = run_with_floor(246, 1200)
LATER = START + timedelta(hours=9)


def whole(numbers: RunNumbers, *, still_open: bool = False):
    return numbers.figures(Span.RUN, LATER, still_open=still_open)


def test_the_whole_run_has_the_forecast_of_its_bags():
    nets = fills(400, 249.5, 2.5, floor=246)
    figures = whole(RunNumbers(RUN, bags=bags(nets)))
    packs = RunningBatch(RUN.window.limits).add_all(map(grams, nets))
    rules = rules_of(RUN)
    assert figures.batch.packs == packs
    assert figures.batch.outlook == forecast(packs, rules.official_plan(400), 400)
    assert figures.batch.finished
    assert figures.batch.mean_needed is None
    assert figures.batch.t1_left == 10  # a fortieth of 400, guidance to packers


@pytest.mark.parametrize("mean", [248.9, 249.2, 249.5])
def test_the_chance_agrees_with_the_official_sample_drawn_from_the_same_bags(mean):
    """Monte-Carlo with exact verdicts; the tolerance is that of the project's own claim."""
    numbers = RunNumbers(RUN, bags=bags(fills(600, mean, 2.6, seed=5, floor=246)))
    chance = whole(numbers).batch.outlook
    assert chance is not None
    nets = [bag.net for bag in numbers.bags]
    drawn = rehearse(nets, RUN.window.limits, chance.plan, draws=6000, seed=11)
    assert abs(drawn.share - chance.passing) < 0.015


def test_an_open_run_is_forecast_for_its_order():
    figures = whole(RunNumbers(RUN, bags=bags(fills(300, 252, 2))), still_open=True)
    assert (figures.batch.packs.n, figures.batch.expected) == (300, 1200)
    assert figures.batch.mean_needed == 250 - Fraction(figures.batch.packs.deviation) / 900


def test_bags_come_once_in_any_number_of_pieces():
    pieces = RunNumbers(RUN)
    every = bags(fills(120, 252, 2))
    for at in range(0, 120, 7):
        pieces.add(every[max(0, at - 3) : at + 7])
    assert pieces.bags == every
    assert whole(pieces) == whole(RunNumbers(RUN, bags=every))


def test_a_bag_that_left_the_batch_counts_nowhere():
    every = bags([250, 200, 254])
    numbers = RunNumbers(RUN, bags=(every[0], replace(every[1], in_batch=False), every[2]))
    figures = whole(numbers)
    assert figures.batch.packs.n == 2
    assert figures.charts.nets == (250.0, 254.0)
    assert figures.given_away is not None
    assert figures.given_away.per_bag_g == 2


def test_nets_of_a_scale_in_kilograms_are_taken_exactly():
    (bag,) = bags([252])
    numbers = RunNumbers(RUN, bags=(replace(bag, net=Mass.parse("0.252 kg")),))
    assert numbers.bags[0].net.digits == "252"


def test_what_is_given_away_is_exact_and_priced():
    numbers = RunNumbers(RUN, price_per_kg=Decimal("4.20"), bags=bags([251, 252, 250]))
    given = whole(numbers).given_away
    assert given is not None
    assert (given.per_bag_g, given.run_kg, given.money) == (1, Decimal("0.003"), Decimal("0.01260"))


def test_before_the_first_bag_there_is_nothing_to_say():
    for span in Span:
        figures = RunNumbers(RUN).figures(span, LATER, still_open=True)
        assert figures.batch.outlook is None
        assert figures.batch.why_none == "no good bag yet"
        assert figures.given_away is None
        assert figures.charts.nets == ()


# --- the hour -----------------------------------------------------------------------------------


def test_the_hour_holds_the_bags_of_the_last_bag_s_hour_of_the_plant():
    numbers = RunNumbers(RUN, bags=bags(fills(900, 252, 2)))  # 06:40 to 08:10
    figures = numbers.figures(Span.HOUR, numbers.bags[-1].at, still_open=True)
    mine = [bag for bag in numbers.bags if bag.at.hour == 8]
    assert figures.batch.packs.n == len(mine) == 100
    assert figures.batch.expected == 400  # 600 at this pace, but only 300 are still ordered


def test_a_whole_hour_is_expected_at_its_pace():
    run = run_with_floor(246)
    numbers = RunNumbers(run, bags=bags(fills(900, 252, 2)))
    at = START.replace(hour=8, minute=10)
    figures = numbers.figures(Span.HOUR, at, still_open=True)
    assert figures.batch.expected == 600


def test_the_first_hour_counts_its_pace_from_the_first_bag():
    numbers = RunNumbers(run_with_floor(246), bags=bags(fills(100, 252, 2)))  # from 06:40
    figures = numbers.figures(Span.HOUR, START + timedelta(minutes=10), still_open=True)
    assert figures.batch.expected == 200  # 20 minutes of it are the run's


def test_a_few_minutes_promise_nothing():
    numbers = RunNumbers(run_with_floor(246), bags=bags(fills(30, 252, 2)))
    figures = numbers.figures(Span.HOUR, START + timedelta(minutes=3), still_open=True)
    assert figures.batch.expected == 30


@pytest.mark.parametrize("still_open", [True, False])
def test_an_hour_that_is_over_expects_no_more(still_open):
    numbers = RunNumbers(run_with_floor(246), bags=bags(fills(900, 252, 2)))
    figures = numbers.figures(Span.HOUR, LATER, still_open=still_open)
    assert figures.batch.finished


def test_the_hour_that_comes_twice_is_two_hours():
    """Clocks go back at 01:00 UTC on 25 October 2026 in the European Union."""
    summer, winter = timezone(timedelta(hours=1)), timezone(timedelta())
    first = datetime(2026, 10, 25, 1, 30, tzinfo=summer)
    second = datetime(2026, 10, 25, 1, 30, tzinfo=winter)
    assert hour_of(first) != hour_of(second)
    assert hour_of(second) - hour_of(first) == timedelta(hours=1)


@pytest.mark.parametrize(
    ("rules", "still_open", "span"),
    [
        ("eu-76-211", True, Span.HOUR),
        ("eu-76-211", False, Span.RUN),
        ("us-hb133", True, Span.RUN),  # a lot, not an hour
    ],
)
def test_unasked_the_batch_is_the_one_the_rules_judge(rules, still_open, span):
    run = make_run(make_product(rule_set=rules))
    numbers = RunNumbers(run, bags=bags(fills(200, 252, 2)))
    figures = numbers.figures(None, numbers.bags[-1].at, still_open=still_open)
    assert figures.batch.span is span


# --- charts and the question --------------------------------------------------------------------


def test_the_running_mean_and_the_habit_are_those_of_the_bags():
    nets = fills(250, 252, 2)
    charts = whole(RunNumbers(RUN, bags=bags(nets))).charts
    assert charts.running_mean[99] == pytest.approx(fmean(nets[:100]))
    assert charts.habit == Habit(fmean(nets[:HABIT_BAGS]), stdev(map(float, nets[:HABIT_BAGS])))
    assert len(charts.averages) == len(charts.sums) == 250


def test_a_habit_needs_its_bags():
    assert habit_of([grams(252)] * (HABIT_BAGS - 1)) is None
    charts = whole(RunNumbers(RUN, bags=bags(fills(99, 252, 2)))).charts
    assert charts.habit is None
    assert charts.averages == ()
    assert len(charts.running_mean) == 99


def test_a_lasting_step_in_the_fill_raises_a_question_from_where_it_began():
    nets = fills(300, 252, 2) + fills(60, 256, 2)
    (question,) = whole(RunNumbers(RUN, bags=bags(nets))).questions
    assert 290 <= question.since <= 310
    assert question.seen == pytest.approx(256, abs=0.7)


def test_an_even_run_raises_none():
    assert whole(RunNumbers(RUN, bags=bags(fills(2000, 252, 2)))).questions == ()


def test_the_product_s_earlier_habit_is_held_against_the_first_bags_already():
    numbers = RunNumbers(RUN, Habit(252.0, 2.0), bags=bags(fills(60, 256, 2)))
    (question,) = whole(numbers).questions
    assert question.usual == 252.0


# --- rules and speed ----------------------------------------------------------------------------


def test_a_run_under_another_edition_of_the_rules_is_refused_in_words():
    limits = replace(RUN.window.limits, version="another edition")
    run = replace(RUN, window=replace(RUN.window, limits=limits))
    with pytest.raises(RuleRefused, match="--rules"):
        RunNumbers(run)


def test_too_few_bags_have_their_reason():
    batch = whole(RunNumbers(RUN, bags=bags([252]))).batch
    assert batch.outlook is None
    assert "at least two" in batch.why_none


def test_ten_thousand_bags_are_forecast_in_time():
    """Judged and forecast in less than 50 ms, at best of three on a busy machine."""
    numbers = RunNumbers(run_with_floor(246), bags=bags(fills(10_000, 250, 2), every_s=3))
    took = []
    for _ in range(3):
        began = process_time()
        chance = numbers._run(False).outlook
        took.append(process_time() - began)
    assert chance is not None
    assert chance.outlook is Outlook.SAFE
    assert min(took) < 0.05
