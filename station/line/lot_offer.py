"""Which input lots a run could take: the oldest of each component that may still be used."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from decimal import Decimal

from station.core.lot_set import assemble
from station.core.lots import InputLot, LotError
from station.core.product import Product, Share
from station.errors import BadInput


def free_lots(product: Product, lots: Mapping[str, InputLot], day: date) -> tuple[str, ...]:
    """One lot that may be used on ``day`` for each component; the oldest first.

    Raises:
        BadInput: a component has none.
    """
    chosen = []
    for component in product.components:
        known = [lot for lot in lots.values() if lot.component == component.code]
        known.sort(key=lambda lot: (lot.harvested or lot.received, lot.code))
        alone = replace(product, recipe=_only(product, component.code))
        for lot in known:
            try:
                assemble(alone, [lot.code], lots, day)
            except LotError:
                continue
            chosen.append(lot.code)
            break
        else:
            raise BadInput(
                f"product {product.code}", f"no lot of {component.name} may be used on {day}"
            )
    return tuple(chosen)


def _only(product: Product, component: str) -> tuple[Share, ...]:
    return tuple(
        replace(share, percent=Decimal(100), least=None, most=None)
        for share in product.recipe
        if share.component.code == component
    )
