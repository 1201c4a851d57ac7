"""What a change of lots makes of the line: the next bag's set, never that of a bag on the pan."""

from __future__ import annotations

from dataclasses import replace

from station.core.run import Run
from station.line.cycle_state import Cycle, on_pan
from station.line.effects import Effect, Note
from station.line.events import LotsChanged

_Step = tuple[Cycle, tuple[Effect, ...]]


def lots_changed(cycle: Cycle, event: LotsChanged) -> _Step:
    """Take the new set for the next bag.

    A bag on the pan may hold what was just declared gone, so a set that lost a lot, or a later last
    day, waits until it was lifted. A lot that came in may be in it too, so a wider set and an
    earlier day hold at once; where lots came and went in one step, it gets the set of both.
    """
    if cycle.run is None or cycle.run.id != event.run.id:
        return cycle, ()
    note = Note(f"blend lot {event.run.blend_lot}: {', '.join(_lots(event))}", event.who)
    if on_pan(cycle) and not holds_at_once(cycle.run, event.run):
        return replace(cycle, run=event.for_pan or cycle.run, following=event.run), (note,)
    return replace(cycle, run=event.run, following=None), (note,)


def holds_at_once(old: Run, new: Run) -> bool:
    """Whether a bag filled from the old lots is told truly by the new set and its last day."""
    wider = set(old.lot_set.uses) <= set(new.lot_set.uses)
    return wider and new.dating.use_by <= old.dating.use_by


def bag_lifted(cycle: Cycle) -> Cycle:
    """The pan shows zero: what waited for the bag on it holds now."""
    if cycle.following is None:
        return cycle
    return replace(cycle, run=cycle.following, following=None)


def _lots(event: LotsChanged) -> tuple[str, ...]:
    return tuple(use.lot for use in event.run.lot_set.uses)
