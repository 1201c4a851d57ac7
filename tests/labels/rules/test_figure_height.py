"""Heights of net quantity figures, clause by clause."""

from decimal import Decimal

import pytest

from labels.errors import LabelError
from labels.rules.figure_height import MARKETS, TABLES, least_figure_height

PANEL = Decimal(600)


@pytest.mark.parametrize("market", ["EU", "DE", "AT", "GB", "OIML", "NZ"])
@pytest.mark.parametrize(
    ("grams", "height"),
    # Directive 76/211/EEC Annex I 3.1: 6 mm above 1000 g, 4 mm down to but not 200 g, 3 mm down
    # to but not 50 g, 2 mm up to 50 g.
    [("50", 2), ("50.1", 3), ("200", 3), ("200.1", 4), ("1000", 4), ("1000.1", 6), ("5", 2)],
)
def test_by_quantity(market: str, grams: str, height: int) -> None:
    assert least_figure_height(market, Decimal(grams), PANEL) == height


@pytest.mark.parametrize(
    ("cm2", "height"),
    # Safe Food for Canadians Regulations, Schedule 6
    [
        ("32", "1.6"),
        ("33", "3.2"),
        ("258", "3.2"),
        ("645", "6.4"),
        ("2580", "9.5"),
        ("2581", "12.7"),
    ],
)
def test_canada_by_panel(cm2: str, height: str) -> None:
    assert least_figure_height("CA", Decimal(1), Decimal(cm2)) == Decimal(height)


@pytest.mark.parametrize(
    ("square_inches", "sixteenths"),
    # 21 CFR 101.7(i), from memory
    [("5", 1), ("5.1", 2), ("25", 2), ("100", 3), ("400", 4), ("401", 8)],
)
def test_united_states_by_panel(square_inches: str, sixteenths: int) -> None:
    cm2 = Decimal(square_inches) * Decimal("2.54") ** 2
    height = least_figure_height("US", Decimal(1), cm2)
    assert height == Decimal("25.4") * sixteenths / 16


def test_every_table_names_its_source_and_rises() -> None:
    for table in TABLES.values():
        assert table.source
        assert table.status in ("public text", "from memory", "assumed")
        heights = [height for _, height in table.steps] + [table.beyond_mm]
        assert heights == sorted(heights)


def test_an_unknown_market_is_named_with_those_known() -> None:
    with pytest.raises(LabelError) as caught:
        least_figure_height("XX", Decimal(1), PANEL)
    assert all(market in caught.value.detail for market in MARKETS)
