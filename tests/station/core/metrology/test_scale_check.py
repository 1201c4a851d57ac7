"""Scale checks with test weights, and when they are due."""

from datetime import UTC, datetime, timedelta

import pytest

from station.core.mass import Mass
from station.core.metrology.clause import RuleRefused
from station.core.metrology.instrument_errors import ScaleClass, WeightClass
from station.core.metrology.scale_check import (
    CheckLoad,
    CheckReading,
    CheckResult,
    CheckStage,
    Due,
    TestWeights,
    check_due,
    judge_check,
    loads_due,
    serving_classes,
)
from station.core.metrology.scale_suitability import Scale

SCALE = Scale(ScaleClass.III, Mass.parse("1 g"), Mass.parse("3000 g"))
NINE = datetime(2024, 5, 14, 9, 0, tzinfo=UTC)


def reading(load: str, weights: tuple[str, ...], shown: str, added: str | None = None):
    return CheckReading(
        CheckLoad(load),
        TestWeights(tuple(Mass.parse(one) for one in weights), WeightClass.M1),
        Mass.of(shown),
        None if added is None else Mass.of(added),
    )


@pytest.mark.parametrize(
    ("weights", "shown", "result"),
    [
        (("200 g", "50 g"), "250", CheckResult.GOOD),
        (("200 g", "50 g"), "251", CheckResult.WARN),  # beyond 0.5 e, within 1 e in service
        (("200 g", "50 g"), "252", CheckResult.FAILED),
        (("200 g", "50 g"), "249", CheckResult.WARN),
        (("1 kg",), "1001", CheckResult.GOOD),  # 500 to 2000 e: 1 e and 2 e
        (("1 kg",), "1002", CheckResult.WARN),
        (("1 kg",), "1003", CheckResult.FAILED),
        (("2 kg", "1 kg"), "3002", CheckResult.WARN),  # above 2000 e: 1.5 e and 3 e
        (("2 kg", "1 kg"), "3004", CheckResult.FAILED),
        ((), "0", CheckResult.GOOD),
        ((), "-2", CheckResult.FAILED),
    ],
)
def test_limits_of_a_check(weights, shown, result):
    """OIML R 76-1 Table 6, in service double."""
    check = judge_check(SCALE, [reading("nominal", weights, shown)], NINE, CheckStage.AS_FOUND)
    assert check.result is result


def test_the_worst_load_decides_and_loads_come_in_order():
    check = judge_check(
        SCALE,
        [
            reading("near Max", ("2 kg", "1 kg"), "3004"),
            reading("empty", (), "0"),
            reading("nominal", ("200 g", "50 g"), "250"),
        ],
        NINE,
        CheckStage.AS_LEFT,
    )
    assert [load.mass for load in check.loads] == [Mass.of(0), Mass.of(250), Mass.of(3000)]
    assert check.loads[-1].error == Mass.of(4)
    assert check.result is CheckResult.FAILED


def test_added_weight_takes_the_rounding_of_the_digits_out():
    """R 76-1 A.4.4.3 (from memory): E = I + e/2 - added - L. 250 + 0.5 - 0.3 - 250 = 0.2 g."""
    check = judge_check(
        SCALE, [reading("nominal", ("200 g", "50 g"), "250", "0.3")], NINE, CheckStage.AS_FOUND
    )
    assert check.loads[0].error == Mass.of("0.2")


def test_a_weight_coarser_than_a_third_of_the_limit_is_refused():
    fine = Scale(ScaleClass.II, Mass.parse("0.01 g"), Mass.parse("500 g"))
    with pytest.raises(RuleRefused, match=r"class M1 for 200 g may be wrong by 0\.010 g"):
        judge_check(
            fine,
            [reading("nominal", ("200 g",) * 1, "200.00")],
            NINE,
            CheckStage.AS_FOUND,
        )


def test_classes_that_serve():
    assert serving_classes(SCALE, Mass.parse("200 g")) == tuple(WeightClass)
    fine = Scale(ScaleClass.II, Mass.parse("0.01 g"), Mass.parse("500 g"))
    assert serving_classes(fine, Mass.parse("500 g")) == (WeightClass.F1, WeightClass.F2)


def test_a_check_without_readings_is_refused():
    with pytest.raises(RuleRefused, match="start with the empty pan"):
        judge_check(SCALE, [], NINE, CheckStage.AS_FOUND)


def test_loads_to_check():
    loads = loads_due(SCALE, Mass.parse("7.3 g"), Mass.parse("250 g"))
    assert [str(mass) for mass in loads.values()] == ["0 g", "7 g", "260 g", "3000 g"]


@pytest.mark.parametrize(
    ("minutes", "event", "due"),
    [
        (0, False, Due.NOT_YET),
        (59, False, Due.NOT_YET),
        (60, False, Due.DUE),
        (70, False, Due.DUE),
        (71, False, Due.OVERDUE),
        (5, True, Due.OVERDUE),
        (-1, False, Due.OVERDUE),
    ],
)
def test_due_hourly_and_after_events(minutes, event, due):
    assert check_due(NINE + timedelta(minutes=minutes), NINE, event) is due


def test_due_at_the_start():
    assert check_due(NINE, None, False) is Due.OVERDUE


@pytest.mark.parametrize(
    ("shown", "result"),
    [
        ("7.05", CheckResult.GOOD),  # 200 g are 7.0548 oz: off by a tenth of e
        ("7.10", CheckResult.WARN),
        ("7.00", CheckResult.FAILED),  # off by 1.1 e
        ("7.15", CheckResult.FAILED),
    ],
)
def test_a_scale_in_ounces_is_judged_by_weights_in_grams(shown, result):
    """OIML R 76-1 Table 6, below 500 e: 0.5 e and in service 1 e."""
    plate = Scale(ScaleClass.III, Mass.parse("0.05 oz"), Mass.parse("150 oz"))
    one = CheckReading(
        CheckLoad.NOMINAL,
        TestWeights((Mass.parse("200 g"),), WeightClass.M1),
        Mass.of(shown, "oz"),
    )
    assert judge_check(plate, [one], NINE, CheckStage.AS_FOUND).result is result
