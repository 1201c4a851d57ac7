"""What stands is what the whole past leaves standing, live, rebuilt, and after an upgrade."""

import importlib
import random
import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta

import pytest

from station.core import pauses
from station.core.approvals import open_proposals, target_answer, version_fact
from station.core.checks.rolls import RollStep, is_step
from station.core.checks.scan_back import CLEARED, DIFFERS, EQUAL
from station.core.checks.suspect import decided_window
from station.core.checks.tare import study_fact, study_of
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.line_lots import LineLots, LotMove, Move, lots_after, move_fact
from station.core.lots import LotError
from station.core.mass import Mass, Unit
from station.core.metrology.tare import TareStudy
from station.core.pack import LabelState
from station.core.receiving import hold_lot_fact, open_holds, release_lot_fact
from station.line.product_book import ProductBook
from station.store.at_start import approvals_past, qa_past, study_on_record
from station.store.engine import writer_engine
from station.store.facts import facts
from station.store.rebuild import rebuild
from station.store.standing import moves_at, stand_moves, standing_facts
from station.store.verify import verify
from tests.station.app.test_start import Watched

LINES = ("L1", "L2")
COMPONENTS = {"LF-101": "LEAF", "LF-102": "LEAF", "CR-201": "CRESS"}


class Past:
    """A past of facts that begin and end, drawn by lot; every one of them is allowed."""

    def __init__(self, world, seed):
        self.world, self.random = world, random.Random(seed)
        self.open = {kind: [] for kind in EntryKind}
        self.lines = {line: LineLots() for line in LINES}

    def facts(self, count):
        makers = (
            *(self._roll, self._scan, self._window, self._pause, self._proposal),
            *(self._hold, self._move, self._move, self._study),
        )
        made = []
        while len(made) < count:
            fact = self.random.choice(makers)()
            if fact is not None:
                made.append(fact)
        return made

    def uid(self):
        return new_uid(self.world.clock.now())

    def _pair(self, kind, begin, end, member, *, subject="R-7"):
        waiting = self.open[kind]
        if waiting and self.random.random() < 0.6:
            ended = waiting.pop(self.random.randrange(len(waiting)))
            return Fact(kind, self.uid(), subject, end, "", {member: ended})
        uid = self.uid()
        waiting.append(uid)
        return Fact(kind, uid, subject, begin, "", {"reason": "break"})

    def _roll(self):
        if self.random.random() < 0.2:
            return Fact(EntryKind.ROLL, self.uid(), "R-7", "explained", "", {"roll": "x"})
        return self._pair(EntryKind.ROLL, "put in", "taken out", "roll")

    def _scan(self):
        if self.random.random() < 0.5:
            return Fact(EntryKind.SCAN_BACK, self.uid(), "A1-00-000001", EQUAL)
        return self._pair(EntryKind.SCAN_BACK, DIFFERS, CLEARED, "scan")

    def _window(self):
        return self._pair(EntryKind.SUSPECT, "open", "released", "decides")

    def _pause(self):
        return self._pair(EntryKind.PAUSE, pauses.STOPPED, pauses.RESUMED, "pause")

    def _proposal(self):
        said = self.random.choice(("approved", "refused"))
        fact = self._pair(EntryKind.PROPOSAL, "proposed", said, "answers", subject="HA-250")
        more = {"version": 3, "before": "252 g", "target": "253 g", "reason": "waste"}
        return Fact(fact.kind, fact.uid, fact.subject, fact.result, "", {**fact.details, **more})

    def _hold(self):
        waiting = self.open[EntryKind.HOLD]
        if waiting and self.random.random() < 0.6:
            lot, hold = waiting.pop()
            return release_lot_fact(self.uid(), lot, hold, "looked at")
        lot, uid = self.random.choice(list(COMPONENTS)), self.uid()
        waiting.append((lot, uid))
        return hold_lot_fact(uid, lot, "smells")

    def _move(self):
        line, lot = self.random.choice(LINES), self.random.choice(list(COMPONENTS))
        step = self.random.choice((Move.LOADED, Move.FINISHING, Move.EMPTY, Move.RETURNED))
        move = LotMove(step, lot, COMPONENTS[lot])
        try:
            self.lines[line] = self.lines[line].after(move, self.world.clock.now().utc)
        except LotError:
            return None
        return move_fact(move, self.uid(), line)

    def _study(self):
        film = self.random.choice(("F-1", "F-2"))
        tares = [Mass.of(f"12.{self.random.randrange(10)}", Unit.GRAM)] * 25
        at = self.world.clock.now().utc
        return study_fact(TareStudy("BAG-7", film, ("film",), at, tuple(tares)), self.uid())


