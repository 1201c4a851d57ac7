"""A bag somebody complains about: itself, its neighbours, and the checks around it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from station.core.facts import FactRecord
from station.core.mass import Mass
from station.core.pack import LabelState, Quality


@dataclass(frozen=True, slots=True)
class BagSeen:
    """One bag in a row of bags; ``at`` is in the plant's time."""

    serial: str
    at: datetime
    net: Mass
    quality: Quality
    label: LabelState


@dataclass(frozen=True, slots=True)
class Complaint:
    """Everything about one bag.

    Args:
        bag: it.
        product, version, run: what it was packed as.
        blend_lot, use_by, production_day: what its label says.
        operator: who was on the scale.
        reason: why it was set aside; empty where it was not.
        lots: component, lot code and supplier of every lot it may hold.
        neighbours: bags before and after it.
        before, after: checks around it, oldest first.
        about: facts about the bag itself: its disposition, ticket, copies.
    """

    bag: BagSeen
    product: str
    version: int
    run: str
    blend_lot: str
    use_by: date
    production_day: date
    operator: str
    reason: str
    lots: tuple[tuple[str, str, str], ...]
    neighbours: tuple[BagSeen, ...]
    before: tuple[FactRecord, ...]
    after: tuple[FactRecord, ...]
    about: tuple[FactRecord, ...]

    @property
    def in_order(self) -> tuple[BagSeen, ...]:
        """The bag among its neighbours, in the order they were weighed."""
        return tuple(sorted((*self.neighbours, self.bag), key=lambda one: one.at))
