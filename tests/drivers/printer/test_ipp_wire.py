"""IPP messages: the examples of RFC 8010, messages there and back, garbage refused in words."""

from __future__ import annotations

import re
import struct
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from drivers.printer.ipp_octets import IppMalformed
from drivers.printer.ipp_values import (
    Attribute,
    Group,
    GroupTag,
    LocalText,
    Message,
    Range,
    Resolution,
    Value,
    ValueTag,
    attribute,
)
from drivers.printer.ipp_wire import decode, encode
from tests.drivers.printer import libcups

# --- The examples of RFC 8010, appendix A ------------------------------------------------

PINETREE = "ipp://printer.example.com/ipp/print/pinetree"
HEAD = """0x01 0x47 0x0012 'attributes-charset' 0x0005 'utf-8'
    0x48 0x001b 'attributes-natural-language' 0x0005 'en-us'"""
TARGET = f"0x45 0x000b 'printer-uri' 0x002c '{PINETREE}'"


def octets(listing: str) -> bytes:
    """Turn the RFC's own way of listing octets into bytes."""
    tokens = re.findall(r"0x([0-9a-f]+)|'([^']*)'", listing)
    return b"".join(bytes.fromhex(digits) if digits else text.encode() for digits, text in tokens)


def operation(*others: Attribute, target: bool = True) -> Group:
    head = (
        attribute("attributes-charset", ValueTag.CHARSET, "utf-8"),
        attribute("attributes-natural-language", ValueTag.LANGUAGE, "en-us"),
    )
    uri = (attribute("printer-uri", ValueTag.URI, PINETREE),) if target else ()
    return Group(GroupTag.OPERATION, (*head, *uri, *others))


def words(text: str) -> Attribute:
    return attribute("status-message", ValueTag.TEXT, text)


UNSUPPORTED = Group(
    GroupTag.UNSUPPORTED,
    (
        attribute("copies", ValueTag.INTEGER, 20),
        attribute("sides", ValueTag.UNSUPPORTED, None),
    ),
)
JOB_147 = Group(
    GroupTag.JOB,
    (
        attribute("job-id", ValueTag.INTEGER, 147),
        attribute("job-uri", ValueTag.URI, f"{PINETREE}/147"),
        attribute("job-state", ValueTag.ENUM, 3),
    ),
)
JOB_147_OCTETS = f"""0x02 0x21 0x0006 'job-id' 0x0004 0x00000093
    0x45 0x0007 'job-uri' 0x0030 '{PINETREE}/147'
    0x23 0x0009 'job-state' 0x0004 0x00000003"""
UNSUPPORTED_OCTETS = """0x05 0x21 0x0006 'copies' 0x0004 0x00000014
    0x10 0x0005 'sides' 0x0000"""
MEDIA = (
    attribute(
        "media-size",
        ValueTag.COLLECTION,
        (
            attribute("x-dimension", ValueTag.INTEGER, 21000),
            attribute("y-dimension", ValueTag.INTEGER, 29700),
        ),
    ),
    attribute("media-type", ValueTag.KEYWORD, "stationery"),
)

