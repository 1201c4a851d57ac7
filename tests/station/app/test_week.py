"""A simulated week is made through the true store; what it says it made is on record."""

import json
from collections import Counter
from datetime import date, timedelta
from decimal import Decimal
from itertools import pairwise

import pytest

from station.app.places import demo_settings
from station.app.practice_record import PracticeClock
from station.app.week.make import Week
from station.app.week.plan import DAYS, LEAST_BAGS, RUNS_A_DAY, Planted, plan_week
from station.app.week.tally import kilograms
from station.app.week.verb import answer
from station.app.week.verb import week as verb
from station.cli.entry import run
from station.cli.verbs import build
from station.clock import SystemClock
from station.config.load import load
from station.core.checks.scale import check_of, held_true
from station.core.journal import EntryKind
from station.core.pack import LabelState, Quality
from station.errors import BadInput
from station.store.facts import facts
from station.store.label_rolls import roll_accounts
from station.store.open_holds import open_holds
from station.store.queries import summary
from station.store.suspects import suspect_windows
from station.store.verify import verify
from station.store.weighed import packs_of_run
from tests.station.conftest import WEEK_ENDS


def plant(week, fault):
    return next(one for one in week.planted if one.fault is fault)


def quality_of(week, serial):
    packs = [pack for uid in week.runs for pack in packs_of_run(week.home, uid).packs]
    return next(pack.quality for pack in packs if pack.serial == serial)


def test_every_bag_is_on_record_and_the_journal_is_whole(week):
    assert verify(week.home).whole
    counts = summary(week.home)
    assert counts.packs == week.whole.bags == LEAST_BAGS
    assert counts.rejects == week.whole.rejects
    assert counts.duplicate_serials == 0
    assert counts.labels[LabelState.APPLIED] == week.whole.good
    assert counts.labels[LabelState.VOIDED] == week.whole.voided == 2


def test_kilograms_of_good_and_held_bags_are_those_counted_while_packing(week):
    packs = [pack for uid in week.runs for pack in packs_of_run(week.home, uid).packs]
    grams = sum(
        (pack.net.grams for pack in packs if pack.quality is not Quality.REJECT), Decimal(0)
    )
    assert grams == week.whole.grams == sum(one.grams for one in week.products.values())
    assert kilograms(grams) == f"{grams / 1000:.3f}"


def test_five_days_of_three_products_each(week):
    assert week.days == tuple(date(2026, 11, day) for day in (16, 17, 18, 19, 20))
    by_day = Counter(packs_of_run(week.home, uid).run.dating.production_day for uid in week.runs)
    assert [by_day[day] for day in week.days] == [3, 3, 3, 3, 4]  # the tare split one run
    assert len(week.products) == 4


def test_the_failed_check_has_its_window_and_its_bags_are_held(week):
    checks = [check_of(one) for one in facts(week.home, (EntryKind.SCALE_CHECK,))]
    assert sum(not held_true(one) for one in checks) == 1
    windows = suspect_windows(week.home)
    planted = plant(week, Planted.SCALE_CHECK)
    assert [one.window.bags for one in windows] == [planted.bags]
    assert quality_of(week, planted.first) is Quality.HELD


def test_the_held_lot_reaches_its_bags(week):
    planted = plant(week, Planted.HELD_LOT)
    holds = {one.subject: one.bags for one in open_holds(week.home)}
    assert holds[planted.name] == planted.bags > 0


def test_burst_seal_and_wrong_roll_are_set_aside_after_their_label(week):
    for fault in (Planted.BURST_SEAL, Planted.WRONG_ROLL):
        assert quality_of(week, plant(week, fault).first) is Quality.REJECT
    scans = Counter(one.fact.result for one in facts(week.home, (EntryKind.SCAN_BACK,)))
    assert scans["differs"] == scans["cleared"] == 1


def test_every_roll_adds_up(week):
    accounts = roll_accounts(week.home)
    assert sum(one.used for one in accounts) == week.whole.labels
    assert {one.difference for one in accounts} == {0}


def test_the_low_tare_is_found_by_an_empty_bag_and_the_product_gets_a_new_version(week):
    bags = Counter(one.fact.result for one in facts(week.home, (EntryKind.EMPTY_BAG,)))
    assert bags["does not fit"] == 1
    first, second = (packs_of_run(week.home, uid).run.product for uid in week.runs[12:14])
    assert (second.code, second.version) == (first.code, first.version + 1)
    assert (second.bag.tare - first.bag.tare).grams == 6


def test_the_clock_jumps_on_and_back(week):
    planted = plant(week, Planted.CLOCK_JUMP)
    packs = packs_of_run(week.home, week.runs[11]).packs
    steps = [after.at - before.at for before, after in pairwise(packs)]
    assert min(steps) < -timedelta(minutes=20)
    first = next(place for place, pack in enumerate(packs) if pack.serial == planted.first)
    assert packs[first].at - packs[first - 1].at > timedelta(minutes=47)


def test_the_same_seed_gives_the_same_bags(week, tmp_path):
    house = load_demo()
    again = Week(house, tmp_path / "a", plan_week(house, LEAST_BAGS, 1, WEEK_ENDS), 1).make()
    assert again.whole == week.whole
    assert [one.words for one in again.planted] == [one.words for one in week.planted]


def load_demo():
    return load(demo_settings(), WEEK_ENDS)


def test_a_plan_spreads_all_bags_and_plants_each_fault_once():
    plan = plan_week(load_demo(), 1001, 7, WEEK_ENDS)
    assert sum(one.bags for one in plan.runs) == 1001
    assert len(plan.runs) == DAYS * RUNS_A_DAY
    assert Counter(fault for one in plan.runs for fault in one.faults.values()) == Counter(Planted)
    assert all(day.weekday() < 5 for day in plan.days)


def test_too_few_bags_are_refused():
    with pytest.raises(BadInput, match=f"takes {LEAST_BAGS} or more"):
        plan_week(load_demo(), LEAST_BAGS - 1, 1, WEEK_ENDS)


def test_a_used_home_is_refused(week):
    house = load_demo()
    with pytest.raises(BadInput, match="fresh folder"):
        Week(house, week.home, plan_week(house, LEAST_BAGS, 1, WEEK_ENDS), 1)


def test_a_hand_on_the_clock_leaves_the_steady_count():
    clock = PracticeClock("Europe/Dublin", SystemClock("Europe/Dublin").now().utc)
    before = clock.now()
    clock.set_by(-60)
    after = clock.now()
    assert before.utc - after.utc == timedelta(minutes=1)
    assert before.monotonic_ns == after.monotonic_ns


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--packs", "10"), "takes 300 or more"),
        (("--packs", "9000000"), "give 300 to"),
        (("--until", "soon"), "give a day like"),
        (("--until", "2999-01-01"), "before today"),
    ],
)
def test_wrong_options_are_refused_in_words(words, said, capsys):
    verbs = build()
    verbs.command("week")(verb)
    assert run(verbs, ["week", *words]) == 2
    assert said in capsys.readouterr().err


def test_the_answer_names_what_was_planted(week):
    document = answer(week, 1, 2.0).document
    assert {one["fault"] for one in document["planted"]} == set(map(str, Planted))
    assert document["totals"]["packs"] == LEAST_BAGS
    json.dumps(document)
