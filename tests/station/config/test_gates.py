"""``[checks]`` and ``[tare]``, and a scale too coarse for a product."""

from datetime import timedelta
from decimal import Decimal

import pytest

from station.config.load import load
from station.core.metrology.instrument_errors import WeightClass
from tests.station.config.conftest import TODAY


def test_what_the_demo_says(folder):
    settings = load(folder, TODAY).settings
    assert settings.checks.on
    assert settings.checks.schedule.every == timedelta(minutes=60)
    assert settings.checks.schedule.grace == timedelta(minutes=10)
    assert settings.checks.weights.weight_class is WeightClass.M1
    assert settings.checks.weights.total_g() == 4110
    assert settings.tare.declared
    assert settings.tare.rule.small_share == Decimal("0.05")
    assert settings.scale.plate.maximum.digits == "3000"


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("scale_every_minutes = 60", "scale_every_minutes = 1", "from 5 to 720"),
        ("grace_minutes = 10", 'grace_minutes = "10"', "is not a whole number"),
        ('weight_class = "M1"', 'weight_class = "M9"', "is none of them"),
        ('"2 kg", "1 kg"', '"300 g", "1 kg"', "300"),
        ('"2 kg", "1 kg", "500 g"', '"500 g"', "at least 80 % of its capacity"),
        ("small_share_percent = 5", "small_share_percent = 0", "is outside its range"),
        ("most_age_days = 90", "most_age_days = 900", "from 1 to 365"),
        ("[tare]", "[tara]", "tara"),
        ('accuracy_class = "III"', 'accuracy_class = "3"', "is none of them"),
    ],
)
def test_what_is_refused(spoil, refusal, old, new, words):
    spoil("station.toml", old, new)
    assert words in refusal()


def test_a_scale_too_coarse_for_a_product_is_refused_with_the_numbers(spoil, refusal):
    """e = 5 g: in service 5 g at 206 g, and a fifth of T = 9 g is 1.8 g (R 76-1 Table 6)."""
    spoil("station.toml", 'interval = "1 g"', 'interval = "5 g"')
    said = refusal()
    assert "in-service error at 206 g gross 5 g against 1/5 of 9 g = 1.800 g" in said
    assert "the scale does not suit it" in said


def test_a_scale_in_ounces_too_coarse_for_a_product_in_grams_is_refused(spoil, refusal):
    """The in-service error, 1 e of 0.1 oz, against T/5 (76/211/EEC Annex II 1.3): 9 g / 5."""
    spoil("station.toml", 'unit = "g"', 'unit = "oz"')
    spoil("station.toml", 'interval = "1 g"', 'interval = "0.1 oz"')
    spoil("station.toml", 'capacity = "3000 g"', 'capacity = "105 oz"')
    for tare, ounces in (
        ("6 g", "0.2 oz"),
        ("8 g", "0.3 oz"),
        ("17 g", "0.6 oz"),
        ("26 g", "1 oz"),
    ):
        spoil("products.toml", f'tare = "{tare}"', f'tare = "{ounces}"')
    said = refusal()
    assert "product[1].nominal (ROCKET-SPINACH-200)" in said
    assert "0.1 oz against 1/5 of 9 g = 1.800 g: the scale does not suit it" in said
