"""``station record``: the same figures as ``station batch``, on paper and as a table."""

import csv
import io
from dataclasses import replace
from datetime import date

import pypdfium2
import pytest
from pypdfium2 import raw

from station.config.load import load
from station.core.ids import new_uid
from station.core.mass import Mass, Unit
from station.line.opening import Catalogue, open_run
from station.line.state import RunChoice
from station.reports.batch_csv import COLUMNS, safe
from station.store.writer import StationStore
from tests.station.cli.conftest import DEMO, LOTS, SteppingClock, draft

DAY = "2026-11-25"


def text_of(pdf: bytes) -> str:
    document = pypdfium2.PdfDocument(pdf)
    pages = [page.get_textpage().get_text_bounded() for page in document]
    document.close()
    return "\n".join(pages)


@pytest.fixture
def slaw(station, shift, tmp_path):
    """The finished run of the shift, written."""
    pdf, table = tmp_path / "slaw.pdf", tmp_path / "slaw.csv"
    call = ("record", "--home", shift.home, "--run", shift.slaw.id, "--pdf", pdf, "--csv", table)
    done = station(*call, "--json")
    assert done.code == 0
    (document,) = done.document["runs"]
    return pdf.read_bytes(), table.read_bytes(), document


def test_the_whole_run_has_the_figures_of_the_batch_verb(station, shift, slaw):
    _, _, document = slaw
    judged = station("batch", "--home", shift.home, "--run", shift.slaw.id, "--json").document
    shared = ("n", "mean", "mean_exact", "s", "t1_count", "t1_accept", "t2_count", "accepted")
    assert {name: document["whole"][name] for name in shared} == {
        name: judged[name] for name in shared
    }


def test_the_chance_is_that_of_the_forecast_verb(station, shift, slaw):
    said = station("forecast", "--home", shift.home, "--run", shift.slaw.id, "--json").document
    assert slaw[2]["whole"]["passing"] == pytest.approx(said["passing"], abs=1e-6)


def test_hourly_output_is_judged_hour_by_hour(slaw):
    """EU 76/211/EEC Annex II 2.1: at the end of the line the batch is the hourly output."""
    hours = {hour["batch"]: hour["n"] for hour in slaw[2]["hours"]}
    assert hours == {f"{DAY} 08:00": 29, f"{DAY} 09:00": 60, f"{DAY} 10:00": 1}
    assert sum(hours.values()) == slaw[2]["whole"]["n"]


def test_the_paper_says_what_the_document_says(shift, slaw):
    pdf, _, document = slaw
    words = text_of(pdf)
    whole, run = document["whole"], shift.slaw
    for said in (
        "THE BATCH PASSES",
        whole["mean"],
        f"{whole['t1_count']} of {whole['t1_accept']}",
        document["rule_set"],
        document["version"],
        run.blend_lot,
        run.id,
        run.software,
        document["head"]["hash"],
        document["not_in_batch"][0],
        "no official test",
        "The verified indication of the scale prevails",
        *(use.lot for use in run.lot_set.uses),
    ):
        assert said in words, said


def test_nothing_on_paper_leaves_the_page(slaw):
    document = pypdfium2.PdfDocument(slaw[0])
    for page in document:
        width, height = page.get_size()
        for thing in page.get_objects():
            if thing.type == raw.FPDF_PAGEOBJ_TEXT:
                left, foot, right, top = thing.get_bounds()
                assert left >= 0
                assert right <= width
                assert foot >= 0
                assert top <= height
    document.close()


def test_the_same_record_gives_the_same_bytes(station, shift, slaw, tmp_path):
    again = tmp_path / "again.pdf"
    station("record", "--home", shift.home, "--run", shift.slaw.id, "--pdf", again)
    assert again.read_bytes() == slaw[0]


def test_every_bag_is_in_the_table_with_what_judges_it(shift, slaw):
    rows = list(csv.DictReader(io.StringIO(slaw[1].decode())))
    assert tuple(rows[0]) == COLUMNS
    assert len(rows) == 91
    aside = [row for row in rows if row["in_batch"] == "0"]
    assert [(row["net"], row["below_T1"], row["quality"]) for row in aside] == [
        ("329", "1", "reject")
    ]
    assert {row["T1"] for row in rows} == {"329.8"}  # 340 g less 3 % (76/211/EEC Annex I 2.4)


