"""The set of input lots that could be in a bag.

A bag carries every lot that could be in it, never just the current one: at a lot change the old
and the new lot both stand in the set until the old one is declared empty.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from station.core.lots import InputLot, LotError, LotStatus, checked_lot_code
from station.core.product import Component, Product


@dataclass(frozen=True, slots=True, order=True)
class LotUse:
    """One input lot as a member of a set.

    Raises:
        LotError: the lot code cannot be printed, or the component's holds more than it may.
    """

    component: str
    lot: str

    def __post_init__(self) -> None:
        checked_lot_code(self.lot)
        if not self.component.isprintable():  # tabs and line ends part the members in the key
            raise LotError(f"component code {self.component!r} cannot be printed")


@dataclass(frozen=True, slots=True)
class LotSet:
    """Input lots, each with its component, in a fixed order; at least one."""

    uses: tuple[LotUse, ...]

    def __post_init__(self) -> None:
        if not self.uses:
            raise LotError("a lot set needs at least one input lot")
        if tuple(sorted(set(self.uses))) != self.uses:
            raise LotError("the lots of a set must be sorted and stand once each")

    @classmethod
    def of(cls, uses: Iterable[LotUse]) -> LotSet:
        """Build from lots in any order; a lot named twice counts once."""
        return cls(tuple(sorted(set(uses))))

    @property
    def key(self) -> str:
        """32 hex digits that are equal exactly when the members are equal."""
        text = "\n".join(f"{use.component}\t{use.lot}" for use in self.uses)
        return hashlib.sha256(text.encode()).hexdigest()[:32]

    def lots_of(self, component: str) -> tuple[str, ...]:
        """Lot codes of one component."""
        return tuple(use.lot for use in self.uses if use.component == component)

    def union(self, other: LotSet) -> LotSet:
        """Members of both sets, as for an overlap or rework."""
        return LotSet.of(self.uses + other.uses)


def assemble(
    product: Product, chosen: Iterable[str], lots: Mapping[str, InputLot], day: date
) -> LotSet:
    """Return the lot set of a run from the codes a person chose or scanned.

    Args:
        product: the version to be packed; each component needs at least one lot.
        chosen: lot codes.
        lots: the lots the packhouse knows, by code.
        day: today on the plant's calendar. After midnight that is a day later than the production
            day of a night shift: a lot's own last day and its age go by the calendar.

    Raises:
        LotError: a lot is unknown, held, expired, too old, dated later than today or not in the
            recipe, or a component has none. The message names the lot and what to do.
    """
    uses = []
    by_code = {component.code: component for component in product.components}
    for code in chosen:
        lot = lots.get(code)
        if lot is None:
            raise LotError(f"lot {code!r} is not known: receive it first")
        if lot.component not in by_code:
            raise LotError(
                f"lot {code} is {lot.component}, which product {product.code} does not contain: "
                f"allowed are {', '.join(by_code)}"
            )
        if lot.status is not LotStatus.FREE:
            raise LotError(f"lot {code} is {lot.status}: it must not be used, call QA")
        if lot.use_by is not None and day > lot.use_by:
            raise LotError(f"lot {code} had its last day on {lot.use_by}: it must not be used")
        limit = by_code[lot.component].max_age_days
        start = lot.harvested or lot.received
        if lot.received > day:
            raise LotError(
                f"lot {code} is dated as received on {lot.received}, later than today, {day}: "
                "correct its date or the clock"
            )
        if limit is not None and (day - start).days > limit:
            raise LotError(
                f"lot {code} is {(day - start).days} days old, {lot.component} may be packed for "
                f"{limit} days after {'harvest' if lot.harvested else 'receipt'}"
            )
        uses.append(LotUse(lot.component, code))
    missing = [code for code in by_code if all(use.component != code for use in uses)]
    if missing:
        raise LotError(f"product {product.code} has no lot yet for: {', '.join(missing)}")
    return LotSet.of(uses)


def last_day(lot: InputLot, component: Component) -> date | None:
    """The last day of the calendar on which a lot may be packed; None where nothing limits it."""
    if component.max_age_days is None:
        return lot.use_by
    oldest = (lot.harvested or lot.received) + timedelta(days=component.max_age_days)
    return oldest if lot.use_by is None else min(lot.use_by, oldest)


def blend_lot_code(line: str, day: date, number: int) -> str:
    """Return the lot code of a blend: line, two-digit year, day of the year, number of the day.

    The day of the year carries its year (1 January differs each year), and the number rises
    whenever the product or the set of input lots changes.

    Raises:
        LotError: ``number`` is outside 1 to 99, or the line's letters do not fit a lot code.
    """
    if not 1 <= number <= 99:
        raise LotError(f"blend number {number} of {day}: a line has 1 to 99 blend lots a day")
    code = f"{line}{day:%y%j}{number:02d}"
    if not line.isalnum() or not code.isascii() or code != code.upper() or len(code) > 20:
        raise LotError(f"line {line!r}: use 1 to 13 of A-Z and 0-9")
    return code
