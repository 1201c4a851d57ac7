"""``station purge``: the whole way, on a record whose first runs ended six years ago."""

import csv
import json
import re
import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import timedelta
from io import StringIO
from pathlib import Path
from shutil import copytree
from types import SimpleNamespace

import pytest
from openpyxl import load_workbook
from pypdfium2 import PdfDocument

from station.clock import SystemClock
from station.config.load import load
from station.core.dispositions import Decided, Disposition, disposition_fact
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.mass import Unit
from station.core.pack import LabelState, Moment
from station.line.opening import Catalogue, calendar_day, open_run
from station.line.state import RunChoice
from station.store.engine import database
from station.store.writer import StationStore
from tests.station.cli.conftest import DEMO, NETS, draft

YEARS = timedelta(days=6 * 366)
_SLAW = (r"SM-WC", r"PW/WCA/", r"SM-RC", r"SM-C\d")
PIN, PIN_TWICE = "482913", "482913\n482913\n"
WHO, WHY = "M01", "the years are over"
GLN = "9521234000006"  # GS1's example prefix 952; check digit by GenSpecs 7.9.1


class BackClock:
    """The plant's clock, some time back."""

    def __init__(self, zone: str) -> None:
        self._clock, self.back = SystemClock(zone), YEARS

    def now(self) -> Moment:
        now = self._clock.now()
        return replace(now, utc=now.utc - self.back)

    def monotonic_ns(self) -> int:
        return self._clock.monotonic_ns()


@pytest.fixture(scope="module")
def old_once(tmp_path_factory) -> SimpleNamespace:
    """Two runs of six years ago, one with rejects nobody decided about, and one of today."""
    folder = tmp_path_factory.mktemp("old")
    home, settings = folder / "home", copytree(DEMO, folder / "settings")
    clock = BackClock("Europe/Dublin")

    def pack(store):
        at = clock.now()
        house = load(settings, calendar_day(at))
        codes = tuple(  # each day brings lots with codes of their own
            next(code for code in house.lots if re.match(one, code)) for one in _SLAW
        )
        catalogue = Catalogue(
            house.products, house.lots, "L1", house.settings.cut_off, "bench", Unit.GRAM, "test"
        )
        store.add_lots(tuple(house.lots.values()), at, "L01")
        run = open_run(RunChoice("SLAW-340", 3, codes, "L01", "P01"), catalogue, at, 1,
                       new_uid(at))  # fmt: skip
        store.start_run(run, at)
        serials = []
        for net in NETS * 4:
            record = store.add_pack(draft(run, clock, net))
            serials.append(record.serial)
            if record.draft.reason:
                continue
            for state in (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED):
                store.mark_label(record.serial, state, clock.now(), "station", "")
        store.end_run(run.id, clock.now(), "L01")
        return run, serials

    def dump(store, run, serials):
        for place, serial in enumerate(serials):
            if NETS[place % len(NETS)] in ("331", "329", "358"):
                decided = Decided(serial, Disposition.DUMP, "out", witness="L01")
                fact = disposition_fact(decided, new_uid(clock.now()), run.id)
                store.record((fact,), clock.now(), "Q01")

    key = home.with_name("home.key")
    with StationStore.open(home, "QH", "A1", clock, key) as store:
        old, serials = pack(store)
        dump(store, old, serials)
    with StationStore.open(home, "QH", "A1", clock, key) as store:
        clock.back = timedelta()
        young, its = pack(store)
        calls = [
            Fact(EntryKind.CALL, new_uid(clock.now()), f"call {n}", "made") for n in range(1400)
        ]
        store.record(calls, clock.now(), "L01")
    return SimpleNamespace(
        home=home, settings=settings, old=old, young=young, serials=serials, its=its
    )


@pytest.fixture
def old(old_once, tmp_path) -> SimpleNamespace:
    """A copy of it with its key, to be purged."""
    home = copytree(old_once.home, tmp_path / "home")
    for beside in old_once.home.parent.glob("home.key*"):
        (tmp_path / beside.name).write_bytes(beside.read_bytes())
        (tmp_path / beside.name).chmod(0o600)
    (tmp_path / "out").mkdir()
    return SimpleNamespace(**{**vars(old_once), "home": home, "out": tmp_path / "out"})


@pytest.fixture
def purge(station, old):
    """The verb, with a manager who has a PIN and gives it."""
    where = ("--home", old.home, "--config", old.settings, "--json")

    def call(*arguments, pin=PIN):
        return station("purge", *arguments, *where, keyed=f"{pin}\n")

    first = station("people", "pin", WHO, "--who", WHO, "--why", "first", *where, keyed=PIN_TWICE)
    assert first.code == 0, first.err
    return call


def emptied(home: Path) -> int:
    with closing(sqlite3.connect(database(home))) as file:
        return file.execute("SELECT count(*) FROM journal WHERE canonical = x''").fetchone()[0]


def test_without_the_word_nothing_goes_and_what_would_is_listed(purge, old):
    told = purge()
    assert told.code == 0, told.err
    assert (told.document["purged"], told.document["keep_years"]) == (False, 5)
    (going,) = told.document["going"]
    assert (going["run"], going["bags"]) == (old.old.id, 24)
    assert emptied(old.home) == 0


