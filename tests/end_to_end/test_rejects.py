"""A sealed bag below its floor: recorded, ticketed through the printer's path, decided, linked."""

from dataclasses import replace

import pytest

from drivers.port import PortSettings
from labels.readback import scan
from station.app.assembly import Station
from station.core.dispositions import Disposition
from station.core.journal import EntryKind
from station.core.line_lots import LotMove, Move
from station.core.pack import Quality
from station.line.state import Verb
from station.store.facts import facts
from station.store.ledger import ledger
from station.store.queries import trace_pack
from tests.end_to_end.line import bench_line

PRODUCT = "SOUP-MIX-2270"
BAG_G = 26


def with_tickets(house):
    quality = replace(house.settings.quality, tickets=True)
    return replace(house, settings=replace(house.settings, quality=quality))


@pytest.fixture
def line(tmp_path):
    with bench_line(tmp_path, changed=with_tickets) as one:
        yield one


def weigh(line, net):
    before = line.watch.newest.last
    line.until(lambda state: state.verb is Verb.BAG_ON)
    line.bench.put_bag(BAG_G + net)
    state = line.until(lambda state: state.last is not None and state.last != before)
    line.until(lambda state: state.verb in (Verb.LIFT_BAG, Verb.SET_ASIDE, Verb.EMPTY_PAN))
    line.bench.lift()
    line.until(lambda state: state.verb is Verb.BAG_ON)
    return state.last.serial


def enter(line, made, who):
    line.station.line.enter(made, who)
    answer = line.watch.next_entry(10)
    assert answer.recorded, answer.words


def test_a_reject_has_a_ticket_that_no_till_takes_and_a_scan_of_it_finds_its_row(line):
    line.open_run(PRODUCT)
    light = weigh(line, 2240)
    good = weigh(line, 2281)
    desk = line.station.quality.rejects

    [row] = desk.rows(desk.today)
    assert (row.serial, row.open, row.net.digits) == (light, True, "2240")
    line.until(lambda _: facts(line.station.home, (EntryKind.TICKET,)))
    [ticket] = facts(line.station.home, (EntryKind.TICKET,))
    assert (ticket.fact.subject, ticket.fact.result) == (light, "printed")

    paper = line.labels / f"{light}-REJECT.pdf"
    [code] = scan(paper.read_bytes())
    sent = code.identifier + code.data.decode()
    # GS1 General Specifications: (90) is for internal use between partners; no (01) for a till
    assert sent == f"]d290REJECT/{light}"
    assert desk.serial(sent) == light
    assert not (line.labels / f"{light}.pdf").exists()
    assert (line.labels / f"{good}.pdf").is_file()

    made = desk.decide([row], Disposition.REWEIGH, "L01", "seal was wet", into=good)
    enter(line, made, "L01")
    assert trace_pack(line.station.home, light).quality is Quality.REPACKED
    [settled] = ledger(line.station.home, desk.today)
    assert settled.decision.decided.into == good


def test_rework_goes_on_the_line_with_the_union_of_lots_and_the_earliest_use_by(line):
    line.open_run(PRODUCT)
    serials = {weigh(line, 2240), weigh(line, 2235)}
    desk = line.station.quality.rejects
    rows = desk.rows(desk.today)
    assert {row.serial for row in rows} == serials
    made = desk.decide(rows, Disposition.REWORK, "L01", "light bags opened")
    enter(line, made, "L01")
    rows = desk.rows(desk.today)
    assert {row.quality for row in rows} == {Quality.REWORKED}
    for row in rows:
        decided = row.decision.decided
        assert set(decided.lots) == set(row.lots)
        assert decided.use_by == min(one.use_by for one in rows)
    assert {use.lot for use in line.watch.newest.run.lot_set.uses} >= {use.lot for use in row.lots}


def test_a_station_started_anew_shows_the_lots_it_showed_after_rework_and_waste(tmp_path):
    with bench_line(tmp_path, changed=with_tickets) as line:
        line.open_run(PRODUCT)
        light, burst = weigh(line, 2240), weigh(line, 2281)
        line.station.line.set_aside("burst seal")
        line.until(lambda _: trace_pack(line.station.home, burst).quality is Quality.REJECT)
        desk, lots = line.station.quality.rejects, line.station.lots
        rows = {row.serial: row for row in desk.rows(desk.today)}
        enter(line, desk.decide([rows[light]], Disposition.REWORK, "L01", "opened"), "L01")
        enter(line, desk.decide([rows[burst]], Disposition.DUMP, "L01", "wet", "P01"), "L01")
        weigh(line, 2281)
        blend = trace_pack(line.station.home, light).record.draft.blend_lot
        enter(line, lots.moves((LotMove(Move.EMPTY, blend),)), "L01")
        before, on_line = lots.rows(), {row.lot for row in lots.rows()}
        assert blend not in on_line
        assert any(row.balance.used.high > 0 for row in before)
    anew = Station(line.house, tmp_path, PortSettings("none"), tmp_path / "labels")
    after = {row.lot: row for row in anew.lots.rows()}
    anew.store.close()
    for row in before:
        assert after.pop(row.lot) == replace(row, listed=False), row.lot  # no run is open yet
    assert not after
