"""Agreement, motion, staleness, return to zero; and what a damaged frame may never do."""

from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.frames.base import Condition, Kind, WeightFrame
from drivers.frames.scp0499 import Scp0499Parser, render
from drivers.steady import Reading, SteadyReader, SteadyRules, is_stale

MS = 1_000_000
RULES = SteadyRules(interval=Decimal(1), unit="g")
BAG = WeightFrame("254", "g", Kind.GROSS, False, False, Condition.NORMAL, 1)
ZERO = BAG._replace(digits="0", condition=Condition.CENTRE_OF_ZERO)


def read(*frames: WeightFrame, rules: SteadyRules = RULES, step_ms: int = 50) -> list[Reading]:
    reader = SteadyReader(rules)
    return [reader.feed(frame, n * step_ms * MS, 1) for n, frame in enumerate(frames)]


def test_two_equal_frames_at_rest_are_steady() -> None:
    first, second = read(BAG, BAG)
    assert (first.steady, first.agreeing) == (False, 1)
    assert (second.steady, second.agreeing) == (True, 2)
    assert (second.digits, second.value, second.unit) == ("254", Decimal(254), "g")
    assert second.fault is None


@pytest.mark.parametrize(
    "between",
    [
        BAG._replace(motion=True),
        BAG._replace(digits="255"),
        BAG._replace(digits="254.0"),
        BAG._replace(unit="kg"),
        BAG._replace(kind=Kind.NET),
        BAG._replace(range_no=2),
        BAG._replace(high_resolution=True),
        BAG._replace(digits=None, condition=Condition.ZERO_ERROR),
        BAG._replace(condition=Condition.OVER_CAPACITY),
    ],
    ids=str,
)
def test_agreement_starts_again_after_a_frame_that_says_other(between: WeightFrame) -> None:
    *_, other, first, second = read(BAG, BAG, between, BAG, BAG)
    assert not other.steady
    assert not first.steady
    assert second.steady


def test_agreement_starts_again_after_a_disturbance() -> None:
    reader = SteadyReader(RULES)
    reader.feed(BAG, 0, 1)
    reader.disturbed()
    assert not reader.feed(BAG, 50 * MS, 1).steady
    assert reader.feed(BAG, 100 * MS, 1).steady


def test_agreement_starts_again_with_a_new_connection() -> None:
    reader = SteadyReader(RULES)
    reader.feed(BAG, 0, 1)
    after = reader.feed(BAG, 50 * MS, 2)
    assert (after.steady, after.epoch) == (False, 2)


def test_frames_further_apart_than_the_limit_do_not_agree() -> None:
    assert read(BAG, BAG, step_ms=500)[-1].steady
    assert not read(BAG, BAG, step_ms=501)[-1].steady


def test_more_frames_may_be_demanded() -> None:
    assert [r.steady for r in read(BAG, BAG, BAG, rules=replace(RULES, agree_frames=3))] == [
        False,
        False,
        True,
    ]


def test_one_frame_can_never_be_enough() -> None:
    with pytest.raises(ValueError, match="at least 2"):
        SteadyRules(agree_frames=1)


@pytest.mark.parametrize(
    ("frame", "words"),
    [
        (BAG._replace(unit="kg"), "other unit kg, the line runs in g"),
        (BAG._replace(digits="254.5"), "254.5 g is not a multiple of 1 g"),
        (BAG._replace(high_resolution=True), "high resolution"),
        (BAG._replace(kind=Kind.TARE), "is the tare"),
        (BAG._replace(condition=Condition.OVER_CAPACITY), "over capacity"),
        (BAG._replace(digits=None, condition=Condition.ZERO_ERROR), "zero error"),
        (BAG._replace(digits=None, condition=Condition.INITIAL_ZERO_ERROR), "no zero when it was"),
        (BAG._replace(digits=None, condition=Condition.TARE_ERROR), "tare error"),
        (BAG._replace(digits=None, condition=Condition.NOT_DISPLAYED), "shows no weight"),
        (BAG._replace(digits=None), "dashes"),
        (ZERO._replace(digits="3"), "says centre of zero and shows 3 g"),
    ],
)
def test_fault_in_words_and_never_steady(frame: WeightFrame, words: str) -> None:
    for reading in read(frame, frame, frame):
        assert reading.fault is not None
        assert words in reading.fault
        assert not reading.steady
        assert not reading.at_zero


@pytest.mark.parametrize(("digits", "refused"), [("3009", False), ("3010", True), ("-3010", True)])
def test_more_than_the_scale_weighs_is_refused(digits: str, refused: bool) -> None:
    rules = replace(RULES, capacity=Decimal(3000))
    (reading,) = read(BAG._replace(digits=digits), rules=rules)
    assert ("more than the scale weighs, 3000 g" in str(reading.fault)) is refused


