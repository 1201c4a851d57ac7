"""Data reports of weighing devices.

USB-IF, HID Point of Sale Usage Tables 1.02, usage page 0x8D; the order of the fields from memory.
"""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.frames.base import Answer, Condition, Garbage, WeightFrame
from drivers.frames.hid_scale import UNITS, HidScaleParser, in_stream, read_report


def read(hexadecimal: str) -> WeightFrame | Garbage | Answer:
    return read_report(bytes.fromhex(hexadecimal))


@pytest.mark.parametrize(
    ("report", "digits", "unit", "motion", "condition"),
    [
        ("03 04 02 00 fe 00", "254", "g", False, Condition.NORMAL),
        ("03 04 03 fd e2 04", "1.250", "kg", False, Condition.NORMAL),
        ("03 04 0b ff 34 19", "645.2", "oz", False, Condition.NORMAL),
        ("03 03 03 fd ff 00", "0.255", "kg", True, Condition.NORMAL),
        ("03 02 02 00 00 00", "0", "g", False, Condition.CENTRE_OF_ZERO),
        ("04 04 02 01 19 00", "250", "g", False, Condition.NORMAL),
        ("03 05 02 00 07 00", None, "g", False, Condition.UNDER_CAPACITY),
        ("03 06 02 00 ff ff", "65535", "g", False, Condition.OVER_CAPACITY),
        ("03 01 02 00 fe 00", None, "g", False, Condition.NOT_DISPLAYED),
        ("03 07 02 00 fe 00", None, "g", False, Condition.NOT_DISPLAYED),
        ("03 08 02 00 fe 00", None, "g", False, Condition.ZERO_ERROR),
    ],
)
def test_report(
    report: str, digits: str | None, unit: str, motion: bool, condition: Condition
) -> None:
    frame = read(report)
    assert isinstance(frame, WeightFrame)
    assert (frame.digits, frame.unit, frame.motion) == (digits, unit, motion)
    assert frame.condition is condition


@pytest.mark.parametrize(
    ("report", "why"),
    [
        ("03 00 02 00 fe 00", "status is 0"),
        ("03 09 02 00 fe 00", "status is 9"),
        ("03 04 00 00 fe 00", "unit is 0"),
        ("03 04 0d 00 fe 00", "unit is 13"),
        ("03 04 02 7f fe 00", "exponent is 127"),
        ("03 04 02 80 fe 00", "exponent is -128"),
    ],
)
def test_refused(report: str, why: str) -> None:
    item = read(report)
    assert isinstance(item, Garbage)
    assert why in item.why


def test_other_reports_are_no_damage() -> None:
    assert isinstance(read("05 01 02 03"), Answer)
    assert isinstance(read("03 04 02 00 fe"), Answer)


def test_first_report_after_opening_is_left_out() -> None:
    stream = in_stream(bytes.fromhex("03 04 02 00 fe 00")) * 2
    first, second = HidScaleParser().feed(stream)
    assert isinstance(first, Garbage)
    assert "may be an old one" in first.why
    assert isinstance(second, WeightFrame)


@given(st.integers(0, 65535), st.integers(-9, 6), st.sampled_from(sorted(UNITS)))
def test_value_is_exact(weight: int, exponent: int, unit: int) -> None:
    raw = bytes([3, 4, unit]) + exponent.to_bytes(1, "little", signed=True)
    frame = read_report(raw + weight.to_bytes(2, "little"))
    assert isinstance(frame, WeightFrame)
    assert frame.value == Decimal(weight) * Decimal(10) ** exponent


@given(st.lists(st.binary(max_size=80), max_size=10))
def test_any_bytes_never_raise_and_any_cutting_gives_the_same(chunks: list[bytes]) -> None:
    cut, whole = HidScaleParser(), HidScaleParser()
    items = [item for chunk in chunks for item in cut.feed(chunk)]
    assert items == whole.feed(b"".join(chunks))
    assert cut.pending == whole.pending < cut.MAX_PENDING
