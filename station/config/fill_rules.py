"""Who settles what bags are filled to, and how light one may be; frozen."""

from __future__ import annotations

from dataclasses import dataclass, field

from station.core.mass import Mass
from station.core.metrology.credit import LightCredit


@dataclass(frozen=True, slots=True)
class FillSettings:
    """``[fill]``.

    Args:
        approve_products: a product version that no manager approved as it is set is not run.
        most_step: the farthest a target moves with one approval; None for all the way.
        credit: whether a bag may be a little light while its batch is safely above nominal.
    """

    approve_products: bool = False
    most_step: Mass | None = None
    credit: LightCredit = field(default_factory=LightCredit)
