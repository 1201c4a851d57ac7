"""A running line with a store that keeps lists and a desk that answers on command."""

import threading
import time
from collections.abc import Callable
from datetime import timedelta

from station.core.facts import FactRecord
from station.core.label_life import ReprintRule
from station.core.pack import Moment, PackId, PackRecord
from station.line.cycle_state import LineRules
from station.line.duties import Duties
from station.line.effects import Cue
from station.line.events import LinkUp, Weighed
from station.line.listeners import Listeners
from station.line.opening import Catalogue
from station.line.ports import StoreFault
from station.line.runner import LineRunner
from station.line.state import Phase, RunChoice
from tests.station.line.scenario import MS, grams, make_moment, make_product, make_reading, make_run

RULES = LineRules(interval=grams(1), dwell_ns=300 * MS, stale_ns=500 * MS)
CHOICE = RunChoice("HARBOUR-250", 1, ("ROM-1", "CAR-7"), "P01", "P02")
ANYBODY_ONCE = ReprintRule()
DEADLINE_S = 60.0


class HandClock:
    """Stands still until a test moves it; every look makes the steady count one greater."""

    def __init__(self) -> None:
        self.ms = 1_000
        self.days = 0
        self._looks = 0

    def now(self) -> Moment:
        moment = make_moment(self.ms)
        utc = moment.utc + timedelta(days=self.days, milliseconds=self.ms)
        return Moment(utc, moment.offset_minutes, moment.zone, self.monotonic_ns())

    def monotonic_ns(self) -> int:
        self._looks += 1
        return self.ms * MS + self._looks


class ListStore:
    """Keeps every call in a log; raises what a test put into ``faults`` under a call's name."""

    def __init__(self, log: list) -> None:
        self.log = log
        self.faults: dict[str, Exception] = {}
        self.drafts = []
        self.bags = {}

    def _call(self, name: str, *facts: object) -> None:
        if name in self.faults:
            raise self.faults[name]
        self.log.append((name, *facts))

    def add_lots(self, lots, at, who):
        self._call("add_lots", len(lots))
        return len(lots)

    def next_blend_number(self, line, day):
        self._call("next_blend_number", line, day)
        return 1

    def start_run(self, run, at):
        self._call("start_run", run.blend_lot)

    def end_run(self, run_id, at, who):
        self._call("end_run", run_id, who)

    def add_pack(self, draft):
        self._call("add_pack", str(draft.weighing.net))
        self.drafts.append(draft)
        number = len(self.drafts)
        return PackRecord(PackId("S", "A1", 0, number), f"u{number}", draft, number, "00")

    def mark_label(self, serial, state, at, who, why):
        self._call("mark_label", serial, str(state), *((why,) if why else ()))

    def take_back(self, serial, reason, at, who):
        self._call("take_back", serial, reason, who)

    def labelled(self, serial):
        if serial not in self.bags:
            raise StoreFault(f"bag {serial} is not in the record: check the serial")
        return self.bags[serial]

    def note(self, words, at, who):
        self._call("note", words, who)

    def record(self, facts, at, who):
        self._call("record", *(fact.uid for fact in facts), who)
        return tuple(FactRecord(fact, at, who, n) for n, fact in enumerate(facts, 1))


class CommandDesk:
    """Takes labels; a test posts the answer."""

    def __init__(self, log: list) -> None:
        self.log = log
        self.refusal: Exception | None = None
        self.fault: Exception | None = None
        self.tickets: list[tuple[str, str]] = []
        self.gate = threading.Event()
        self.gate.set()

    def rehearse(self, run):
        if self.refusal is not None:
            raise self.refusal
        self.log.append(("rehearse", run.blend_lot))

    def issue(self, record, run):
        self.gate.wait(DEADLINE_S)
        if self.fault is not None:
            raise self.fault
        self.log.append(("issue", record.serial))

    def ticket(self, record, run, reason):
        self.tickets.append((record.serial, reason))

    def reissue(self, serial, run, copy):
        self.log.append(("reissue", serial, copy))


class Rig:
    """A line runner on its thread, and all that was said by it."""

    def __init__(self, product=None, duties=(), copies=ANYBODY_ONCE, proofs=None) -> None:
        self.log: list = []
        self.store, self.desk, self.clock = ListStore(self.log), CommandDesk(self.log), HandClock()
        self.states, self.answers, self.sounds, self.timings = [], [], [], []
        self.entered = []
        self.deaf: set[str] = set()
        self._said = threading.Condition()
        product = product or make_product()
        catalogue = Catalogue(
            products={product.code: product},
            lots={lot.code: lot for lot in make_run(product).lots},
            line="A",
            cut_off=make_moment().utc.time().replace(hour=4),
            scale="bench",
            unit=grams(1).unit,
            software="0.1.0",
        )
        self.runner = LineRunner(
            store=self.store,
            desk=self.desk,
            clock=self.clock,
            rules=RULES,
            catalogue=catalogue,
            new_id=lambda at: "0193-run",
            listeners=Listeners(
                state=self._listener("state", self.states),
                answer=self._listener("answer", self.answers),
                sound=self._listener("sound", self.sounds),
                timing=self._listener("timing", self.timings),
                entered=self._listener("entered", self.entered),
            ),
            duties=Duties(duties),
            copies=copies,
            proofs=proofs,
        )

    def _listener(self, name: str, kept: list) -> Callable[[object], None]:
        def listen(value: object) -> None:
            with self._said:
                kept.append(value)
                self._said.notify_all()
            if name in self.deaf:
                raise RuntimeError(f"the {name} listener is deaf")

        return listen

    def wait(self, happened: Callable[[], object]) -> None:
        """Wait until something holds that a listener, the log or the store shows."""
        ends = time.monotonic() + DEADLINE_S
        with self._said:
            while not happened():
                assert time.monotonic() < ends, (
                    f"never happened; {self.states[-1:]} {self.log[-5:]}"
                )
                self._said.wait(0.01)

    @property
    def state(self):
        return self.states[-1]

    @property
    def cues(self) -> list[Cue]:
        return [sound.cue for sound in self.sounds]

    def names(self) -> list[str]:
        """Names of the calls so far."""
        return [call[0] for call in self.log]

    def settle(self) -> None:
        """Wait until all that was posted so far is done; any answer of the line proves it."""
        said = len(self.answers)
        self.runner.start_run(CHOICE)
        self.wait(lambda: len(self.answers) > said)
        self.answers.pop()

    def weigh(self, value, *, ms=100, age_ms=0, **more) -> None:
        """The scale shows something; back when the line has dealt with it."""
        self.clock.ms += ms
        self.runner.post(Weighed(make_reading(value, self.clock.ms - age_ms, **more)))
        self.settle()

    def rest(self, value, readings=5) -> None:
        for _ in range(readings):
            self.weigh(value)

    def open(self):
        """Start the thread and a run, and show an empty pan."""
        self.runner.start()
        self.runner.post(LinkUp("bench"))
        self.runner.start_run(CHOICE)
        self.wait(lambda: self.answers)
        assert self.answers.pop().started
        self.weigh(0)
        assert self.state.phase is Phase.READY
        self.log.clear()
        return self

    def good_bag(self) -> str:
        """A bag in the window, up to its label at the printer."""
        self.rest(258)
        self.settle()
        return f"A1-00-{len(self.store.drafts):06d}"

    def close(self) -> None:
        self.desk.gate.set()
        if self.runner._thread.is_alive():
            self.runner.stop()
