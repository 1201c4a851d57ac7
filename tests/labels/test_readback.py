"""Labels are read back by a library that did not draw them."""

import dataclasses
import random

import pytest

from labels.errors import LabelError
from labels.gs1 import CSET_82, Element
from labels.readback import Found, read_back
from labels.symbol import gs1_128


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
