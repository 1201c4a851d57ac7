"""``station cases``: bags to a customer and back on a stopped station, by words alone."""

import json
from dataclasses import replace
from datetime import timedelta
from io import StringIO
from pathlib import Path
from shutil import copytree

import pytest

from labels.release import release
from station.access.credentials import Credentials
from station.app.places import packhouse
from station.app.practice_record import pack_record
from station.app.shipping_desk import ShippingDesk
from station.app.shipping_verbs import shipping_verbs
from station.app.unit_labels import unit_on_record
from station.cli.entry import run
from station.cli.verbs import build
from station.clock import SystemClock
from station.core.pack import LabelState
from station.core.shipping import ShippingError
from station.reports.unit_label import unit_label
from station.store.queries import labels_in

DEMO = Path(__file__).parents[3] / "demo_config"
PIN = "615204"


@pytest.fixture
def cases(request, tmp_path, capsys, monkeypatch):
    """A function that carries out ``cases`` on a record of 30 bags; the lead has a PIN.

    A test may say which words stand before the date of the bags.
    """
    settings = copytree(DEMO, tmp_path / "settings")
    _say_dates(settings, getattr(request, "param", "Use by"))
    house = packhouse(settings)
    pack_record(house, tmp_path, 30, 1, ends=SystemClock(house.settings.zone).now())
    Credentials(tmp_path).set_pin("L01", PIN)

    def call(*words):
        app = build()
        app.add_typer(shipping_verbs(), name="cases")
        monkeypatch.setattr("sys.stdin", StringIO(f"{PIN}\n"))
        end = ("--home", tmp_path, "--json")
        config = () if words[0] == "list" else ("--config", settings, "--who", "L01")
        code = run(app, [str(word) for word in ("cases", *words, *config, *end)])
        said = capsys.readouterr()
        return code, json.loads(said.out) if code < 2 else said.err

    call.serials = labels_in(tmp_path, LabelState.APPLIED)
    call.home, call.settings = tmp_path, settings
    return call


def test_a_case_is_filled_stacked_shipped_and_taken_back(cases):
    code, filled = cases("fill", "--from", cases.serials[0], "--to", cases.serials[11])
    assert code == 0
    sscc = filled["name"]
    (file,) = cases.home.rglob(f"*{sscc}*.pdf")
    assert file.read_bytes().startswith(b"%PDF")
    code, listed = cases("list")
    (unit,) = listed["units"]
    assert (code, unit["sscc"], unit["bags"], unit["label"]) == (0, sscc, 12, "spooled")
    _, stacked = cases("pallet", sscc, "--gross", "27.4kg")
    _, shipped = cases(
        "ship", stacked["name"], "--customer", "MARSHGATE", "--paper", "delivery note 4711"
    )
    _, listed = cases("list")
    assert listed["units"] == []
    assert listed["shipments"][0]["customer"] == "Marshgate Grocers"
    code, _ = cases("undo", shipped["name"], "--why", "the lorry was warm", "--came-back")
    assert code == 0
    assert {unit["sscc"] for unit in cases("list")[1]["units"]} >= {stacked["name"]}


def test_the_bars_of_a_case_are_laid_on_the_head_that_the_settings_name(cases):
    stated = cases.settings / "customers.toml"
    stated.write_text(stated.read_text().replace("[printer]\n", "[printer]\ndpi = 300\n"))
    _, filled = cases("fill", "--from", cases.serials[0], "--to", cases.serials[11])
    (file,) = cases.home.rglob(f"*{filled['name']}*.pdf")
    packer = packhouse(cases.settings).settings.packer
    for dots, same in ((12, True), (8, False)):
        drawer, label = unit_label(unit_on_record(cases.home, filled["name"]), packer, 0, dots)
        assert (release(drawer, label).pdf == file.read_bytes()) is same


def _say_dates(settings, words):
    stated = settings / "products.toml"
    said = f'use_by_words = "{words}"\nstorage = '
    stated.write_text(stated.read_text().replace("storage = ", said))


class DaysLater(SystemClock):
    """The clock of the plant, some days on."""

    def __init__(self, zone, days):
        super().__init__(zone)
        self._on = timedelta(days=days)

    def now(self):
        at = super().now()
        return replace(at, utc=at.utc + self._on)


@pytest.mark.parametrize(
    ("cases", "days", "leaves"),
    [("Use by", 30, False), ("Use by", 0, True), ("Best before", 30, True)],
    indirect=["cases"],
)
def test_nothing_leaves_after_its_use_by_date(cases, days, leaves):
    """After it food counts as unsafe: Regulation (EU) No 1169/2011 Art. 24(1)."""
    sscc = cases("fill", "--from", cases.serials[0], "--to", cases.serials[11])[1]["name"]
    _, stacked = cases("pallet", sscc, "--gross", "27.4kg")
    house = packhouse(cases.settings)
    desk = ShippingDesk(house, cases.home, DaysLater(house.settings.zone, days))
    if leaves:
        assert desk.ship("MARSHGATE", "note 4711", (stacked["name"],))
    else:
        with pytest.raises(ShippingError, match="had its use-by date on"):
            desk.ship("MARSHGATE", "note 4711", (stacked["name"],))


def test_a_case_says_its_date_in_the_words_of_its_bags_not_of_newer_settings(cases):
    """(17) is a use-by date, (15) best before: GS1 General Specifications 3.4."""
    stated = cases.settings / "products.toml"
    stated.write_text(stated.read_text().replace('"Use by"', '"Best before"'))
    assert {one.use_by_words for one in packhouse(cases.settings).products.values()} == {
        "Best before"
    }
    _, filled = cases("fill", "--from", cases.serials[0], "--to", cases.serials[11])
    case = unit_on_record(cases.home, filled["name"])
    assert case.date_words == "Use by"
    _, label = unit_label(case, "Saltmarsh Fresh, Holmouth")
    assert any("(17)" in symbol.hri for _, symbol in label.symbols)


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("fill", "--from", "A1-00-000001"), "give both"),
        (("fill", "--bag", "A1-00-000001"), "A1-00-000001"),
        (("ship", "195240070000000018", "--customer", "MARSHGATE", "--paper", "n"), "1952400"),
        (("ship", "1", "--customer", "NOBODY", "--paper", "delivery note 1"), "NOBODY"),
    ],
)
def test_what_cannot_be_is_refused_in_words_and_nothing_is_recorded(cases, words, said):
    code, err = cases(*words)
    assert code == 2
    assert said in err
    assert cases("list")[1]["units"] == []


def test_a_bag_is_in_one_case_only(cases):
    first = cases.serials[0]
    assert cases("fill", "--bag", first)[0] == 0
    code, err = cases("fill", "--bag", first)
    assert code == 2
    assert first in err
