"""``[fill]``, the end of a training and the shelf-life policy reach the settings."""

from datetime import date

import pytest

from station.config.fill_rules import FillSettings
from station.config.load import load
from station.core.languages import Language
from station.core.mass import Mass
from tests.station.config.conftest import TODAY


@pytest.fixture
def write(folder):
    def table(text):
        path = folder / "station.toml"
        kept = path.read_text(encoding="utf-8").split("[fill]")[0]
        path.write_text(kept + text, encoding="utf-8")

    return table


def test_the_table_and_each_of_its_keys_may_be_left_out(folder, write):
    write("")
    assert load(folder, TODAY).settings.fill == FillSettings()
    write("[fill]\n")
    found = load(folder, TODAY).settings.fill
    assert not found.approve_products
    assert found.most_step is None


def test_what_is_given_is_read(folder, write):
    write('[fill]\napprove_products = true\nmost_target_step = "1 g"\n')
    found = load(folder, TODAY).settings.fill
    assert found.approve_products
    assert found.most_step == Mass.parse("1 g")


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ('[fill]\nmost_target_step = "0 g"\n', "fill.most_target_step"),
        ("[fill]\nlight_credit = true\n", "fill.light_credit"),
    ],
)
def test_what_cannot_be_is_refused_by_its_key(write, refusal, text, words):
    write(text)
    assert words in refusal()


def test_training_and_lives_are_read(folder):
    house = load(folder, TODAY)
    assert house.people["P03"].trained_until == date(2026, 10, 31)
    assert house.people["P02"].trained_until is None
    assert [one.atmosphere for one in house.lives][:2] == ["air", "2 % O2, rest N2"]
    assert (house.lives[1].least_days, house.lives[1].most_days) == (5, 7)


def test_languages_are_read(folder):
    house = load(folder, TODAY)
    assert house.people["P03"].language is Language.SPANISH
    assert house.people["P02"].language is None
    assert house.settings.screen.language is Language.ENGLISH


def test_a_wrong_day_of_training_is_refused(spoil, refusal):
    spoil("people.toml", "trained_until = 2027-06-30", 'trained_until = "soon"')
    assert "trained_until" in refusal()
