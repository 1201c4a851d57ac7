"""Is the scale fine enough: worked by hand from the printed rules."""

from decimal import Decimal

import pytest

from station.core.mass import Mass
from station.core.metrology.instrument_errors import ErrorSystem, ScaleClass
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.scale_suitability import Level, Scale, check_scale, worst


def scale(interval: str, maximum: str = "3 kg", **more) -> Scale:
    return Scale(ScaleClass.III, Mass.parse(interval), Mass.parse(maximum), **more)


def verdict(interval: str, rules: str, nominal: str, **more) -> Level:
    net = Mass.parse(nominal)
    return worst(check_scale(scale(interval, **more), rule_set(rules), net, Mass.parse("7 g"), net))


@pytest.mark.parametrize(
    ("interval", "rules", "nominal", "level"),
    [
        ("1 g", "eu-76-211", "250 g", Level.GOOD),  # in service 1 g against 9/5 = 1.8 g
        ("2 g", "eu-76-211", "250 g", Level.REFUSE),  # 2 g against 1.8 g
        ("2 g", "eu-76-211", "340 g", Level.GOOD),  # 2 g against 10.2/5 = 2.04 g
        ("1 g", "eu-76-211", "142 g", Level.GOOD),  # 1 g against 6.4/5 = 1.28 g
        ("1 g", "de-fpackv-2020", "142 g", Level.REFUSE),  # table: 0.5 g below 150 g
        ("1 g", "de-fpackv-2020", "150 g", Level.GOOD),
        ("1 g", "us-hb133", "113 g", Level.GOOD),  # HB 133 Ch.2: 7.2/6 = 1.2 g
        ("2 g", "us-hb133", "113 g", Level.REFUSE),
        ("1 g", "us-hb133", "99 g", Level.REFUSE),  # fewer than 100 divisions
    ],
)
def test_interval_against_the_law(interval, rules, nominal, level):
    assert verdict(interval, rules, nominal) is level


# DE FPackV 2020 Anlage 7 no.1 b, table aa: from g, below g, largest e in g
GERMAN_INTERVALS = """
5 10 0.1 | 10 25 0.2 | 25 150 0.5 | 150 350 1 | 350 1750 2 | 1750 3500 5 | 3500 7000 10
| 7000 25000 20 | 25000 50000 50 | 50000 100000 100 | 100000 600000 200 | 600000 1500000 500
"""


def test_german_table_row_by_row():
    printed = [tuple(map(Decimal, row.split())) for row in GERMAN_INTERVALS.split("|")]
    rows = rule_set("de-fpackv-2020").interval_rule.rows
    assert [(row.from_g, row.below_g, row.most_e_g) for row in rows] == printed


@pytest.mark.parametrize("row", range(12))
def test_german_table_on_both_sides_of_each_boundary(row):
    rows = rule_set("de-fpackv-2020").interval_rule.rows
    edge = rows[row].from_g
    just_below = edge - Decimal("0.1")
    found = [[one for one in rows if one.from_g <= at < one.below_g] for at in (edge, just_below)]
    assert found == [[rows[row]], [rows[row - 1]] if row else []]


def test_findings_carry_their_numbers():
    findings = check_scale(
        scale("2 g"), rule_set("eu-76-211"), Mass.of(250), Mass.of(7), Mass.of(260)
    )
    words = [finding.words for finding in findings if finding.level is Level.REFUSE]
    assert words == ["in-service error at 257 g gross 2 g against 1/5 of 9 g = 1.800 g"]


def test_capacity_min_and_class():
    small = check_scale(
        scale("1 g", "250 g"), rule_set("eu-76-211"), Mass.of(250), Mass.of(7), Mass.of(260)
    )
    assert small[0].level is Level.REFUSE
    assert small[0].words == "heaviest gross 267 g against Max 250 g"
    light = check_scale(scale("1 g"), rule_set("eu-76-211"), Mass.of(15), Mass.of(2), Mass.of(16))
    assert light[1].level is Level.WARN
    assert light[1].words == "nominal 15 g against Min 20 g"
    assert verdict("1 g", "eu-76-211", "250 g", maximum="15 kg") is Level.WARN  # n = 15 000


def test_a_class_without_errors_is_refused_not_guessed():
    fine = Scale(ScaleClass.I, Mass.parse("0.001 g"), Mass.parse("500 g"))
    findings = check_scale(fine, rule_set("eu-76-211"), Mass.of(250), Mass.of(7), Mass.of(260))
    assert worst(findings) is Level.REFUSE


def test_pound_scale_under_hb_44():
    pounds = Scale(
        ScaleClass.III, Mass.parse("0.01 lb"), Mass.parse("6 lb"), system=ErrorSystem.HB_44
    )
    one = Mass.parse("1 lb")
    findings = check_scale(pounds, rule_set("us-hb133"), one, Mass.parse("0.02 lb"), one)
    refused = [finding.words for finding in findings if finding.level is Level.REFUSE]
    assert refused == ["scale interval 0.01 lb against 1/6 of 0.044 lb = 3.326 g"]
