"""GS1 element strings against the General Specifications, python-stdnum and biip."""

import datetime

import biip
import pytest
from hypothesis import given
from hypothesis import strategies as st
from stdnum import ean

from labels.errors import LabelError
from labels.gs1 import (
    CSET_82,
    SEPARATOR,
    Element,
    check_digit,
    check_pairs,
    date_value,
    element_string,
    gtin_14,
    has_valid_check_digit,
    read_date,
    read_elements,
    readable,
)

TODAY = datetime.date(2026, 11, 24)
CODES = st.text(st.sampled_from(sorted(CSET_82)), min_size=1, max_size=20)
DAYS = st.dates(datetime.date(2000, 1, 1), datetime.date(2075, 12, 31))


@pytest.mark.parametrize(
    ("payload", "digit"),
    [
        ("37610425002123456", "9"),  # GS1 General Specifications 7.9.1, worked example
        ("629104150021", "3"),  # GS1's check digit page, worked example
        ("1234567890123", "1"),  # unit tests of the GS1 Barcode Syntax Engine, GTIN-14
        ("12345678901234567", "5"),  # the same, SSCC
    ],
)
def test_published_check_digits(payload: str, digit: str) -> None:
    assert check_digit(payload) == digit
    assert has_valid_check_digit(payload + digit)
    wrong = str((int(digit) + 1) % 10)
    assert not has_valid_check_digit(payload + wrong)


@given(st.text("0123456789", min_size=12, max_size=13))
def test_check_digit_equals_python_stdnum(payload: str) -> None:
    assert check_digit(payload) == ean.calc_check_digit(payload)


@pytest.mark.parametrize("payload", ["", "12a", "١٢٣", "1 2"])
def test_check_digit_refuses_anything_but_digits(payload: str) -> None:
    with pytest.raises(LabelError):
        check_digit(payload)


@pytest.mark.parametrize(
    ("value", "day"),
    [
        ("130200", datetime.date(2013, 2, 28)),  # GenSpecs 3.4: day 00 is the last of the month
        ("160200", datetime.date(2016, 2, 29)),  # GenSpecs 3.4: leap years included
        ("261200", datetime.date(2026, 12, 31)),
        ("200229", datetime.date(2020, 2, 29)),
        # GenSpecs 7.12: 49 years back to 50 years ahead of 2026
        ("760101", datetime.date(2076, 1, 1)),
        ("770101", datetime.date(1977, 1, 1)),
    ],
)
def test_published_dates(value: str, day: datetime.date) -> None:
    assert read_date(value, TODAY) == day


@pytest.mark.parametrize("value", ["200230", "201310", "200001", "20012", "2001011", "2O0101"])
def test_no_such_day(value: str) -> None:
    with pytest.raises(LabelError):
        read_date(value, TODAY)


@given(DAYS)
def test_dates_come_back_and_biip_reads_them_alike(day: datetime.date) -> None:
    assert read_date(date_value(day), TODAY) == day
    message = biip.parse("]C1" + "010952123454321317" + date_value(day)).gs1_message
    assert message is not None
    (element,) = (one for one in message.element_strings if one.ai.ai == "17")
    assert element.date is not None
    assert (element.date.month, element.date.day) == (day.month, day.day)


@given(CODES, CODES, DAYS)
def test_element_strings_come_back_and_biip_reads_them_alike(
    lot: str, serial: str, day: datetime.date
) -> None:
    row = (
        Element("01", "09521234543213"),
        Element("17", date_value(day)),
        Element("10", lot),
        Element("21", serial),
    )
    text = f"010952123454321317{date_value(day)}10{lot}{SEPARATOR}21{serial}"
    if len(text) > 48:
        with pytest.raises(LabelError, match="48"):
            element_string(row)
        return
    assert element_string(row) == text
    assert read_elements(text) == row
    message = biip.parse("]C1" + text).gs1_message
    assert message is not None
    assert [(one.ai.ai, one.value) for one in message.element_strings] == [
        (one.ai, one.value) for one in row
    ]
    assert readable(row).startswith("(01)09521234543213(17)")


def test_no_separator_after_a_predefined_length_nor_at_the_end() -> None:
    row = (Element("17", "261129"), Element("10", "A"))
    assert element_string(row) == "17261129" + "10A"
    assert read_elements("17261129" + SEPARATOR + "10A") == row  # tolerated when read


def test_a_lost_separator_does_not_pass_as_a_longer_lot() -> None:
    with pytest.raises(LabelError):
        read_elements("10B261124-2" + "21A1-00012345")  # 22 characters in one lot


@pytest.mark.parametrize("size", [13, 14])
def test_gtin_is_filled_to_fourteen(size: int) -> None:
    assert gtin_14("09521234543213"[-size:]) == "09521234543213"


@pytest.mark.parametrize(
    ("gtin", "said"),
    [
        ("9521234543214", "its check digit is 3"),
        ("952123454321", "its check digit is"),
        ("95212345432", "11 characters"),
        ("952123454321O", "'O' (U+004F) at place 13"),
        ("", "0 characters"),
    ],
)
def test_bad_gtin_is_named(gtin: str, said: str) -> None:
    with pytest.raises(LabelError) as caught:
        gtin_14(gtin)
    assert said in caught.value.detail


@pytest.mark.parametrize(
    ("ai", "value"),
    [
        ("10", ""),
        ("10", "A" * 21),
        ("10", "A B"),
        ("10", "A#B"),  # '#' is outside character set 82
        ("10", "Añ"),  # encoded as FNC1 by the bar code writer
        ("10", "A\x1d21B"),
        ("21", "Ａ"),
        ("01", "9521234543213"),
        ("17", "260230"),
        ("99", "X"),
    ],
)
def test_bad_elements_are_refused(ai: str, value: str) -> None:
    with pytest.raises(LabelError):
        Element(ai, value)


def test_an_identifier_twice_or_none_is_refused() -> None:
    with pytest.raises(LabelError):
        element_string((Element("10", "A"), Element("10", "B")))
    with pytest.raises(LabelError):
        element_string(())


def test_pairs_that_must_and_must_not_stand_together() -> None:
    gtin, lot = Element("01", "09521234543213"), Element("10", "A")
    check_pairs((gtin, lot))
    with pytest.raises(LabelError, match="must stand with"):
        check_pairs((lot,))
    with pytest.raises(LabelError, match="must not stand with"):  # GenSpecs 4.13: (01) with (37)
        check_pairs((gtin, Element("02", "09521234543213"), Element("37", "12")))
