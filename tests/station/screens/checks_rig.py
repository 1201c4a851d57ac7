"""A checks page with the real desk of checks behind it and a scale moved by hand."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

from PySide6.QtCore import Qt

from station.app.checks_desk import ChecksDesk
from station.app.places import demo_settings
from station.config.load import load
from station.core.checks.scale import CheckMade, Trigger
from station.core.checks.suspect import FiledStep, FiledWindow, RunWindow
from station.core.metrology.scale_check import CheckReading, CheckSchedule, CheckStage, judge_check
from station.core.metrology.suspect import ErrorSign
from station.core.metrology.tare import TareRule
from station.core.pack import Moment, PackId, Quality
from station.line.scale_duty import ScaleDuty
from station.line.state import EntryAnswer, LineState, Phase, Shown, Verb
from station.line.suspected import PackSince, RunSince, Suspected, judge_runs
from station.line.tare_duty import TareDuty
from station.screens.bridge import Bridge
from station.screens.checks import ChecksPage
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import grams, make_offer, make_run, state

NINE = datetime(2026, 11, 25, 9, tzinfo=UTC)
DWELL_NS = 300_000_000
BAGS = 240
EVERY = timedelta(seconds=15)


class StillClock:
    def now(self) -> Moment:
        return Moment(NINE + timedelta(hours=1), 0, "Europe/Dublin", 1)

    def monotonic_ns(self) -> int:
        return 1


class RigDesk(ChecksDesk):
    """The desk of checks with the demo's scale and weights; windows are given, not read."""

    def __init__(self, windows=()) -> None:
        settings = load(demo_settings(), date(2026, 11, 25)).settings
        self.found = tuple(windows)
        self.scale_duty = ScaleDuty(settings.scale.id, CheckSchedule())
        tare_duty = TareDuty(TareRule(), declared=True)
        super().__init__(
            settings, settings.home, StillClock(), self.scale_duty, tare_duty, DWELL_NS
        )

    def windows(self) -> tuple[Suspected, ...]:
        return self.found


def failed_check(error: int) -> CheckMade:
    desk = RigDesk()
    readings = [
        CheckReading(one.load, one.weights, one.mass + grams(error))
        for one in desk.planned(make_run())
    ]
    at = NINE + timedelta(hours=1)
    check = judge_check(desk.plate, readings, at, CheckStage.AS_FOUND)
    return CheckMade(check, desk.plate, "bench", Trigger.HOURLY, "set 2")


def suspected(error: int = 4, step: bool = False) -> Suspected:
    """A window of an hour with a bag each 15 s, net 252 and 255 g in turn."""
    made, run = failed_check(error), make_run()
    packs = tuple(
        PackSince(
            PackId("QH", "A1", 77 << 53, k),
            NINE + EVERY * k,
            grams(258 if k % 2 else 261),
            grams(252 if k % 2 else 255),
            Quality.HELD,
            None,
        )
        for k in range(1, BAGS + 1)
    )
    at = NINE + timedelta(minutes=38) if step else None
    runs = judge_runs(made.check, NINE, (RunSince(run, packs),), at)
    judged = runs[0].window
    cases = (judged.as_weighed, judged.worst, judged.drift, judged.stepped)
    filed = None if at is None else FiledStep(at, at + EVERY, f"{error:+d} g")
    window = FiledWindow(
        uid="w1",
        scale="bench",
        check="c1",
        good="c0",
        opened=NINE,
        closed=NINE + timedelta(hours=1),
        sign=ErrorSign.HIGH if error > 0 else ErrorSign.LOW,
        step=filed,
        holds=("h1", "h2") if step else ("h1",),
        runs=(
            RunWindow(
                run.id,
                run.product.code,
                "g",
                tuple(case for case in cases if case is not None),
                "",
                tuple(packs[one.pack.serial].id.serial for one in judged.reweigh),
            ),
        ),
    )
    return Suspected(window, made, runs, None)


class ChecksRig:
    """A page, its scale and its line's answers."""

    key = Qt.Key.Key_F4

    def __init__(self, windows=(), size=(1024, 768)) -> None:
        self.bridge, self.intents, self.desk = Bridge(), FakeIntents(), RigDesk(windows)
        self.page = ChecksPage(self.bridge, self.intents, self.desk, make_offer().people)
        self.page.resize(*size)
        self.page.show()
        self._ns = 0
        self.open = True
        self.show("0")

    def line(self, digits: str, *, steady: bool = True, verb=Verb.CALL_LEAD) -> LineState:
        shown = Shown(digits, "g", None, steady, None, None, self._ns)
        one = state(Phase.READY, verb, because="a check goes on")
        return replace(one, shown=shown, run=one.run if self.open else None)

    def show(self, digits: str, *, steady: bool = True, ms: int = 100, **more) -> None:
        """The scale shows something now."""
        self._ns += ms * 1_000_000
        self.page.show_state(self.line(digits, steady=steady, **more))

    def rest(self, digits: str) -> None:
        """The scale shows something long enough for it to be taken."""
        for _ in range(5):
            self.show(digits)

    def asked(self, name: str) -> list:
        return [what for asked, what in self.intents.asked if asked == name]

    def answer(self, *, recorded: bool = True, words: str = "recorded") -> None:
        """The line answers the last entry."""
        facts, _ = self.asked("enter")[-1]
        uids = tuple(fact.uid for fact in facts)
        self.page._entered(EntryAnswer(uids, recorded, words))
