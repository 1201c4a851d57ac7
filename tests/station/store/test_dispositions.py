"""Decisions about rejects in a real record: exactly one holds, and the tables follow."""

import pytest

from station.core.dispositions import Decided, Disposition, disposition_fact
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.line_lots import move_fact
from station.core.pack import Quality
from station.line.ports import StoreFault
from station.store.engine import reading
from station.store.hold_scopes import between_serials, between_times, of_blend, of_run
from station.store.ledger import _ROWS, _decisions, bin_state, decision_of, ledger
from station.store.prepared import driver_of
from station.store.queries import trace_pack
from station.store.rebuild import rebuild
from station.store.verify import verify
from tests.station.store.conftest import back_on_the_line
from tests.station.store.test_facts import dump


class Line:
    """Six bags, numbers 3 and 6 set aside; then three more, the last set aside."""

    def __init__(self, world):
        self.world = world
        self.store = world.stocked()
        self.run = world.start(self.store)
        self.serials = world.fill(self.store, self.run, 6)
        self.uids = iter(f"d{n}" for n in range(99))

    def decide(self, serial, disposition=Disposition.DUMP, **more):
        decided = Decided(serial, disposition, "burst seal", **more)
        fact = disposition_fact(decided, next(self.uids), self.run.id)
        self.store.record((fact,), self.world.clock.now(), "q.wren")
        return fact.uid

    def quality(self, serial):
        return trace_pack(self.world.home, serial).quality

    @property
    def rows(self):
        return {row.serial: row for row in ledger(self.world.home, self.world.day)}


@pytest.fixture
def line(world):
    made = Line(world)
    with made.store:
        yield made


def test_the_ledger_has_each_reject_with_weight_limits_lots_and_what_became_of_it(line):
    third, sixth = line.serials[2], line.serials[5]
    line.decide(third, Disposition.SAMPLE, witness="p.marsh")
    assert list(line.rows) == [third, sixth]
    row, other = line.rows[third], line.rows[sixth]
    assert str(row.net) == "0.2405 kg"
    assert row.window.limits.t1.digits == "241"
    assert {use.lot for use in row.lots} == {"LF-101", "CR-201"}
    assert (row.reason, row.operator, row.run) == ("too light", "i.sedge", line.run.id)
    assert not row.open
    assert row.decision.decided.disposition is Disposition.SAMPLE
    assert row.decision.record.who == "q.wren"
    assert other.open
    assert other.decision is None


@pytest.mark.parametrize(
    ("disposition", "quality"),
    [
        (Disposition.DUMP, Quality.DUMPED),
        (Disposition.SAMPLE, Quality.SAMPLED),
        (Disposition.DOWNGRADE, Quality.DOWNGRADED),
    ],
)
def test_a_decision_ends_the_reject(line, disposition, quality):
    line.decide(line.serials[2], disposition)
    assert line.quality(line.serials[2]) is quality


def test_a_reject_is_decided_once_and_then_only_corrected_by_name(line):
    serial = line.serials[2]
    first = line.decide(serial)
    with pytest.raises(StoreFault, match=r"was dumped by q\.wren already"):
        line.decide(serial, Disposition.SAMPLE)
    with pytest.raises(StoreFault, match="is not its last one"):
        line.decide(serial, Disposition.SAMPLE, corrects="d77")
    second = line.decide(serial, Disposition.SAMPLE, corrects=first)
    assert line.quality(serial) is Quality.SAMPLED
    with pytest.raises(StoreFault, match="is not its last one"):
        line.decide(serial, Disposition.DUMP, corrects=first)
    assert decision_of(line.world.home, serial).uid == second


def test_a_topped_up_bag_names_a_bag_that_was_packed_later_and_stands_for_no_other(line):
    third, sixth = line.serials[2], line.serials[5]
    new = line.world.fill(line.store, line.run, 2)
    with pytest.raises(StoreFault, match="is not in the record"):
        line.decide(third, Disposition.TOP_UP, into="L1A-ZZ-000099")
    with pytest.raises(StoreFault, match="was packed before"):
        line.decide(third, Disposition.TOP_UP, into=line.serials[0])
    line.decide(third, Disposition.TOP_UP, into=new[0])
    assert line.quality(third) is Quality.REPACKED
    with pytest.raises(StoreFault, match=f"stands for bag {third} already"):
        line.decide(sixth, Disposition.REWEIGH, into=new[0])
    line.decide(sixth, Disposition.REWEIGH, into=new[1])


