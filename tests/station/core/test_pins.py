"""PINs that are guessed first are refused; guesses at one person's PIN stay few."""

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.pins import LOCK, PinError, Tries, check_badge, check_pin, wait

START = datetime(2026, 11, 25, 5, tzinfo=UTC)


@pytest.mark.parametrize(
    ("pin", "words"),
    [
        ("12345", "5 digits"),
        ("1234567890123", "13 digits"),
        ("12a456", "digits alone"),
        ("١٢٣٤٥٦", "digits alone"),
        ("000000", "equal or counting"),
        ("345678", "equal or counting"),
        ("901234", "equal or counting"),
        ("876543", "equal or counting"),
        ("121212", "repeated"),
        ("482482", "repeated"),
    ],
)
def test_a_bad_pin_is_refused_in_words(pin, words):
    with pytest.raises(PinError, match=words):
        check_pin(pin)


def test_other_digits_are_taken():
    for pin in ("482913", "731907", "112233", "9081726354"):
        check_pin(pin)


@pytest.mark.parametrize("badge", ["short", "has blank here", "x" * 41, "tab\tinside", "ünicode1"])
def test_a_code_no_scanner_sends_is_no_badge(badge):
    with pytest.raises(PinError):
        check_badge(badge)


def guesses_within(length: timedelta, forget=lambda tries: tries) -> int:
    """How often somebody who never stops can guess, as fast as allowed."""
    tries, now, made = Tries(), START, 0
    while now < START + length:
        left = wait(tries, now)
        if left > timedelta(0):
            now += left
            continue
        tries, made = forget(tries.after_wrong(now)), made + 1
    return made


def test_an_hour_of_guessing_gives_fewer_than_twenty_tries():
    # OWASP ASVS 4.0.3, 2.2.1 allows 100 failed attempts an hour; six digits want fewer.
    assert guesses_within(timedelta(hours=1)) == 13
    assert guesses_within(timedelta(hours=24)) < 110


def test_three_wrong_ones_cost_no_time_and_ten_cost_a_quarter_of_an_hour():
    waits = [wait(Tries(wrong, START), START).total_seconds() for wrong in range(1, 12)]
    assert waits == [0, 0, 1, 2, 4, 8, 16, 30, 30, 900, 900]


@given(wrong=st.integers(0, 30), shift=st.integers(-(10**7), 10**7))
def test_no_setting_of_the_clock_locks_anybody_out_for_longer(wrong, shift):
    left = wait(Tries(wrong, START), START + timedelta(seconds=shift))
    assert timedelta(0) <= left <= LOCK
