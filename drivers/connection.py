"""One open port, from opening to loss: asks, reads, parses, judges, tells."""

from __future__ import annotations

import queue
import threading
import time
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from typing import Protocol

from drivers.budget import BudgetRules, ErrorBudget
from drivers.conversation import AskRules, Conversation
from drivers.diagnosis import ENOUGH, diagnose
from drivers.errors import PortError
from drivers.flood import FloodLimit
from drivers.frames.base import Answer, AnswerKind, FrameParser, Garbage, Item, WeightFrame
from drivers.frames.scp0499_facts import Discovery
from drivers.frames.scp0499_outcome import Outcome, name_of, outcome, unanswered
from drivers.link_items import LinkDegraded, LinkItem, LinkUp
from drivers.pace import Pace
from drivers.sleep import slept_ns
from drivers.steady import SteadyReader
from drivers.zero_gate import ZeroGate

_SAMPLE = 400
_TELL_AGAIN_NS = 10_000_000_000
_HELD_NS = 1_000_000_000
"""A longer pause between two reads: the program was held, and what arrived meanwhile is old."""
_SLEPT_NS = 200_000_000
_FLOOD_PAUSE_S = 0.05
_REFUSED = 8
"""So many of what was no frame since the newest weight are looked at for what they share."""
_WARMING = "the scale has just come back: its weights count in a moment"


class PortLike(Protocol):
    """What the link needs of an open port; drivers.port.Port is one."""

    @property
    def name(self) -> str:
        """The port as its settings name it."""
        ...

    @property
    def identity(self) -> str:
        """What tells this device from others; empty where nothing does."""
        ...

    def read(self) -> bytes:
        """Return what has arrived, after a short wait at most; PortError when it is lost."""
        ...

    def write(self, data: bytes) -> None:
        """Send all of ``data``; PortError when the port is lost."""
        ...

    def discard_input(self) -> None:
        """Throw away what has arrived; PortError when the port is lost."""
        ...

    def close(self) -> None:
        """Give the port back."""
        ...


@dataclass(frozen=True, slots=True)
class LinkRules:
    """How a link asks and judges its line.

    Args:
        ask: when the scale is asked for what.
        budget: the share of damaged frames that is allowed.
        discover: ask a scale of SMA SCP-0499 about itself after each opening.
        most_bytes_per_s: what comes beyond is thrown away unread.
        outcome: what an item says about a command sent before it.
        name_of: what a command is called, for a person.
        gulp_ns: weights closer than this are read several at once, so far apart: to wake for each
            would cost more than to read it.
        warm_up_ns: weights count only so long after a lost line was opened again.
    """

    ask: AskRules = field(default_factory=AskRules)
    budget: BudgetRules = field(default_factory=BudgetRules)
    discover: bool = False
    most_bytes_per_s: int = 40_000
    outcome: Callable[[bytes, Item], Outcome | None] = outcome
    name_of: Callable[[bytes], str] = name_of
    gulp_ns: int = 4_000_000
    warm_up_ns: int = 0


@dataclass(frozen=True, slots=True)
class Line:
    """What stays the same over all connections of a link.

    Args:
        settings: the port's settings as a scale's menu gives them; empty where it has none.
        new_parser: makes the parser of this line.
        reader: turns frames into readings.
        rules: how the line is asked and judged.
        clock: gives the steady count, in nanoseconds.
        say: told everything.
        gate: shuts a zero out that may hide a load.
        slept: gives how long the computer slept so far, in nanoseconds.
        quiet: while it is set the scale is asked nothing; commands of a person still go out.
        again: set to have the port opened once more, and the scale asked about itself.
    """

    settings: str
    new_parser: Callable[[], FrameParser]
    reader: SteadyReader
    rules: LinkRules
    clock: Callable[[], int]
    say: Callable[[LinkItem], None]
    gate: ZeroGate
    slept: Callable[[], int] = slept_ns
    quiet: threading.Event = field(default_factory=threading.Event)
    again: threading.Event = field(default_factory=threading.Event)


