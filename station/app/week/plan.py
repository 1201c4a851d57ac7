"""What a simulated week packs, when, and which faults are planted where; the same for a seed."""

from __future__ import annotations

import random
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, time, timedelta
from enum import StrEnum

from station.config.packhouse import Packhouse, Role
from station.core.product import Product
from station.errors import BadInput

DAYS = 5
RUNS_A_DAY = 3
LEAST_BAGS = DAYS * RUNS_A_DAY * 20
"""Fewer leave no room for the faults."""
SHIFT_BEGINS = time(5, 30)
_PACKING = timedelta(hours=10)
_SATURDAY = 5


class Planted(StrEnum):
    """Faults that are planted, each once."""

    BURST_SEAL = "burst seal"
    SCALE_CHECK = "failed scale check"
    HELD_LOT = "held lot"
    WRONG_ROLL = "wrong roll"
    CLOCK_JUMP = "clock jump"
    LOW_TARE = "tare too low"


_WHERE: Mapping[Planted, tuple[int, int, float]] = {
    Planted.BURST_SEAL: (0, 1, 0.5),
    Planted.SCALE_CHECK: (1, 1, 0.6),
    Planted.HELD_LOT: (2, 2, 0.4),
    Planted.WRONG_ROLL: (3, 1, 0.5),
    Planted.CLOCK_JUMP: (3, 2, 0.3),
    Planted.LOW_TARE: (4, 0, 0.4),
}
"""Day, run of the day and the share of its bags after which each is planted."""


@dataclass(frozen=True, slots=True)
class RunPlan:
    """One run.

    Args:
        day: its calendar day.
        product: code of what is packed.
        bags: bags weighed, those set aside among them.
        operator: id of the person at the scale.
        faults: planted before the bag of this number, from 0.
        number: of the run in the week, from 0.
    """

    day: date
    product: str
    bags: int
    operator: str
    number: int
    faults: Mapping[int, Planted] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class WeekPlan:
    """The whole week.

    Args:
        runs: in order.
        pace_s: seconds from bag to bag.
    """

    runs: tuple[RunPlan, ...]
    pace_s: float

    @property
    def days(self) -> tuple[date, ...]:
        """Its days, in order."""
        return tuple(sorted({run.day for run in self.runs}))


def plan_week(house: Packhouse, bags: int, seed: int, last: date) -> WeekPlan:
    """Spread bags over five working days of three runs each.

    Args:
        house: the settings.
        bags: of the whole week, those set aside among them.
        seed: same seed, same week.
        last: no day of the week is later.

    Raises:
        BadInput: too few bags, or nobody packs.
    """
    runs = DAYS * RUNS_A_DAY
    if bags < LEAST_BAGS:
        raise BadInput("--packs", f"{bags} bags: a week takes {LEAST_BAGS} or more")
    packers = [one.id for one in house.people.values() if one.role is Role.PACKER]
    if not packers:
        raise BadInput("people.toml", "nobody has the role packer")
    chance = random.Random(seed)
    planned = []
    for place, day in enumerate(_working_days(last)):
        for turn, product in enumerate(_products_of(house, place)):
            number = place * RUNS_A_DAY + turn
            size = bags // runs + (number < bags % runs)
            faults = {
                _bag_of(size, share, chance): fault
                for fault, (on, which, share) in _WHERE.items()
                if (on, which) == (place, turn)
            }
            operator = packers[(place + turn) % len(packers)]
            planned.append(RunPlan(day, product.code, size, operator, number, faults))
    return WeekPlan(tuple(planned), _PACKING.total_seconds() * DAYS / bags)


def _bag_of(bags: int, share: float, chance: random.Random) -> int:
    """A bag near a share of a run, never among its first or last."""
    return max(5, min(bags - 5, round(bags * (share + chance.uniform(-0.05, 0.05)))))


def _working_days(last: date) -> Sequence[date]:
    days: list[date] = []
    while len(days) < DAYS:
        if last.weekday() < _SATURDAY:
            days.insert(0, last)
        last -= timedelta(days=1)
    return days


def _products_of(house: Packhouse, place: int) -> Sequence[Product]:
    """Three products of a day: what stains, smells or is an allergen comes last."""
    known = tuple(house.products.values())
    chosen = [known[(place + turn) % len(known)] for turn in range(RUNS_A_DAY)]
    return sorted(chosen, key=_late)


def _late(product: Product) -> tuple[bool, bool, bool]:
    parts = product.components
    return (
        any(one.allergen for one in parts),
        any(one.smells for one in parts),
        any(one.stains for one in parts),
    )
