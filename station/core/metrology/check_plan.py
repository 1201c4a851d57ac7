"""Which test weights go on the scale for each load of a check."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from station.core.mass import Mass
from station.core.metrology.clause import RuleRefused
from station.core.metrology.exact import EXACT
from station.core.metrology.instrument_errors import WeightClass, weight_error
from station.core.metrology.scale_check import CheckLoad, TestWeights, loads_due
from station.core.metrology.scale_suitability import Scale

_LEAST_SHARE = Decimal("0.8")


@dataclass(frozen=True, slots=True)
class WeightSet:
    """The packhouse's test weights.

    Args:
        weights: nominal masses, each as often as it is there.
        weight_class: accuracy class of all of them.
        certificate: what names their calibration.

    Raises:
        RuleRefused: there are none, or R 111 has no such weight or class.
    """

    weights: tuple[Mass, ...]
    weight_class: WeightClass
    certificate: str

    def __post_init__(self) -> None:
        if not self.weights:
            raise RuleRefused("a check needs test weights: name at least one")
        for one in self.weights:
            weight_error(one, self.weight_class)

    def total_g(self) -> Decimal:
        """All weights together, in grams."""
        return sum((one.grams for one in self.weights), Decimal(0))

    def up_to(self, mass: Mass) -> tuple[Mass, ...]:
        """The heaviest weights first, as many as together stay at or below a mass."""
        chosen: list[Mass] = []
        left = mass.grams
        for one in sorted(self.weights, key=lambda weight: weight.grams, reverse=True):
            if one.grams <= left:
                chosen.append(one)
                left -= one.grams
        return tuple(chosen)


@dataclass(frozen=True, slots=True)
class PlannedLoad:
    """One load of a check: which weights, and what they weigh together in the scale's unit."""

    load: CheckLoad
    weights: TestWeights
    mass: Mass


def plan_loads(
    scale: Scale, weights: WeightSet, tare: Mass, nominal: Mass
) -> tuple[PlannedLoad, ...]:
    """The loads of a check for a product, in rising order; a load stands once.

    Args:
        scale: the scale.
        weights: what there is to put on.
        tare: of the product's bag.
        nominal: its nominal quantity.

    Raises:
        RuleRefused: the weights do not come near enough to a load.
    """
    planned: list[PlannedLoad] = []
    for load, mass in loads_due(scale, tare, nominal).items():
        chosen = TestWeights(weights.up_to(mass), weights.weight_class)
        total = chosen.total(scale.interval)
        if total.grams < EXACT.multiply(mass.grams, _LEAST_SHARE):
            raise RuleRefused(
                f"the test weights come to {total} for the load {load} of {mass}: "
                f"at least {_LEAST_SHARE:%} of it are needed"
            )
        if all(total != other.mass for other in planned):
            planned.append(PlannedLoad(load, chosen, total))
    return tuple(sorted(planned, key=_grams_of))


def _grams_of(planned: PlannedLoad) -> Decimal:
    return planned.mass.grams


def names(weights: Sequence[Mass]) -> str:
    """Weights as a person picks them: ``2 x 200 g, 10 g``."""
    counted = {one: sum(other == one for other in weights) for one in weights}
    return ", ".join(f"{n} x {one}" if n > 1 else f"{one}" for one, n in counted.items())
