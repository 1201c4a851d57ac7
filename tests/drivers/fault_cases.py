"""The faults of a scale's line, 56 of them, each as a tape and what may be captured from it.

F1 to F17 framing, F18 to F25 the line, F26 to F43 what a frame says, F44 to F56 time and state.
``captures`` is exact; where a fault costs bags as well, ``least`` of them must be captured, and
nothing else ever is.
"""

import random
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from functools import partial

from drivers.connection import LinkRules
from drivers.frames.base import Condition, FrameParser, Kind
from drivers.frames.described import DescribedParser
from drivers.frames.description import Description, Example, Meaning, ValueForm
from drivers.frames.scp0499 import Scp0499Parser
from drivers.parity import ParityLine
from drivers.steady import SteadyRules
from tests.drivers.chain import BAG, STEADY, Sleep, Tape, frame, uart

GOOD = frame(BAG)
ZERO = frame("0")
NOISE = random.Random(56)


@dataclass(frozen=True)
class Fault:
    """One fault: its tape, what is captured, and how the line is read where not as usual."""

    words: str
    tape: Callable[[], Tape]
    captures: tuple[str, ...] = (BAG,)
    least: int | None = None
    parser: Callable[[], FrameParser] = Scp0499Parser
    steady: SteadyRules = STEADY
    rules: LinkRules | None = None


def around(damage: bytes) -> Tape:
    """A bag with the same damage before it, in it and after it."""
    tape = Tape().frames("0", 60).send(damage).frames(BAG, 6).send(damage).frames(BAG, 60)
    return tape.send(damage).empty()


def inside(*damages: bytes) -> Tape:
    """A bag for each damage, which comes in its middle; few enough not to disturb the line."""
    tape = Tape().empty()
    for damage in damages:
        tape.frames(BAG, 3).send(damage).frames(BAG, 60).empty()
    return tape


def pieces(size: int) -> Tape:
    stream, tape = ZERO * 6 + GOOD * 14 + ZERO * 6, Tape()
    for place in range(0, len(stream), size):
        tape.send(stream[place : place + size], 2 * size)
    return tape


def odd_frames(damaged: bytes, count: int = 30) -> Tape:
    """A bag that is on the pan only in frames of this kind."""
    tape = Tape().empty()
    for _ in range(count):
        tape.send(damaged)
    return tape.empty()


def flips(raw: bytes) -> list[bytes]:
    return [
        raw[:n] + bytes([raw[n] ^ 1 << bit]) + raw[n + 1 :]
        for n in range(len(raw))
        for bit in range(8)
    ]


def bursts(raw: bytes) -> list[bytes]:
    """Three neighbouring bits turned over, at each place."""
    whole, size = int.from_bytes(raw, "big"), len(raw)
    return [(whole ^ 7 << n).to_bytes(size, "big") for n in range(size * 8 - 2)]


def streams(*parts: bytes) -> Tape:
    tape = Tape()
    for part in parts:
        for place in range(0, len(part), 40):
            tape.send(part[place : place + 40])
    return tape


def wrong_baud() -> Tape:
    sent = ZERO * 10 + GOOD * 20 + ZERO * 10
    return streams(*(uart(sent, ratio) for ratio in (0.5, 2.0, 12.0, 1 / 12, 2.5)))


def wrong_parity(parity: str) -> Tape:
    return streams(ParityLine(parity).sent(ZERO * 10 + GOOD * 20 + ZERO * 10))


def noise(seconds: int) -> Tape:
    tape = Tape().empty()
    for _ in range(seconds * 20):
        tape.send(NOISE.randbytes(576))  # 11 520 bytes a second
    return tape


def error_once(condition: Condition) -> Tape:
    return around(frame(None, condition=condition))


def stolen() -> Tape:
    """Another program on the port takes every third byte or so."""
    tape, taken = Tape(), random.Random(55)
    for raw in [ZERO] * 20 + [GOOD] * 60 + [ZERO] * 20:
        tape.send(bytes(byte for byte in raw if taken.random() > 0.3))
    return tape


def described(line: str, value: str, form: ValueForm) -> Callable[[], FrameParser]:
    rest = {"s": frozenset({Meaning.STABLE})}
    example = Example(line.encode(), value, "g", frozenset({Meaning.STABLE}))
    return partial(
        DescribedParser,
        Description(
            name="x",
            end=b"\n",
            pattern="{f:1}{value:8}",
            unit="g",
            value=form,
            flags={"f": rest},
            examples=(example,),
        ),
    )