EXAMPLES = {
    "A.1 Print-Job request": (
        f"""0x0101 0x0002 0x00000001 {HEAD} {TARGET}
        0x42 0x0008 'job-name' 0x0006 'foobar'
        0x22 0x0016 'ipp-attribute-fidelity' 0x0001 0x01
        0x02 0x21 0x0006 'copies' 0x0004 0x00000014
        0x44 0x0005 'sides' 0x0013 'two-sided-long-edge'
        0x03 '%!PDF...'""",
        Message(
            0x0002,
            1,
            (
                operation(
                    attribute("job-name", ValueTag.NAME, "foobar"),
                    attribute("ipp-attribute-fidelity", ValueTag.BOOLEAN, True),
                ),
                Group(
                    GroupTag.JOB,
                    (
                        attribute("copies", ValueTag.INTEGER, 20),
                        attribute("sides", ValueTag.KEYWORD, "two-sided-long-edge"),
                    ),
                ),
            ),
            b"%!PDF...",
        ),
    ),
    "A.2 Print-Job response (successful)": (
        f"""0x0101 0x0000 0x00000001 {HEAD}
        0x41 0x000e 'status-message' 0x000d 'successful-ok' {JOB_147_OCTETS} 0x03""",
        Message(0x0000, 1, (operation(words("successful-ok"), target=False), JOB_147)),
    ),
    "A.3 Print-Job response (failure)": (
        f"""0x0101 0x040b 0x00000001 {HEAD} 0x41 0x000e 'status-message'
        0x002f 'client-error-attributes-or-values-not-supported' {UNSUPPORTED_OCTETS} 0x03""",
        Message(
            0x040B,
            1,
            (
                operation(words("client-error-attributes-or-values-not-supported"), target=False),
                UNSUPPORTED,
            ),
        ),
    ),
    "A.4 Print-Job response (attributes ignored)": (
        f"""0x0101 0x0001 0x00000001 {HEAD} 0x41 0x000e 'status-message'
        0x002f 'successful-ok-ignored-or-substituted-attributes' {UNSUPPORTED_OCTETS}
        {JOB_147_OCTETS} 0x03""",
        Message(
            0x0001,
            1,
            (
                operation(words("successful-ok-ignored-or-substituted-attributes"), target=False),
                UNSUPPORTED,
                JOB_147,
            ),
        ),
    ),
    "A.5 Print-URI request": (
        f"""0x0101 0x0003 0x00000001 {HEAD} {TARGET}
        0x45 0x000c 'document-uri' 0x0019 'ftp://foo.example.com/foo'
        0x42 0x0008 'job-name' 0x0006 'foobar'
        0x02 0x21 0x0006 'copies' 0x0004 0x00000001 0x03""",
        Message(
            0x0003,
            1,
            (
                operation(
                    attribute("document-uri", ValueTag.URI, "ftp://foo.example.com/foo"),
                    attribute("job-name", ValueTag.NAME, "foobar"),
                ),
                Group(GroupTag.JOB, (attribute("copies", ValueTag.INTEGER, 1),)),
            ),
        ),
    ),
    "A.6 Create-Job request": (
        f"0x0101 0x0005 0x00000001 {HEAD} {TARGET} 0x03",
        Message(0x0005, 1, (operation(),)),
    ),
    # The RFC's listing has no 0x02 before the collection, which section 3.1.2 wants there for a
    # job attribute; it is given here.
    "A.7 Create-Job request with collection attributes": (
        f"""0x0101 0x0005 0x00000001 {HEAD} {TARGET} 0x02
        0x34 0x0009 'media-col' 0x0000
        0x4a 0x0000 0x000a 'media-size' 0x34 0x0000 0x0000
        0x4a 0x0000 0x000b 'x-dimension' 0x21 0x0000 0x0004 0x00005208
        0x4a 0x0000 0x000b 'y-dimension' 0x21 0x0000 0x0004 0x00007404
        0x37 0x0000 0x0000
        0x4a 0x0000 0x000a 'media-type' 0x44 0x0000 0x000a 'stationery'
        0x37 0x0000 0x0000 0x03""",
        Message(
            0x0005,
            1,
            (
                operation(),
                Group(GroupTag.JOB, (attribute("media-col", ValueTag.COLLECTION, MEDIA),)),
            ),
        ),
    ),
    "A.8 Get-Jobs request": (
        f"""0x0101 0x000a 0x0000007b {HEAD} {TARGET}
        0x21 0x0005 'limit' 0x0004 0x00000032
        0x44 0x0014 'requested-attributes' 0x0006 'job-id'
        0x44 0x0000 0x0008 'job-name' 0x44 0x0000 0x000f 'document-format' 0x03""",
        Message(
            0x000A,
            123,
            (
                operation(
                    attribute("limit", ValueTag.INTEGER, 50),
                    attribute(
                        "requested-attributes",
                        ValueTag.KEYWORD,
                        "job-id",
                        "job-name",
                        "document-format",
                    ),
                ),
            ),
        ),
    ),
    "A.9 Get-Jobs response": (
        f"""0x0101 0x0000 0x0000007b {HEAD}
        0x41 0x000e 'status-message' 0x000d 'successful-ok'
        0x02 0x21 0x0006 'job-id' 0x0004 0x00000093
        0x36 0x0008 'job-name' 0x000c 0x0005 'fr-ca' 0x0003 'fou'
        0x02
        0x02 0x21 0x0006 'job-id' 0x0004 0x00000095
        0x36 0x0008 'job-name' 0x0012 0x0005 'de-CH' 0x0009 'isch guet' 0x03""",
        Message(
            0x0000,
            123,
            (
                operation(words("successful-ok"), target=False),
                Group(
                    GroupTag.JOB,
                    (
                        attribute("job-id", ValueTag.INTEGER, 147),
                        attribute(
                            "job-name", ValueTag.NAME_WITH_LANGUAGE, LocalText("fr-ca", "fou")
                        ),
                    ),
                ),
                Group(GroupTag.JOB),
                Group(
                    GroupTag.JOB,
                    (
                        attribute("job-id", ValueTag.INTEGER, 149),
                        attribute(
                            "job-name", ValueTag.NAME_WITH_LANGUAGE, LocalText("de-CH", "isch guet")
                        ),
                    ),
                ),
            ),
        ),
    ),
}


