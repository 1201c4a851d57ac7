"""``station rejects|hold|release|checks``: lists as JSON, CSV and XLSX; entries when it stands."""

import csv
from datetime import date
from io import BytesIO, StringIO
from shutil import copytree

import pytest

from station.app.places import demo_settings
from station.store.inbox import inbox
from station.store.queries import trace_pack

openpyxl = pytest.importorskip("openpyxl")

DAY = "2026-11-25"
TODAY = date.fromisoformat(DAY)


@pytest.fixture
def config(tmp_path):
    """The demo's settings, where a name is enough to sign."""
    folder = copytree(demo_settings(), tmp_path / "settings")
    station = folder / "station.toml"
    text = station.read_text("utf-8")
    assert 'pins = "required"' in text
    station.write_text(text.replace('pins = "required"', 'pins = "off"'), "utf-8")
    return folder


@pytest.fixture
def entered(station, home, config):
    """A function that runs a verb on the stopped station."""

    def run(*words):
        return station(*words, "--home", home, "--config", config, "--json")

    return run


def test_a_reject_is_decided_once_and_corrected_by_the_next_decision(entered, packed, home):
    serial = packed.serials[2]
    dump = ("rejects", "decide", serial, "--as", "dumped", "--who", "L01", "--why", "seal open")
    alone = entered(*dump)
    assert (alone.code, "wants a witness" in alone.err) == (2, True)
    done = entered(*dump, "--witness", "Q01")
    assert (done.code, done.err) == (0, "")
    assert done.document["disposition"] == "dumped"
    assert trace_pack(home, serial).quality == "dumped"
    again = entered(*dump[:4], "sampled", *dump[5:])
    assert again.document["corrects"]
    found = entered("rejects", "--day", DAY)
    decision = next(r["decision"] for r in found.document["rejects"] if r["serial"] == serial)
    assert (decision["disposition"], decision["who"]) == ("sampled", "L01")
    assert found.document["open"] == 2


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--as", "burnt", "--who", "L01", "--why", "x"), "give one of"),
        (("--as", "sampled", "--who", "X9", "--why", "x"), "is nobody of people.toml"),
        (("--as", "sampled", "--who", "P01", "--why", "x"), "may not"),
        (("--as", "sampled", "--who", "L01", "--why", " "), "needs a reason"),
        (("--as", "weighed-again", "--who", "L01", "--why", "x"), "scan the label"),
        (
            ("--as", "weighed-again", "--who", "L01", "--why", "x", "--into", "A1-ZZ-9"),
            "is not in the record",
        ),
    ],
)
def test_what_cannot_be_decided_is_refused_in_words(entered, packed, words, said):
    found = entered("rejects", "decide", packed.serials[2], *words)
    assert (found.code, said in found.err) == (2, True)


def test_the_bin_is_counted_against_the_record(entered):
    count = ("rejects", "bin", "2", "--day", DAY, "--who", "Q01")
    assert "say why they differ" in entered(*count).err
    found = entered(*count, "--why", "one went to the laboratory")
    assert (found.document["expected"], found.document["difference"]) == (3, -1)
    assert entered("rejects", "--day", DAY).document["bin"] == {"expected": 3, "counted": 2}


def test_the_ledger_is_written_as_csv_and_xlsx_and_no_cell_is_a_formula(
    entered, packed, home, tmp_path
):
    decided = entered(
        *("rejects", "decide", packed.serials[2], "--as", "sampled", "--who", "L01"),
        *("--why", "=1+2"),
    )
    assert decided.code == 0
    for name in ("rejects.csv", "rejects.xlsx"):
        assert entered("rejects", "--day", DAY, "--out", tmp_path / name).code == 0
    rows = list(csv.reader(StringIO((tmp_path / "rejects.csv").read_text("utf-8"))))
    assert len(rows) == 4
    why = rows[0].index("decision_reason")
    assert rows[1][why] == "'=1+2"
    sheet = openpyxl.load_workbook(BytesIO((tmp_path / "rejects.xlsx").read_bytes())).active
    assert (sheet.cell(2, why + 1).value, sheet.cell(2, why + 1).data_type) == ("=1+2", "s")
    assert sheet.cell(2, rows[0].index("net") + 1).value == 331
    refused = entered("rejects", "--day", DAY, "--out", tmp_path / "rejects.pdf")
    assert "ends in .csv or .xlsx" in refused.err
    assert (
        "is there already"
        in entered("rejects", "--day", DAY, "--out", tmp_path / "rejects.csv").err
    )


