"""``station limits`` against the figures of the law."""

from decimal import Decimal

import pytest

# EU 76/211/EEC Annex I 2.4: 5-50 g 9 %, 50-100 g 4.5 g, 100-200 g 4.5 %, 200-300 g 9 g,
# 300-500 g 3 %, 500-1000 g 15 g, 1-10 kg 1.5 %; percentages rounded up to 0.1 g.
EU = [
    ("50g", "4.5", "45.5", "41"),
    ("142 g", "6.4", "135.6", "129.2"),
    ("200g", "9", "191", "182"),
    ("250g", "9", "241", "232"),
    ("340g", "10.2", "329.8", "319.6"),
    ("0.34kg", "0.0102", "0.3298", "0.3196"),
    ("907 g", "15", "892", "877"),
    ("2.27 kg", "0.0341", "2.2359", "2.2018"),
    ("2270 g", "34.1", "2235.9", "2201.8"),
    ("10kg", "0.15", "9.85", "9.7"),
]


@pytest.mark.parametrize(("nominal", "t", "t1", "t2"), EU)
def test_figures_of_the_directive(station, nominal, t, t1, t2):
    found = station("limits", "--rules", "eu-76-211", "--nominal", nominal, "--json")
    assert found.code == 0
    document = found.document
    assert [document[key] for key in ("T", "T1", "T2")] == [t, t1, t2]
    assert f"{document['nominal']}{document['unit']}" == nominal.replace(" ", "")
    assert Decimal(document["nominal"]) - 2 * Decimal(t) == Decimal(t2)


def test_the_document_has_these_keys(station):
    found = station("limits", "--rules", "eu-76-211", "--nominal", "250g", "--json")
    assert list(found.document) == [
        "rule_set", "version", "nominal", "unit", "T", "T1", "T2", "source",
    ]  # fmt: skip
    assert all(isinstance(value, str) for value in found.document.values())
    assert found.err == ""


def test_ounces_under_rules_that_know_them(station):
    found = station("limits", "--rules", "us-hb133", "--nominal", "8 oz", "--json")
    assert found.document["unit"] == "oz"
    # NIST Handbook 133 table 2-5 (from memory): 0.028 lb for a labelled 0.50 lb.
    assert Decimal(found.document["T"]) == Decimal("0.028") * 16


def test_a_page_for_people(station):
    found = station("limits", "--rules", "eu-76-211", "--nominal", "340 g")
    for words in ("340 g under eu-76-211", "10.2 g", "329.8 g", "319.6 g", "competent"):
        assert words in found.out


@pytest.mark.parametrize(
    ("rules", "nominal", "words"),
    [
        ("eu-76-211", "250", ["--nominal", "'250' is not a mass", "mg, g, kg, lb, oz"]),
        ("eu-76-211", "1,5 kg", ["--nominal", "decimal point"]),
        ("eu-76-211", "1e3 g", ["--nominal", "is not a mass"]),
        ("eu-76-211", "", ["--nominal", "is not a mass"]),
        ("eu-76-211", "4.9 g", ["--nominal", "at least 5 g"]),
        ("eu-76-211", "10.001 kg", ["--nominal", "at most 10000 g"]),
        ("eu-76-211", "0 g", ["--nominal", "outside"]),
        ("eu-76-211", "8 oz", ["--nominal", "knows no nominal quantity in oz"]),
        ("eu-76-210", "250 g", ["--rules", "'eu-76-210' is no rule set", "eu-76-211"]),
    ],
)
def test_refusals_name_the_option_and_what_is_allowed(station, rules, nominal, words):
    found = station("limits", "--rules", rules, "--nominal", nominal)
    assert (found.code, found.out) == (2, "")
    for part in words:
        assert part in found.err
    assert "Traceback" not in found.err
