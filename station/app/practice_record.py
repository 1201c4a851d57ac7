"""A practice record of many bags: hours of packing in a minute, through the true cycle and store.

Only the time and the paper are left out. Frames of the scale's own protocol go through the parser
and the steadiness rule to the line; every bag is judged by the pack cycle and durable before the
next one; labels pass all their states, but none is drawn or printed. The clock is a practice clock
that moves with the bags and ends at the present moment.
"""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from pathlib import Path
from zoneinfo import ZoneInfo

from drivers.frames.base import Condition, Kind, WeightFrame
from drivers.frames.scp0499 import Scp0499Parser, render
from drivers.packer import Habits
from drivers.steady import SteadyReader, SteadyRules
from station.app.assembly import software
from station.app.practice import habits_for, run_choice
from station.app.watch import Watch
from station.config.catalogue import catalogue_of
from station.config.packhouse import Packhouse
from station.core.ids import new_uid
from station.core.mass import Unit
from station.core.pack import Moment, PackRecord
from station.core.product import Product
from station.core.run import Run
from station.errors import BadInput, EnvironmentFault
from station.line.cycle_state import LineRules
from station.line.events import Event, Labelled, LinkUp, Weighed
from station.line.listeners import Listeners
from station.line.opening import calendar_day
from station.line.runner import LineRunner
from station.line.state import LineState, Phase, Verb
from station.store.queries import last_run
from station.store.writer import StationStore

BAG_S = 7.2
"""Seconds from bag to bag: 500 bags an hour."""
_FRAME_S = 0.1
_REACH_S = (1.6, 0.3)
_HANDFUL_S = 0.9
_MARGIN_S = 60.0
"""The run ends so long before the present at least: the last bags may take longer."""
_PATIENCE_S = 20.0
_MOST_FRAMES = 200
"""More than any bag needs; a bag that takes longer is a fault of this module."""


