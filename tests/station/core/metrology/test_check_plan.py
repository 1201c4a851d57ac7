"""Which weights go on for which load."""

import pytest

from station.core.mass import Mass, Unit
from station.core.metrology.check_plan import WeightSet, names, plan_loads
from station.core.metrology.clause import RuleRefused
from station.core.metrology.instrument_errors import ScaleClass, WeightClass
from station.core.metrology.scale_check import CheckLoad
from station.core.metrology.scale_suitability import Scale


def grams(text) -> Mass:
    return Mass.of(text, Unit.GRAM)


SCALE = Scale(ScaleClass.III, grams(1), grams(3000))
FULL = (2000, 1000, 500, 200, 200, 100, 50, 20, 20, 10, 5, 2, 2, 1)


def weights(*values) -> WeightSet:
    return WeightSet(tuple(map(grams, values)), WeightClass.M1, "set")


def planned(tare, nominal, values=FULL):
    found = plan_loads(SCALE, weights(*values), grams(tare), grams(nominal))
    return [(one.load, one.mass.digits, names(one.weights.nominals)) for one in found]


def test_the_four_loads_of_a_product_in_rising_order():
    assert planned(8, 340) == [
        (CheckLoad.EMPTY, "0", ""),
        (CheckLoad.TARE, "8", "5 g, 2 g, 1 g"),
        (CheckLoad.NOMINAL, "350", "200 g, 100 g, 50 g"),
        (CheckLoad.MAX, "3000", "2000 g, 1000 g"),
    ]


def test_a_load_that_comes_twice_stands_once():
    assert [load for load, *_ in planned(8, 2990)] == [
        CheckLoad.EMPTY, CheckLoad.TARE, CheckLoad.NOMINAL,
    ]  # fmt: skip


def test_weights_that_do_not_reach_a_load_are_refused_with_both_figures():
    with pytest.raises(RuleRefused, match=r"come to 1358 g for the load near Max of 3000 g"):
        planned(8, 340, (1000, 200, 100, 50, 5, 2, 1))


def test_two_of_a_kind_are_named_once():
    assert names((grams(200), grams(200), grams(5))) == "2 x 200 g, 5 g"


def test_a_set_needs_weights_that_r_111_knows():
    with pytest.raises(RuleRefused, match="name at least one"):
        weights()
    with pytest.raises(RuleRefused, match="300"):
        weights(300)


@pytest.mark.parametrize(
    ("interval", "most", "tare", "nominal"),
    [("0.05 oz", "150 oz", "0.2 oz", "8 oz"), ("0.001 lb", "6 lb", "0.012 lb", "0.5 lb")],
)
def test_a_scale_in_ounces_or_pounds_is_checked_with_weights_in_grams(
    interval, most, tare, nominal
):
    """Grams have no exact value there: 1 oz is 28.349523125 g (NIST HB 44, Appendix C)."""
    plate = Scale(ScaleClass.III, Mass.parse(interval), Mass.parse(most))
    found = plan_loads(plate, weights(*FULL), Mass.parse(tare), Mass.parse(nominal))
    assert [names(one.weights.nominals) for one in found[:3]] == [
        "", "5 g, 1 g" if "oz" in tare else "5 g", "200 g, 20 g, 10 g",
    ]  # fmt: skip
    for one in found:
        exact = sum(weight.grams for weight in one.weights.nominals)
        assert abs(one.mass.grams - exact) < Mass.of("0.000001").grams
        assert Mass.parse(str(one.mass)) == one.mass  # as the record reads it back
        assert one.mass.unit is plate.interval.unit
