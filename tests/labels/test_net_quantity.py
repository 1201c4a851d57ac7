"""The declared quantity in words, by market."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from labels.net_quantity import declared
from labels.rules.rule import metric_grams
from labels.rules.us import customary_grams

POUND = Decimal("453.59237")  # g, exact: NIST Handbook 44 Appendix C


@pytest.mark.parametrize(
    ("quantity", "market", "language", "words"),
    [
        (("250", "g"), "EU", "en", "250 g"),
        (("2.27", "kg"), "EU", "en", "2.27 kg"),
        (("2.27", "kg"), "EU", "de", "2,27 kg"),
        (("2.27", "kg"), "CA", "fr", "2,27 kg"),
        (("250", "g"), "US", "en", "Net Wt 8.8 oz (250 g)"),  # 8.818 oz
        (("340", "g"), "US", "en", "Net Wt 11.9 oz (340 g)"),  # 11.993 oz, never 12
        (("12", "oz"), "US", "en", "Net Wt 12 oz (340 g)"),  # 340.19 g
        (("1.25", "lb"), "US", "en", "Net Wt 20 oz (1 lb 4 oz) 566 g"),  # 566.99 g
        (("5", "lb"), "US", "en", "Net Wt 5 lb (2.26 kg)"),  # 2.26796 kg
    ],
)
def test_words(quantity: tuple[str, str], market: str, language: str, words: str) -> None:
    assert declared(*quantity, market, language) == words


@given(st.integers(5, 25000))
def test_what_is_converted_is_never_more_and_less_by_no_more_than_its_last_place(
    grams: int,
) -> None:
    words = declared(str(grams), "g", "US", "en")
    assert metric_grams(words) == grams
    ounces, step = customary_grams(words)
    assert 0 <= grams - ounces < step


@given(st.integers(1, 400))
def test_quarters_of_a_pound(quarters: int) -> None:
    pounds = Decimal(quarters) / 4
    metric = metric_grams(declared(f"{pounds}", "lb", "US", "en"))
    assert 0 <= pounds * POUND - metric < Decimal("0.01") * pounds * POUND
