"""Keys of a scanner that types, of a person, and of a code that presses command keys."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drivers.wedge import Judgement, Key, Typed, WedgeRules, judge_keys

MS = 1_000_000
RULES = WedgeRules()


def keys(text: str, between_ms: float = 5.0, end: str = "\n") -> list[Key]:
    return [Key(c, round(n * between_ms * MS)) for n, c in enumerate(text + end)]


def test_fast_keys_with_enter_are_a_scan() -> None:
    assert judge_keys(keys("]C110ROM-1"), RULES) == Judgement(Typed.SCAN, "]C110ROM-1")
    assert judge_keys(keys("ROM-1", end="\r"), RULES).typed is Typed.SCAN
    assert judge_keys(keys("ROM-1", 30), RULES).typed is Typed.SCAN


@pytest.mark.parametrize(
    "typed",
    [
        keys("ROM-1", 31),
        keys("ROM-1", 120),
        keys("ROM"),
        keys("ROM-1", end=""),
        [*keys("ROM-1")[:3], Key("-", 400 * MS), Key("\n", 401 * MS)],
        [Key("R", 5 * MS), Key("O", 4 * MS), Key("M", 5 * MS), Key("1", 6 * MS), Key("\n", 7 * MS)],
        [],
    ],
    ids=["just too slow", "slow", "short", "no Enter", "one pause", "time runs back", "nothing"],
)
def test_what_a_person_types_is_no_scan(typed: list[Key]) -> None:
    told = judge_keys(typed, RULES)
    assert (told.typed, told.data) == (Typed.PERSON, "")
    assert told.why


@pytest.mark.parametrize(
    ("strange", "why"),
    [
        (Key("o", 10 * MS, modified=True), "keys that are no text"),
        (Key("", 10 * MS), "keys that are no text"),
        (Key("F1", 10 * MS), "keys that are no text"),
        (Key("\x1d", 10 * MS), "a character that no code"),
        (Key("\x1b", 10 * MS), "a character that no code"),
        (Key("ñ", 10 * MS), "a character that no code"),
        (Key("\n", 10 * MS), "a character that no code"),
    ],
)
def test_code_that_presses_other_keys_is_refused(strange: Key, why: str) -> None:
    typed = keys("ROM-11")
    typed[2] = strange
    told = judge_keys(typed, RULES)
    assert (told.typed, told.data) == (Typed.REFUSED, "")
    assert why in told.why


def test_prefix_is_demanded_and_taken_off() -> None:
    rules = WedgeRules(prefix="~#")
    assert judge_keys(keys("~#ROM-1"), rules) == Judgement(Typed.SCAN, "ROM-1")
    assert "types first" in judge_keys(keys("ROM-1"), rules).why
    assert "3 characters" in judge_keys(keys("~#ROM"), rules).why


def test_too_long_is_refused() -> None:
    assert judge_keys(keys("A" * 200), RULES).typed is Typed.SCAN
    assert "201 characters, allowed are 4 to 200" in judge_keys(keys("A" * 201), RULES).why


key = st.builds(Key, st.text(max_size=2), st.integers(0, 10**9), st.booleans())


@given(st.lists(key, max_size=12))
def test_any_keys_give_a_scan_of_printable_text_or_none(typed: list[Key]) -> None:
    told = judge_keys(typed, RULES)
    assert (told.typed is Typed.SCAN) is bool(told.data)
    assert told.data.isascii()
    assert not told.data or told.data.isprintable()
    assert (told.typed is Typed.SCAN) is not bool(told.why)
