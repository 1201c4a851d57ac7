"""One pack against its limits, exact, and the mass to add or take out.

A limit is part of the good side: a pack is short only when strictly below, over only when strictly
above (EU 76/211/EEC Annex I, GB SI 2006/659 and OIML R 87 all say "less than" or "more than").
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from station.core.mass import Mass
from station.core.metrology.rule_set import Limits

_HALF = Decimal("0.5")


class Verdict(StrEnum):
    """What one net mass means; the worst that applies."""

    BELOW_T2 = "below T2"
    BELOW_T1 = "below T1"
    BELOW_FLOOR = "below floor"
    IN_WINDOW = "in window"
    OVER = "over"


class WindowError(ValueError):
    """Floor, target and upper limit do not fit each other or the legal limits."""


@dataclass(frozen=True, slots=True)
class Window:
    """Where the net mass of a good pack lies; all masses in the unit of the nominal quantity.

    Args:
        floor: lowest accepted net; the nominal quantity by default, never below Qn - T/2.
        target: net the packer fills to.
        upper: highest accepted net.
        limits: legal limits of the nominal quantity.

    Raises:
        WindowError: the order t2 <= t1 <= floor <= target <= upper is broken, the floor lies
            below Qn - T/2, or the units differ.
    """

    floor: Mass
    target: Mass
    upper: Mass
    limits: Limits

    def __post_init__(self) -> None:
        unit = self.limits.nominal.unit
        for name, mass in (("floor", self.floor), ("target", self.target), ("upper", self.upper)):
            if mass.unit is not unit:
                raise WindowError(f"the {name} {mass} must be given in {unit}, as the nominal is")
        if not self.limits.t2 <= self.limits.t1:
            raise WindowError(f"T2 {self.limits.t2} lies above T1 {self.limits.t1}")
        lowest = lowest_floor(self.limits)
        if self.floor < lowest:
            raise WindowError(
                f"the floor {self.floor} is below {lowest}, the nominal quantity less half the "
                f"tolerable shortage {self.limits.tolerable}: give a floor of {lowest} or more"
            )
        if self.target < self.floor:
            raise WindowError(f"the target {self.target} is below the floor {self.floor}")
        if self.upper < self.target:
            raise WindowError(f"the upper limit {self.upper} is below the target {self.target}")


def lowest_floor(limits: Limits) -> Mass:
    """Return Qn - T/2: no floor may lie lower, so no accepted pack comes near T1."""
    return limits.nominal - limits.tolerable * _HALF


def classify(net: Mass, window: Window) -> Verdict:
    """Judge one net mass exactly; a mass at a limit is on the good side of it."""
    limits = window.limits
    if net < limits.t2:
        return Verdict.BELOW_T2
    if net < limits.t1:
        return Verdict.BELOW_T1
    if net < window.floor:
        return Verdict.BELOW_FLOOR
    if net > window.upper:
        return Verdict.OVER
    return Verdict.IN_WINDOW


def to_add(net: Mass, window: Window) -> Mass:
    """Mass to add to reach the target; zero at the target or above it."""
    return _positive(window.target - net)


def to_add_to_floor(net: Mass, window: Window) -> Mass:
    """Least mass to add for the pack to be accepted; zero at the floor or above it."""
    return _positive(window.floor - net)


def to_take_out(net: Mass, window: Window) -> Mass:
    """Least mass to take out for the pack to be accepted; zero at the upper limit or below it."""
    return _positive(net - window.upper)


def to_take_out_to_target(net: Mass, window: Window) -> Mass:
    """Mass to take out to come down to the target; zero at the target or below it."""
    return _positive(net - window.target)


def _positive(mass: Mass) -> Mass:
    return mass if mass.amount > 0 else abs(mass * 0)  # never shown as -0
