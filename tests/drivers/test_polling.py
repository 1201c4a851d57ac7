"""A scale that is asked one by one: no answer may be older than its own way over the line."""

import queue
import threading
from itertools import pairwise

import pytest

from drivers.connection import Connection, Line, LinkRules
from drivers.conversation import AskRules
from drivers.errors import PortError
from drivers.frames.base import Condition, Kind, WeightFrame
from drivers.frames.scp0499 import Scp0499Parser, render
from drivers.link_items import LinkItem
from drivers.steady import Reading, SteadyReader, SteadyRules
from drivers.zero_gate import ZeroGate

MS = 1_000_000
PLAIN = WeightFrame("0", "g", Kind.GROSS, False, False, Condition.NORMAL, 1)
REFUSED = b"\n?\r"


class SlowScale:
    """A port whose scale writes its answer at once and sends it when those before are out.

    Its weight is the time, in milliseconds, at which the answer was written. In a stall it writes
    answers and sends none.
    """

    name, identity = "slow", ""

    def __init__(self, frame_ms: int, until_ms: int, stalls: tuple[range, ...] = ()) -> None:
        self._frame_ms, self._until_ms, self._stalls = frame_ms, until_ms, stalls
        self.now_ms = 0
        self._out: list[tuple[int, bytes]] = []
        self.most_waiting = 0
        self.asked = 0

    def read(self) -> bytes:
        if self.now_ms >= self._until_ms:
            raise PortError("slow scale", "the test is over")
        self.now_ms += 10
        ready = [data for at_ms, data in self._out if at_ms <= self.now_ms]
        self._out = [one for one in self._out if one[0] > self.now_ms]
        return b"".join(ready)

    def write(self, data: bytes) -> None:
        if data == b"\nR\r":
            self._out.append((self.now_ms + 10, REFUSED))
            return
        self.asked += 1
        free_ms = next((one.stop for one in self._stalls if self.now_ms in one), self.now_ms)
        begin_ms = max([free_ms, *(at_ms for at_ms, _ in self._out)])
        answer = render(PLAIN._replace(digits=str(self.now_ms)))
        self._out.append((begin_ms + self._frame_ms, answer))
        self.most_waiting = max(self.most_waiting, len(self._out))

    def discard_input(self) -> None:
        return

    def close(self) -> None:
        return


def read(scale: SlowScale, ask: AskRules) -> list[tuple[int, int]]:
    """When each weight was read, and how old it was then, in milliseconds."""
    items: list[tuple[int, LinkItem]] = []
    line = Line(
        "1200 8N1",
        Scp0499Parser,
        SteadyReader(SteadyRules()),
        LinkRules(ask=ask),
        lambda: scale.now_ms * MS,
        lambda item: items.append((scale.now_ms, item)),
        ZeroGate(SteadyRules()),
    )
    with pytest.raises(PortError):
        Connection(line, scale, 1).serve(threading.Event(), queue.SimpleQueue())
    return [(at, at - int(item.digits)) for at, item in items if isinstance(item, Reading)]


def ages(scale: SlowScale, ask: AskRules) -> list[int]:
    """How old each weight was when it was read, in milliseconds."""
    return [age for _, age in read(scale, ask)]


@pytest.mark.parametrize("frame_ms", [20, 90, 170, 350, 670])
def test_answers_never_wait_behind_each_other(frame_ms: int) -> None:
    """At 1200 baud an answer takes longer than the time between two questions."""
    scale = SlowScale(frame_ms, 60_000)
    old = ages(scale, AskRules())
    assert max(old) <= frame_ms + 20
    assert len(old) >= 60_000 // (max(frame_ms, 100) + 120)


def test_answers_of_a_stalled_line_come_in_before_the_next_question() -> None:
    scale = SlowScale(
        170, 60_000, tuple(range(at, at + 5_000) for at in range(5_000, 40_000, 9_000))
    )
    old = ages(scale, AskRules())
    assert max(old) > 3_000, "the test must meet a late answer"
    assert max(old[-50:]) <= 190
    assert scale.asked >= 150


def test_an_answer_that_never_comes_is_given_up() -> None:
    class Forgetful(SlowScale):
        def write(self, data: bytes) -> None:
            if self.asked % 10 == 9:
                self.asked += 1
            else:
                super().write(data)

    scale = Forgetful(20, 60_000)
    weights = read(scale, AskRules())
    assert max(age for _, age in weights) <= 40
    gaps = [after - before for (before, _), (after, _) in pairwise(weights)]
    assert 200 < max(gaps) < 500, "a lost answer must not make the scale seem silent"
    assert scale.asked >= 250