def test_the_whole_way(station, purge, old, tmp_path):
    """Purged, proved, traced, rebuilt, backed up and brought back."""
    done = purge("--really", "--to", old.out, "--who", WHO, "--why", WHY)
    assert done.code == 0, done.err
    document = done.document
    # run, run end, 24 bags, three states of 12 labels, 12 decisions
    assert document["entries"] == emptied(old.home) == 2 + 24 + 3 * 12 + 12
    digest = document["sha256"]
    checked = station("purge", "--check", old.out, "--config", old.settings, "--json")
    assert (checked.code, checked.document["sha256"]) == (0, digest)

    where = ("--home", old.home, "--json")
    proved = station("journal", "verify", *where).document
    assert (proved["whole"], proved["purged"]) == (True, document["entries"])
    assert station("journal", "rebuild", *where).code == 0
    assert station("journal", "verify", *where).document["whole"] is True

    gone = station("trace", "--pack", old.serials[5], *where)
    assert gone.code == 1
    (run,) = gone.document["purged"]
    assert (run["run"], run["who"], run["why"], run["sha256"]) == (old.old.id, WHO, WHY, digest)
    kept = station("trace", "--pack", old.its[0], *where)
    assert (kept.code, kept.document["serial"]) == (0, old.its[0])
    lot = station("trace", "--lot", old.old.lots[0].code, *where)
    assert (lot.document["count"], lot.document["purged"][0]["run"]) == (0, old.old.id)

    (tmp_path / "second").mkdir()
    made = station("backup", "--to", tmp_path / "second", *where)
    assert made.code == 0, made.err
    back = tmp_path / "back" / "home"
    restored = station(
        *("restore", "--from", made.document["file"], "--home", back, "--config", old.settings),
        *("--who", WHO, "--why", "new disk", "--json"),
    )
    assert restored.code == 0, restored.err
    assert station("journal", "verify", "--home", back, "--json").document["whole"] is True
    again = station("trace", "--pack", old.serials[5], "--home", back, "--json")
    assert again.document["purged"][0]["sha256"] == digest


def test_reports_of_purged_days_say_so(station, purge, old):
    assert purge("--really", "--to", old.out, "--who", WHO, "--why", WHY).code == 0
    day = old.old.dating.production_day.isoformat()
    where = ("--home", old.home, "--json")
    for verb in (
        ("giveaway", "--from", day, "--to", day),
        ("report", "--day", day),
        ("record", "--day", day),
        ("export", "--kind", "plain", "--out", old.out / "a.csv", "--day", day),
        ("recall", "--day", day),
        ("record", "--run", old.old.id),
        ("record", "--blend", old.old.blend_lot),
        ("evidence", "--out", old.out.with_name("e"), "--run", old.old.id),
        ("recall", "--pack", old.serials[0]),
        ("batch", "--run", old.old.id),
        ("evidence", "--out", old.out.with_name("e"), "--lot", old.old.lots[0].code),
    ):
        refused = station(*verb, *where)
        assert refused.code == 2, verb
        assert "purged" in str(refused.error), verb
        assert old.old.id in str(refused.error), verb
    for verb in (
        ("rejects", "--day", day),
        ("handover", "--day", day),
        ("giveaway",),
        ("report",),
        ("recall", "--lot", old.old.lots[0].code),
    ):
        answer = station(*verb, *where)
        assert [one["run"] for one in answer.document["purged"]] == [old.old.id], verb
    papers = {
        "hand-over": ("handover", "--day", day),
        "report": ("report",),
        "recall": ("recall", "--lot", old.old.lots[0].code),
    }
    for name, verb in papers.items():
        paper = old.out.with_name(f"{name}.pdf")
        station(*verb, "--pdf", paper, *where)
        document = PdfDocument(paper)
        text = " ".join(page.get_textpage().get_text_bounded() for page in document)
        document.close()
        assert "Not on this paper: 1 run was purged" in text, name
    today = station("giveaway", "--from", old.young.dating.production_day.isoformat(), *where)
    assert "purged" not in today.document


