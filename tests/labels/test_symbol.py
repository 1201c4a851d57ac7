"""GS1-128, EAN-13 and UPC-A symbols, read by zxing-cpp from their bare modules."""

import random

import pytest

from labels.errors import LabelError
from labels.gs1 import Element
from labels.gs1_components import CSET_82
from labels.linear import ean_13, gs1_128, retail, upc_a
from tests.labels.pictures import assert_reads


@pytest.mark.parametrize("pair", [f"{number:02d}" for number in range(100)])
def test_every_leading_digit_pair(pair: str) -> None:
    """A writer of Code 128 was seen to lose a leading 99; as lot and as pair after FNC1."""
    for lot in (pair, pair + "12", pair * 3, pair + "A"):
        assert_reads(gs1_128([Element("10", lot)]))
    assert_reads(gs1_128([Element("10", "X"), Element("21", pair + pair)]))


def test_three_hundred_random_lots_and_serials() -> None:
    chance = random.Random(20261129)
    signs = sorted(CSET_82)
    for _ in range(300):
        lot, serial = (
            "".join(chance.choices(signs, k=chance.randint(1, 20))) for _ in ("lot", "serial")
        )
        assert_reads(gs1_128([Element("10", lot), Element("21", serial)]))


def test_module_counts_of_code_128() -> None:
    """ISO/IEC 15417: 11 modules each for start, data and check, 13 for stop.

    (01) and (17) are FNC1 and 12 digit pairs in code set C.
    """
    symbol = gs1_128([Element("01", "09521234543213"), Element("17", "261129")])
    assert len(symbol.modules) == 11 * (1 + 1 + 12 + 1) + 13
    assert symbol.width_with_quiet_zones == 198
    assert symbol.modules.startswith("11010011100" + "11110101110")  # start C, FNC1
    assert symbol.modules.endswith("1100011101011")


def test_bars_are_the_modules() -> None:
    symbol = gs1_128([Element("10", "B261124-2")])
    again = ["0"] * len(symbol.modules)
    for start, width in symbol.bars:
        again[start : start + width] = "1" * width
    assert "".join(again) == symbol.modules
    assert symbol.bars[-1][0] + symbol.bars[-1][1] == len(symbol.modules)


def test_the_same_elements_give_the_same_symbol() -> None:
    row = [Element("10", "AB12CD"), Element("21", "1234567")]
    assert gs1_128(row) == gs1_128(row)


def test_no_elements_no_symbol() -> None:
    with pytest.raises(LabelError):
        gs1_128([])


def test_ean_13_has_95_modules_and_reads_with_its_guards() -> None:
    """ISO/IEC 15420: 3 + 42 + 5 + 42 + 3 modules, normal guards 101, centre guard 01010."""
    symbol = ean_13("9521234543213")
    assert len(symbol.modules) == 95
    assert symbol.modules[:3] == symbol.modules[-3:] == "101"
    assert symbol.modules[45:50] == "01010"
    starts = [start for place, (start, _) in enumerate(symbol.bars) if place in symbol.guards]
    assert starts == [0, 2, 46, 48, 92, 94]
    assert symbol.hri == "9 521234 543213"
    assert_reads(symbol)


def test_upc_a_is_transmitted_as_thirteen_digits() -> None:
    symbol = upc_a("012345678905")
    assert symbol.expected_bytes == b"0012345678905"
    assert symbol.hri == "0 12345 67890 5"
    assert_reads(symbol)


def test_a_gtin_at_the_till_gets_the_symbol_of_its_length() -> None:
    assert retail("012345678905") == retail("00012345678905") == upc_a("012345678905")
    assert retail("9521234543213") == retail("09521234543213") == ean_13("9521234543213")
    with pytest.raises(LabelError, match="indicator 1"):
        retail("19521234543210")


@pytest.mark.parametrize("digits", ["", "952123454321", "9521234543214", "952123454321X"])
def test_bad_digits_make_no_ean(digits: str) -> None:
    with pytest.raises(LabelError):
        ean_13(digits)
    with pytest.raises(LabelError):
        upc_a(digits[:11])
