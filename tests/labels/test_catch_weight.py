"""Catch-weight numbers by country, read back by biip, which parses by the national rules."""

import random
from decimal import Decimal

import biip
import pytest
from biip import ParseConfig
from biip.rcn import Rcn, RcnRegion

from labels.catch_weight import COUNTRIES, CatchWeight, Meaning, catch_weight_number
from labels.design import DESIGNS, PACK_100_BY_60_RETAIL
from labels.errors import LabelError
from labels.gs1_digits import check_digit, has_valid_check_digit
from labels.pdf import LabelDrawer
from labels.release import release

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


def weighed(**changes: object) -> CatchWeight:
    facts = {
        "net": Decimal("0.346"),
        "unit": "kg",
        "interval": Decimal("0.002"),
        "country": "DE",
        "prefix": "28",
        "item": "1234",
    }
    return CatchWeight(**(facts | changes))


@pytest.mark.parametrize(
    ("net", "unit", "interval", "ai", "digits"),
    [
        ("0.346", "kg", "0.002", "3103", "000346"),
        ("346", "g", "1", "3103", "000346"),
        ("2.5", "kg", "0.5", "3101", "000025"),
        ("0.760", "lb", "0.005", "3203", "000760"),
        ("12.1", "oz", "0.1", "3205", "075625"),
        ("0.1", "oz", "0.1", "3205", "000625"),
    ],
)
def test_the_net_weight_as_an_element(net, unit, interval, ai, digits) -> None:
    element = weighed(net=Decimal(net), unit=unit, interval=Decimal(interval)).element
    assert (element.ai, element.value) == (ai, digits)
    factor = Decimal(1) if ai.startswith("310") else Decimal("0.45359237")
    assert (
        Decimal(digits).scaleb(-int(ai[3])) * factor
        <= weighed(net=Decimal(net), unit=unit, interval=Decimal(interval)).kilograms
    )


@pytest.mark.parametrize(
    ("net", "unit", "interval", "prefix", "kilograms"),
    [
        ("0.346", "kg", "0.002", "23", "0.346"),  # three decimals
        ("0.346", "kg", "0.002", "24", "0.34"),  # two: down
        ("0.346", "kg", "0.002", "25", "0.3"),
        ("0.760", "lb", "0.005", "23", "0.344"),  # 0.34473 kg
    ],
)
def test_the_number_for_the_till_holds_no_more_than_was_measured(
    net, unit, interval, prefix, kilograms
) -> None:
    one = weighed(
        net=Decimal(net),
        unit=unit,
        interval=Decimal(interval),
        country="SE",
        prefix=prefix,
        item="123456",
    )
    config = ParseConfig(rcn_region=RcnRegion.SWEDEN)
    assert biip.parse(one.number, config=config).gtin.weight == Decimal(kilograms)
    assert Decimal(kilograms) <= one.kilograms


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"net": Decimal("0.347")}, "as a scale of 0.002 kg shows it"),
        ({"net": Decimal("0.35")}, "as a scale of 0.002 kg shows it"),  # a digit is missing
        ({"net": Decimal("NaN")}, "exact number above 0"),
        ({"interval": Decimal(0)}, "exact number above 0"),
        ({"unit": "st"}, "g, kg, oz, lb"),
        ({"prefix": "25"}, "is for counts"),
        ({"prefix": "22"}, "holds a price; give it"),
        ({"net": Decimal("100.000")}, "up to 99.999"),
        ({"country": "FR"}, "no rules are known"),
    ],
)
def test_a_weight_no_scale_showed_or_no_number_holds_is_refused(changes, said) -> None:
    with pytest.raises(LabelError) as caught:
        weighed(**changes)
    assert said in caught.value.detail


CATCH = {
    "catch_weight": weighed(),
    "net_quantity_text": "0.346 kg",
    "nominal_grams": Decimal(346),
    "gtin": "9952123454321" + check_digit("9952123454321"),
    "e_mark": False,
}


@pytest.mark.parametrize("name", sorted(DESIGNS))
@pytest.mark.parametrize("dots_per_mm", [8, 12, 24])
def test_a_pack_of_variable_weight_on_every_design(make_label, name: str, dots_per_mm) -> None:
    label = make_label(**CATCH, input_lots=make_label().input_lots[:2])
    released = release(LabelDrawer(DESIGNS[name], dots_per_mm), label)
    sent = b" ".join(symbol.expected_bytes for symbol in released.symbols)
    assert b"3103000346" in sent
    if DESIGNS[name].till_bars:
        assert label.catch_weight.number.encode() in sent


def test_a_price_at_the_till(make_label) -> None:
    priced = weighed(prefix="22", price=Decimal("2.59"))
    label = make_label(**CATCH | {"catch_weight": priced})
    released = release(LabelDrawer(PACK_100_BY_60_RETAIL), label)
    config = ParseConfig(rcn_region=RcnRegion.GERMANY, rcn_verify_variable_measure=True)
    (till,) = (symbol for symbol in released.symbols if symbol.identifier == "]E0")
    assert biip.parse(till.expected_bytes.decode(), config=config).gtin.price == Decimal("2.59")


@pytest.mark.parametrize(
    ("changes", "title"),
    [
        ({"nominal_grams": Decimal(347), "net_quantity_text": "0.347 kg"}, "Catch weight"),
        ({"gtin": "9521234543213"}, "GTIN"),
        ({"e_mark": True}, "Sign ℮"),
    ],
)
def test_facts_that_do_not_go_with_a_measured_weight_are_refused(
    make_label, changes, title: str
) -> None:
    with pytest.raises(LabelError) as caught:
        make_label(**CATCH | changes)
    assert caught.value.title == title
