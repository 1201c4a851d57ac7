"""One open port, step by step: a port that plays a script, and a clock that it moves."""

import queue
import random
import threading
from collections.abc import Callable, Iterable
from functools import partial

import pytest

from drivers.connection import Connection, Line, LinkRules
from drivers.conversation import LISTEN, AskRules
from drivers.errors import PortError
from drivers.frames.base import Answer, AnswerKind, FrameParser, Garbage
from drivers.frames.described import DescribedParser
from drivers.frames.scp0499 import Scp0499Parser
from drivers.frames.scp0499_facts import ScaleFacts
from drivers.frames.scp0499_outcome import Outcome
from drivers.link_items import LinkDegraded, LinkItem, LinkUp
from drivers.steady import Reading, SteadyReader, SteadyRules
from drivers.zero_gate import ZeroGate
from tests.drivers.frames.test_described import SHIPPED

MS = 1_000_000
FRAME = b"\n 1G         254g  \r"
DAMAGED = b"\n 1G         2 4g  \r"


class Script:
    """A port that gives chunks at their times, in milliseconds, and then ends the connection."""

    name = "script"
    identity = ""

    def __init__(self, steps: Iterable[tuple[int, bytes]]) -> None:
        self._steps = list(steps)
        self.now_ms = 0
        self.sent: list[tuple[int, bytes]] = []
        self.discarded: list[int] = []
        self.ended = threading.Event()

    def read(self) -> bytes:
        """Give the next chunk at its time; before it nothing, each 50 ms as an open port does."""
        if not self._steps:
            self.ended.set()
            return b""
        at_ms, chunk = self._steps[0]
        if at_ms > self.now_ms + 50:
            self.now_ms += 50
            return b""
        self.now_ms = at_ms
        del self._steps[0]
        return chunk

    def write(self, data: bytes) -> None:
        self.sent.append((self.now_ms, data))

    def discard_input(self) -> None:
        self.discarded.append(self.now_ms)

    def close(self) -> None:
        self.ended.set()


def play(
    script: Script,
    commands: Iterable[bytes] = (),
    rules: LinkRules | None = None,
    slept: Callable[[], int] = lambda: 0,
    epoch: int = 7,
    parser: Callable[[], FrameParser] = Scp0499Parser,
) -> list[LinkItem]:
    items: list[LinkItem] = []
    line = Line(
        "9600 8N1",
        parser,
        SteadyReader(SteadyRules()),
        rules or LinkRules(),
        lambda: script.now_ms * MS,
        items.append,
        ZeroGate(SteadyRules()),
        slept,
    )
    waiting: queue.SimpleQueue[bytes] = queue.SimpleQueue()
    for command in commands:
        waiting.put(command)
    Connection(line, script, epoch).serve(script.ended, waiting)
    return items


def of(kind: type, items: list[LinkItem]) -> list:
    return [item for item in items if isinstance(item, kind)]


def test_discards_tells_asks_and_reads() -> None:
    script = Script([(30, FRAME), (60, FRAME)])
    items = play(script)
    assert script.discarded == [0]
    assert script.sent == [(0, b"\nR\r")]
    assert items[0] == LinkUp("script", 7)
    first, second = items[1:]
    assert (first.steady, second.steady) == (False, True)
    assert (second.seen_at_ns, second.epoch) == (60 * MS, 7)


@pytest.mark.parametrize("cut", range(1, 20))
def test_frame_that_began_before_the_port_was_open_is_no_damage(cut: int) -> None:
    items = play(Script([(30, FRAME[cut:] + FRAME * 2)]))
    assert of(Garbage, items) == []
    assert [r.steady for r in of(Reading, items)] == [False, True]


def test_silence_is_told_with_the_settings_and_then_now_and_again() -> None:
    script = Script([(30, FRAME), (25_000, b"")])
    told = of(LinkDegraded, play(script))
    assert [item.bad for item in told] == [0, 0, 0]  # after 2, 12 and 22 s
    assert "script has sent nothing for 2 s" in told[0].why
    assert "(here: 9600 8N1)" in told[0].why
    later = [data for at_ms, data in script.sent if at_ms > 1_000]
    assert b"\nR\r" in later


def test_frames_on_both_sides_of_a_silence_do_not_agree() -> None:
    readings = of(Reading, play(Script([(30, FRAME), (60, FRAME), (3_000, FRAME), (3_050, FRAME)])))
    assert [r.steady for r in readings] == [False, True, False, True]


