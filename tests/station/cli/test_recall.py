"""``station recall`` and ``station export`` on the packed home: answers, files, exit codes."""

import csv
import json

import openpyxl
import pytest

DAY = "2026-11-25"
GLN = "9521234000006"


@pytest.fixture
def recall(station, packed):
    return lambda *words: station("recall", "--home", packed.home, "--json", *words)


def test_bags_that_are_free_make_the_answer_no(recall, packed):
    found = recall("--lot", "SM-C26327.1")
    assert found.code == 1
    document = found.document
    assert (document["bags"], document["free"], document["drill"]) == (6, 3, False)
    assert document["serials"] == packed.serials
    assert sum(int(one["bags"]) for one in document["blends"]) == 6
    assert document["kilograms"] == "2.048"  # 342 + 345 + 331 + 343 + 358 + 329 g
    assert document["seconds"] > 0


def test_an_exercise_is_done_when_it_is_answered(recall):
    found = recall("--lot", "SM-C26327.1", "--drill")
    assert (found.code, found.document["drill"]) == (0, True)


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ((), "give one of"),
        (("--lot", "SM-C26327.1", "--day", DAY), "give one of"),
        (("--lot", "SM-C26327"), "SM-C26327.1"),
        (("--blend", "L19999901"), "not in the record"),
        (("--pack", "A1-ZZ-000001"), "not in the record"),
        (("--day", "2026-1-1"), "YYYY-MM-DD"),
        (("--day", "2026-01-01"), "nothing was packed"),
    ],
)
def test_bad_input_is_exit_2_and_says_what_is_allowed(recall, words, says):
    found = recall(*words)
    assert (found.code, found.out) == (2, "")
    assert says in found.err


def test_a_home_without_a_record_is_refused(station, tmp_path, packed):
    both = ("--home", packed.home, "--home", tmp_path)
    found = station("recall", *both, "--lot", "SM-C26327.1")
    assert found.code == 2
    assert "no station record" in found.err


def test_a_bag_a_blend_and_a_day_mean_the_same_bags(recall, packed):
    code = packed.run.blend_lot
    asked = (("--pack", packed.serials[0]), ("--blend", code), ("--day", DAY))
    found = [recall(*words).document for words in asked]
    assert [one["serials"] for one in found] == [packed.serials] * 3
    back = found[0]["back"]
    assert {one["code"] for one in back["lots"]} == {one.code for one in packed.run.lots}
    assert back["neighbours"] == packed.serials[1:]


def test_files_are_written_once_and_not_over_others(recall, packed, tmp_path):
    pdf, table = tmp_path / "recall.pdf", tmp_path / "recall.csv"
    words = ("--lot", "SM-C26327.1", "--pdf", pdf, "--csv", table)
    assert recall(*words).code == 1
    assert pdf.read_bytes().startswith(b"%PDF-")
    rows = list(csv.DictReader(table.read_text(encoding="utf-8").splitlines()))
    assert [row["serial"] for row in rows] == packed.serials
    assert recall(*words).code == 2
    assert recall(*words, "--force").code == 1


def test_every_kind_of_record_is_written(station, packed, tmp_path):
    def export(kind, name, *more):
        path = tmp_path / name
        return path, station("export", "--home", packed.home, "--kind", kind, "--day", DAY,
                             "--out", path, "--json", *more)  # fmt: skip

    sheet, done = export("sheet", "day.xlsx")
    assert (done.code, done.document["bags"]) == (0, 3)
    assert openpyxl.load_workbook(sheet).sheetnames == ["receiving", "transformation", "shipping"]
    _, done = export("sheet", "day.csv")
    assert len(done.document["files"]) == 3
    plain, done = export("plain", "day.txt")
    assert plain.read_text(encoding="utf-8").startswith("record\tcommon_name")
    epcis, done = export("epcis", "day.json", "--gln", GLN)
    assert json.loads(epcis.read_bytes())["type"] == "EPCISDocument"
    for kind, name, more in (("epcis", "x.json", ()), ("sheet", "x.ods", ())):
        path, done = export(kind, name, *more)
        assert (done.code, path.exists()) == (2, False)
