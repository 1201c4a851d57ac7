"""Commands of scales that answer nothing: what became of them shows in the weights. Pure.

A described line may have commands of its own, and a USB weighing device can be set to zero. Neither
says whether it did; the next weights do, or do not in time.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from drivers.frames.base import Condition, Item, Kind, WeightFrame
from drivers.frames.scp0499_outcome import Outcome


@dataclass(frozen=True, slots=True)
class PlainCommands:
    """What a scale can be told; empty where it cannot.

    Args:
        zero: sets it to zero.
        tare: takes what is on the pan as tare.
        units: unit as the station names it → what chooses it.
    """

    zero: bytes = b""
    tare: bytes = b""
    units: Mapping[str, bytes] = field(default_factory=dict)

    def name_of(self, command: bytes) -> str:
        """What a command is called, for a person."""
        if command == self.zero:
            return "zero"
        return "tare" if command == self.tare else "change of unit"

    def outcome(self, command: bytes, item: Item) -> Outcome | None:
        """Return what an item says about a command sent before it; None where it says nothing."""
        if not isinstance(item, WeightFrame) or item.motion or not self._done(command, item):
            return None
        shown = item.condition if item.digits is None else f"{item.digits} {item.unit} {item.kind}"
        return Outcome(command, True, f"{self.name_of(command)}: {shown}", item)

    def _done(self, command: bytes, frame: WeightFrame) -> bool:
        is_zero = frame.condition is Condition.CENTRE_OF_ZERO or frame.value == 0
        if command == self.zero:
            return is_zero and frame.kind is Kind.GROSS
        if command == self.tare:
            return is_zero or frame.kind is Kind.NET
        return self.units.get(frame.unit) == command
