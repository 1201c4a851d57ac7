"""The pack cycle: (state, event) → (state, effects), as a table.

One bag is recorded per zero → load → zero: a load counts only after the pan showed a steady zero,
and after a bag was recorded nothing counts until the pan shows zero again. A bag is judged on a
steady reading that lasted ``dwell_ns``; a reading that cannot be believed (line down, stale,
another unit, over capacity) never judges anything and sends the line back to an empty pan. The
table has no clock and no disk; the runner carries the effects out and brings the answers back as
events.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace

from drivers.frames.base import Kind
from drivers.steady import Reading
from station.core.mass import Mass
from station.core.metrology.verdict import Verdict, classify
from station.core.pack import LabelState, Quality, Weighing
from station.core.product import PackMode
from station.core.run import Run
from station.line.cycle_kept import bag_checked, bag_kept, bag_unseen, set_aside
from station.line.cycle_labels import (
    bag_gone,
    label_failed,
    label_lost,
    label_out,
    labelled,
    left_count,
    reissued,
    run_over,
    settled,
    stopped,
)
from station.line.cycle_lots import bag_lifted, lots_changed
from station.line.cycle_residue import bag_judged, pan_seen, row_broken
from station.line.cycle_state import (
    NO_FRAME_YET,
    Cycle,
    Load,
    indication,
    load_threshold,
    may_end,
    net_of,
    order_done,
)
from station.line.effects import (
    Cue,
    Effect,
    IssueLabel,
    MarkLabel,
    Note,
    Record,
    Sound,
)
from station.line.events import (
    Barred,
    Disturbed,
    DutiesSeen,
    Event,
    LabelFailed,
    Labelled,
    LabelLost,
    LabelOut,
    LeftCount,
    LinkDown,
    LinkUp,
    LotsChanged,
    Recorded,
    RecordFailed,
    Reissued,
    Resumed,
    RunEnded,
    RunStarted,
    SetAside,
    Settled,
    Tick,
    Weighed,
)
from station.line.state import Phase

Step = tuple[Cycle, tuple[Effect, ...]]


def step(cycle: Cycle, event: Event) -> Step:
    """Return the line after ``event`` and what must be done, in order.

    An event that has no meaning in the present phase changes nothing.
    """
    handler = _TABLE.get((cycle.phase, type(event))) or _ANY_PHASE.get(type(event))
    return handler(cycle, event) if handler is not None else (cycle, ())


# --- readings -------------------------------------------------------------------------------


def _doubt(reading: Reading, run: Run | None) -> str:
    """Why a reading cannot be believed, in words; empty when it can."""
    if reading.fault:
        return reading.fault
    if run is not None and reading.unit != run.unit:
        return f"the scale shows {reading.unit}, the run is in {run.unit}: set the scale back"
    if reading.kind is not Kind.GROSS:
        return "the scale shows a net weight: clear its tare, the station subtracts the bag itself"
    if reading.over:
        return "over capacity: take the load off"
    return ""


def _weighed(cycle: Cycle, event: Weighed) -> Step:
    """Take in a reading; where it can be believed, let the phase judge it."""
    reading = event.reading
    doubt = _doubt(reading, cycle.run)
    if doubt:
        troubled, effects = _troubled(cycle, doubt)
        return replace(troubled, reading=reading), effects
    effects = () if not cycle.trouble else (Note(f"reading is good again: {reading.digits}"),)
    cycle = replace(cycle, reading=reading, trouble="")
    phase = _ON_READING.get(cycle.phase)
    if phase is None:
        return cycle, effects
    after, more = phase(cycle, reading)
    return after, (*effects, *more)


def _troubled(cycle: Cycle, why: str) -> Step:
    """No reading can be believed: a bag not yet recorded must come off the pan."""
    effects: tuple[Effect, ...] = () if why == cycle.trouble else (Note(why),)
    if cycle.phase in (Phase.READY, Phase.LOADED):
        cycle = replace(cycle, phase=Phase.CLEAR_PAN, load=None)
    return replace(row_broken(cycle), trouble=why), effects


def _tick(cycle: Cycle, event: Tick) -> Step:
    reading = cycle.reading
    if reading is None or cycle.trouble:
        return cycle, ()
    age = event.now_ns - reading.seen_at_ns
    if age <= cycle.rules.stale_ns:
        return cycle, ()
    return _troubled(cycle, "the scale is silent: check its cable and power")


def _link_up(cycle: Cycle, event: LinkUp) -> Step:
    return (
        replace(cycle, port=event.port, reading=None, trouble=NO_FRAME_YET),
        (Note(f"scale line open on {event.port}"),),
    )


def _link_down(cycle: Cycle, event: LinkDown) -> Step:
    cycle, effects = _troubled(cycle, event.why)
    return replace(cycle, port="", reading=None), effects


def _disturbed(cycle: Cycle, event: Disturbed) -> Step:
    return _troubled(cycle, event.why)


def _shows_zero(reading: Reading) -> bool:
    return reading.steady and reading.at_zero


def _clear_pan(cycle: Cycle, reading: Reading) -> Step:
    cycle = pan_seen(cycle, reading)
    if not _shows_zero(reading):
        return cycle, ()
    cycle = bag_lifted(cycle)
    return replace(cycle, phase=Phase.READY, number=cycle.number + 1, load=None), ()


def _ready(cycle: Cycle, reading: Reading) -> Step:
    assert cycle.run is not None
    if indication(reading) < load_threshold(cycle.run, cycle.rules):
        # A residue, or a zero that went below, would be in the next bag's net.
        if _shows_zero(reading):
            return bag_lifted(cycle), ()
        return (replace(cycle, phase=Phase.CLEAR_PAN) if reading.steady else cycle), ()
    if order_done(cycle) or cycle.closed:
        return cycle, ()
    loaded = replace(cycle, phase=Phase.LOADED, load=Load(reading.seen_at_ns))
    return _loaded(loaded, reading)


def _loaded(cycle: Cycle, reading: Reading) -> Step:
    run, load = cycle.run, cycle.load
    assert run is not None
    assert load is not None
    if indication(reading) < load_threshold(run, cycle.rules):
        unloaded = replace(bag_judged(cycle), phase=Phase.CLEAR_PAN, load=None)
        return _clear_pan(unloaded, reading)
    if not reading.steady:
        if load.steady_since_ns is None:
            return cycle, ()
        return replace(cycle, load=replace(load, steady_since_ns=None)), ()
    load = _plateau(load, net_of(reading, run), reading.seen_at_ns, cycle.rules.interval)
    cycle = replace(cycle, load=load)
    assert load.steady_since_ns is not None
    if reading.seen_at_ns - load.steady_since_ns < cycle.rules.dwell_ns:
        return cycle, ()
    return _judge(cycle, run, load, reading)


def _plateau(load: Load, net: Mass, now_ns: int, interval: Mass) -> Load:
    """Keep the newest steady net; a step of more than two intervals is a top-up."""
    if load.plateau is None:
        return replace(load, plateau=net, steady_since_ns=now_ns)
    moved = abs(net - load.plateau)
    if load.steady_since_ns is not None and not moved.amount:
        return load
    top_ups = load.top_ups + (moved > interval * 2)
    return replace(load, plateau=net, steady_since_ns=now_ns, top_ups=top_ups)


def _judge(cycle: Cycle, run: Run, load: Load, reading: Reading) -> Step:
    net = net_of(reading, run)
    verdict = classify(net, run.window)
    if load.aside:
        quality, reason = Quality.REJECT, load.aside
    elif verdict is Verdict.IN_WINDOW:
        quality, reason = Quality.GOOD, ""
    elif run.product.mode is PackMode.CHECK:
        quality, reason = Quality.REJECT, str(verdict)
    else:
        return cycle, ()
    if (cycle.closed or cycle.coming) and quality is Quality.GOOD:
        return cycle, ()  # it waits on the pan for acceptance, or for the label before
    gross = indication(reading)
    weighing = Weighing(
        gross=gross,
        tare=run.product.bag.tare.in_unit(gross.unit),
        net=net,
        spread=Mass.of(reading.spread, gross.unit),
        dwell_ms=(reading.seen_at_ns - load.since_ns) // 1_000_000,
        top_ups=load.top_ups,
        frame=reading.raw.hex(),
    )
    effect = Record(weighing, verdict, quality, reason, reading, cycle.residue)
    return replace(bag_judged(cycle), phase=Phase.RECORDING, load=None), (effect,)


def _lift(cycle: Cycle, reading: Reading) -> Step:
    cycle, told = bag_kept(pan_seen(cycle, reading), reading)
    if not _shows_zero(reading):
        return cycle, told
    cycle, taken = bag_checked(cycle)
    after, _ = _clear_pan(cycle, reading)
    gone, effects = bag_gone(after)
    return gone, (*taken, *effects)


# --- answers of store and printer -------------------------------------------------------------


def _recorded(cycle: Cycle, event: Recorded) -> Step:
    record, tally, run = event.record, cycle.tally, cycle.run
    assert run is not None
    if record.draft.quality is not Quality.GOOD:
        tally = replace(tally, rejects=tally.rejects + 1)
        after = replace(cycle, phase=Phase.LIFT, last=record, last_is_good=False, tally=tally)
        return after, (Sound(Cue.WRONG_WAY),)
    net = record.draft.weighing.net
    tally = replace(
        tally,
        good=tally.good + 1,
        net_micrograms=tally.net_micrograms + net.micrograms,
        below_t1=tally.below_t1 + (net < run.window.limits.t1),
    )
    after = replace(
        cycle,
        phase=Phase.LABELLING,
        last=record,
        last_is_good=True,
        kept=None,
        issued=record.serial,
        tally=tally,
    )
    return after, (
        Sound(Cue.ACCEPT),
        MarkLabel(record.serial, LabelState.SUBMITTED),
        IssueLabel(record),
    )


def _record_failed(cycle: Cycle, event: RecordFailed) -> Step:
    return stopped(cycle, f"this bag is not recorded and has no label: {event.why}")


# --- people -----------------------------------------------------------------------------------


def _run_started(cycle: Cycle, event: RunStarted) -> Step:
    return (
        Cycle(
            cycle.rules,
            Phase.CLEAR_PAN,
            event.run,
            reading=cycle.reading,
            trouble=cycle.trouble,
            port=cycle.port,
            bars=cycle.bars,
            reissued=cycle.reissued,
        ),
        (),
    )


def _run_ended(cycle: Cycle, event: RunEnded) -> Step:
    ended = replace(cycle, phase=Phase.CLOSED, run=None, following=None, load=None, stop="")
    ended = replace(ended, closing=(), due=(), seals=(), coming="", unlabelled="")
    return ended, run_over(cycle)


def _run_ended_unseen(cycle: Cycle, event: RunEnded) -> Step:
    if not may_end(cycle):
        return cycle, ()
    cycle, seen = bag_unseen(cycle)
    ended, effects = _run_ended(cycle, event)
    return ended, (*seen, *effects)


def _set_aside_load(cycle: Cycle, event: SetAside) -> Step:
    assert cycle.load is not None
    return replace(cycle, load=replace(cycle.load, aside=event.reason)), ()


def _set_aside(cycle: Cycle, event: SetAside) -> Step:
    """No bag is being filled: it is the one that waits on the pan, or the last one."""
    return set_aside(cycle, event.reason)


def _barred(cycle: Cycle, event: Barred) -> Step:
    others = tuple(bar for bar in cycle.bars if bar[0] != event.source)
    before = dict(cycle.bars).get(event.source, "")
    if event.words == before:
        return cycle, ()
    if not event.words:
        return replace(cycle, bars=others), (Note(f"bags are taken again: {before}"),)
    bars = (*others, (event.source, event.words))
    return replace(row_broken(cycle), bars=bars), (Note(f"no bag is taken: {event.words}"),)


def _duties_seen(cycle: Cycle, event: DutiesSeen) -> Step:
    if cycle.run is None:
        return cycle, ()
    new = tuple(words for words in event.closing if words not in cycle.closing)
    effects = tuple(Note(f"no bag is taken: {words}") for words in new)
    seen = replace(cycle, closing=event.closing, due=event.due, seals=event.seals)
    return seen, effects


def _resumed(cycle: Cycle, event: Resumed) -> Step:
    words = f"gone on after a stop: {cycle.stop}"
    return replace(cycle, phase=Phase.CLEAR_PAN, stop=""), (Note(words, event.who),)


# --- the table --------------------------------------------------------------------------------

_ON_READING: Mapping[Phase, Callable[[Cycle, Reading], Step]] = {
    Phase.CLEAR_PAN: _clear_pan,
    Phase.READY: _ready,
    Phase.LOADED: _loaded,
    Phase.LABELLING: bag_kept,
    Phase.LIFT: _lift,
}

_ANY_PHASE: Mapping[type, Callable[..., Step]] = {
    Weighed: _weighed,
    Tick: _tick,
    LinkUp: _link_up,
    LinkDown: _link_down,
    Disturbed: _disturbed,
    Labelled: labelled,
    LabelFailed: label_failed,
    LabelLost: label_lost,
    LabelOut: label_out,
    Reissued: reissued,
    Settled: settled,
    LeftCount: left_count,
    Barred: _barred,
    DutiesSeen: _duties_seen,
    LotsChanged: lots_changed,
}

_TABLE: Mapping[tuple[Phase, type], Callable[..., Step]] = {
    (Phase.CLOSED, RunStarted): _run_started,
    (Phase.CLEAR_PAN, RunEnded): _run_ended,
    (Phase.READY, RunEnded): _run_ended,
    (Phase.LIFT, RunEnded): _run_ended_unseen,
    (Phase.STOPPED, RunEnded): _run_ended,
    (Phase.STOPPED, Resumed): _resumed,
    (Phase.LOADED, SetAside): _set_aside_load,
    (Phase.LIFT, SetAside): _set_aside,
    (Phase.CLEAR_PAN, SetAside): _set_aside,
    (Phase.READY, SetAside): _set_aside,
    (Phase.RECORDING, Recorded): _recorded,
    (Phase.RECORDING, RecordFailed): _record_failed,
}
