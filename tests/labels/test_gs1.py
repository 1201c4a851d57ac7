"""GS1 element strings against the General Specifications and biip."""

import datetime

import biip
import pytest
from hypothesis import given
from hypothesis import strategies as st

from labels.errors import LabelError
from labels.gs1 import (
    SEPARATOR,
    Element,
    check_pairs,
    element_string,
    read_elements,
    readable,
)
from labels.gs1_components import CSET_82
from labels.gs1_dates import date_value

CODES = st.text(st.sampled_from(sorted(CSET_82)), min_size=1, max_size=20)
DAYS = st.dates(datetime.date(2000, 1, 1), datetime.date(2075, 12, 31))


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
        ("8004", "X"),
        ("05", "X"),
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
