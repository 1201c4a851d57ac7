"""Is the scale fine enough: worked by hand from the printed rules."""

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


# DE FPackV 2020 Anlage 7 no.1 b aa: from g, largest e in g
@pytest.mark.parametrize(
    ("from_g", "most"),
    [(5, "0.1"), (10, "0.2"), (25, "0.5"), (150, "1"), (350, "2"), (1750, "5"), (3500, "10"),
     (7000, "20")],
)  # fmt: skip
def test_german_table_on_both_sides_of_each_row(from_g, most):
    rows = rule_set("de-fpackv-2020").interval_rule.rows
    at = next(row for row in rows if row.from_g <= from_g < row.below_g)
    assert str(at.most_e_g) == most
    below = [row for row in rows if row.below_g == from_g]
    assert all(row.most_e_g < at.most_e_g for row in below)
    assert len(rows) == 12
    assert rows[-1].below_g == 1_500_000


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
