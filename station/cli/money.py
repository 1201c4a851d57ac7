"""What an overfill costs over a shift: the options that say so, and its two forms."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

import typer

from station.cli.answer import Json
from station.core.metrology.target import giveaway
from station.errors import BadInput

Price = Annotated[
    float | None, typer.Option("--price", metavar="PER_KG", help="Price of a kilogram of product.")
]
BagsPerShift = Annotated[
    int | None, typer.Option("--bags-per-shift", metavar="N", help="Bags packed in a shift.")
]


@dataclass(frozen=True, slots=True)
class Given:
    """What a mean overfill gives away; ``None`` where it is not known."""

    grams_per_bag: float
    kilograms_per_shift: float | None
    money_per_shift: float | None

    def document(self) -> dict[str, Json]:
        """The figures for ``--json``."""
        return {
            "g_per_bag": round(self.grams_per_bag, 6),
            "kg_per_shift": _rounded(self.kilograms_per_shift, 6),
            "money_per_shift": _rounded(self.money_per_shift, 2),
        }

    def __str__(self) -> str:
        words = f"{self.grams_per_bag:.3f} g a bag"
        if self.kilograms_per_shift is not None:
            words += f", {self.kilograms_per_shift:.2f} kg a shift"
        if self.money_per_shift is not None:
            words += f", {self.money_per_shift:.2f} in money a shift"
        return words


@dataclass(frozen=True, slots=True)
class Shift:
    """A shift, as far as it was given: its bags, and the price of a kilogram."""

    bags: int | None
    price: float | None

    def given_away(self, grams: float) -> Given:
        """Price a mean overfill of so many grams a bag."""
        if self.bags is None:
            return Given(grams, None, None)
        whole = giveaway(grams, self.bags, self.price or 0.0)
        return Given(
            grams, whole.per_shift_kg, None if self.price is None else whole.money_per_shift
        )


def shift_of(bags: int | None, price: float | None) -> Shift:
    """Return the shift that the options give.

    Raises:
        BadInput: a figure is not above zero, or a price has no bags to count.
    """
    if bags is not None and bags < 1:
        raise BadInput("--bags-per-shift", f"{bags} must be 1 or more")
    if price is not None and not 0 < price < float("inf"):
        raise BadInput("--price", f"{price} must be above zero, per kilogram")
    if price is not None and bags is None:
        raise BadInput("--price", "needs --bags-per-shift N beside it")
    return Shift(bags, price)


def _rounded(number: float | None, places: int) -> float | None:
    return None if number is None else round(number, places)
