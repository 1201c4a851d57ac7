"""The suspect window: +4 g at 10:00 after a good check at 09:00, worked out by hand."""

from datetime import UTC, datetime, timedelta
from fractions import Fraction

import pytest

from station.core.mass import Mass
from station.core.metrology.clause import RuleRefused
from station.core.metrology.instrument_errors import ScaleClass, WeightClass
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.scale_check import (
    CheckLoad,
    CheckReading,
    CheckStage,
    ScaleCheck,
    TestWeights,
    judge_check,
)
from station.core.metrology.scale_suitability import Scale
from station.core.metrology.suspect import ErrorSign, SuspectPack, open_window

SCALE = Scale(ScaleClass.III, Mass.parse("1 g"), Mass.parse("3000 g"))
NINE = datetime(2024, 5, 14, 9, 0, tzinfo=UTC)
TEN = NINE + timedelta(hours=1)
RULES = rule_set("eu-76-211")
LIMITS = RULES.limits(Mass.parse("250 g"))


def check(at: datetime, *shown: int) -> ScaleCheck:
    """Readings at 0, 250 and 1000 g."""
    weights = ((), ("200 g", "50 g"), ("1 kg",))
    loads = (CheckLoad.EMPTY, CheckLoad.NOMINAL, CheckLoad.MAX)
    readings = [
        CheckReading(
            load,
            TestWeights(tuple(Mass.parse(one) for one in some), WeightClass.M1),
            Mass.of(figure),
        )
        for load, some, figure in zip(loads, weights, shown, strict=True)
    ]
    return judge_check(SCALE, readings, at, CheckStage.AS_FOUND)


def pack(serial: int, minutes: int, net: int | str) -> SuspectPack:
    gross = Mass.of(net) + Mass.of(7)
    return SuspectPack(serial, NINE + timedelta(minutes=minutes), gross, Mass.of(net))


GOOD = check(NINE, 0, 250, 1000)
FAILED = check(TEN, 4, 254, 1004)
# one pack a minute from 08:31 to 10:00, all shown as 252 g, one at 09:30 as 244 g
PACKS = [pack(n, n - 30, 244 if n == 60 else 252) for n in range(1, 91)]


def test_four_grams_high_opens_the_window_between_the_checks():
    window = open_window(GOOD, FAILED, PACKS, RULES, LIMITS)
    assert (window.opened, window.closed) == (NINE, TEN)
    assert [one.serial for one in window.held] == list(range(31, 91))
    assert window.sign is ErrorSign.HIGH
    assert window.stepped is None


def test_both_bounds_are_worked_out_exactly():
    """60 packs: 59 at 252 g and one at 244 g; mean as weighed 252 - 8/60 = 251.8667 g.

    Worst: every net 4 g less, mean 247.8667 g, the light pack 240 g is below T1 = 241 g. Drift:
    at minute k the error is 4k/60 g, on average 4 (1 + ... + 60)/3600 = 2.0333 g; mean 249.8333 g.
    """
    window = open_window(GOOD, FAILED, PACKS, RULES, LIMITS)
    as_weighed = 252 - Fraction(8, 60)
    assert window.as_weighed.mean == as_weighed
    assert window.as_weighed.accepted
    assert window.worst.mean == as_weighed - 4
    assert (window.worst.t1_count, window.worst.t2_count) == (1, 0)
    assert not window.worst.accepted
    assert window.drift.mean == as_weighed - Fraction(4 * 1830, 3600)
    assert (window.drift.t1_count, window.drift.accepted) == (0, False)


def test_packs_are_weighed_again_in_order_of_risk():
    window = open_window(GOOD, FAILED, PACKS, RULES, LIMITS)
    assert [one.pack.serial for one in window.reweigh[:3]] == [60, 31, 32]
    assert window.reweigh[0].worst_net == 240
    assert window.reweigh[0].drift_net == 242
    assert len(window.reweigh) == 60


def test_a_dated_step_narrows_the_window():
    """A step at 09:50: packs from then on, 11 of 60, carry the error; mean 251.8667 - 44/60."""
    step = NINE + timedelta(minutes=50)
    window = open_window(GOOD, FAILED, PACKS, RULES, LIMITS, step_at=step)
    assert window.stepped.mean == 252 - Fraction(8, 60) - Fraction(44, 60)
    assert window.stepped.accepted


def test_a_scale_that_read_low_gave_product_away():
    window = open_window(GOOD, check(TEN, -4, 246, 996), PACKS, RULES, LIMITS)
    assert window.sign is ErrorSign.LOW
    assert window.worst.mean == window.as_weighed.mean + 4
    assert window.worst.accepted


def test_the_error_is_taken_at_the_gross_load():
    """Errors 0 at 0 g, 4 at 250 g, 10 at 1000 g: at 259 g gross 4 + 6 * 9/750 = 4.072 g."""
    window = open_window(GOOD, check(TEN, 0, 254, 1010), PACKS, RULES, LIMITS)
    heavy = next(one for one in window.reweigh if one.pack.serial == 90)
    assert heavy.worst_net == 252 - (4 + Fraction(6 * 9, 750))
    beyond = open_window(GOOD, check(TEN, 0, 254, 1010), [pack(1, 5, 2000)], RULES, LIMITS)
    assert beyond.reweigh[0].worst_net == 1990


def test_errors_of_both_signs_are_said_to_be_mixed():
    window = open_window(GOOD, check(TEN, -2, 254, 1000), PACKS, RULES, LIMITS)
    assert window.sign is ErrorSign.MIXED


@pytest.mark.parametrize(
    ("good", "failed", "packs", "said"),
    [
        (GOOD, check(TEN, 0, 250, 1000), PACKS, "one that failed"),
        (FAILED, check(TEN + timedelta(hours=1), 4, 254, 1004), PACKS, "a check that held"),
        (check(TEN, 0, 250, 1000), check(NINE, 4, 254, 1004), PACKS, "not after the good one"),
        (GOOD, FAILED, PACKS[:30], "nothing is suspect"),
    ],
)
def test_what_is_no_window_is_refused(good, failed, packs, said):
    with pytest.raises(RuleRefused, match=said):
        open_window(good, failed, packs, RULES, LIMITS)
