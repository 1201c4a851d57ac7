"""What the bags of a blend weigh together, kept with it so that nobody adds months of bags up.

A blend whose bags are being packed has no sums: they are worked out when another blend begins, and
for a question from the bags themselves. Until then each bag would pay for a row written once more.
"""

from __future__ import annotations

from sqlalchemy import ColumnElement, Connection, case, func, select

from station.core.pack import Quality
from station.store.prepared import driver_of
from station.store.tables import blend, pack

ASIDE = (Quality.REJECT, Quality.REWORKED)
"""Bags whose content may be back on the line."""
ELSEWHERE = (Quality.REPACKED,)
"""Bags whose content is weighed with the bag that stands for them."""
NOT_KEPT = (*ASIDE, *ELSEWHERE)
"""What all others took of a lot is gone."""

_ASIDE = ", ".join(f"'{word}'" for word in ASIDE)
_NOT_KEPT = ", ".join(f"'{word}'" for word in NOT_KEPT)
_SUMS = f"""
    SELECT coalesce(sum(CASE WHEN quality IN ({_NOT_KEPT}) THEN 0 ELSE net_ug END), 0),
        coalesce(sum(CASE WHEN quality IN ({_ASIDE}) THEN net_ug ELSE 0 END), 0)
    FROM pack WHERE pack.id BETWEEN blend.first_bag AND blend.last_bag AND blend_id = blend.id
"""
_ADD_UP = f"UPDATE blend SET (kept_ug, aside_ug) = ({_SUMS}) WHERE first_bag IS NOT NULL"
_MOVE = """
    UPDATE blend SET kept_ug = kept_ug + ? * moved.ug, aside_ug = aside_ug + ? * moved.ug
    FROM (SELECT blend_id, net_ug AS ug FROM pack WHERE id = ?) AS moved
    WHERE blend.id = moved.blend_id
"""  # what a blend has not, NULL, stays NULL


class BlendSums:
    """Keeps the sums on the writer's connection, inside its transactions."""

    def __init__(self, connection: Connection) -> None:
        self._execute = driver_of(connection).execute

    def ended(self, blend_id: int) -> None:
        """Add up the bags of a blend that another one follows."""
        self._execute(f"{_ADD_UP} AND id = ?", (blend_id,))

    def judged(self, row: int, before: str, after: str) -> None:
        """See that a bag of this row is worth something else now."""
        aside = (after in ASIDE) - (before in ASIDE)
        kept = (before in NOT_KEPT) - (after in NOT_KEPT)
        if aside or kept:
            self._execute(_MOVE, (kept, aside, row))


def add_up_all(connection: Connection, filling: int) -> None:
    """Add up every blend but those being packed, whose ``last_bag`` is ``filling``."""
    driver_of(connection).execute(f"{_ADD_UP} AND last_bag <> ?", (filling,))


def sums_of_blend() -> tuple[ColumnElement[int], ColumnElement[int]]:
    """Columns of a question to ``blend``: micrograms kept, and micrograms set aside."""
    aside = pack.c.quality.in_(ASIDE)
    not_kept = pack.c.quality.in_(NOT_KEPT)

    def summed(kept: ColumnElement[int], mine: ColumnElement[int]) -> ColumnElement[int]:
        of_its_bags = (
            select(func.sum(mine))
            .where(
                pack.c.id >= blend.c.first_bag,
                pack.c.id <= blend.c.last_bag,
                pack.c.blend_id == blend.c.id,
            )
            .correlate(blend)
            .scalar_subquery()
        )
        return func.coalesce(kept, of_its_bags, 0)

    return (
        summed(blend.c.kept_ug, case((not_kept, 0), else_=pack.c.net_ug)),
        summed(blend.c.aside_ug, case((aside, pack.c.net_ug), else_=0)),
    )
