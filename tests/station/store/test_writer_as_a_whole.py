"""Random use of the store, with clean and unclean ends, against a model of plain lists."""

import shutil
import tempfile
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import Bundle, RuleBasedStateMachine, consumes, initialize, rule

from station.core.lot_set import LotSet, LotUse
from station.core.pack import LabelState, Quality
from station.line.ports import StoreFault
from station.store import queries
from station.store.rebuild import rebuild
from station.store.verify import verify

STEPS = (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED, LabelState.IN_DOUBT)
ON_THE_WAY = (LabelState.RECORDED, LabelState.SUBMITTED, LabelState.SPOOLED)
FOLLOWS = {  # design: recorded → submitted → spooled → applied | in doubt → applied | voided
    LabelState.RECORDED: (LabelState.SUBMITTED, LabelState.IN_DOUBT),
    LabelState.SUBMITTED: (LabelState.SPOOLED, LabelState.IN_DOUBT),
    LabelState.SPOOLED: (LabelState.APPLIED, LabelState.IN_DOUBT),
    LabelState.APPLIED: (LabelState.IN_DOUBT,),
    LabelState.IN_DOUBT: (LabelState.APPLIED,),
}
BLENDS = (("LF-101", "CR-201"), ("LF-102", "CR-201"), ("LF-101", "LF-102", "CR-201"))


class Packing(RuleBasedStateMachine):
    world = None  # set by the test
    template = None

    runs = Bundle("runs")
    bags = Bundle("bags")

    @initialize()
    def begin(self):
        self.folder = Path(tempfile.mkdtemp())
        home = self.folder / "home"
        shutil.copytree(self.template, home)
        self.here = replace(self.world, home=home)
        self.store = self.here.stocked()
        self.started = 0
        self.serials, self.states = [], {}
        self.used, self.sets = {}, []

    @rule(target=runs, lots=st.sampled_from(BLENDS))
    def start(self, lots):
        self.started += 1
        run = self.here.start(self.store, self.started, lots)
        self.sets.append(run.lot_set)
        return run

    @rule(run=consumes(runs))
    def end(self, run):
        self.store.end_run(run.id, self.here.clock.now(), "p.marsh")
        with pytest.raises(StoreFault):
            self.store.add_pack(self.here.draft(run))

    @rule(target=bags, run=runs, light=st.booleans())
    def pack(self, run, light):
        args = ("0.2405", "too light") if light else ()
        record = self.store.add_pack(self.here.draft(run, *args))
        return self._keep(record, run.lot_set, light)

    @rule(target=bags, run=runs, other=st.data())
    def pack_after_a_lot_change(self, run, other):
        """A bag of one run with the lot set of any run started so far."""
        lot_set = other.draw(st.sampled_from(self.sets))
        draft = replace(self.here.draft(run), lot_set=lot_set.key, blend_lot="L1X")
        return self._keep(self.store.add_pack(draft), lot_set, False)

    @rule(run=runs)
    def pack_from_lots_nobody_chose(self, run):
        unknown = LotSet.of([LotUse("LEAF", "LF-999")])
        with pytest.raises(StoreFault, match="lot set"):
            self.store.add_pack(replace(self.here.draft(run), lot_set=unknown.key))

    def _keep(self, record, lot_set, light):
        self.serials.append(record.serial)
        quality = Quality.REJECT if light else Quality.GOOD
        label = LabelState.NONE if light else LabelState.RECORDED
        self.states[record.serial] = (quality, label)
        for code in {use.lot for use in lot_set.uses}:
            self.used.setdefault(code, []).append(record.serial)
        return record.serial

    @rule(serial=bags, state=st.sampled_from(STEPS))
    def mark(self, serial, state):
        quality, label = self.states[serial]
        barred = state not in FOLLOWS.get(label, ())
        if barred:
            with pytest.raises(StoreFault, match="cannot become"):
                self.store.mark_label(serial, state, self.here.clock.now(), "station", "")
        else:
            self.store.mark_label(serial, state, self.here.clock.now(), "station", "")
            self.states[serial] = (quality, state)

    @rule(serial=bags)
    def take_back(self, serial):
        quality, _ = self.states[serial]
        if quality is Quality.REJECT:
            with pytest.raises(StoreFault):
                self.store.take_back(serial, "torn", self.here.clock.now(), "i.sedge")
        else:
            self.store.take_back(serial, "torn", self.here.clock.now(), "i.sedge")
            self.states[serial] = (Quality.REJECT, LabelState.VOIDED)

    @rule(clean=st.booleans())
    def end_and_open_again(self, clean):
        self.store.close() if clean else self.here.crash(self.store)
        self.store = self.here.open()
        for serial, (quality, label) in self.states.items():
            if label in ON_THE_WAY:
                self.states[serial] = (quality, LabelState.IN_DOUBT)
        doubtful = [s for s, (_, label) in self.states.items() if label is LabelState.IN_DOUBT]
        assert self.store.in_doubt() == tuple(doubtful)

    def teardown(self):
        self.store.close()
        home = self.here.home
        report = verify(home)
        assert report.whole, report.why
        assert rebuild(home) == report.entries
        assert verify(home) == report
        found = {}
        for lot in ("LF-101", "LF-102", "CR-201"):
            packs = queries.trace_lot(home, lot).packs
            assert [pack.serial for pack in packs] == self.used.get(lot, [])
            found |= {pack.serial: (pack.quality, pack.label) for pack in packs}
        assert found == self.states
        assert [int(s[-6:]) for s in self.serials] == list(range(1, len(self.serials) + 1))
        assert queries.summary(home).duplicate_serials == 0
        shutil.rmtree(self.folder)


def test_the_store_keeps_its_promises_under_random_use(world):
    world.open().close()
    Packing.world, Packing.template = world, world.home
    case = Packing.TestCase
    case.settings = settings(max_examples=10, stateful_step_count=25, deadline=None)
    case("runTest").runTest()
