"""A record whose first runs ended six years ago: Hollow Ash Salads, all of it invented.

Run 1 may go: its reject was dumped, its case left. Run 2 has a reject nobody decided about. Run 3
is of today and has lots of its own.
"""

from dataclasses import dataclass, field, replace
from datetime import UTC, date, datetime, time
from pathlib import Path

from station.core.dispositions import Decided, Disposition, disposition_fact
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot
from station.core.pack import LabelState
from station.core.purging import Purge, PurgedRun, purge_fact
from station.core.run import Run
from station.core.shipping import Shipment, UnitLabel
from station.core.shipping_entries import case_fact, shipment_fact, unit_label_fact
from station.store.purge import Order, Purged, purge
from station.store.writer import StationStore
from tests.station.store.conftest import SITE, STATION, World, a_draft, a_run
from tests.station.store.dock import MARSHGATE, a_case
from tests.station.store.signed_world import DayClock, key_of, opened

YEARS = 6 * 365
KEEP = 5
BAGS = 24
"""Of run 1."""
WHY = "the years are over"
LOTS = {
    1: (
        InputLot("LF-101", "LEAF", "Ashbrook Growers", date(2026, 3, 3), date(2026, 3, 2)),
        InputLot("CR-201", "CRESS", "Tinmill Beds", date(2026, 3, 4), use_by=date(2026, 3, 9)),
    ),
    2: (
        InputLot("LF-102", "LEAF", "Quarry Farm", date(2026, 3, 4)),
        InputLot("CR-202", "CRESS", "Tinmill Beds", date(2026, 3, 4)),
    ),
    3: (
        InputLot("LF-103", "LEAF", "Quarry Farm", date(2032, 3, 1)),
        InputLot("CR-203", "CRESS", "Tinmill Beds", date(2032, 3, 1)),
    ),
}


def run_with(number: int, lots: tuple[InputLot, ...]) -> Run:
    used = LotSet.of(LotUse(lot.component, lot.code) for lot in lots)
    return replace(a_run(number), lots=lots, lot_set=used)


@dataclass
class OldRuns:
    """The record, closed, and what is in it."""

    world: World
    clock: DayClock
    runs: dict[int, Run] = field(default_factory=dict)
    serials: dict[int, list[str]] = field(default_factory=dict)
    count: int = 0

    @property
    def home(self) -> Path:
        return self.world.home

    @property
    def key(self) -> Path:
        return key_of(self.world)

    def open(self) -> StationStore:
        return opened(self.world, self.clock, self.key)

    def uid(self) -> str:
        self.count += 1
        return f"old-{self.count}"

    def pack(self, store: StationStore, number: int, bags: int, lots=None) -> None:
        """A whole run; its third bag is a reject."""
        run = self.runs[number] = run_with(number, lots or LOTS[number])
        store.add_lots(run.lots, self.clock.now(), "p.marsh")
        store.start_run(run, self.clock.now())
        its = self.serials[number] = []
        for bag in range(bags):
            light = bag == 2
            made = a_draft(run, self.clock, "0.2405" if light else "0.2525", "too light" * light)
            its.append(store.add_pack(made).serial)
            for state in (
                ()
                if light
                else (
                    LabelState.SUBMITTED,
                    LabelState.SPOOLED,
                    LabelState.APPLIED,
                )
            ):
                store.mark_label(its[-1], state, self.clock.now(), "station", "")
        store.end_run(run.id, self.clock.now(), "p.marsh")

    def record(self, store: StationStore, *facts: Fact) -> None:
        store.record(facts, self.clock.now(), "q.fen")

    def dump(self, store: StationStore, number: int) -> None:
        decided = Decided(self.serials[number][2], Disposition.DUMP, "too light", witness="p.marsh")
        self.record(store, disposition_fact(decided, self.uid(), self.runs[number].id))

    def case(self, store: StationStore, number: int, count: int) -> str:
        """A case of the last three bags of a run, with its label on it."""
        case = a_case(self.home, count, self.serials[number][-3:])
        self.record(store, case_fact(case, self.uid(), self.runs[number].id))
        for state in (LabelState.SUBMITTED, LabelState.SPOOLED):
            self.record(store, unit_label_fact(UnitLabel(case.sscc, state, 0), self.uid()))
        return case.sscc

    def ship(self, store: StationStore, name: str, *cases: str) -> None:
        leaving = Shipment(name, MARSHGATE, "delivery note 12", cases)
        self.record(store, shipment_fact(leaving, self.uid()))

    def years_on(self, store: StationStore) -> None:
        """Six years later: a run of today, and more entries than a start looks through."""
        self.clock.days = YEARS
        self.pack(store, 3, 6)
        details = {"words": "nothing"}
        calls = [Fact(EntryKind.CALL, self.uid(), "L1", "made", "", details) for _ in range(1300)]
        self.record(store, *calls)

    def order(self, folder: Path, **other: object) -> Order:
        folder.mkdir(exist_ok=True)
        given = {"keep_years": KEEP, "sent": None, "who": "m.reed", "why": WHY, **other}
        return Order(folder=folder, **given)

    def purge(self, folder: Path, told=lambda *_: None, **other: object) -> Purged:
        order = self.order(folder, **other)
        return purge(self.home, (SITE, STATION), self.clock, self.key, order, told)


def old_runs(world: World) -> OldRuns:
    made = OldRuns(world, DayClock(world.clock))
    with made.open() as store:
        made.pack(store, 1, BAGS)
        made.dump(store, 1)
        made.ship(store, "S-1", made.case(store, 1, 1))
        made.pack(store, 2, 6)
        made.years_on(store)
    return made


def note_of_purge(day: date, uid: str = "purge-1", folder: str = "old-runs") -> Fact:
    """The entry of a purge of one invented run of a day; for what only tells of purges."""
    run = PurgedRun(
        uid=f"run-{uid}",
        product="SLAW-340",
        name="Coleslaw mix",
        blend_lots=("L10000001",),
        inputs=("LF-0",),
        first_day=day,
        last_day=day,
        bags=12,
        serials=(),
        entries=(),
        root="00" * 32,
        kinds="00" * 32,
    )
    before = datetime.combine(day, time(), UTC)
    return purge_fact(Purge(uid, before, KEEP, folder, "ab" * 32, WHY, 1, 1, (run,)))
