"""Octets of single IPP values and back (RFC 8010, section 3.9), and the reader they come from."""

from __future__ import annotations

import struct
from collections.abc import Callable

from drivers.errors import PrinterError
from drivers.printer.ipp_values import Content, LocalText, Range, Resolution, ValueTag

FIRST_VALUE_TAG = 0x10
_LAST_OUT_OF_BAND = 0x1F
_LAST_VALUE_TAG = 0xFF
END_COLLECTION = 0x37
MEMBER_NAME = 0x4A


class IppMalformed(PrinterError):
    """Bytes that are no IPP message, or a message that IPP cannot carry; names the place."""


class Reader:
    """Takes octets from the front and says where there are too few."""

    def __init__(self, octets: bytes) -> None:
        self._octets = octets
        self.place = 0

    def take(self, count: int) -> bytes:
        """Take so many octets; IppMalformed where there are fewer."""
        if count < 0 or self.place + count > len(self._octets):
            raise IppMalformed("IPP message", f"broken off or garbled at octet {self.place}")
        self.place += count
        return self._octets[self.place - count : self.place]

    def byte(self) -> int:
        """Take one octet as a number."""
        return self.take(1)[0]

    def counted(self) -> bytes:
        """Take a length of two octets and so many octets after it."""
        (count,) = struct.unpack(">h", self.take(2))
        return self.take(count)

    def left(self) -> bytes:
        """Return what was not taken."""
        return self._octets[self.place :]


def text_out(content: Content) -> bytes:
    """Return words as UTF-8."""
    if not isinstance(content, str):
        raise TypeError
    return content.encode("utf-8", "surrogateescape")


def text_in(octets: bytes) -> str:
    """Return UTF-8 as words; octets that are none stay, as surrogate escapes."""
    return octets.decode("utf-8", "surrogateescape")


def _integer_out(content: Content) -> bytes:
    if not isinstance(content, int) or isinstance(content, bool):
        raise TypeError
    return struct.pack(">i", content)


def _integer_in(octets: bytes) -> int:
    (number,) = struct.unpack(">i", octets)
    return int(number)


def _boolean_out(content: Content) -> bytes:
    if not isinstance(content, bool):
        raise TypeError
    return bytes([content])


def _boolean_in(octets: bytes) -> bool:
    (number,) = octets
    return number != 0


def _range_out(content: Content) -> bytes:
    if not isinstance(content, Range):
        raise TypeError
    return struct.pack(">ii", content.low, content.high)


def _range_in(octets: bytes) -> Range:
    return Range(*struct.unpack(">ii", octets))


def _resolution_out(content: Content) -> bytes:
    if not isinstance(content, Resolution):
        raise TypeError
    return struct.pack(">iib", content.cross_feed, content.feed, content.unit)


def _resolution_in(octets: bytes) -> Resolution:
    return Resolution(*struct.unpack(">iib", octets))


def _local_out(content: Content) -> bytes:
    if not isinstance(content, LocalText):
        raise TypeError
    parts = (text_out(content.language), text_out(content.text))
    return b"".join(struct.pack(">h", len(part)) + part for part in parts)


def _local_in(octets: bytes) -> LocalText:
    reader = Reader(octets)
    language, text = text_in(reader.counted()), text_in(reader.counted())
    if reader.left():
        raise ValueError
    return LocalText(language, text)


def _octets_out(content: Content) -> bytes:
    if not isinstance(content, bytes):
        raise TypeError
    return content


def _date_out(content: Content) -> bytes:
    return _date_in(_octets_out(content))


def _date_in(octets: bytes) -> bytes:
    if len(octets) != 11:  # RFC 2579 DateAndTime with a zone
        raise ValueError
    return octets


def _nothing_out(content: Content) -> bytes:
    if content is not None:
        raise TypeError
    return b""


def _members_out(content: Content) -> bytes:
    """Give the opening's own octets: none; the members come after it."""
    if not isinstance(content, tuple):
        raise TypeError
    return b""


Codec = tuple[Callable[[Content], bytes], Callable[[bytes], Content]]
_TEXT: Codec = (text_out, text_in)
_INTEGER: Codec = (_integer_out, _integer_in)
_LOCAL: Codec = (_local_out, _local_in)
_OCTETS: Codec = (_octets_out, lambda octets: octets)
_NOTHING: Codec = (_nothing_out, lambda _: None)
_CODECS: dict[int, Codec] = {
    ValueTag.COLLECTION: (_members_out, lambda _: ()),
    ValueTag.INTEGER: _INTEGER,
    ValueTag.ENUM: _INTEGER,
    ValueTag.BOOLEAN: (_boolean_out, _boolean_in),
    ValueTag.DATE_TIME: (_date_out, _date_in),
    ValueTag.RESOLUTION: (_resolution_out, _resolution_in),
    ValueTag.RANGE: (_range_out, _range_in),
    ValueTag.TEXT_WITH_LANGUAGE: _LOCAL,
    ValueTag.NAME_WITH_LANGUAGE: _LOCAL,
    ValueTag.TEXT: _TEXT,
    ValueTag.NAME: _TEXT,
    ValueTag.KEYWORD: _TEXT,
    ValueTag.URI: _TEXT,
    ValueTag.URI_SCHEME: _TEXT,
    ValueTag.CHARSET: _TEXT,
    ValueTag.LANGUAGE: _TEXT,
    ValueTag.MIME_TYPE: _TEXT,
}


def codec(tag: int) -> Codec:
    """Return how values under a tag are written and read; ValueError where none may stand."""
    if not FIRST_VALUE_TAG <= tag <= _LAST_VALUE_TAG or tag in (END_COLLECTION, MEMBER_NAME):
        raise ValueError
    return _NOTHING if tag <= _LAST_OUT_OF_BAND else _CODECS.get(tag, _OCTETS)
