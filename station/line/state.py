"""LineState: all that a screen may show of a line, as one frozen value."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Protocol

from station.core.facts import Fact
from station.core.label_life import Reprint, Resolve
from station.core.mass import Mass
from station.core.metrology.verdict import Verdict
from station.core.run import Run


class Phase(StrEnum):
    """Where the bag on the line is in its life."""

    CLOSED = "closed"
    """No run: nothing is accepted."""
    CLEAR_PAN = "clear pan"
    """The pan must show zero before the next bag counts."""
    READY = "ready"
    """Zero was seen: the next load is a new bag."""
    LOADED = "loaded"
    """A bag is on the pan and not yet accepted."""
    RECORDING = "recording"
    """Accepted; the store is making it durable."""
    LABELLING = "labelling"
    """Durable; its label is on the way to the printer."""
    LIFT = "lift"
    """Labelled, or set aside: the bag leaves the pan."""
    STOPPED = "stopped"
    """A person must look before the line goes on."""


class Verb(StrEnum):
    """The one thing to do now."""

    EMPTY_PAN = "EMPTY PAN"
    BAG_ON = "BAG ON"
    ADD = "ADD"
    TAKE_OUT = "TAKE OUT"
    WAIT = "WAIT"
    SEAL = "SEAL"
    LIFT_BAG = "LIFT BAG"
    SET_ASIDE = "SET ASIDE"
    WIPE_PAN = "WIPE PAN"
    NO_READING = "NO READING"
    CALL_LEAD = "CALL LEAD"
    START_RUN = "START RUN"
    ORDER_DONE = "ORDER DONE"


@dataclass(frozen=True, slots=True)
class Shown:
    """The newest reading as a screen shows it.

    Args:
        digits: the indication's own digits, without conversion.
        unit: its unit as sent.
        net: indication minus the run's tare, or None without a run or with a fault.
        steady: the scale and the agreement rule both say so.
        spread: range of the indications in the last half second.
        verdict: of ``net`` in the run's window, or None.
        seen_at_ns: steady count when the frame arrived.
    """

    digits: str
    unit: str
    net: Mass | None
    steady: bool
    spread: Mass | None
    verdict: Verdict | None
    seen_at_ns: int


@dataclass(frozen=True, slots=True)
class LastPack:
    """The bag recorded last."""

    serial: str
    net: Mass
    good: bool


@dataclass(frozen=True, slots=True)
class Tally:
    """Running figures of the run."""

    good: int = 0
    rejects: int = 0
    net_micrograms: int = 0
    """Exact sum of the good bags' net."""
    below_t1: int = 0
    """Good bags below T1; 0 unless the window allows any."""

    @property
    def mean(self) -> Mass | None:
        """Mean net of the good bags, rounded down to whole micrograms, in grams."""
        return Mass.from_micrograms(self.net_micrograms // self.good) if self.good else None


@dataclass(frozen=True, slots=True)
class Notice:
    """Something to be done, and by when.

    Args:
        words: what, in one short sentence.
        at: by when, in UTC.
    """

    words: str
    at: datetime


@dataclass(frozen=True, slots=True)
class Seal:
    """A duty as a seal on the run: closed when it is done, broken by what is open.

    Args:
        name: one short word.
        wanting: what is open, and what to do; empty when it is done.
    """

    name: str
    wanting: str


@dataclass(frozen=True, slots=True)
class LineState:
    """One moment of the line.

    Args:
        phase: where the bag is in its life.
        verb: the one thing to do now.
        amount: how much to add or take out, with ADD and TAKE OUT.
        because: one sentence with the number and the next action; empty when all is well.
        cycle: counts zero → load → zero cycles from 1.
        shown: the newest reading, or None while there is none that can be believed.
        run: the frozen run, or None.
        tally: running figures.
        last: the bag recorded last, or None.
        port: the scale's line when it is open, else empty.
        closed: why no bag is taken although a run is open, every reason; empty when bags are.
        due: what should be done soon, the earliest first.
        seals: each named duty of the run; empty without a run.
    """

    phase: Phase
    verb: Verb
    amount: Mass | None
    because: str
    cycle: int
    shown: Shown | None
    run: Run | None
    tally: Tally
    last: LastPack | None
    port: str
    closed: tuple[str, ...] = ()
    due: tuple[Notice, ...] = ()
    seals: tuple[Seal, ...] = ()

    def only_moves(self, before: LineState) -> bool:
        """Whether nothing is new since ``before`` but the reading and its amount."""
        return self._stands() == before._stands()

    def _stands(self) -> tuple[object, ...]:
        """What a reading alone leaves as it is, the quickest to differ first."""
        return (
            *(self.phase, self.verb, self.because, self.cycle, self.run, self.closed),
            *(self.tally, self.last, self.port, self.due, self.seals),
        )


@dataclass(frozen=True, slots=True)
class RunChoice:
    """What a lead chose for a run."""

    product: str
    version: int
    lots: tuple[str, ...]
    lead: str
    operator: str
    order_size: int | None = None


@dataclass(frozen=True, slots=True)
class RunAnswer:
    """Whether a run was started, and if not, why in one sentence."""

    started: bool
    words: str


@dataclass(frozen=True, slots=True)
class EntryAnswer:
    """What became of facts a person entered.

    Args:
        uids: the facts, as they were given.
        recorded: whether all of them are durable; else none is.
        words: what follows, or why they were refused.
    """

    uids: tuple[str, ...]
    recorded: bool
    words: str


class Intents(Protocol):
    """Names of what a person may ask of the line from a screen.

    A screen holds an object with these methods and never the line itself.
    """

    def set_aside(self, reason: str) -> None:
        """Set the bag on the pan, or the last labelled one, aside."""
        ...

    def resume(self, who: str) -> None:
        """Go on after a stop."""
        ...

    def start_run(self, choice: RunChoice) -> None:
        """Start a run; the answer, or why it was refused, comes back as a RunAnswer."""
        ...

    def end_run(self, who: str) -> None:
        """End the run."""
        ...

    def enter(self, facts: tuple[Fact, ...], who: str) -> None:
        """Record facts, all or none; the answer comes back as an EntryAnswer."""
        ...

    def reprint(self, wish: Reprint) -> None:
        """Print a label again, marked as a copy; answered as facts are, the serial for a uid."""
        ...

    def resolve(self, answer: Resolve) -> None:
        """Say what became of a label in doubt; answered in the same way."""
        ...

    def bar(self, source: str, words: str) -> None:
        """Take no bags for a reason, until the same source says empty words."""
        ...
