"""Settings and software held against the record at each start, through a real store."""

from pathlib import Path
from shutil import copytree
from types import SimpleNamespace

import pytest

from station.app import guards
from station.app.guards import FoundAtStart, Takeover, found_at_start, past_of
from station.clock import SystemClock
from station.core.changed_settings import Counters, changes_of
from station.core.journal import EntryKind
from station.store.writer import StationStore

DEMO = Path(__file__).parents[3] / "demo_config"
FILES = ["customers.toml", "lots.toml", "people.toml", "products.toml", "station.toml"]


class Plant:
    """Settings, a record, and starts of a station."""

    def __init__(self, folder):
        self.settings, self.home = folder / "settings", folder / "home"
        copytree(DEMO, self.settings)
        self.clock = SystemClock("Europe/Dublin")
        self.home.mkdir()

    def start(self):
        with StationStore.open(self.home, "QH", "A1", self.clock) as store:
            at = self.clock.now()
            found = found_at_start(self.home, self.settings, at)
            if found.facts:
                store.record(found.facts, at, "station")
        return found

    def change(self, file, old, new):
        path = self.settings / file
        text = path.read_text("utf-8")
        assert old in text
        path.write_text(text.replace(old, new, 1), "utf-8")


@pytest.fixture
def plant(tmp_path):
    return Plant(tmp_path)


def test_the_first_start_keeps_all_values_and_the_second_finds_nothing(plant):
    first = plant.start()
    assert sorted(one.subject for one in first.facts) == sorted([*FILES, "software"])
    assert {one.result for one in first.facts} == {"first"}
    assert first.counters == Counters()
    assert plant.start() == FoundAtStart((), Counters())


def test_a_change_between_two_starts_is_told_in_words_and_counted(plant):
    plant.start()
    plant.change("products.toml", 'target = "', 'target = "1')
    (fact,) = plant.start().facts
    (change,) = changes_of(fact)
    assert change.key.endswith(".target")
    assert change.new == f"1{change.old}"
    plant.change("station.toml", 'interval = "1 g"', 'interval = "2 g"')
    plant.change("people.toml", "Teodor Quay", "Teodor Quayle")
    found = plant.start()
    assert found.counters == Counters(2, 1)
    assert [one.subject for one in found.facts] == ["people.toml", "station.toml"]


def test_a_remark_that_changed_is_seen_and_counted_as_no_setting(plant):
    plant.start()
    plant.change("station.toml", "# The demo packhouse.", "# The demo packhouse!")
    found = plant.start()
    assert (len(found.facts), changes_of(found.facts[0])) == (1, ())
    assert found.counters == Counters()


def test_other_software_is_told_once(plant, monkeypatch):
    plant.start()
    monkeypatch.setattr(guards, "software_words", lambda: "0.2.0 beef")
    (fact,) = plant.start().facts
    assert (fact.subject, fact.details["new"]) == ("software", "0.2.0 beef")
    assert plant.start().facts == ()


def test_the_next_lead_takes_the_changes_over(plant):
    plant.start()
    plant.change("station.toml", 'interval = "1 g"', 'interval = "2 g"')
    plant.start()
    takeover = Takeover(past_of(plant.home, EntryKind.SETTING))
    assert [one.fact.subject for one in takeover.open] == ["station.toml"]
    at = plant.clock.now()
    (signed,) = takeover.with_run(SimpleNamespace(id="run 1"), at)
    assert (signed.result, signed.run, signed.subject) == ("taken over", "run 1", "station.toml")
    assert takeover.with_run(SimpleNamespace(id="run 2"), at) == ()
    with StationStore.open(plant.home, "QH", "A1", plant.clock) as store:
        store.record((signed,), at, "L01")
    assert Takeover(past_of(plant.home, EntryKind.SETTING)).open == ()
