"""``[scanner]``: may be missing; where it is given it must be right."""

from shutil import copytree

import pytest

from station.config.load import load_settings
from station.config.packhouse import ScalePort
from station.errors import BadInput
from tests.station.config.test_demo import DEMO


@pytest.fixture
def given(tmp_path):
    """Give a function that adds a table to the demo's settings and loads them."""

    def load(table):
        folder = copytree(DEMO, tmp_path / "settings")
        with (folder / "station.toml").open("a", encoding="utf-8") as file:
            file.write(f"\n[scanner]\n{table}\n")
        return load_settings(folder)

    return load


def test_a_station_needs_no_scanner():
    assert load_settings(DEMO).scanner is None


def test_a_scanner_has_a_line(given):
    scanner = given('url = "/dev/ttyUSB1"\nbaud = 115200').scanner
    assert scanner is not None
    assert scanner.port == ScalePort("/dev/ttyUSB1", 115200, 8, "none", 1)


@pytest.mark.parametrize(
    ("table", "words"),
    [
        ("baud = 9600", "scanner.url"),
        ('url = "/dev/x"\nbaud = 9601', "scanner.baud"),
        ('url = "/dev/x"\nparity = "mark"', "scanner.parity"),
        ('url = "/dev/x"\nspeed = 1', "scanner.speed"),
    ],
)
def test_what_is_wrong_is_named(given, table, words):
    with pytest.raises(BadInput) as refused:
        given(table)
    assert words in f"{refused.value.title} {refused.value.detail}"
