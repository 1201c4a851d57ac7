"""Makes a simulated week: goes through its plan, plants its faults, and counts what it made."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from itertools import groupby
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from station.app.practice_record import PracticeClock
from station.app.week.hands import Hands
from station.app.week.lead import Lead, Loaded
from station.app.week.plan import SHIFT_BEGINS, Planted, RunPlan, WeekPlan
from station.app.week.room import Room
from station.app.week.tally import Plant, WeekMade, WeekTally
from station.config.packhouse import Packhouse, Role
from station.core.checks.scan_back import Clearing
from station.core.checks.tare import empty_bag_of
from station.core.ids import new_uid
from station.core.mass import Mass
from station.core.pack import PackRecord, Quality
from station.core.pauses import Reason
from station.core.product import Product
from station.core.receiving import hold_lot_fact
from station.errors import BadInput, EnvironmentFault
from station.line.ports import StoreFault
from station.store.queries import last_run

_WRONG_G = 4
_TOO_LOW = Mass.parse("6 g")
_JUMP = timedelta(minutes=47)
_TURN_S = 120.0
"""Between two runs."""
_PAUSES = ((Reason.BREAK, 0.35, 900.0), (Reason.FILM, 0.7, 240.0))
"""Reason, after which share of a run's bags, and how long in seconds."""
_CHANGE, _OVERLAP = 0.5, 0.04
"""Shares of a run's bags: when its first component gets its second lot, and how long both run."""
_CLOCK_BACK = 0.3
"""So much of the run later the clock is set right."""
_TARE_FOUND = 0.3
"""So much of the run later at the latest an empty bag is weighed."""


@dataclass(slots=True)
class _Turn:
    """A run while it is packed: what is to happen before which of its bags."""

    plan: RunPlan
    product: Product
    lots: tuple[Loaded, ...]
    done: int = 0
    """Bags so far."""
    due: dict[int, list[Callable[[], None]]] = field(default_factory=dict)

    def at(self, share: float, act: Callable[[], None]) -> None:
        """Have something done after a share of the bags."""
        self.before(round(self.plan.bags * share), act)

    def before(self, bag: int, act: Callable[[], None]) -> None:
        """Have something done before a bag."""
        self.due.setdefault(min(bag, self.plan.bags - 1), []).append(act)

    def next_act(self) -> Callable[[], None] | None:
        """What is to be done before the next bag, or None."""
        bag = min(self.due, default=self.done + 1)
        if bag > self.done:
            return None
        acts = self.due[bag]
        act = acts.pop(0)
        if not acts:
            del self.due[bag]
        return act


