"""What a station says of its lots is the same before it stops and after it started anew.

Whatever happened to lots and bags meanwhile: both say what is on record.
"""

import random
from dataclasses import replace
from datetime import timedelta
from decimal import Decimal
from functools import cache

import pytest

from station.app import alarm_causes
from station.app.lot_gates import lot_gates
from station.app.places import demo_settings
from station.config.load import load
from station.config.lot_rules import LotSettings
from station.core.dispositions import Decided, Disposition, disposition_fact
from station.core.ids import new_uid
from station.core.label_life import Fate, Resolve
from station.core.line_lots import LotMove, Move, Overlap
from station.core.lot_set import LotUse
from station.core.lots import LotStatus
from station.core.mass import Mass
from station.core.product import Component, Share
from station.core.receiving import Delivery, delivery_fact
from station.line.events import LabelFailed
from station.line.lot_change import LotRules
from station.screens.lots_words import bar_of, left_words
from station.store.queries import trace_pack
from tests.station.line.lot_rig import DAY, LotLine, lot, with_shares
from tests.station.line.scenario import make_product

MIX = with_shares(make_product(), ROM=(66, 70, 74), CAR=(26, 30, 34))
SLAW = replace(
    MIX,
    code="TIDE-250",
    gtin="9521234000020",
    recipe=(
        Share(Component("CAR", "Carrot"), Decimal(60), Decimal(55), Decimal(65)),
        Share(Component("CAB", "Cabbage"), Decimal(40), Decimal(35), Decimal(45)),
    ),
)
LOTS = (
    *(lot(f"ROM-{number}") for number in (1, 2, 3)),
    *(lot(f"CAR-{number}", "CAR") for number in (7, 8)),
    lot("CAB-1", "CAB"),
    lot("CAB-9", "CAB", status=LotStatus.HELD),
)
LONGEST = timedelta(hours=2)
RULES = LotRules(Overlap(bags=40), LONGEST)


@pytest.fixture
def line(tmp_path):
    line = LotLine(tmp_path / "home", products=(MIX, SLAW), lots=LOTS, rules=RULES)
    yield line
    line.close()


@cache
def house():
    """The demo packhouse on line A, so that its station reads what the line recorded."""
    found = load(demo_settings(), DAY)
    settings = replace(found.settings, line="A", site="QH", lots=LotSettings(rules=RULES))
    return replace(found, settings=settings)


def restarted(line):
    return lot_gates(
        house(),
        line.home,
        line.clock,
        line.desk.rehearse,
        line.store.next_blend_number,
    )


def shown(duty, now):
    """All that pages, alarms and the packer's screen take from the duty of lots."""
    rows = {row.lot: replace(row, listed=True) for row in duty.rows()}  # no run after a start
    codes = {*duty.line.codes, *(one.code for one in LOTS), "CAR-99"}
    return {
        "lots": {code: duty.book.get(code) for code in codes},
        "holds": {code: duty.book.holds(code) for code in codes},
        "balances": {code: row.balance for code, row in rows.items()},
        "words": {code: left_words(row.balance) for code, row in rows.items()},
        "bars": {code: bar_of(row, str, "") for code, row in rows.items()},
        "on the line": duty.line,
        "finishing for long": duty.lingering(now + timedelta(minutes=31)),
        "asked": duty.due(now),
        "alarms": tuple(alarm_causes._of_lots(duty, now)),
        "held": {code: row.held for code, row in rows.items()},
    }


def same(line):
    """What both say, looked at one figure at a time; returns the balances."""
    now = line.clock.now().utc
    before, after = shown(line.duty, now), shown(restarted(line).duty, now)
    for what, said in before.items():
        assert after[what] == said, what
    return before["balances"]


def rework(line, serial):
    """The content of a bag that was set aside goes back on the line; returns its blend's code."""
    bag = trace_pack(line.home, serial)
    draft = bag.record.draft
    again = LotMove(
        Move.REWORK,
        draft.blend_lot,
        quantity=draft.weighing.net,
        members=tuple(LotUse(one.component, one.code) for one in bag.lots),
        use_by=draft.use_by,
        packed_at=draft.judged_at.utc,
        serials=(serial,),
    )
    assert line.move(again).recorded, line.entered[-1].words
    return again.lot


def decide(line, serial, how):
    """A person ends a reject."""
    run = trace_pack(line.home, serial).run.uid
    decided = Decided(serial, how, "seal", witness="P02")
    fact = disposition_fact(decided, new_uid(line.clock.now()), run)
    assert line.enter(fact).recorded, line.entered[-1].words


def off(move, code, kilograms):
    return LotMove(move, code, quantity=Mass.parse(f"{kilograms} kg"))


def started_anew(line):
    """The same line after its station stopped and started."""
    line.close()
    return LotLine(line.home, products=line.products, lots=LOTS, rules=RULES, clock=line.clock)


def test_rework_that_left_the_line_stays_taken_off_what_its_lots_gave(line):
    line.load("ROM-1", "40")
    line.start("ROM-1", "CAR-7")
    line.bags(5)
    aside = line.bag_aside()
    again = rework(line, aside)
    there = same(line)
    line.bag()
    assert line.empty(again).recorded
    left = same(line)["ROM-1"].left
    assert there["ROM-1"].left.likely == 40_000 - 5 * 252 * Decimal("0.7")
    assert left.likely == 40_000 - 6 * 252 * Decimal("0.7")


