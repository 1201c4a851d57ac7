"""Opening a run: everything frozen, or one sentence why not."""

from dataclasses import FrozenInstanceError, fields, is_dataclass, replace
from datetime import UTC, date, datetime, time, timedelta

import pytest

from station.core.dating import Dating
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot, LotError, LotStatus
from station.core.mass import Mass, Unit
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.verdict import WindowError
from station.core.pack import Moment
from station.core.product import BagItem, ProductError
from station.line.opening import Catalogue, calendar_day, day_of, open_run
from station.line.state import RunChoice
from tests.station.line.scenario import grams, make_product

DAY = date(2026, 11, 25)
NINE = Moment(datetime(2026, 11, 25, 9, tzinfo=UTC), 0, "Europe/Dublin", 0)
ROM = InputLot("ROM-1", "ROM", "Aldermoor Growers", DAY)
CAR = InputLot("CAR-7", "CAR", "Tarn Roots", DAY)
CHOICE = RunChoice("HARBOUR-250", 1, ("ROM-1", "CAR-7"), "P01", "P02", 40)


def catalogue(product=None, lots=(ROM, CAR), unit=Unit.GRAM, line="A"):
    product = product or make_product()
    return Catalogue(
        products={product.code: product},
        lots={lot.code: lot for lot in lots},
        line=line,
        cut_off=time(4),
        scale="bench 1",
        unit=unit,
        software="0.1.0",
    )


def opened(choice=CHOICE, at=NINE, number=1, **changes):
    return open_run(choice, catalogue(**changes), at, number, "0193-run")


def at(utc, offset_minutes=0):
    return Moment(datetime.fromisoformat(f"{utc}+00:00"), offset_minutes, "Europe/Dublin", 0)


def test_a_run_holds_all_that_judges_its_bags():
    run, product = opened(), make_product()
    assert run.product == product
    assert run.window.limits == rule_set("eu-76-211").limits(grams(250))
    assert (run.window.floor, run.window.target, run.window.upper) == (
        product.floor, product.target, product.upper
    )  # fmt: skip
    # Directive 76/211/EEC Annex I, 2.4: 9 g of tolerable negative error from 200 g to 300 g.
    assert (run.window.limits.t1, run.window.limits.t2) == (grams(241), grams(232))
    assert run.dating == Dating(DAY, DAY + timedelta(days=6), "")
    assert run.lot_set == LotSet.of([LotUse("ROM", "ROM-1"), LotUse("CAR", "CAR-7")])
    assert set(run.lots) == {ROM, CAR}
    assert run.blend_lot == "A2632901"
    assert (run.id, run.line, run.lead, run.operator, run.order_size) == (
        "0193-run", "A", "P01", "P02", 40
    )  # fmt: skip
    assert (run.scale, run.unit, run.software) == ("bench 1", Unit.GRAM, "0.1.0")


def parts(value, path="run"):
    """Every dataclass within a value, with its path."""
    if is_dataclass(value):
        yield path, value
        for field in fields(value):
            yield from parts(getattr(value, field.name), f"{path}.{field.name}")
    elif isinstance(value, tuple):
        for number, one in enumerate(value):
            yield from parts(one, f"{path}[{number}]")
    else:
        assert not isinstance(value, list | dict | set), f"{path} can be changed"


def test_nothing_of_a_run_can_be_changed():
    found = dict(parts(opened()))
    assert {"run.window.limits.t1", "run.product.recipe[0].component", "run.lots[1]"} <= set(found)
    for value in found.values():
        name = fields(value)[0].name
        with pytest.raises(FrozenInstanceError):
            setattr(value, name, getattr(value, name))


def test_what_changes_in_the_catalogue_later_does_not_reach_the_run():
    lots = {lot.code: lot for lot in (ROM, CAR)}
    products = {"HARBOUR-250": make_product()}
    run = open_run(
        CHOICE, replace(catalogue(), products=products, lots=lots), NINE, 1, "0193-run"
    )  # fmt: skip
    before = repr(run)
    lots["ROM-1"] = replace(ROM, status=LotStatus.HELD)
    products.clear()
    assert repr(run) == before


@pytest.mark.parametrize(
    ("choice", "words"),
    [
        ({"product": "TIDE-100"}, "product 'TIDE-100' is not known: choose one of HARBOUR-250"),
        (
            {"version": 2},
            "product HARBOUR-250 is at version 1 now, not 2: choose it again",
        ),
        ({"order_size": 0}, "an order of 0 bags: give 1 or more, or leave it open"),
        ({"order_size": -3}, "an order of -3 bags: give 1 or more, or leave it open"),
        ({"lead": ""}, "a run needs a lead and a person on the scale"),
        ({"operator": ""}, "a run needs a lead and a person on the scale"),
    ],
)
def test_a_choice_that_cannot_be_packed_is_refused(choice, words):
    with pytest.raises(ProductError) as refused:
        opened(replace(CHOICE, **choice))
    assert str(refused.value) == words


