"""Why a weight is not used, and what is wrong with the line, is said in the packer's language."""

import re
from collections.abc import Iterator
from decimal import Decimal

import pytest

from drivers.diagnosis import diagnose
from drivers.frames.base import Condition, Garbage, Kind, WeightFrame
from drivers.frames.scp0499 import Scp0499Parser
from drivers.pace import Pace
from drivers.parity import ParityLine
from drivers.steady import SteadyReader, SteadyRules
from drivers.zero_gate import PRESS_PAN, ZERO_IT
from station.core.languages import Language
from station.screens.tongue import say, speak

RULES = SteadyRules(interval=Decimal(1), unit="g", capacity=Decimal(3000))
GOOD = WeightFrame("254", "g", Kind.GROSS, False, False, Condition.NORMAL, 1)
DOUBTFUL = (
    *(GOOD._replace(condition=one, digits=None) for one in Condition if "error" in one),
    GOOD._replace(condition=Condition.NOT_DISPLAYED, digits=None),
    GOOD._replace(condition=Condition.OVER_CAPACITY),
    GOOD._replace(condition=Condition.UNDER_CAPACITY, digits="-30"),
    GOOD._replace(condition=Condition.UNDER_CAPACITY, digits=None),
    GOOD._replace(condition=Condition.CENTRE_OF_ZERO),
    GOOD._replace(digits=None),
    GOOD._replace(unit="lb"),
    GOOD._replace(high_resolution=True),
    GOOD._replace(kind=Kind.TARE),
    GOOD._replace(digits="254.5"),
    GOOD._replace(digits="9999"),
)
FRAMES = b"\n 1G         254g  \r" * 10
SAMPLES = (
    b"\0" * 300,
    b"x" * 300,
    b"$GPGGA,123519,4807.038,N*47\r\n" * 9,
    ParityLine("E").sent(FRAMES),
    ParityLine("O").sent(FRAMES),
)


def reasons() -> Iterator[str]:
    for frame in DOUBTFUL:
        fault = SteadyReader(RULES).feed(frame, 0, 1).fault
        assert fault is not None
        yield fault
    yield from (PRESS_PAN, ZERO_IT)
    for sample in SAMPLES:
        yield diagnose(sample, False, "9600 8N1", Scp0499Parser)
        yield diagnose(sample, False, "", Scp0499Parser)
    yield diagnose(FRAMES, True, "9600 8N1", Scp0499Parser)
    refused = [Garbage(b"g= 0.560 lb\r\n", "unit 'lb' is not in the description")] * 3
    yield diagnose(FRAMES, True, "9600 8N1", Scp0499Parser, refused)
    yield diagnose(b"W\rg= 254 g\r\n" * 9, False, "", Scp0499Parser, sent=b"W\r")
    pace = Pace(500_000_000)
    yield [pace.see(second * 1_000_000_000) for second in range(9)][-1]


@pytest.fixture
def chinese(qapp) -> Iterator[None]:
    speak(Language.CHINESE)
    yield
    speak(Language.ENGLISH)


@pytest.mark.parametrize("reason", tuple(reasons()))
def test_reason_is_said_whole(chinese: None, reason: str) -> None:
    assert not re.findall(r"[a-z]{3,}", say(reason))
