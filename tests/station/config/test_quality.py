"""``[quality]`` and the checks of a product: what they say, and what is refused in words."""

from datetime import date, time, timedelta
from decimal import Decimal

import pytest

from station.app.places import demo_settings
from station.config.load import load
from station.core.checks.qa import QaKind
from station.core.dispositions import Disposition
from station.errors import BadInput

TODAY = date(2026, 11, 25)


def test_the_demo_packhouse_checks_the_common_practice_values(folder):
    house = load(folder, TODAY)
    quality = house.settings.quality
    assert quality.tickets
    assert quality.witnessed == {Disposition.DUMP, Disposition.DOWNGRADE}
    assert quality.shifts == (time(4), time(12), time(20))
    limits = {one.kind: one for one in house.qa["SLAW-340"]}
    assert limits[QaKind.ROOM_TEMPERATURE].most == Decimal("3.3")
    assert limits[QaKind.O2].unit == "%"
    assert limits[QaKind.METAL].at_start
    assert limits[QaKind.SEAL].every == timedelta(minutes=30)


def test_a_packhouse_without_the_table_has_the_usual(folder):
    cut(folder / "station.toml", "[quality]")
    quality = load(folder, TODAY).settings.quality
    assert not quality.tickets
    assert quality.release_two
    assert quality.witnessed == frozenset()


@pytest.mark.parametrize(
    ("file", "old", "new", "said"),
    [
        ("station.toml", '["dumped", "downgraded"]', '["burnt"]', "quality.witness_for"),
        ("station.toml", "reject_tickets = true", "reject_tickets = 1", "quality.reject_tickets"),
        ("station.toml", "12:00:00, 20:00:00]", "02:00:00]", "do not rise"),
        ("products.toml", "least = 1.0, most = 4.0", "least = 5.0, most = 4.0", "is above most"),
        ("products.toml", "least = 1.0, most = 4.0", "least = 1.0, most = 400", "cannot be"),
        ("products.toml", '{ check = "O2", least = 1.0, most = 4.0,', '{ check = "O2",', "needs a"),
        ("products.toml", '{ check = "CO2"', '{ check = "O2"', "stands twice"),
        ("products.toml", '{ check = "seal", every_minutes = 30 }', '{ check = "seal" }', "never"),
        ("products.toml", '{ check = "seal"', '{ check = "smell"', "checks"),
    ],
)
def test_what_is_wrong_is_named_with_its_key(folder, file, old, new, said):
    path = folder / file
    text = path.read_text("utf-8")
    assert old in text
    path.write_text(text.replace(old, new), "utf-8")
    with pytest.raises(BadInput, match=said):
        load(folder, TODAY)


def cut(path, table):
    text = path.read_text("utf-8")
    path.write_text(text[: text.index(table)], "utf-8")


def test_the_demo_settings_are_those_of_the_demo():
    assert load(demo_settings(), TODAY).settings.quality.release_two
