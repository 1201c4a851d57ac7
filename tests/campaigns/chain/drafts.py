"""Bags of the demo packhouse for campaigns that need no scale: a store, a run, and its drafts."""

from dataclasses import replace
from pathlib import Path

from station.app.places import demo_settings
from station.app.speed.rows import subject
from station.clock import SystemClock
from station.config.load import load
from station.core.mass import Mass
from station.core.metrology.verdict import classify
from station.core.pack import LabelState, PackDraft, Quality, Weighing
from station.line.opening import calendar_day
from station.store.queries import last_run
from station.store.writer import StationStore

CLOCK = SystemClock("Europe/Dublin")
_LABELS = (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED)


class Packer:
    """Opens the store in a folder, starts a run where none is open, and packs.

    Args:
        home: the record.
    """

    def __init__(self, home: Path) -> None:
        house = load(demo_settings(), calendar_day(CLOCK.now()))
        settings = house.settings
        self.store = StationStore.open(home, settings.site, settings.station, CLOCK)
        run = subject(house).run
        self.store.add_lots(run.lots, CLOCK.now(), "station")
        left = last_run(home)
        if left is not None and left.open:
            self.run = left.run
        else:
            number = self.store.next_blend_number(run.line, run.dating.production_day)
            self.run = replace(run, blend_lot=f"{run.blend_lot[:-2]}{number:02d}")
            self.store.start_run(self.run, CLOCK.now())
        self.count = 0

    def draft(self) -> PackDraft:
        """The next bag; each tenth is too light."""
        self.count += 1
        run = self.run
        unit, tare = run.unit, run.product.bag.tare.in_unit(run.unit)
        light = self.count % 10 == 0
        net = run.product.target.in_unit(unit) + Mass.of(self.count % 5, unit)
        if light:
            net = run.product.floor.in_unit(unit) - Mass.of(3, unit)
        return PackDraft(
            run=run.id,
            weighing=Weighing(net + tare, tare, net, Mass.of(0, unit), 900, 1, "0a"),
            verdict=classify(net, run.window),
            quality=Quality.REJECT if light else Quality.GOOD,
            reason="too light" if light else "",
            blend_lot=run.blend_lot,
            lot_set=run.lot_set.key,
            use_by=run.dating.use_by,
            production_day=run.dating.production_day,
            operator=run.operator,
            judged_at=CLOCK.now(),
        )

    def pack(self) -> str:
        """Record a bag and, where it is good, its label's way; returns the serial."""
        record = self.store.add_pack(self.draft())
        if record.draft.quality is Quality.GOOD:
            for state in _LABELS:
                self.store.mark_label(record.serial, state, CLOCK.now(), "station", "")
        return record.serial
