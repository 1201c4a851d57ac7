"""Patterns of described lines: what stands where, in a language that cannot run away. Pure.

A pattern is text in which every character stands for itself, but for fields: ``{value:8}`` is a
field of 8 characters, ``{value:1-8}`` one of 1 to 8, and ``{{`` is a brace. A field of changing
width must be followed by something it cannot hold itself, so every line fits in one way only or in
none, and finding that out takes one pass. Names and what they hold:

    value   digits, sign, decimal sign; spaces too where the width is fixed
    unit    letters; spaces and underscores too where the width is fixed
    sign    + - or a space
    range   a digit from 1
    check   what a checksum is written with
    space   spaces
    _       any printable characters, ignored
    others  a flag or a status byte of that name, of fixed width
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from drivers.errors import DescriptionError

MOST_WIDTH = 40
MOST_LENGTH = 200
_FIELD = re.compile(r"\{([a-z_][a-z0-9_]{0,19}):([0-9]{1,2})(?:-([0-9]{1,2}))?\}")
_PRINTABLE = frozenset(range(0x20, 0x7F))
_DIGITS = frozenset(b"0123456789")
_LETTERS = frozenset(b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz%")
_NARROW = {
    "value": _DIGITS | frozenset(b"+-.,"),
    "unit": _LETTERS,
    "sign": frozenset(b"+- "),
    "range": frozenset(b"123456789"),
    "check": _DIGITS | frozenset(b"ABCDEFabcdef"),
    "space": frozenset(b" "),
}
_FIXED = {"unit": _LETTERS | frozenset(b" _"), "value": _PRINTABLE}  # words may stand for a value
PLAIN = frozenset((*_NARROW, "_"))
"""Names that are no flags."""
_ONCE = "may stand in a pattern once"


@dataclass(frozen=True, slots=True)
class Part:
    """One literal character (empty name) or one field of a pattern.

    Args:
        name: of the field; empty for a literal.
        least, most: its width in characters.
        holds: the bytes it may hold.
    """

    name: str
    least: int
    most: int
    holds: frozenset[int]

    @property
    def width(self) -> str:
        """How wide it is, for a person."""
        return str(self.most) if self.least == self.most else f"{self.least} to {self.most}"


def parts_of(text: str, raw: frozenset[str] = frozenset()) -> tuple[Part, ...]:
    """Read a pattern.

    Args:
        text: the pattern.
        raw: names of fields that may hold any byte, such as status bytes.

    Raises:
        DescriptionError: names the place, what stands there and what is allowed.
    """
    if not text or len(text) > MOST_LENGTH:
        raise DescriptionError("pattern", f"has {len(text)} characters, allowed are 1 to 200")
    parts = tuple(_read(text, raw))
    names = [part.name for part in parts if part.name not in ("", "_", "space")]
    for name in names:
        if names.count(name) > 1:
            raise DescriptionError(f"pattern: field {name}", _ONCE)
    if "value" not in names:
        raise DescriptionError("pattern", "has no {value:…}; a line without one is no weight")
    for place, part in enumerate(parts):
        if part.least < part.most and part.holds & _follows(parts[place + 1 :]):
            raise DescriptionError(
                f"pattern: field {part.name} of {part.least} to {part.most} characters",
                "must be followed by something it cannot hold itself, or have a fixed width",
            )
    return parts


def compiled(parts: tuple[Part, ...]) -> re.Pattern[bytes]:
    """Return what a whole line must match, with the fields as named groups."""
    return re.compile(b"".join(_expression(part) for part in parts), re.DOTALL)


def _read(text: str, raw: frozenset[str]) -> Iterator[Part]:
    place = 0
    while place < len(text):
        if text[place] == "{" and text[place : place + 2] != "{{":
            found = _FIELD.match(text, place)
            if found is None:
                raise DescriptionError(
                    f"pattern, character {place + 1}",
                    f"{text[place : place + 12]!r} is no field such as {{value:8}} or"
                    " {value:1-8}; a brace itself is written {{",
                )
            yield _field(found, raw)
            place = found.end()
            continue
        if not " " <= text[place] <= "~":
            raise DescriptionError(
                f"pattern, character {place + 1}", "only printable ASCII characters may stand here"
            )
        yield Part("", 1, 1, frozenset({ord(text[place])}))
        place += 2 if text[place] == "{" else 1


def _field(found: re.Match[str], raw: frozenset[str]) -> Part:
    name, least, most = found[1], int(found[2]), int(found[3] or found[2])
    if not (least <= most and 1 <= most <= MOST_WIDTH):
        raise DescriptionError(f"pattern: {found[0]}", f"a width is 1 to {MOST_WIDTH}")
    if least < most and name not in _NARROW:
        raise DescriptionError(f"pattern: {found[0]}", "only a fixed width is allowed here")
    if name in raw:
        return Part(name, least, most, frozenset(range(256)))
    holds = _NARROW.get(name, _PRINTABLE)
    if least == most:
        holds = _FIXED.get(name, holds)
    return Part(name, least, most, holds)


def _follows(parts: tuple[Part, ...]) -> frozenset[int]:
    """The bytes that may come first in ``parts``."""
    first: frozenset[int] = frozenset()
    for part in parts:
        first |= part.holds
        if part.least:
            break
    return first


def _expression(part: Part) -> bytes:
    """A part as a regular expression; possessive, so that nothing is ever tried twice."""
    listed = b"".join(b"\\x%02x" % byte for byte in sorted(part.holds))
    several = b"[%b]{%d,%d}+" % (listed, part.least, part.most)
    if part.name in ("", "_", "space"):
        return several
    return b"(?P<%b>%b)" % (part.name.encode(), several)
