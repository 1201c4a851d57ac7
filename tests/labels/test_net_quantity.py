"""The declared quantity in words, by market."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from labels.design import PACK_100_BY_100_US
from labels.net_quantity import declared
from labels.pdf import LabelDrawer
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


@pytest.mark.parametrize(
    "quantity", ["200 g", "907 g", "2.27 kg", "5 oz", "1 lb", "2.5 lb", "5 lb"]
)
def test_what_is_declared_keeps_the_rules_of_the_united_states_on_their_design(
    make_label, american, quantity: str
) -> None:
    digits, unit = quantity.split()
    grams = Decimal(digits) * {"g": 1, "kg": 1000, "lb": POUND, "oz": POUND / 16}[unit]
    label = make_label(
        **american
        | {"net_quantity_text": declared(digits, unit, "US", "en"), "nominal_grams": grams},
        input_lots=make_label().input_lots[:3],
    )
    plan = LabelDrawer(PACK_100_BY_100_US).plan(label)  # judged by the rules of the market
    lines = [text for text in plan.texts if text.role == "Net quantity"]
    shown = " ".join(text.text for text in sorted(lines, key=lambda text: text.baseline))
    assert shown == label.net_quantity_text
    assert len(lines) == (2 if quantity == "907 g" else 1)
