"""What must be checked before bags are taken, frozen."""

from __future__ import annotations

from dataclasses import dataclass

from station.core.metrology.check_plan import WeightSet
from station.core.metrology.scale_check import CheckSchedule
from station.core.metrology.tare import TareRule


@dataclass(frozen=True, slots=True)
class CheckSettings:
    """Checks of the scale.

    Args:
        on: whether acceptance depends on them.
        schedule: when they are due.
        weights: what they are made with.
        clearance: whether the run before is counted and the line cleared before the next bag.
    """

    on: bool
    schedule: CheckSchedule
    weights: WeightSet
    clearance: bool = True


@dataclass(frozen=True, slots=True)
class TareSettings:
    """Tares.

    Args:
        on: whether acceptance depends on them.
        declared: the tare of products.toml may stand where no study was made.
        rule: thresholds.
    """

    on: bool
    declared: bool
    rule: TareRule
