"""Case labels: the element strings of GS1 General Specifications, read together or refused."""

from datetime import date
from decimal import Decimal

import pytest

from labels.case_code import read_case
from labels.errors import LabelError

TODAY = date(2026, 11, 25)
GTIN = "0109521234543213"
FS = "\x1d"


def test_two_stacked_symbols_are_one_case():
    upper = ("]C1", f"{GTIN}3102041250")
    lower = ("]C1", "13261124" + "10TR26-118")
    case = read_case((upper, lower), TODAY)
    assert (case.gtin, case.lot) == ("09521234543213", "TR26-118")
    assert case.packed == date(2026, 11, 24)
    assert (str(case.kilograms), case.pounds) == ("412.50", None)
    assert read_case((lower, upper), TODAY).lot == case.lot


def test_a_matrix_alone_may_say_everything():
    data = f"{FS}{GTIN}1126112217261202" + f"10A1{FS}" + "3201012345"
    case = read_case((("]d2", data),), TODAY)
    assert (case.produced, case.last_day) == (date(2026, 11, 22), date(2026, 12, 2))
    assert case.pounds == Decimal("1234.5")


def test_the_same_symbol_twice_says_it_once():
    symbol = ("]C1", GTIN + "10A1")
    assert len(read_case((symbol, symbol), TODAY).elements) == 2


def test_use_by_is_taken_before_best_before_and_day_00_ends_the_month():
    case = read_case((("", f"{GTIN}1526120017261130"),), TODAY)
    assert case.last_day == date(2026, 11, 30)
    assert read_case((("", f"{GTIN}15261200"),), TODAY).last_day == date(2026, 12, 31)


@pytest.mark.parametrize(
    ("symbols", "words"),
    [
        ([("]C1", GTIN + "10A1"), ("]C1", "10A2")], "stands for 'A1' and for 'A2' on one item"),
        ([("]E0", "9521234543213")], "no GS1 symbol"),
        ([("]C1", "HELLO")], "no known application identifier"),
        ([("]C1", "0109521234543214")], "check digit"),
        ([("", "")], "no data"),
        ([], "no data"),
    ],
)
def test_what_is_no_case_or_two_cases_is_refused_in_words(symbols, words):
    with pytest.raises(LabelError, match=words):
        read_case(symbols, TODAY)


def test_one_symbol_of_two_is_read_alone_when_its_partner_may_still_come():
    lower = (("]C1", "10TR26-118"),)
    with pytest.raises(LabelError, match="must stand with"):
        read_case(lower, TODAY)
    assert read_case(lower, TODAY, whole=False).lot == "TR26-118"
