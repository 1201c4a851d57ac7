"""Every row of the published tables, on both sides of each boundary."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.mass import Mass
from station.core.metrology.clause import RuleRefused, Status
from station.core.metrology.duties import FigureBasis
from station.core.metrology.rule_sets.registry import RULE_SETS, rule_set

IDS = (
    "oiml-r87-2016",
    "eu-76-211",
    "gb-2006-659",
    "de-fpackv-2020",
    "us-hb133",
    "ca-sfcr",
    "nz-sch7a",
)
STEP = Decimal("0.1")


def test_the_registry_has_every_set_and_names_them_in_a_refusal():
    assert tuple(RULE_SETS) == IDS
    with pytest.raises(RuleRefused, match="use one of oiml-r87-2016, eu-76-211"):
        rule_set("eu")


def unrounded(nominal: Decimal) -> Fraction:
    """EU 76/211/EEC Annex I 2.4, DE FPackV 2020 s.9(3), NZ Sch.7A, CA SFCR Sch.4 Table 3."""
    q = Fraction(nominal)
    if q <= 50:
        return q * 9 / 100
    if q <= 100:
        return Fraction(9, 2)
    if q <= 200:
        return q * 9 / 200
    if q <= 300:
        return Fraction(9)
    if q <= 500:
        return q * 3 / 100
    if q <= 1000:
        return Fraction(15)
    if q <= 10000:
        return q * 3 / 200
    if q <= 15000:
        return Fraction(150)
    return q / 100


def up(value: Fraction, step: Fraction) -> Fraction:
    return -((-value) // step) * step


def boundary_quantities(highest: int) -> list[Decimal]:
    ends = [5, 50, 100, 200, 300, 500, 1000, 10000, 15000]
    around = [Decimal(end) + STEP * side for end in ends for side in (-1, 0, 1)]
    return [one for one in around if 5 <= one <= highest] + [Decimal(142), Decimal(highest)]


@pytest.mark.parametrize(
    ("rules", "highest", "step"),
    [
        ("eu-76-211", 10000, Fraction(1, 10)),
        ("gb-2006-659", 25000, Fraction(1, 10)),
        ("de-fpackv-2020", 10000, Fraction(1, 10)),
        ("ca-sfcr", 30000, None),
        ("nz-sch7a", 30000, None),
    ],
)
def test_tolerable_shortage_on_both_sides_of_each_boundary(rules, highest, step):
    for nominal in boundary_quantities(highest):
        expected = unrounded(nominal) if step is None else up(unrounded(nominal), step)
        limits = rule_set(rules).limits(Mass.of(nominal))
        assert Fraction(limits.tolerable.amount) == expected, nominal
        assert Fraction(limits.t1.amount) == Fraction(nominal) - expected


def test_r_87_rounds_up_to_a_tenth_to_one_kilogram_and_to_a_gram_above():
    rules = rule_set("oiml-r87-2016")
    for nominal in [Decimal("0.7"), *boundary_quantities(30000)]:
        step = Fraction(1, 10) if nominal <= 1000 else Fraction(1)
        expected = up(unrounded(nominal), step)
        assert Fraction(rules.limits(Mass.of(nominal)).tolerable.amount) == expected


def test_german_second_limit_is_a_table_of_its_own():
    """DE FPackV 2020 s.9(4): 18 %, 9 g, 9 %, 18 g, 6 %, 30 g, 3 %, rounded up on its own.

    It differs from twice the rounded T at 4 675 of the 9 996 whole grams (own count).
    """
    rules = rule_set("de-fpackv-2020")
    different = 0
    for grams in range(5, 10001):
        limits = rules.limits(Mass.of(grams))
        second = Fraction(grams) - Fraction(limits.t2.amount)
        assert second == up(2 * unrounded(Decimal(grams)), Fraction(1, 10))
        twice = 2 * Fraction(limits.tolerable.amount)
        assert twice - second in (0, Fraction(1, 10))
        different += twice != second
    assert different == 4675


@pytest.mark.parametrize(
    ("nominal", "tolerable"),
    [
        ("142 g", "6.4"),
        ("200 g", "9"),
        ("227 g", "9"),
        ("340 g", "10.2"),
        ("454 g", "13.7"),
        ("907 g", "15"),
        ("1000 g", "15"),
        ("1360 g", "20.4"),
        ("2270 g", "34.1"),
        ("3000 g", "45"),
    ],
)
def test_usual_bags_in_the_eu(nominal, tolerable):
    limits = rule_set("eu-76-211").limits(Mass.parse(nominal))
    assert limits.tolerable == Mass.of(tolerable)
    assert limits.t2 == limits.nominal - Mass.of(tolerable) * 2


# NIST HB 133 Table 2-5, from memory: above lb, up to lb, MAV lb, above g, up to g, MAV g
HB133 = """
0.08 0.12 0.008 36 54 3.6
0.12 0.18 0.012 54 81 5.4
0.18 0.26 0.016 81 117 7.2
0.26 0.34 0.020 117 154 9.0
0.34 0.46 0.024 154 208 10.8
0.46 0.58 0.028 208 263 12.7
0.58 0.70 0.032 263 317 14.5
0.70 0.84 0.036 317 381 16.3
0.84 0.94 0.040 381 426 18.1
0.94 1.08 0.044 426 489 19.9
1.08 1.26 0.048 489 571 21.7
1.26 1.40 0.052 571 635 23.5
1.40 1.54 0.056 635 698 25.4
1.54 1.70 0.060 698 771 27.2
1.70 1.88 0.064 771 852 29.0
1.88 2.14 0.070 852 970 31.7
2.14 2.48 0.078 970 1120 35.3
2.48 2.76 0.086 1120 1250 39.0
2.76 3.20 0.094 1250 1450 42.6
3.20 3.90 0.11 1450 1760 49
3.90 4.70 0.12 1760 2130 54
4.70 5.80 0.14 2130 2630 63
5.80 6.80 0.15 2630 3080 68
6.80 7.90 0.17 3080 3580 77
7.90 9.40 0.19 3580 4260 86
9.40 11.70 0.22 4260 5300 99
11.70 14.30 0.25 5300 6480 113
14.30 17.70 0.28 6480 8020 127
17.70 23.20 0.31 8020 10520 140
23.20 31.60 0.37 10520 14330 167
31.60 42.40 0.44 14330 19230 199
42.40 54.40 0.50 19230 24670 226
""".strip().splitlines()


@pytest.mark.parametrize("row", HB133)
def test_mav_at_both_ends_of_each_row_in_both_units(row):
    above_lb, to_lb, mav_lb, above_g, to_g, mav_g = (Decimal(cell) for cell in row.split())
    rules = rule_set("us-hb133")

    def mav(amount, unit):
        return rules.limits(Mass.of(amount, unit)).tolerable.amount

    assert mav(above_lb + Decimal("0.001"), "lb") == mav_lb
    assert mav(to_lb, "lb") == mav_lb
    assert mav(to_lb * 16, "oz") == mav_lb * 16
    assert mav(above_g + STEP, "g") == mav_g
    assert mav(to_g, "g") == mav_g
    assert mav(to_g / 1000, "kg") * 1000 == mav_g
    if above_lb == Decimal("0.08"):
        assert mav(above_lb, "lb") == mav_lb, "the second row starts at 0.08 lb itself"
        assert mav(above_g, "g") == mav_g


def test_mav_by_percentage_at_both_ends_of_the_table():
    rules = rule_set("us-hb133")
    assert rules.limits(Mass.parse("0.0799 lb")).tolerable == Mass.parse("0.00799 lb")
    assert rules.limits(Mass.parse("35.9 g")).tolerable == Mass.parse("3.59 g")
    assert rules.limits(Mass.parse("54.41 lb")).tolerable == Mass.parse("1.0882 lb")
    assert rules.limits(Mass.parse("25 kg")).tolerable == Mass.parse("0.5 kg")


def test_every_metric_mav_is_the_pound_value_truncated():
    """NIST HB 44 Appendix C: 1 lb = 453.59237 g."""
    for row in HB133:
        _, _, mav_lb, _, _, mav_g = row.split()
        shown = Decimal(mav_g)
        step = Decimal(1).scaleb(shown.as_tuple().exponent)
        assert Decimal(mav_lb) * Decimal("453.59237") // step * step == shown


def test_the_declared_unit_picks_the_column():
    """0.26 lb is 117.9 g, which the metric column puts in the next row."""
    rules = rule_set("us-hb133")
    assert rules.limits(Mass.parse("0.26 lb")).tolerable == Mass.parse("0.016 lb")
    assert rules.limits(Mass.parse("117.9 g")).tolerable == Mass.parse("9.0 g")


def test_eight_ounces_may_be_short_by_seven_sixteenths():
    """A public answer quoting HB 133: 8 oz -> 7/16 oz (0.4375), printed 0.028 lb = 0.448 oz."""
    tolerable = rule_set("us-hb133").limits(Mass.parse("8 oz")).tolerable
    assert tolerable == Mass.parse("0.448 oz")
    assert round(float(tolerable.amount) * 16) == 7


@pytest.mark.parametrize(
    ("above", "percent", "grams"),
    [
        ("0", "10", None),
        ("60", None, "6"),
        ("600", "1", None),
        ("1000", None, "10"),
        ("1500", "0.66", None),
        ("3000", None, "20"),
        ("4000", "0.5", None),
        ("10000", None, "50"),
        ("15000", "0.33", None),
        ("250000", None, "750"),
        ("500000", "0.15", None),
    ],
)
def test_canadian_catch_weight_tolerance(above, percent, grams):
    """CA SFCR Sch.4 Table 1."""
    declared = Decimal(above) + 1
    expected = Decimal(grams) if grams else declared * Decimal(percent) / 100
    limits = rule_set("ca-sfcr").catch_weight_limits(Mass.of(declared))
    assert limits.tolerable.amount == expected
    if above != "0":  # the boundary itself belongs to the row below
        at = rule_set("ca-sfcr").catch_weight_limits(Mass.of(above))
        assert at.source != limits.source


@pytest.mark.parametrize(
    ("rules", "nominal", "said"),
    [
        ("eu-76-211", "4.9 g", "at least 5 g and at most 10000 g"),
        ("eu-76-211", "10000.1 g", "at least 5 g and at most 10000 g"),
        ("gb-2006-659", "25.1 kg", "at most 25000 g"),
        ("eu-76-211", "8 oz", "declare 8 oz in one of g, kg, mg"),
        ("nz-sch7a", "0 g", "more than 0 g"),
        ("us-hb133", "-1 g", "more than 0 g"),
    ],
)
def test_quantities_outside_a_set_are_refused(rules, nominal, said):
    with pytest.raises(RuleRefused, match=said):
        rule_set(rules).limits(Mass.parse(nominal))


def test_catch_weight_packs_are_outside_the_average_system():
    with pytest.raises(RuleRefused, match=r"no limits for a catch-weight pack of 0\.412 kg"):
        rule_set("eu-76-211").catch_weight_limits(Mass.parse("0.412 kg"))


@given(st.sampled_from(IDS), st.integers(50, 100_000), st.sampled_from(["g", "kg"]))
def test_limits_are_exact_ordered_and_the_same_in_every_metric_unit(rules, tenths, unit):
    nominal = Mass.from_micrograms(tenths * 100_000)
    limits = rule_set(rules).limits(nominal)
    other = rule_set(rules).limits(nominal.in_unit(Mass.parse(f"1 {unit}").unit))
    assert (limits.t1, limits.t2) == (other.t1, other.t2)
    assert limits.t2 < limits.t1 < limits.nominal
    assert limits.t1 + limits.tolerable == limits.nominal
    assert limits.version
    assert limits.source


def test_rows_from_memory_say_so():
    assert Status.MEMORY in rule_set("us-hb133").limits(Mass.parse("1 lb")).source
    assert Status.MEMORY in rule_set("oiml-r87-2016").limits(Mass.parse("250 g")).source
    assert Status.MEMORY in rule_set("gb-2006-659").limits(Mass.parse("12 kg")).source
    assert Status.MEMORY not in rule_set("de-fpackv-2020").limits(Mass.parse("250 g")).source


@pytest.mark.parametrize(
    ("rules", "basis", "value", "height"),
    [
        *(
            ("de-fpackv-2020", FigureBasis.NOMINAL_G, q, h)
            for q, h in (
                ("50", "2"),
                ("50.1", "3"),
                ("200", "3"),
                ("200.1", "4"),
                ("1000", "4"),
                ("1001", "6"),
            )
        ),
        ("eu-76-211", FigureBasis.E_MARK, "1", "3"),
        ("de-fpackv-2020", FigureBasis.CATCH_WEIGHT, "1", "2"),
        *(
            ("ca-sfcr", FigureBasis.PANEL_CM2, q, h)
            for q, h in (
                ("32", "1.6"),
                ("33", "3.2"),
                ("258", "3.2"),
                ("645", "6.4"),
                ("2580", "9.5"),
                ("2581", "12.7"),
            )
        ),
        ("ca-sfcr", FigureBasis.FRESH_PRODUCE, "1", "1.6"),
        *(
            ("us-hb133", FigureBasis.PANEL_IN2, q, h)
            for q, h in (
                ("5", "1.6"),
                ("25", "3.2"),
                ("100", "4.8"),
                ("400", "6.4"),
                ("401", "12.7"),
            )
        ),
    ],
)
def test_figure_heights(rules, basis, value, height):
    """DE FPackV 2020 s.38, EU Annex I 3, CA SFCR Sch.6 and s.229(4), US 21 CFR 101.7(i)."""
    assert rule_set(rules).figure_height(basis, Decimal(value)).height_mm == Decimal(height)


def test_an_unknown_figure_height_is_refused_not_guessed():
    with pytest.raises(RuleRefused, match="transcribed: none"):
        rule_set("nz-sch7a").figure_height(FigureBasis.NOMINAL_G, Decimal(250))


def test_batches_records_and_sources_are_stated_for_every_set():
    for rules in RULE_SETS.values():
        assert rules.batch_rule.words
        assert rules.retention.least_days >= 730
        assert rules.sources
        assert "transcription" in rules.version
    assert rule_set("eu-76-211").batch_rule.hourly
    assert rule_set("de-fpackv-2020").batch_rule.most_elsewhere == 10_000