def test_rejects_are_filtered(entered):
    assert entered("rejects", "--day", DAY, "--product", "SLAW-340").document["count"] == 3
    assert entered("rejects", "--day", DAY, "--position", "P02").document["count"] == 0
    still = entered("rejects", "--day", DAY, "--open")
    assert (still.code, still.document["count"]) == (1, 3)


@pytest.mark.parametrize(
    ("words", "bags"),
    [
        (lambda p: ("--serial", p.serials[0], "--to", p.serials[1]), 2),
        (lambda p: ("--run", p.run.id), 3),
        (lambda p: ("--blend", p.run.blend_lot), 3),
        (lambda p: ("--since", f"{DAY}T00:00", "--until", f"{DAY}T23:59"), 3),
    ],
)
def test_bags_are_held_by_any_scope_and_listed_with_what_keeps_them(
    entered, packed, home, words, bags
):
    """Three of the run's six bags are rejects: no hold keeps them, and none is told as held."""
    held = entered("hold", *words(packed), "--who", "P01", "--why", "foreign body")
    assert (held.err, held.code) == ("", 0)
    assert held.document["bags"] == bags
    listed = entered("release")
    assert listed.code == 1
    assert listed.document["blocked"] >= 1
    [one] = [each for each in listed.document["list"] if each["key"] == held.document["hold"]]
    assert "no good check of seal after the last bag" in one["blocked_by"]
    assert one["bags"] == bags
    [run] = [each for each in listed.document["list"] if each["key"] == packed.run.id]
    assert run["bags"] == 3
    assert f"{bags} bags are held: foreign body" in {item.words for item in inbox(home, TODAY)}
    assert any(
        point.startswith("hold open") and point.endswith(f", {bags} bags")
        for point in entered("handover", "--day", DAY).document["open"]
    )
    refused = entered(
        *("release", held.document["hold"], "--who", "Q01", "--second", "M01", "--why", "seen")
    )
    assert refused.code == 2
    assert "no good check of seal" in refused.err
    # rejects under the hold wait for its release, those beside it must be decided before
    assert ("rejects are undecided" in refused.err) is (bags == 2)


def test_a_hold_names_one_scope_with_bags_in_it(entered, packed):
    none = entered("hold", "--who", "L01", "--why", "x")
    assert "give one of --serial" in none.err
    two = entered("hold", "--run", packed.run.id, "--blend", "L1", "--who", "L01", "--why", "x")
    assert "give one of --serial" in two.err
    wrong = entered("hold", "--blend", "L1-NONE", "--who", "L01", "--why", "x")
    assert (wrong.code, "is not in the record" in wrong.err) == (2, True)


def test_checks_on_record_are_listed_and_a_failed_last_one_says_no(station, week, tmp_path):
    out = tmp_path / "checks.csv"
    found = station("checks", "--home", week.home, "--out", out, "--json")
    assert found.code == 0
    kinds = {one["check"] for one in found.document["checks"]}
    assert "scale" in kinds
    rows = list(csv.reader(StringIO(out.read_text("utf-8"))))
    assert len(rows) == len(found.document["checks"]) + 1
    failed = station("checks", "--home", week.home, "--failed", "--json")
    assert [one["result"] for one in failed.document["checks"]] == ["failed"]
