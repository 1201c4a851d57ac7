"""What a label refuses to say, and how it says so."""

import datetime
from decimal import Decimal

import pytest

from labels.content import InputLot
from labels.errors import LabelError

TEXT_FIELDS = (
    *("product_name", "net_quantity_text", "use_by_words"),
    *("storage_text", "packer_text"),
)


@pytest.mark.parametrize("code", ["A", "ROM-26330/07", "0.1", "X" * 20])
def test_input_lot_codes_that_are_allowed(code: str) -> None:
    assert InputLot("Romaine", code).code == code


@pytest.mark.parametrize(
    ("code", "said"),
    [
        ("rom-1", "'r' (U+0072) at place 1"),
        ("ROM 1", "' ' (U+0020) at place 4"),
        ("ROMñ1", "'ñ' (U+00F1) at place 4"),
        ("ROM\x1d1", "an unprintable character (U+001D) at place 4"),
        ("ROM\n", "an unprintable character (U+000A) at place 4"),
        ("<img>", "'<' (U+003C) at place 1"),
        ("A<B", "'<' (U+003C) at place 2"),
        ("\u202eABC", "an unprintable character (U+202E) at place 1"),
        ("LOT🥬", "'🥬' (U+1F96C) at place 4"),
        ("١", "(U+0661) at place 1"),
        ("X" * 21, "it has 21 characters"),
        ("", "it has 0 characters"),
    ],
)
def test_bad_input_lot_code_says_what_where_and_what_is_allowed(code: str, said: str) -> None:
    with pytest.raises(LabelError) as caught:
        InputLot("Romaine", code)
    assert caught.value.title == "Lot code of Romaine"
    assert said in caught.value.detail
    assert "A-Z, 0-9" in caught.value.detail


@pytest.mark.parametrize(
    ("field", "value", "title"),
    [
        ("blend_lot", "B 1", "Blend lot"),
        ("blend_lot", "Bñ", "Blend lot"),
        ("blend_lot", "X" * 21, "Blend lot"),
        ("blend_lot", None, "Blend lot"),
        ("serial", "", "Serial"),
        ("serial", "A\x00", "Serial"),
        ("gtin", "9521234543210", "GTIN"),
        ("gtin", 9521234543213, "GTIN"),
        ("copy_mark", "R0", "Copy mark"),
        ("copy_mark", "copy", "Copy mark"),
        ("market", "Atlantis", "Market"),
        ("nominal_grams", 250.0, "Nominal quantity"),
        ("nominal_grams", Decimal(0), "Nominal quantity"),
        ("nominal_grams", Decimal("NaN"), "Nominal quantity"),
        ("net_quantity_text", "half a pound", "Net quantity"),
        ("use_by", datetime.date(2026, 11, 23), "Use-by date"),
        ("use_by", datetime.date(1999, 12, 31), "Use-by date"),
        ("use_by", datetime.datetime(2026, 11, 29, tzinfo=datetime.UTC), "Use-by date"),
        ("use_by", None, "Use-by date"),
        ("packed_on", "24 November", "Packing date"),
        ("input_lots", (), "Input lots"),
        ("ingredients", (), "Ingredients"),
        ("allergens", ("mustard",), "Allergens"),
    ],
)
def test_bad_field_is_named(make_label, field: str, value: object, title: str) -> None:
    with pytest.raises(LabelError) as caught:
        make_label(**{field: value})
    assert caught.value.title == title


@pytest.mark.parametrize("field", TEXT_FIELDS)
@pytest.mark.parametrize("text", ["", "  ", "a\tb", "a\nb", "a\u202eb", "a\ud800b", "9" * 300, 7])
def test_texts_that_are_not_one_printable_line(make_label, field: str, text: object) -> None:
    with pytest.raises(LabelError):
        make_label(**{field: text})


def test_message_of_a_long_or_wild_text_stays_short_and_plain(make_label) -> None:
    with pytest.raises(LabelError) as caught:
        make_label(product_name="\x1b[31m" + "x" * 10000)
    assert len(str(caught.value)) < 300
    assert str(caught.value).isprintable()


def test_texts_are_composed(make_label) -> None:
    assert make_label(product_name="Cafe\u0301 Mix").product_name == "Café Mix"


def test_pack_on_the_last_day_of_use_is_allowed(make_label) -> None:
    label = make_label(packed_on=datetime.date(2026, 11, 29))
    assert label.use_by == label.packed_on
    assert make_label(packed_on=None).packed_on is None
