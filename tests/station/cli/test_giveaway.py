"""``station giveaway`` and ``station report``: totals that agree to the last digit in every way."""

import csv
from decimal import Decimal
from io import BytesIO

import openpyxl
import pypdfium2
import pytest

from station.app.week.tally import kilograms
from station.store.label_rolls import roll_accounts
from station.store.queries import summary
from tests.station.cli.conftest import DEMO

WAYS = ("product", "hour", "position", "day", "run")


@pytest.mark.parametrize("by", WAYS)
def test_rows_add_up_to_what_was_packed_whatever_they_are_put_together_by(station, week, by):
    found = station("giveaway", "--by", by, "--home", week.home, "--json").document
    rows, total = found["rows"], found["total"]
    for count in ("packs", "in_batch", "set_aside", "held", "labels"):
        assert sum(row[count] for row in rows) == total[count]
    for mass in ("net_kg", "nominal_kg", "given_away_kg"):
        assert sum(Decimal(row[mass]) for row in rows) == Decimal(total[mass])
    assert total["packs"] == week.whole.bags
    assert total["set_aside"] == week.whole.rejects
    assert total["labels"] == week.whole.labels
    assert Decimal(total["net_kg"]) == Decimal(kilograms(week.whole.grams))


def test_verbs_agree_on_packs_rejects_labels_and_kilograms_of_the_week(station, week):
    total = station("giveaway", "--home", week.home, "--json").document["total"]
    report = station("report", "--home", week.home, "--json").document
    assert report["total"] == total
    days = [day.isoformat() for day in week.days]
    rejects = [station("rejects", "--day", day, "--home", week.home, "--json") for day in days]
    assert sum(one.document["count"] for one in rejects) == total["set_aside"]
    assert sum(report["rejects"].values()) == total["set_aside"]
    assert sum(one.used for one in roll_accounts(week.home)) == total["labels"]
    counts = summary(week.home)
    assert counts.packs == total["packs"]
    assert counts.good + total["held"] == total["in_batch"]
    assert sum(one["packs"] for one in report["runs"]) == total["packs"]


def test_records_of_each_day_hold_the_same_bags(station, week):
    day = week.days[0].isoformat()
    record = station("record", "--day", day, "--home", week.home, "--json").document
    total = station("giveaway", "--from", day, "--to", day, "--home", week.home, "--json").document
    assert sum(run["whole"]["n"] for run in record["runs"]) == total["total"]["in_batch"]
    left = sum(len(run["not_in_batch"]) for run in record["runs"])
    assert left == total["total"]["set_aside"]


def test_giveaway_by_hand(station, shift):
    """90 slaw bags of 343 g but one of 340 g, one of 329 g aside: 89 x 3 g above nominal."""
    found = station("giveaway", "--home", shift.home, "--config", DEMO, "--json").document
    slaw = next(row for row in found["rows"] if row["name"] == "SLAW-340")
    assert (slaw["packs"], slaw["set_aside"]) == (91, 1)
    assert slaw["given_away_kg"] == "0.267"
    assert slaw["given_away_percent"] == "0.873"  # 267 of 30600 g
    assert slaw["money"] is None  # the demo gives it no price


def test_money_is_the_kilograms_at_the_price_of_the_product(station, week):
    words = ("giveaway", "--home", week.home, "--config", DEMO, "--json")
    row = next(r for r in station(*words).document["rows"] if r["name"] == "ROCKET-SPINACH-200")
    assert Decimal(row["money"]) == Decimal(row["given_away_kg"]) * Decimal("6.40")


def test_tables_are_written_as_csv_and_xlsx(station, week, tmp_path):
    for name in ("away.csv", "away.xlsx"):
        assert station("giveaway", "--home", week.home, "--out", tmp_path / name).code == 0
    rows = list(csv.DictReader((tmp_path / "away.csv").read_text(encoding="utf-8").splitlines()))
    sheet = openpyxl.load_workbook(tmp_path / "away.xlsx").worksheets[0]
    assert rows[-1]["product"] == "all"
    assert int(rows[-1]["packs"]) == week.whole.bags
    assert [cell.value for cell in sheet[1]][:2] == ["product", "packs"]
    assert sheet.cell(len(rows) + 1, 2).value == week.whole.bags


def test_a_report_is_written_as_pdf_and_tables(station, week, tmp_path):
    pdf, book = tmp_path / "week.pdf", tmp_path / "week.xlsx"
    words = ("report", "--home", week.home, "--config", DEMO, "--pdf", pdf, "--out", book)
    assert station(*words).code == 0
    document = pypdfium2.PdfDocument(pdf.read_bytes())
    text = "\n".join(page.get_textpage().get_text_bounded() for page in document)
    document.close()
    for said in ("Given away by product", "Yield by input lot", "Stops", "does not fit", "break"):
        assert said in text
    names = openpyxl.load_workbook(BytesIO(book.read_bytes())).sheetnames
    assert names[-5:] == ["runs", "yields", "stops", "rejects", "entries"]
    assert station(*words).code == 2, "a file that is there stays"


def test_a_day_is_reported_with_its_timeline(station, week, tmp_path):
    pdf = tmp_path / "day.pdf"
    day = week.days[1].isoformat()
    words = ("report", "--home", week.home, "--day", day, "--pdf", pdf, "--json")
    document = station(*words).document
    assert document["from"] == document["to"] == day
    assert {stop["reason"] for stop in document["stops"]} == {"break", "film or labels"}
    assert all(0.9 < one["share"] < 1.05 for one in document["yields"])
    assert pdf.read_bytes().startswith(b"%PDF")


def test_the_same_period_gives_the_same_bytes(station, week, tmp_path):
    for name in ("a.pdf", "b.pdf"):
        station("report", "--home", week.home, "--pdf", tmp_path / name)
    assert (tmp_path / "a.pdf").read_bytes() == (tmp_path / "b.pdf").read_bytes()


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("giveaway", "--by", "shoe"), "give one of product, hour"),
        (("giveaway", "--from", "2001-01-01", "--to", "2001-01-02"), "on record are"),
        (("giveaway", "--from", "2026-11-19", "--to", "2026-11-18"), "is later than"),
        (("giveaway", "--out", "away.txt"), "ends in .csv or .xlsx"),
        (("report", "--day", "2026-11-18", "--to", "2026-11-18"), "leave out --from and --to"),
        (("report", "--out", "away.txt"), "end in .xlsx or .csv"),
    ],
)
def test_wrong_options_are_refused_in_words(station, week, words, said):
    result = station(*words, "--home", week.home)
    assert result.code == 2
    assert said in " ".join(result.err.split())
