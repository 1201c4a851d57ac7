"""GS1 DataMatrix and QR Code, read by zxing-cpp; traps of the writers."""

import pytest
import segno

from labels.errors import LabelError
from labels.gs1 import Element
from labels.matrix import digital_link_qr, gs1_data_matrix
from tests.labels.pictures import assert_reads

ITEM = Element("01", "09521234543213")


@pytest.mark.parametrize("pair", [f"{number:02d}" for number in range(100)])
def test_every_leading_digit_pair(pair: str) -> None:
    assert_reads(gs1_data_matrix([Element("10", pair + "1"), Element("21", pair)]))


@pytest.mark.parametrize("length", range(1, 91, 8))
def test_always_square(length: int) -> None:
    """Left alone, the writer makes 29 characters 16 x 36 and 78 of them 8 x 144."""
    symbol = gs1_data_matrix([ITEM, Element("91", "A" * length)])
    assert len(symbol.rows) == len(symbol.rows[0])
    assert_reads(symbol)


def test_finder_and_timing_of_ecc_200() -> None:
    """ISO/IEC 16022: solid left and lower edge, alternating upper and right edge."""
    rows = gs1_data_matrix([ITEM]).rows
    size = len(rows)
    assert all(row[0] == "1" for row in rows)
    assert rows[-1] == "1" * size
    assert rows[0] == "10" * (size // 2)
    assert "".join(row[-1] for row in rows) == "01" * (size // 2)


@pytest.mark.parametrize("lot", ["A(21)B", "(", ")", "(10", "%&'\"", "<>_?"])
def test_a_lot_that_looks_like_brackets_stays_a_lot(lot: str) -> None:
    symbol = gs1_data_matrix([ITEM, Element("10", lot), Element("21", "S")])
    assert symbol.expected_bytes == f"010952123454321310{lot}\x1d21S".encode()
    assert_reads(symbol)


def test_more_than_48_characters_fit_a_matrix() -> None:
    row = [ITEM, Element("10", "A" * 20), Element("21", "B" * 20)]
    assert_reads(gs1_data_matrix(row))


def test_a_digital_link_is_plain_qr_never_fnc1() -> None:
    symbol = digital_link_qr("https://id.gs1.org", [ITEM, Element("10", "A/B")])
    assert symbol.identifier == "]Q1"
    assert_reads(symbol)
    code = segno.make_qr(symbol.hri, error="m", boost_error=False)
    assert (code.error, code.version) == ("M", (len(symbol.rows) - 17) // 4)


def test_no_element_and_one_twice_are_refused() -> None:
    with pytest.raises(LabelError):
        gs1_data_matrix([])
    with pytest.raises(LabelError, match="stands twice"):
        gs1_data_matrix([ITEM, ITEM])
