"""Digital Links against GS1's own examples and biip."""

import biip
import pytest
from hypothesis import given
from hypothesis import strategies as st

from labels.digital_link import digital_link, read_digital_link
from labels.errors import LabelError
from labels.gs1 import Element, readable
from labels.gs1_components import CSET_82

STEM = "https://id.gs1.org"
ITEM = Element("01", "09520123456788")
CODES = st.text(st.sampled_from(sorted(CSET_82)), min_size=1, max_size=20)

# Unit tests of the GS1 Barcode Syntax Engine.
PUBLISHED = [
    ("https://id.gs1.org/01/09520123456788/10/ABC123", "(01)09520123456788(10)ABC123"),
    (
        "https://id.gs1.org/01/09520123456788/10/ABC1/21/12345?17=180426",
        "(01)09520123456788(10)ABC1(21)12345(17)180426",
    ),
    ("https://id.gs1.org/01/09520123456788?3103=000195", "(01)09520123456788(3103)000195"),
    (
        "https://example.com/01/09520123456788?3103=000195&3922=0299&17=201225",
        "(01)09520123456788(3103)000195(3922)0299(17)201225",
    ),
    (
        "https://id.gs1.org/00/952012345678912345?02=09520123456788&37=25&10=ABC123",
        "(00)952012345678912345(02)09520123456788(37)25(10)ABC123",
    ),
]


@pytest.mark.parametrize(("address", "words"), PUBLISHED)
def test_published_links_both_ways(address: str, words: str) -> None:
    row = read_digital_link(address)
    assert readable(row) == words
    stem = address.partition("/0")[0]
    assert digital_link(stem, row) == address


@given(CODES, CODES)
def test_any_lot_and_serial_come_back_and_biip_reads_them_alike(lot: str, serial: str) -> None:
    row = (ITEM, Element("10", lot), Element("21", serial), Element("17", "261129"))
    address = digital_link(STEM, row)
    assert set(address) <= set(
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-._~:/?=&%"
    )
    assert read_digital_link(address) == row
    link = biip.parse(address).gs1_digital_link_uri
    assert link is not None
    assert {(one.ai.ai, one.value) for one in link.element_strings} == {
        (one.ai, one.value) for one in row
    }


def test_the_order_given_does_not_matter_for_the_path() -> None:
    row = (Element("17", "261129"), Element("21", "S"), Element("10", "L"), ITEM)
    assert digital_link(STEM, row) == f"{STEM}/01/{ITEM.value}/10/L/21/S?17=261129"


@pytest.mark.parametrize(
    ("stem", "row"),
    [
        ("id.gs1.org", (ITEM,)),
        ("https://id.gs1.org/", (ITEM,)),
        ("https://id.gs1.org?x=1", (ITEM,)),
        ("https://id gs1.org", (ITEM,)),
        (STEM, (Element("90", "A"),)),
        (STEM, (Element("00", "095212340000000013"), Element("21", "A"), ITEM)),
        (STEM, (ITEM, Element("254", "A"))),
    ],
)
def test_what_makes_no_link(stem: str, row: tuple[Element, ...]) -> None:
    with pytest.raises(LabelError):
        digital_link(stem, row)


@pytest.mark.parametrize(
    "address",
    [
        "https://id.gs1.org/01/09520123456788/21/S/10/L",  # order
        "https://id.gs1.org/01/09520123456788?10=ABC",  # a qualifier of 01 as attribute
        "https://id.gs1.org/01/9520123456788",  # thirteen digits
        "https://id.gs1.org/01/09520123456789",  # check digit
        "https://id.gs1.org/01/09520123456788/99/x",
        "https://id.gs1.org/",
        "09520123456788",
        "",
    ],
)
def test_what_is_no_link(address: str) -> None:
    with pytest.raises(LabelError):
        read_digital_link(address)


def test_a_path_before_the_key_and_names_of_others_are_passed_over() -> None:
    address = "https://shop.example.org/some/path/01/09520123456788?colour=green&17=261129#top"
    assert read_digital_link(address) == (ITEM, Element("17", "261129"))
