"""Checks of QA in time, and what a failed one brings with it."""

from datetime import UTC, datetime, timedelta
from decimal import Decimal

import pytest

from station.core.checks.qa import QaCheck, QaKind, QaLimit, qa_fact
from station.core.checks.suspect import Decision, decision_facts, window_of
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.metrology.scale_check import CheckSchedule
from station.core.pack import Moment, PackId, Quality
from station.line.failed_qa import FailedQa
from station.line.qa_duty import QaDuty
from station.line.scale_duty import ScaleDuty
from station.line.suspected import PackSince, RunSince
from tests.station.line.scenario import grams, make_run

NINE = datetime(2026, 11, 25, 9, tzinfo=UTC)
MINUTE = timedelta(minutes=1)
SEAL = QaLimit(QaKind.SEAL, every=30 * MINUTE)
ROOM = QaLimit(QaKind.ROOM_TEMPERATURE, "°C", None, Decimal("3.3"), every=60 * MINUTE)
METAL = QaLimit(QaKind.METAL, every=60 * MINUTE, at_start=True, pieces=("2.0 mm Fe",))
RUN = make_run()


class Bag:
    """As far as the duty looks at a recorded bag."""

    def __init__(self, at, quality=Quality.GOOD):
        self.draft = type("Draft", (), {"quality": quality, "judged_at": moment(at)})()


def moment(at):
    return Moment(at, 0, "UTC", 1)


def checked(limit, at, uid="q1", **more):
    if limit is METAL:
        more = {"found": METAL.pieces} | more
    check = QaCheck(limit, RUN.product.code, **more)
    return FactRecord(qa_fact(check, uid, RUN.id), moment(at), "Q01", 1)


def duty_of(*limits, past=()):
    duty = QaDuty({RUN.product.code: limits}, 5 * MINUTE, past)
    duty.opened(RUN, NINE)
    return duty


def test_a_product_without_checks_has_no_duty():
    duty = QaDuty({}, 5 * MINUTE)
    duty.opened(RUN, NINE)
    assert duty.closing(NINE + timedelta(days=1)) == ""
    assert duty.due(NINE) is None


def test_a_run_begins_with_the_metal_detector_whatever_the_run_before_did():
    duty = duty_of(METAL, past=[checked(METAL, NINE - MINUTE)])
    assert "begins with a check of metal detector" in duty.closing(NINE)
    duty.noted(checked(METAL, NINE + MINUTE))
    assert duty.closing(NINE + MINUTE) == ""
    assert duty.due(NINE).at == NINE + 61 * MINUTE


def test_a_check_on_a_bag_is_wanted_from_the_first_good_bag_on():
    duty = duty_of(SEAL)
    assert duty.due(NINE) is None
    assert duty.closing(NINE + timedelta(hours=5)) == ""
    duty.packed(Bag(NINE + 8 * MINUTE, Quality.REJECT))
    assert duty.due(NINE) is None
    duty.packed(Bag(NINE + 10 * MINUTE))
    duty.packed(Bag(NINE + 11 * MINUTE))
    assert duty.due(NINE).at == NINE + 40 * MINUTE


def test_grace_passes_before_an_overdue_check_closes_acceptance():
    duty = duty_of(SEAL)
    duty.packed(Bag(NINE))
    assert duty.closing(NINE + 35 * MINUTE) == ""
    assert "the check of seal is overdue" in duty.closing(NINE + 35 * MINUTE + MINUTE)
    duty.noted(checked(SEAL, NINE + 36 * MINUTE))
    assert duty.closing(NINE + 37 * MINUTE) == ""
    assert duty.due(NINE).at == NINE + 66 * MINUTE


def test_a_room_stays_checked_over_a_change_of_run():
    duty = duty_of(ROOM, past=[checked(ROOM, NINE - 50 * MINUTE, value=Decimal(2))])
    assert duty.due(NINE).at == NINE + 10 * MINUTE


def test_a_failed_check_closes_until_a_good_one_and_a_decision():
    duty = duty_of(SEAL)
    duty.packed(Bag(NINE))
    failed = checked(SEAL, NINE + MINUTE, "f1", passed=False, action="jaw cleaned")
    duty.noted(failed)
    window, hold = follow(failed)
    duty.noted(FactRecord(window, moment(NINE + MINUTE), "Q01", 2))
    assert "seal failed its check" in duty.closing(NINE + 2 * MINUTE)
    duty.noted(checked(SEAL, NINE + 3 * MINUTE, "q2"))
    assert "3 bags are held" in duty.closing(NINE + 3 * MINUTE)
    filed = window_of(FactRecord(window, moment(NINE), "Q01", 2))
    for fact in decision_facts(filed, Decision.HOLD_STAYS, "dumped", ["d1", "d2"]):
        duty.noted(FactRecord(fact, moment(NINE + 4 * MINUTE), "Q01", 3))
    assert duty.closing(NINE + 4 * MINUTE) == ""
    assert hold.details["ranges"] == [["7", 1, 2], ["7", 4, 4]]


def test_a_window_of_qa_is_none_of_the_scale():
    failed = checked(SEAL, NINE, "f1", passed=False, action="jaw cleaned")
    scale = ScaleDuty("bench", CheckSchedule())
    scale.opened(RUN, NINE)
    before = scale.closing(NINE)
    for fact in follow(failed):
        scale.noted(FactRecord(fact, moment(NINE), "Q01", 2))
    assert scale.closing(NINE) == before
    assert not scale.failed


class Past:
    """Four bags of which the third is a reject; a good check before them or none."""

    def __init__(self, good=None, other_run=False):
        self.good, self.asked = good, []
        self.run = make_run()
        self.other = other_run

    def last_good_qa(self, kind):
        self.asked.append(kind)
        return self.good

    def packs_after(self, check):
        self.asked.append(check)
        packs = tuple(
            PackSince(
                PackId("S", "A1", 7, number),
                NINE - timedelta(minutes=9 - number),
                grams(258),
                grams(252),
                Quality.REJECT if number == 3 else Quality.GOOD,
                None,
            )
            for number in (1, 2, 3, 4)
        )
        return (RunSince(self.run, packs),)


def follow(failed, past=None):
    numbers = iter(range(9))
    past = past or Past()
    past.run = RUN
    return FailedQa(past, lambda _: f"n{next(numbers)}").follow(
        (failed.fact,), failed.at, failed.who
    )


def test_a_failure_holds_every_bag_since_the_last_good_check_of_its_kind():
    good = checked(SEAL, NINE - timedelta(hours=1), "g1")
    past = Past(good)
    window, hold = follow(checked(SEAL, NINE, "f1", passed=False, action="jaw cleaned"), past)
    assert past.asked == ["seal", good]
    filed = window_of(FactRecord(window, moment(NINE), "Q01", 2))
    assert (filed.cause, filed.good, filed.check) == ("seal", "g1", "f1")
    assert (filed.opened, filed.closed) == (good.at.utc, NINE)
    assert (filed.bags, filed.holds) == (3, (hold.uid,))
    assert hold.kind is EntryKind.HOLD


@pytest.mark.parametrize("limit", [SEAL, METAL])
def test_a_good_check_brings_nothing_with_it(limit):
    assert follow(checked(limit, NINE)) == ()