@pytest.mark.parametrize(
    ("changes", "chosen", "words"),
    [
        ({}, ("ROM-1",), "has no lot yet for: CAR"),
        ({}, ("ROM-1", "CAR-9"), "lot 'CAR-9' is not known"),
        ({"lots": (replace(ROM, status=LotStatus.HELD), CAR)}, CHOICE.lots, "ROM-1 is held"),
        ({"line": "a"}, CHOICE.lots, "line 'a': use 1 to 13 of A-Z"),
    ],
)
def test_lots_that_cannot_be_packed_are_refused(changes, chosen, words):
    with pytest.raises(LotError, match=words):
        opened(replace(CHOICE, lots=chosen), **changes)


def test_the_hundredth_blend_of_a_day_is_refused():
    with pytest.raises(LotError, match="1 to 99 blend lots a day"):
        opened(number=100)


def test_a_floor_below_half_the_tolerable_shortage_is_refused():
    with pytest.raises(WindowError, match=r"floor 245 g is below 245\.5 g"):
        opened(product=make_product(floor=grams(245)))


def test_an_unknown_rule_set_is_refused_in_words():
    with pytest.raises(ValueError, match="moon-1"):
        opened(product=make_product(rule_set="moon-1"))


def test_an_open_order_has_no_size():
    assert opened(replace(CHOICE, order_size=None)).order_size is None


# --- days -------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("moment", "production", "calendar"),
    [
        (at("2026-11-25T23:59"), DAY, DAY),
        (at("2026-11-26T00:00"), DAY, date(2026, 11, 26)),
        (at("2026-11-26T03:59"), DAY, date(2026, 11, 26)),
        (at("2026-11-26T04:00"), date(2026, 11, 26), date(2026, 11, 26)),
        (at("2026-07-01T02:59", 60), date(2026, 6, 30), date(2026, 7, 1)),
        (at("2026-07-01T03:00", 60), date(2026, 7, 1), date(2026, 7, 1)),
        (at("2026-12-31T23:30", 60), date(2026, 12, 31), date(2027, 1, 1)),
        (at("2027-01-01T07:00", -300), date(2026, 12, 31), date(2027, 1, 1)),
    ],
)  # fmt: skip
def test_days_go_by_the_clock_on_the_plants_wall(moment, production, calendar):
    assert day_of(moment, time(4)) == production
    assert calendar_day(moment) == calendar


def test_a_run_after_midnight_is_dated_like_its_shift():
    run = opened(at=at("2026-11-26T01:00"))
    assert run.dating == Dating(DAY, date(2026, 12, 1), "")
    assert run.blend_lot == "A2632901"


def test_after_midnight_a_lot_is_judged_by_the_calendar():
    """Its last day is over at midnight, whatever the shift is called; so is its last day of age."""
    ends = replace(ROM, use_by=DAY)
    assert opened(lots=(ends, CAR), at=at("2026-11-25T23:00")).dating.use_by == DAY
    with pytest.raises(LotError, match="had its last day on 2026-11-25"):
        opened(lots=(ends, CAR), at=at("2026-11-26T01:00"))
    aged = replace(ROM, harvested=DAY - timedelta(days=6))
    assert opened(lots=(aged, CAR), at=at("2026-11-25T23:00"))
    with pytest.raises(LotError, match="is 7 days old"):
        opened(lots=(aged, CAR), at=at("2026-11-26T01:00"))


def test_a_lot_that_came_after_midnight_can_be_packed_by_the_night_shift():
    fresh = replace(ROM, received=date(2026, 11, 26))
    assert opened(lots=(fresh, CAR), at=at("2026-11-26T01:00")).dating.production_day == DAY


def test_the_oldest_input_shortens_the_run():
    run = opened(lots=(replace(ROM, use_by=date(2026, 11, 28)), CAR))
    assert run.dating == Dating(DAY, date(2026, 11, 28), "ROM-1")


# --- units ------------------------------------------------------------------------------------


def ounces(text):
    return Mass.of(text, Unit.OUNCE)


OUNCE_PRODUCT = make_product(
    rule_set="us-hb133", market="US",
    nominal=ounces("8"), floor=ounces("8"), target=ounces("8.1"), upper=ounces("8.6"),
    bag=BagItem("B6", "retail bag", ounces("0.2"), "mean of 25"),
)  # fmt: skip


@pytest.mark.parametrize(
    ("product", "unit"),
    [
        (make_product(), Unit.GRAM),
        (make_product(), Unit.KILOGRAM),
        (OUNCE_PRODUCT, Unit.OUNCE),
        (OUNCE_PRODUCT, Unit.POUND),
    ],
    ids=["g on g", "g on kg", "oz on oz", "oz on lb"],
)
def test_units_that_fit_exactly(product, unit):
    assert opened(product=product, unit=unit).unit is unit


@pytest.mark.parametrize(
    ("product", "unit"),
    [
        (make_product(), Unit.OUNCE),
        (make_product(), Unit.POUND),
        (OUNCE_PRODUCT, Unit.GRAM),
        (OUNCE_PRODUCT, Unit.KILOGRAM),
    ],
    ids=["g on oz", "g on lb", "oz on g", "oz on kg"],
)
def test_units_that_would_have_to_be_rounded_are_refused(product, unit):
    with pytest.raises(ProductError, match=r"cannot run on this scale: .* has no exact value in"):
        opened(product=product, unit=unit)
