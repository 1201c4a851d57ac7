"""The table of application identifiers against biip's, which GS1's own list was read into."""

import re

import pytest
from biip.gs1_application_identifiers import GS1ApplicationIdentifier

from labels.errors import LabelError
from labels.gs1 import Element, check_pairs
from labels.gs1_components import CHECKS, COUNTRIES, components, lengths
from labels.gs1_table import IDENTIFIERS, LINK_KEYS, NOT_PRINTED

ITEM = Element("01", "09521234543213")


@pytest.mark.parametrize("ai", sorted(IDENTIFIERS))
def test_lengths_characters_and_separators_are_those_of_biip(ai: str) -> None:
    other = GS1ApplicationIdentifier.extract(ai)
    ours = IDENTIFIERS[ai]
    assert other.ai == ai
    assert other.separator_required is not ours.predefined
    allowed = {length for span in lengths(ours.parts) for length in span}
    sample = "1" if all(part.numeric for part in ours.parts) else "A"
    prefix = "".join("1" * part.longest for part in ours.parts[:-1] if part.numeric)
    for length in range(1, 96):
        value = (prefix + sample * 96)[:length] if sample == "A" else "1" * length
        if ai == "423" and length > 3:
            continue  # biip lets a part of a country stand; the dictionary does not
        matched = re.fullmatch(other.pattern, ai + value) is not None
        assert matched == (length in allowed), (ai, length, other.pattern)


def test_no_identifier_is_both_printed_and_refused() -> None:
    assert not set(IDENTIFIERS) & set(NOT_PRINTED)


def test_every_identifier_is_found_by_its_first_characters() -> None:
    for ai in IDENTIFIERS:
        assert not any(other != ai and other.startswith(ai) for other in IDENTIFIERS)
    for key, qualifiers in LINK_KEYS.items():
        assert {key, *qualifiers} <= set(IDENTIFIERS)


def test_a_known_identifier_of_no_use_here_is_refused_by_name() -> None:
    with pytest.raises(LabelError, match="GIAI"):
        Element("8004", "X")
    with pytest.raises(LabelError, match="no such identifier"):
        Element("05", "X")


# GS1 Barcode Syntax Dictionary, formats and reference linters.
@pytest.mark.parametrize(
    ("ai", "value"),
    [
        ("00", "095212340000000013"),
        ("11", "261200"),
        ("30", "12345678"),
        ("3103", "000195"),
        ("422", "528"),
        ("423", "528056276"),
        ("7003", "2611291200"),
        ("7007", "261124"),
        ("7007", "261120261124"),
        ("7030", "999AB-1"),
        ("8008", "26112423"),
        ("8008", "261124235959"),
        ("99", "any thing".replace(" ", "_")),
    ],
)
def test_values_that_are_allowed(ai: str, value: str) -> None:
    assert Element(ai, value).value == value


@pytest.mark.parametrize(
    ("ai", "value", "said"),
    [
        ("00", "095212340000000014", "check digit is 3"),
        ("414", "9521234543210", "check digit is 3"),
        ("3103", "00195", "allowed: 6"),
        ("30", "123456789", "allowed: 1 to 8"),
        ("422", "999", "no numeric country code"),
        ("423", "5280", "allowed: 3 or 6 or 9"),
        ("423", "528001", "no numeric country code"),
        ("7003", "2611001200", "day 00"),
        ("7003", "2611292460", "is not below 24"),
        ("7007", "26112", "allowed: 6 or 12"),
        ("7007", "261124261131", "is no day"),
        ("7030", "999", "allowed: 4 to 30"),
        ("7030", "000A", "no numeric country code"),
        ("8008", "2611242360", "60 is not below 60"),
        ("10", "A B", "' ' (U+0020) at place 2"),
        ("10", "A#B", "'#' (U+0023) at place 2"),
        ("17", "260230", "is no day"),
    ],
)
def test_values_that_are_not(ai: str, value: str, said: str) -> None:
    with pytest.raises(LabelError) as caught:
        Element(ai, value)
    assert said in caught.value.detail
    assert f"({ai})" in caught.value.title


@pytest.mark.parametrize(
    ("row", "said"),
    [
        # GS1 Barcode Syntax Dictionary, attributes req and ex.
        ((Element("37", "12"),), "(00) and (02)"),
        ((ITEM, Element("3103", "000195"), Element("3102", "000195")), "must not stand with"),
        ((ITEM, Element("3922", "0299")), "(01) and (30)"),
        ((Element("3302", "001950"),), "(00) or (01)"),
        ((ITEM, Element("422", "528"), Element("426", "528")), "must not stand with (426)"),
        ((ITEM, Element("427", "NB")), "(01) and (422)"),
        ((Element("254", "A"),), "(414)"),
        ((ITEM, Element("10", "A"), Element("10", "B")), "stands for 'A' and for 'B'"),
        ((Element("01", "99521234543216"),), "variable measure"),  # GenSpecs 4.13
    ],
)
def test_pairs_that_are_not_allowed(row: tuple[Element, ...], said: str) -> None:
    with pytest.raises(LabelError) as caught:
        check_pairs(row)
    assert said in caught.value.detail


@pytest.mark.parametrize(
    "row",
    [
        (ITEM, Element("3103", "000195"), Element("3922", "0299"), Element("10", "A")),
        (Element("00", "095212340000000013"), Element("02", ITEM.value), Element("37", "8")),
        (Element("01", "99521234543216"), Element("3103", "001250")),
        (
            *(ITEM, Element("30", "12"), Element("7007", "261120")),
            *(Element("427", "NB"), Element("422", "528")),
        ),
        (ITEM, ITEM),
    ],
)
def test_pairs_that_are_allowed(row: tuple[Element, ...]) -> None:
    check_pairs(row)


def test_country_codes_are_numeric_and_as_many_as_the_standard_lists() -> None:
    """ISO 3166-1 lists 249 countries; withdrawn codes are not among them."""
    assert all(len(code) == 3 and code.isdigit() for code in COUNTRIES)
    assert {"056", "124", "276", "372", "528", "826", "840"} <= COUNTRIES
    assert not {"200", "278", "280", "530", "736", "810", "891"} & COUNTRIES
    assert len(COUNTRIES) == 249


@pytest.mark.parametrize("notation", ["Q5", "N", "N5,iban", "[N3"])
def test_a_format_that_is_none_is_found_out(notation: str) -> None:
    with pytest.raises(ValueError, match="is no component"):
        components(notation)


def test_every_check_passes_something_and_fails_something() -> None:
    for name, samples in {
        "csum": ("9521234543213", "9521234543214"),
        "yymmdd": ("261129", "261100"),
        "yymmd0": ("261100", "261300"),
        "hhmi": ("2359", "2360"),
        "hh": ("23", "24"),
        "mi": ("59", "60"),
        "ss": ("59", "60"),
        "iso3166": ("528", "529"),
        "iso3166999": ("999", "529"),
    }.items():
        good, bad = samples
        assert CHECKS[name](good) == ""
        assert CHECKS[name](bad) != ""
