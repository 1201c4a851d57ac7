"""The lots of a station as its record left them; the label that must carry them."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest

from drivers.printer.file import FolderPrinter
from labels.design import PACK_100_BY_60
from labels.pdf import LabelDrawer
from station.app.label_desk import PrintingDesk
from station.app.lot_gates import lot_gates
from station.app.places import demo_settings
from station.config.load import load
from station.config.lot_rules import LotSettings
from station.core.clearance import Point, cleared_fact
from station.core.line_lots import LotMove, Move
from station.core.lots import LotError, LotStatus
from station.core.product import Component, Share
from station.core.receiving import Notes
from tests.station.line.lot_rig import LOTS, LotLine, lot, with_shares
from tests.station.line.scenario import make_product

DAY = date(2026, 11, 25)


@pytest.fixture
def line(tmp_path):
    product = with_shares(make_product(), ROM=(66, 70, 74), CAR=(26, 30, 34))
    line = LotLine(tmp_path / "home", products=(product,))
    yield line
    line.close()


def house(line):
    """The demo packhouse on line A, so that its station reads what the line recorded."""
    found = load(demo_settings(), DAY)
    settings = replace(found.settings, line="A", site="QH", lots=LotSettings())
    return replace(found, settings=settings)


def restarted(line):
    return lot_gates(
        house(line), line.home, line.clock, line.desk.rehearse, line.store.next_blend_number
    )


def test_a_station_started_anew_knows_its_line_its_holds_and_what_is_left(line):
    line.load("ROM-1", "40")
    line.start("ROM-1", "CAR-7")
    line.bags(4)
    line.load("ROM-2", "60")
    line.bags(3)
    line.hold("CAR-8")
    gates = restarted(line)
    assert gates.duty.line.codes == line.duty.line.codes == ("CAR-7", "ROM-1", "ROM-2")
    assert gates.book["CAR-8"].status is LotStatus.HELD
    assert [one.fact.uid for one in gates.book.holds("CAR-8")] == ["hold-1"]
    before = {row.lot: row.balance for row in line.duty.rows()}
    after = {row.lot: row.balance for row in gates.duty.rows()}
    assert after == before
    assert after["ROM-1"].left.high == 40_000 - 4 * 252 * Decimal("0.66")


def test_a_station_started_anew_counts_every_run_of_one_product_and_set(line):
    line.load("ROM-1", "40")
    for bags in (3, 4, 2):
        line.start("ROM-1", "CAR-7")
        line.bags(bags)
        line.end()
    before = {row.lot: row.balance for row in line.duty.rows()}
    assert {row.lot: row.balance for row in restarted(line).duty.rows()} == before
    assert before["ROM-1"].left.high == 40_000 - 9 * 252 * Decimal("0.66")


def test_the_desk_receives_a_case_and_the_book_knows_it_at_once(line):
    gates = restarted(line)
    notes = gates.desk.scanned("]C110TR26-118")
    told = replace(notes, component="CARROT", supplier="Tarn Roots")
    code, facts = gates.desk.received(told, "7 °C on arrival")
    assert code == "TR26-118"
    for record in line.store.record(facts, line.clock.now(), "P01"):
        gates.duty.noted(record)
    assert gates.book[code].status is LotStatus.HELD
    assert gates.desk.lot(code) in gates.desk.known
    assert "Tarn Roots" in gates.desk.suppliers
    with pytest.raises(ValueError, match="received already"):
        gates.desk.received(told, "")


def test_the_desk_releases_what_people_hold_and_nothing_else(line):
    line.hold("CAR-8")
    gates = restarted(line)
    for record in line.store.record(gates.desk.release("CAR-8", "well"), line.clock.now(), "Q01"):
        gates.duty.noted(record)
    assert gates.book["CAR-8"].status is LotStatus.FREE
    with pytest.raises(LotError, match="no person holds it"):
        gates.desk.release("CAR-8", "well")


def test_a_lot_without_a_code_gets_one_of_the_site_s_own(line):
    code, _ = restarted(line).desk.received(Notes(component="CARROT", supplier="Tarn Roots"), "")
    assert code == "QH26329-001"


@pytest.fixture
def desk(tmp_path):
    return PrintingDesk(
        drawer=lambda _: LabelDrawer(PACK_100_BY_60),
        printer=FolderPrinter(tmp_path / "labels"),
        packer="Quince Hollow, Invented Lane 1",
        site="QH",
        station="A1",
        answer=lambda event: None,
        show=lambda pdf: None,
    )


def test_six_lots_of_twelve_characters_stand_on_the_real_label_and_one_too_many_is_refused(
    tmp_path, desk
):
    names = ("romaine", "carrot", "radicchio")
    codes = ("ROM", "CAR", "RAD")
    shares = (Decimal(50), Decimal(30), Decimal(20))
    product = replace(
        make_product(),
        recipe=tuple(
            Share(Component(code, name), share)
            for code, name, share in zip(codes, names, shares, strict=True)
        ),
    )
    lots = tuple(lot(f"{code}-26329-{n:02d}", code) for code in codes for n in range(1, 10))
    assert {len(one.code) for one in lots} == {12}
    line = LotLine(tmp_path / "home", products=(product,), lots=(*LOTS, *lots))
    line.desk.rehearse = desk.rehearse
    line.start(*(f"{code}-26329-01" for code in codes))
    for code in codes:
        answer = line.load(f"{code}-26329-02")
        assert answer.recorded, answer.words
    six = line.bag()
    assert len(line.run.lot_set.uses) == 6
    more = (f"{code}-26329-{n:02d}" for n in range(3, 10) for code in codes)
    before, refused = line.run, None
    for code in more:
        before, answer = line.run, line.load(code)
        if not answer.recorded:
            refused = answer
            break
    assert refused is not None, "no label is full of lots"
    assert "lots" in refused.words
    assert line.run == before
    assert code not in line.duty.line.codes
    assert line.recall("ROM-26329-02") == [six]
    line.close()


def test_a_signed_clear_line_takes_the_lots_off_that_the_run_does_not_name(line):
    first = line.start("ROM-1", "CAR-7")
    line.bags(2)
    line.end()
    line.start("ROM-2", "CAR-7")
    assert "ROM-1 is on the line and on no label" in line.state.because
    signed = cleared_fact("gate-1", first.id, dict.fromkeys(Point, True))
    assert line.enter(signed).recorded
    assert line.duty.line.codes == ("CAR-7", "ROM-2")
    assert line.state.closed == ()
    assert line.move(LotMove(Move.LOADED, "ROM-3")).recorded


def test_a_line_cleared_between_two_runs_is_empty_and_a_carried_lot_keeps_its_balance(line):
    line.load("CAR-7", "50")
    first = line.start("ROM-1", "CAR-7")
    line.bags(2)
    line.end()
    signed = cleared_fact("gate-1", first.id, dict.fromkeys(Point, True))
    assert line.enter(signed).recorded
    assert line.duty.line.codes == ()
    line.start("ROM-2", "CAR-7")
    line.bags(1)
    assert line.state.closed == ()
    assert line.duty.line.codes == ("CAR-7", "ROM-2")
    left = {row.lot: row.balance.left for row in line.duty.rows()}
    assert left["ROM-2"] is None
    assert left["CAR-7"].likely == 50_000 - 3 * 252 * Decimal("0.3")
