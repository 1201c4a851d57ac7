"""Carries out the effects of the pack cycle in order: commit, then print, then show.

One thread owns the cycle and the store. Everything that happens is put on its queue: readings from
the scale's thread, answers from the printer's thread, intents of people. Nothing here waits for a
printer or a screen.
"""

from __future__ import annotations

import logging
import queue
import threading
from collections.abc import Callable
from dataclasses import replace

from drivers.steady import Reading
from station.core.dispositions import ticket_fact
from station.core.facts import Fact
from station.core.label_life import Reprint, ReprintRule, Resolve
from station.core.pack import Moment, Quality
from station.core.rights import STATION
from station.line.cycle import step
from station.line.cycle_state import Cycle, LineRules, may_end
from station.line.draft import draft_of
from station.line.duties import Duties
from station.line.effects import (
    Cue,
    Effect,
    IssueLabel,
    MarkLabel,
    Note,
    Record,
    Sound,
    TakeBack,
)
from station.line.events import (
    Barred,
    Disturbed,
    Event,
    LabelFailed,
    Labelled,
    LotsChanged,
    Recorded,
    RecordFailed,
    Resumed,
    RunEnded,
    RunStarted,
    SetAside,
    Tick,
    Ticketed,
    Weighed,
)
from station.line.label_steps import LabelSteps
from station.line.listeners import Followers, Listeners, Timing
from station.line.lot_change import Lots, NoLots
from station.line.messages import End, Enter, Idle, Message, Start
from station.line.opening import Catalogue, calendar_day, day_of, open_run, too_late
from station.line.ports import Clock, LabelDesk, Store, StoreFault
from station.line.present import line_state
from station.line.signatures import Proofs, unsigned_words
from station.line.state import EntryAnswer, Phase, RunAnswer, RunChoice

_LOG = logging.getLogger(__name__)
_TICK_S = 0.1
_DUTIES_NS, _WATCH_NS = 1_000_000_000, 100_000_000
"""The duties are asked this often, and after every entered fact."""
_SHOWN_NS, _DWELL_PART = 5_000_000, 60
"""A state is shown at least this often while readings come more quickly, and within this part of
the time a reading must be steady: whoever fills the bag follows what is shown."""
_READINGS_KEPT = 2_000
"""Above this many unread readings new ones are dropped: a flood must not fill memory."""
_COPIES = ReprintRule()
_BEHIND = "the station is behind the scale: lift the bag off and wait"