@pytest.mark.parametrize("move", [Move.WASTED, Move.RETURNED])
def test_rework_that_was_weighed_off_the_line_is_not_on_it(line, move):
    line.load("ROM-1", "40")
    line.start("ROM-1", "CAR-7")
    line.bags(5)
    again = rework(line, line.bag_aside())
    assert line.move(off(move, again, "0.1")).recorded
    left = same(line)["ROM-1"].left
    assert left.likely == 40_000 - (5 * 252 + 100) * Decimal("0.7")


@pytest.mark.parametrize("then", [None, Disposition.DUMP, Disposition.SAMPLE])
def test_a_bag_set_aside_after_its_label_and_decided_counts_as_what_it_became(line, then):
    line.load("ROM-1", "40")
    line.start("ROM-1", "CAR-7")
    line.bags(2)
    aside = line.bag_aside()
    if then is not None:
        decide(line, aside, then)
    left = same(line)["ROM-1"].left
    bags = 2 if then is None else 3
    assert left.high == 40_000 - bags * 252 * Decimal("0.66")


def test_a_good_bag_whose_label_is_destroyed_counts_as_set_aside(line):
    line.load("ROM-1", "40")
    line.start("ROM-1", "CAR-7")
    line.bag()
    line.on_pan()
    serial = line.state.last.serial
    line.take(LabelFailed(serial, "the printer lost it"))
    line.take(Resolve(serial, Fate.DESTROYED, "P01"))
    assert line.entered[-1].recorded, line.entered[-1].words
    assert same(line)["ROM-1"].left.high == 40_000 - 252 * Decimal("0.66")


def test_a_lot_that_comes_back_from_the_cold_room_brings_what_it_gave_before(line):
    """Also where the station was started while the lot was away."""
    line.load("ROM-1", "40")
    line.start("ROM-1", "CAR-7")
    line.bags(4)
    line.move(LotMove(Move.LOADED, "ROM-2"), off(Move.RETURNED, "ROM-1", "30"))
    line.bags(2)
    same(line)
    line.end()
    line = started_anew(line)
    line.start("ROM-2", "CAR-7")
    line.load("ROM-1", "30")
    line.bags(1)
    found = same(line)["ROM-1"]
    assert found.loaded == 40_000
    assert found.used.likely == (4 * 252 + 252 / Decimal(2)) * Decimal("0.7")
    line.close()


def test_the_bags_of_an_overlap_are_counted_on_so_that_the_rule_ends_it(line):
    line.start("ROM-1", "CAR-7")
    line.load("ROM-2")
    line.bags(30)
    line.bag_aside()
    same(line)
    line.end()
    line = started_anew(line)
    line.start("ROM-1", "ROM-2", "CAR-7")
    line.bags(8)
    assert set(line.duty.line.codes) == {"CAR-7", "ROM-1", "ROM-2"}
    line.bags(1)
    line.clock.pass_by(1_100)
    line.weigh(0)
    assert line.duty.line.codes == ("CAR-7", "ROM-2")
    same(line)
    line.close()


def test_deliveries_holds_and_releases_are_known_as_they_were(line):
    line.start("ROM-1", "CAR-7")
    came = Delivery(lot("CAR-99", "CAR"), Mass.parse("50 kg"))
    assert line.enter(delivery_fact(came, "d-1")).recorded
    line.hold("ROM-1")
    line.hold("CAR-99", "hold-2")
    same(line)
    line.release("CAR-99", "hold-2")
    same(line)


def test_what_the_settings_hold_a_person_s_release_does_not_let_go(line):
    line.hold("CAB-9")
    line.release("CAB-9")
    assert line.book["CAB-9"].status is LotStatus.HELD
    line = started_anew(line)
    assert restarted(line).book["CAB-9"].status is LotStatus.HELD
    line.close()


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_whatever_happens_to_lots_and_bags_a_start_says_the_same(line, seed):
    drawn, aside = random.Random(seed), []

    def reworked():
        rework(line, aside.pop())

    def decided():
        decide(line, aside.pop(), drawn.choice((Disposition.DUMP, Disposition.DOWNGRADE)))

    def loaded():
        line.load(drawn.choice(("ROM-1", "ROM-2", "ROM-3", "CAR-7", "CAR-8")), "5")

    def left():
        there = [*line.duty.line.lots, *line.duty.line.reworks]
        move = drawn.choice((Move.EMPTY, Move.RETURNED, Move.WASTED, Move.FINISHING))
        line.move(off(move, drawn.choice(there).lot, "0.5"))  # what a run needs is refused

    def next_run():
        nonlocal line
        line.end()
        if drawn.random() < 0.5:
            line = started_anew(line)
        line.clock.pass_by(drawn.choice((60_000, 3_600_000)))
        there = [one for one in line.duty.line.uses if one.component in ("ROM", "CAR")]
        line.start(*sorted({one.lot for one in there}))

    line.load("ROM-1", "5")
    line.load("CAR-7", "3")
    line.start("ROM-1", "CAR-7")
    for _ in range(30):
        steps = [line.bag, lambda: aside.append(line.bag_aside()), loaded, left, next_run]
        young = (
            aside
            and line.clock.utc - LONGEST
            < trace_pack(line.home, aside[-1]).record.draft.judged_at.utc
        )
        steps += [reworked, decided] if young else []
        drawn.choice(steps)()
        same(line)
    line.close()