class Week:
    """One week; used once.

    Args:
        house: the settings.
        home: folder without a run in its record.
        plan: what is packed.
        seed: same seed, same bags.
        progress: told the number of bags so far.

    Raises:
        BadInput: the record holds runs already.
    """

    def __init__(
        self,
        house: Packhouse,
        home: Path,
        plan: WeekPlan,
        seed: int,
        progress: Callable[[int], None] = lambda _: None,
    ) -> None:
        self._plan, self._progress = plan, progress
        zone = ZoneInfo(house.settings.zone)
        self._clock = PracticeClock(house.settings.zone, _begin(plan.days[0], zone))
        self._room = Room(house, home, self._clock)
        if last_run(home) is not None:
            self._room.close()
            raise BadInput(f"home {home}", "holds runs already: a week needs a fresh folder")
        packers = [one.id for one in house.people.values() if one.role is Role.PACKER]
        self._hands = Hands(house.settings.scale.interval, packers, seed)
        self._lead = Lead(self._room, self._hands.few)
        self._tally = WeekTally()
        self._lots: dict[int, tuple[Loaded, ...]] = {}

    def make(self) -> WeekMade:
        """Pack the week.

        Raises:
            EnvironmentFault: the disk does not serve, or a gate stays closed.
        """
        try:
            for day, runs in groupby(self._plan.runs, key=lambda run: run.day):
                self._begin_day(_begin(day, ZoneInfo(self._room.house.settings.zone)))
                for run in runs:
                    self._pack_run(run)
        except (StoreFault, ValueError) as refused:
            raise EnvironmentFault("the simulated week cannot go on", str(refused)) from refused
        finally:
            self._room.close()
        return self._tally.whole(self._room.home, self._plan.days)

    def _begin_day(self, at: datetime) -> None:
        self._clock.move((at - self._clock.now().utc).total_seconds())

    # --- a run --------------------------------------------------------------------------------

    def _pack_run(self, plan: RunPlan) -> None:
        room, lead = self._room, self._lead
        product = room.catalogue.products[plan.product]
        lots = lead.deliver(product, plan.bags)
        self._lots[plan.number] = lots
        turn = _Turn(plan, product, lots)
        first = (lots[0], *lots[2:])
        lead.load(*first)
        lead.open(product, plan.bags, plan.operator, first)
        turn.at(_CHANGE, lambda: lead.load(lots[1]))
        turn.at(_CHANGE + _OVERLAP, lambda: lead.empty(lots[0].code))
        for reason, share, seconds in _PAUSES:
            turn.at(share, lambda why=reason, took=seconds: lead.pause(why, took))  # type: ignore[misc]
        for bag, fault in plan.faults.items():
            turn.before(bag, lambda which=fault: self._plant(which, turn))  # type: ignore[misc]
        while turn.done < plan.bags:
            act = turn.next_act()
            if act is None:
                self._pack_one(turn)
            else:
                act()
        lead.end()
        lead.clear_lots()
        self._clock.move(_TURN_S)

    def _pack_one(self, turn: _Turn) -> PackRecord:
        room, lead = self._room, self._lead
        self._clock.move(self._plan.pace_s * self._hands.jitter())
        if lead.roll_is_spent:
            lead.roll_out()
            lead.roll_in()
        lead.pass_gates()
        filled = self._hands.fill(room.run)
        residue = self._hands.residue(self._clock.now().utc)
        record = room.pack(filled.weighing, residue, filled.aside)
        turn.done += 1
        self._tally.packed(room.run, record)
        if record.draft.quality is Quality.GOOD:
            lead.labelled(record)
        self._progress(self._tally.bags)
        return record

    def _pack_good(self, turn: _Turn) -> PackRecord:
        record = self._pack_one(turn)
        while record.draft.quality is not Quality.GOOD:
            record = self._pack_one(turn)
        return record

    # --- faults -------------------------------------------------------------------------------

    def _plant(self, fault: Planted, turn: _Turn) -> None:
        {
            Planted.BURST_SEAL: self._burst,
            Planted.SCALE_CHECK: self._wrong_scale,
            Planted.HELD_LOT: self._hold_lot,
            Planted.WRONG_ROLL: self._wrong_roll,
            Planted.CLOCK_JUMP: self._jump,
            Planted.LOW_TARE: self._heavier_bags,
        }[fault](turn)

    def _burst(self, turn: _Turn) -> None:
        record = self._pack_good(turn)
        self._room.set_aside(record.serial, "burst seal")
        self._tally.taken_back(self._room.run, record)
        self._planted(Planted.BURST_SEAL, turn, (record, record), "set aside after its label")

    def _wrong_scale(self, turn: _Turn) -> None:
        """The scale shows too much from now on; the next check finds it."""
        lead = self._lead
        lead.wrong_g = _WRONG_G
        found = lead.check_scale()
        lead.wrong_g = 0
        self._clock.move(_TURN_S)
        lead.check_scale()
        window = lead.let_hold_stay(found)
        serials = sorted(serial for run in window.runs for serial in run.reweigh)
        words = f"{_WRONG_G} g too much at each load; {window.bags} bags held as suspect"
        self._tally.planted(
            Plant(Planted.SCALE_CHECK, turn.plan, serials[0], serials[-1], len(serials), words)
        )
        lead.pass_gates()

    def _hold_lot(self, turn: _Turn) -> None:
        """QA holds a lot of the day's first run, whose bags are packed already."""
        first = turn.plan.number - 2
        lot = self._lots[first][1]
        uid = new_uid(self._clock.now())
        record = self._room.enter(
            self._lead.second, hold_lot_fact(uid, lot.code, "the supplier reports a foreign body")
        )[0]
        ranges: Any = record.fact.details["ranges"]
        bags = sum(end - begin + 1 for _, begin, end in ranges)
        words = f"lot {lot.code} held after {bags} bags with it were packed"
        self._tally.planted(Plant(Planted.HELD_LOT, turn.plan, "", "", bags, words, lot.code))

    def _wrong_roll(self, turn: _Turn) -> None:
        """A roll of another product is put in; the scan of its first label tells."""
        lead = self._lead
        lead.roll_out()
        other = next(
            one for one in self._room.catalogue.products.values() if one.code != turn.plan.product
        )
        roll = lead.roll_in(f"LR-{other.code}"[:20])
        record = self._pack_good(turn)
        lead.scan(f"]E0{other.gtin[-13:]}")
        lead.clear_scan(Clearing.ROLL)
        self._room.set_aside(record.serial, "other")
        self._tally.taken_back(self._room.run, record)
        lead.roll_out()
        lead.roll_in()
        words = f"roll {roll} of {other.code} was in; the scan of its first label differed"
        self._planted(Planted.WRONG_ROLL, turn, (record, record), words, roll)

    def _jump(self, turn: _Turn) -> None:
        """The clock is set on, and set right again later."""
        began = turn.done
        first = self._tally.bags + 1
        self._clock.set_by(_JUMP.total_seconds())

        def right() -> None:
            self._clock.set_by(-_JUMP.total_seconds())
            bags = turn.done - began
            words = f"set on by {_JUMP.seconds // 60} min, set right {bags} bags later"
            begin, end = self._tally.serial(first), self._tally.serial(self._tally.bags)
            self._tally.planted(Plant(Planted.CLOCK_JUMP, turn.plan, begin, end, bags, words))

        turn.before(turn.done + round(turn.plan.bags * _CLOCK_BACK), right)

    def _heavier_bags(self, turn: _Turn) -> None:
        """Bags of a new film lot are heavier than declared; the next empty bag tells."""
        lead, room = self._lead, self._room
        lead.weigh_empty_bag()
        lead.bag_more = _TOO_LOW
        began, first = turn.done, self._tally.bags + 1
        rule = room.house.settings.tare.rule
        until = min(round(turn.plan.bags * _TARE_FOUND), rule.packs_between_checks // 2)

        def found() -> None:
            weighed = lead.weigh_empty_bag()
            if empty_bag_of(weighed[0]).fits:
                raise EnvironmentFault("the heavier bag was not noticed", "the tare fits it")
            lead.let_hold_stay(weighed)
            serials = self._tally.serial(first), self._tally.serial(self._tally.bags)
            bags = turn.done - began
            words = f"{_TOO_LOW} too low from film lot {lead.film_lot} on, found after {bags} bags"
            self._tally.planted(
                Plant(Planted.LOW_TARE, turn.plan, *serials, bags, words, lead.film_lot)
            )
            product = lead.study_bags()
            lead.end()
            room.use(product)
            on_line = {row.lot for row in room.lots.rows()}
            lots = [one for one in turn.lots if one.code in on_line]
            lead.open(product, turn.plan.bags - turn.done, turn.plan.operator, lots)

        turn.before(turn.done + until, found)

    def _planted(
        self,
        fault: Planted,
        turn: _Turn,
        ends: tuple[PackRecord, PackRecord],
        words: str,
        name: str = "",
    ) -> None:
        begin, end = (one.serial for one in ends)
        self._tally.planted(Plant(fault, turn.plan, begin, end, 1, words, name))


def _begin(day: date, zone: ZoneInfo) -> datetime:
    """When the shift of a day begins."""
    return datetime.combine(day, SHIFT_BEGINS, zone)
