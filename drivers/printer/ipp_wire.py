"""Bytes of IPP messages and back (RFC 8010, section 3). Pure.

    version  code  request-id │ group tag │ value tag  n  name  n  value │ … │ 0x03 │ document
       2      2        4      │     1     │     1      2   n    2    n   │   │  1   │

All numbers are big-endian. A further value of the same attribute has a name of length 0. A
collection opens with 0x34 and closes with 0x37; between them each member's name comes as the value
of a 0x4a, then its values with no name (section 3.1.6).
"""

from __future__ import annotations

import struct

from drivers.printer.ipp_octets import (
    END_COLLECTION,
    FIRST_VALUE_TAG,
    MEMBER_NAME,
    IppMalformed,
    Reader,
    codec,
    text_in,
    text_out,
)
from drivers.printer.ipp_values import Attribute, Group, Message, Value, ValueTag

_END_OF_ATTRIBUTES = 0x03
_GROUP_TAGS = frozenset(range(1, FIRST_VALUE_TAG)) - {_END_OF_ATTRIBUTES}
_MOST = 0x7FFF
"""Octets of a name or value: the length is a signed short."""
_DEEPEST = 16
"""Collections within collections; media-col has two."""


# --- Out ---------------------------------------------------------------------------------


def encode(message: Message) -> bytes:
    """Return the bytes of a message, its document last.

    Raises:
        IppMalformed: a value that does not fit its tag, a name or value of more than 32767 octets,
            an attribute without a name or value, or a number outside its range.
    """
    if not {group.tag for group in message.groups} <= _GROUP_TAGS:
        raise IppMalformed("IPP message", "group tags go from 1 to 15 without 3")
    try:
        out = bytearray(struct.pack(">bbHi", *message.version, message.code, message.request_id))
    except struct.error as unfit:
        raise IppMalformed("IPP message", f"version, code or number: {unfit}") from unfit
    for group in message.groups:
        out.append(group.tag)
        for one in group.attributes:
            _put_attribute(out, one, one.name)
    out.append(_END_OF_ATTRIBUTES)
    return bytes(out + message.data)


def _put_attribute(out: bytearray, one: Attribute, name: str) -> None:
    if not (one.name and one.values):
        raise IppMalformed(f"IPP attribute {one.name!r}", "must have a name and a value")
    for value in one.values:
        _put_value(out, one.name, name, value)
        name = ""


def _put_value(out: bytearray, where: str, name: str, value: Value) -> None:
    try:
        octets = codec(value.tag)[0](value.content)
    except (TypeError, ValueError, struct.error) as unfit:
        raise IppMalformed(
            f"IPP attribute {where}", f"{value.content!r} does not fit value tag 0x{value.tag:02x}"
        ) from unfit
    _put(out, value.tag, name, octets)
    if isinstance(value.content, tuple):
        for member in value.content:
            _put(out, MEMBER_NAME, "", text_out(member.name))
            _put_attribute(out, member, "")
        _put(out, END_COLLECTION, "", b"")


def _put(out: bytearray, tag: int, name: str, octets: bytes) -> None:
    label = text_out(name)
    if max(len(label), len(octets)) > _MOST:
        raise IppMalformed(f"IPP attribute {name[:60]}", f"is longer than {_MOST} octets")
    out += struct.pack(">Bh", tag, len(label)) + label
    out += struct.pack(">h", len(octets)) + octets


# --- In ----------------------------------------------------------------------------------


def decode(octets: bytes) -> Message:
    """Return the message in some bytes.

    Tags that RFC 8010 does not define keep their content as bytes; text that is not UTF-8 keeps its
    octets as surrogate escapes.

    Raises:
        IppMalformed: the bytes are no whole IPP message; says at which octet.
    """
    reader = Reader(octets)
    major, minor, code, request_id = struct.unpack(">bbHi", reader.take(8))
    groups: list[Group] = []
    found = _Found()
    while (tag := reader.byte()) != _END_OF_ATTRIBUTES:
        if tag < FIRST_VALUE_TAG:
            found.close(groups)
            groups.append(Group(tag))
            continue
        if not groups:
            raise IppMalformed("IPP message", f"attribute outside a group at octet {reader.place}")
        name = text_in(reader.counted())
        found.add(name, _get_value(reader, tag, 0), reader.place)
    found.close(groups)
    return Message(code, request_id, tuple(groups), reader.left(), (major, minor))


class _Found:
    """Attributes as they come in, value by value."""

    def __init__(self) -> None:
        self._named: list[tuple[str, list[Value]]] = []

    def add(self, name: str, value: Value, place: int) -> None:
        """Add a value: a new attribute's first, or, with no name, one more of the last."""
        if name:
            self._named.append((name, [value]))
        elif self._named:
            self._named[-1][1].append(value)
        else:
            raise IppMalformed("IPP message", f"value without a name before octet {place}")

    def attributes(self) -> tuple[Attribute, ...]:
        """Return what came in."""
        return tuple(Attribute(name, tuple(values)) for name, values in self._named)

    def close(self, groups: list[Group]) -> None:
        """Give the last group what came in for it."""
        if groups:
            groups[-1] = Group(groups[-1].tag, self.attributes())
        self._named.clear()


def _get_value(reader: Reader, tag: int, depth: int) -> Value:
    """Read what follows a value's tag and name."""
    place = reader.place
    octets = reader.counted()
    if tag == ValueTag.COLLECTION:
        return Value(tag, _get_members(reader, depth + 1))
    try:
        return Value(tag, codec(tag)[1](octets))
    except (ValueError, struct.error) as unfit:
        raise IppMalformed(
            "IPP message", f"{len(octets)} octets at {place} do not fit value tag 0x{tag:02x}"
        ) from unfit


def _get_members(reader: Reader, depth: int) -> tuple[Attribute, ...]:
    if depth > _DEEPEST:
        raise IppMalformed("IPP message", f"collections nest deeper than {_DEEPEST}")
    members = _Found()
    name = ""
    while True:
        tag = reader.byte()
        place = reader.place
        if tag < FIRST_VALUE_TAG or reader.counted():
            raise IppMalformed("IPP message", f"collection not closed at octet {place}")
        if name and tag in (END_COLLECTION, MEMBER_NAME):
            raise IppMalformed("IPP message", f"member without a value at octet {place}")
        if tag == END_COLLECTION:
            reader.counted()
            return members.attributes()
        if tag == MEMBER_NAME:
            name = text_in(reader.counted())
        else:
            members.add(name, _get_value(reader, tag, depth), reader.place)
            name = ""
