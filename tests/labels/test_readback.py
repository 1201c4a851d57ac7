"""Labels are read back by a library that did not draw them."""

import dataclasses
import random

import numpy as np
import pytest

from labels.design import PACK_100_BY_60
from labels.errors import LabelError
from labels.gs1 import Element
from labels.gs1_components import CSET_82
from labels.linear import gs1_128
from labels.pdf import PRINT_HEADS, LabelDrawer
from labels.raster import rasterise
from labels.readback import Found, read_back


def test_a_good_label_reads_equal(make_label, drawer) -> None:
    label = make_label()
    outcome = read_back(drawer.draw(label), drawer.symbols(label))
    assert outcome.ok
    assert outcome.why == ""
    assert set(outcome.found) == {
        Found("]C1", b"010952123454321317261129"),
        Found("]C1", b"10B261124-2\x1d21A1-000123"),
    }


def test_random_lots_and_serials_on_whole_labels(make_label, drawer) -> None:
    chance = random.Random(952)
    signs = sorted(CSET_82)
    for number in range(40):
        lot, serial = (
            "".join(chance.choices(signs, k=chance.randint(1, 20))) for _ in ("lot", "serial")
        )
        label = make_label(
            blend_lot=lot, serial=serial, copy_mark=("", "R1", "SPECIMEN")[number % 3]
        )
        assert read_back(drawer.draw(label), drawer.symbols(label)).ok, (lot, serial)


@pytest.mark.parametrize("dots_per_mm", PRINT_HEADS)
def test_the_reader_sees_the_dots_of_the_head(make_label, dots_per_mm: int) -> None:
    """A page stretched by one dot would move bars: compare the bitmap with the modules."""
    drawer = LabelDrawer(PACK_100_BY_60, dots_per_mm)
    label = make_label()
    grey = rasterise(drawer.draw(label), dots_per_mm)
    assert grey.shape == (60 * dots_per_mm, 100 * dots_per_mm)
    for placed in drawer.plan(label).symbols:
        wanted = np.repeat([m == "1" for m in placed.symbol.modules], placed.module_dots)
        row = grey[placed.y_dots + 5, placed.x_dots : placed.x_dots + len(wanted)]
        assert ((row < 128) == wanted).all()


def test_another_lot_is_found_out(make_label, drawer) -> None:
    pdf = drawer.draw(make_label())
    expected = drawer.symbols(make_label(blend_lot="B261124-3"))
    outcome = read_back(pdf, expected)
    assert not outcome.ok
    assert "not read: ]C1 b'10B261124-3" in outcome.why
    assert "read instead: ]C1 b'10B261124-2" in outcome.why


def test_a_bar_code_too_many_or_too_few_is_found_out(make_label, drawer) -> None:
    label = make_label()
    pdf, symbols = drawer.draw(label), drawer.symbols(label)
    assert "read instead" in read_back(pdf, symbols[:1]).why
    assert "not read" in read_back(pdf, (*symbols, gs1_128([Element("10", "A")]))).why
    assert not read_back(pdf, ()).ok


def test_plain_code_128_is_not_taken_for_gs1_128(make_label, drawer) -> None:
    """Bytes alike, identifier not (ISO/IEC 15424)."""
    label = make_label()
    first, second = drawer.symbols(label)
    outcome = read_back(drawer.draw(label), (dataclasses.replace(first, identifier="]C0"), second))
    assert not outcome.ok
    assert "]C0" in outcome.why


def test_a_damaged_file_is_an_error() -> None:
    with pytest.raises(LabelError, match="cannot be opened"):
        read_back(b"%PDF-1.4 broken", (gs1_128([Element("10", "A")]),))
