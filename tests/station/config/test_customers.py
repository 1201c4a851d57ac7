"""customers.toml: who gets what, refused in words where it cannot be."""

import pytest
from stdnum import ean

from station.config.load import load
from tests.station.config.conftest import TODAY

FILE = "customers.toml"


def test_the_demo_packhouse_cases_every_product_for_three_customers(folder):
    house = load(folder, TODAY)
    assert house.shipping.cases.keys() == house.products.keys()
    assert house.shipping.cases["SLAW-340"].bags == 10
    assert len(house.shipping.customers) == 3
    assert house.shipping.printer.folder == house.settings.home / "case-labels"


def test_the_numbers_of_the_demo_are_demo_numbers_with_their_check_digit(folder):
    """GS1 prefix 952 is set aside for examples; oracle: python-stdnum."""
    shipping = load(folder, TODAY).shipping
    numbers = [one.gtin for one in shipping.cases.values() if one.gtin]
    numbers += [one.gln for one in shipping.customers.values() if one.gln]
    assert all(ean.is_valid(number) for number in numbers)
    assert all("952" in number[:4] for number in numbers)


def test_without_the_file_the_station_fills_no_cases(folder):
    (folder / FILE).unlink()
    assert load(folder, TODAY).shipping is None


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ('"9524007"', '"12"', "4 to 8 digits in quotes"),
        ('"9524007"', '"952400700"', "leaves too few digits"),
        ("extension_digit = 1", "extension_digit = 11", "a whole number from 0 to 9"),
        ("bags = 12", "bags = 0", "from 1 to 500"),
        ('code = "SLAW-340"', 'code = "SLAW-34"', "did you mean"),
        ("19524007102003", "19524007102004", "its check digit is 3"),
        ("9524007000012", "95240070000", "13 digits"),
        ('code = "LANTERN"', 'code = "MARSHGATE"', "stands already in customer[1]"),
        ('kind = "folder"', 'kind = "ipp"', "printer.url"),
        ("[sscc]", "[ssc]", "sscc"),
    ],
)
def test_a_fault_is_named_with_what_is_allowed(spoil, refusal, old, new, words):
    spoil(FILE, old, new)
    said = refusal()
    assert FILE in said
    assert words in said
