"""``station labels`` over a record the store really wrote."""

from pathlib import Path
from shutil import copytree

import pytest

from station.access.credentials import Credentials
from station.core.checks.first_off import FirstOff, first_off_fact
from station.core.checks.rolls import RollCount, put_in_fact, taken_out_fact
from station.core.pack import LabelState, Quality
from station.store.label_rolls import roll_accounts
from station.store.labelled import labelled_pack
from station.store.writer import StationStore

DEMO = Path(__file__).parents[3] / "demo_config"
PIN = "739164"


@pytest.fixture
def home(packed, tmp_path):
    """Six bags, three of them good; after a second start their labels are in doubt."""
    home = tmp_path / "home"
    copytree(packed.home, home)
    with StationStore.open(home, "QH", "A1", packed.clock) as store:

        def enter(fact):
            store.record((fact,), packed.clock.now(), "L01")

        product = packed.run.product
        said = FirstOff(packed.run.id, product.code, product.version, "ab" * 32, 1, "L01", "Q01")
        enter(first_off_fact(said, "f1"))
        enter(put_in_fact("LR-0001", 100, "r1"))
        (account,) = roll_accounts(home)
        enter(taken_out_fact(account, RollCount(90, 3, 2), "r2"))
    Credentials(home).set_pin("L01", PIN)
    return home


@pytest.fixture
def packed(packed):
    packed.good = [packed.serials[place] for place in (0, 1, 3)]
    return packed


def test_all_of_it_and_the_answer_is_no_while_something_is_open(station, home, packed):
    found = station("labels", "--home", home, "--json")
    assert found.code == 1
    document = found.document
    assert list(document) == ["in_doubt", "rolls", "first_offs"]
    assert [one["serial"] for one in document["in_doubt"]] == packed.good
    (roll,) = document["rolls"]
    assert (roll["issued"], roll["used"], roll["difference"], roll["open"]) == (100, 0, 5, True)
    (first_off,) = document["first_offs"]
    assert (first_off["result"], first_off["signed"]) == ("approved", ["L01", "Q01"])
    page = station("labels", "--home", home).out
    for words in (packed.good[0], "3 labels wait for an answer", "LR-0001", "L01 Q01", "open"):
        assert words in page


@pytest.mark.parametrize(
    ("option", "key", "code"),
    [("--in-doubt", "in_doubt", 1), ("--rolls", "rolls", 1), ("--first-offs", "first_offs", 0)],
)
def test_one_part_of_it(station, home, option, key, code):
    found = station("labels", "--home", home, option, "--json")
    assert (found.code, list(found.document)) == (code, [key])


@pytest.mark.parametrize(
    ("fate", "label", "quality"),
    [
        ("applied", LabelState.APPLIED, Quality.GOOD),
        ("destroyed", LabelState.VOIDED, Quality.REJECT),
        ("not-printed", LabelState.VOIDED, Quality.REJECT),
    ],
)
def test_a_doubt_is_answered(station, home, packed, fate, label, quality):
    serial = packed.good[0]
    settings = ("--who", "L01", "--home", home, "--config", DEMO)
    found = station("labels", "resolve", serial, "--fate", fate, *settings, "--json", keyed=PIN)
    assert found.code == 0, found.err
    assert found.document["label"] == str(label)
    bag = labelled_pack(home, serial)
    assert (bag.label, bag.quality) == (label, quality)
    again = station("labels", "resolve", serial, "--fate", fate, *settings, keyed=PIN)
    assert again.code == 2
    assert "nothing to answer" in again.err


@pytest.mark.parametrize(
    ("changes", "code", "words"),
    [
        ({"--fate": "lost"}, 2, "'lost': give one of applied, destroyed, not-printed"),
        ({"--who": "X99"}, 2, "is nobody of people.toml"),
        ({"serial": "A1-ZZ-000001"}, 3, "A1-ZZ-000001"),
    ],
)
def test_what_is_refused(station, home, packed, changes, code, words):
    given = {"--fate": "applied", "--who": "L01", "--home": home, "--config": DEMO}
    serial = changes.pop("serial", packed.good[0])
    options = [part for pair in (given | changes).items() for part in pair]
    found = station("labels", "resolve", serial, *options, keyed=PIN)
    assert found.code == code
    assert words in found.err


def test_a_running_station_answers_on_its_screen(station, home, packed):
    options = ("--fate", "applied", "--who", "L01", "--home", home, "--config", DEMO)
    with StationStore.open(home, "QH", "A1", packed.clock):
        found = station("labels", "resolve", packed.good[0], *options)
    assert found.code == 3
    assert "in use" in found.err
