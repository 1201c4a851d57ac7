"""What an IPP message holds: groups of named attributes, each with one or more values.

RFC 8010 section 3.5 (tags), RFC 8011 section 5.1 (attribute syntaxes). Nothing here knows bytes.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import TypeAlias


class GroupTag(IntEnum):
    """What a group of attributes is about (RFC 8010, 3.5.1)."""

    OPERATION = 0x01
    JOB = 0x02
    PRINTER = 0x04
    UNSUPPORTED = 0x05


class ValueTag(IntEnum):
    """How a value is to be read (RFC 8010, 3.5.2)."""

    UNSUPPORTED = 0x10
    UNKNOWN = 0x12
    NO_VALUE = 0x13
    INTEGER = 0x21
    BOOLEAN = 0x22
    ENUM = 0x23
    OCTETS = 0x30
    DATE_TIME = 0x31
    RESOLUTION = 0x32
    RANGE = 0x33
    COLLECTION = 0x34
    TEXT_WITH_LANGUAGE = 0x35
    NAME_WITH_LANGUAGE = 0x36
    TEXT = 0x41
    NAME = 0x42
    KEYWORD = 0x44
    URI = 0x45
    URI_SCHEME = 0x46
    CHARSET = 0x47
    LANGUAGE = 0x48
    MIME_TYPE = 0x49


@dataclass(frozen=True, slots=True)
class Range:
    """Whole numbers from ``low`` to ``high``, both included."""

    low: int
    high: int


@dataclass(frozen=True, slots=True)
class Resolution:
    """Dots per unit across the feed and along it; ``unit`` 3 is an inch, 4 a centimetre."""

    cross_feed: int
    feed: int
    unit: int = 3


@dataclass(frozen=True, slots=True)
class LocalText:
    """Words in a named language."""

    language: str
    text: str


@dataclass(frozen=True, slots=True)
class Value:
    """One value under its tag.

    Args:
        tag: a ValueTag, or another number from 0x10 to 0xff, whose content then is bytes.
        content: by tag: None for 0x10 to 0x1f, int, bool, str, bytes, Range, Resolution, LocalText,
            or the members of a collection.
    """

    tag: int
    content: Content


@dataclass(frozen=True, slots=True)
class Attribute:
    """A name and its values, at least one."""

    name: str
    values: tuple[Value, ...]


Content: TypeAlias = (
    "int | bool | str | bytes | Range | Resolution | LocalText | tuple[Attribute, ...] | None"
)


def attribute(name: str, tag: ValueTag, *contents: Content) -> Attribute:
    """Return an attribute whose values all have one tag."""
    return Attribute(name, tuple(Value(tag, content) for content in contents))


@dataclass(frozen=True, slots=True)
class Group:
    """Attributes about one thing: the operation, a job, the printer, what is not supported."""

    tag: int
    attributes: tuple[Attribute, ...] = ()

    def all(self, name: str) -> tuple[Content, ...]:
        """Return the contents under a name, none where it is absent; the first of two counts."""
        for found in self.attributes:
            if found.name == name:
                return tuple(value.content for value in found.values)
        return ()

    def integer(self, name: str) -> int | None:
        """Return the first content under a name if it is a whole number."""
        content = next(iter(self.all(name)), None)
        return content if isinstance(content, int) and not isinstance(content, bool) else None

    def text(self, name: str) -> str:
        """Return the first content under a name as words; empty where there are none."""
        return next(iter(self.texts(name)), "")

    def texts(self, name: str) -> tuple[str, ...]:
        """Return those contents under a name that are words."""
        found = (c.text if isinstance(c, LocalText) else c for c in self.all(name))
        return tuple(content for content in found if isinstance(content, str))


@dataclass(frozen=True, slots=True)
class Message:
    """A request or a reply.

    Args:
        code: operation of a request or status of a reply, 0 to 0xffff.
        request_id: 1 to 2**31 - 1, the same in the reply.
        groups: in the order of the wire.
        data: the document after the attributes.
        version: major and minor number of the protocol.
    """

    code: int
    request_id: int
    groups: tuple[Group, ...]
    data: bytes = b""
    version: tuple[int, int] = (1, 1)

    def group(self, tag: GroupTag) -> Group:
        """Return the first group of a kind; an empty one where there is none."""
        return next((group for group in self.groups if group.tag == tag), Group(tag))
