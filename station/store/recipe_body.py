"""What a recipe may say beside its shares, as the body of a run keeps it.

Each part is left out where a recipe says nothing of it, as in entries of the first shape.
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

from station.core.journal import Value
from station.core.product import Component, Product, Share

_Read = Mapping[str, Any]


def share_body(share: Share) -> dict[str, Value]:
    """Bounds of a share, and what its component does to the next product."""
    bounds = {"least": share.least, "most": share.most}
    body: dict[str, Value] = {
        name: format(bound, "f") for name, bound in bounds.items() if bound is not None
    }
    marks = {"stains": share.component.stains, "smells": share.component.smells}
    return body | {name: True for name, mark in marks.items() if mark}


def component_of(part: _Read) -> Component:
    """The component of a part of a recipe."""
    return Component(
        part["code"],
        part["name"],
        part["allergen"],
        part["max_age_days"],
        part.get("stains", False),
        part.get("smells", False),
    )


def bounds_of(part: _Read) -> tuple[Decimal | None, Decimal | None]:
    """Least and most share of a part of a recipe."""
    least, most = part.get("least"), part.get("most")
    return (
        None if least is None else Decimal(least),
        None if most is None else Decimal(most),
    )


def recipe_body(product: Product) -> dict[str, Value]:
    """When a version holds and who approved its recipe."""
    days = {"effective_from": product.effective_from, "effective_until": product.effective_until}
    body: dict[str, Value] = {
        name: day.isoformat() for name, day in days.items() if day is not None
    }
    return body | ({"approved_by": product.approved_by} if product.approved_by else {})
