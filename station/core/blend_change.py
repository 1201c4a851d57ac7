"""A new blend within a run: the set of lots, blend lot code and dates from a move on."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from station.core.dating import Dating, DatingError, date_run
from station.core.facts import Fact
from station.core.journal import Value
from station.core.line_lots import Rework
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot
from station.core.product import Product
from station.core.run import Run


@dataclass(frozen=True, slots=True)
class BlendChange:
    """What a change of lots brings into force for the next bag.

    Args:
        lot_set: every lot that could be in it.
        blend_lot: the new blend's lot code; never one of an earlier blend of the day.
        dating: its dates; the production day stays that of the run.
    """

    lot_set: LotSet
    blend_lot: str
    dating: Dating


def redate(
    product: Product, lots: Iterable[InputLot], reworks: Iterable[Rework], day: date
) -> Dating:
    """Return the dates of a blend, shortened by the last day of any lot or rework in it.

    Raises:
        DatingError: the last day of a lot or of rework is before the production day.
    """
    dating = date_run(product, lots, day)
    for rework in sorted(reworks, key=lambda one: one.lot):
        if rework.use_by < day:
            raise DatingError(
                f"lot {rework.lot} had its last day on {rework.use_by}: it must not be used"
            )
        if rework.use_by < dating.use_by:
            dating = replace(dating, use_by=rework.use_by, shortened_by=rework.lot)
    return dating


def changed_run(run: Run, change: BlendChange, lots: Mapping[str, InputLot]) -> Run:
    """The run as it stands from a change on."""
    return replace(
        run,
        lot_set=change.lot_set,
        lots=tuple(lots[use.lot] for use in change.lot_set.uses),
        blend_lot=change.blend_lot,
        dating=change.dating,
    )


def with_change(moved: Fact, change: BlendChange) -> Fact:
    """A move's entry with the blend it brings; it is complete, so that tables are built from it."""
    members: list[Value] = [[use.component, use.lot] for use in change.lot_set.uses]
    its_set: dict[str, Value] = {
        "lot_set": change.lot_set.key,
        "members": members,
        "blend_lot": change.blend_lot,
        "production_day": change.dating.production_day.isoformat(),
        "use_by": change.dating.use_by.isoformat(),
        "shortened_by": change.dating.shortened_by,
    }
    return replace(moved, details={**moved.details, "set": its_set})


def change_of(moved: Fact) -> BlendChange | None:
    """The blend a move brought; None where it changed none."""
    body: Any = moved.details.get("set")
    if body is None:
        return None
    return BlendChange(
        lot_set=LotSet(tuple(LotUse(component, lot) for component, lot in body["members"])),
        blend_lot=body["blend_lot"],
        dating=Dating(
            date.fromisoformat(body["production_day"]),
            date.fromisoformat(body["use_by"]),
            body["shortened_by"],
        ),
    )
