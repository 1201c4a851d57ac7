"""Recalls of lots that a real line packed, changed and held, and their paper and table."""

import csv
import io
from datetime import UTC, date, datetime
from decimal import Decimal
from fractions import Fraction

import pypdfium2 as pdfium
import pytest

from station.core.balance import Water
from station.core.mass import Mass
from station.core.receiving import Delivery, delivery_fact
from station.errors import BadInput
from station.reports.period import period
from station.reports.recall import Scope, recall
from station.reports.recall_back import look_back
from station.reports.recall_csv import recall_csv
from station.reports.recall_pdf import recall_pdf
from station.reports.recall_words import account
from station.reports.serial_scan import serial_of
from tests.station.line.lot_rig import LotLine, lot
from tests.station.store.old_runs import note_of_purge

NOW = datetime(2026, 11, 25, 18, tzinfo=UTC)


@pytest.fixture
def make(tmp_path):
    lines = []

    def line(**options):
        lines.append(LotLine(tmp_path / f"home{len(lines)}", **options))
        return lines[-1]

    yield line
    for one in lines:
        one.close()


def ask(asked, *lines, scope=Scope.LOT, **more):
    return recall([line.home for line in lines], scope, asked, NOW, **more)


def serials(found):
    return [pack.serial for one in found.stations for pack in one.packs]


def test_an_overlap_of_40_bags_recalls_exactly_the_old_and_the_overlap(make):
    line = make()
    line.start("ROM-1", "CAR-7")
    old = line.bags(12)
    line.load("ROM-2")
    overlap = line.bags(40)
    line.empty("ROM-1")
    line.bags(9)
    found = ask("ROM-1", line)
    assert serials(found) == old + overlap
    assert [one.group.bags for one in found.blends] == [12, 40]
    assert [[use.lot for use in one.blend.uses] for one in found.blends] == [
        ["CAR-7", "ROM-1"],
        ["CAR-7", "ROM-1", "ROM-2"],
    ]
    assert found.total.kilograms == Decimal("0.252") * 52
    sums = [sum(g.micrograms for g in by.values()) for by in (found.by_day, found.by_run)]
    assert sums == [found.total.micrograms] * 2


def test_a_lot_held_after_200_packs_holds_them_all_and_the_recall_says_so(make):
    line = make()
    line.start("ROM-1", "CAR-7")
    bags = line.bags(200)
    before = ask("ROM-1", line)
    assert (before.total.free, before.done) == (200, False)
    assert line.hold("ROM-1").recorded
    found = ask("ROM-1", line)
    assert serials(found) == bags
    assert (found.total.free, found.done, dict(found.total.counts)) == (0, True, {"held": 200})
    (its,) = found.lots
    assert (str(its.lot.status), its.holds[0].fact.details["reason"]) == (
        "held",
        "the grower called",
    )


def test_an_exercise_is_marked_and_asks_for_nothing(make):
    line = make()
    line.start("ROM-1", "CAR-7")
    line.bags(3)
    found = ask("ROM-1", line, drill=True)
    assert (found.done, found.total.free) == (True, 3)
    text = words(recall_pdf(found))
    assert "DRILL: Recall of input lot ROM-1" in text
    assert "nothing is to be taken off the market" in text


def test_two_stations_that_share_a_lot_answer_together(make):
    one, other = make(), make(station="B1")
    one.start("ROM-1", "CAR-7")
    here = one.bags(4)
    other.start("ROM-1", "CAR-8")
    there = other.bags(5)
    found = ask("ROM-1", one, other)
    assert serials(found) == here + there
    assert [one.station for one in found.blends] == ["QH/A1", "QH/B1"]
    assert found.total.kilograms == Decimal("0.252") * 9
    (its,) = found.lots
    assert its.stations == ("QH/A1", "QH/B1")
    alone = ask("CAR-8", one, other)
    assert {row.station for row in alone.blends} == {"QH/B1"}
    with pytest.raises(BadInput, match="ROM-9"):
        ask("ROM-9", one, other)
    with pytest.raises(BadInput, match="named twice"):
        ask("ROM-1", one, one)


def test_the_kilograms_of_a_lot_add_up_within_what_is_said(make):
    line = make()
    new = lot("ROM-9")
    line.store.record(
        (delivery_fact(Delivery(new, Mass.parse("30 kg")), "d1"),), line.clock.now(), "P01"
    )
    line.book._put(new)
    line.start("ROM-1", "CAR-7")
    line.load("ROM-9", "20")
    line.empty("ROM-1")
    line.bags(20)
    found = ask("ROM-9", line, water=Water(Decimal(0), Decimal(2)))
    (its,) = found.lots
    assert its.received == 30_000
    assert its.balance.loaded == 20_000
    share = next(one for one in line.run.product.recipe if one.component.code == "ROM")
    net = Fraction(20 * 252)
    used = its.balance.used
    assert used.high == net * Fraction(share.high) / 100
    assert used.low == net * Fraction(98, 100) * Fraction(share.low) / 100
    assert its.rest.high == 30_000 - used.low
    assert its.adds_up is True


