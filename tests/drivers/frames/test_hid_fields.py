"""Report descriptors of USB devices, against those the standard itself prints."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.frames.hid_fields import DescriptorError, InputField, input_fields

# USB Implementers' Forum, Device Class Definition for HID 1.11, appendix E.10 (mouse); its report
# is drawn in appendix B.2: three buttons and a gap in byte 0, X in byte 1, Y in byte 2.
MOUSE = bytes.fromhex(
    "05 01 09 02 a1 01 09 01 a1 00 05 09 19 01 29 03 15 00 25 01 95 03 75 01 81 02"
    "95 01 75 05 81 01 05 01 09 30 09 31 15 81 25 7f 75 08 95 02 81 06 c0 c0"
)


def test_the_mouse_of_the_standard_has_its_fields_where_the_standard_draws_them() -> None:
    assert input_fields(MOUSE) == (
        InputField(0, 0x9_0001, 0, 1),
        InputField(0, 0x9_0002, 1, 1),
        InputField(0, 0x9_0003, 2, 1),
        InputField(0, 0x1_0030, 8, 8),
        InputField(0, 0x1_0031, 16, 8),
    )
    x, y = input_fields(MOUSE)[3:]
    report = bytes((0b100, 5, 250))
    assert (x.of(report), y.of(report)) == (b"\x05", b"\xfa")
    assert [one.is_set(report) for one in input_fields(MOUSE)[:3]] == [False, False, True]


def test_reports_with_ids_are_counted_apart_and_pushed_globals_come_back() -> None:
    descriptor = bytes.fromhex(
        "06 8c 00 75 08 95 02 85 01 09 fe 81 02"  # report 1: two bytes, from byte 1 on
        "a4 85 02 95 01 09 fb 81 02 b4"  # report 2, with globals of its own
        "0b 3b 00 01 00 81 02"  # a usage of four bytes names its page: report 1 again
    )
    assert input_fields(descriptor) == (
        InputField(1, 0x8C_00FE, 8, 16),
        InputField(2, 0x8C_00FB, 8, 8),
        InputField(1, 0x1_003B, 24, 16),
    )


def test_long_items_are_passed_over() -> None:
    assert input_fields(bytes.fromhex("fe 02 f0 aa bb") + MOUSE) == input_fields(MOUSE)


@pytest.mark.parametrize(
    ("descriptor", "words"),
    [
        (MOUSE[:1], "ends within its item at byte 0"),
        (bytes.fromhex("fe"), "ends within"),
        (bytes.fromhex("75 20 97 ff ff ff 7f 09 01 81 02"), "bytes long"),
    ],
)
def test_a_broken_descriptor_is_refused_in_words(descriptor: bytes, words: str) -> None:
    with pytest.raises(DescriptorError, match=words):
        input_fields(descriptor)


@given(st.binary(max_size=200))
def test_any_bytes_are_fields_or_refused(descriptor: bytes) -> None:
    try:
        fields = input_fields(descriptor)
    except DescriptorError:
        return
    assert all(one.bit >= 0 and one.bits >= 0 for one in fields)