def test_tables_of_purged_days_say_so(station, purge, old):
    """CSV by Python's own reader, XLSX by openpyxl: a line under the table names each run."""
    assert purge("--really", "--to", old.out, "--who", WHO, "--why", WHY).code == 0
    day, lot = old.old.dating.production_day.isoformat(), old.old.lots[0].code
    tables = {
        "rejects": ("rejects", "--day", day, "--out"),
        "giveaway": ("giveaway", "--out"),
        "report": ("report", "--out"),
        "recall": ("recall", "--lot", lot, "--csv"),
        "export": ("export", "--kind", "sheet", "--lot", lot, "--out"),
    }
    for name, verb in tables.items():
        made = [old.out.with_name(f"{name}.csv")]
        station(*verb, made[0], "--home", old.home)
        if not made[0].exists():  # a file for each table
            made = sorted(old.out.parent.glob(f"{name}-*.csv"))
        assert made, name
        for file in made:
            head, *rows = csv.reader(StringIO(file.read_text("utf-8")))
            assert {len(row) for row in rows} == {len(head)}, file.name
            notes = [row[0] for row in rows if "purge" in row[0]]
            if file.name == "export-receiving.csv":  # lots stay
                assert notes == []
                continue
            assert notes[0].startswith("NOT IN THIS TABLE: 1 run was purged on "), file.name
            assert notes[0].endswith(f", export {old.out.name}"), file.name
            assert old.old.id in notes[1], file.name
    for name in ("rejects", "giveaway", "report", "export"):
        file = old.out.with_name(f"{name}.xlsx")
        station(*tables[name], file, "--home", old.home)
        book = load_workbook(file)
        for sheet in book.worksheets[1 if name == "export" else 0 :]:
            cells = [str(row[0]) for row in sheet.iter_rows(values_only=True)]
            assert cells[-2].startswith("NOT IN THIS TABLE: 1 run was purged on "), sheet.title
            assert sheet.max_row > int(sheet.auto_filter.ref.rpartition(":")[2][1:]), sheet.title
    plain = old.out.with_name("plain.txt")
    station("export", "--kind", "plain", "--lot", lot, "--out", plain, "--home", old.home)
    assert "NOT IN THIS TABLE: 1 run was purged on " in plain.read_text("utf-8")
    young = old.out.with_name("young.csv")
    today = old.young.dating.production_day.isoformat()
    station("giveaway", "--from", today, "--out", young, "--home", old.home)
    assert "purged" not in young.read_text("utf-8")


def test_an_epcis_document_names_purged_runs_beside_its_events(station, purge, old):
    """Bags, days and lots as they were before the purge; nobody's name goes to a partner."""
    day, lot = old.old.dating.production_day.isoformat(), old.old.lots[0].code
    gtin = old.old.product.gtin.zfill(14)
    link = f"https://id.gs1.org/01/{gtin}/10/{old.old.blend_lot}"

    def exported(name, code):
        file = old.out.with_name(name)
        words = ("--kind", "epcis", "--lot", code, "--gln", GLN, "--out", file)
        assert station("export", *words, "--home", old.home).code == 0
        return json.loads(file.read_bytes())

    def made(document):
        return [
            one
            for event in document["epcisBody"]["eventList"]
            if event["type"] == "TransformationEvent" and event["packhouse:run"] == old.old.id
            for one in event["outputQuantityList"]
        ]

    before = exported("before.json", lot)
    assert "packhouse:purgedRuns" not in before
    told = made(before)
    assert {one["epcClass"] for one in told} == {link}
    done = purge("--really", "--to", old.out, "--who", WHO, "--why", WHY)
    after = exported("after.json", lot)
    assert made(after) == []
    (gone,) = after["packhouse:purgedRuns"]
    assert gone["packhouse:run"] == old.old.id
    assert gone["packhouse:blendLots"] == [old.old.blend_lot]
    assert gone["packhouse:firstProductionDay"] == gone["packhouse:lastProductionDay"] == day
    assert gone["packhouse:bags"] >= sum(one["quantity"] for one in told)
    assert lot in gone["packhouse:inputLots"]
    assert (gone["packhouse:export"], WHO in json.dumps(after)) == (old.out.name, False)
    assert done.code == 0


@pytest.mark.parametrize(
    ("given", "words"),
    [
        (("--who", "L01", "--why", WHY), "L01 (lead) may not purge old runs: allowed is manager"),
        (("--who", "X99", "--why", WHY), "nobody of people.toml"),
        (("--who", WHO), "needs --to DIR, --who ID and --why WORDS"),
    ],
)
def test_a_manager_signs_and_says_why(purge, old, given, words):
    refused = purge("--really", "--to", old.out, *given)
    assert (refused.code, words in str(refused.error)) == (2, True)
    assert emptied(old.home) == 0


def test_a_wrong_pin_purges_nothing(purge, old):
    refused = purge("--really", "--to", old.out, "--who", WHO, "--why", WHY, pin="111222")
    assert refused.code == 2
    assert emptied(old.home) == 0
    assert not list(old.out.iterdir())


def test_a_folder_in_the_home_or_with_something_in_it_is_refused(purge, old):
    (old.home / "inside").mkdir()
    inside = purge("--really", "--to", old.home / "inside", "--who", WHO, "--why", WHY)
    assert (inside.code, "lies in the home" in str(inside.error)) == (2, True)
    (old.out / "something").touch()
    full = purge("--really", "--to", old.out, "--who", WHO, "--why", WHY)
    assert (full.code, "is not empty" in str(full.error)) == (2, True)


def test_what_is_not_old_enough_is_not_touched(purge, old):
    path = old.settings / "station.toml"
    text = path.read_text(encoding="utf-8")
    try:
        path.write_text(f"{text}\n[record]\nkeep_years = 7\n", encoding="utf-8")
        refused = purge("--really", "--to", old.out, "--who", WHO, "--why", WHY)
    finally:
        path.write_text(text, encoding="utf-8")
    assert (refused.code, "no run ended before" in str(refused.error)) == (2, True)
    assert emptied(old.home) == 0
