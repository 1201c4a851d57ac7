"""An empty bag heavier than the tare taken off holds the bags since the last one that fitted."""

from datetime import timedelta

from station.core.checks.suspect import window_of
from station.core.checks.tare import empty_bag_fact, judge_empty_bag
from station.core.facts import FactRecord
from station.core.pack import PackId, Quality
from station.line.failed_tare import FailedTare
from station.line.suspected import PackSince, RunSince
from tests.end_to_end.checked_line import NINE, moment
from tests.station.line.scenario import grams, make_run

RUN = make_run()  # bag B6, tare 6 g
MINUTE = timedelta(minutes=1)


def weighed(shown, after, film="F-1"):
    bag = judge_empty_bag("B6", film, grams(shown), grams(1), None, grams(6))
    at = NINE + after * MINUTE
    return FactRecord(empty_bag_fact(bag, f"e{after}", RUN.id), moment(at), "L01", after)


class Past:
    """A bag every minute from the first on, the third a reject; empty bags as given."""

    def __init__(self, *bags):
        self.bags = bags

    def empty_bags(self, bag_item, run):
        return self.bags if (bag_item, run) == ("B6", RUN.id) else ()

    def packs_after(self, check):
        packs = tuple(
            PackSince(
                PackId("S", "A1", 7, number),
                NINE + number * MINUTE,
                grams(258),
                grams(252),
                Quality.REJECT if number == 3 else Quality.GOOD,
                None,
            )
            for number in range(1, 10)
            if number > check.seq
        )
        return (RunSince(RUN, packs),) if packs else ()


def follow(past, unfit):
    numbers = iter(range(9))
    one = FailedTare(past, lambda _: f"n{next(numbers)}")
    return one.follow((unfit.fact,), unfit.at, unfit.who)


def held(facts):
    return [bag for fact in facts if "ranges" in fact.details for bag in fact.details["ranges"]]


def test_a_heavier_bag_holds_all_since_the_last_that_fitted_whatever_its_film_lot():
    window, hold = follow(Past(weighed("6", 0)), weighed("12", 9, film="F-2"))
    filed = window_of(FactRecord(window, moment(NINE), "L01", 1))
    assert (filed.cause, filed.bags, filed.good) == ("tare of B6", 8, "e0")
    assert held((hold,)) == [["7", 1, 2], ["7", 4, 9]]
    assert hold.details["reason"] == ("an empty bag weighs 12 g, 6 g more than the tare taken off")


def test_a_second_heavy_bag_holds_only_what_the_first_did_not():
    past = Past(weighed("6", 0), weighed("12", 5))
    assert held(follow(past, weighed("13", 9))) == [["7", 6, 9]]
    assert follow(Past(weighed("6", 0), weighed("12", 9)), weighed("12", 9)) == ()


def test_a_lighter_bag_and_one_that_fits_hold_nothing():
    assert follow(Past(weighed("6", 0)), weighed("3", 9)) == ()
    assert follow(Past(weighed("6", 0)), weighed("7", 9)) == ()


def test_before_the_first_empty_bag_that_fitted_there_is_no_bag_to_hold():
    assert follow(Past(), weighed("12", 9)) == ()
    assert follow(Past(weighed("12", 0)), weighed("12", 9)) == ()
