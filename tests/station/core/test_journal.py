"""The journal's byte form after RFC 8785, and a chain that names what was changed."""

import hashlib
import json
import struct
from dataclasses import replace
from datetime import UTC, datetime
from enum import IntEnum, StrEnum

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from station.core.journal import (
    GENESIS,
    Entry,
    EntryKind,
    JournalError,
    Stored,
    canonical,
    entry_hash,
    first_break,
)
from station.core.pack import Moment

AT = Moment(datetime(2026, 11, 25, 9, 0, 0, 5, tzinfo=UTC), 60, "Europe/Dublin", 2**63 + 1)
ENTRY = Entry("HA", "A1", 2**63 - 1, 1, EntryKind.EVENT, AT, "station", {"words": "scale open"})
MOST = 2**53 - 1

texts = st.text(st.characters(exclude_categories=["Cs"]), max_size=12)
names = st.text(st.characters(max_codepoint=0x7F), max_size=6)
values = st.recursive(
    st.none() | st.booleans() | st.integers(-MOST, MOST) | texts,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(names, inner, max_size=3),
    max_leaves=8,
)
bodies = st.dictionaries(names, values, max_size=4)


def body_bytes(body):
    return canonical(replace(ENTRY, body=body))


# --- the byte form ----------------------------------------------------------------------------


def test_an_entry_has_these_very_bytes():
    # Members sorted, no white space, UTF-8: RFC 8785 sections 3.2.1, 3.2.3 and 3.2.4.
    assert canonical(ENTRY) == (
        b'{"body":{"words":"scale open"},"epoch":"9223372036854775807","kind":"event",'
        b'"monotonic":"9223372036854775809","offset":60,"seq":1,"site":"HA","station":"A1",'
        b'"utc":"2026-11-25T09:00:00.000005+00:00","v":1,"who":"station","zone":"Europe/Dublin"}'
    )


def rfc_string(text):
    """A string as RFC 8785 section 3.2.2.2 writes it, character by character."""
    short = {8: "\\b", 9: "\\t", 10: "\\n", 12: "\\f", 13: "\\r", 0x22: '\\"', 0x5C: "\\\\"}
    return '"' + "".join(
        short.get(ord(one)) or (f"\\u{ord(one):04x}" if ord(one) < 0x20 else one) for one in text
    ) + '"'  # fmt: skip


def rfc_form(value):
    """The form of RFC 8785 for the kinds of value the journal keeps."""
    if value is None or isinstance(value, bool):
        return {None: "null", True: "true", False: "false"}[value]
    if isinstance(value, int):
        return str(value)  # section 3.2.2.3: whole numbers below 2**53 have no exponent
    if isinstance(value, str):
        return rfc_string(value)
    if isinstance(value, list):
        return "[" + ",".join(map(rfc_form, value)) + "]"
    # Section 3.2.3: members sorted by the UTF-16 code units of their names.
    ordered = sorted(value, key=lambda name: struct.unpack(
        f">{len(name.encode('utf-16-be')) // 2}H", name.encode("utf-16-be")))  # fmt: skip
    return "{" + ",".join(f"{rfc_string(name)}:{rfc_form(value[name])}" for name in ordered) + "}"


@given(bodies)
def test_the_form_is_that_of_the_standard(body):
    assert body_bytes(body).startswith(b'{"body":' + rfc_form(body).encode() + b',"epoch":')


@pytest.mark.parametrize(
    ("text", "written"),
    [
        ("".join(map(chr, range(8))), r"\u0000\u0001\u0002\u0003\u0004\u0005\u0006\u0007"),
        ("\b\t\n\v\f\r\x0e\x0f", r"\b\t\n\u000b\f\r\u000e\u000f"),
        ("\x1b\x1f \x7f\x80", "\\u001b\\u001f \x7f\x80"),
        ('"\\/', '\\"\\\\/'),
        ("é\u2028\u2029\ufeff", "é\u2028\u2029\ufeff"),
        ("e\u0301", "e\u0301"),  # never normalised
        ("\U0001f96c", "\U0001f96c"),
        # The string of RFC 8785 section 3.2.2 and its form in section 3.2.2.2.
        ("\u20ac$\u000f\u000aA'\u0042\u0022\u005c\\\"\u002f", '€$\\u000f\\nA\'B\\"\\\\\\\\\\"/'),
    ],
)
def test_strings_are_escaped_as_the_standard_says(text, written):
    assert f'{{"words":"{written}"}}'.encode() in body_bytes({"words": text})