@pytest.mark.parametrize("start", ["=", "+", "-", "@", "\t", "\r"])
def test_no_text_becomes_a_formula(start):
    """Signs a spreadsheet takes for a formula: OWASP, "CSV Injection"."""
    assert safe(f"{start}1+1") == f"'{start}1+1"
    assert safe("clear bag") == "clear bag"


def test_a_day_has_all_its_runs(station, shift, tmp_path):
    pdf = tmp_path / "day.pdf"
    done = station("record", "--home", shift.home, "--day", DAY, "--pdf", pdf, "--json")
    runs = done.document["runs"]
    assert [run["blends"][0]["blend_lot"] for run in runs] == [
        shift.slaw.blend_lot,
        shift.soup.blend_lot,
    ]
    assert [run["open"] for run in runs] == [False, True]
    words = text_of(pdf.read_bytes())
    for said in ("AS IT STANDS", "250 of 400", "Mean needed"):
        assert said in words


@pytest.fixture
def light(tmp_path):
    """Give a function that packs bags of 340 g whose floor was set 5 g lower."""
    house, clock = load(DEMO, date(2026, 11, 25)), SteppingClock()
    product = house.products["SLAW-340"]
    lower = replace(product, floor=Mass.of("335"))
    products = {**house.products, "SLAW-340": lower}
    catalogue = Catalogue(
        products, house.lots, "L1", house.settings.cut_off, "bench", Unit.GRAM, "test"
    )

    def pack(nets):
        home = tmp_path / "light"
        with StationStore.open(home, "QH", "A1", clock) as store:
            at = clock.now()
            store.add_lots(tuple(house.lots.values()), at, "L01")
            choice = RunChoice("SLAW-340", 3, LOTS, "L01", "P01")
            opened = open_run(choice, catalogue, at, 1, new_uid(at))
            store.start_run(opened, at)
            for net in nets:
                store.add_pack(draft(opened, clock, net))
        return home

    return pack


def test_a_batch_that_does_not_pass_says_so_with_exit_1(station, light, tmp_path):
    """Mean 339.5 g of 340 g: EU 76/211/EEC Annex I 1.1."""
    pdf = tmp_path / "light.pdf"
    home = light(["339", "340"] * 30)
    done = station("record", "--home", home, "--run", "last", "--pdf", pdf, "--json")
    assert done.code == 1
    assert done.document["runs"][0]["whole"]["mean"] == "339.5"
    assert "THE BATCH DOES NOT PASS" in text_of(pdf.read_bytes())


@pytest.mark.parametrize("bags", [0, 1, 2])
def test_a_run_of_hardly_any_bags_has_a_record(station, light, tmp_path, bags):
    pdf = tmp_path / "few.pdf"
    done = station(
        "record", "--home", light(["342"] * bags), "--run", "last", "--pdf", pdf, "--json"
    )
    assert done.code == (0 if bags else 1)
    words = text_of(pdf.read_bytes())
    assert ("NO VERDICT: no bag in the batch" if bags == 0 else "THE BATCH PASSES") in words


def test_a_file_that_is_there_is_kept(station, packed, tmp_path):
    pdf = tmp_path / "kept.pdf"
    pdf.write_bytes(b"kept")
    call = ("record", "--home", packed.home, "--run", "last", "--pdf", pdf)
    refused = station(*call, "--json")
    assert refused.code == 2
    assert "already" in refused.error["title"]
    assert pdf.read_bytes() == b"kept"
    assert station(*call, "--force").code == 0
    assert pdf.read_bytes().startswith(b"%PDF")


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ((), "give one of --run UID, --blend LOT or --day DATE"),
        (("--run", "last", "--day", DAY), "give one of"),
        (("--day", "2026-01-02"), "no run was packed"),
        (("--run", "last", "--pdf", "/nowhere/at/all.pdf"), "its folder is not there"),
    ],
)
def test_what_cannot_be_recorded_is_refused_in_words(station, packed, arguments, words):
    refused = station("record", "--home", packed.home, *arguments, "--json")
    assert refused.code == 2
    assert words in refused.error["detail"]
