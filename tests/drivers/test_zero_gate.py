"""A zero after a gap, where a load lay before, is no zero until the pan proved empty."""

from decimal import Decimal

import pytest

from drivers.frames.base import Condition, Kind, WeightFrame
from drivers.steady import Reading, SteadyReader, SteadyRules
from drivers.zero_gate import PRESS_PAN, ZERO_IT, ZeroGate, asks_for_zero

MS = 1_000_000
RULES = SteadyRules(interval=Decimal(1), unit="g", zero_band=Decimal("0.5"))
Step = tuple[int, str] | tuple[int, str, int]


def play(*steps: Step) -> list[Reading]:
    """Each step is milliseconds since the one before, digits and, if another, the epoch."""
    gate, reader, now, readings = ZeroGate(RULES), SteadyReader(RULES), 0, []
    for gap_ms, digits, *epoch in steps:
        now += gap_ms * MS
        value = int(digits)
        condition = Condition.UNDER_CAPACITY if value < -20 else Condition.NORMAL
        frame = WeightFrame(digits, "g", Kind.GROSS, False, False, condition, 1)
        readings.append(gate.judge(reader.feed(frame, now, epoch[0] if epoch else 1)))
    return readings


BAG = ((50, "254"), (50, "254"))
BACK_AT_ZERO = ((3000, "0"), (50, "0"), (50, "0"))


@pytest.mark.parametrize("gap", [(3000, "0"), (50, "0", 2)], ids=["silence", "another connection"])
def test_zero_after_a_gap_with_a_load_before_is_shut_out(gap: Step) -> None:
    epoch = gap[2:]
    *_, last = play(*BAG, gap, (50, "0", *epoch), (50, "0", *epoch))
    assert (last.fault, last.steady, last.at_zero) == (PRESS_PAN, False, False)


def test_more_product_in_a_bag_that_was_taken_for_zero_never_counts() -> None:
    readings = play(*BAG, *BACK_AT_ZERO, (50, "254"), (50, "254"), (50, "254"))
    assert {r.fault for r in readings[3:]} == {PRESS_PAN}


def test_a_hand_on_the_empty_pan_opens() -> None:
    *_, shut, opened, good = play(*BAG, *BACK_AT_ZERO, (50, "400"), (50, "0"), (50, "0"), (50, "0"))
    assert shut.fault == PRESS_PAN
    assert (opened.fault, opened.at_zero) == (None, True)
    assert good.steady


def test_lifting_the_hidden_load_asks_for_the_zero_key_and_that_opens() -> None:
    lifted = play(*BAG, *BACK_AT_ZERO, (50, "-254"), (50, "-254"), (50, "-9"))[-1]
    assert lifted.fault == ZERO_IT
    zeroed = play(*BAG, *BACK_AT_ZERO, (50, "-254"), (50, "0"), (50, "0"))[-1]
    assert (zeroed.fault, zeroed.steady) == (None, True)


def test_lifting_is_seen_where_the_scale_tells_less_than_zero_by_a_flag_alone() -> None:
    """A USB weighing device has no sign in its weight."""
    gate, reader = ZeroGate(RULES), SteadyReader(RULES)
    frame = WeightFrame("0", "g", Kind.GROSS, False, False, Condition.NORMAL, 1)
    under = frame._replace(digits=None, condition=Condition.UNDER_CAPACITY)
    frames = [frame._replace(digits="254")] * 2 + [frame] * 3 + [under] * 2 + [frame] * 3
    times = (0, 50, 3000, 3050, 3100, 3150, 3200, 3250, 3300, 3350)
    read = [gate.judge(reader.feed(one, at * MS, 1)) for one, at in zip(frames, times, strict=True)]
    assert read[4].fault == PRESS_PAN
    assert "set the scale to zero" in str(read[5].fault)
    assert asks_for_zero(read[5])
    assert read[7].fault == ZERO_IT
    assert (read[9].fault, read[9].steady) == (None, True)


@pytest.mark.parametrize(
    "steps",
    [
        ((50, "0"), (3000, "0"), (50, "0")),
        ((50, "0"), (50, "0", 2), (50, "0", 2)),
        (*BAG, (50, "0"), (50, "0")),
        (*BAG, (3000, "254"), (50, "254"), (50, "0"), (50, "0")),
        (*BAG, (3000, "130"), (50, "130"), (50, "0"), (50, "0")),
        ((50, "1"), (50, "1"), (3000, "0"), (50, "0")),
        ((50, "-9"), (50, "-9"), (3000, "0"), (50, "0")),
    ],
    ids=["empty", "empty, plug", "no gap", "same load", "other load", "an interval", "below zero"],
)
def test_other_zeros_are_believed(steps: tuple[Step, ...]) -> None:
    assert play(*steps)[-1].steady
    assert play(*steps)[-1].at_zero


def test_another_fault_is_told_first() -> None:
    gate, reader = ZeroGate(RULES), SteadyReader(RULES)
    frame = WeightFrame("0.254", "kg", Kind.GROSS, False, False, Condition.NORMAL, 1)
    assert "other unit" in str(gate.judge(reader.feed(frame, 0, 1)).fault)
