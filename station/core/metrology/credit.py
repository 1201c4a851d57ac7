"""Light credit: let a bag be a little light while the batch as a whole is safely above nominal.

Off by default. The running surplus of the batch must stay above a reserve after the light bag, the
floor never goes below Qn - T/2 (so no bag comes near T1), and each batch starts from nothing.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import ROUND_CEILING, Context, Decimal, InvalidOperation, Overflow

from station.core.mass import Mass
from station.core.metrology.exact import EXACT, round_up
from station.core.metrology.running import RunningBatch
from station.core.metrology.verdict import lowest_floor

_PLACES = 9
_LEAST = Decimal(1).scaleb(-_PLACES)
_UP = Context(prec=80, rounding=ROUND_CEILING, traps=[InvalidOperation, Overflow])


@dataclass(frozen=True, slots=True)
class LightCredit:
    """Setting of the light credit.

    Args:
        enabled: off by default.
        reserve_factor: the surplus kept back is this many times s sqrt(n); 3 or more is advised.
        least_packs: packs before any credit is given.
    """

    enabled: bool = False
    reserve_factor: Decimal = Decimal(3)
    least_packs: int = 30

    def __post_init__(self) -> None:
        if self.reserve_factor < 0 or self.least_packs < 2:
            raise ValueError(f"the reserve is not negative and at least 2 packs count: {self}")


def credit_floor(batch: RunningBatch, interval: Mass, credit: LightCredit) -> Mass:
    """Return the floor for the next bag: the nominal quantity less what the batch can spare.

    The comparison of surplus and reserve is decided on the safe side: the reserve is rounded up and
    the floor is rounded up to the scale interval.

    Args:
        batch: packs of this batch so far.
        interval: scale interval, in the unit of the nominal quantity.
        credit: setting.
    """
    nominal = batch.limits.nominal
    if not credit.enabled or batch.n < credit.least_packs:
        return nominal
    spread = _UP.add(batch.spread(_PLACES), _LEAST)  # a rounded s must not shrink the reserve
    root_n = _UP.next_plus(_UP.sqrt(Decimal(batch.n)))  # sqrt rounds half even whatever the context
    reserve = _UP.multiply(credit.reserve_factor, _UP.multiply(spread, root_n))
    spare = EXACT.subtract(batch.deviation, reserve.quantize(_LEAST, context=_UP))
    if spare <= 0:
        return nominal
    lowest = lowest_floor(batch.limits)
    bare = max(EXACT.subtract(nominal.amount, spare), lowest.amount)
    return Mass(min(round_up(bare, interval.amount), nominal.amount), nominal.unit)
