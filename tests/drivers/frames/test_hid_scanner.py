"""Reports of a USB bar-code scanner, as far as the scans a serial scanner would have given."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.frames.hid_scanner import ScannerReports
from drivers.scanner import Refused, Scan, ScanReader, ScanRules, Symbol

ROOM = 56
# Written by the tables (HID Point of Sale Usage Tables 1.02, page 0x8C): report 2 with a count, the
# three characters of the symbology identifier, 56 bytes of data and one bit for continued data.
DESCRIPTOR = bytes.fromhex(
    "05 8c 09 02 a1 01 09 12 a1 02 85 02 15 00 26 ff 00 75 08 95 01 05 01 09 3b 81 02"
    "05 8c 95 03 09 fb 09 fc 09 fd 81 02 95 38 09 fe 82 02 01"
    "75 01 95 01 09 ff 81 02 75 07 81 03 c0 c0"
)
NO_COUNT = bytes.fromhex("05 8c 09 02 a1 01 75 08 95 08 09 fe 81 02 c0")


def reports(identifier: bytes, data: bytes) -> list[bytes]:
    """A scan as such a scanner sends it."""
    parts = [data[at : at + ROOM] for at in range(0, len(data), ROOM)] or [b""]
    return [
        bytes((2, len(part)))
        + identifier
        + part.ljust(ROOM, b"\0")
        + bytes([part is not parts[-1]])
        for part in parts
    ]


def scans(sent: list[bytes], descriptor: bytes = DESCRIPTOR) -> list[Scan | Refused]:
    reader, line = ScannerReports(descriptor), ScanReader(ScanRules(longest=400))
    return [item for one in sent for item in line.feed(reader.read(one), 1)]


@pytest.mark.parametrize(
    ("identifier", "data"),
    [
        (b"]C1", b"0109521234543213\x1d10A7"),  # a separator within an element string
        (b"]C0", b"ROM-26329"),
        (b"]d2", b"01" * 80),  # goes on over three reports
        (b"]C0", b"7" * ROOM),  # fills one to its last byte
    ],
)
def test_a_scan_comes_out_whole_with_its_identifier(identifier: bytes, data: bytes) -> None:
    (found,) = scans(reports(identifier, data))
    assert isinstance(found, Scan)
    assert found.symbols == (Symbol(identifier.decode(), data.decode()),)


def test_a_scanner_without_identifier_and_count_gives_its_data() -> None:
    (found,) = scans([b"LOT-1\0\0\0"], NO_COUNT)
    assert isinstance(found, Scan)
    assert found.symbols == (Symbol("", "LOT-1"),)
    (found,) = scans(reports(b"\0\0\0", b"LOT-1"))
    assert isinstance(found, Scan)
    assert found.symbols == (Symbol("", "LOT-1"),)


def test_reports_of_other_kinds_and_two_scans_in_a_row() -> None:
    two = [*reports(b"]C0", b"A" * 70), bytes((5, 1, 2)), b"", *reports(b"]C0", b"B1")]
    assert [one.symbols[0].data for one in scans(two) if isinstance(one, Scan)] == ["A" * 70, "B1"]


@pytest.mark.parametrize("data", [b"AB\rCD", b"AB\nCD", b"A\0B", b"A\x03B"])
def test_a_code_with_a_control_character_is_refused_whole(data: bytes) -> None:
    (found,) = scans(reports(b"]C0", data))
    assert isinstance(found, Refused)


def test_a_device_that_tells_of_no_data_is_refused() -> None:
    with pytest.raises(ValueError, match="no decoded data"):
        ScannerReports(bytes.fromhex("05 8d 09 01 a1 01 75 08 95 06 09 40 81 02 c0"))


@given(st.lists(st.binary(max_size=64), max_size=20))
def test_any_reports_give_scans_or_refusals_and_nothing_else(sent: list[bytes]) -> None:
    for found in scans(sent):
        assert isinstance(found, Scan | Refused)