@pytest.fixture(scope="module", params=[1, 2])
def past(request, tmp_path_factory):
    """A record with three hundred facts, and one that ended between two of them."""
    from tests.station.store.conftest import World

    world = World(tmp_path_factory.mktemp("past") / "home")
    store = world.stocked()
    drawn = Past(world, request.param)
    for _ in range(10):
        store.record(drawn.facts(30), world.clock.now(), "q.fen")
    store.close()
    return world


def uids(records):
    return [one.fact.uid for one in records]


def test_what_stands_is_what_the_whole_past_leaves(past):
    home = past.home

    def every(*kinds):
        return facts(home, kinds)

    def left(kind, begun, member):
        ended = {one.fact.details.get(member) for one in every(kind) if not begun(one)}
        return [uid for uid in uids(filter(begun, every(kind))) if uid not in ended]

    rolls = left(EntryKind.ROLL, lambda one: is_step(one, RollStep.PUT_IN), "roll")
    # an explanation of a roll ends nothing
    assert uids(standing_facts(home, EntryKind.ROLL)) == rolls
    wrong = left(EntryKind.SCAN_BACK, lambda one: one.fact.result == DIFFERS, "scan")
    assert uids(standing_facts(home, EntryKind.SCAN_BACK)) == wrong
    windows = left(EntryKind.SUSPECT, lambda one: not decided_window(one), "decides")
    assert uids(standing_facts(home, EntryKind.SUSPECT)) == windows
    stops = [one.uid for one in pauses.pauses_of(every(EntryKind.PAUSE)) if one.ended is None]
    assert uids(standing_facts(home, EntryKind.PAUSE)) == stops
    holds = open_holds(every(EntryKind.HOLD, EntryKind.RELEASE))
    assert open_holds(standing_facts(home, EntryKind.HOLD)) == holds

    standing, whole = standing_facts(home, EntryKind.PROPOSAL), every(EntryKind.PROPOSAL)
    assert open_proposals(standing) == open_proposals(whole)
    targets = [
        [one for one in found if (it := target_answer(one)) is not None and it.approved][-1:]
        for found in (standing, whole)
    ]
    assert targets[0] == targets[1]


def test_the_lots_on_each_line_follow_from_the_moves_that_are_read(past):
    for line in LINES:
        whole, read = facts(past.home, (EntryKind.LOT_MOVE,)), moves_at(past.home, line)
        state = lots_after(whole, line)
        assert lots_after(read, line) == state
        mine = [one for one in whole if one.fact.details["line"] == line]
        for lot in state.codes:
            moved = [uids(one for one in of if one.fact.subject == lot) for of in (mine, read)]
            assert moved[0] == moved[1]


def test_moves_of_lots_that_came_and_went_are_not_read(world):
    """A bulk lot stays for months; of those that came and went it matters which made it finish."""

    def move(step, lot, component="LEAF"):
        return move_fact(LotMove(step, lot, component), new_uid(world.clock.now()), "L1")

    store = world.stocked()
    passing = [move(step, "CR-201", "CRESS") for _ in range(40) for step in (Move.LOADED, "empty")]
    came = [move(Move.LOADED, "LF-101"), *passing]
    for fact in came:
        store.record((fact,), world.clock.now(), "q.fen")
    assert uids(moves_at(world.home, "L1")) == [came[0].uid]
    beside = [move(Move.LOADED, "LF-102"), move(Move.EMPTY, "LF-102"), *passing[:2]]
    beside[2:] = [replace(one, uid=new_uid(world.clock.now())) for one in beside[2:]]
    for fact in beside:
        store.record((fact,), world.clock.now(), "q.fen")
    store.close()
    read = moves_at(world.home, "L1")
    assert uids(read) == [came[0].uid, beside[0].uid, beside[1].uid]
    assert lots_after(read, "L1") == lots_after(facts(world.home, (EntryKind.LOT_MOVE,)), "L1")
    (kept,) = lots_after(read, "L1").lots
    assert (kept.lot, kept.finishing_since is None) == ("LF-101", False)
    assert len([row for row in rows(world) if row[0] == "lot move"]) <= 4