class PracticeClock:
    """Stands still unless it is moved; tells the plant's time of a past shift.

    Args:
        zone: IANA name.
        start: aware time it begins at.
    """

    def __init__(self, zone: str, start: datetime) -> None:
        self._zone = ZoneInfo(zone)
        self._name = zone
        self._start = start.astimezone(UTC)
        self._ns = 0

    def move(self, seconds: float) -> None:
        """Let time pass."""
        self._ns += round(seconds * 1e9)

    def set_by(self, seconds: float) -> None:
        """Set the clock on or back, as a hand would; the steady count does not change."""
        self._start += timedelta(seconds=seconds)

    def now(self) -> Moment:
        """The present moment of the practice shift."""
        utc = self._start + timedelta(microseconds=self._ns // 1000)
        offset = utc.astimezone(self._zone).utcoffset()
        minutes = 0 if offset is None else int(offset.total_seconds() // 60)
        return Moment(utc, minutes, self._name, self._ns)

    def monotonic_ns(self) -> int:
        """The steady count alone, in nanoseconds."""
        return self._ns


@dataclass(frozen=True, slots=True)
class PracticeRecord:
    """What was packed.

    Args:
        home: folder of the record.
        run: id of the run.
        product: its product.
        good: good bags.
        rejects: bags set aside.
        began: when the run began, in the plant's time.
        ended: when it ended.
    """

    home: Path
    run: str
    product: Product
    good: int
    rejects: int
    began: datetime
    ended: datetime


class _UnprintedDesk:
    """Lets every label pass as handed over; draws and prints none."""

    def __init__(self) -> None:
        self.answer: Callable[[Event], None] = lambda _: None

    def rehearse(self, run: Run) -> None:
        """No specimen: there is no paper."""

    def issue(self, record: PackRecord, run: Run) -> None:
        """Answer at once."""
        self.answer(Labelled(record.serial))

    def reissue(self, serial: str, run: Run, copy: int) -> None:
        """Answer at once."""
        self.answer(Labelled(serial))

    def ticket(self, record: PackRecord, run: Run, reason: str) -> None:
        """No ticket: there is no paper."""


class _Pan:
    """The simulated pan: sends what it carries as frames, and waits until the line has taken them.

    Args:
        line: takes the readings.
        watch: tells what the line made of them.
        clock: moves by a frame's time for each frame.
        rules: of the steadiness.
    """

    def __init__(
        self, line: LineRunner, watch: Watch, clock: PracticeClock, rules: SteadyRules
    ) -> None:
        assert rules.interval is not None
        assert rules.unit is not None
        self._line, self._watch, self._clock = line, watch, clock
        self._interval, self._unit = rules.interval, rules.unit
        self._grams = float(Unit(rules.unit).grams)
        self._parser, self._reader = Scp0499Parser(), SteadyReader(rules)

    def show(self, grams: float, after_s: float = 0.0) -> LineState:
        """Send one frame at rest; returns the line's state when all that follows from it is done.

        Args:
            grams: true load, rounded to the scale's interval on the way.
            after_s: time since the frame before, beside a frame's own.
        """
        steps = round(grams / self._grams / float(self._interval))
        digits = format(steps * self._interval, "f")
        empty = steps == 0
        frame = WeightFrame(
            digits=digits,
            unit=self._unit,
            kind=Kind.GROSS,
            high_resolution=False,
            motion=False,
            condition=Condition.CENTRE_OF_ZERO if empty else Condition.NORMAL,
            range_no=1,
        )
        self._clock.move(after_s + _FRAME_S)
        at_ns = self._clock.monotonic_ns()
        for item in self._parser.feed(render(frame)):
            assert isinstance(item, WeightFrame), item
            self._line.post(Weighed(self._reader.feed(item, at_ns, 1)))
        state = self._watch.until(lambda state: _taken(state, at_ns), _PATIENCE_S)
        if state.phase is Phase.STOPPED:
            raise EnvironmentFault("the line stopped", state.because)
        return state


def _taken(state: LineState, at_ns: int) -> bool:
    if state.phase is Phase.STOPPED:
        return True
    busy = state.phase in (Phase.RECORDING, Phase.LABELLING)
    return not busy and state.shown is not None and state.shown.seen_at_ns >= at_ns


def pack_record(
    house: Packhouse,
    home: Path,
    bags: int,
    seed: int,
    progress: Callable[[int], None] = lambda _: None,
    *,
    product: Product | None = None,
    habits: Habits | None = None,
    ends: Moment,
) -> PracticeRecord:
    """Pack ``bags`` good bags of one product in one run that has just ended.

    Args:
        house: the settings.
        home: folder without a run in its record.
        bags: good bags, 1 or more.
        seed: same seed, same bags.
        progress: told the number of good bags so far.
        product: what is packed; the first one where None.
        habits: how bags are filled; those of the demo where None.
        ends: the run ends a little before this moment.

    Raises:
        BadInput: the record holds a run already.
        EnvironmentFault: the line stopped, or the disk does not serve.
    """
    product = product or next(iter(house.products.values()))
    settings, scale = house.settings, house.settings.scale
    takes = timedelta(seconds=BAG_S * bags + _MARGIN_S)
    clock = PracticeClock(settings.zone, ends.utc - takes)
    store = StationStore.open(home, settings.site, settings.station, clock)
    try:
        if last_run(home) is not None:
            raise BadInput(
                f"home {home}", "holds runs already: a practice record needs a fresh folder"
            )
        store.add_lots(tuple(house.lots.values()), clock.now(), "station")
        desk, watch = _UnprintedDesk(), Watch()
        line = LineRunner(
            store=store,
            desk=desk,
            clock=clock,
            rules=LineRules(interval=scale.interval),
            catalogue=replace(
                catalogue_of(house, software()),
                products={**house.products, product.code: product},
                scale=f"{scale.id}, practice record",
            ),
            new_id=new_uid,
            listeners=Listeners(watch.state, watch.answer, lambda _: None, lambda _: None),
        )
        desk.answer = line.post
        rules = SteadyRules(
            interval=scale.interval.in_unit(scale.unit).amount,
            zero_band=Decimal(0),
            unit=str(scale.unit),
        )
        line.start()
        try:
            pan = _Pan(line, watch, clock, rules)
            return _pack(
                line, watch, clock, pan, house, product, habits, home, bags, seed, progress
            )
        finally:
            line.stop()
    finally:
        store.close()


def _pack(
    line: LineRunner,
    watch: Watch,
    clock: PracticeClock,
    pan: _Pan,
    house: Packhouse,
    product: Product,
    habits: Habits | None,
    home: Path,
    bags: int,
    seed: int,
    progress: Callable[[int], None],
) -> PracticeRecord:
    """One run from its start to its end."""
    choice = run_choice(house, product, calendar_day(clock.now()), bags)
    line.post(LinkUp("practice record"))
    line.start_run(choice)
    _must(watch)
    began = _local(clock.now())
    hands = _Hands(pan, clock, habits or habits_for(product), random.Random(seed))
    state = pan.show(0)
    while state.tally.good < bags:
        state = hands.pack_one(state.tally.good)
        progress(state.tally.good)
    assert state.run is not None
    run = state.run.id
    line.end_run(choice.lead)
    _must(watch)
    tally = state.tally
    ended = _local(clock.now())
    return PracticeRecord(home, run, product, tally.good, tally.rejects, began, ended)


class _Hands:
    """Fills bags as drivers.packer does, but in the line's own step instead of in real time."""

    def __init__(
        self, pan: _Pan, clock: PracticeClock, habits: Habits, chance: random.Random
    ) -> None:
        self._pan, self._clock, self._habits, self._chance = pan, clock, habits, chance
        self._began_ns = clock.monotonic_ns()

    def pack_one(self, good: int) -> LineState:
        """One bag from an empty pan to an empty pan, in its time; returns the last state.

        Args:
            good: good bags so far; those set aside cost no time, or the shift would end late.
        """
        early_s = (self._began_ns - self._clock.monotonic_ns()) / 1e9 + BAG_S * good
        state = self._pan.show(0, max(0.5, early_s + self._chance.gauss(*_REACH_S)))
        while state.verb is not Verb.BAG_ON:
            state = self._pan.show(0)
        habits = self._habits
        load = max(0.5, self._chance.gauss(*habits.bag_g))
        load += max(5.0, habits.target_g - self._chance.gauss(*habits.rough_short_g))
        state = self._pan.show(load)
        for _ in range(_MOST_FRAMES):
            if state.phase is not Phase.LOADED:
                break
            if state.amount is None:
                state = self._pan.show(load)
                continue
            wanted = float(state.amount.grams)
            error = self._chance.gauss(0.0, habits.handful_g + habits.handful_share * wanted)
            handful = max(0.5, wanted + error)
            load += handful if state.verb is Verb.ADD else -handful
            state = self._pan.show(load, _HANDFUL_S)
        else:
            raise EnvironmentFault("a practice bag was never judged", state.because)
        for _ in range(_MOST_FRAMES):
            if state.phase not in (Phase.LIFT, Phase.CLEAR_PAN):
                return state
            state = self._pan.show(0)
        raise EnvironmentFault("the line does not see the empty pan", state.because)


def _must(watch: Watch) -> None:
    answer = watch.next_answer(_PATIENCE_S)
    if not answer.started:
        raise EnvironmentFault("the practice run was refused", answer.words)


def _local(moment: Moment) -> datetime:
    return moment.utc.astimezone(ZoneInfo(moment.zone))
