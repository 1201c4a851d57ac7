"""``[label_checks]`` of station.toml."""

from datetime import timedelta

import pytest

from station.config.load import load
from tests.station.config.conftest import TODAY


def test_what_the_demo_says(folder):
    checks = load(folder, TODAY).settings.label_checks
    assert (checks.rolls, checks.first_off, checks.first_off_each_roll) == (True, True, False)
    assert (checks.scan_every, checks.grace) == (timedelta(hours=1), timedelta(minutes=10))
    assert checks.copies_alone == 1


def test_each_can_be_off(folder, spoil):
    spoil("station.toml", "rolls = true", "rolls = false")
    spoil("station.toml", "first_off = true", "first_off = false")
    spoil("station.toml", "scan_back_every_minutes = 60", "scan_back_every_minutes = 0")
    checks = load(folder, TODAY).settings.label_checks
    assert (checks.rolls, checks.first_off, checks.scan_every) == (False, False, None)


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("rolls = true", 'rolls = "yes"', "label_checks.rolls"),
        ("scan_back_every_minutes = 60", "scan_back_every_minutes = 721", "from 0 to 720"),
        ("copies_without_lead = 1", "copies_without_lead = 10", "from 0 to 9"),
        ("[label_checks]", "[label_check]", "label_check"),
    ],
)
def test_what_is_refused(spoil, refusal, old, new, words):
    spoil("station.toml", old, new)
    assert words in refusal()