def test_what_is_left_of_a_lot_is_not_known_once_bags_that_could_hold_it_were_purged(make):
    """Their kilograms are in no sum any more, so the rest of the lot would come out too large."""
    line = make()
    new = lot("LF-0")
    weighed = delivery_fact(Delivery(new, Mass.parse("30 kg")), "d1")
    line.store.record((weighed,), line.clock.now(), "P01")
    line.book._put(new)
    line.start("ROM-1", "CAR-7")
    line.load("LF-0", "20")
    line.bags(3)

    def told():
        (its,) = ask("LF-0", line).lots
        (one,) = (
            row for row in period(line.home, None, None, {}).yields if row.balance.lot == "LF-0"
        )
        return its.rest, its.adds_up, dict(account(its))["Must be left"], one.share

    rest, adds_up, _, share = told()
    assert adds_up is True
    assert rest.likely < 30_000
    assert share > 0
    line.store.record((note_of_purge(date(2020, 3, 4)),), line.clock.now(), "M01")  # of LF-0 too
    why = "not known: bags that could hold it were purged"
    assert told() == (None, None, why, None)


def test_a_bag_leads_back_to_its_lots_neighbours_checks_and_people(make):
    line = make()
    line.start("ROM-1", "CAR-7")
    bags = line.bags(50)
    back = look_back(line.home, bags[24])
    assert [(one.code, one.supplier) for one in back.trace.lots] == [
        ("CAR-7", "Aldermoor Growers"),
        ("ROM-1", "Aldermoor Growers"),
    ]
    assert [one.serial for one in back.trace.neighbours] == bags[4:24] + bags[25:45]
    assert ("P01", "led the run") in back.people
    assert ("P02", "packed the bag") in back.people
    assert ("P01", "lot move") in back.people
    found = ask(bags[24], line, scope=Scope.PACK)
    assert serials(found) == bags
    assert {one.lot.code for one in found.lots} == {"ROM-1", "CAR-7"}


@pytest.mark.parametrize(
    "text",
    [
        "A1-7K-000012",
        " a1-7k-000012 ",
        "]d201095212345432131726113021A1-7K-000012\x1d10A2632901",
        "]d2010952123454321310A2632901\x1d21A1-7K-000012",
        "https://id.example.org/01/09521234543213/10/A2632901/21/A1-7K-000012?17=261130",
    ],
)
def test_a_serial_is_read_as_typed_or_as_scanned(text):
    assert serial_of(text) == "A1-7K-000012"


def test_a_serial_behind_a_trade_item_that_holds_a_21_is_found():
    """GTIN 09521021234546 holds a 21, and AI 21 follows it without a separator (fixed length)."""
    assert serial_of("]C1010952102123454621A1-7K-000012") == "A1-7K-000012"


def test_a_serial_of_a_station_named_like_an_identifier_is_no_element_string():
    assert serial_of("21-7K-000012") == "21-7K-000012"


def test_the_table_has_every_bag_and_no_cell_a_spreadsheet_would_reckon(make):
    line = make()
    line.start("ROM-1", "CAR-7")
    bags = line.bags(3)
    found = ask("ROM-1", line)
    rows = list(csv.DictReader(io.StringIO(recall_csv(found).decode())))
    assert [row["serial"] for row in rows] == bags
    assert {row["input_lots"] for row in rows} == {"CAR-7 ROM-1"}
    assert sum(Decimal(row["net"]) for row in rows) == 3 * 252
    assert not any(cell.startswith(("=", "+", "-", "@")) for row in rows for cell in row.values())


def test_paper_names_ranges_of_serials_and_is_the_same_twice(make):
    line = make()
    line.start("ROM-1", "CAR-7")
    bags = line.bags(5)
    found = ask("ROM-1", line)
    text = words(recall_pdf(found))
    assert bags[0] in text
    assert bags[-1] in text
    assert bags[2] not in text
    assert recall_pdf(found) == recall_pdf(found)


def words(pdf):
    document = pdfium.PdfDocument(pdf)
    return "\n".join(page.get_textpage().get_text_range() for page in document)


def test_every_kilogram_of_weighed_lots_is_found_again_within_what_is_said(make):
    """Bags by a recipe of exact shares: what truly lies in the bins is in the span of the rest."""
    line = make()
    came = {"ROM-A": ("ROM", 12), "ROM-B": ("ROM", 8), "CAR-A": ("CAR", 6)}
    for number, (code, (component, kilograms)) in enumerate(came.items()):
        new = lot(code, component)
        fact = delivery_fact(Delivery(new, Mass.parse(f"{kilograms} kg")), f"d{number}")
        line.store.record((fact,), line.clock.now(), "P01")
        line.book._put(new)
    line.start("ROM-A", "CAR-A")
    share = {one.component.code: Fraction(one.percent) / 100 for one in line.run.product.recipe}
    truly = {code: Fraction(kilograms * 1000) for code, (_, kilograms) in came.items()}
    for bag in range(60):
        if bag == 25:
            line.load("ROM-B", "8")
        if bag == 35:
            line.empty("ROM-A")
        line.bag()
        leaf = "ROM-A" if bag < 31 else "ROM-B"  # in the overlap nobody knows which
        truly[leaf] -= share["ROM"] * 252
        truly["CAR-A"] -= share["CAR"] * 252
    for code, left in truly.items():
        (its,) = ask(code, line).lots
        assert its.rest.holds(left), code
        assert its.adds_up
