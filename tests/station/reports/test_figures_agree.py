"""Every figure told about the same bags is that of a plain list, whatever was done with them."""

from collections import Counter

import pytest

from station.core.balance import Water
from station.line.numbers import Span
from station.reports.batch import batch_record
from station.reports.evidence import evidence_of_run, rejects_undecided
from station.reports.giveaway import By, period_sums
from station.reports.handover import handover
from station.reports.recall import Scope, recall
from station.reports.traceability import of_day
from station.software_id import software_id
from station.store.inbox import day_counts, inbox
from station.store.ledger import ledger_and_bin
from station.store.lot_usage import packed_with
from station.store.open_holds import open_holds
from station.store.queries import rejects_of_day, run_tally, trace_pack
from station.store.rebuild import rebuild
from station.store.release_list import Wanted, release_list
from station.store.run_counts import count_run
from station.store.verify import verify
from station.store.weighed import packs_of_run
from tests.station.line.lot_rig import DAY
from tests.station.reports.plain_floor import DOUBTFUL, Floor
from tests.station.store.test_lot_facts import dump

IN_HOUSE = ("good", "released")


@pytest.fixture(params=[7, 10])
def floor(request, tmp_path):
    one = Floor(tmp_path / "home", request.param)
    try:
        one.work(100)
        yield one
    finally:
        one.line.close()


def qualities(bags):
    return Counter(bag.quality for bag in bags)


def of_run(floor, uid):
    bags = [bag for bag in floor.bags if bag.run == uid]
    return bags, [bag for bag in bags if bag.sold]


def net(bags):
    return sum(bag.net for bag in bags)


def test_whatever_is_told_of_bags_is_what_became_of_them(floor):
    assert len(floor.bags) > 20
    assert len(qualities(floor.bags)) > 7
    bags_alone(floor)
    for uid in {bag.run for bag in floor.bags}:
        figures_of_run(floor, uid)
    on_screen(floor)
    of_the_day(floor)
    for_quality(floor)
    for code in ("ROM-1", "ROM-2", "CAR-7"):
        of_lot(floor, code)
    floor.line.close()
    assert verify(floor.home).whole
    before = dump(floor.home / "station.db")
    rebuild(floor.home)
    assert dump(floor.home / "station.db") == before


def bags_alone(floor):
    for bag in floor.bags:
        found = trace_pack(floor.home, bag.serial)
        assert (found.quality, found.label, found.reason) == (bag.quality, bag.label, bag.reason)
        assert {lot.code for lot in found.lots} == bag.lots


def figures_of_run(floor, uid):
    bags, sold = of_run(floor, uid)
    wanted = (len(sold), net(sold))
    tally, pallet = run_tally(floor.home, uid), count_run(floor.home, uid)
    assert (tally.good, tally.net_micrograms) == (pallet.bags, pallet.net_ug) == wanted
    assert tally.rejects == len(bags) - len(sold)
    record = batch_record(floor.home, packs_of_run(floor.home, uid))
    assert record.figures.batch.packs.n == len(sold)
    assert sum(hour.judged.n for hour in record.hours) == len(sold)
    evidence = evidence_of_run(floor.home, uid, software_id())
    (one,) = evidence.runs
    assert set(rejects_undecided(one)) == {b.serial for b in bags if b.quality == "reject"}
    assert set(evidence.in_doubt) == {bag.serial for bag in bags if bag.label in DOUBTFUL}


def on_screen(floor):
    bags, sold = of_run(floor, floor.line.run.id)
    tally = floor.line.state.tally
    assert (tally.good, tally.rejects) == (len(sold), len(bags) - len(sold))
    assert tally.net_micrograms == net(sold)
    figures = floor.numbers.figures(Span.RUN)
    assert (figures.run.id, figures.batch.packs.n) == (floor.line.run.id, len(sold))


def of_the_day(floor):
    sold = [bag for bag in floor.bags if bag.sold]
    aside = [bag for bag in floor.bags if not bag.sold]
    sums = period_sums(floor.home, None, None, {})
    for key in By:
        rows = sums.by(key)
        assert sum(row.packs for row in rows) == len(floor.bags)
        assert sum(row.in_batch for row in rows) == len(sold)
        assert sum(row.set_aside for row in rows) == len(aside)
        assert sum(row.held for row in rows) == qualities(sold)["held"]
        assert sum(row.net for row in rows) == net(sold)
    assert dict(sums.rejects()) == Counter(bag.reason for bag in aside)
    assert day_counts(floor.home, DAY) == (len(floor.bags), len(aside))
    told = {(row.serial, row.quality, row.reason) for row in rejects_of_day(floor.home, DAY)}
    assert told == {(bag.serial, bag.quality, bag.reason) for bag in aside}
    rows, state = ledger_and_bin(floor.home, DAY)
    assert {row.serial for row in rows if row.open} == {
        bag.serial for bag in aside if bag.quality == "reject"
    }
    assert state.expected == sum(bag.quality in ("reject", "dumped") for bag in aside)
    sheet = handover(floor.home, DAY)
    assert sum(run.on_pallet for run in sheet.runs) == len(sold)
    assert sum(run.tally.rejects for run in sheet.runs) == len(aside)
    labelled = [bag for bag in floor.bags if bag.label != "none"]
    made = of_day(floor.home, DAY, Water()).transformations
    assert sum(one.labelled.bags for one in made) == len(labelled)


def for_quality(floor):
    held = {uid: qualities(bags)["held"] for uid, bags in floor.holds.items()}
    assert {one.uid: one.bags for one in open_holds(floor.home)} == held
    waiting = release_list(floor.home, Wanted({}, scale=False), DAY)
    packed = {bag.run: len(of_run(floor, bag.run)[1]) for bag in floor.bags}
    assert {one.key: one.bags for one in waiting} == held | packed
    words = [item.words for item in inbox(floor.home, DAY)]
    doubts = {bag.serial for bag in floor.bags if bag.label in DOUBTFUL}
    assert sum("is in doubt" in one for one in words) == len(doubts)
    assert set(handover(floor.home, DAY).in_doubt) == doubts
    open_rejects = qualities(floor.bags)["reject"]
    if open_rejects:
        assert f"{open_rejects} rejects of {DAY} wait for a decision" in words


def of_lot(floor, code):
    bags = [bag for bag in floor.bags if code in bag.lots]
    found = recall([floor.home], Scope.LOT, code, floor.line.clock.now().utc)
    assert found.total.counts == qualities(bags)
    assert found.total.micrograms == net(bags)
    gone = [bag for bag in bags if bag.shipment]
    here = [bag for bag in bags if bag.sold and not bag.shipment]
    assert (found.where.gone.bags, found.where.here.bags) == (len(gone), len(here))
    free = sum(bag.quality in IN_HOUSE for bag in here)
    assert found.where.free == sum(one.group.free for one in found.blends) == free
    packed = packed_with(floor.home, [code])
    back = ("reject", "reworked")
    assert sum(one.rejected for one in packed) == net(b for b in bags if b.quality in back)
    assert sum(one.again for one in packed) == net(b for b in bags if b.quality == "reworked")
    kept = [bag for bag in bags if bag.quality not in (*back, "repacked")]
    assert sum(one.kept for one in packed) == net(kept)
    told = {one.lot.code: one.balance for one in found.lots}[code]
    on_line = [row.balance for row in floor.line.duty.rows() if row.balance.lot == code]
    assert [(one.used, one.loaded) for one in on_line] == [(told.used, told.loaded)] * len(on_line)
