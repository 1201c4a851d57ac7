"""How much of a lot should be left: loaded, less what the bags took, with its uncertainty.

A scale of bags cannot tell components apart, so what a bag took of a lot is an interval. It comes
from the recipe's least and most shares, from water that washed product still carries when it is
weighed (0.5 to 3 % of the net after the spin is common practice), and from overlaps, in which
nobody knows which of two lots a bag got. All sums are exact; only the interval is an estimate.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from decimal import Decimal
from fractions import Fraction

from station.core.line_lots import OF_THE_RUN, LotMove, Move
from station.core.lot_set import LotSet
from station.core.mass import Mass
from station.core.product import Product, Share

_HUNDRED = 100


@dataclass(frozen=True, slots=True)
class Water:
    """Water in the net that was not there when the lot was weighed, in percent of the net.

    Args:
        least, most: bounds; both 0 where lots are weighed after the spin.
    """

    least: Decimal = Decimal(0)
    most: Decimal = Decimal(0)

    def __post_init__(self) -> None:
        if not 0 <= self.least <= self.most < _HUNDRED:
            raise ValueError(
                f"water {self.least} to {self.most} %: give two rising figures from 0 to below 100"
            )


@dataclass(frozen=True, slots=True)
class Span:
    """Grams between two bounds, with what is likely."""

    low: Fraction = Fraction(0)
    likely: Fraction = Fraction(0)
    high: Fraction = Fraction(0)

    def __add__(self, other: Span) -> Span:
        return Span(self.low + other.low, self.likely + other.likely, self.high + other.high)

    def __neg__(self) -> Span:
        return Span(-self.high, -self.likely, -self.low)

    def holds(self, grams: Fraction) -> bool:
        """Whether a true value agrees with the span."""
        return self.low <= grams <= self.high


@dataclass(frozen=True, slots=True)
class PackedSum:
    """Bags of one product from one set of lots, summed.

    Args:
        product: with its recipe.
        lot_set: every lot that could be in them.
        kept: micrograms of net in bags that stayed whole.
        rejected: micrograms in bags set aside; their content may be back on the line.
        again: micrograms out of such bags that went back on the line and did not come off it.
    """

    product: Product
    lot_set: LotSet
    kept: int = 0
    rejected: int = 0
    again: int = 0


def together(packed: Iterable[PackedSum]) -> dict[str, PackedSum]:
    """Sums of one product version and set of lots put together, under a key of both."""
    found: dict[str, PackedSum] = {}
    for one in packed:
        key = packed_key(one.product, one.lot_set)
        there = found.get(key)
        if there is not None:
            one = replace(
                there,
                kept=there.kept + one.kept,
                rejected=there.rejected + one.rejected,
                again=there.again + one.again,
            )
        found[key] = one
    return found


def packed_key(product: Product, lot_set: LotSet) -> str:
    """Text that is equal exactly where product version and set of lots are."""
    return f"{product.code}\t{product.version}\t{lot_set.key}"


@dataclass(frozen=True, slots=True)
class Balance:
    """One lot.

    Args:
        lot: its code.
        loaded: grams that went on the line less what came off it weighed; None where a load was
            not weighed, so that nothing can be said.
        used: grams that bags took.
    """

    lot: str
    loaded: Fraction | None
    used: Span

    @property
    def left(self) -> Span | None:
        """Grams that should be left on the line; None where a load was not weighed."""
        if self.loaded is None:
            return None
        return Span(self.loaded, self.loaded, self.loaded) + -self.used

    @property
    def question(self) -> str:
        """What to ask the lead; empty while the figures agree."""
        left = self.left
        if left is None or left.likely >= 0:
            return ""
        over = kilograms(-left.likely)
        if left.high < 0:
            return (
                f"more was packed from lot {self.lot} than was loaded ({over}): was a lot missed?"
            )
        return f"lot {self.lot} should be empty ({over} over): was its change missed?"


def balance(
    lot: str, component: str, moves: Iterable[LotMove], packed: Iterable[PackedSum], water: Water
) -> Balance:
    """Return what a lot should have left after its moves and the bags that could hold it.

    Args:
        lot: its code.
        component: its component.
        moves: all moves at the line, of any lot.
        packed: all bags whose set holds it; the set may name the lots of its component alone.
        water: uptake between weighing the lot and weighing the bags.
    """
    used = Span()
    for row in packed:
        lots = row.lot_set.lots_of(component)
        share = share_of(row.product, component)
        if share is None or lot not in lots:
            continue
        used += _taken(row.kept, share, len(lots), water, certain=len(lots) == 1)
        used += _taken(row.rejected, share, len(lots), water, certain=False)
        used += -_taken(row.again, share, len(lots), water, certain=False)
    return Balance(lot, _loaded(lot, moves), used)


def share_of(product: Product, component: str) -> Share | None:
    """A product's share of a component, or None."""
    return next((one for one in product.recipe if one.component.code == component), None)


def put_back(move: LotMove) -> int:
    """Micrograms out of bags that a move puts on the line, less than 0 where it takes some off."""
    if move.component or move.quantity is None:
        return 0
    return OUT_OF_BAGS.get(move.move, 0) * move.quantity.micrograms


OUT_OF_BAGS = {Move.REWORK: 1, Move.WASTED: -1, Move.RETURNED: -1}
"""Moves of what came out of bags: onto the line, or off it."""


def _loaded(lot: str, moves: Iterable[LotMove]) -> Fraction | None:
    total, weighed, last = Fraction(0), True, False
    for move in moves:
        if move.lot != lot or move.move is Move.REWORK:
            continue
        if move.move is Move.LOADED:
            # A lot that was weighed in before and is chosen for the next run is the same product.
            carried_over = last and move.note == OF_THE_RUN
            weighed = weighed and (move.quantity is not None or carried_over)
            total += _grams(move.quantity)
        elif move.move in (Move.RETURNED, Move.WASTED):
            weighed = weighed and move.quantity is not None
            total -= _grams(move.quantity)
        last = True
    return total if weighed and last else None


def _taken(micrograms: int, share: Share, rivals: int, water: Water, *, certain: bool) -> Span:
    """What bags took of one of ``rivals`` lots of a component."""
    net = Fraction(micrograms, 10**6)
    wettest = net * (1 - Fraction(water.most) / _HUNDRED)
    driest = net * (1 - Fraction(water.least) / _HUNDRED)
    low = wettest * Fraction(share.low) / _HUNDRED if certain else Fraction(0)
    likely = (wettest + driest) / 2 * Fraction(share.percent) / _HUNDRED / rivals
    return Span(low, likely, driest * Fraction(share.high) / _HUNDRED)


def _grams(mass: Mass | None) -> Fraction:
    return Fraction(0) if mass is None else Fraction(mass.grams)


def kilograms(grams: Fraction) -> str:
    """Grams as kilograms with one decimal, for people."""
    return f"{float(grams) / 1000:.1f} kg"
