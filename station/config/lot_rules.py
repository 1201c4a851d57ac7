"""How input lots are followed on the line, frozen."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import timedelta

from station.core.balance import Water
from station.line.lot_change import LotRules
from station.line.lot_duty import LONG_OVERLAP


@dataclass(frozen=True, slots=True)
class LotSettings:
    """Input lots on the line.

    Args:
        on: whether a lot on the line that no label names closes acceptance.
        rules: when an overlap ends by itself, and how old rework may be.
        water: uptake between weighing a lot and weighing the bags.
        long_overlap: a lot that finishes for longer is alarmed.
    """

    on: bool = True
    rules: LotRules = field(default_factory=LotRules)
    water: Water = field(default_factory=Water)
    long_overlap: timedelta = LONG_OVERLAP
