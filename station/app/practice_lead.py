"""The demo's lead at the simulated scale: checks it with test weights and weighs empty bags."""

from __future__ import annotations

import logging
import threading
from collections.abc import Callable
from decimal import Decimal

from drivers.bench import BenchScale
from drivers.errors import BenchError
from station.app.change_desk import ChangeDesk
from station.app.checks_desk import ChecksDesk
from station.app.practice_labels import PracticeLabels
from station.app.qa_desk import QaDesk
from station.app.watch import Watch
from station.core.checks.qa import REFERENCE
from station.core.clearance import Gate, Point
from station.core.facts import Fact
from station.core.mass import Unit
from station.core.run import Run
from station.errors import EnvironmentFault
from station.line.guided import BagSeries, Settled, steady_indication
from station.line.scale_duty import BAR, BAR_WORDS
from station.line.state import Intents, LineState

_LOG = logging.getLogger(__name__)
_LOOK_S = 0.3
_PATIENCE_S = 60.0
_FILM_LOT = "F-0917"
_WASH = "tank 1, wash sheet of the demo"


class PracticeLead:
    """Passes the gates of a run by real acts on the bench.

    Args:
        bench: the simulated scale, worked by hand.
        watch: tells what the line shows and what became of entries.
        desk: makes the facts of checks.
        change: makes those of a changeover.
        line: takes them.
        who: id of the lead.
        quality: makes the facts of QA's checks; None leaves them to others.
    """

    def __init__(
        self,
        bench: BenchScale,
        watch: Watch,
        desk: ChecksDesk,
        change: ChangeDesk,
        line: Intents,
        who: str,
        quality: QaDesk | None = None,
    ) -> None:
        self._quality = quality
        self._bench, self._watch, self._desk, self._line = bench, watch, desk, line
        self._change, self._who = change, who
        self._given_up = False

    def open_gates(self, run: Run) -> None:
        """Check the scale and weigh an empty bag before the first bag of a run.

        Raises:
            EnvironmentFault: the scale does not show what is on it, or an entry was refused.
        """
        self.clear_line()
        if self._desk.scale_on:
            self.check_scale(run)
        if self._desk.tare_on:
            self.weigh_empty_bag(run)
        self.check_quality(run)

    def check_quality(self, run: Run) -> None:
        """Make QA's checks that are due, all of them well."""
        desk = self._quality
        for limit in () if desk is None else desk.wanted:
            assert desk is not None
            bounds = [one for one in (limit.least, limit.most) if one is not None]
            value = sum(bounds, Decimal(0)) / len(bounds) if bounds else None
            note = _WASH if limit.kind is REFERENCE else ""
            check = desk.check(limit, run, value, found=limit.pieces, note=note)
            self._enter(check)

    def clear_line(self) -> None:
        """Count the bags of the run before and look at every point of a clear line."""
        for gate in self._change.wanting:
            if gate is Gate.CLEARED:
                self._enter(self._change.cleared(dict.fromkeys(Point, True)))
            elif (before := self._change.before()) is not None:
                self._enter(self._change.counted(before.bags, None))

    def open_closed_gates(self, run: Run) -> None:
        """Do what is lacking just now, except after a failed check."""
        if self._change.wanting:
            self.clear_line()
        if self._desk.scale_on and self._desk.scale_wanted:
            self.check_scale(run)
        elif self._desk.tare_on and self._desk.tare_wanted:
            self.weigh_empty_bag(run)
        self.check_quality(run)

    def give_up(self) -> None:
        """Wait for nothing any more; from any thread."""
        self._given_up = True

    def step_back(self) -> None:
        """Take the hands off after something went wrong."""
        self._bench.lift()
        self._line.bar(BAR, "")

    def close_run(self, run: Run) -> None:
        """Check the scale after the last bag of a run."""
        if self._desk.scale_on:
            self.check_scale(run)

    def check_scale(self, run: Run) -> None:
        """Put the test weights on, one load after another, and record the check."""
        guided = self._desk.guided(run)
        self._line.bar(BAR, BAR_WORDS)
        self._empty_pan()
        for number, planned in enumerate(guided.planned, start=1):
            self._put(float(planned.mass.in_unit(Unit.GRAM).amount))
            self._until(lambda state, n=number: len(guided.readings) >= n or guided.see(state))  # type: ignore[misc]
            self._bench.lift()
        self._empty_pan()
        check = self._desk.judge(guided)
        self._enter(self._desk.check(check, run))
        self._line.bar(BAR, "")

    def weigh_empty_bag(self, run: Run) -> None:
        """Weigh one empty bag and record it."""
        series = BagSeries(1, self._desk.dwell_ns)
        self._line.bar(BAR, BAR_WORDS)
        self._until(lambda state: series.waits_for_bag or series.see(state) or series.waits_for_bag)
        self._put(float(run.product.bag.tare.in_unit(Unit.GRAM).amount))
        self._until(lambda state: series.done or series.see(state))
        self._bench.lift()
        self._empty_pan()
        _, fact = self._desk.empty_bag(run, _FILM_LOT, series.tares[0])
        self._enter(fact)
        self._line.bar(BAR, "")

    def _put(self, grams: float) -> None:
        if grams:
            self._bench.put_bag(grams)

    def _empty_pan(self) -> None:
        settled = Settled(self._desk.dwell_ns)

        def empty(state: LineState) -> bool:
            stood = settled.see(state)
            return stood is not None and not stood.amount

        self._until(empty)

    def _until(self, holds: Callable[[LineState], bool]) -> None:
        self._watch.until(lambda state: self._given_up or holds(state), _PATIENCE_S)
        if self._given_up:
            raise EnvironmentFault("the check was given up", "the demo ends")

    def _enter(self, fact: Fact) -> None:
        self._line.enter((fact,), self._who)
        answer = self._watch.next_entry(_PATIENCE_S)
        if not answer.recorded:
            raise EnvironmentFault(f"the {fact.kind} was not recorded", answer.words)


class LeadAtHand:
    """Passes the gates whenever they close and the pan is empty, on a thread of its own.

    What a failed check asks for is left to whoever tries the demo.

    Args:
        lead: who does it.
        watch: tells what the line shows.
        papers: passes the gates about labels; None leaves them to others.
    """

    def __init__(
        self, lead: PracticeLead, watch: Watch, papers: PracticeLabels | None = None
    ) -> None:
        self._lead, self._watch, self._papers = lead, watch, papers
        self._stopping = threading.Event()
        self._thread = threading.Thread(target=self._work, name="simulated lead")

    def start(self) -> None:
        """Start looking."""
        self._thread.start()

    def stop(self) -> None:
        """Stop; a check that goes on is given up."""
        self._stopping.set()
        self._lead.give_up()
        self._thread.join()

    def _work(self) -> None:
        while not self._stopping.wait(_LOOK_S):
            state = self._watch.newest
            if state is None or state.run is None or _at_work(state):
                continue
            try:
                self._lead.open_closed_gates(state.run)
                if self._papers is not None:
                    self._papers.open_closed_gates(state.run)
            except (EnvironmentFault, BenchError) as fault:
                _LOG.info("the simulated lead gave up: %s", fault)
                self._lead.step_back()


def _at_work(state: LineState) -> bool:
    """Whether somebody is at the scale: a bag on the pan, or a check by hand."""
    stood = steady_indication(state)
    return stood is None or stood.amount != 0 or BAR_WORDS in state.closed