class LineRunner:
    """The line's thread. Its public methods may be called from any thread.

    Args:
        store: the only way to the disk; used from this thread alone.
        desk: prints labels off this thread.
        clock: tells the time.
        rules: the line's thresholds.
        catalogue: what a lead may choose from.
        new_id: makes a UUID version 7 as text for a moment.
        listeners: who is told what.
        duties: what must be done in time, or no bag is taken.
        follow: what entered facts and runs bring with them, recorded in the same commit.
        lots: what entered facts mean for the lots of the open run.
        copies: who may print a label again.
        proofs: who signed; None takes everybody at their word.
    """

    def __init__(
        self,
        store: Store,
        desk: LabelDesk,
        clock: Clock,
        rules: LineRules,
        catalogue: Catalogue,
        new_id: Callable[[Moment], str],
        listeners: Listeners,
        duties: Duties | None = None,
        follow: Followers | None = None,
        lots: Lots | None = None,
        copies: ReprintRule = _COPIES,
        proofs: Proofs | None = None,
    ) -> None:
        self._store = store
        self._desk = desk
        self._clock = clock
        self._catalogue = catalogue
        self._new_id = new_id
        self._listeners = listeners
        self._duties = duties or Duties()
        self._follow = follow or Followers()
        self._lots = lots or NoLots()
        self._labels = LabelSteps(store, desk, clock, new_id, copies, self._duties)
        self._proofs = proofs
        self._duties_seen_ns = self._watched_ns = self._told_ns = 0
        self._stale_ns = rules.stale_ns
        self._shown_ns = min(_SHOWN_NS, rules.dwell_ns // _DWELL_PART)
        self._cycle = Cycle(rules)
        self._queue: queue.SimpleQueue[Message | None] = queue.SimpleQueue()
        self._thread = threading.Thread(target=self._work, name="line")
        self._waiting: dict[str, tuple[int, int]] = {}
        self.dropped = 0
        """Readings dropped in a flood."""

    def start(self) -> None:
        """Start the line's thread."""
        self._thread.start()

    def stop(self, timeout_s: float = 10.0) -> None:
        """Finish what is on the queue and end the thread.

        Raises:
            TimeoutError: the thread did not end in time.
        """
        self._queue.put(None)
        self._thread.join(timeout_s)
        if self._thread.is_alive():
            raise TimeoutError("the line did not stop in time")

    def post(self, event: Event) -> None:
        """Tell the line what happened."""
        if isinstance(event, Weighed) and self._queue.qsize() > _READINGS_KEPT:
            self.dropped += 1
            return
        self._queue.put(event)

    def set_aside(self, reason: str) -> None:
        """Set the bag on the pan, or the last labelled one, aside."""
        self.post(SetAside(reason))

    def resume(self, who: str) -> None:
        """Go on after a stop."""
        self.post(Resumed(who))

    def start_run(self, choice: RunChoice) -> None:
        """Start a run; the answer goes to the listener."""
        self._queue.put(Start(choice))

    def end_run(self, who: str) -> None:
        """End the run; the answer goes to the listener."""
        self._queue.put(End(who))

    def enter(self, facts: tuple[Fact, ...], who: str) -> None:
        """Record facts, all or none; the answer goes to the listener."""
        self._queue.put(Enter(facts, who))

    def reprint(self, wish: Reprint) -> None:
        """Print a label again, marked as a copy; the answer goes to the listener."""
        self._queue.put(wish)

    def resolve(self, answer: Resolve) -> None:
        """Say what became of a label in doubt; the answer goes to the listener."""
        self._queue.put(answer)

    def bar(self, source: str, words: str) -> None:
        """Take no bags for a reason, until the same source says empty words."""
        self.post(Barred(source, words))

    # --- on the line's thread -----------------------------------------------------------------

    def _work(self) -> None:
        message: Message | None = Idle()  # the first state is shown before anything comes
        while message is not None:
            try:
                self._take(message)
            except StoreFault as fault:
                # A note or a label's state could not be kept: no more bags until a person looked.
                _LOG.error("the store could not keep %s: %s", type(message).__name__, fault)
                self._halt(message, str(fault))
            except Exception as bug:  # noqa: BLE001  the line stops in words, never silently
                _LOG.exception("the line could not handle %s", type(message).__name__)
                named = f"{type(bug).__name__}: {bug}"
                self._halt(message, f"the station has a fault ({named}): call maintenance")
            try:
                message = self._queue.get(timeout=_TICK_S)
            except queue.Empty:
                message = Idle()

    def _take(self, message: Message) -> None:
        self._watch()
        if isinstance(message, Weighed):  # first of all: it comes by the hundred a second
            self._show(Disturbed(_BEHIND) if self._is_old(message.reading) else message)
        else:
            self._take_wish(message)
        if self._clock.monotonic_ns() - self._duties_seen_ns >= _DUTIES_NS:
            self._ask_duties()

    def _take_wish(self, message: Message) -> None:
        """Take in what a person wants, or the printer answers, or that nothing came."""
        unsigned = unsigned_words(message, self._proofs)
        match message:
            case _ if unsigned:
                self._refuse(message, unsigned)
            case Start(choice):
                self._listeners.answer(self._open(choice))
            case End(who):
                self._listeners.answer(self._close(who))
            case Enter(facts, who):
                self._listeners.entered(self._enter(facts, who))
            case Reprint() | Resolve():
                answer, event = self._labels.take(message)
                if event is not None:
                    self._show(event)
                self._listeners.entered(answer)
            case Ticketed(serial, run, why_not):
                ticket = ticket_fact(serial, self._new_id(self._clock.now()), run, why_not)
                self._enter((ticket,), "station")
            case Idle():
                self._show(Tick(self._clock.monotonic_ns()))
            case _:
                self._show(message)

    def _watch(self) -> None:
        """Record what the station finds out by itself, before a bag is judged by it."""
        now_ns = self._clock.monotonic_ns()
        if now_ns - self._watched_ns >= _WATCH_NS:
            self._watched_ns = now_ns
            found = self._follow.watch(self._clock.now())
            if found:
                self._enter(found, STATION)

    def _ask_duties(self) -> None:
        """Let the duties say whether bags are taken; a change of theirs is shown at once."""
        self._duties_seen_ns = self._clock.monotonic_ns()
        if self._cycle.run is None:
            return
        seen, cycle = self._duties.seen(self._clock.now().utc), self._cycle
        if (seen.closing, seen.due, seen.seals) != (cycle.closing, cycle.due, cycle.seals):
            self._show(seen)
        gone = self._lots.overdue(self._clock.now())
        if gone:
            self._enter(gone, STATION)

    def _enter(self, facts: tuple[Fact, ...], who: str) -> EntryAnswer:
        uids = tuple(fact.uid for fact in facts)
        try:
            at = self._clock.now()
            ready = self._lots.prepare(facts, self._cycle, at)
            bring = self._follow.facts(ready.facts, at, who)
            left = self._labels.leaving(ready.facts, self._cycle.run)
            records = self._store.record((*ready.facts, *bring), at, who)
        except (ValueError, StoreFault) as refused:
            return EntryAnswer(uids, False, str(refused))
        for record in records:
            self._duties.noted(record)
        for gone in left:
            self._show(gone)
        if ready.run is not None:
            self._show(LotsChanged(ready.run, who, ready.for_pan))
        self._ask_duties()
        return EntryAnswer(uids, True, "recorded")

    def _is_old(self, reading: Reading) -> bool:
        """Whether a reading waited until it no longer exists: what it says is of the past."""
        return self._clock.monotonic_ns() - reading.seen_at_ns > self._stale_ns

    def _halt(self, message: Message, words: str) -> None:
        """Stop in words. The first reason stays: what comes after it is often its consequence."""
        cycle = self._cycle
        if cycle.phase is Phase.LABELLING and cycle.last is not None:
            words = f"label {cycle.last.serial} is in doubt: {words}"
        if cycle.run is not None:
            self._cycle = replace(cycle, phase=Phase.STOPPED, stop=cycle.stop or words, load=None)
        try:
            self._refuse(message, words)
            self._listeners.sound(Sound(Cue.STOP))
            self._listeners.state(line_state(self._cycle))
        except Exception:  # noqa: BLE001  a listener's fault must not end the line's thread
            _LOG.exception("nobody could be told that the line stopped: %s", words)

    def _refuse(self, message: Message, words: str) -> None:
        """Tell whoever asked that nothing came of it."""
        if isinstance(message, Start | End | Resumed):
            self._listeners.answer(RunAnswer(False, words))
        if isinstance(message, Enter):
            uids = tuple(fact.uid for fact in message.facts)
            self._listeners.entered(EntryAnswer(uids, False, words))
        if isinstance(message, Reprint | Resolve):
            self._listeners.entered(EntryAnswer((message.serial,), False, words))

    def _show(self, event: Event) -> None:
        came, before = self._clock.monotonic_ns(), self._cycle
        self._cycle, effects = step(before, event)
        if effects or not self._is_passed_over(event, before, came):
            self._told_ns = came
            self._listeners.state(line_state(self._cycle))
        for effect in effects:
            self._carry_out(effect)
        if isinstance(event, Labelled | LabelFailed):
            began = self._waiting.pop(event.serial, None)
            if began is not None and isinstance(event, Labelled):
                self._listeners.timing(Timing(event.serial, *began, came))

    def _is_passed_over(self, event: Event, before: Cycle, now_ns: int) -> bool:
        """Whether a reading need not be shown: it changes a number only, and newer ones wait."""
        return (
            isinstance(event, Weighed)
            and not self._queue.empty()
            and now_ns - self._told_ns < self._shown_ns
            and (self._cycle.phase, self._cycle.trouble) == (before.phase, before.trouble)
        )

    def _carry_out(self, effect: Effect) -> None:
        match effect:
            case Record():
                self._record(effect)
            case IssueLabel(record):
                assert self._cycle.run is not None
                self._desk.issue(record, self._cycle.run)
            case MarkLabel(serial, state, why):
                self._store.mark_label(serial, state, self._clock.now(), "station", why)
            case TakeBack(serial, reason):
                self._labels.take_back(serial, reason, self._cycle)
            case Note(words, who):
                self._store.note(words, self._clock.now(), who)
            case Sound():
                self._listeners.sound(effect)

    def _record(self, effect: Record) -> None:
        run, now = self._cycle.run, self._clock.now()
        assert run is not None
        if past := too_late(run, calendar_day(now)):
            self._show(RecordFailed(past))
            return
        draft = draft_of(effect, run, now)
        try:
            record = self._store.add_pack(draft)
        except StoreFault as fault:
            self._show(RecordFailed(str(fault)))
            return
        if draft.quality is Quality.GOOD:
            durable = self._clock.monotonic_ns()
            self._waiting[record.serial] = (effect.reading.seen_at_ns, durable)
        else:
            self._labels.ticket(record, run, draft.reason)
        self._duties.packed(record)
        self._show(Recorded(record))

    def _open(self, choice: RunChoice) -> RunAnswer:
        if self._cycle.phase is not Phase.CLOSED:
            return RunAnswer(False, "a run is open: end it before the next one starts")
        if against := self._follow.against_run():
            return RunAnswer(False, against)
        at = self._clock.now()
        try:
            number = self._store.next_blend_number(
                self._catalogue.line, day_of(at, self._catalogue.cut_off)
            )
            run = self._lots.dated(open_run(choice, self._catalogue, at, number, self._new_id(at)))
            self._desk.rehearse(run)
            self._store.start_run(run, at)
            loaded = (*self._lots.opening(run, at), *self._follow.run(run, at))
            records = self._store.record(loaded, at, run.lead) if loaded else ()
        except (ValueError, StoreFault) as refused:
            return RunAnswer(False, str(refused))
        self._duties.opened(run, at.utc)
        for record in records:
            self._duties.noted(record)
        self._show(RunStarted(run))
        self._ask_duties()
        return RunAnswer(True, f"run of {run.product.name} open, blend lot {run.blend_lot}")

    def _close(self, who: str) -> RunAnswer:
        run = self._cycle.run
        if run is None:
            return RunAnswer(False, "no run is open")
        if not may_end(self._cycle):
            return RunAnswer(False, "a bag is on the pan: finish it and lift it, then end the run")
        try:
            self._store.end_run(run.id, self._clock.now(), who)
        except StoreFault as fault:
            return RunAnswer(False, str(fault))
        self._show(RunEnded())
        return RunAnswer(True, f"run of {run.product.name} ended")