def test_after_a_lost_line_weights_count_two_seconds_later() -> None:
    stream = [(n * 50, FRAME) for n in range(1, 60)]
    readings = of(Reading, play(Script(stream), rules=LinkRules(warm_up_ns=2_000 * MS)))
    warming = [r.seen_at_ns // MS for r in readings if "just come back" in (r.fault or "")]
    assert warming == list(range(50, 2_000, 50))
    assert not any(r.steady or r.at_zero for r in readings if r.fault)
    assert all(r.steady and r.fault is None for r in readings if r.seen_at_ns >= 2_000 * MS)


def test_on_its_first_connection_a_scale_is_believed_at_once() -> None:
    script = Script([(30, FRAME), (60, FRAME)])
    readings = of(Reading, play(script, rules=LinkRules(warm_up_ns=2_000 * MS), epoch=1))
    assert [r.steady for r in readings] == [False, True]


def test_damage_beyond_the_budget_marks_every_reading_until_it_is_within() -> None:
    good = [(n * 50, FRAME) for n in range(1, 500)]
    bad = [(5_000 + n, DAMAGED.replace(b" 4g", b"%c4g" % (65 + n))) for n in range(10)]
    items = play(Script(sorted(good + bad)))
    (told,) = of(LinkDegraded, items)
    assert "damaged" in told.why
    assert (told.bad, told.total) == (6, 106)  # 5 of 105 would be within 5 %
    marked = [r.seen_at_ns // MS for r in of(Reading, items) if r.fault == told.why]
    assert not any(r.steady or r.at_zero for r in of(Reading, items) if r.fault)
    assert (min(marked), max(marked)) == (5_050, 9_450)  # from then on 10 are 5 % of 200
    assert items[-1].steady


def test_lasting_damage_is_told_each_ten_seconds() -> None:
    told = of(LinkDegraded, play(Script([(n * 100, DAMAGED) for n in range(1, 301)])))
    assert len(told) == 3
    assert all("check baud rate and parity" in item.why for item in told)


def test_refused_and_damaged_commands_restart_agreement() -> None:
    chunks = [FRAME, FRAME, b"\n?\r", FRAME, FRAME, b"\n!\r", FRAME, FRAME]
    items = play(Script([(30 * n, chunk) for n, chunk in enumerate(chunks, 1)]))
    assert [r.agreeing for r in of(Reading, items)] == [1, 2, 1, 2, 1, 2]
    assert [a.kind for a in of(Answer, items)] == [
        AnswerKind.UNKNOWN_COMMAND,
        AnswerKind.LINE_ERROR,
    ]


def test_commands_go_out_one_by_one_and_the_repeating_is_asked_for_again() -> None:
    script = Script([(n * 50, FRAME) for n in range(1, 40)])
    play(script, [b"\nA\r", b"\nB\r"])
    assert script.sent[:3] == [(0, b"\nA\r"), (300, b"\nB\r"), (600, b"\nR\r")]


def test_program_that_was_held_forgets_what_is_old() -> None:
    class Held(Script):
        def read(self) -> bytes:
            if len(self._steps) == 1:
                self.now_ms = 9_000
            return super().read()

    script = Held([(30, FRAME), (60, FRAME), (9_000, FRAME * 3)])
    items = play(script)
    assert script.discarded == [0, 9_000]
    assert len(of(Reading, items)) == 2


def test_sleep_of_the_computer_forgets_what_lay_in_the_buffer() -> None:
    """The steady count stands still in a sleep: only the count since boot tells (F56)."""
    script = Script([(n * 50, FRAME * (20 if n == 6 else 1)) for n in range(1, 12)])
    items = play(script, slept=lambda: 30_000 * MS if script.now_ms >= 300 else 0)
    assert script.discarded == [0, 300]
    (told,) = of(LinkDegraded, items)
    assert "the computer slept" in told.why
    assert [r.seen_at_ns // MS for r in of(Reading, items) if r.agreeing == 1] == [50, 350]


def test_flood_is_thrown_away_and_told_now_and_again() -> None:
    rules = LinkRules(most_bytes_per_s=10_000)
    steps = [(n * 10, FRAME * 20) for n in range(1, 300)] + [(4_500, FRAME), (4_550, FRAME)]
    script = Script(steps)
    script.ended.wait = lambda _: False  # the pauses are real time, the script's is not
    items = play(script, rules=rules)
    assert [told.why.split(":")[0] for told in of(LinkDegraded, items)] == [
        "more bytes arrive than a scale sends"
    ]
    assert len(of(Reading, items)) == 3 * 10_000 // 20 + 2
    assert items[-1].steady


class Talking(Script):
    """A scale that answers commands, from a table, at the next read."""

    def __init__(self, answers: dict[bytes, list[bytes]], until_ms: int) -> None:
        super().__init__([(until_ms, b"")])
        self.answers = answers

    def write(self, data: bytes) -> None:
        super().write(data)
        if self.answers.get(data):
            self._steps.insert(0, (self.now_ms + 10, self.answers[data].pop(0)))


def test_scale_is_asked_about_itself_before_it_repeats() -> None:
    answers = {
        b"\nA\r": [b"\nSMA:2/1.0\r"],
        b"\nB\r": [b"\nMOD:T6\r", b"\nEND:\r"],
        b"\nI\r": [b"\nSMA:2/1.0\r"],
        b"\nN\r": [b"\nCAP:g  :3000:1:0\r", b"\nCMD:HPTMCR\r", b"\nEND:\r"],
    }
    script = Talking(answers, 2_000)
    (facts,) = of(ScaleFacts, play(script, rules=LinkRules(discover=True)))
    assert (facts.level, facts.model, facts.commands) == (2, "T6", "HPTMCR")
    assert facts.ranges[0].capacity == 3000
    sent = [data for _, data in script.sent]
    assert sent[: len(sent) - sent[::-1].index(b"\nN\r")] == [
        b"\nA\r", b"\nB\r", b"\nB\r", b"\nI\r", b"\nN\r", b"\nN\r", b"\nN\r",
    ]  # fmt: skip
    assert sent[7] == b"\nR\r"


def test_scale_that_says_nothing_about_itself_is_asked_to_repeat_within_a_second() -> None:
    script = Talking({}, 2_000)
    (facts,) = of(ScaleFacts, play(script, rules=LinkRules(discover=True)))
    assert facts == ScaleFacts()
    assert next(at_ms for at_ms, data in script.sent if data == b"\nR\r") <= 1_000


@pytest.mark.parametrize(
    ("answer", "done", "words"),
    [
        ([b"\nZ1G           0g  \r"], True, "zero: 0 g gross"),
        ([FRAME + b"\nZ1G           0g  \r"], True, "zero: 0 g gross"),
        ([b"\nE1G  ----------g  \r"], False, "refused to set zero"),
        ([b"\n?\r"], False, "does not do that"),
        ([b"\n!\r"], False, "nothing was done"),
        ([FRAME], False, "gave no answer"),
        ([], False, "gave no answer"),
    ],
)
def test_what_became_of_a_command_is_told_once(answer: list, done: bool, words: str) -> None:
    (became,) = of(Outcome, play(Talking({b"\nZ\r": answer}, 2_000), [b"\nZ\r"]))
    assert (became.command, became.done) == (b"\nZ\r", done)
    assert words in became.words


def test_line_that_echoes_what_is_sent_is_not_disturbed() -> None:
    class Echoing(Talking):
        def write(self, data: bytes) -> None:
            super().write(data)
            self._steps.insert(0, (self.now_ms + 5, data))

    asked = Echoing({b"\nR\r": [b"\n?\r"], b"\nW\r": [FRAME] * 40}, 3_000)
    items = play(asked)
    assert of(Garbage, items) == []
    assert of(LinkDegraded, items) == []
    assert of(Reading, items)[-1].steady


def test_lost_port_leaves_as_its_error() -> None:
    class Lost(Script):
        def read(self) -> bytes:
            raise PortError("scale lost on script", "the plug")

    with pytest.raises(PortError, match="the plug"):
        play(Lost([]))


def test_a_minute_of_noise_gives_no_steady_reading_and_is_told() -> None:
    """A line at 115 200 baud carries 11 520 bytes a second."""
    chance = random.Random(25)
    items = play(Script([(n * 50, chance.randbytes(576)) for n in range(1, 1201)]))
    assert [r for r in of(Reading, items) if r.steady] == []
    assert len(of(LinkDegraded, items)) == 6


class Echo(Script):
    """A line that gives back what is sent, and nothing else."""

    def __init__(self) -> None:
        super().__init__([(20_000, b"")])
        self._back = b""

    def write(self, data: bytes) -> None:
        super().write(data)
        self._back += data

    def read(self) -> bytes:
        back, self._back = self._back, b""
        return back or super().read()


def test_line_that_gives_back_what_is_sent_is_no_scale() -> None:
    told = of(LinkDegraded, play(Echo()))
    assert "on script comes back what the station sends, and nothing else" in told[0].why


def test_weights_once_a_second_are_told_by_their_pace_and_never_as_silence() -> None:
    rules = LinkRules(ask=LISTEN)
    items = play(Script([(n * 1_000, FRAME) for n in range(1, 30)]), rules=rules)
    faults = [item.fault for item in of(Reading, items)]
    assert "weights come 1.0 s apart, and one counts for 0.5 s" in str(faults[5])
    assert all(faults[5:])
    assert of(LinkDegraded, items) == []


def test_line_the_parser_refuses_again_and_again_is_told_by_what_it_says() -> None:
    """An error the parser does not know, shown by a scale whose line is sound."""
    steps = [(n * 100, FRAME) for n in range(1, 30)]
    steps += [(n * 100, b"\n?1G         254g  \r") for n in range(30, 60)]
    told = of(LinkDegraded, play(Script(steps)))
    assert "is no weight (status is '?', allowed is Z O U E I T e or a space)" in told[-1].why


def test_echo_in_front_of_the_answers_is_told() -> None:
    """A line that ends with CR LF takes an echoed request with CR for its own beginning."""
    line = SHIPPED["lantern"].examples[0].line

    class Echoing(Script):
        def write(self, data: bytes) -> None:
            super().write(data)
            self._steps.insert(0, (self.now_ms + 20, data + line))

    ask = AskRules(repeat=b"W\r", ask=b"W\r", first_frame_ns=100 * MS)
    script = Echoing([(20_000, b"")])
    told = of(
        LinkDegraded,
        play(script, rules=LinkRules(ask=ask), parser=partial(DescribedParser, SHIPPED["lantern"])),
    )
    assert "switch the echo of the converter" in told[-1].why
