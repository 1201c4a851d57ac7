"""An invented packhouse: Hollow Ash Salads, line L1, a mix of two leaves in 250 g bags."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from pathlib import Path

import pytest

from station.core.dating import Dating
from station.core.ids import uuid7
from station.core.line_lots import LotMove, Move
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot
from station.core.mass import Mass, Unit
from station.core.metrology.rule_set import Limits
from station.core.metrology.verdict import Window, classify
from station.core.pack import LabelState, Moment, PackDraft, Quality, Weighing
from station.core.product import BagItem, Component, PackMode, Product, Share
from station.core.run import Run
from station.store.engine import database
from station.store.queries import trace_pack
from station.store.writer import StationStore

DAY = date(2026, 3, 4)
SITE, STATION = "HA", "L1A"


class SteppingClock:
    """Moves on by 700 ms each time it is asked, in a zone one hour ahead of UTC."""

    def __init__(self) -> None:
        self.count = 0

    def now(self) -> Moment:
        self.count += 1
        utc = datetime(2026, 3, 4, 7, tzinfo=UTC) + timedelta(milliseconds=700 * self.count)
        return Moment(utc, 60, "Europe/Madrid", self.monotonic_ns())

    def monotonic_ns(self) -> int:
        return self.count * 700_000_000


def grams(text: str) -> Mass:
    return Mass.of(text, Unit.GRAM)


# 250 g: T = 9 g, T1 = 241 g, T2 = 232 g (Directive 76/211/EEC Annex I, section 2.4)
LIMITS = Limits(
    "eu-76-211", "test", grams("250"), grams("9"), grams("241"), grams("232"), "Annex I 2.4"
)
WINDOW = Window(grams("250"), grams("252"), grams("262"), LIMITS)
LEAF, CRESS = Component("LEAF", "Baby leaf"), Component("CRESS", "Garden cress", max_age_days=5)
PRODUCT = Product(
    code="HA-250",
    version=3,
    name="Hollow Ash mix 250 g",
    gtin="09521234543213",
    market="EU",
    rule_set="eu-76-211",
    nominal=grams("250"),
    floor=grams("250"),
    target=grams("252"),
    upper=grams("262"),
    bag=BagItem("BAG-7", "clear bag", grams("12.5"), "mean of 20 bags, invented"),
    mode=PackMode.FILL,
    recipe=(Share(LEAF, Decimal("82.5")), Share(CRESS, Decimal("17.5"))),
    life_days=6,
    atmosphere="N2/CO2 95/5",
    storage="Keep below 5 °C",
)
LOTS = (
    InputLot("LF-101", "LEAF", "Ashbrook Growers", date(2026, 3, 3), date(2026, 3, 2)),
    InputLot("LF-102", "LEAF", "Quarry Farm", date(2026, 3, 4)),
    InputLot("CR-201", "CRESS", "Tinmill Beds", date(2026, 3, 4), use_by=date(2026, 3, 9)),
)
BY_CODE = {lot.code: lot for lot in LOTS}


def a_run(number: int = 1, codes: tuple[str, ...] = ("LF-101", "CR-201")) -> Run:
    lots = tuple(BY_CODE[code] for code in codes)
    at = datetime(2026, 3, 4, 6, number % 60, tzinfo=UTC)
    return Run(
        id=str(uuid7(at, number.to_bytes(10, "big"))),
        product=PRODUCT,
        window=WINDOW,
        dating=Dating(DAY, date(2026, 3, 9), "CR-201"),
        lot_set=LotSet.of(LotUse(lot.component, lot.code) for lot in lots),
        lots=lots,
        blend_lot=f"L1{DAY:%y%j}{number:02d}",
        line="L1",
        lead="p.marsh",
        operator="i.sedge",
        order_size=400,
        scale="SN 0042",
        unit=Unit.KILOGRAM,
        software="0.1.0",
    )


def a_draft(run: Run, clock: SteppingClock, net: str = "0.2525", reason: str = "") -> PackDraft:
    kept = Mass.of(net, Unit.KILOGRAM)
    tare = Mass.of("0.0125", Unit.KILOGRAM)
    return PackDraft(
        run=run.id,
        weighing=Weighing(
            gross=kept + tare,
            tare=tare,
            net=kept,
            spread=Mass.of("0.0005", Unit.KILOGRAM),
            dwell_ms=1830,
            top_ups=2,
            frame="0a20302e32363530206b672020202020200d",
        ),
        verdict=classify(kept.in_unit(Unit.GRAM), run.window),
        quality=Quality.REJECT if reason else Quality.GOOD,
        reason=reason,
        blend_lot=run.blend_lot,
        lot_set=run.lot_set.key,
        use_by=run.dating.use_by,
        production_day=run.dating.production_day,
        operator=run.operator,
        judged_at=clock.now(),
    )


def fill(store: StationStore, clock: SteppingClock, run: Run, bags: int = 5) -> list[str]:
    """Pack bags of an open run; every third is a reject, the others get their label applied."""
    serials = []
    for bag in range(bags):
        if bag % 3 == 2:
            record = store.add_pack(a_draft(run, clock, "0.2405", "too light"))
        else:
            record = store.add_pack(a_draft(run, clock))
            for state in (LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED):
                store.mark_label(record.serial, state, clock.now(), "station", "")
        serials.append(record.serial)
    return serials


@dataclass(frozen=True)
class World:
    """The invented packhouse at the hands of a test."""

    home: Path
    clock: SteppingClock = field(default_factory=SteppingClock)
    site: str = SITE
    station: str = STATION
    day: date = DAY
    lots: tuple[InputLot, ...] = LOTS

    def open(self) -> StationStore:
        return StationStore.open(self.home, self.site, self.station, self.clock)

    def stocked(self) -> StationStore:
        store = self.open()
        store.add_lots(self.lots, self.clock.now(), "p.marsh")
        return store

    def start(
        self,
        store: StationStore,
        number: int = 1,
        codes: tuple[str, ...] = ("LF-101", "CR-201"),
    ) -> Run:
        run = a_run(number, codes)
        store.start_run(run, self.clock.now())
        return run

    def run(self, number: int = 1, codes: tuple[str, ...] = ("LF-101", "CR-201")) -> Run:
        return a_run(number, codes)

    def draft(self, run: Run, net: str = "0.2525", reason: str = "") -> PackDraft:
        return a_draft(run, self.clock, net, reason)

    def fill(self, store: StationStore, run: Run, bags: int = 5) -> list[str]:
        return fill(store, self.clock, run, bags)

    def crash(self, store: StationStore) -> None:
        """Let go of the files as a killed process does: nothing more is written."""
        store._release()

    @property
    def database(self) -> Path:
        return database(self.home)

    def tamper(self, *statements: str) -> None:
        """Change the closed file as someone with a database tool would."""
        connection = sqlite3.connect(self.database, isolation_level=None)
        with closing(connection):
            for statement in statements:
                connection.execute(statement)


def back_on_the_line(home: Path, serial: str) -> LotMove:
    """The move that puts the content of a bag set aside on the line again."""
    bag = trace_pack(home, serial)
    draft = bag.record.draft
    return LotMove(
        Move.REWORK,
        draft.blend_lot,
        members=tuple(LotUse(one.component, one.code) for one in bag.lots),
        use_by=draft.use_by,
        packed_at=draft.judged_at.utc,
        serials=(serial,),
    )


@pytest.fixture
def world(tmp_path: Path) -> World:
    return World(tmp_path / "a home %20 with signs?#")


@dataclass(frozen=True)
class Packed:
    """A closed record and what is in it."""

    home: Path
    serials: list[str]
    runs: tuple[Run, Run]


@pytest.fixture(scope="session")
def packed_once(tmp_path_factory: pytest.TempPathFactory) -> Packed:
    """Bags 1-5 from LF-101 and CR-201, bags 6-10 also from LF-102; bag 1 taken back."""
    world = World(tmp_path_factory.mktemp("packed") / "home")
    with world.stocked() as store:
        first = world.start(store)
        serials = world.fill(store, first, 5)
        store.take_back(serials[0], "torn", world.clock.now(), "i.sedge")
        store.end_run(first.id, world.clock.now(), "p.marsh")
        second = world.start(store, 2, ("LF-101", "LF-102", "CR-201"))
        serials += world.fill(store, second, 5)
    return Packed(world.home, serials, (first, second))


@pytest.fixture
def store(world: World) -> Iterator[StationStore]:
    """An open store that knows the lots."""
    with world.stocked() as opened:
        yield opened
