from datetime import UTC, datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.tree_head import HeadError, SaidHead, SignedHead, TreeHead, key_id

AT = datetime(2026, 3, 4, 22, 59, 58, tzinfo=UTC)
HEAD = TreeHead("HA", "L1A", 7, 1234, bytes(range(32)))
SIGNED = SignedHead(HEAD, AT, bytes(range(32)), bytes(64))

heads = st.builds(
    TreeHead,
    st.just("HA"),
    st.just("L1A"),
    st.integers(1, 2**63 - 1),
    st.integers(1, 10**8),
    st.binary(min_size=32, max_size=32),
)


def test_words_are_twelve_syllables_of_a_consonant_and_a_vowel():
    words = HEAD.words.split()
    assert [len(word) for word in words] == [6, 6, 6, 6]
    for word in words:
        assert set(word[::2]) <= set("bdfghklmnprstvyz")
        assert set(word[1::2]) <= set("aeio")


@given(heads, heads)
def test_other_heads_have_other_words(one, other):
    assert (one.words == other.words) == (one == other)


@given(heads)
def test_words_are_read_back_however_they_are_written(head):
    printed = f"{head.size} {head.words}"
    spoken = f" {head.size}  {head.words.upper().replace(' ', '-')} "
    assert SaidHead.parse(printed) == SaidHead.parse(spoken) == SaidHead(head.size, head.words)


@pytest.mark.parametrize(
    "text", ["", "1234", HEAD.words, "12 bafodi kesamo tirage", "x bafodi kesamo tirage nopeza"]
)
def test_what_is_no_head_is_refused_with_an_example(text):
    with pytest.raises(HeadError, match="the number of the entry and the four words"):
        SaidHead.parse(text)


def test_a_signed_head_is_one_line_of_signs_that_a_code_packs_closely():
    # ISO/IEC 18004 alphanumeric mode: digits, capital letters, space $ % * + - . / :
    assert set(SIGNED.text()) <= set("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:")
    assert SignedHead.parse(SIGNED.text()) == SIGNED


def test_the_time_is_signed_to_the_second_whatever_zone_it_comes_in():
    elsewhere = AT.astimezone(timezone(timedelta(hours=2)))
    assert HEAD.statement(AT) == HEAD.statement(elsewhere)
    assert HEAD.statement(AT).decode().endswith(" 2026-03-04T22:59:58Z")
    assert HEAD.statement(AT + timedelta(seconds=1)) != HEAD.statement(AT)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (lambda text: "", "nine parts"),
        (lambda text: text.replace("HEAD1", "HEAD2"), "starts with JOURNALHEAD1"),
        (lambda text: text[:-2], "cut short"),
        (lambda text: text.replace("1234", "12x4"), "invalid literal"),
        (lambda text: text.replace("-03-", "-13-"), "does not match"),
    ],
)
def test_a_damaged_line_is_refused(change, words):
    with pytest.raises(HeadError, match=words):
        SignedHead.parse(change(SIGNED.text()))


def test_a_key_has_a_short_name():
    assert key_id(bytes(32)) == "66687aadf862bd77"  # SHA-256 of 32 zero bytes: 66687aad f862bd77 …
