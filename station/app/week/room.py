"""A station without scale, printer and screen: its store, gates and desks on a clock that is moved.

Everything goes the way the line takes it: facts are completed, bring others with them and are
recorded in one commit; every duty sees every bag; a bag is taken only while no duty closes
acceptance. Labels pass all their states, but only specimens are drawn.
"""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from pathlib import Path

from station.app.assembly import software
from station.app.change_desk import ChangeDesk
from station.app.checks_desk import ChecksDesk
from station.app.label_gates import label_gates
from station.app.lot_gates import lot_gates
from station.app.practice_record import PracticeClock
from station.app.quality_gates import Follows, quality_gates
from station.config.catalogue import catalogue_of
from station.config.packhouse import Packhouse
from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.metrology.verdict import classify
from station.core.pack import LabelState, PackDraft, PackRecord, Quality, Residue, Weighing
from station.core.product import PackMode, Product
from station.core.run import Run
from station.errors import EnvironmentFault
from station.line.clearance_duty import ClearanceDuty
from station.line.cycle_state import Cycle, LineRules
from station.line.duties import Duties
from station.line.opening import day_of, open_run
from station.line.pause_duty import PauseDuty
from station.line.scale_duty import ScaleDuty
from station.line.state import Phase, RunChoice
from station.line.tare_duty import TareDuty
from station.store import at_start
from station.store.run_counts import last_packed_run
from station.store.standing import standing_facts
from station.store.writer import StationStore

_LABEL_S = 0.02
"""Between two states of a label."""
_STEPS = (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED)


class Room:
    """One station through a week; used from one thread, closed once.

    Args:
        house: the settings.
        home: folder of the record.
        clock: moved by whoever packs.
    """

    def __init__(self, house: Packhouse, home: Path, clock: PracticeClock) -> None:
        self.house, self.home, self.clock = house, home, clock
        settings = house.settings
        key = settings.record.key_of(home)
        self.store = StationStore.open(home, settings.site, settings.station, clock, key)
        self.scale_duty = ScaleDuty(
            settings.scale.id,
            settings.checks.schedule,
            at_start.scale_past(home, settings.scale.id),
        )
        self.tare_duty = TareDuty(
            settings.tare.rule,
            declared=settings.tare.declared,
            on_record=partial(at_start.study_on_record, home),
        )
        before = last_packed_run(home)
        clear = ClearanceDuty(before, at_start.gates_after(home, before))
        pauses = PauseDuty(standing_facts(home, EntryKind.PAUSE))
        labels = label_gates(house, home, clock)
        self.labels = labels.desk
        lots = lot_gates(house, home, clock, self._rehearse, self.store.next_blend_number)
        self.lots, self._changes, self.on_line = lots.desk, lots.changes, lots.duty
        self.checks = ChecksDesk(settings, home, clock, self.scale_duty, self.tare_duty, 1)
        self.change = ChangeDesk(settings.line, home, clock, clear, pauses)
        self.catalogue = replace(catalogue_of(house, software()), lots=lots.book)
        quality = quality_gates(house, home, clock, 1)
        self.quality = quality.desks
        self._follow = Follows(home).follow
        gates = (
            *((clear,) if settings.checks.clearance else ()),
            *((self.scale_duty,) if settings.checks.on else ()),
            *((self.tare_duty,) if settings.tare.on else ()),
        )
        self.duties = Duties((pauses, lots.duty, *gates, *quality.duties, *labels.duties))
        self._cycle = Cycle(LineRules(interval=settings.scale.interval))

    @property
    def run(self) -> Run:
        """The open run."""
        assert self._cycle.run is not None, "a run is open"
        return self._cycle.run

    def close(self) -> None:
        """Close the store."""
        self.store.close()

    def use(self, product: Product) -> None:
        """Put a new version of a product in place of the one before."""
        products = {**self.catalogue.products, product.code: product}
        self.catalogue = replace(self.catalogue, products=products)

    def enter(self, who: str, *entered: Fact) -> tuple[FactRecord, ...]:
        """Record facts with all that follows from them.

        Raises:
            ValueError, StoreFault: they are refused; nothing is recorded.
        """
        at = self.clock.now()
        ready = self._changes.prepare(entered, self._cycle, at)
        bring = self._follow(ready.facts, at, who)
        records = self.store.record((*ready.facts, *bring), at, who)
        for record in records:
            self.duties.noted(record)
        if ready.run is not None:
            self._cycle = replace(self._cycle, run=ready.run)
        return records

    def open_run(self, choice: RunChoice) -> Run:
        """Open a run.

        Raises:
            ValueError, StoreFault: it is refused.
        """
        at = self.clock.now()
        catalogue = self.catalogue
        number = self.store.next_blend_number(catalogue.line, day_of(at, catalogue.cut_off))
        run = self._changes.dated(open_run(choice, catalogue, at, number, new_uid(at)))
        self._rehearse(run)
        self.store.start_run(run, at)
        loaded = self._changes.opening(run, at)
        records = self.store.record(loaded, at, run.lead) if loaded else ()
        self._cycle = replace(self._cycle, phase=Phase.READY, run=run)
        self.duties.opened(run, at.utc)
        for record in records:
            self.duties.noted(record)
        return run

    def end_run(self, who: str) -> None:
        """End the open run."""
        self.store.end_run(self.run.id, self.clock.now(), who)
        self._cycle = replace(self._cycle, phase=Phase.CLOSED, run=None)

    def closing(self) -> str:
        """The first reason why no bag is taken now; empty when one is."""
        now = self.clock.now().utc
        return next((words for duty in self.duties.all if (words := duty.closing(now))), "")

    def pack(self, weighing: Weighing, residue: Residue | None, aside: str = "") -> PackRecord:
        """Record a bag as the line would, and bring its label through all its states.

        Args:
            weighing: what the scale showed.
            residue: the empty pan before it.
            aside: why the packer sets it aside before it has a label; empty for all others.

        Raises:
            EnvironmentFault: a duty closes acceptance, or an open bag is outside the window.
        """
        words, run, now = self.closing(), self.run, self.clock.now()
        if words:
            raise EnvironmentFault("the simulated line takes no bag", words)
        verdict = classify(weighing.net.in_unit(run.product.nominal.unit), run.window)
        good = run.window.floor <= weighing.net <= run.window.upper
        if not good and not aside and run.product.mode is PackMode.FILL:
            raise EnvironmentFault("an open bag is filled until it fits", str(verdict))
        record = self.store.add_pack(
            PackDraft(
                run=run.id,
                weighing=weighing,
                verdict=verdict,
                quality=Quality.REJECT if aside or not good else Quality.GOOD,
                reason=aside or ("" if good else str(verdict)),
                blend_lot=run.blend_lot,
                lot_set=run.lot_set.key,
                use_by=run.dating.use_by,
                production_day=run.dating.production_day,
                operator=run.operator,
                judged_at=now,
                residue=residue,
            )
        )
        self.duties.packed(record)
        if record.draft.quality is Quality.GOOD:
            for state in _STEPS:
                self.clock.move(_LABEL_S)
                self.store.mark_label(record.serial, state, self.clock.now(), "station", "")
        return record

    def set_aside(self, serial: str, reason: str) -> None:
        """Set a labelled bag aside; its label is void."""
        self.store.take_back(serial, reason, self.clock.now(), self.run.operator)
        self.duties.taken_back(serial)

    def _rehearse(self, run: Run) -> None:
        self.labels.specimen(run)
