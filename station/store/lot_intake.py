"""What a settings file or a delivery says of a lot that the record does not know yet."""

from __future__ import annotations

from enum import Enum, auto

from sqlalchemy import Connection, select

from station.core.lots import InputLot
from station.line.ports import StoreFault
from station.store.lot_facts import LotFacts
from station.store.tables import lot


class News(Enum):
    """What is to be recorded of a lot."""

    NEW = auto()
    OTHER_STATUS = auto()


def news_of(connection: Connection, held: LotFacts, given: InputLot) -> News | None:
    """Return what a lot brings, or None.

    What a person holds is not let go by a settings file.

    Raises:
        StoreFault: a known code comes with another component, supplier or date: two deliveries
            under one code cannot be traced apart.
    """
    found = connection.execute(select(lot).where(lot.c.code == given.code))
    row = found.mappings().one_or_none()
    known = None if row is None else InputLot(**row)
    if known is None:
        return News.NEW
    if known == given:
        return None
    if _delivery(known) != _delivery(given):
        raise StoreFault(
            f"lot {given.code} is already in the record as another delivery "
            f"({known.component} from {known.supplier}, received {known.received}): "
            "give the new delivery a code of its own"
        )
    return None if held.open_holds(given.code) else News.OTHER_STATUS


def _delivery(known: InputLot) -> tuple[object, ...]:
    return (known.component, known.supplier, known.received, known.harvested, known.use_by)
