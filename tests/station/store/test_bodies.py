import json
from dataclasses import fields, is_dataclass, replace
from datetime import date
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from station.core.lots import InputLot, LotStatus
from station.core.mass import Mass, Unit
from station.core.pack import PackId
from station.core.product import Component, Share
from station.store import bodies


def through_json(body):
    return json.loads(json.dumps(body))


def shown(value):
    """A value down to digits and units, because equal masses may be written differently."""
    if isinstance(value, Mass):
        return (value.digits, value.unit)
    if is_dataclass(value):
        return {field.name: shown(getattr(value, field.name)) for field in fields(value)}
    return [shown(each) for each in value] if isinstance(value, tuple) else value


def test_a_run_comes_back_with_every_digit(world):
    run = world.run(7, ("LF-101", "LF-102", "CR-201"))
    found = bodies.run_of(through_json(bodies.run_body(run)))
    assert found == run
    assert shown(found) == shown(run)


def test_all_a_recipe_may_say_comes_back(world):
    part = Component("CEL", "celery", allergen=True, stains=True, smells=True)
    product = replace(
        world.run().product,
        recipe=(Share(part, Decimal("100.0"), Decimal("97.5"), Decimal(100)),),
        effective_from=date(2026, 1, 2),
        effective_until=date(2026, 12, 31),
        approved_by="q.fen",
    )
    run = replace(world.run(), product=product)
    assert bodies.run_of(through_json(bodies.run_body(run))) == run


def test_a_bag_comes_back_with_every_digit(world):
    run = world.run()
    draft = world.draft(run, "0.2500", "torn")
    name = PackId("HA", "L1A", 2**62, 9)
    body = bodies.pack_body(
        bodies.run_frame(run), bodies.lot_set_body(run.lot_set), draft, name, "u"
    )
    found = bodies.draft_of(through_json(body), draft.judged_at)
    assert found == draft
    assert shown(found) == shown(draft)


def test_a_bag_s_body_alone_tells_how_it_was_judged_and_from_what(world):
    run = world.run()
    name = PackId("HA", "L1A", 2**62, 9)
    body = bodies.pack_body(
        bodies.run_frame(run), bodies.lot_set_body(run.lot_set), world.draft(run), name, "u"
    )
    assert body["product"] == {"code": "HA-250", "version": 3}
    assert body["window"] == {
        "floor": "250 g",
        "target": "252 g",
        "upper": "262 g",
        "rule_set": "eu-76-211",
        "rule_version": "test",
        "nominal": "250 g",
        "tolerable": "9 g",
        "t1": "241 g",
        "t2": "232 g",
    }
    assert (body["gross"], body["tare"], body["net"]) == ("0.2650 kg", "0.0125 kg", "0.2525 kg")
    assert body["members"] == [["CRESS", "CR-201"], ["LEAF", "LF-101"]]
    assert bodies.lot_set_of(body["members"]).key == body["lot_set"]


# As written: 24 digits before and behind the point (Mass.of).
@given(st.decimals(-(10**24) + 1, 10**24 - 1, places=12), st.sampled_from(list(Unit)))
def test_a_mass_of_any_length_comes_back(amount, unit):
    mass = Mass(amount, unit)
    assert shown(bodies.mass(str(mass))) == shown(mass)


@given(
    st.text("ABC019./-", min_size=1, max_size=20),
    st.dates(),
    st.none() | st.just(date(1, 1, 1)),
    st.none() | st.dates(),
    st.sampled_from(LotStatus),
)
def test_a_lot_comes_back(code, received, harvested, use_by, status):
    lot = InputLot(code, "LEAF", "Ashbrook Growers", received, harvested, use_by, status)
    assert bodies.lot_of(through_json(bodies.lot_body(lot))) == lot
