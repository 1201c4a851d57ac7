"""Which tare may be taken off, and when an empty bag must be weighed."""

from datetime import timedelta

import pytest

from station.core.checks.tare import empty_bag_fact, judge_empty_bag, study_fact
from station.core.facts import FactRecord
from station.core.metrology.tare import TareRule, TareStudy
from station.core.pack import PackId, PackRecord
from station.line.tare_duty import TareDuty
from tests.end_to_end.checked_line import NINE, a_bag, moment
from tests.station.line.scenario import grams, make_run

RUN = make_run()  # bag B6, tare 6 g, nominal 250 g with T = 9 g
RULE = TareRule(packs_between_checks=100)


def study(tares, film="F-1", at=NINE, item="B6"):
    made = TareStudy(item, film, ("label",), at, tuple(grams(one) for one in tares))
    return FactRecord(study_fact(made, f"s{film}"), moment(at), "P01", 1)


def empty(duty, shown="6", film="F-1"):
    known = duty.study("B6", film)
    bag = judge_empty_bag("B6", film, grams(shown), grams(1), known, grams(6))
    duty.noted(FactRecord(empty_bag_fact(bag, "e", RUN.id), moment(NINE), "P01", 1))


def pack(duty, times):
    for _ in range(times):
        duty.packed(PackRecord(PackId("S", "A1", 1, 1), "u", a_bag(RUN, NINE, 252), 1, "00"))


def opened(on_record=None, *, declared=False):
    known = {} if on_record is None else {("B6", "F-1"): on_record}
    duty = TareDuty(RULE, declared=declared, on_record=lambda *key: known.get(key))
    duty.opened(RUN, NINE)
    return duty


def test_a_run_begins_with_an_empty_bag():
    duty = opened(declared=True)
    assert "one empty bag before the first pack" in duty.closing(NINE)
    empty(duty)
    assert (duty.closing(NINE), duty.film_lot) == ("", "F-1")
    duty.opened(RUN, NINE)
    assert duty.closing(NINE)


def test_without_a_study_the_declared_tare_stands_only_where_settings_say_so():
    duty = opened()
    empty(duty)
    assert "film lot F-1 has no tare study" in duty.closing(NINE)
    duty.noted(study(["5.5"] * 25))
    assert duty.closing(NINE) == ""


def test_a_bag_that_does_not_fit_closes_until_one_does():
    duty = opened(declared=True)
    empty(duty, "9")
    assert "9 g does not fit" in duty.closing(NINE)
    empty(duty, "6")
    assert duty.closing(NINE) == ""


def test_a_new_film_lot_needs_its_own_study():
    duty = opened(study(["5.5"] * 25))
    empty(duty)
    assert duty.closing(NINE) == ""
    empty(duty, film="F-2")
    assert "F-2 has no tare study" in duty.closing(NINE)


@pytest.mark.parametrize(
    ("tares", "words"),
    [
        (["5.5"] * 24, "24 empty bags are too few"),
        (["6.5"] * 25, "more than the tare 6 g taken off"),
        (["6"] * 25, ""),
        # mean 16/3 g is below 5 % of 250 g: scatter does not matter (Portaria Inmetro 248/2008)
        (["1", "9", "6"] * 9, ""),
    ],
)
def test_what_a_study_allows(tares, words):
    duty = opened(study(tares))
    empty(duty)
    assert (words in duty.closing(NINE)) if words else duty.closing(NINE) == ""


def test_bags_that_scatter_too_much_are_refused():
    """From 5 % of the nominal quantity on s may be 0.25 T = 2.25 g at most; here it is about 4."""
    duty = opened(study(["10", "18"] * 13))
    bag = judge_empty_bag("B6", "F-1", grams(14), grams(1), duty.study("B6", "F-1"), grams(6))
    duty.noted(FactRecord(empty_bag_fact(bag, "e", RUN.id), moment(NINE), "P01", 1))
    assert "scatter too much" in duty.closing(NINE)


def test_a_stale_study_is_refused():
    old = NINE - timedelta(days=91)
    duty = opened(study(["5.5"] * 25, at=old), declared=True)
    empty(duty)
    assert "91 days old" in duty.closing(NINE)


def test_an_empty_bag_is_due_after_so_many_packs_and_announced_before():
    duty = opened(declared=True)
    empty(duty)
    pack(duty, 89)
    assert duty.due(NINE) is None
    pack(duty, 1)
    assert duty.due(NINE).words == "weigh an empty bag within 10 bags"
    pack(duty, 9)
    assert duty.closing(NINE) == ""
    pack(duty, 1)
    assert "100 packs since the last empty bag" in duty.closing(NINE)
    empty(duty)
    assert duty.closing(NINE) == ""


def test_another_bag_item_opens_nothing():
    duty = opened(declared=True)
    bag = judge_empty_bag("B9", "F-1", grams(6), grams(1), None, grams(6))
    duty.noted(FactRecord(empty_bag_fact(bag, "e", RUN.id), moment(NINE), "P01", 1))
    assert duty.closing(NINE)
