"""``station settings check``: sound settings, faulty ones, and none."""

from pathlib import Path
from shutil import copytree

import pytest

DEMO = Path(__file__).parents[3] / "demo_config"
CHECK = ("settings", "check", "--config")


def test_the_demo_packhouse_is_sound(station):
    found = station(*CHECK, DEMO, "--json")
    assert (found.code, found.document["sound"]) == (0, True)
    assert list(found.document) == [
        "sound", "folder", "site", "station", "line", "home",
        "products", "components", "bags", "lots", "people",
        "scale_warnings", "order_of_products",
    ]  # fmt: skip
    assert "SLAW-340" in found.document["products"]
    page = station(*CHECK, DEMO).out
    for words in ("are sound", "Ostermoor Leaf Room", "340 g to 355 g", "3000 g by 1 g"):
        assert words in page


@pytest.mark.parametrize("file", ["station.toml", "products.toml", "lots.toml", "people.toml"])
def test_every_fault_is_named(station, tmp_path, file):
    folder = copytree(DEMO, tmp_path / "settings")
    (folder / "lots.toml").write_text("[[lot]]\n", encoding="utf-8")
    (folder / file).write_text("nonsense", encoding="utf-8")
    found = station(*CHECK, folder)
    assert (found.code, found.out) == (2, "")
    assert f"{file}: " in found.err
    assert ("lots.toml: " in found.err) is True
    wrapped = station(*CHECK, folder, "--json")
    assert (wrapped.code, wrapped.error["exit"], wrapped.out) == (2, 2, "")
    assert f"{file}: " in f"{wrapped.error['title']}: {wrapped.error['detail']}"


def test_no_folder(station, tmp_path):
    assert "is no folder" in station(*CHECK, tmp_path / "nowhere").err
    assert "Missing option '--config'" in station("settings", "check").err


def test_a_scale_that_only_just_suits_is_warned_of_with_the_numbers(station, tmp_path):
    """3000 g by 0.2 g are 15 000 intervals; class III has 10 000 at most (OIML R 76-1 Table 3)."""
    folder = copytree(DEMO, tmp_path / "settings")
    file = folder / "station.toml"
    text = file.read_text(encoding="utf-8").replace('interval = "1 g"', 'interval = "0.2 g"')
    file.write_text(text, encoding="utf-8")
    done = station("settings", "check", "--config", folder, "--json")
    warnings = done.document["scale_warnings"]
    assert {one["product"] for one in warnings} == set(done.document["products"])
    assert "15000" in warnings[0]["words"].replace(" ", "")


def test_products_are_offered_in_the_order_of_what_they_leave_behind(station):
    """Plain first, allergens last: common practice."""
    done = station("settings", "check", "--config", DEMO, "--json")
    assert done.document["order_of_products"][-1] == "SOUP-MIX-2270"  # celery is an allergen
