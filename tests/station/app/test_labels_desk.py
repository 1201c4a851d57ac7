"""The desk of labels over a record the store really wrote and labels really drawn."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from labels.readback import scan
from station.app.label_gates import label_gates
from station.config.load import load
from station.core.checks.first_off import FirstOffError
from station.core.checks.rolls import RollCount, RollError
from station.core.checks.scan_back import ScanError, ScanTrigger
from station.core.ids import new_uid
from station.core.label_life import Fate, OldLabel, Reprint, ReprintReason, Resolve, reprint_fact
from station.core.mass import Mass, Unit
from station.core.metrology.verdict import classify
from station.core.pack import LabelState, Moment, PackDraft, Quality, Weighing
from station.line.label_steps import settle
from station.line.opening import Catalogue, open_run
from station.line.state import RunChoice
from station.store.label_rolls import roll_accounts
from station.store.writer import StationStore

DEMO = Path(__file__).parents[3] / "demo_config"
DAY = date(2026, 11, 25)
LOTS = ("SM-WC26323", "PW/WCA/26326", "SM-RC26323", "SM-C26327.1")


class SteppingClock:
    """Starts at 07:00 UTC and moves on by a second each time it is asked."""

    def __init__(self) -> None:
        self.count = 0

    def now(self) -> Moment:
        self.count += 1
        utc = datetime(2026, 11, 25, 7, tzinfo=UTC) + timedelta(seconds=self.count)
        return Moment(utc, 0, "Europe/Dublin", self.monotonic_ns())

    def monotonic_ns(self) -> int:
        return self.count * 1_000_000_000


class Line:
    """A stocked store, an open run, and the gates over both."""

    def __init__(self, home):
        self.home, self.house, self.clock = home, load(DEMO, DAY), SteppingClock()
        self.store = StationStore.open(home, "QH", "A1", self.clock)
        self.store.add_lots(tuple(self.house.lots.values()), self.clock.now(), "L01")
        self.gates = label_gates(self.house, home, self.clock)
        self.desk = self.gates.desk
        self.run = self.open_run(1)

    def open_run(self, number):
        settings = self.house.settings
        catalogue = Catalogue(
            self.house.products, self.house.lots, "L1", settings.cut_off, "bench", Unit.GRAM, "test"
        )
        at = self.clock.now()
        choice = RunChoice("SLAW-340", 3, LOTS, "L01", "P01")
        run = open_run(choice, catalogue, at, number, new_uid(at))
        self.store.start_run(run, at)
        for duty in self.gates.duties:
            duty.opened(run, at.utc)
        return run

    def closing(self):
        now = self.clock.now().utc
        return [words for duty in self.gates.duties if (words := duty.closing(now))]

    def enter(self, *facts):
        for record in self.store.record(facts, self.clock.now(), "L01"):
            for duty in self.gates.duties:
                duty.noted(record)

    def pack(self, net="342", reason="", run=None):
        run = run or self.run
        weight, tare = Mass.of(net, Unit.GRAM), run.product.bag.tare
        record = self.store.add_pack(
            PackDraft(
                run=run.id,
                weighing=Weighing(
                    weight + tare, tare, weight, Mass.of("0", Unit.GRAM), 900, 1, "0a"
                ),
                verdict=classify(weight, run.window),
                quality=Quality.REJECT if reason else Quality.GOOD,
                reason=reason,
                blend_lot=run.blend_lot,
                lot_set=run.lot_set.key,
                use_by=run.dating.use_by,
                production_day=run.dating.production_day,
                operator="P01",
                judged_at=self.clock.now(),
            )
        )
        for duty in self.gates.duties:
            duty.packed(record)
        return record.serial

    def mark(self, serial, *states):
        for state in states:
            self.store.mark_label(serial, state, self.clock.now(), "station", "")

    def applied(self, **more):
        serial = self.pack(**more)
        self.mark(serial, LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED)
        return serial

    def copy(self, serial, number):
        wish = Reprint(serial, ReprintReason.TORN, OldLabel.DESTROYED, "L01")
        self.enter(reprint_fact(wish, number, self.run.id, new_uid(self.clock.now())))
        self.mark(serial, LabelState.SPOOLED, LabelState.APPLIED)

    def scans_of(self, serial, copy=""):
        """What a scanner sends for the label as it is drawn."""
        from station.app.paper import drawers
        from station.reports.label_facts import pack_label

        packer = self.house.settings.packer
        pdf = drawers(self.house.settings.printer)(self.run).draw(
            pack_label(serial, self.run, packer, copy)
        )
        return [code.identifier + code.data.decode("latin-1") for code in scan(pdf)]


@pytest.fixture
def line(tmp_path):
    one = Line(tmp_path)
    yield one
    one.store.close()


def open_all(line):
    line.enter(line.desk.put_in("LR-1", 500), line.desk.first_off(line.run, "L01", "Q01"))


def test_a_run_waits_for_a_roll_and_two_people_then_for_the_first_scan(line):
    assert [words.split(":")[0] for words in line.closing()] == [
        "no label roll is in",
        "the run begins with a first-off",
    ]
    open_all(line)
    assert line.closing() == []
    serial = line.applied()
    assert line.closing()[0].startswith("scan the first label")
    made, fact = line.desk.scan(line.run, line.scans_of(serial)[-1], serial)
    assert (made.equal, made.serial, made.trigger) == (True, serial, ScanTrigger.FIRST)
    line.enter(fact)
    assert line.closing() == []


def test_a_run_of_200_bags_adds_up_with_copies_samples_and_spoiled_ones(line):
    """Figures worked out by hand: 200 bags, 12 of them rejects without a label."""
    open_all(line)
    serials = [line.applied() for _ in range(188)]
    for _ in range(12):
        line.pack("331", "below floor")
    line.copy(serials[3], 1)
    line.copy(serials[3], 2)
    line.copy(serials[9], 1)
    line.store.take_back(serials[20], "torn", line.clock.now(), "P01")
    failed = line.pack()  # never reached the printer: no paper was used
    line.mark(failed, LabelState.SUBMITTED, LabelState.IN_DOUBT)
    used = 188 + 3
    (inside,) = line.desk.rolls()
    assert (inside.used, inside.difference) == (used, None)
    line.enter(line.desk.take_out(RollCount(returned=500 - used - 7 - 2, spoiled=7, samples=2)))
    (whole,) = line.desk.rolls()
    assert (whole.used, whole.difference, whole.open) == (used, 0, False)
    line.enter(line.desk.put_in("LR-2", 100))
    line.applied()
    line.enter(line.desk.take_out(RollCount(returned=96, spoiled=0, samples=0)))
    first, second = line.desk.rolls()
    assert first == whole
    assert (second.used, second.difference, second.open) == (1, 3, True)
    line.enter(line.desk.explain(second, "count on the core was wrong"))
    assert not roll_accounts(line.home)[-1].open
    assert [one.roll for one in roll_accounts(line.home, newest=1)] == ["LR-2"]


def test_a_label_of_two_pieces_uses_two(line):
    fact = line.desk.first_off(line.run, "L01", "Q01")
    two = replace(fact, details={**fact.details, "pieces": 2})
    line.enter(line.desk.put_in("LR-1", 500), two)
    line.applied()
    line.applied()
    assert line.desk.rolls()[0].used == 4


def test_one_roll_at_a_time(line):
    with pytest.raises(RollError, match="no roll is in"):
        line.desk.take_out(RollCount(1, 0, 0))
    line.enter(line.desk.put_in("LR-1", 500))
    with pytest.raises(RollError, match="roll LR-1 is in: take it out first"):
        line.desk.put_in("LR-2", 500)


@pytest.mark.parametrize(("first", "second"), [("L01", "Q01"), ("Q01", "L01"), ("L01", "L02")])
def test_one_of_two_leads_and_signs_first_in_the_record(line, first, second):
    details = line.desk.first_off(line.run, first, second).details
    assert str(details["lead"]).startswith("L0")
    assert len(str(details["sha256"])) == 64


@pytest.mark.parametrize(
    ("first", "second", "words"),
    [
        ("L01", "L01", "two different people"),
        ("P01", "Q01", "P01 does not lead"),
        ("L01", "X99", "'X99' is nobody"),
        ("L01", "", "two different people"),
    ],
)
def test_who_may_not_approve(line, first, second, words):
    with pytest.raises(FirstOffError, match=words):
        line.desk.first_off(line.run, first, second)


def test_the_digest_is_that_of_the_specimen_shown(line):
    import hashlib

    shown = line.desk.specimen(line.run)
    fact = line.desk.first_off(line.run, "L01", "Q01")
    assert fact.details["sha256"] == hashlib.sha256(shown).hexdigest()


def test_each_bar_code_of_each_label_of_the_run_is_equal_and_no_other(line):
    open_all(line)
    serials = [line.applied() for _ in range(3)]
    for serial in serials:
        codes = line.scans_of(serial)
        assert len(codes) >= 2
        assert all(line.desk.scan(line.run, code, serials[-1])[0].equal for code in codes)
    line.copy(serials[0], 1)
    copied = line.scans_of(serials[0], "R1")[-1]
    assert line.desk.scan(line.run, copied, serials[-1])[0].equal
    spoilt = codes[-1][:-1] + "9"
    assert not line.desk.scan(line.run, spoilt, serials[-1])[0].equal


def test_the_label_of_the_run_before_does_not_match_and_the_lead_clears_it(line):
    open_all(line)
    old = line.scans_of(line.applied())
    line.store.end_run(line.run.id, line.clock.now(), "L01")
    line.run = line.open_run(2)
    line.enter(line.desk.first_off(line.run, "L01", "Q01"))
    serial = line.applied()
    made, fact = line.desk.scan(line.run, old[-1], serial)
    assert (made.equal, made.serial) == (False, serial)
    line.enter(fact)
    assert "does not match" in line.closing()[0]
    assert line.desk.mismatch == serial
    with pytest.raises(ScanError, match="only a lead"):
        line.desk.clear("P01", "wrong roll taken out")
    started = label_gates(line.house, line.home, line.clock)
    assert started.desk.mismatch == serial
    line.enter(line.desk.clear("L01", "wrong roll taken out"))
    assert line.desk.mismatch == ""


def test_a_scan_before_the_first_label_says_so(line):
    with pytest.raises(ScanError, match="no bag of this run is labelled yet"):
        line.desk.scan(line.run, "]C10109521234543213", "")


STEPS = ("recorded", "submitted", "spooled", "applied", "copy recorded", "copy spooled")


@pytest.mark.parametrize("step", range(len(STEPS)), ids=STEPS)
def test_wherever_the_station_ends_the_next_start_asks_about_the_label(tmp_path, step):
    line = Line(tmp_path)
    serial = line.pack()
    states = (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED)
    line.mark(serial, *states[:step])
    if step > 3:
        wish = Reprint(serial, ReprintReason.TORN, OldLabel.DESTROYED, "L01")
        line.enter(reprint_fact(wish, 1, line.run.id, "u-copy"))
    if step > 4:
        line.mark(serial, LabelState.SPOOLED)
    line.store._release()  # as a kill leaves it: nothing more is written
    line.store = StationStore.open(tmp_path, "QH", "A1", line.clock)
    try:
        doubts = line.desk.doubts()
        if step == 3:
            assert doubts == ()
            return
        (doubt,) = doubts
        mark = "R1" if step > 3 else ""
        assert (doubt.serial, doubt.label, doubt.mark) == (serial, LabelState.IN_DOUBT, mark)
        assert doubt.why == "the station ended before the label's fate was recorded"
        line.gates = label_gates(line.house, tmp_path, line.clock)
        line.run = line.open_run(2)
        assert "1 labels in doubt" in line.closing()[0]
        settle(line.store, Resolve(serial, Fate.APPLIED, "P01"), line.clock.now())
        assert line.desk.doubts() == ()
        assert "no label roll" in line.closing()[0]
    finally:
        line.store.close()


def test_a_copy_that_came_out_waits_for_an_answer_too(line):
    serial = line.applied()
    wish = Reprint(serial, ReprintReason.TORN, OldLabel.DESTROYED, "L01")
    line.enter(reprint_fact(wish, 1, line.run.id, "u-copy"))
    assert line.desk.doubts() == ()  # at the printer
    line.mark(serial, LabelState.SPOOLED)
    (waiting,) = line.desk.doubts()
    assert (waiting.label, waiting.mark, waiting.why) == (
        LabelState.SPOOLED, "R1", "a copy was printed",
    )  # fmt: skip
    settle(line.store, Resolve(serial, Fate.DESTROYED, "L01"), line.clock.now())
    bag = line.store.labelled(serial)
    assert (bag.label, bag.quality) == (LabelState.VOIDED, Quality.REJECT)
