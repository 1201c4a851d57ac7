"""Missed changeover: does the line still pack the product it says?

A lasting step in fill, in the size of a handful or in tare, against what this product is used to,
raises a question to the lead; it never blocks. Each series runs through a tabular CUSUM in its own
standard deviations. Floats: a question, no verdict.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum

from station.core.metrology.charts import cusum

_SLACK = 0.5
_LIMIT = 8.0  # seldom by chance: about one false question in 10 000 packs of a normal process


class Trait(StrEnum):
    """What a product is known by."""

    FILL = "net fill"
    HANDFUL = "handful"
    TARE = "tare"


@dataclass(frozen=True, slots=True)
class Habit:
    """What a trait of a product usually is, in grams."""

    mean: float
    spread: float


@dataclass(frozen=True, slots=True)
class Question:
    """A trait that left its habit.

    Args:
        trait: which one.
        usual: usual level, in grams.
        seen: mean since the change, in grams.
        since: index of the first value of the change.
    """

    trait: Trait
    usual: float
    seen: float
    since: int

    @property
    def words(self) -> str:
        """The question to the lead."""
        return (
            f"{self.trait} was {self.usual:.1f} g, now {self.seen:.1f} g: "
            "is this still the same product?"
        )


def ask(
    habits: Mapping[Trait, Habit], seen: Mapping[Trait, Sequence[float]]
) -> tuple[Question, ...]:
    """Ask about every trait that left its habit and has not come back.

    Args:
        habits: habits of the product that is meant to be packed.
        seen: recent values of each trait, in order, in grams.
    """
    questions = []
    for trait, values in seen.items():
        habit = habits.get(trait)
        if habit is None or not values or habit.spread <= 0.0:
            continue
        since = _change(values, habit)
        if since is not None:
            rest = values[since:]
            questions.append(Question(trait, habit.mean, sum(rest) / len(rest), since))
    return tuple(questions)


def _change(values: Sequence[float], habit: Habit) -> int | None:
    """Index from which the values left their habit, if the last one still signals."""
    scaled = [(value - habit.mean) / habit.spread for value in values]
    points = cusum(scaled, 0.0, _SLACK, _LIMIT)
    if not points[-1].signal:
        return None
    rising = points[-1].high > points[-1].low
    sums = [point.high if rising else point.low for point in points]
    at_rest = [index for index, one in enumerate(sums) if one == 0.0]
    return at_rest[-1] + 1 if at_rest else 0
