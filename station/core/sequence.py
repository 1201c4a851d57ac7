"""In which order products are best packed: allergens last, then strong smells, then strong colours.

Plain products first and those with an allergen last is common practice: what is left on a belt
finds its way only into bags that name it. Advice; the line clearance between products stands.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from station.core.product import Component, Product


@dataclass(frozen=True, slots=True)
class Advice:
    """A place in the order.

    Args:
        product: which.
        clean_of: names of components packed before it that must not be in its bags: allergens
            first, then what smells, then what stains; empty where it follows freely.
    """

    product: Product
    clean_of: tuple[str, ...]


def advise_order(products: Sequence[Product]) -> tuple[Advice, ...]:
    """Return products in the order advised; those alike stay in the order given."""
    ordered = sorted(products, key=_weight)
    return tuple(
        Advice(product, left_over(ordered[place - 1], product) if place else ())
        for place, product in enumerate(ordered)
    )


def left_over(before: Product, after: Product) -> tuple[str, ...]:
    """Names of components of one product that the next must be clean of, the gravest first."""
    contained = {one.code for one in after.components}
    risky = [one for one in before.components if _rank(one) and one.code not in contained]
    return tuple(one.name for one in sorted(risky, key=_rank, reverse=True))


def _weight(product: Product) -> tuple[int, bool, bool]:
    parts = product.components
    return (
        sum(one.allergen for one in parts),
        any(one.smells for one in parts),
        any(one.stains for one in parts),
    )


def _rank(component: Component) -> int:
    return 4 * component.allergen + 2 * component.smells + component.stains
