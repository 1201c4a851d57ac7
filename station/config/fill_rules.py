"""Who settles what bags are filled to; frozen."""

from __future__ import annotations

from dataclasses import dataclass

from station.core.mass import Mass


@dataclass(frozen=True, slots=True)
class FillSettings:
    """``[fill]``.

    Args:
        approve_products: a product version that no manager approved as it is set is not run.
        most_step: the farthest a target moves with one approval; None for all the way.
    """

    approve_products: bool = False
    most_step: Mass | None = None
