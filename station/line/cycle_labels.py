"""What the answers of the printer, and of people about labels, make of the line."""

from __future__ import annotations

from dataclasses import replace

from station.core.mass import Mass
from station.core.pack import IN_THE_BATCH, LabelState
from station.core.run import Run
from station.line.cycle_state import Cycle
from station.line.effects import Cue, Effect, MarkLabel, Sound
from station.line.events import (
    LabelFailed,
    Labelled,
    LabelLost,
    LabelOut,
    LeftCount,
    Reissued,
    Settled,
)
from station.line.state import Phase, Tally

_Step = tuple[Cycle, tuple[Effect, ...]]


def labelled(cycle: Cycle, event: Labelled) -> _Step:
    """The answer is kept whatever happened meanwhile; only a waiting line goes on by it."""
    mark = MarkLabel(event.serial, LabelState.SPOOLED)
    if event.serial in cycle.reissued:
        return _copy_answered(cycle, event.serial), (mark,)
    if not _is_awaited(cycle, event.serial):
        return cycle, ()
    phase = Phase.LIFT if cycle.phase is Phase.LABELLING else cycle.phase
    coming = event.serial if event.coming else ""
    return replace(cycle, phase=phase, issued="", coming=coming, unlabelled=""), (mark,)


def label_out(cycle: Cycle, event: LabelOut) -> _Step:
    """It counts as applied only now, where its bag has left the pan already."""
    if event.serial != cycle.coming:
        return cycle, ()
    after = replace(cycle, coming="", unlabelled="")
    if event.serial != cycle.unlabelled or not cycle.last_is_good:
        return after, ()
    return after, (MarkLabel(event.serial, LabelState.APPLIED),)


def bag_gone(cycle: Cycle) -> _Step:
    """The labelled bag was lifted: its label is on it, unless that is still in the printer."""
    last = cycle.last
    if last is None or not cycle.last_is_good or last.serial in cycle.reissued:
        return cycle, ()
    if last.serial == cycle.coming:
        return replace(cycle, unlabelled=last.serial), ()
    return cycle, (MarkLabel(last.serial, LabelState.APPLIED),)


def run_over(cycle: Cycle) -> tuple[Effect, ...]:
    """With its run a label that never came out stops being awaited: a person answers for it."""
    if not cycle.coming or not cycle.last_is_good:
        return ()
    why = "its run ended before the printer said that it came out"
    return (MarkLabel(cycle.coming, LabelState.IN_DOUBT, why),)


def label_failed(cycle: Cycle, event: LabelFailed) -> _Step:
    """A first label in doubt stops the line; a copy goes back to the list of doubts."""
    mark = MarkLabel(event.serial, LabelState.IN_DOUBT, event.why)
    if event.serial in cycle.reissued:
        return _copy_answered(cycle, event.serial), (mark, Sound(Cue.STOP))
    if not _is_awaited(cycle, event.serial):
        return cycle, ()
    cycle = replace(cycle, issued="")
    if cycle.run is None:
        return cycle, (mark,)
    after, effects = stopped(cycle, f"label {event.serial} is in doubt: {event.why}")
    return after, (mark, *effects)


def label_lost(cycle: Cycle, event: LabelLost) -> _Step:
    """The printer takes its word back: the bag is gone on by now, so the line stops at once."""
    mark = MarkLabel(event.serial, LabelState.IN_DOUBT, event.why)
    if cycle.run is None:
        return cycle, (mark,)
    if event.serial == cycle.coming:
        cycle = replace(cycle, coming="", unlabelled="")
    after, effects = stopped(cycle, f"label {event.serial} is in doubt: {event.why}")
    return after, (mark, *effects)


def stopped(cycle: Cycle, why: str) -> _Step:
    """Stop the line until a person looked."""
    return replace(cycle, phase=Phase.STOPPED, stop=why, load=None), (Sound(Cue.STOP),)


def reissued(cycle: Cycle, event: Reissued) -> _Step:
    """The printer's answer to a copy must find its label."""
    after = replace(cycle, reissued=(*cycle.reissued, event.serial))
    if event.serial == cycle.coming:  # whatever comes of the first label, the copy's fate counts
        after = replace(after, coming="", unlabelled="")
    return after, ()


def settled(cycle: Cycle, event: Settled) -> _Step:
    """A bag whose label is void is no good bag of its run any more, a held one neither."""
    if event.state is not LabelState.VOIDED:
        return cycle, ()
    return left_count(cycle, LeftCount(event.bag))


def left_count(cycle: Cycle, event: LeftCount) -> _Step:
    """A bag that counted is no good bag of its run any more."""
    bag, run = event.bag, cycle.run
    if run is None or bag.run.id != run.id or bag.quality not in IN_THE_BATCH:
        return cycle, ()
    is_last = cycle.last is not None and cycle.last.serial == bag.serial
    return replace(
        cycle,
        tally=without_bag(cycle.tally, bag.net, run),
        last_is_good=cycle.last_is_good and not is_last,
    ), ()


def without_bag(tally: Tally, net: Mass, run: Run) -> Tally:
    """The figures of a run after one of its good bags became a reject."""
    return replace(
        tally,
        good=tally.good - 1,
        rejects=tally.rejects + 1,
        net_micrograms=tally.net_micrograms - net.micrograms,
        below_t1=tally.below_t1 - (net < run.window.limits.t1),
    )


def _copy_answered(cycle: Cycle, serial: str) -> Cycle:
    return replace(cycle, reissued=tuple(one for one in cycle.reissued if one != serial))


def _is_awaited(cycle: Cycle, serial: str) -> bool:
    """Whether it is the first label of the last bag, unanswered, and not void meanwhile."""
    return cycle.issued == serial and cycle.last_is_good
