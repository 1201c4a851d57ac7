"""What comes out of a scale's byte stream, whatever its wire format."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from enum import StrEnum
from typing import NamedTuple, Protocol

from typing_extensions import override


class Condition(StrEnum):
    """What the scale says about itself in a weight frame."""

    NORMAL = "normal"
    CENTRE_OF_ZERO = "centre of zero"
    OVER_CAPACITY = "over capacity"
    UNDER_CAPACITY = "under capacity"
    ZERO_ERROR = "zero error"
    INITIAL_ZERO_ERROR = "initial zero error"
    TARE_ERROR = "tare error"
    NOT_DISPLAYED = "weight not displayed"


class Kind(StrEnum):
    """Which weight a frame carries."""

    GROSS = "gross"
    NET = "net"
    TARE = "tare"


class AnswerKind(StrEnum):
    """What a reply that is no weight tells."""

    UNKNOWN_COMMAND = "unknown command"
    LINE_ERROR = "line error"
    """The scale saw a parity or framing error in what it received."""
    DIAGNOSTICS = "diagnostics"
    TEXT = "text"
    """One line of the About or Information dialogue."""


class WeightFrame(NamedTuple):
    """One weight as the scale sent it; a tuple, since a flood makes them by the hundred thousand.

    Args:
        digits: as sent without padding, e.g. ``-1.250``; None where the scale sent dashes.
        unit: as sent without padding, e.g. ``kg``.
        kind: gross, net or tare.
        high_resolution: ten times finer than the scale's interval; not the indication.
        motion: the scale says the load is not at rest.
        condition: what the scale says about itself.
        range_no: weighing range from 1; always 1 on a single-range scale.
        raw: the bytes of the frame; two frames that say the same are equal whatever their bytes.
    """

    digits: str | None
    unit: str
    kind: Kind
    high_resolution: bool
    motion: bool
    condition: Condition
    range_no: int
    raw: bytes = b""

    @override
    def __eq__(self, other: object) -> bool:
        return isinstance(other, WeightFrame) and self[:_SAID] == other[:_SAID]

    @override
    def __ne__(self, other: object) -> bool:
        return not self == other

    @override
    def __hash__(self) -> int:
        return hash(self[:_SAID])

    @property
    def value(self) -> Decimal | None:
        """The weight, exact, in ``unit``; None where the scale sent dashes."""
        return None if self.digits is None else Decimal(self.digits)


_SAID = 7
"""The fields before ``raw``: what a frame says."""


@dataclass(frozen=True, slots=True)
class Garbage:
    """Bytes that are no frame; on a noisy line a normal event, so a value and no exception.

    Args:
        raw: the bytes.
        why: what is wrong with them, in words.
    """

    raw: bytes
    why: str


@dataclass(frozen=True, slots=True)
class Answer:
    """A reply that is no weight.

    Args:
        kind: what it tells.
        text: its content in words or as sent.
        raw: the bytes of the reply.
    """

    kind: AnswerKind
    text: str
    raw: bytes = field(default=b"", compare=False)


Item = WeightFrame | Garbage | Answer


class FrameParser(Protocol):
    """Turns a byte stream into frames; holds no port and no clock.

    However the stream is cut into chunks, the items are the same. No bytes make it raise, and it
    never keeps more than ``MAX_PENDING`` bytes between calls.
    """

    MAX_PENDING: int

    @property
    def frame_start(self) -> bytes:
        """What every frame starts with; empty where nothing marks a start."""
        ...

    @property
    def pending(self) -> int:
        """Number of bytes kept that are not yet part of an item."""
        ...

    def feed(self, chunk: bytes) -> list[Item]:
        """Take the next bytes of the stream; return what is complete, in order."""
        ...