@pytest.mark.parametrize(("listing", "message"), EXAMPLES.values(), ids=EXAMPLES)
def test_examples_of_rfc_8010(listing: str, message: Message) -> None:
    assert encode(message) == octets(listing)
    assert decode(octets(listing)) == message


# --- Any message -------------------------------------------------------------------------

INTEGERS = st.integers(-(2**31), 2**31 - 1)
TEXTS = st.text(st.characters(exclude_categories=("Cs",)), max_size=40)
NAMES = st.text(st.sampled_from("abcdefghijklmnopqrstuvwxyz0123456789-_."), min_size=1, max_size=20)


def values(tags: tuple[ValueTag, ...], contents: st.SearchStrategy) -> st.SearchStrategy[Value]:
    return st.builds(Value, st.sampled_from(tags), contents)


PLAIN = st.one_of(
    values((ValueTag.NO_VALUE, ValueTag.UNKNOWN, ValueTag.UNSUPPORTED), st.none()),
    values((ValueTag.INTEGER, ValueTag.ENUM), INTEGERS),
    values((ValueTag.BOOLEAN,), st.booleans()),
    values((ValueTag.OCTETS,), st.binary(max_size=40)),
    values((ValueTag.DATE_TIME,), st.binary(min_size=11, max_size=11)),
    values((ValueTag.RANGE,), st.builds(Range, INTEGERS, INTEGERS)),
    values(
        (ValueTag.RESOLUTION,), st.builds(Resolution, INTEGERS, INTEGERS, st.integers(-128, 127))
    ),
    values(
        (ValueTag.TEXT, ValueTag.NAME, ValueTag.KEYWORD, ValueTag.URI, ValueTag.MIME_TYPE), TEXTS
    ),
    values(
        (ValueTag.TEXT_WITH_LANGUAGE, ValueTag.NAME_WITH_LANGUAGE),
        st.builds(LocalText, TEXTS, TEXTS),
    ),
)


def attributes(contents: st.SearchStrategy[Value]) -> st.SearchStrategy[Attribute]:
    some = st.lists(contents, min_size=1, max_size=3).map(tuple)
    return st.builds(Attribute, NAMES, some)


NESTED = st.recursive(
    PLAIN,
    lambda inner: values(
        (ValueTag.COLLECTION,), st.lists(attributes(inner), max_size=3).map(tuple)
    ),
    max_leaves=6,
)
GROUPS = st.lists(
    st.builds(
        Group, st.sampled_from(tuple(GroupTag)), st.lists(attributes(NESTED), max_size=3).map(tuple)
    ),
    max_size=4,
).map(tuple)
MESSAGES = st.builds(
    Message, st.integers(0, 0xFFFF), st.integers(1, 2**31 - 1), GROUPS, st.binary(max_size=20)
)


