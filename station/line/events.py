"""What can happen to a line."""

from __future__ import annotations

from dataclasses import dataclass

from drivers.steady import Reading
from station.core.label_life import LabelledBag
from station.core.pack import LabelState, PackRecord
from station.core.run import Run
from station.line.state import Notice, Seal


@dataclass(frozen=True, slots=True)
class Weighed:
    """The scale sent a reading."""

    reading: Reading


@dataclass(frozen=True, slots=True)
class Tick:
    """Time passed; only the steady count of the clock counts."""

    now_ns: int


@dataclass(frozen=True, slots=True)
class LinkUp:
    """The scale's line is open."""

    port: str


@dataclass(frozen=True, slots=True)
class LinkDown:
    """The scale's line is gone or gives nothing that can be used."""

    why: str


@dataclass(frozen=True, slots=True)
class Disturbed:
    """The scale's line is open, but what comes in cannot be believed for now."""

    why: str


@dataclass(frozen=True, slots=True)
class RunStarted:
    """The lead started a run; it is already in the store."""

    run: Run


@dataclass(frozen=True, slots=True)
class RunEnded:
    """The lead ended the run; that is already in the store."""


@dataclass(frozen=True, slots=True)
class LotsChanged:
    """Other lots are in the next bag; that is already in the store.

    Args:
        run: the open run as it stands from now on.
        who: id of the person who said so.
        for_pan: the run as it stands for the bag on the pan, where that may hold lots of both.
    """

    run: Run
    who: str = "station"
    for_pan: Run | None = None


@dataclass(frozen=True, slots=True)
class Recorded:
    """The store has the bag, durably."""

    record: PackRecord


@dataclass(frozen=True, slots=True)
class RecordFailed:
    """The store could not take the bag; nothing was recorded."""

    why: str


@dataclass(frozen=True, slots=True)
class Labelled:
    """The printer has the whole label of this bag.

    Args:
        serial: of the bag.
        coming: whether it is still to come out, and the printer will say when it has.
    """

    serial: str
    coming: bool = False


@dataclass(frozen=True, slots=True)
class LabelOut:
    """The printer says that a label which was coming is out."""

    serial: str


@dataclass(frozen=True, slots=True)
class LabelFailed:
    """The label of this bag was not printed, or nobody knows whether it was."""

    serial: str
    why: str


@dataclass(frozen=True, slots=True)
class Reissued:
    """A copy of a label is on record and on its way to the printer."""

    serial: str


@dataclass(frozen=True, slots=True)
class Settled:
    """A person answered for a label.

    Args:
        bag: as it was before the answer.
        state: what its label is now.
    """

    bag: LabelledBag
    state: LabelState


@dataclass(frozen=True, slots=True)
class LeftCount:
    """A held bag was decided about: dumped, sampled, whatever ends it.

    Args:
        bag: as it was before.
    """

    bag: LabelledBag


@dataclass(frozen=True, slots=True)
class LabelLost:
    """A label that the printer had taken did not come out, or nobody knows whether it did."""

    serial: str
    why: str


@dataclass(frozen=True, slots=True)
class Ticketed:
    """The ticket of a reject is out, or is not and why.

    Args:
        serial: of the reject.
        run: id of its run.
        why_not: empty where it was printed.
    """

    serial: str
    run: str
    why_not: str = ""


@dataclass(frozen=True, slots=True)
class SetAside:
    """The packer sets the bag on the pan, or the last labelled one, aside."""

    reason: str


@dataclass(frozen=True, slots=True)
class Barred:
    """A source takes acceptance away, or gives it back with empty words.

    Args:
        source: who says so: ``printer``, ``scale check`` …; one reason a source.
        words: why no bag may be taken, and what to do; empty when one may.
    """

    source: str
    words: str


@dataclass(frozen=True, slots=True)
class DutiesSeen:
    """The duties were asked.

    Args:
        closing: every reason why no bag may be taken now.
        due: what should be done soon, the earliest first.
        seals: each named duty, and whether it lets bags be taken.
    """

    closing: tuple[str, ...]
    due: tuple[Notice, ...]
    seals: tuple[Seal, ...] = ()


@dataclass(frozen=True, slots=True)
class Resumed:
    """A person looked at a stop and goes on."""

    who: str


Event = (
    Weighed
    | Tick
    | LinkUp
    | LinkDown
    | Disturbed
    | RunStarted
    | RunEnded
    | LotsChanged
    | Recorded
    | RecordFailed
    | Labelled
    | LabelOut
    | LabelFailed
    | LabelLost
    | Reissued
    | Settled
    | LeftCount
    | Ticketed
    | SetAside
    | Barred
    | DutiesSeen
    | Resumed
)
