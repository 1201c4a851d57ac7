"""A page of QA over a real record: entered facts are recorded at once, as the line does."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from station.app.places import demo_settings
from station.app.quality_gates import Follows, quality_gates
from station.config.load import load
from station.core.checks.rolls import put_in_fact
from station.core.mass import Mass, Unit
from station.core.metrology.verdict import classify
from station.core.pack import LabelState, Moment, PackDraft, Quality, Weighing
from station.line.opening import Catalogue, open_run
from station.line.ports import StoreFault
from station.line.state import EntryAnswer, Phase, RunChoice, Shown, Verb
from station.screens.bridge import Bridge
from station.screens.offer import Person
from station.screens.quality import QualityPage, QualitySources
from station.store.writer import StationStore
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import state

TODAY = date(2026, 11, 25)
NINE = datetime(2026, 11, 25, 9, tzinfo=UTC)
DWELL_NS = 300_000_000
PEOPLE = (
    Person("P01", "Ilse Varnholm", "packer"),
    Person("L01", "Brigid Onslane", "lead"),
    Person("Q01", "Noor Halvard", "qa"),
    Person("M01", "Sunniva Pellinore", "manager"),
)


class HandClock:
    """Shows what a test sets; each look is a millisecond later."""

    def __init__(self) -> None:
        self.utc, self.looks = NINE, 0

    def now(self) -> Moment:
        self.looks += 1
        at = self.utc + timedelta(milliseconds=self.looks)
        return Moment(at, 0, "Europe/Dublin", self.monotonic_ns())

    def monotonic_ns(self) -> int:
        return self.looks * 1_000_000


class QualityRig:
    """A store, its desks and the page; 30 good slaw bags and three rejects from 09:00 on."""

    def __init__(self, home, size=(1024, 768), bags=30, changed=lambda house: house):
        self.home, self.clock = home, HandClock()
        self.house = changed(load(demo_settings(), TODAY))
        settings = self.house.settings
        self.store = StationStore.open(home, settings.site, settings.station, self.clock)
        self.store.add_lots(tuple(self.house.lots.values()), self.clock.now(), "L01")
        self.run = self.open_run("SLAW-340", 1)
        self.serials, self.rejects = [], []
        enters = (put_in_fact("LR-0411", 1000, "roll1", self.run.id),)
        self.store.record(enters, self.clock.now(), "L01")
        self.pack(bags)
        gates = quality_gates(self.house, home, self.clock, DWELL_NS)
        self.desks = gates.desks
        self.duties = gates.duties
        for duty in self.duties:
            duty.opened(self.run, NINE)
        self._follow = Follows(home).follow
        self.bridge, self.intents = Bridge(), FakeIntents()
        self.intents.enter = self.enter
        self.page = QualityPage(self.bridge, self.intents, QualitySources(*self.desks), PEOPLE)
        self.page.resize(*size)
        self.entered = []
        self._ns = 0

    def open_run(self, code, number):
        house, at = self.house, self.clock.now()
        product = house.products[code]
        lots = tuple(
            next(lot.code for lot in house.lots.values() if lot.component == one.code)
            for one in product.components
        )
        catalogue = Catalogue(
            house.products, house.lots, "L1", house.settings.cut_off, "bench scale 1", Unit.GRAM,
            "test",
        )  # fmt: skip
        choice = RunChoice(code, product.version, lots, "L01", "P01")
        run = open_run(choice, catalogue, at, number, f"0000000{number}-run")
        self.store.start_run(run, at)
        return run

    def pack(self, bags, every=timedelta(seconds=40)):
        for bag in range(bags):
            self.clock.utc += every
            self.serials.append(self.weigh("343").serial)
            if bag % 10 == 5:
                self.rejects.append(self.weigh("331", "seal open").serial)

    def weigh(self, grams, reason=""):
        run, net = self.run, Mass.of(grams, Unit.GRAM)
        tare = run.product.bag.tare
        draft = PackDraft(
            run=run.id,
            weighing=Weighing(net + tare, tare, net, Mass.of(0, Unit.GRAM), 900, 1, "0a"),
            verdict=classify(net, run.window),
            quality=Quality.REJECT if reason else Quality.GOOD,
            reason=reason,
            blend_lot=run.blend_lot,
            lot_set=run.lot_set.key,
            use_by=run.dating.use_by,
            production_day=run.dating.production_day,
            operator=run.operator,
            judged_at=self.clock.now(),
        )
        record = self.store.add_pack(draft)
        if not reason:
            for step in (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED):
                self.store.mark_label(record.serial, step, self.clock.now(), "station", "")
        return record

    def enter(self, facts, who):
        """Record facts with what they bring with them, as the line does, and answer."""
        at = self.clock.now()
        uids = tuple(fact.uid for fact in facts)
        try:
            bring = self._follow(facts, at, who)
            records = self.store.record((*facts, *bring), at, who)
        except (ValueError, StoreFault) as refused:
            self.page.show_answer(EntryAnswer(uids, False, str(refused)))
            return
        self.entered += records
        for record in records:
            for duty in self.duties:
                duty.noted(record)
        self.page.show_answer(EntryAnswer(uids, True, "recorded"))

    def show(self, digits="0", *, steady=True, ms=100, run=True):
        """The scale shows something now."""
        self._ns += ms * 1_000_000
        shown = Shown(digits, "g", None, steady, None, None, self._ns)
        one = state(Phase.READY, Verb.BAG_ON)
        self.page.show_state(replace(one, shown=shown, run=self.run if run else None))

    def rest(self, digits):
        """The scale shows something long enough for it to be taken."""
        for _ in range(6):
            self.show(digits)

    def settle(self):
        """Wait until the record has answered everything."""
        QApplication.processEvents()
        while self.page.busy:
            QTest.qWait(1)  # the thread that asks the record needs its turn
        QApplication.processEvents()

    def tab(self, index):
        self.page.go_to(index)
        self.settle()

    def sign(self, *people):
        for who in people:
            self.page.choose_person(who)

    def close(self):
        self.page.stop()
        self.page.close()
        self.store.close()
