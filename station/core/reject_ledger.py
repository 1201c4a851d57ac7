"""The ledger of a day's rejects: one row each, and the bin they lie in."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from station.core.dispositions import BinCount, DecisionMade
from station.core.lot_set import LotUse
from station.core.mass import Mass
from station.core.metrology.verdict import Verdict, Window
from station.core.pack import LabelState, Quality


@dataclass(frozen=True, slots=True)
class LedgerRow:
    """One reject.

    Args:
        serial: as printed.
        at: when it was weighed, in the plant's time.
        run: id of its run.
        product, version, name: what it was packed as.
        window: floor, target, upper limit and legal limits that judged it.
        net: as weighed.
        verdict: of the weight alone.
        reason: why it was set aside.
        quality: what it is now.
        label: how far its label came.
        operator: id of who was on the scale.
        blend_lot, use_by, lots: what its label says or would have said.
        decision: what was decided, the last correction of it; None while it is open.
    """

    serial: str
    at: datetime
    run: str
    product: str
    version: int
    name: str
    window: Window
    net: Mass
    verdict: Verdict
    reason: str
    quality: Quality
    label: LabelState
    operator: str
    blend_lot: str
    use_by: date
    lots: tuple[LotUse, ...]
    decision: DecisionMade | None

    @property
    def open(self) -> bool:
        """Whether nobody decided about it yet."""
        return self.quality is Quality.REJECT


@dataclass(frozen=True, slots=True)
class BinState:
    """The reject bin of a day: bags that lie in it by the record, and the last count of it."""

    expected: int
    counted: BinCount | None
