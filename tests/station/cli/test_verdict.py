"""``station verdict``: exit code and document of one judged bag."""

import pytest

BAG = ("verdict", "--rules", "eu-76-211", "--nominal", "250g", "--json")


# 250 g: T1 = 241 g, T2 = 232 g (EU 76/211/EEC Annex I 2.4); at a limit is on its good side.
@pytest.mark.parametrize(
    ("arguments", "code", "verdict"),
    [
        (("--net", "250g"), 0, "in window"),
        (("--net", "999g"), 0, "in window"),
        (("--net", "249.9g"), 1, "below floor"),
        (("--net", "241g"), 1, "below floor"),
        (("--net", "240.9g"), 1, "below T1"),
        (("--net", "232g"), 1, "below T1"),
        (("--net", "231.9g"), 1, "below T2"),
        (("--net", "-3g"), 1, "below T2"),
        (("--net", "246g", "--floor", "246g"), 0, "in window"),
        (("--net", "258.1g", "--upper", "258g"), 1, "over"),
        (("--net", "258g", "--upper", "258g"), 0, "in window"),
        (("--net", "0.2409kg"), 1, "below T1"),
        (("--gross", "256g", "--tare", "6g"), 0, "in window"),
        (("--gross", "246.9g", "--tare", "6g"), 1, "below T1"),
        (("--gross", "256g", "--tare", "6g", "--net", "250g"), 0, "in window"),
    ],
)
def test_exit_code_and_verdict(station, arguments, code, verdict):
    found = station(*BAG, *arguments)
    assert (found.code, found.document["verdict"]) == (code, verdict)
    assert found.document["accepted"] is (code == 0)
    assert found.err == ""


def test_the_document_of_a_short_bag(station):
    document = station(*BAG, "--gross", "246.9g", "--tare", "6 g", "--upper", "0.26 kg").document
    assert document["limits"].pop("source")
    assert document["limits"].pop("version")
    assert document == {
        "verdict": "below T1",
        "accepted": False,
        "net": "240.9",
        "gross": "246.9",
        "tare": "6",
        "unit": "g",
        "floor": "250",
        "target": "250",
        "upper": "260",
        "below_T1": True,
        "below_T2": False,
        "add_to_floor": "9.1",
        "take_out": "0.0",
        "limits": {
            "rule_set": "eu-76-211",
            "nominal": "250",
            "unit": "g",
            "T": "9",
            "T1": "241",
            "T2": "232",
        },
    }


def test_nothing_is_over_without_an_upper_limit(station):
    document = station(*BAG, "--net", "251g").document
    assert (document["upper"], document["take_out"], document["add_to_floor"]) == (None, "0", "0")


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ((), "give --net, or --gross and --tare together"),
        (("--gross", "256g"), "give --net, or --gross and --tare together"),
        (("--net", "250g", "--tare", "6g"), "give --net, or --gross and --tare together"),
        (("--net", "251g", "--gross", "256g", "--tare", "6g"), "is 250 g, not 251 g"),
        (("--net", "250"), "'250' is not a mass"),
        (("--net", "250g", "--floor", "245g"), "245 g is below 245.5 g"),
        (("--net", "250g", "--target", "249g"), "target 249 g is below the floor 250 g"),
        (("--net", "250g", "--upper", "249g"), "upper limit 249 g is below the target 250 g"),
    ],
)
def test_refusals(station, arguments, words):
    found = station(*BAG, *arguments)
    assert (found.code, found.out) == (2, "")
    assert words in f"{found.error['title']}: {found.error['detail']}"


def test_a_mass_without_exact_value_in_the_unit_is_refused(station):
    found = station("verdict", "--rules", "us-hb133", "--nominal", "8oz", "--net", "227g")
    assert found.code == 2
    assert "--net" in found.err
    assert "give it in oz" in found.err


@pytest.mark.parametrize(
    ("net", "words"),
    [
        ("241g", "BELOW FLOOR  add 9 g to reach the floor 250 g"),
        ("251g", "IN WINDOW"),
        ("262g", "OVER  take out 4 g to come down to the upper limit 258 g"),
    ],
)
def test_a_page_says_what_to_do(station, net, words):
    assert words in station(*BAG[:-1], "--net", net, "--upper", "258g").out