@settings(max_examples=60)
@given(MESSAGES)
def test_any_message_comes_back_as_it_was(message: Message) -> None:
    assert decode(encode(message)) == message


@given(st.binary(max_size=300))
def test_any_bytes_are_a_message_or_refused_in_words(garbage: bytes) -> None:
    whole = b"\x01\x01\x00\x00\x00\x00\x00\x01" + garbage
    try:
        message = decode(whole)
    except IppMalformed:
        return
    assert whole.endswith(message.data)


@settings(max_examples=30)
@given(MESSAGES, st.data())
def test_message_broken_off_anywhere_is_refused(message: Message, data: st.DataObject) -> None:
    whole = encode(Message(message.code, message.request_id, message.groups))
    with pytest.raises(IppMalformed):
        decode(whole[: data.draw(st.integers(0, len(whole) - 1))])


# What the library keeps: no empty group or collection, no zero in a text, one kind of value a name,
# names of languages up to 63 octets (RFC 8011, 5.1.9).
SHOWN = st.text(st.characters(exclude_categories=("Cs", "Cc")), min_size=1, max_size=40)
SIMPLE = st.one_of(
    st.tuples(st.sampled_from((ValueTag.INTEGER, ValueTag.ENUM)), INTEGERS),
    st.tuples(st.just(ValueTag.BOOLEAN), st.booleans()),
    st.tuples(st.just(ValueTag.RANGE), st.builds(Range, INTEGERS, INTEGERS)),
    st.tuples(
        st.just(ValueTag.RESOLUTION),
        st.builds(Resolution, INTEGERS, INTEGERS, st.sampled_from((3, 4))),
    ),
    st.tuples(st.sampled_from((ValueTag.TEXT, ValueTag.NAME, ValueTag.KEYWORD)), SHOWN),
    st.tuples(st.just(ValueTag.NAME_WITH_LANGUAGE), st.builds(LocalText, NAMES, SHOWN)),
    st.tuples(st.just(ValueTag.NO_VALUE), st.none()),
)


@st.composite
def kept_attributes(draw: st.DrawFn, depth: int = 2) -> Attribute:
    if depth and draw(st.integers(0, 3)) == 0:
        members = st.lists(kept_attributes(depth - 1), min_size=1, max_size=3).map(tuple)
        return attribute(
            draw(NAMES), ValueTag.COLLECTION, *draw(st.lists(members, min_size=1, max_size=2))
        )
    tag, content = draw(SIMPLE)
    contents = [content] * (1 if tag == ValueTag.NO_VALUE else draw(st.integers(1, 3)))
    return attribute(draw(NAMES), tag, *contents)


SOME_KEPT = st.lists(kept_attributes(), min_size=1, max_size=3).map(tuple)
KEPT = st.builds(
    lambda first, *jobs: (
        Group(GroupTag.OPERATION, first),
        *(Group(GroupTag.JOB, j) for j in jobs),
    ),
    SOME_KEPT,
    SOME_KEPT,
    SOME_KEPT,
)


