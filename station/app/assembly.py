"""Builds a station from its settings, starts its threads in order and stops them in order."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from drivers.frames.scp0499_facts import ScaleFacts, misfit
from drivers.link import LinkDown, LinkItem
from drivers.port import PortSettings
from drivers.printer.base import Printer
from drivers.printer.file import FolderPrinter
from drivers.wire import WireLog
from station.access.opening import access_of
from station.app.alarm_causes import alarm_gates
from station.app.audience import Audience as Audience
from station.app.centre_line import centre_line, centre_words, sync_age
from station.app.change_desk import ChangeDesk
from station.app.checks_desk import ChecksDesk
from station.app.guards import (
    ClockDesk,
    Takeover,
    clock_at_start,
    found_at_start,
    past_of,
)
from station.app.label_desk import PrintingDesk
from station.app.label_gates import label_gates
from station.app.labels_desk import reprint_rule
from station.app.line_event import line_event
from station.app.live_numbers import LiveNumbers
from station.app.lot_gates import lot_gates
from station.app.paper import drawers, ticket_drawers
from station.app.printers import unit_printer
from station.app.quality_gates import Follows, quality_gates
from station.app.record_care import RecordCare
from station.app.scale_line import NO_SCALE, scale_link, steady_rules
from station.app.scanner_line import scanner_link
from station.app.service_gates import service_gates
from station.app.service_system import system_rows
from station.app.shipping_desk import shipping_gates
from station.clock import StationClock, SystemClock
from station.clock_sync import synced
from station.config.catalogue import catalogue_of
from station.config.packhouse import Packhouse
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.core.pack import Moment
from station.core.rights import STATION
from station.line import events
from station.line.clearance_duty import ClearanceDuty
from station.line.clock_duty import ClockDuty
from station.line.cycle_state import LineRules
from station.line.duties import Duties
from station.line.guided import DWELL_NS
from station.line.listeners import Followers, Listeners
from station.line.pause_duty import PauseDuty
from station.line.product_book import ProductBook
from station.line.room_duty import RoomDuty
from station.line.runner import LineRunner
from station.line.scale_duty import ScaleDuty
from station.line.state import EntryAnswer, LineState
from station.line.swap_duty import SwapDuty
from station.line.tare_duty import TareDuty
from station.screens.service_source import Named
from station.software_id import software_id
from station.store import at_start
from station.store.facts import facts
from station.store.newest import newest_entry_at
from station.store.queries import last_run
from station.store.room import Reserve, space_of
from station.store.run_counts import last_packed_run
from station.store.standing import standing_facts
from station.store.writer import StationStore

if TYPE_CHECKING:
    from station.app.quality_desks import QualityDesks

_MS = 1_000_000


def software() -> str:
    """Version and short hash of the station, as records name it."""
    return str(software_id())


@dataclass
class Station:
    """One station with its store, line, printer and scale.

    Args:
        house: the settings.
        home: folder of the store; made where it is missing.
        port: the line to the scale.
        labels: folder the label files go to.
        audience: who watches.
        haste: how much faster than real time the scale goes; above 1 on a bench only.
        record: file that takes in everything the scale sends; None for none.
        printer: where labels go instead of the folder.
        key: file of the key that signs heads of the journal; None for unsigned ones.
        settings: folder of the settings, which whoever services the station may change; None
            where nobody may.
    """

    house: Packhouse
    home: Path
    port: PortSettings
    labels: Path
    audience: Audience = field(default_factory=Audience)
    haste: float = 1.0
    record: Path | None = None
    printer: Printer | None = None
    key: Path | None = None
    settings: Path | None = None
    time: StationClock | None = None

    def __post_init__(self) -> None:
        settings = self.house.settings
        scale = settings.scale
        self.clock: StationClock = self.time or SystemClock(settings.zone)
        self.home.mkdir(parents=True, exist_ok=True)
        # Before the record is opened: on a full disk it needs the reserve.
        look, room = partial(space_of, self.home), settings.record.room
        self.room = RoomDuty(look, Reserve(self.home), room, new_uid)
        newest = newest_entry_at(self.home)
        self.access = access_of(
            self.house, self.home, self.clock, lambda fact: self.line.enter((fact,), STATION)
        )
        self.signing = self.access.signing
        names = (settings.site, settings.station)
        self.store = StationStore.open(self.home, *names, self.clock, self.key)
        self.in_doubt = self.store.in_doubt()
        now = self.clock.now()
        left = last_run(self.home)
        if left is not None and left.open:  # the station stopped in it; nothing was lost
            self.store.end_run(left.run.id, now, "station")
        self._begin(newest, now)
        self.store.add_lots(tuple(self.house.lots.values()), now, "station")
        self.desk = PrintingDesk(
            drawer=drawers(settings.printer),
            printer=self.printer or FolderPrinter(self.labels),
            packer=settings.packer,
            site=settings.site,
            station=settings.station,
            answer=self._answer,
            show=self.audience.label,
            late_s=settings.printer.out_within_s,
            units=unit_printer(self.house, self.labels, self.printer),
            tickets=ticket_drawers(settings.printer) if settings.quality.tickets else None,
        )
        shipping = shipping_gates(self.house, self.home, self.clock, self.desk, self._enter)
        self.shipping, self._unit_labels = shipping.desk, shipping.labels
        if shipping.left:
            self.store.record(shipping.left, now, "station")
        self.numbers = LiveNumbers(self.home, self.clock, self.house.prices)
        self.scale_duty = ScaleDuty(
            scale.id, settings.checks.schedule, at_start.scale_past(self.home, scale.id)
        )
        self.tare_duty = TareDuty(
            settings.tare.rule,
            declared=settings.tare.declared,
            on_record=partial(at_start.study_on_record, self.home),
        )
        self.checks = ChecksDesk(
            settings,
            self.home,
            self.clock,
            self.scale_duty,
            self.tare_duty,
            self._hasty(DWELL_NS // _MS),
        )
        before = last_packed_run(self.home)
        self.clearance_duty = ClearanceDuty(before, at_start.gates_after(self.home, before))
        self.pause_duty = PauseDuty(standing_facts(self.home, EntryKind.PAUSE))
        self.change = ChangeDesk(
            settings.line, self.home, self.clock, self.clearance_duty, self.pause_duty
        )
        clear = (self.clearance_duty,) if settings.checks.clearance else ()
        labels = label_gates(self.house, self.home, self.clock)
        self.label_checks = labels.desk
        lots = lot_gates(
            self.house, self.home, self.clock, self.desk.rehearse, self.store.next_blend_number
        )
        self.lots = lots.desk
        self.centre = centre_line(self.house, self.home, self.clock, software(), lots.book)
        centre = () if self.centre is None else (self.centre.duty,)
        # A station on the bench keeps no key and needs no words about it.
        unsigned = "" if self.key is None else self.store.day_heads.unsigned
        self.care = RecordCare(
            self.home, names, settings.record.backup, unsigned, self.clock, self._enter
        )
        self.swap_duty = SwapDuty(at_start.scale_in_use(self.home))
        dwell_ns = self._hasty(DWELL_NS // _MS)
        quality = quality_gates(self.house, self.home, self.clock, dwell_ns)
        self._quality = quality
        self.products = ProductBook(
            self.house.products,
            approval_needed=settings.fill.approve_products,
            past=at_start.approvals_past(self.home, self.house.products.values()),
        )
        gates = (self.scale_duty,) if settings.checks.on else ()
        tares = (self.tare_duty,) if settings.tare.on else ()
        self.alarms = alarm_gates(
            (
                *(self.clock_duty, self.room, self.numbers, self.swap_duty, self.pause_duty),
                *(*clear, lots.duty, self._unit_labels, self.care, self.products),
                *(*gates, *tares, *labels.duties, *quality.duties, *centre),
            ),
            self.clock,
            lambda: self.desk.trouble,
            lambda now: sync_age(self.centre, now),
            self.audience.sound,
        )
        self.line = LineRunner(
            store=self.store,
            desk=self.desk,
            clock=self.clock,
            rules=LineRules(
                interval=scale.interval,
                dwell_ns=self._hasty(settings.timing.dwell_ms),
                stale_ns=settings.timing.stale_ms * _MS,
            ),
            catalogue=replace(
                catalogue_of(self.house, software()),
                lots=lots.book,
                products=self.products,
                refusal=self.products.refusal,
            ),
            new_id=new_uid,
            listeners=Listeners(
                state=self._on_state,
                answer=self.audience.answer,
                sound=self.audience.sound,
                timing=self.audience.timing,
                entered=self._on_entered,
            ),
            duties=Duties(self.alarms.duties),
            lots=lots.changes,
            copies=reprint_rule(settings, tuple(self.house.people.values())),
            follow=Followers(
                facts=Follows(self.home).follow,
                run=self.takeover.with_run,
                watch=lambda at: (
                    *(*self.clock_duty.watch(at), *self.room.watch(at)),
                    *self.alarms.board.watch(at),
                ),
                against_run=lambda: self.clock_duty.wanting or self.room.shut,
            ),
            proofs=self.signing,
        )
        self.wire = WireLog(self.clock.monotonic_ns)
        if self.record is not None:
            self.wire.record(self.record)
        if self.centre is not None:
            self.centre.stops.enter = self.line.enter
        self.link = scale_link(
            scale,
            self.port,
            steady_rules(scale, settings.timing.stale_ms, self.haste),
            self._on_item,
            self.clock.monotonic_ns,
            self.wire,
            self.haste,
        )
        self.service = service_gates(
            self.house,
            self.home,
            self.clock,
            self.wire,
            self.link,
            self.swap_duty,
            self.settings,
            self._system,
            self._hasty(DWELL_NS // _MS),
        )
        self.scanner = (
            None
            if settings.scanner is None
            else scanner_link(settings.scanner, self.audience.scan, self.audience.words)
        )

    @property
    def quality(self) -> QualityDesks:
        """QA's desks, made when somebody first asks for them."""
        return self._quality.desks

    def _begin(self, newest: datetime | None, now: Moment) -> None:
        """Record what this start finds about settings, software and clock."""
        found = found_at_start(self.home, self.settings, now)
        self.counters = found.counters
        begun = (*found.facts, *clock_at_start(newest, now))
        if begun:
            self.store.record(begun, now, STATION)
        self.takeover = Takeover(past_of(self.home, EntryKind.SETTING))
        self.clock_duty = ClockDuty(
            self.house.settings.cut_off,
            new_uid,
            past_of(self.home, EntryKind.CLOCK),
            self.clock.boot_ns,
            synced,
        )
        self.clock_desk = ClockDesk(self.clock_duty, self.clock)
        for told in facts(self.home, (EntryKind.DISK,), newest=1):
            self.room.noted(told)

    def start(self) -> None:
        """Start printer, line and scale, in this order: no reading comes before a listener."""
        self.desk.start()
        self.line.start()
        if self.port.is_recording:
            self.line.bar(*NO_SCALE)
        self.link.start()
        if self.scanner is not None:
            self.scanner.start()
        if self.centre is not None:
            self.centre.worker.start()
        self.care.start()
        made = self.store.day_heads.key_made
        if made is not None:
            words = f"A new station key was made at {made}: copy it once to a safe place"
            self.audience.words(words)

    def stop(self) -> None:
        """Stop scale, line and printer, in this order, and close the store."""
        self.care.stop()
        if self.centre is not None:
            self.centre.worker.stop()
        if self.scanner is not None:
            self.scanner.stop()
        self.link.stop()
        self.wire.end_recording()
        self.line.stop()
        self.desk.stop()
        self.store.close()

    def _hasty(self, milliseconds: int) -> int:
        """Nanoseconds of real time that stand for milliseconds at the scale."""
        return max(1, round(milliseconds * _MS / self.haste))

    def _answer(self, event: events.Event) -> None:
        self.line.post(event)

    def _enter(self, facts: tuple[Fact, ...], who: str) -> None:
        self.line.enter(facts, who)

    def _on_entered(self, answer: EntryAnswer) -> None:
        """Tell of what people entered; labels of cases the station enters by itself."""
        if not self._unit_labels.mine(answer):
            self.audience.entered(answer)

    def _on_state(self, state: LineState) -> None:
        self.numbers.state(state)
        self.alarms.board.state(state)
        self.audience.state(state)

    def _system(self) -> tuple[Named, ...]:
        """Rows about the station for whoever services it."""
        none = "none in the settings"
        now = self.clock.now()
        more = (
            ("Printer", self.desk.printer_words),
            ("Scanner", none if self.scanner is None else self.scanner.state),
            ("Centre", none if self.centre is None else centre_words(self.centre)),
            ("Backups", self.care.words(now.utc)),
            ("Heads", self.store.day_heads.unsigned or "signed with the station's key each day"),
            ("Clock", f"{now.utc:%Y-%m-%d %H:%M:%S} UTC, {now.zone}, {self.clock_duty.synced}"),
            ("Settings changed", f"{self.counters.configuration} times"),
            ("of them scale", f"{self.counters.calibration} times"),
        )
        return (*system_rows(self.home, software(), self.room.words), *more)

    def _on_item(self, item: LinkItem) -> None:
        self.service.desk.hear(item)
        if isinstance(item, LinkDown):
            self.scale_duty.disturbed("its line was lost")
        if isinstance(item, ScaleFacts):
            scale = self.house.settings.scale
            words = misfit(item, str(scale.unit), scale.interval.amount, scale.capacity.amount)
            self.line.post(events.Barred("scale", words))
        event = line_event(item)
        if event is not None:
            self.line.post(event)
