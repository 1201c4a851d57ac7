"""The empty pan between two bags: its first steady reading after a bag was lifted off.

It is taken before anybody wipes the pan or zeroes the scale, so a row of them shows when the
scale's zero moved. A start, a disturbance or a bar of acceptance breaks the row.
"""

from __future__ import annotations

from dataclasses import replace

from drivers.steady import Reading
from station.line.cycle_state import Cycle, indication, load_threshold


def bag_judged(cycle: Cycle) -> Cycle:
    """A bag was taken in: the pan will be unloaded, and the reading before it is used up."""
    return replace(cycle, unloading=True, residue=None)


def row_broken(cycle: Cycle) -> Cycle:
    """Nobody knows what happened on the pan: the next reading of it says nothing."""
    return replace(cycle, unloading=False, residue=None)


def pan_seen(cycle: Cycle, reading: Reading) -> Cycle:
    """Keep the first steady reading of the pan after an unload."""
    if not cycle.unloading or not reading.steady or cycle.run is None:
        return cycle
    if indication(reading) >= load_threshold(cycle.run, cycle.rules):
        return cycle
    return replace(cycle, unloading=False, residue=reading)