class Connection:
    """Serves one open port.

    Args:
        line: what stays the same over all connections.
        port: open; closed by the caller.
        epoch: number of this connection, from 1.
    """

    def __init__(self, line: Line, port: PortLike, epoch: int) -> None:
        now_ns = line.clock()
        self._line = line
        self._port = port
        self._epoch = epoch
        self._parser = line.new_parser()
        self._conversation = Conversation(line.rules.ask, now_ns)
        self._budget = ErrorBudget(line.rules.budget)
        self._flood = FloodLimit(line.rules.most_bytes_per_s)
        self._discovery = Discovery(now_ns) if line.rules.discover else None
        self._command: tuple[bytes, int] | None = None
        """A person's command that waits for its answer, and until when."""
        self._sent = b""
        """What was sent last: some lines give it back."""
        self._read_ns = self._weight_ns = now_ns
        self._warm_ns = now_ns + (line.rules.warm_up_ns if epoch > 1 else 0)
        self._quick = False
        """The newest weight came soon after the one before."""
        self._slept_ns = line.slept()
        self._sample = b""
        self._refused: deque[Garbage] = deque(maxlen=_REFUSED)
        self._pace = Pace(line.reader.stale_after_ns)
        self._echoed = False
        """What came in last was what we had sent."""
        self._started = False
        """The first frame or damage after opening was seen."""
        self._trouble = ""
        """Why no reading may be used for now."""
        self._told, self._told_ns = "", now_ns - _TELL_AGAIN_NS
        self.worked = False
        """A weight was read over this connection."""

    def serve(self, stopping: threading.Event, commands: queue.SimpleQueue[bytes]) -> None:
        """Read until told to stop.

        Raises:
            PortError: the port is lost.
        """
        self._port.discard_input()
        self._line.say(LinkUp(self._port.name, self._epoch, self._port.identity))
        while not stopping.is_set():
            if self._line.again.is_set():
                self._line.again.clear()
                raise PortError(f"{self._port.name} is opened again", "to see which scale is there")
            self._send(commands)
            chunk = self._port.read()
            before_ns, self._read_ns = self._read_ns, self._line.clock()
            if self._read_ns - before_ns > _HELD_NS or self._woke():
                self._forget("the computer slept or was held up: what the scale sent is too old")
            elif self._flood.is_over(len(chunk), self._read_ns):
                self._conversation.heard_bytes(self._read_ns)
                self._forget("more bytes arrive than a scale sends: is this the scale's line?")
                stopping.wait(_FLOOD_PAUSE_S)
            elif chunk:
                self._take(chunk)
                if self._quick:
                    time.sleep(self._line.rules.gulp_ns / 1e9)
            elif self._conversation.is_silence_to_tell(self._read_ns):
                self._tell_silence()

    def _send(self, commands: queue.SimpleQueue[bytes]) -> None:
        now_ns = self._line.clock()
        quiet = self._line.quiet.is_set()
        if self._discovery is not None and not quiet:
            self._discover(self._discovery, now_ns)
            return
        if self._command is not None and now_ns >= self._command[1]:
            name = self._line.rules.name_of(self._command[0])
            self._line.say(unanswered(self._command[0], name))
            self._command = None
        if not commands.empty() and (quiet or self._conversation.may_send(now_ns)):
            command = commands.get()
            self._write(command)
            self._conversation.sent_command(now_ns)
            self._command = (command, now_ns + self._line.rules.ask.outcome_ns)
        elif not quiet and (asked := self._conversation.due(now_ns)):
            self._write(asked)

    def _write(self, data: bytes) -> None:
        self._port.write(data)
        self._sent = data

    def _discover(self, discovery: Discovery, now_ns: int) -> None:
        if asked := discovery.due(now_ns):
            self._write(asked)
        elif discovery.over:
            self._discovery = None
            self._line.say(discovery.facts)

    def _woke(self) -> bool:
        before_ns, self._slept_ns = self._slept_ns, self._line.slept()
        return self._slept_ns - before_ns > _SLEPT_NS

    def _forget(self, why: str) -> None:
        """Throw away what came in and may not be read, what was just read included."""
        self._port.discard_input()
        self._parser = self._line.new_parser()
        self._line.reader.disturbed()
        self._started = False
        self._conversation.heard_answer(self._read_ns)  # it was thrown away
        if self._read_ns - self._told_ns >= _TELL_AGAIN_NS or why != self._told:
            self._told, self._told_ns = why, self._read_ns
            self._line.say(LinkDegraded(self._budget.bad, self._budget.total, why))

    def _take(self, chunk: bytes) -> None:
        self._echoed = chunk in self._sent
        if not self._echoed:
            self._conversation.heard_bytes(self._read_ns)
        self._sample = (self._sample + chunk)[-_SAMPLE:]
        for item in self._parser.feed(chunk):
            self._handle(item)
        self._judge_line()

    def _handle(self, item: Item) -> None:
        is_first, self._started = not self._started, True
        if self._discovery is not None:
            self._discovery.heard(item)
        elif self._command is not None:
            self._hear_outcome(self._command[0], item)
        if isinstance(item, Garbage) and item.raw == self._sent:
            return  # an echo
        self._conversation.heard_answer(self._read_ns)
        match item:
            case WeightFrame():
                self._weight(item)
            case Answer():
                self._answer(item)
            case Garbage():
                start = self._parser.frame_start
                if is_first and not (start and item.raw.startswith(start)):
                    return  # the rest of a frame that began before the port was open
                self._refused.append(item)
                self._damage()
                self._line.say(item)

    def _hear_outcome(self, command: bytes, item: Item) -> None:
        became = self._line.rules.outcome(command, item)
        if became is not None:
            self._command = None
            self._line.say(became)

    def _weight(self, frame: WeightFrame) -> None:
        self.worked = True
        self._quick = self._read_ns - self._weight_ns < self._line.rules.gulp_ns
        self._weight_ns = self._read_ns
        self._refused.clear()
        self._conversation.heard_weight(self._read_ns)
        self._budget.count(True, self._read_ns)
        if not self._budget.spent:
            self._trouble = ""
        reading = self._line.reader.feed(frame, self._read_ns, self._epoch)
        reading = self._line.gate.judge(reading)
        seldom = self._pace.see(self._read_ns)
        trouble = self._trouble or (_WARMING if self._read_ns < self._warm_ns else seldom)
        if trouble and reading.fault is None:
            reading = replace(reading, fault=trouble, steady=False, at_zero=False)
        self._line.say(reading)

    def _answer(self, answer: Answer) -> None:
        if answer.kind is AnswerKind.LINE_ERROR:
            self._damage()
        elif answer.kind is AnswerKind.UNKNOWN_COMMAND:
            self._line.reader.disturbed()
            self._conversation.heard_refusal(self._read_ns)
        self._line.say(answer)

    def _damage(self) -> None:
        self._line.reader.disturbed()
        self._budget.count(False, self._read_ns)

    def _judge_line(self) -> None:
        """Say that the line is disturbed: at first, then now and again while it lasts."""
        if not self._budget.spent:
            self._trouble = ""
            return
        if self._trouble and self._read_ns - self._told_ns < _TELL_AGAIN_NS:
            return
        if len(self._sample) < ENOUGH:
            return
        self._trouble = diagnose(
            self._sample,
            self.worked,
            self._line.settings,
            self._line.new_parser,
            self._refused,
            self._sent,
        )
        self._told, self._told_ns = self._trouble, self._read_ns
        self._line.say(LinkDegraded(self._budget.bad, self._budget.total, self._trouble))

    def _tell_silence(self) -> None:
        self._line.reader.disturbed()
        seconds = self._line.rules.ask.silent_after_ns / 1_000_000_000
        why = (
            f"the scale on {self._port.name} has sent nothing for {seconds:g} s: check that it is"
            " switched on, its cable, and its communication settings"
        )
        if self._echoed:
            why = (
                f"on {self._port.name} comes back what the station sends, and nothing else: check"
                " that the scale is switched on, its cable, and its communication settings"
            )
        if self._line.settings:
            why += f" (here: {self._line.settings})"
        self._line.say(LinkDegraded(0, self._budget.total, why))
