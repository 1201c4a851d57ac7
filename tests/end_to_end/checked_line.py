"""A line with its gates on a real store and a clock set by hand, for scenarios of checks."""

import threading
import time
from datetime import UTC, datetime, timedelta

from station.core.checks.scale import CheckMade, Trigger, check_fact
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.metrology.check_plan import WeightSet, plan_loads
from station.core.metrology.instrument_errors import ScaleClass, WeightClass
from station.core.metrology.scale_check import (
    CheckReading,
    CheckSchedule,
    CheckStage,
    judge_check,
)
from station.core.metrology.scale_suitability import Scale
from station.core.metrology.verdict import classify
from station.core.pack import Moment, PackDraft, Quality, Residue, Weighing
from station.line.duties import Duties
from station.line.events import LinkUp, Weighed
from station.line.failed_check import FailedChecks
from station.line.listeners import Followers, Listeners
from station.line.opening import Catalogue
from station.line.runner import LineRunner
from station.line.scale_duty import ScaleDuty
from station.store.at_start import scale_past
from station.store.since import RecordPast
from station.store.writer import StationStore
from tests.station.line.runner_rig import CHOICE, RULES, CommandDesk
from tests.station.line.scenario import MS, grams, make_product, make_reading, make_run

PLATE = Scale(ScaleClass.III, grams(1), grams(3000))
SET = WeightSet(
    tuple(grams(one) for one in (2000, 1000, 500, 200, 200, 100, 50, 20, 20, 10, 5, 2, 2, 1)),
    WeightClass.M1,
    "invented set",
)
SCALE = "bench"
DEADLINE_S = 60.0
NINE = datetime(2026, 11, 25, 9, tzinfo=UTC)


class DayClock:
    """Shows what a test sets; the steady count follows the time of day."""

    def __init__(self) -> None:
        self.utc = NINE

    def now(self) -> Moment:
        return moment(self.utc)

    def monotonic_ns(self) -> int:
        return moment(self.utc).monotonic_ns


def moment(utc: datetime) -> Moment:
    since = utc - NINE + timedelta(hours=2)
    return Moment(utc, 0, "Europe/Dublin", round(since.total_seconds() * 1000) * MS)


def a_check(error: int, at: datetime, stage=CheckStage.AS_FOUND, run="") -> Fact:
    """A check whose indication is off by the same at every load."""
    product = make_product()
    readings = [
        CheckReading(one.load, one.weights, one.mass + grams(error))
        for one in plan_loads(PLATE, SET, product.bag.tare, product.nominal)
    ]
    check = judge_check(PLATE, readings, at, stage)
    made = CheckMade(check, PLATE, SCALE, Trigger.HOURLY, SET.certificate)
    return check_fact(made, new_uid(moment(at)), run)


def a_bag(run, at: datetime, net: int, residue: Residue | None = None, reason="") -> PackDraft:
    gross, tare = grams(net) + run.product.bag.tare, run.product.bag.tare
    return PackDraft(
        run=run.id,
        weighing=Weighing(gross, tare, grams(net), grams(0), 900, 1, "0a"),
        verdict=classify(grams(net), run.window),
        quality=Quality.REJECT if reason else Quality.GOOD,
        reason=reason,
        blend_lot=run.blend_lot,
        lot_set=run.lot_set.key,
        use_by=run.dating.use_by,
        production_day=run.dating.production_day,
        operator=run.operator,
        judged_at=moment(at),
        residue=residue,
    )


class CheckedLine:
    """A line with the scale's duty and the consequences of failed checks.

    Args:
        home: folder of the record.
        fill: called with the store and a run before the line starts.
    """

    def __init__(self, home, fill=None) -> None:
        self.home, self.clock = home, DayClock()
        self.store = StationStore.open(home, "QH", "A1", self.clock)
        run = make_run()
        self.store.add_lots(run.lots, self.clock.now(), "P01")
        if fill is not None:
            self.store.start_run(run, moment(NINE - timedelta(minutes=10)))
            fill(self.store, run)
            self.store.end_run(run.id, self.clock.now(), "P01")
        product = make_product()
        self.states, self.answers, self.entered = [], [], []
        self._said = threading.Condition()
        self.duty = ScaleDuty(SCALE, CheckSchedule(), scale_past(home, SCALE))
        self.line = LineRunner(
            store=self.store,
            desk=CommandDesk([]),
            clock=self.clock,
            rules=RULES,
            catalogue=Catalogue(
                products={product.code: product},
                lots={lot.code: lot for lot in run.lots},
                line="A",
                cut_off=NINE.time().replace(hour=4),
                scale=SCALE,
                unit=grams(1).unit,
                software="0.1.0",
            ),
            new_id=new_uid,
            listeners=Listeners(
                state=self._keep(self.states),
                answer=self._keep(self.answers),
                sound=lambda _: None,
                timing=lambda _: None,
                entered=self._keep(self.entered),
            ),
            duties=Duties((self.duty,)),
            follow=Followers(facts=FailedChecks(RecordPast(home), new_uid).follow),
        )
        self.line.start()
        self.line.post(LinkUp("bench"))

    def _keep(self, kept: list):
        def listen(value: object) -> None:
            with self._said:
                kept.append(value)
                self._said.notify_all()

        return listen

    def until(self, happened) -> None:
        ends = time.monotonic() + DEADLINE_S
        with self._said:
            while not happened():
                assert time.monotonic() < ends, (self.states[-1:], self.entered[-1:])
                self._said.wait(0.05)

    def open_run(self):
        said = len(self.answers)
        self.line.start_run(CHOICE)
        self.until(lambda: len(self.answers) > said)
        assert self.answers[-1].started, self.answers[-1].words
        return self.states[-1].run

    def enter(self, *entered: Fact, who="P01"):
        said = len(self.entered)
        self.line.enter(entered, who)
        self.until(lambda: len(self.entered) > said)
        answer = self.entered[-1]
        assert answer.recorded, answer.words
        return answer

    def weigh(self, value, seconds=0.2) -> None:
        self.clock.utc += timedelta(seconds=seconds)
        reading = make_reading(value, self.clock.monotonic_ns() // MS)
        self.line.post(Weighed(reading))
        self.until(lambda: self._shows(reading))

    def _shows(self, reading) -> bool:
        shown = self.states[-1].shown
        return shown is not None and shown.seen_at_ns == reading.seen_at_ns

    @property
    def closed(self) -> tuple[str, ...]:
        return self.states[-1].closed

    def close(self) -> None:
        self.line.stop()
        self.store.close()
