"""The recorded bag while it stays on the pan: what leaves the pan must be what was weighed.

Product added to a bag or taken out of it after its reading was recorded makes record and label
wrong. A hand on the bag, or the label pressed onto it, passes; so the bag is judged by the newest
net that stood as long as a bag must stand to be weighed. A bag that leaves with another net is
taken back: it is no good bag, and its label is void.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from drivers.steady import Reading
from station.core.mass import Mass
from station.core.pack import LabelState
from station.core.run import Run
from station.line.cycle_labels import without_bag
from station.line.cycle_state import (
    Cycle,
    Kept,
    LineRules,
    Load,
    indication,
    load_threshold,
    net_of,
    on_pan,
)
from station.line.effects import Cue, Effect, MarkLabel, Note, Sound, TakeBack
from station.line.state import Phase

CHANGED = "changed after weighing"
"""The reason on record of a bag that did not leave the pan as it was weighed."""
_UNSEEN = "its run ended while the scale did not tell whether it was lifted"
_PART = Decimal("0.25")

_Step = tuple[Cycle, tuple[Effect, ...]]


def allowance(run: Run, rules: LineRules) -> Mass:
    """How far a recorded bag may seem to change on the pan.

    More than two scale intervals, and more than a quarter of the tolerable shortage, so that a
    label on the bag or a drop beside it does not count. The quarter is the station's own choice;
    no rule set knows of such a change. It is in the unit of the greater of the two: grams have no
    exact value on a scale in ounces.
    """
    return max(rules.interval * 2, run.window.limits.tolerable * _PART)


def bag_kept(cycle: Cycle, reading: Reading) -> _Step:
    """Follow the recorded bag; say once, in words and by sound, that it changed."""
    run, last = cycle.run, cycle.last
    if run is None or last is None or not cycle.last_is_good:
        return cycle, ()
    if not reading.steady or indication(reading) < load_threshold(run, cycle.rules):
        return _unsettled(cycle), ()
    net, kept, now_ns = net_of(reading, run), cycle.kept, reading.seen_at_ns
    if kept is None or kept.net != net or kept.since_ns is None:
        found = None if kept is None else kept.found
        return replace(cycle, kept=Kept(net, now_ns, found)), ()
    if now_ns - kept.since_ns < cycle.rules.dwell_ns:
        return cycle, ()
    recorded = last.draft.weighing.net.in_unit(net.unit)
    differs = abs(net - recorded) > allowance(run, cycle.rules)
    after = replace(cycle, kept=replace(kept, found=net if differs else None))
    if not differs or kept.found is not None:
        return after, ()
    words = f"bag {last.serial} changed on the pan: {recorded} recorded, {net} now"
    return after, (Note(words), Sound(Cue.WRONG_WAY))


def changed_words(cycle: Cycle) -> str:
    """What the packer is told of a bag that changed; empty while it is as it was weighed."""
    kept, last = cycle.kept, cycle.last
    if kept is None or kept.found is None or last is None or not cycle.last_is_good:
        return ""
    return f"{CHANGED}: {last.draft.weighing.net} is recorded, {kept.found} is on the pan"


def bag_checked(cycle: Cycle) -> _Step:
    """The recorded bag left the pan: take it back where it left with another net."""
    if changed_words(cycle):
        return taken_back(replace(cycle, kept=None), CHANGED)
    return replace(cycle, kept=None), ()


def bag_unseen(cycle: Cycle) -> _Step:
    """The run ends while no reading tells whether its last bag left the pan.

    A bag that was seen to change is taken back; of any other a person says what became of its
    label.
    """
    cycle, taken = bag_checked(cycle)
    last = cycle.last
    if last is None or not cycle.last_is_good or last.serial in (cycle.coming, *cycle.reissued):
        return cycle, taken
    return cycle, (*taken, MarkLabel(last.serial, LabelState.IN_DOUBT, _UNSEEN))


def set_aside(cycle: Cycle, reason: str) -> _Step:
    """Set aside the bag that waits on the pan for acceptance; otherwise the last one.

    The last one burst, or was found bad after its label.
    """
    if not cycle.closed or not on_pan(cycle):
        return taken_back(cycle, reason)
    assert cycle.reading is not None
    load = Load(cycle.reading.seen_at_ns, aside=reason)
    return replace(cycle, phase=Phase.LOADED, load=load), ()


def taken_back(cycle: Cycle, reason: str) -> _Step:
    """The last labelled bag is no longer good: its label is void."""
    if cycle.last is None or not cycle.last_is_good:
        return cycle, ()
    assert cycle.run is not None
    tally = without_bag(cycle.tally, cycle.last.draft.weighing.net, cycle.run)
    after = replace(cycle, last_is_good=False, tally=tally)
    return after, (TakeBack(cycle.last.serial, reason), Sound(Cue.WRONG_WAY))


def _unsettled(cycle: Cycle) -> Cycle:
    """The pan moves: what stood before still counts, but begins to stand anew."""
    if cycle.kept is None or cycle.kept.since_ns is None:
        return cycle
    return replace(cycle, kept=replace(cycle.kept, since_ns=None))