def test_interval_of_two_refuses_an_odd_value() -> None:
    rules = SteadyRules(interval=Decimal("0.002"), unit="kg")
    frame = BAG._replace(unit="kg", digits="0.254")
    assert read(frame, frame, rules=rules)[-1].steady
    assert read(frame._replace(digits="0.255"), rules=rules)[-1].fault is not None


@pytest.mark.parametrize(
    ("frame", "band", "at_zero"),
    [
        (ZERO, None, True),
        (BAG._replace(digits="1"), None, True),
        (BAG._replace(digits="-1"), None, True),
        (BAG._replace(digits="2"), None, False),
        (BAG._replace(digits="-2"), None, False),
        (BAG._replace(digits="1"), Decimal(0), False),
        (BAG._replace(digits="0", kind=Kind.NET), None, False),
        (ZERO._replace(digits="-6", kind=Kind.NET), None, True),
    ],
    ids=str,
)
def test_empty_pan(frame: WeightFrame, band: Decimal | None, at_zero: bool) -> None:
    assert read(frame, rules=replace(RULES, zero_band=band))[0].at_zero is at_zero


def test_without_interval_only_zero_is_an_empty_pan() -> None:
    rules = SteadyRules()
    assert not read(BAG._replace(digits="1"), rules=rules)[0].at_zero
    assert read(BAG._replace(digits="0"), rules=rules)[0].at_zero


def test_negative_is_a_value_and_no_empty_pan() -> None:
    reading = read(BAG._replace(digits="-12"))[0]
    assert (reading.value, reading.under, reading.fault) == (Decimal(-12), False, None)
    assert not reading.at_zero


def test_below_the_range_is_a_fault_at_rest_and_only_said_in_motion() -> None:
    frame = BAG._replace(digits="-42", condition=Condition.UNDER_CAPACITY)
    swinging, resting, still = read(frame._replace(motion=True), frame, frame)
    assert (swinging.value, swinging.under, swinging.fault) == (Decimal(-42), True, None)
    for reading in (resting, still):
        assert (reading.value, reading.under, reading.over) == (Decimal(-42), True, False)
        assert "-42 g is below what the scale weighs" in str(reading.fault)
        assert not reading.steady
        assert not reading.at_zero


def test_spread_is_the_range_within_the_window() -> None:
    values = [BAG._replace(digits=str(n)) for n in (200, 260, 254, 250, 255)]
    spreads = [r.spread for r in read(*values, rules=replace(RULES, spread_window_ns=100 * MS))]
    assert spreads == [0, 60, 60, 10, 5]


def test_spread_forgets_another_unit() -> None:
    assert read(BAG, BAG._replace(digits="9", unit="oz"))[-1].spread == 0


def test_reading_ages() -> None:
    reading = read(BAG)[0]
    assert not is_stale(reading, 500 * MS, RULES)
    assert is_stale(reading, 500 * MS + 1, RULES)


def flips(raw: bytes) -> list[bytes]:
    return [
        raw[:n] + bytes([raw[n] ^ (1 << bit)]) + raw[n + 1 :]
        for n in range(len(raw))
        for bit in range(8)
    ]


@pytest.mark.parametrize(
    "frame",
    [BAG, BAG._replace(unit="lb", digits="5.025"), BAG._replace(unit="kg", digits="1.250"), ZERO],
    ids=str,
)
def test_one_flipped_bit_in_a_stream_never_gives_a_wrong_steady_reading(frame: WeightFrame) -> None:
    """Each bit of each byte of one frame among many; the frame itself has no checksum."""
    good = render(frame)
    tried, wrong_frames = 0, 0
    for damaged in flips(good):
        reader, parser = SteadyReader(SteadyRules()), Scp0499Parser()
        for n, item in enumerate(parser.feed(good * 3 + damaged + good * 3)):
            if not isinstance(item, WeightFrame):
                reader.disturbed()
                continue
            reading = reader.feed(item, n * MS, 1)
            wrong_frames += (item.digits, item.unit) != (frame.digits, frame.unit)
            if reading.steady:
                assert (reading.digits, reading.unit) == (frame.digits, frame.unit)
        tried += 1
    assert tried == 160
    assert wrong_frames > 0, "the test must meet frames that look right and are not"


@given(st.lists(st.tuples(st.integers(0, 3), st.booleans(), st.integers(1, 700)), max_size=30))
def test_steady_needs_two_equal_neighbours_at_rest(steps: list[tuple[int, bool, int]]) -> None:
    reader, now = SteadyReader(RULES), 0
    before: tuple[int, bool] | None = None
    for value, motion, gap_ms in steps:
        now += gap_ms * MS
        reading = reader.feed(BAG._replace(digits=str(value), motion=motion), now, 1)
        expected = before == (value, False) and not motion and gap_ms <= 500
        assert reading.steady is expected
        before = (value, motion)
