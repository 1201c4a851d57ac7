"""What a scale's bytes come to: the whole chain, link → steady → line, on a clock of its own.

The line runs a product that takes every steady bag, good or not, so that any wrong weight that can
be believed is captured and seen.
"""

import queue
import threading
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from decimal import Decimal

from drivers.connection import Connection, Line, LinkRules
from drivers.errors import PortError
from drivers.frames.base import Condition, FrameParser, Kind, WeightFrame
from drivers.frames.scp0499 import Scp0499Parser, render
from drivers.link_items import LinkDown, LinkItem
from drivers.steady import SteadyReader, SteadyRules
from drivers.zero_gate import ZeroGate
from station.app.line_event import line_event
from station.core.mass import Mass, Unit
from station.core.pack import PackDraft, PackId, PackRecord
from station.core.product import PackMode
from station.line import events
from station.line.cycle import step
from station.line.cycle_state import Cycle, LineRules
from station.line.effects import IssueLabel, Record
from tests.station.line.scenario import make_moment, make_product, make_run

MS = 1_000_000
STEADY = SteadyRules(
    interval=Decimal(1), unit="g", zero_band=Decimal("0.5"), capacity=Decimal(3000)
)
LINE = LineRules(interval=Mass(Decimal(1), Unit.GRAM), dwell_ns=300 * MS, stale_ns=500 * MS)
RUN = make_run(make_product(mode=PackMode.CHECK))
READ_MS = 50
BAG = "258"
PLAIN = WeightFrame("0", "g", Kind.GROSS, False, False, Condition.NORMAL, 1)


def frame(digits: str | None, **changes: object) -> bytes:
    """The bytes of a gross weight at rest in grams, but for what ``changes`` say."""
    return render(PLAIN._replace(digits=digits, **changes))


@dataclass(frozen=True)
class Sleep:
    """The computer slept: the steady count stood still for this long."""

    ms: int


class Tape:
    """What comes over the line, and when; a plug pulled starts another connection."""

    def __init__(self) -> None:
        self.now_ms = 0
        self.connections: list[list[tuple[int, bytes | Sleep]]] = [[]]

    def send(self, data: bytes | Sleep, after_ms: int = READ_MS) -> "Tape":
        self.now_ms += after_ms
        self.connections[-1].append((self.now_ms, data))
        return self

    def frames(
        self, digits: str | None, count: int = 12, every_ms: int = READ_MS, **more
    ) -> "Tape":
        for _ in range(count):
            self.send(frame(digits, **more), every_ms)
        return self

    def empty(self) -> "Tape":
        return self.frames("0", 6)

    def bag(self, digits: str = BAG) -> "Tape":
        return self.frames(digits, 12)

    def pause(self, ms: int) -> "Tape":
        return self.send(b"", ms)

    def replug(self, ms: int = 300) -> "Tape":
        self.now_ms += ms
        self.connections.append([])
        return self


class TapePort:
    """One connection of a tape as a port: gives nothing each 50 ms, as an open port does."""

    name, identity = "tape", ""

    def __init__(self, steps: list[tuple[int, bytes | Sleep]], clock: "TapeClock") -> None:
        self._steps = list(reversed(steps))
        self._clock = clock

    def read(self) -> bytes:
        if not self._steps:
            raise PortError("scale lost on tape", "the tape is over")
        at_ms, data = self._steps[-1]
        if at_ms > self._clock.now_ms + READ_MS:
            self._clock.now_ms += READ_MS
            return b""
        self._clock.now_ms = max(at_ms, self._clock.now_ms)
        self._steps.pop()
        if isinstance(data, Sleep):
            self._clock.slept_ms += data.ms
            return b""
        return data

    def write(self, data: bytes) -> None:
        return

    def discard_input(self) -> None:
        return

    def close(self) -> None:
        return


class TapeClock:
    """The steady count of the tape, and how long the computer slept."""

    def __init__(self) -> None:
        self.now_ms = 0
        self.slept_ms = 0


class Chain:
    """The chain over any number of connections."""

    def __init__(
        self,
        parser: Callable[[], FrameParser] = Scp0499Parser,
        steady: SteadyRules = STEADY,
        rules: LinkRules | None = None,
    ) -> None:
        self.clock = TapeClock()
        self.items: list[LinkItem] = []
        self.captures: list[str] = []
        """Gross digits of each recorded bag."""
        self.cycle, _ = step(Cycle(LINE), events.RunStarted(RUN))
        self._line = Line(
            "9600 8N1",
            parser,
            SteadyReader(steady),
            rules or LinkRules(),
            lambda: self.clock.now_ms * MS,
            self._hear,
            ZeroGate(steady),
            lambda: self.clock.slept_ms * MS,
        )

    def play(self, tape: Tape) -> list[str]:
        """Play a tape to its end; return what was captured."""
        for epoch, steps in enumerate(tape.connections, start=1):
            port = TapePort(steps, self.clock)
            try:
                Connection(self._line, port, epoch).serve(threading.Event(), queue.SimpleQueue())
            except PortError as fault:
                self._hear(LinkDown("tape", str(fault), 0.2))
        return self.captures

    def feed(self, chunks: Iterator[tuple[int, bytes]]) -> list[str]:
        """Play one endless connection without keeping it; return what was captured."""

        class Port(TapePort):
            def read(self) -> bytes:
                at_ms, chunk = next(chunks, (-1, b""))
                if at_ms < 0:
                    raise PortError("scale lost on tape", "the tape is over")
                self._clock.now_ms = at_ms
                return chunk

        try:
            Connection(self._line, Port([], self.clock), 1).serve(
                threading.Event(), queue.SimpleQueue()
            )
        except PortError as fault:
            self._hear(LinkDown("tape", str(fault), 0.2))
        return self.captures

    def _hear(self, item: LinkItem) -> None:
        self.items.append(item)
        del self.items[:-2000]
        event = line_event(item)
        if event is not None:
            self._do(events.Tick(self.clock.now_ms * MS))
            self._do(event)

    def _do(self, event: events.Event) -> None:
        self.cycle, effects = step(self.cycle, event)
        for effect in effects:
            if isinstance(effect, Record):
                self._record(effect)
            elif isinstance(effect, IssueLabel):
                self._do(events.Labelled(effect.record.serial))

    def _record(self, effect: Record) -> None:
        self.captures.append(effect.weighing.gross.digits)
        number = len(self.captures)
        draft = PackDraft(
            RUN.id, effect.weighing, effect.verdict, effect.quality, effect.reason,
            RUN.blend_lot, RUN.lot_set.key, RUN.dating.use_by, RUN.dating.production_day,
            RUN.operator, make_moment(self.clock.now_ms),
        )  # fmt: skip
        identity = PackId("S", "A1", 1 << 60, number)
        self._do(events.Recorded(PackRecord(identity, f"u{number}", draft, number, "00")))


def uart(data: bytes, ratio: float) -> bytes:
    """What a receiver reads whose bits last ``ratio`` times the sender's (8N1)."""
    wave = [1] * 20
    for byte in data:
        wave += [0, *(byte >> bit & 1 for bit in range(8)), 1]
    wave += [1] * 40
    read, place = bytearray(), 0.0
    while place < len(wave) - 12 * ratio - 2:
        if wave[int(place)]:
            place = int(place) + 1.0
            continue
        read.append(sum(wave[int(place + ratio * (bit + 1.5))] << bit for bit in range(8)))
        place += ratio * 9.5
    return bytes(read)
