"""The duty to take a new scale into use before a bag is weighed on it.

The line stays shut while the scale that is there is certainly another one than the last that was
taken into use; before the first that was, the scale found first is the known one.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from station.core.facts import FactRecord
from station.core.pack import PackRecord
from station.core.run import Run
from station.core.scale_swap import ScaleIdentity, ScaleSwap, swap_of, taken
from station.line.state import Notice


class SwapDuty:
    """Implements station.line.duties.Duty; ``found`` may be called from any thread.

    Args:
        past: scales taken into use, the last of them last.
    """

    name = ""

    def __init__(self, past: Iterable[FactRecord] = ()) -> None:
        self.last: ScaleSwap | None = None
        """The scale in use as it was taken; None before the first."""
        self.here: ScaleIdentity | None = None
        """The scale that is there; None before it was found."""
        self._known: ScaleIdentity | None = None
        for record in past:
            self.noted(record)

    def found(self, identity: ScaleIdentity) -> None:
        """A scale is there; what it says of itself comes after the device it is connected by."""
        self.here, known = identity, self._known
        if (known is None and identity != ScaleIdentity()) or (
            self.last is None and known is not None and identity.says_more_than(known)
        ):
            self._known = identity

    def opened(self, run: Run, at: datetime) -> None:
        """The scale is the line's, whatever run is open."""

    def packed(self, record: PackRecord) -> None:
        """Bags change nothing."""

    def noted(self, record: FactRecord) -> None:
        """See scales taken into use."""
        swap = swap_of(record) if taken(record) else None
        if swap is not None:
            self.last, self._known = swap, swap.identity

    def closing(self, now: datetime) -> str:
        """Why no bag is taken."""
        here, known = self.here, self._known
        if here is None or known is None or not here.is_other(known):
            return ""
        return (
            f"another scale is here, {here.words}; in use is {known.words}: take it into use,"
            " RUN, then SERVICE (F9), SWAP"
        )

    def due(self, now: datetime) -> Notice | None:
        """Nothing is due."""
        return None
