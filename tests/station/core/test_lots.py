"""Input lots: what code a label and a bar code can carry, and dates that contradict themselves."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.lots import InputLot, LotError, checked_lot_code

DAY = date(2026, 11, 25)

CONTROL = [f"ROM{chr(number)}1" for number in range(0x20)] + ["ROM\x7f1", "ROM\x851", "ROM-1\n"]
LETTERS = ["SEÑ-1", "ROM-ß", "ÅS-1", "ROM-1é", "РОМ-1", "ROM-１", "ROM-٣", "ROM-Ⅷ", "İST-1"]
MARKUP = ["<B>1</B>", "ROM&AMP;1", "ROM'1", 'ROM"1', "ROM;1", "ROM--1' OR 1", "ROM`1", "${A}", "%N"]
FORMULA = ["=1+1", "+1", "@SUM", "-A1+B1", "=CMD|' /C'!A0", "ROM\t=1"]
BAR_CODE = ["ROM\x1d10X", "(10)ABC", "]C1ROM", "ROM^1", "^XA", "~DG", "FNC1<GS>", "ROM_1", "ROM*1"]
BIDI = ["ROM\u202e1", "\u200fROM", "ROM\u20661", "ROM\u200b1", "\ufeffROM", "ROM\u00ad1"]
OTHER = [
    "", " ", "ROM 1", " ROM", "ROM ", "ROM\u00a01", "rom-1", "Rom-1", "ROM-1\U0001f96c",
    "A" * 21, "A" * 1000, "ROM\\1", "..\\X", "ROM:1", "ROM|1", "ROM,1", "ROM?1", "ROM#1", "\ud800",
]  # fmt: skip
REFUSED = [*CONTROL, *LETTERS, *MARKUP, *FORMULA, *BAR_CODE, *BIDI, *OTHER]


def test_enough_is_tried():
    assert len(set(REFUSED)) == len(REFUSED) >= 90


@pytest.mark.parametrize("text", REFUSED, ids=ascii)
def test_a_code_that_cannot_be_printed_is_refused_with_what_is_allowed(text):
    with pytest.raises(LotError, match="cannot be printed: allowed are 1 to 20 of"):
        checked_lot_code(text)
    with pytest.raises(LotError, match="cannot be printed"):
        InputLot(text, "ROM", "Aldermoor Growers", DAY)


@pytest.mark.parametrize("text", ["A", "0", "ROM-1", "26/329.A", "A" * 20, "-", "./-"])
def test_a_plain_code_is_kept_as_it_is(text):
    assert checked_lot_code(text) is text
    assert InputLot(text, "ROM", "Aldermoor Growers", DAY).code == text


@given(st.text(max_size=24))
def test_nothing_but_the_allowed_characters_passes(text):
    allowed = set("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789./-")
    fits = 1 <= len(text) <= 20 and set(text) <= allowed
    try:
        checked_lot_code(text)
    except LotError:
        assert not fits
    else:
        assert fits


def test_a_lot_is_not_harvested_after_it_came():
    with pytest.raises(LotError, match=r"ROM-1: harvested 2026-11-26 after it was received"):
        InputLot("ROM-1", "ROM", "Aldermoor Growers", DAY, harvested=date(2026, 11, 26))
    same_day = InputLot("ROM-1", "ROM", "Aldermoor Growers", DAY, harvested=DAY)
    assert same_day.harvested == DAY
