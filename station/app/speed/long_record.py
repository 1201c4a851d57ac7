"""A record as long as years of packing, made in minutes: what the questions are measured on."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from station.app.assembly import software
from station.app.practice import run_choice
from station.app.speed.long_facts import RunFacts
from station.config.catalogue import catalogue_of
from station.config.load import load
from station.config.packhouse import Packhouse
from station.core.ids import uuid7
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot
from station.core.mass import Mass
from station.core.metrology.verdict import classify
from station.core.pack import Moment, PackDraft, Quality, Weighing
from station.core.product import Product
from station.core.run import Run
from station.line.opening import open_run
from station.store.bulk import BulkRecord, BulkRun
from station.store.queries import summary
from station.store.writer import StationStore

BAGS_A_DAY = 5500
"""Eleven hours of 500 bags, in five runs."""
_RUNS_A_DAY = 5
_EACH = timedelta(seconds=7.2)
_LAST_DAY = date(2026, 11, 24)
_KINDS = 40
"""Bags of a run before they repeat; one of them is too light."""


@dataclass(frozen=True, slots=True)
class LongRecord:
    """What was made.

    Args:
        home: the folder.
        packs: bags in it.
        day: its last whole production day.
        lot: an input lot of that day.
    """

    home: Path
    packs: int
    day: date
    lot: str


class _Still:
    """A clock that stands."""

    def __init__(self, at: Moment) -> None:
        self._at = at

    def now(self) -> Moment:
        return self._at

    def monotonic_ns(self) -> int:
        return self._at.monotonic_ns


def make_long_record(
    config: Path, home: Path, packs: int, a_day: int = BAGS_A_DAY, staying: str = ""
) -> LongRecord:
    """Fill an empty folder with so many bags, day after day up to a fixed last one.

    Args:
        config: settings whose lots are counted from the day.
        home: the folder; without a record.
        packs: 1 or more.
        a_day: bags of each day but the first, which is the short one.
        staying: code of a component whose first lot stays on the line all the time.
    """
    days = -(-packs // a_day)
    first = _LAST_DAY - timedelta(days=days - 1)
    house = load(config, first)
    start = _moment(house, first, 0)
    names = (house.settings.site, house.settings.station)
    with StationStore.open(home, *names, _Still(start)):
        pass
    record = BulkRecord(home, *names, start)
    try:
        made = record.add(_runs(config, first, days, packs, a_day, staying))
    finally:
        record.close()
    return LongRecord(home, made, _LAST_DAY, _lot_of_last_day(config))


def last_of(config: Path, home: Path) -> LongRecord:
    """Return what a folder filled earlier holds; reads all of it once."""
    return LongRecord(home, summary(home).packs, _LAST_DAY, _lot_of_last_day(config))


def _lot_of_last_day(config: Path) -> str:
    house = load(config, _LAST_DAY)
    product = next(iter(house.products.values()))
    return run_choice(house, product, _LAST_DAY, None).lots[0]


def _runs(
    config: Path, first: date, days: int, packs: int, a_day: int, staying: str
) -> Iterator[BulkRun]:
    left, known, stays = packs, set[str](), list[InputLot]()
    for past in range(days):
        day = first + timedelta(days=past)
        house = load(config, day)
        products = tuple(house.products.values())
        for number in range(_RUNS_A_DAY):
            # The first day is the short one, so that the last day is whole.
            spare = a_day * days - packs if past == 0 else 0
            bags = min(left, max(0, (a_day - spare) // _RUNS_A_DAY))
            if past == 0 and number == _RUNS_A_DAY - 1:
                bags = a_day - spare - (_RUNS_A_DAY - 1) * bags
            if not bags:
                continue
            left -= bags
            product = products[number % len(products)]
            at = _moment(house, day, number)
            run = _opened(house, product, day, at, number + 1)
            if not stays:
                stays = [lot for lot in run.lots if lot.component == staying][:1]
            run = _with_lot(run, stays)
            code = stays[0].code if stays else ""
            there = code in known
            new = tuple(lot for lot in run.lots if lot.code not in known)
            known |= {lot.code for lot in new}
            said = RunFacts(house, run, at, bags, code, there)
            yield BulkRun(run, new, at, bags, _EACH, _kinds(run, at), said.before(), said.after())


def _opened(house: Packhouse, product: Product, day: date, at: Moment, number: int) -> Run:
    catalogue = catalogue_of(house, software())
    uid = str(uuid7(at.utc, number.to_bytes(10, "big")))
    return open_run(run_choice(house, product, day, None), catalogue, at, number, uid)


def _with_lot(run: Run, stays: Sequence[InputLot]) -> Run:
    """The run with a lot that stays in place of its own of the component, where it has one."""
    lots = tuple(
        next((one for one in stays if one.component == lot.component), lot) for lot in run.lots
    )
    uses = LotSet.of(LotUse(lot.component, lot.code) for lot in lots)
    return replace(run, lots=lots, lot_set=uses)


def _kinds(run: Run, at: Moment) -> tuple[PackDraft, ...]:
    """Bags about the target, an interval apart, and one below the floor."""
    step = Mass.of(1, run.unit)
    steps = (*(bag % 5 for bag in range(_KINDS - 1)), None)
    return tuple(_bag(run, at, None if n is None else step * n) for n in steps)


def _bag(run: Run, at: Moment, over: Mass | None) -> PackDraft:
    unit = run.unit
    floor, target, tare = (
        mass.in_unit(unit) for mass in (run.product.floor, run.product.target, run.product.bag.tare)
    )
    light = over is None
    net = floor - Mass.of(3, unit) if over is None else target + over
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
        judged_at=at,
    )


def _moment(house: Packhouse, day: date, run: int) -> Moment:
    """When the run of a day begins: six in the morning and each two hours and a half after."""
    zone = ZoneInfo(house.settings.zone)
    local = datetime(day.year, day.month, day.day, 6, tzinfo=zone) + timedelta(hours=2.5) * run
    offset = local.utcoffset()
    assert offset is not None, "a zone has an offset"
    minutes = int(offset.total_seconds() // 60)
    return Moment(local.astimezone(UTC), minutes, house.settings.zone, run)