def test_the_newest_study_of_a_film_is_found(past):
    newest = {}
    for one in facts(past.home, (EntryKind.TARE_STUDY,)):
        newest[study_of(one).film_lot] = one
    assert set(newest) == {"F-1", "F-2"}
    for film, study in newest.items():
        assert study_on_record(past.home, "BAG-7", film) == study
    assert study_on_record(past.home, "BAG-7", "F-3") is None


def rows(world):
    with closing(sqlite3.connect(world.database)) as connection:
        return connection.execute("SELECT * FROM standing ORDER BY kind, key").fetchall()


def test_rebuilding_and_upgrading_give_the_same_rows(past):
    before = rows(past)
    assert verify(past.home).whole
    rebuild(past.home)
    assert rows(past) == before
    third = importlib.import_module("station.store.migrations.versions.0003_tree")
    past.tamper("DROP TABLE standing", "DROP INDEX ix_fact_newest", "DROP INDEX ix_lot_received")
    past.tamper(*third.STANDING)
    engine = writer_engine(past.database)
    with engine.connect() as connection, connection.begin():
        stand_moves(connection)
    engine.dispose()
    # a head's labels are of this shape alone, and no head was made in the ones before
    assert rows(past) == before


def test_a_label_left_recorded_days_ago_is_in_doubt_after_the_next_start(world):
    store = world.stocked()
    run = world.start(store)
    first = store.add_pack(world.draft(run)).serial
    store.add_pack(world.draft(run))
    applied = store.add_pack(world.draft(run)).serial
    for state in (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED):
        store.mark_label(applied, state, world.clock.now(), "station", "")
    for _ in range(2):
        world.clock.count += round(timedelta(days=1).total_seconds() / 0.7)
        last = store.add_pack(world.draft(run)).serial
    world.crash(store)
    assert len(facts(world.home, (EntryKind.HEAD,))) == 2
    assert ("label", first) in [row[:2] for row in rows(world)]
    with world.open() as again:
        doubtful = again.in_doubt()
    assert (len(doubtful), doubtful[0], doubtful[-1]) == (4, first, last)
    assert applied not in doubtful
    assert verify(world.home).whole


def test_approvals_are_read_by_what_they_approve_however_many_versions_there_were(
    world, monkeypatch
):
    """The book says the same of the few that are read as of all; a month later means a month."""
    product, day, steps = world.run().product, date(2026, 3, 4), []

    def approve(*given):
        at = world.clock.now()
        store.record([version_fact(new_uid(at), *one) for one in given], at, "M01")

    def said(records):
        book = ProductBook({product.code: product}, approval_needed=True, past=records)
        days = (day + timedelta(days=n) for n in (-1, 0, 29))
        return book.approval(product.code).fact.uid, *(book.refusal(product.code, n) for n in days)

    with world.stocked() as store:
        for versions in (3, 300):
            approve(*((replace(product, version=10 + number),) for number in range(versions)))
            approve((product, day), (product, day + timedelta(days=30)))
            with monkeypatch.context() as patched:
                watched = Watched(patched)
                found = approvals_past(world.home, [product])
                steps.append(watched.steps)
            every = facts(world.home, (EntryKind.SETTING,), subject=product.code)
            assert len(every) >= versions + 2
            assert len(found) == 2
            assert said(found) == said(every)
    assert [bool(refused) for refused in said(found)[1:]] == [True, False, False]
    assert steps[1] < steps[0] * 1.2, steps


def test_the_last_check_of_each_kind_is_read_with_the_last_good_one(world):
    made = [
        ("O2", "good"),
        ("O2", "failed"),
        ("seal", "failed"),
        ("seal", "good"),
        ("O2", "failed"),
    ]
    with world.stocked() as store:
        kept = [
            Fact(EntryKind.QA_CHECK, new_uid(world.clock.now()), kind, result)
            for kind, result in made
        ]
        store.record(kept, world.clock.now(), "q.fen")
    found = [one.fact.uid for one in qa_past(world.home)]
    assert found == [kept[0].uid, kept[4].uid, kept[3].uid]
