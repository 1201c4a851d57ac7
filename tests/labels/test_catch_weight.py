"""Catch-weight numbers by country, read back by biip, which parses by the national rules."""

import random
from decimal import Decimal

import biip
import pytest
from biip import ParseConfig
from biip.rcn import Rcn, RcnRegion

from labels.catch_weight import COUNTRIES, Meaning, catch_weight_number
from labels.errors import LabelError
from labels.gs1_digits import has_valid_check_digit

PREFIXES = [(country, prefix) for country in COUNTRIES for prefix in COUNTRIES[country]]


@pytest.mark.parametrize(("country", "prefix"), PREFIXES)
def test_biip_reads_the_value_that_was_put_in(country: str, prefix: str) -> None:
    pattern = COUNTRIES[country][prefix]
    chance = random.Random(f"{country}{prefix}")
    for _ in range(40):
        value = Decimal(chance.randrange(10**pattern.value)).scaleb(-pattern.decimals)
        item = f"{chance.randrange(10**pattern.item):0{pattern.item}d}"
        number = catch_weight_number(country, prefix, item, value)
        assert len(number) == 13
        assert has_valid_check_digit(number)
        config = ParseConfig(
            rcn_region=RcnRegion(country.lower()), rcn_verify_variable_measure=True
        )
        parsed = biip.parse(number, config=config).gtin
        assert isinstance(parsed, Rcn)
        read = {
            Meaning.WEIGHT: parsed.weight,
            Meaning.PRICE: parsed.price,
            Meaning.COUNT: parsed.count,
        }
        assert read[pattern.meaning] == value
        assert parsed.item_reference == item


@pytest.mark.parametrize(
    ("country", "prefix", "item", "value", "said"),
    [
        ("FR", "20", "1234", "1", "no rules are known for 'FR'"),
        ("GB", "28", "1234", "1", "20 price"),
        ("DE", "28", "123", "1", "takes 4"),
        ("DE", "28", "12A4", "1", "'A'"),
        ("DE", "28", "1234", "0.2505", "finer than 3 decimals"),
        ("DE", "28", "1234", "100", "up to 99.999"),
        ("DE", "28", "1234", "-1", "exact number"),
        ("DE", "28", "1234", "NaN", "exact number"),
    ],
)
def test_what_makes_no_number_is_named(
    country: str, prefix: str, item: str, value: str, said: str
) -> None:
    with pytest.raises(LabelError) as caught:
        catch_weight_number(country, prefix, item, Decimal(value))
    assert said in caught.value.detail
