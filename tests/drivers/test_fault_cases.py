"""All faults of a scale's line through the whole chain: no wrong weight is ever captured."""

from collections.abc import Callable
from functools import partial

import pytest

from drivers.frames.base import Garbage, WeightFrame
from drivers.frames.described import DescribedParser
from drivers.frames.scp0499 import Scp0499Parser
from drivers.link_items import LinkDegraded
from drivers.parity import ParityLine
from drivers.steady import Reading, SteadyRules
from drivers.zero_gate import ZeroGate
from tests.drivers.chain import BAG, Chain, Tape, frame, uart
from tests.drivers.fault_cases import FAULTS, Fault, flips
from tests.drivers.frames.test_described import SHIPPED
from tests.drivers.frames.test_scp0499 import UNDERSCORE, WEIGHTS


def play(fault: Fault) -> tuple[list[str], Chain]:
    chain = Chain(fault.parser, fault.steady, fault.rules)
    return chain.play(fault.tape()), chain


def test_there_are_56() -> None:
    assert list(FAULTS) == [f"F{n}" for n in range(1, 57)]


def test_the_chain_sees_a_bag_and_a_wrong_one() -> None:
    """The test can see: without agreement of frames a flipped bit would be captured."""
    assert Chain().play(Tape().empty().bag().empty().bag("259").empty()) == [BAG, "259"]


@pytest.mark.parametrize(
    "fault", FAULTS.values(), ids=[f"{n}-{f.words}" for n, f in FAULTS.items()]
)
def test_fault_never_gives_a_wrong_capture(fault: Fault) -> None:
    captured, _ = play(fault)
    if fault.least is None:
        assert captured == list(fault.captures)
    else:
        assert captured == list(fault.captures[: len(captured)])
        assert len(captured) >= fault.least


def test_without_the_gate_a_hidden_load_would_be_captured(monkeypatch: pytest.MonkeyPatch) -> None:
    """The test of F54 can see: the bag holds 100 g more than the scale shows."""
    monkeypatch.setattr(ZeroGate, "judge", lambda _, reading: reading)
    captured, _ = play(FAULTS["F54"])
    assert captured == [BAG]


BAUD = "check baud rate and parity (here: 9600 8N1)"
WRONG = {
    "half the baud rate": (lambda sent: uart(sent, 2.0), BAUD),
    "twice the baud rate": (lambda sent: uart(sent, 0.5), BAUD),
    "4800 for 19200": (lambda sent: uart(sent, 4.0), BAUD),
    "19200 for 4800": (lambda sent: uart(sent, 0.25), BAUD),
    "9600 for 115200": (lambda sent: uart(sent, 12.0), BAUD),
    "115200 for 9600": (lambda sent: uart(sent, 1 / 12), BAUD),
    "8N1 for 7E1": (ParityLine("E").sent, "set bits 7 and even parity for this port"),
    "8N1 for 7O1": (ParityLine("O").sent, "set bits 7 and odd parity for this port"),
    "7E1 for 8N1": (ParityLine("E").received, BAUD),
    "7E1 for 7O1": (lambda sent: ParityLine("E").received(ParityLine("O").sent(sent)), BAUD),
    "7O1 for 7E1": (lambda sent: ParityLine("O").received(ParityLine("E").sent(sent)), BAUD),
    "7O1 for 8N1": (ParityLine("O").received, BAUD),
    "9600 8N1 for 4800 7E1": (lambda sent: uart(ParityLine("E").sent(sent), 2.0), BAUD),
    "9600 8N1 for 19200 7O1": (lambda sent: uart(ParityLine("O").sent(sent), 0.5), BAUD),
    "9600 7E1 for 4800 8N1": (lambda sent: ParityLine("E").received(uart(sent, 2.0)), BAUD),
    "9600 7O1 for 19200 8N1": (lambda sent: ParityLine("O").received(uart(sent, 0.5)), BAUD),
}


@pytest.mark.parametrize(("heard", "words"), WRONG.values(), ids=WRONG)
def test_wrong_setting_is_told_in_words_within_ten_seconds(
    heard: Callable[[bytes], bytes], words: str
) -> None:
    tape, sent = Tape(), frame("0") * 6 + frame(BAG) * 8
    for _ in range(100):
        tape.send(heard(sent[: 20 * 2]), 100)
        sent = sent[20:] + sent[:20]
    assert tape.now_ms <= 10_000
    chain = Chain()
    assert chain.play(tape) == []
    assert any(words in item.why for item in chain.items if isinstance(item, LinkDegraded))


EXAMPLES = [bytes.fromhex(text) for text, _ in WEIGHTS.values()] + [bytes.fromhex(UNDERSCORE)]


@pytest.mark.parametrize("raw", EXAMPLES, ids=lambda raw: raw[1:-1].decode())
def test_every_flipped_bit_of_every_example_with_the_full_rule(raw: bytes) -> None:
    """Two agreeing frames: no flipped example among whole ones is ever captured or steady."""
    whole = Scp0499Parser().feed(raw)[0]
    assert isinstance(whole, WeightFrame)
    wrong_frames = 0
    for damaged in flips(raw):
        chain = Chain()
        assert chain.play(Tape().frames("0", 2).send(raw * 2 + damaged + raw * 2)) == []
        for item in chain.items:
            if (
                isinstance(item, Reading)
                and item.steady
                and item.raw not in (frame(BAG), frame("0"))
            ):
                assert (item.digits, item.unit) == (whole.digits, whole.unit)
        wrong_frames += any(isinstance(i, WeightFrame) and i != whole for i in
                            Scp0499Parser().feed(damaged))  # fmt: skip
    assert wrong_frames > 0, "the test must meet frames that look right and are not"


@pytest.mark.parametrize("name", SHIPPED)
def test_every_flipped_bit_of_described_examples(name: str) -> None:
    """The same for lines by description; a checksum refuses every flip already."""
    form = SHIPPED[name]
    for example in form.examples:
        for damaged in flips(example.line):
            chain = Chain(partial(DescribedParser, form), SteadyRules())
            chain.play(Tape().send(example.line * 2 + damaged + example.line * 2))
            steady = [i for i in chain.items if isinstance(i, Reading) and i.steady]
            assert {item.digits for item in steady} <= {example.value}
            if form.checksum is not None:
                assert any(isinstance(item, Garbage) for item in chain.items)
