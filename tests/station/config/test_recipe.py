"""Bounds, days and approval of a recipe."""

from datetime import date
from decimal import Decimal

import pytest

from station.config.load import load
from tests.station.config.conftest import TODAY

SPINACH = '{ component = "SPINACH", percent = 60'
LIFE = "life_days = 9\n"


def test_a_recipe_without_bounds_has_its_shares_alone(folder, spoil):
    spoil("products.toml", SPINACH + ", min = 55, max = 65", SPINACH)
    share = load(folder, TODAY).products["ROCKET-SPINACH-200"].recipe[0]
    assert (share.low, share.percent, share.high) == (60, 60, 60)


def test_the_demo_s_bounds_are_read(folder):
    share = load(folder, TODAY).products["ROCKET-SPINACH-200"].recipe[0]
    assert (share.low, share.high) == (Decimal(55), Decimal(65))


@pytest.mark.parametrize(
    ("bounds", "key", "allowed"),
    [
        ("min = 61, max = 65", "recipe[1].min", "at most 60"),
        ("min = 55, max = 59", "recipe[1].max", "60 to 100"),
    ],
)
def test_bounds_that_do_not_enclose_the_share_are_refused(spoil, refusal, bounds, key, allowed):
    spoil("products.toml", "min = 55, max = 65", bounds)
    said = refusal()
    assert f"product[1].{key} (ROCKET-SPINACH-200)" in said
    assert allowed in said


def test_a_version_has_its_days_and_its_approver(folder, spoil):
    days = 'effective_from = 2026-11-01\neffective_until = 2027-03-31\napproved_by = "Q01"\n'
    spoil("products.toml", LIFE, LIFE + days)
    product = load(folder, TODAY).products["SLAW-340"]
    assert product.effective_from == date(2026, 11, 1)
    assert product.effective_until == date(2027, 3, 31)
    assert product.approved_by == "Q01"


def test_days_that_fall_and_a_lead_who_approves_are_refused(spoil, refusal):
    days = 'effective_from = 2026-11-02\neffective_until = 2026-11-01\napproved_by = "L01"\n'
    spoil("products.toml", LIFE, LIFE + days)
    said = refusal()
    assert "2026-11-01 is before effective_from 2026-11-02" in said
    assert "approved_by (SLAW-340)" in said
    assert "L01 has the role lead" in said
