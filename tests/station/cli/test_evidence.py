"""``station evidence``: one folder that answers for a run or a lot, and says what is open."""

import csv
import hashlib
import json
import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from shutil import copytree

import pypdfium2
import pytest

from station.app.week.plan import Planted
from station.core.backup_fact import made_fact
from station.core.facts import FactRecord
from station.core.long_work import GivenUp, watched
from station.core.pack import Moment
from station.reports.evidence_proof import not_proved_words
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


def test_a_picture_stands_with_its_heading_and_its_caption(failed):
    """However much of the page is taken before them."""
    from station.reports import paper
    from station.reports.batch_pdf import run_story
    from station.reports.evidence_pdf import specimen_story

    run = failed[0].runs[0]
    paper.load_faces()
    for taken in range(0, 250, 25):
        for story, head, caption in (
            (specimen_story(run), "Specimen of the label", "Drawn again"),
            (run_story(run.record), "Fills in the order packed", "dots: bags"),
        ):
            pdf = paper.write("test", "", [paper.gap(taken), *story])
            document = pypdfium2.PdfDocument(pdf)
            pages = [page.get_textpage().get_text_bounded() for page in document]
            (at,) = (number for number, words in enumerate(pages) if head in words)
            kinds = {one.type for one in document[at].get_objects()}
            document.close()
            assert caption in pages[at], (head, taken)
            if head.startswith("Specimen"):
                assert pypdfium2.raw.FPDF_PAGEOBJ_IMAGE in kinds, taken


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
    assert document["journal_whole"] is None, "nobody asked for it"
    (own,) = (one["own_entries"] for one in document["runs"])
    assert own["hold"] is True
    assert sum(one["entries"] for one in own["under"]) == own["read"]
    assert own["under_no_head"] == 0
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


def test_the_paper_says_what_was_proved_and_what_was_not(failed):
    found, folder, _ = failed
    text = " ".join(text_of(folder / "evidence.pdf").split())
    own = found.runs[0].own
    head = own.under[0].head
    assert f"entries {own.first} to {own.last}, from its start to its end" in text
    assert f"these {own.entries} entries are under the head over {head.head.size} entries" in text
    assert f"signed at {head.at:%Y-%m-%d %H:%M:%S} UTC" in text
    assert "the rest of the journal was not read for this" in text
    assert "the record names no time at which all of it was read and checked" in text


def test_a_copy_that_was_checked_whole_is_named():
    at = Moment(datetime(2026, 11, 24, 18, 30, tzinfo=UTC), 0, "Europe/Dublin", 0)
    made = made_fact("b1", "A1-1.sqlite", 4711, "00" * 32, same_disk=False)
    said = " ".join(not_proved_words(FactRecord(made, at, "station", 4712)))
    assert "on the copy A1-1.sqlite up to entry 4711, at 2026-11-24 18:30:00 UTC" in said


def test_the_whole_journal_is_verified_where_it_is_asked(station, week, tmp_path):
    folder = tmp_path / "x"
    words = ("evidence", "--run", week.runs[0], "--home", week.home, "--out", folder)
    document = station(*words, "--whole-journal", "--json").document
    assert document["journal_whole"] is True
    assert document["journal_entries"] > document["runs"][0]["own_entries"]["read"]
    text = " ".join(text_of(folder / "evidence.pdf").split())
    assert "read from the first entry on, as was asked; whole:" in text
    assert "was not read for this" not in text


def damaged(week, folder, *statements):
    home = copytree(week.home, folder / "home")
    with closing(sqlite3.connect(home / "station.sqlite", isolation_level=None)) as connection:
        connection.execute("DROP TRIGGER journal_no_update")
        for statement in statements:
            connection.execute(statement)
    return home


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ("UPDATE pack SET operator = 'P99' WHERE id = 7", "operator is 'P99'"),
        (
            "UPDATE journal SET canonical = CAST(replace(CAST(canonical AS TEXT), '\"dwell_ms\":',"
            " '\"dwell_mt\":') AS BLOB) WHERE id = (SELECT entry_id FROM pack WHERE id = 7)",
            "was changed",
        ),
    ],
)
def test_damage_in_the_run_is_named_first_and_closes_the_exit_code(
    station, week, tmp_path, change, said
):
    home = damaged(week, tmp_path, change)
    words = ("evidence", "--home", home, "--json", "--run")
    result = station(*words, week.runs[0], "--out", tmp_path / "x")
    assert result.code == 1
    first = result.document["open"][0]
    assert first.startswith("THE ENTRIES OF ")
    assert "DO NOT HOLD" in first
    assert said in first
    assert "DOES NOT HOLD" in text_of(tmp_path / "x" / "evidence.pdf")
    other = station(*words, week.runs[1], "--out", tmp_path / "y").document
    assert other["runs"][0]["own_entries"]["hold"] is True, "the damage lies in another run"
    whole = station(*words, week.runs[1], "--out", tmp_path / "z", "--whole-journal").document
    assert whole["open"][0].startswith("THE JOURNAL DOES NOT HOLD")


def test_an_entry_that_cannot_be_read_at_all_is_named(station, week, tmp_path):
    home = damaged(
        week,
        tmp_path,
        "UPDATE journal SET canonical = x'7b7d' WHERE id = (SELECT entry_id FROM run LIMIT 1)",
    )
    result = station("evidence", "--run", week.runs[0], "--home", home, "--out", tmp_path / "x")
    assert result.code == 3
    said = " ".join(result.err.split())
    assert "was changed" in said
    assert "station journal verify" in said


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
