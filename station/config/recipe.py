"""Checks of a recipe: its components, bounds of its shares, when it holds and who approved it."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from decimal import Decimal
from fractions import Fraction

from station.config.faults import shown, unknown
from station.config.packhouse import Person
from station.config.settings import ProductRow, ShareRow
from station.config.shelf_life import approver_problems

_Problem = tuple[str, str, str]


def recipe_problems(
    row: ProductRow, components: Collection[str], people: Mapping[str, Person]
) -> Iterator[_Problem]:
    """Yield the key, the fault and what is allowed, for each thing wrong with a recipe."""
    if not row.recipe:
        yield "recipe", "is empty", "at least one { component, percent }"
        return
    seen = set()
    for number, share in enumerate(row.recipe, start=1):
        key = f"recipe[{number}].component"
        if share.component not in components:
            yield key, unknown(share.component, components), ", ".join(components)
        if share.component in seen:
            yield key, f"{shown(share.component)} stands twice in the recipe", "each one once"
        seen.add(share.component)
        yield from _bounds(number, share)
    total = sum((Fraction(share.percent) for share in row.recipe), Fraction(0))
    if total != 100:
        plain = sum((share.percent for share in row.recipe), Decimal(0))
        yield "recipe", f"the shares add up to {plain} %", "shares that add up to 100 %"
    if row.effective_from and row.effective_until and row.effective_from > row.effective_until:
        why = f"{row.effective_until} is before effective_from {row.effective_from}"
        yield "effective_until", why, f"{row.effective_from} or later"
    if row.approved_by:
        yield from approver_problems("approved_by", row.approved_by, people)


def _bounds(number: int, share: ShareRow) -> Iterator[_Problem]:
    if share.min is not None and share.min > share.percent:
        why = f"{share.min} is above percent {share.percent}"
        yield f"recipe[{number}].min", why, f"at most {share.percent}"
    if share.max is not None and share.max < share.percent:
        why = f"{share.max} is below percent {share.percent}"
        yield f"recipe[{number}].max", why, f"{share.percent} to 100"
