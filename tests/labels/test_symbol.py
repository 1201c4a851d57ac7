"""GS1-128 symbols, read by zxing-cpp from their bare modules."""

import random

import numpy as np
import pytest
import zxingcpp

from labels.errors import LabelError
from labels.gs1 import Element
from labels.gs1_components import CSET_82
from labels.symbol import Symbol, gs1_128

MODULE = 3  # pixels


def read(symbol: Symbol) -> tuple[str, bytes]:
    """Read one symbol from a picture of its modules and quiet zones alone."""
    row = np.array([int(module) for module in "0" * 10 + symbol.modules + "0" * 10], np.uint8)
    picture = np.tile(np.repeat(255 - 255 * row, MODULE), (40, 1))
    (code,) = zxingcpp.read_barcodes(picture)
    return code.symbology_identifier, bytes(code.bytes)


def assert_reads(symbol: Symbol) -> None:
    assert read(symbol) == (symbol.identifier, symbol.expected_bytes)


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
