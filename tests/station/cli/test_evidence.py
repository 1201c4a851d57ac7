"""``station evidence``: one folder that answers for a run or a lot, and says what is open."""

import csv
import hashlib
import json
import sqlite3
from shutil import copytree

import pypdfium2
import pytest

from station.app.week.plan import Planted
from station.core.long_work import GivenUp, watched
from station.store.weighed import packs_of_run


def text_of(path):
    document = pypdfium2.PdfDocument(path.read_bytes())
    words = "\n".join(page.get_textpage().get_text_bounded() for page in document)
    document.close()
    return words


def table(path):
    return list(csv.DictReader(path.read_text(encoding="utf-8").splitlines()))


def plant(week, fault):
    return next(one for one in week.planted if one.fault is fault)


@pytest.fixture(scope="module")
def failed(week, tmp_path_factory):
    """The evidence of the run in which the scale failed its check."""
    from station.reports.evidence import evidence_of_run
    from station.reports.evidence_pdf import evidence_pdf
    from station.reports.evidence_sheets import evidence_files
    from station.software_id import software_id

    said = []
    with watched(said.append, lambda: True):
        found = evidence_of_run(week.home, week.runs[4], software_id())
    folder = tmp_path_factory.mktemp("evidence")
    for name, content in evidence_files(found, evidence_pdf(found)).items():
        (folder / name).write_bytes(content)
    return found, folder, said


def test_the_pack_answers_for_everything_an_auditor_asks(failed):
    _, folder, _ = failed
    text = " ".join(text_of(folder / "evidence.pdf").split())
    for said in (
        "Input lots",
        "line cleared",
        "equal to what the first-off approved",
        "Checks of the scale",
        "as left",
        "Suspect windows after a failed scale check: 1",
        "hold stays",
        "Label rolls: every label has gone somewhere",
        "Bags set aside",
        "The empty pan after each bag",
        "Checks, lots and stops over time",
        "Proof of the journal",
        "pack line station",
        "More cautions",
        "No official document",
    ):
        assert said in text
    assert "NOT equal to what" not in text
    assert "certified" not in text.lower()


def test_open_points_come_first_and_close_the_exit_code(station, week, tmp_path):
    folder = tmp_path / "pack"
    words = ("evidence", "--run", week.runs[4], "--home", week.home, "--out", folder, "--json")
    result = station(*words)
    assert result.code == 1
    document = result.document
    held = plant(week, Planted.SCALE_CHECK).bags
    assert any(point.endswith(f"{held} bags are held") for point in document["open"])
    assert document["journal_whole"] is True
    assert document["windows"] == 1
    assert station(*words).code == 2, "a folder that is in use stays as it is"
    assert station(*words, "--force").code == 1


def test_tables_hold_what_the_record_holds(failed, week):
    found, folder, _ = failed
    uid = week.runs[4]
    packs = packs_of_run(week.home, uid).packs
    assert [row["serial"] for row in table(folder / "bags.csv")] == [one.serial for one in packs]
    entries = table(folder / "entries.csv")
    kinds = {row["kind"] for row in entries}
    wanted = {
        "scale check",
        "suspect window",
        "hold",
        "first off",
        "gate",
        "label roll",
        "delivery",
    }
    assert wanted <= kinds
    assert [int(row["entry"]) for row in entries] == sorted(int(row["entry"]) for row in entries)
    checks = table(folder / "scale-checks.csv")
    assert {row["result"] for row in checks} == {"good", "failed"}
    assert all(row["difference"] == "0" for row in table(folder / "rolls.csv"))
    assert len(table(folder / "empty-pan.csv")) == len(packs)
    assert len(found.runs) == 1


def test_every_file_is_listed_with_its_digest(failed):
    _, folder, _ = failed
    listed = {row["file"]: row["sha256"] for row in table(folder / "files.csv")}
    there = {path.name for path in folder.iterdir()} - {"files.csv"}
    assert set(listed) == there
    for name, digest in listed.items():
        assert hashlib.sha256((folder / name).read_bytes()).hexdigest() == digest


def test_first_and_last_entry_are_proved_without_the_record(failed, station):
    """RFC 9162 section 2.1.3, checked by the verb that needs the files alone."""
    found, folder, _ = failed
    (run,) = found.runs
    where = run.record.evidence
    assert [one.place for one in run.proofs] == [where.started, where.last_bag]
    for one in run.proofs:
        assert one.why_not == ""
        proof = folder / one.file
        assert json.loads(proof.read_text("utf-8"))["number"] == one.place.seq
        assert station("journal", "verify", "--proof", proof).code == 0
        proof.with_suffix(".changed").write_text(
            proof.read_text("utf-8").replace('"number": ', '"number": 1'), "utf-8"
        )
        assert station("journal", "verify", "--proof", proof.with_suffix(".changed")).code == 1
        proof.with_suffix(".changed").unlink()
    text = " ".join(text_of(folder / "evidence.pdf").split())
    assert "lies under the head over" in text
    assert found.software.digest in text.replace(" ", "")


def test_without_a_signed_head_the_pack_says_why(home):
    from station.reports.evidence import evidence_of_run
    from station.software_id import software_id

    found = evidence_of_run(home, "last", software_id())
    for one in found.runs[0].proofs:
        assert one.file == ""
        assert "there is no signed head" in one.words


def test_progress_goes_from_nothing_to_all(failed):
    assert failed[2] == [0, 50, 100]


def test_work_stops_where_nobody_wants_it(week):
    from station.reports.evidence import evidence_of_run
    from station.software_id import software_id

    with watched(lambda _: None, lambda: False), pytest.raises(GivenUp):
        evidence_of_run(week.home, week.runs[0], software_id())


def test_evidence_of_a_lot_takes_in_every_run_that_could_hold_it(station, week, tmp_path):
    planted = plant(week, Planted.HELD_LOT)
    words = ("evidence", "--lot", planted.name, "--home", week.home, "--out", tmp_path / "lot")
    document = station(*words, "--json").document
    assert [one["run"] for one in document["runs"]] == [week.runs[planted.run.number - 2]]
    assert planted.name in document["lots"]
    entries = table(tmp_path / "lot" / "entries.csv")
    assert any(row["kind"] == "hold" and row["about"] == planted.name for row in entries)


def test_the_same_evidence_gives_the_same_bytes(failed):
    from station.reports.evidence_pdf import evidence_pdf

    found, folder, _ = failed
    assert evidence_pdf(found) == (folder / "evidence.pdf").read_bytes()


def test_a_changed_journal_is_said_first(station, week, tmp_path):
    home = copytree(week.home, tmp_path / "home")
    connection = sqlite3.connect(home / "station.sqlite")
    connection.execute("UPDATE pack SET operator = 'P99' WHERE id = 7")
    connection.commit()
    connection.close()
    words = ("evidence", "--run", week.runs[0], "--home", home, "--out", tmp_path / "x", "--json")
    document = station(*words).document
    assert document["journal_whole"] is False
    assert document["open"][0].startswith("THE JOURNAL DOES NOT HOLD")


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ((), "give one of --run UID or --lot CODE"),
        (("--run", "last", "--lot", "X"), "give one of --run UID or --lot CODE"),
        (("--run", "nothing"), "run 'nothing'"),
        (("--lot", "NOTHING"), "input lot 'NOTHING'"),
    ],
)
def test_wrong_options_are_refused_in_words(station, week, tmp_path, words, said):
    result = station("evidence", *words, "--home", week.home, "--out", tmp_path / "x")
    assert result.code == 2
    assert said in " ".join(result.err.split())
