"""One file: whatever its bytes are, a reading or a fault with its place, never a crash."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.config.faults import Faults, closest, shown
from station.config.toml_file import read_toml


@given(
    content=st.binary(max_size=200)
    | st.text(alphabet='[]{}="\n#.,a1-:\\', max_size=60).map(str.encode)
)
def test_any_bytes_give_a_table_or_one_fault(tmp_path_factory, content):
    folder = tmp_path_factory.mktemp("settings")
    (folder / "any.toml").write_bytes(content)
    faults = Faults(folder)
    table = read_toml("any.toml", faults)
    assert (table is None) is (len(faults.found) == 1)


def test_fractions_arrive_as_exact_decimals(tmp_path):
    (tmp_path / "any.toml").write_text("share = 0.1", encoding="utf-8")
    assert read_toml("any.toml", Faults(tmp_path)) == {"share": Decimal("0.1")}


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("a = 1\nb = = 2", "line 2, column 5"),
        ("a = ", "end of file"),
        ("[[a]]\n[a]", "line 2, column 3"),
        ("a = " + "[" * 5000, "file"),
        ("a = " + "9" * 5000, "file"),
        ("a = 1e9999999999999999999", "file"),
    ],
)
def test_the_place_of_a_fault(tmp_path, text, key):
    (tmp_path / "any.toml").write_text(text, encoding="utf-8")
    faults = Faults(tmp_path)
    assert read_toml("any.toml", faults) is None
    assert [fault.key for fault in faults.found] == [key]


@pytest.mark.parametrize(
    ("value", "text"),
    [
        ("x", '"x"'),
        ('say "x"', '"say \\"x\\""'),
        (True, "true"),
        (7, "7"),
        (Decimal("7.60"), "7.60"),
        ("a\nb", '"a\\nb"'),
        ("\u202eabc", '"\\u202eabc"'),
        ("x" * 100, '"' + "x" * 58 + "…"),
    ],
)
def test_values_are_shown_as_a_file_holds_them(value, text):
    assert shown(value) == text


def test_the_closest_word():
    assert closest("life_day", ("life_days", "mode")) == "life_days"
    assert closest("zzz", ("life_days", "mode")) == ""