@settings(max_examples=50, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(KEPT)
def test_the_cups_library_reads_and_writes_the_same_bytes(
    tmp_path: Path, groups: tuple[Group, ...]
) -> None:
    ours = encode(Message(0x000B, 7, groups))
    assert libcups.again(ours, tmp_path) == ours


# --- What is refused ---------------------------------------------------------------------


@pytest.mark.parametrize(
    "bad",
    [
        attribute("copies", ValueTag.INTEGER, 2**31),
        attribute("copies", ValueTag.INTEGER, "1"),
        attribute("copies", ValueTag.INTEGER, True),
        attribute("last", ValueTag.BOOLEAN, 1),
        attribute("name", ValueTag.NAME, 7),
        attribute("name", ValueTag.NAME, "x" * 0x8000),
        attribute("when", ValueTag.DATE_TIME, b"2026"),
        attribute("sides", ValueTag.UNSUPPORTED, "one-sided"),
        attribute("media-col", ValueTag.COLLECTION, b""),
        attribute("range", ValueTag.RANGE, (1, 2)),
        attribute("empty", ValueTag.INTEGER),
        attribute("", ValueTag.INTEGER, 1),
        Attribute("odd", (Value(0x37, b""),)),
        Attribute("odd", (Value(0x4A, b"x"),)),
        Attribute("odd", (Value(0x100, b"x"),)),
    ],
    ids=repr,
)
def test_what_ipp_cannot_carry_is_refused(bad: Attribute) -> None:
    with pytest.raises(IppMalformed, match="IPP attribute"):
        encode(Message(2, 1, (Group(GroupTag.JOB, (bad,)),)))


@pytest.mark.parametrize("message", [Message(0x10000, 1, ()), Message(2, 2**31, ())])
def test_numbers_outside_their_range_are_refused(message: Message) -> None:
    with pytest.raises(IppMalformed, match="version, code or number"):
        encode(message)


def test_group_tag_that_means_the_end_is_refused() -> None:
    with pytest.raises(IppMalformed, match="without 3"):
        encode(Message(2, 1, (Group(3),)))


HEADER = "0x0101 0x0000 0x00000001 "


@pytest.mark.parametrize(
    ("listing", "why"),
    [
        ("0x21 0x0001 'a' 0x0004 0x00000001 0x03", "outside a group"),
        ("0x02 0x21 0x0000 0x0004 0x00000001 0x03", "without a name"),
        ("0x02 0x21 0x0001 'a' 0x0003 0x000001 0x03", "do not fit value tag 0x21"),
        ("0x02 0x22 0x0001 'a' 0x0000 0x03", "do not fit value tag 0x22"),
        ("0x02 0x21 0x0001 'a' 0xffff 0x03", "broken off or garbled"),
        ("0x02 0x36 0x0001 'a' 0x0004 0x0001 'de' 0x03", "broken off or garbled"),
        ("0x02 0x34 0x0001 'a' 0x0000 0x03", "not closed"),
        ("0x02 0x37 0x0001 'a' 0x0000 0x03", "do not fit value tag 0x37"),
        (
            "0x02 0x34 0x0001 'a' 0x0000 0x4a 0x0000 0x0001 'b' 0x37 0x0000 0x0000 0x03",
            "member without a value",
        ),
    ],
)
def test_garbled_replies_are_refused_with_their_place(listing: str, why: str) -> None:
    with pytest.raises(IppMalformed, match=why):
        decode(octets(HEADER + listing))


def test_collections_nest_only_so_deep() -> None:
    deep = "0x34 0x0001 'a' 0x0000 " + "0x4a 0x0000 0x0001 'b' 0x34 0x0000 0x0000 " * 5000
    with pytest.raises(IppMalformed, match="deeper than 16"):
        decode(octets(HEADER + "0x02 " + deep))


def test_text_that_is_no_utf_8_is_kept() -> None:
    message = decode(octets(HEADER + "0x02 0x42 0x0001 'a' 0x0002 0xfffe 0x03"))
    assert octets("0xfffe") in encode(message)
    assert struct.unpack(">H", encode(message)[:2]) == (0x0101,)


def test_first_of_two_attributes_of_one_name_counts() -> None:
    twice = Group(
        GroupTag.PRINTER,
        (
            attribute("copies", ValueTag.INTEGER, 1),
            attribute("copies", ValueTag.INTEGER, 2),
            attribute("name", ValueTag.NAME_WITH_LANGUAGE, LocalText("en", "roll")),
            attribute("flag", ValueTag.BOOLEAN, True),
        ),
    )
    assert twice.integer("copies") == 1
    assert twice.integer("flag") is None
    assert twice.text("name") == "roll"
    assert twice.text("copies") == twice.text("absent") == ""
    assert Message(0, 1, (twice,)).group(GroupTag.JOB) == Group(GroupTag.JOB)
