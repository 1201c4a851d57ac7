"""Check digits against the General Specifications, python-stdnum and biip."""

import pytest
from biip.checksums import gs1_price_weight_check_digit
from hypothesis import given
from hypothesis import strategies as st
from stdnum import ean

from labels.errors import LabelError
from labels.gs1_digits import check_digit, gtin_14, has_valid_check_digit, measure_verifier, sscc


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
    ("digits", "verifier"),
    [("2875", "9"), ("14685", "6")],  # GenSpecs 7.9.3 and 7.9.4, worked examples
)
def test_published_verifiers_of_price_and_weight(digits: str, verifier: str) -> None:
    assert measure_verifier(digits) == verifier


@pytest.mark.parametrize("size", [4, 5])
def test_every_verifier_equals_biip(size: int) -> None:
    for number in range(0, 10**size, 1 if size == 4 else 7):
        digits = f"{number:0{size}d}"
        assert measure_verifier(digits) == str(gs1_price_weight_check_digit(digits))


@pytest.mark.parametrize("digits", ["", "123", "123456", "12a4"])
def test_a_verifier_is_for_four_or_five_digits(digits: str) -> None:
    with pytest.raises(LabelError):
        measure_verifier(digits)


def test_an_sscc_fills_seventeen_digits_and_its_check_digit() -> None:
    assert sscc(0, "9521234", 1) == "095212340000000013"
    assert sscc(3, "952123456789", 1234) == "39521234567891234" + check_digit("39521234567891234")


@pytest.mark.parametrize(
    ("extension", "prefix", "serial", "title"),
    [
        (10, "9521234", 1, "SSCC extension digit"),
        (0, "95A1234", 1, "Company prefix"),
        (0, "952", 1, "Company prefix"),
        (0, "9521234", 10**9, "SSCC serial"),
        (0, "9521234", -1, "SSCC serial"),
    ],
)
def test_a_part_of_an_sscc_out_of_range_is_named(
    extension: int, prefix: str, serial: int, title: str
) -> None:
    with pytest.raises(LabelError) as caught:
        sscc(extension, prefix, serial)
    assert caught.value.title == title
