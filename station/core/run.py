"""A run: one product version packed from one blend, with everything that judges it frozen."""

from __future__ import annotations

from dataclasses import dataclass

from station.core.dating import Dating
from station.core.lot_set import LotSet
from station.core.lots import InputLot
from station.core.mass import Unit
from station.core.metrology.verdict import Window
from station.core.product import Product


@dataclass(frozen=True, slots=True)
class Run:
    """What stays fixed while bags of one run are packed.

    Args:
        id: UUID version 7 as text.
        product: the frozen product version.
        window: floor, target, upper limit and the legal limits of the frozen rule set.
        dating: production day and use-by date.
        lot_set: the input lots that could be in a bag.
        lots: those lots as they were known at the start.
        blend_lot: lot code of the blend, as printed.
        line: short code of the line.
        lead: id of the person who started the run.
        operator: id of the person on the scale.
        order_size: bags ordered, or None for an open run.
        scale: what identifies the scale.
        unit: the scale's unit; a frame in another unit stops the line.
        software: version of the station.
    """

    id: str
    product: Product
    window: Window
    dating: Dating
    lot_set: LotSet
    lots: tuple[InputLot, ...]
    blend_lot: str
    line: str
    lead: str
    operator: str
    order_size: int | None
    scale: str
    unit: Unit
    software: str