@given(bodies)
def test_the_bytes_read_back_as_the_same_facts(body):
    assert json.loads(body_bytes(body))["body"] == body


@given(st.dictionaries(names, texts, min_size=2, max_size=5))
def test_the_order_of_the_facts_does_not_matter(body):
    assert body_bytes(body) == body_bytes(dict(reversed(body.items())))


# --- what cannot be kept ----------------------------------------------------------------------


class Number(IntEnum):
    ONE = 1


class Word(StrEnum):
    GOOD = "good"


def test_named_words_and_numbers_are_kept_as_what_they_are():
    assert b'{"a":["good",1,true,null]}' in body_bytes({"a": (Word.GOOD, Number.ONE, True, None)})


class Strange:
    def __repr__(self) -> str:
        return "Strange()"  # the same name for its test in every process


@pytest.mark.parametrize(
    ("bad", "words"),
    [
        (0.1, "is a binary float: give digits as text"),
        (float("nan"), "is a binary float"),
        (1.0, "is a binary float"),
        (b"250", "is of type bytes: allowed are text, whole numbers"),
        (bytearray(b"1"), "is of type bytearray"),
        ({1, 2}, "is of type set"),
        (AT.utc, "is of type datetime"),
        (Strange(), "is of type Strange"),
        (MOST + 1, "is beyond 2**53 - 1: give it as text"),
        (-MOST - 1, "is beyond 2**53 - 1"),
        ({1: "a"}, "has a name that is not plain ASCII text: 1"),
        ({"ñ": "a"}, "has a name that is not plain ASCII text: 'ñ'"),
    ],
    ids=str,
)
@pytest.mark.parametrize(
    ("wrap", "path"),
    [
        (lambda bad: {"net": bad}, "body.net"),
        (lambda bad: {"ok": "1", "bags": ["a", {"x": 1}, bad]}, "body.bags[2]"),
        (lambda bad: {"bags": [{"scale": {"frames": [[], [0, bad]]}}]}, "body.bags[0].scale.frames[1][1]"),  # noqa: E501
        (lambda bad: {"bags": ("a", {"net": bad})}, "body.bags[1].net"),
    ],
    ids=["member", "list", "deep", "tuple"],
)  # fmt: skip
def test_what_cannot_be_kept_exactly_is_refused_with_its_place(wrap, path, bad, words):
    with pytest.raises(JournalError) as refused:
        body_bytes(wrap(bad))
    assert str(refused.value).startswith(f"{path} {words}")


@given(st.integers(0, 3), st.sampled_from([0.5, b"x", 2**60]), values)
def test_nothing_deep_slips_through(depth, bad, beside):
    body = bad
    for _ in range(depth):
        body = {"a": beside, "b": [beside, body]}
    with pytest.raises(JournalError, match=r"^body\.top" + r"\.b\[1\]" * depth + " is "):
        body_bytes({"ok": beside, "top": body})


def test_half_a_surrogate_pair_is_refused():
    # RFC 8785 section 3.2.2.2: lone surrogates must end in an error.
    with pytest.raises(JournalError, match="half a surrogate pair"):
        body_bytes({"words": "burst \ud83e seal"})


@pytest.mark.parametrize("number", [0, -1, MOST, -MOST])
def test_whole_numbers_up_to_the_limit_are_plain_digits(number):
    assert f'{{"n":{number}}}'.encode() in body_bytes({"n": number})


# --- the chain --------------------------------------------------------------------------------