def test_a_good_bag_cannot_be_decided_but_a_held_one_can_and_is_a_reject_then(line):
    serial = line.serials[0]
    with pytest.raises(StoreFault, match="is good: only one that was set aside or is held"):
        line.decide(serial)
    ranges = {"ranges": [[str(line.store.epoch), 1, 1]], "reason": "seal"}
    hold = Fact(EntryKind.HOLD, "h1", "seal", "held", details=ranges)
    line.store.record((hold,), line.world.clock.now(), "q.wren")
    line.decide(serial)
    assert line.quality(serial) is Quality.DUMPED
    assert line.rows[serial].reason == "burst seal"
    release = Fact(EntryKind.RELEASE, "r1", "seal", "released", details={"hold": "h1"})
    line.store.record((release,), line.world.clock.now(), "q.wren")
    assert line.quality(serial) is Quality.DUMPED  # a release brings nothing out of the bin


def test_what_went_back_on_the_line_is_not_decided_again(line):
    serial = line.serials[2]
    move = back_on_the_line(line.world.home, serial)
    decided = disposition_fact(Decided(serial, Disposition.REWORK, "light"), "d50", line.run.id)
    facts = (move_fact(move, "m1", "L1", line.run.id), decided)
    line.store.record(facts, line.world.clock.now(), "q.wren")
    assert line.quality(serial) is Quality.REWORKED
    with pytest.raises(StoreFault, match="back on the line"):
        line.decide(serial, Disposition.DUMP, corrects="d50")


def test_the_bin_holds_what_is_undecided_or_dumped(line):
    assert bin_state(line.world.home, line.world.day).expected == 2
    line.decide(line.serials[2], Disposition.SAMPLE)
    assert bin_state(line.world.home, line.world.day).expected == 1
    line.decide(line.serials[5])
    assert bin_state(line.world.home, line.world.day).expected == 1


def test_decisions_are_rebuilt_and_verified(line):
    first = line.decide(line.serials[2])
    line.decide(line.serials[2], Disposition.SAMPLE, corrects=first)
    line.store.close()
    before = dump(line.world.database)
    rebuild(line.world.home)
    assert dump(line.world.database) == before
    assert verify(line.world.home).whole


def test_bags_are_found_by_serials_times_run_and_blend(line):
    home, epoch = line.world.home, str(line.store.epoch)
    assert between_serials(home, line.serials[1], line.serials[4]) == ((epoch, 2, 5),)
    assert of_run(home, line.run.id) == ((epoch, 1, 6),)
    assert of_blend(home, line.run.blend_lot) == ((epoch, 1, 6),)
    since = trace_pack(home, line.serials[1]).record.draft.judged_at.utc
    until = trace_pack(home, line.serials[3]).record.draft.judged_at.utc
    assert between_times(home, since, until) == ((epoch, 2, 4),)
    with pytest.raises(ValueError, match="comes after"):
        between_serials(home, line.serials[4], line.serials[1])
    with pytest.raises(ValueError, match="comes after"):
        between_times(home, until, since)


def test_a_day_is_read_by_indexes_however_long_the_record_is(line):
    asked = []
    with reading(line.world.home) as connection:
        driver = driver_of(connection)
        driver.set_trace_callback(asked.append)
        _decisions(connection, line.world.day)
        _ROWS.execute(connection, {"day": line.world.day}).fetchall()
        driver.set_trace_callback(None)
        plans = [
            " ".join(step[3] for step in driver.execute(f"EXPLAIN QUERY PLAN {one}"))
            for one in asked
            if one.lstrip().startswith("SELECT")
        ]
    assert len(plans) == 2
    for plan in plans:
        assert "SCAN" not in plan
        assert "ix_pack_rejected" in plan