def lines(zero: str, bag: str) -> Tape:
    tape = Tape()
    for text, count in ((zero, 6), (bag, 14), (zero, 6)):
        for _ in range(count):
            tape.send(text.encode())
    return tape


TENTHS = SteadyRules(interval=Decimal("0.5"), unit="g", capacity=Decimal(3000))
FAULTS: dict[str, Fault] = {
    "F1": Fault("a frame in pieces of one byte", partial(pieces, 1)),
    "F2": Fault("two frames in one read", partial(pieces, 40)),
    "F3": Fault(
        "200 frames in one read",
        lambda: Tape().send(ZERO * 200).send(GOOD * 200).frames(BAG, 8).empty(),
    ),
    "F4": Fault("lost start", lambda: around(GOOD[1:])),
    "F5": Fault("lost end, then the next frame", lambda: around(GOOD[:-1])),
    "F6": Fault(
        "a byte lost, at each place",
        lambda: inside(*(GOOD[:n] + GOOD[n + 1 :] for n in range(20))),
        (BAG,) * 20,
    ),
    "F7": Fault(
        "a byte doubled, at each place",
        lambda: inside(*(GOOD[:n] + GOOD[n - 1 :] for n in range(1, 21))),
        (BAG,) * 20,
    ),
    "F8": Fault(
        "LF inside, at each place",
        lambda: inside(*(GOOD[:n] + b"\n" + GOOD[n:] for n in range(20))),
        (BAG,) * 20,
    ),
    "F9": Fault("CR LF and LF CR as ends", lambda: around(GOOD + b"\n" + GOOD + b"\n\r"), least=0),
    "F10": Fault(
        "10 MB without an end",
        lambda: Tape().empty().send(b"7" * 10_000_000).pause(1000).empty().bag().empty(),
    ),
    "F11": Fault("one byte more than is kept", lambda: around(b"\n" + b"5" * 64), least=0),
    "F12": Fault("an empty frame", lambda: around(b"\n\r")),
    "F13": Fault("NULs between frames", lambda: around(b"\x00" * 9)),
    "F14": Fault("XON and XOFF in the stream", lambda: around(b"\x11" + GOOD + b"\x13"), least=0),
    "F15": Fault("our own command echoed", lambda: around(b"\nR\r")),
    "F16": Fault(
        "a late answer: the weight of before",
        lambda: Tape().empty().frames(BAG, 3).send(ZERO).bag().send(frame("120")).empty(),
        least=0,
    ),
    "F17": Fault(
        "tail of one frame and head of another, cut anywhere",
        lambda: inside(*(frame("1111")[:n] + GOOD[n:] for n in range(1, 20))),
        (BAG,) * 19,
    ),
    "F18": Fault(
        "each single bit of each byte",
        lambda: inside(*flips(GOOD)),
        (BAG,) * 160,
        least=150,
    ),
    "F19": Fault("three neighbouring bits", lambda: inside(*bursts(GOOD)), (BAG,) * 158, least=150),
    "F20": Fault("wrong baud rates", wrong_baud, ()),
    "F21": Fault("7E1 read as 8N1", partial(wrong_parity, "E"), ()),
    "F22": Fault("7O1 read as 8N1", partial(wrong_parity, "O"), ()),
    "F23": Fault("a break", lambda: around(b"\x00" * 3 + b"\x80")),
    "F24": Fault("bytes above 7F", lambda: around(bytes(range(0x80, 0x100))), least=0),
    "F25": Fault("a minute of noise at 115 200 baud", partial(noise, 60), ()),
    "F26": Fault(
        "the motion flag never set: the value itself moves",
        lambda: streams(ZERO * 6 + b"".join(frame(str(n)) for n in range(3, 400, 7)) + ZERO * 6),
        (),
    ),
    "F27": Fault(
        "an unknown character in each flag",
        lambda: inside(*(GOOD[:n] + b"#" + GOOD[n + 1 :] for n in range(1, 5))),
        (BAG,) * 4,
    ),
    "F28": Fault(
        "another unit in mid-run",
        lambda: Tape().empty().frames("0.258", 20, unit="kg").frames("258", 20, unit="lb").empty(),
        (),
    ),
    "F29": Fault("no unit", lambda: odd_frames(GOOD.replace(b"g  ", b"   ")), ()),
    "F30": Fault("a decimal comma", lambda: odd_frames(b"\n 1G       258,0g  \r"), ()),
    "F31": Fault("a decimal point that moves", lambda: odd_frames(frame("25.8")), ()),
    "F32": Fault(
        "implied decimals, described",
        lambda: lines("s00000000\n", "s   02580\n"),
        ("258.0",),
        parser=described("s   02580\n", "258.0", ValueForm(implied_decimals=1)),
        steady=TENTHS,
    ),
    "F33": Fault(
        "leading zeros, described",
        lambda: lines("s00000000\n", "s00000258\n"),
        parser=described("s00000258\n", "258", ValueForm()),
    ),
    "F34": Fault(
        "a minus apart from its digits, described",
        lambda: lines("s       0\n", "s-    258\n"),
        (),
        parser=described("s-    258\n", "-258", ValueForm(sign_apart=True)),
    ),
    "F35": Fault("a net below zero", lambda: Tape().empty().frames("-6", 20, kind=Kind.NET), ()),
    "F36": Fault(
        "over capacity with digits",
        lambda: odd_frames(frame("3010", condition=Condition.OVER_CAPACITY)),
        (),
    ),
    "F37": Fault(
        "dashes", lambda: odd_frames(frame(None, condition=Condition.NOT_DISPLAYED)), ()
    ),
    "F38": Fault(
        "high resolution in the usual stream",
        lambda: odd_frames(frame("258.0", high_resolution=True)),
        (),
    ),
    "F39": Fault("no multiple of the interval", lambda: odd_frames(frame("258.5")), ()),
    "F40": Fault(
        "range 2 in one frame, and then for good",
        lambda: around(frame(BAG, range_no=2)).frames(BAG, 12, range_no=2).empty(),
        (BAG, BAG),
    ),
    "F41": Fault("?", lambda: around(b"\n?\r")),
    "F42": Fault("!", lambda: around(b"\n!\r")),
    "F43": Fault(
        "each error once, then clear",
        lambda: Tape().empty().frames(None, 1, condition=Condition.ZERO_ERROR).frames(
            None, 1, condition=Condition.INITIAL_ZERO_ERROR).frames(
            None, 1, condition=Condition.TARE_ERROR).empty().bag().empty(),
    ),
    "F44": Fault(
        "the stream stops while the bag settles",
        lambda: Tape().empty().frames(BAG, 3).pause(60_000),
        (),
    ),
    "F45": Fault(
        "stops of 400 and 600 ms",
        lambda: Tape().empty().frames(BAG, 3).pause(400).frames(BAG, 3).pause(600).bag().empty(),
        (BAG,),
        least=0,
    ),
    "F46": Fault(
        "ten frames a second become one",
        lambda: Tape().frames("0", 6, 100).frames(BAG, 6, 100).frames(BAG, 6, 1000).empty(),
    ),
    "F47": Fault(
        "the same bag for ten minutes", lambda: Tape().empty().frames(BAG, 3000, 200).empty()
    ),
    "F48": Fault(
        "a bag off and an equal one on", lambda: Tape().empty().bag().empty().bag(), (BAG, BAG)
    ),
    "F49": Fault(
        "two bags without a zero between",
        lambda: Tape().empty().bag().frames("3", 12).bag("260").empty(),
    ),
    "F50": Fault(
        "a jump while two frames should agree",
        lambda: streams(ZERO * 6 + (GOOD + frame("259")) * 30 + ZERO * 6),
        (),
    ),
    "F51": Fault(
        "the plug pulled in mid-frame",
        lambda: Tape().empty().send(GOOD * 3 + GOOD[:11]).replug().bag().empty().bag("260").empty(),
        ("260",),
    ),
    "F52": Fault(
        "another name after the plug, the pan empty",
        lambda: Tape().empty().replug(3000).send(GOOD[9:]).empty().bag().empty(),
    ),
    "F53": Fault(
        "another device at the old name",
        lambda: streams(b"").empty().replug().send(b"READY\r\n" * 30).send(b"4006381\r" * 50),
        (),
    ),
    "F54": Fault(
        "power off and on under a load, then more product",
        lambda: Tape().empty().frames("100", 5).pause(3000).empty().bag().frames("0", 6),
        (),
    ),
    "F55": Fault("another program takes bytes", stolen, (BAG,), least=0),
    "F56": Fault(
        "asleep for half a minute, old bytes in the buffer",
        lambda: Tape().empty().frames(BAG, 3).send(Sleep(30_000)).send(GOOD * 30).pause(2000),
        (),
    ),
}  # fmt: skip