def chain(length=5):
    """A sound chain, hashed as RFC 9162 section 2.1.1 hashes a leaf, over (before, bytes)."""
    stored, before = [], bytes(32)
    for seq in range(1, length + 1):
        kept = canonical(replace(ENTRY, seq=seq, body={"words": f"entry {seq}"}))
        leaf = hashlib.sha256()
        leaf.update(b"\x00")
        leaf.update(before)
        leaf.update(kept)
        before = leaf.digest()
        stored.append(Stored(seq, kept, before))
    return stored


CHAIN = chain()


def test_an_entry_is_hashed_as_a_leaf_over_the_hash_before():
    before = GENESIS
    for stored in CHAIN:
        before = entry_hash(before, stored.canonical)
        assert before == stored.hash
    assert not any(GENESIS)


def test_a_sound_chain_holds_from_any_entry_on():
    assert first_break(CHAIN) is None
    assert first_break([]) is None
    assert first_break(CHAIN[2:], CHAIN[1].hash, 3) is None


PLACES = st.integers(0, len(CHAIN) - 1)


@given(PLACES, st.data(), st.integers(1, 255))
def test_any_changed_byte_is_found_at_its_entry(place, data, flip):
    stored = CHAIN[place]
    at = data.draw(st.integers(0, len(stored.canonical) - 1))
    changed = bytearray(stored.canonical)
    changed[at] ^= flip
    broken = first_break([*CHAIN[:place], replace(stored, canonical=bytes(changed)), *CHAIN[place + 1 :]])  # noqa: E501  # fmt: skip
    assert broken is not None
    assert (broken.seq, broken.why.startswith(f"entry {place + 1} was changed")) == (
        place + 1,
        True,
    )


def test_every_single_byte_of_a_small_chain_counts():
    for place, stored in enumerate(CHAIN[:2]):
        for at in range(len(stored.canonical)):
            changed = bytearray(stored.canonical)
            changed[at] ^= 1
            rest = CHAIN[place + 1 :]
            broken = first_break([*CHAIN[:place], replace(stored, canonical=bytes(changed)), *rest])
            assert broken is not None
            assert broken.seq == place + 1


@given(PLACES, st.integers(0, 31), st.integers(1, 255))
def test_a_changed_hash_is_found_at_its_entry(place, at, flip):
    changed = bytearray(CHAIN[place].hash)
    changed[at] ^= flip
    broken = first_break(
        [*CHAIN[:place], replace(CHAIN[place], hash=bytes(changed)), *CHAIN[place + 1 :]]
    )
    assert broken is not None
    assert broken.seq == place + 1


def test_a_change_hashed_anew_is_found_at_the_next_entry():
    kept = CHAIN[1].canonical.replace(b"entry 2", b"entry X")
    forged = Stored(2, kept, entry_hash(CHAIN[0].hash, kept))
    broken = first_break([CHAIN[0], forged, *CHAIN[2:]])
    assert broken is not None
    assert broken.seq == 3
    assert "or one before it was" in broken.why


@given(PLACES)
def test_a_missing_entry_is_named(place):
    broken = first_break(CHAIN[:place] + CHAIN[place + 1 :])
    if place == len(CHAIN) - 1:
        assert broken is None  # a lost end shows only beside a head kept elsewhere
    else:
        assert broken is not None
        assert broken.seq == place + 1
        assert broken.why == f"entry {place + 1} is missing: entry {place + 2} stands in its place"


@given(PLACES, PLACES)
def test_an_added_entry_is_named(place, copied):
    assume(copied <= place)
    added = [*CHAIN[: place + 1], CHAIN[copied], *CHAIN[place + 1 :]]
    broken = first_break(added)
    assert broken is not None
    assert broken.seq == copied + 1
    assert broken.why == f"entry {copied + 1} was added: it stands after {place + 1}"


@given(st.permutations(range(len(CHAIN))))
@settings(max_examples=50)
def test_no_other_order_holds(order):
    assert (first_break([CHAIN[at] for at in order]) is None) == (order == sorted(order))


def test_a_chain_does_not_go_on_under_another_start():
    broken = first_break(CHAIN, before=hashlib.sha256(b"another").digest())
    assert broken is not None
    assert broken.seq == 1
