"""The shelf-life policy: a life outside it stands only under a name."""

import pytest

from station.config.load import load
from tests.station.config.conftest import TODAY

LIFE = "life_days = 9\n"


def test_the_demo_s_lives_are_within_and_nobody_had_to_approve(folder):
    assert not any(product.life_approved_by for product in load(folder, TODAY).products.values())


@pytest.mark.parametrize("days", [5, 9])
def test_both_ends_are_within(folder, spoil, days):
    spoil("products.toml", LIFE, f"life_days = {days}\n")
    assert load(folder, TODAY).products["SLAW-340"].life_days == days


@pytest.mark.parametrize("days", [4, 10])
def test_outside_is_refused_with_the_days_allowed(spoil, refusal, days):
    spoil("products.toml", LIFE, f"life_days = {days}\n")
    said = refusal()
    assert "product[2].life_days (SLAW-340)" in said
    assert "5 to 9 days" in said
    assert "life_approved_by" in said


def test_an_atmosphere_the_policy_has_not_is_refused(spoil, refusal):
    spoil("products.toml", 'life_days = 9\natmosphere = "3 %', 'life_days = 9\natmosphere = "4 %')
    assert "in the shelf-life policy" in refusal()


@pytest.mark.parametrize("who", ["Q01", "M01"])
def test_qa_or_a_manager_may_approve_by_name(folder, spoil, who):
    spoil("products.toml", LIFE, f'life_days = 12\nlife_approved_by = "{who}"\n')
    product = load(folder, TODAY).products["SLAW-340"]
    assert (product.life_days, product.life_approved_by) == (12, who)


@pytest.mark.parametrize(("who", "why"), [("L01", "has the role lead"), ("X9", "is not known")])
def test_nobody_else_may(spoil, refusal, who, why):
    spoil("products.toml", LIFE, f'life_days = 12\nlife_approved_by = "{who}"\n')
    said = refusal()
    assert why in said
    assert "Q01, M01" in said


def test_days_that_do_not_rise_are_refused(spoil, refusal):
    spoil("products.toml", "least_days = 5\nmost_days = 9", "least_days = 10\nmost_days = 9")
    assert "10 is above most_days 9" in refusal()


@pytest.mark.parametrize(
    "days", ["least_days = 5\nmost_days = 9", "least_days = 5\nmost_days = 30"]
)
def test_an_atmosphere_has_one_row_so_that_no_forgotten_one_lets_a_longer_life_through(
    folder, spoil, refusal, days
):
    atmosphere = load(folder, TODAY).products["SLAW-340"].atmosphere
    again = f'[[shelf_life]]\natmosphere = "{atmosphere}"\n{days}\nbasis = "an old study"\n\n'
    spoil("products.toml", "[[shelf_life]]", again + "[[shelf_life]]")
    said = refusal()
    assert "shelf_life[4].atmosphere" in said
    assert "stands already in shelf_life[1]; allowed: each one once" in said
