"""One open port, from opening to loss: asks, reads, parses, judges, tells."""

from __future__ import annotations

import queue
import threading
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from typing import Protocol

from drivers.budget import BudgetRules, ErrorBudget
from drivers.conversation import AskRules, Conversation
from drivers.diagnosis import ENOUGH, diagnose
from drivers.frames.base import Answer, AnswerKind, FrameParser, Garbage, Item, WeightFrame
from drivers.link_items import LinkDegraded, LinkItem, LinkUp
from drivers.steady import SteadyReader

_SAMPLE = 400
_TELL_AGAIN_NS = 10_000_000_000
_HELD_NS = 1_000_000_000
"""A longer pause between two reads: the program was held, and what arrived meanwhile is old."""


class PortLike(Protocol):
    """What the link needs of an open port; drivers.port.Port is one."""

    @property
    def name(self) -> str:
        """The port as its settings name it."""
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
    """How a link asks and judges its line."""

    ask: AskRules = field(default_factory=AskRules)
    budget: BudgetRules = field(default_factory=BudgetRules)


@dataclass(frozen=True, slots=True)
class Line:
    """What stays the same over all connections of a link.

    Args:
        settings: the port's settings as a scale's menu gives them; may be empty.
        new_parser: makes the parser of this line.
        reader: turns frames into readings.
        rules: how the line is asked and judged.
        clock: gives the steady count, in nanoseconds.
        say: told everything.
    """

    settings: str
    new_parser: Callable[[], FrameParser]
    reader: SteadyReader
    rules: LinkRules
    clock: Callable[[], int]
    say: Callable[[LinkItem], None]


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
        self._read_ns = now_ns
        self._sample = b""
        self._started = False
        """The first frame or damage after opening was seen."""
        self._trouble = ""
        """Why no reading may be used for now."""
        self._told_ns = 0
        self.worked = False
        """A weight was read over this connection."""

    def serve(self, stopping: threading.Event, commands: queue.SimpleQueue[bytes]) -> None:
        """Read until told to stop.

        Raises:
            PortError: the port is lost.
        """
        self._port.discard_input()
        self._line.say(LinkUp(self._port.name, self._epoch))
        while not stopping.is_set():
            self._send(commands)
            chunk = self._port.read()
            before_ns, self._read_ns = self._read_ns, self._line.clock()
            if self._read_ns - before_ns > _HELD_NS:
                self._forget()
            elif chunk:
                self._take(chunk)
            elif self._conversation.is_silence_to_tell(self._read_ns):
                self._tell_silence()

    def _send(self, commands: queue.SimpleQueue[bytes]) -> None:
        now_ns = self._line.clock()
        if self._conversation.may_send(now_ns) and not commands.empty():
            self._port.write(commands.get())
            self._conversation.sent_command(now_ns)
        elif asked := self._conversation.due(now_ns):
            self._port.write(asked)

    def _forget(self) -> None:
        """Throw away what came in while the program was held, what was just read included."""
        self._port.discard_input()
        self._parser = self._line.new_parser()
        self._line.reader.disturbed()
        self._started = False

    def _take(self, chunk: bytes) -> None:
        self._conversation.heard_bytes(self._read_ns)
        self._sample = (self._sample + chunk)[-_SAMPLE:]
        for item in self._parser.feed(chunk):
            self._handle(item)
        self._judge_line()

    def _handle(self, item: Item) -> None:
        is_first, self._started = not self._started, True
        match item:
            case WeightFrame():
                self._weight(item)
            case Answer():
                self._answer(item)
            case Garbage():
                start = self._parser.frame_start
                if is_first and not (start and item.raw.startswith(start)):
                    return  # the rest of a frame that began before the port was open
                self._damage()
                self._line.say(item)

    def _weight(self, frame: WeightFrame) -> None:
        self.worked = True
        self._conversation.heard_weight(self._read_ns)
        self._budget.count(True, self._read_ns)
        if not self._budget.spent:
            self._trouble = ""
        reading = self._line.reader.feed(frame, self._read_ns, self._epoch)
        if self._trouble and reading.fault is None:
            reading = replace(reading, fault=self._trouble, steady=False, at_zero=False)
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
            self._sample, self.worked, self._line.settings, self._line.new_parser
        )
        self._told_ns = self._read_ns
        self._line.say(LinkDegraded(self._budget.bad, self._budget.total, self._trouble))

    def _tell_silence(self) -> None:
        self._line.reader.disturbed()
        seconds = self._line.rules.ask.silent_after_ns / 1_000_000_000
        why = (
            f"the scale on {self._port.name} has sent nothing for {seconds:g} s: check that it is"
            " switched on, its cable, and its communication settings"
        )
        if self._line.settings:
            why += f" (here: {self._line.settings})"
        self._line.say(LinkDegraded(0, self._budget.total, why))
