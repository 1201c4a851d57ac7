"""``[lots]``: every key may be left out, and the table too."""

from datetime import timedelta
from decimal import Decimal

import pytest

from station.config.load import load
from station.config.lot_rules import LotSettings
from station.core.balance import Water
from station.core.line_lots import Overlap
from tests.station.config.conftest import TODAY


def settings(folder):
    return load(folder, TODAY).settings.lots


@pytest.fixture
def write(folder):
    def table(text):
        path = folder / "station.toml"
        kept = path.read_text(encoding="utf-8").split("[lots]")[0]
        path.write_text(kept + text, encoding="utf-8")

    return table


def test_settings_without_the_table_stay_valid(folder, write):
    write("")
    assert settings(folder) == LotSettings()
    assert settings(folder).rules.overlap == Overlap()
    assert settings(folder).long_overlap == timedelta(minutes=30)


def test_what_is_given_is_read(folder, write):
    write(
        "[lots]\non = false\noverlap_bags = 40\noverlap_minutes = 5\nrework_hours = 1\n"
        "overlap_alarm_minutes = 45\n"
        "water_least_percent = 0.5\nwater_most_percent = 3\n"
    )
    found = settings(folder)
    assert not found.on
    assert found.rules.overlap == Overlap(40, timedelta(minutes=5))
    assert found.rules.rework == timedelta(hours=1)
    assert found.long_overlap == timedelta(minutes=45)
    assert found.water == Water(Decimal("0.5"), Decimal(3))


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("[lots]\noverlap_bags = 0\n", "lots.overlap_bags"),
        ("[lots]\nrework_hours = 49\n", "lots.rework_hours"),
        ("[lots]\nbelts = 2\n", "lots.belts"),
        ("[lots]\nwater_least_percent = 3\nwater_most_percent = 1\n", "two rising figures"),
    ],
)
def test_what_cannot_be_is_refused_in_words(write, refusal, text, words):
    write(text)
    assert words in refusal()
