"""Proposes a description from real lines on which a person marked the fields. Pure.

The person puts known weights on the pan, and says of each line what the scale showed. Everything a
proposal needs is in those lines; it is a proposal because other lines may look otherwise.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from drivers.errors import DescriptionError
from drivers.frames.checksum import FORMS, KINDS, Checksum
from drivers.frames.described import DescribedParser
from drivers.frames.description import Description, Example, Meaning, Meanings, ValueForm
from drivers.frames.pattern import PLAIN

_LONGEST_VALUE = 12
_DIGITS, _HEX = frozenset("0123456789 "), frozenset("0123456789ABCDEF ")
_OF_WORDS = frozenset({Meaning.OVER, Meaning.UNDER, Meaning.ERROR})


@dataclass(frozen=True, slots=True)
class Mark:
    """A field on a line: its name (``value``, ``unit``, ``check`` or a flag's) and its bytes."""

    name: str
    begin: int
    end: int


@dataclass(frozen=True, slots=True)
class MarkedLine:
    """A line as it came, and what the scale showed then.

    Args:
        line: all bytes, control characters before and after included.
        marks: the fields; none where they stand as on the first line.
        value: the digits shown; None where it showed no weight.
        unit: shown, as the station names it.
        says: what else is known: at rest or in motion, net, over …
    """

    line: bytes
    marks: tuple[Mark, ...]
    value: str | None
    unit: str
    says: Meanings = frozenset()


@dataclass(frozen=True, slots=True)
class _Cut:
    """A line cut at its marks: ``gaps`` lie around ``fields``, one more than those."""

    gaps: list[str]
    fields: list[str]


def split_lines(stream: bytes) -> tuple[bytes, ...]:
    """Cut a recorded stream into whole lines, for a person to mark; cut-off ones are left out."""
    end = max(
        (b"\r\n", b"\n\r", b"\n", b"\r", b"\x03"), key=lambda one: stream.count(one) * len(one)
    )
    if stream.count(b"\x02") * 2 > stream.count(end):  # fewer are noise
        return tuple(b"\x02" + line for line in stream.split(b"\x02")[1:-1])
    return tuple(line + end for line in stream.split(end)[1:-1] if line)


def propose(name: str, lines: Sequence[MarkedLine]) -> Description:
    """Return a description that reads every line as the person says.

    Args:
        name: what people call the format.
        lines: two or more, with different weights.

    Raises:
        DescriptionError: no description does; says what to mark or weigh besides.
    """
    lines = _marked(lines)
    start, end, tail = _edges([one.line for one in lines])
    names = [mark.name for mark in lines[0].marks]
    cuts = [_cut(one, len(start), len(one.line) - len(end) - tail) for one in lines]
    for place, field in enumerate(names):
        if field in ("value", "unit"):
            _take_spaces(cuts, place, left=field == "value")
    units = _units(cuts, names, lines)
    flags, words = _meanings(cuts, names, lines)
    refusal = None
    for checksum, form in itertools.product(
        _checksums(cuts, names, lines, start, end, tail), _value_forms(words)
    ):
        try:
            proposed = Description(
                name=name,
                start=start,
                end=end,
                pattern=_pattern(cuts, names),
                value=form,
                units=units,
                unit="" if units else lines[0].unit,
                flags=flags,
                checksum=checksum,
                examples=tuple(Example(one.line, one.value, one.unit, one.says) for one in lines),
            )
            DescribedParser(proposed)
        except DescriptionError as fault:
            refusal = refusal or fault
        else:
            return proposed
    raise refusal or DescriptionError(
        "field check", "no checksum known here agrees on all lines: mark another field, or none"
    )


def _marked(lines: Sequence[MarkedLine]) -> list[MarkedLine]:
    """Give lines without marks those of the first, and refuse what cannot teach anything."""
    if len(lines) < 2 or len({one.value for one in lines}) < 2:
        raise DescriptionError("lines", "mark two or more, with different weights on the pan")
    first = lines[0]
    whole = []
    for number, one in enumerate(lines, start=1):
        if not one.marks and len(one.line) == len(first.line):
            one = replace(one, marks=first.marks)
        marks = sorted(one.marks, key=lambda mark: mark.begin)
        if [mark.name for mark in marks] != [m.name for m in sorted(first.marks, key=_begin)]:
            raise DescriptionError(
                f"line {number}", "mark the same fields on each line, in the same order"
            )
        if any(not 0 <= mark.begin < mark.end <= len(one.line) for mark in marks) or any(
            left.end > right.begin for left, right in itertools.pairwise(marks)
        ):
            raise DescriptionError(f"line {number}", "its marks overlap or leave the line")
        whole.append(replace(one, marks=tuple(marks)))
    if "value" not in [mark.name for mark in whole[0].marks]:
        raise DescriptionError("lines", "mark the value on each line")
    return whole


def _begin(mark: Mark) -> int:
    return mark.begin


def _edges(lines: list[bytes]) -> tuple[bytes, bytes, int]:
    """Return what every line starts with and ends with, and how many bytes follow the end.

    Start and end are control characters.
    """
    shortest = min(len(line) for line in lines)
    common = _common(lines)
    start = common[: next((n for n, byte in enumerate(common) if byte >= 0x20), len(common))]
    for tail in range(3):
        ends = [line[: len(line) - tail] for line in lines]
        last = _common([line[::-1] for line in ends])[::-1]
        cut = max((n for n, byte in enumerate(last, 1) if byte >= 0x20), default=0)
        end = last[cut:]
        if end and len(start) + len(end) + tail < shortest:
            return start, end, tail
    raise DescriptionError("lines", "they do not all end with the same control characters")


def _common(lines: list[bytes]) -> bytes:
    """What all lines start with."""
    columns = zip(*lines, strict=False)
    same = itertools.takewhile(lambda column: len(set(column)) == 1, columns)
    return bytes(column[0] for column in same)


def _cut(one: MarkedLine, begin: int, end: int) -> _Cut:
    text, gaps, fields = one.line.decode("latin-1"), [], []
    for mark in one.marks:
        if not begin <= mark.begin < mark.end <= end:
            raise DescriptionError(
                f"field {mark.name}", "mark no control characters, and nothing after the end"
            )
        gaps.append(text[begin : mark.begin])
        fields.append(text[mark.begin : mark.end])
        begin = mark.end
    return _Cut([*gaps, text[begin:end]], fields)


def _take_spaces(cuts: list[_Cut], place: int, left: bool) -> None:
    """Let a field have the spaces beside it where that gives it the same width on all lines."""
    wider = []
    for cut in cuts:
        gap = cut.gaps[place if left else place + 1]
        kept = gap.rstrip(" ") if left else gap.lstrip(" ")
        wider.append((kept, len(gap) - len(kept) + len(cut.fields[place])))
    if len({width for _, width in wider}) != 1 or len({len(c.fields[place]) for c in cuts}) == 1:
        return
    for cut, (kept, width) in zip(cuts, wider, strict=True):
        cut.gaps[place if left else place + 1] = kept
        field = cut.fields[place]
        cut.fields[place] = field.rjust(width) if left else field.ljust(width)


def _pattern(cuts: list[_Cut], names: list[str]) -> str:
    text = ""
    for place, name in enumerate(names):
        text += _gap([cut.gaps[place] for cut in cuts])
        widths = {len(cut.fields[place]) for cut in cuts}
        if len(widths) == 1:
            text += f"{{{name}:{widths.pop()}}}"
        else:
            most = max(_LONGEST_VALUE, *widths) if name == "value" else max(widths)
            text += f"{{{name}:1-{most}}}"
    return text + _gap([cut.gaps[-1] for cut in cuts])


def _gap(texts: list[str]) -> str:
    """What lies between two fields, as a pattern."""
    widths = {len(text) for text in texts}
    columns = [set(column) for column in zip(*texts, strict=False)]
    if len(widths) == 1 and all(len(column) == 1 or _counts(column) for column in columns):
        return "".join(
            _literal(column.pop()) if len(column) == 1 else "{_:1}" for column in columns
        )
    if not any(text.strip(" ") for text in texts):
        return f"{{space:{min(widths)}-{max(widths)}}}"
    one, other = next((a, b) for a, b in itertools.pairwise(texts) if a != b)
    raise DescriptionError(
        "lines", f"between the fields stands {one!r} and also {other!r}: mark what changes"
    )


def _counts(column: set[str]) -> bool:
    """Whether what changes there is a counter, a clock or a check of a kind not known here.

    A sign or a letter may make a weight another one: below zero, net or over.
    """
    return column <= _DIGITS or (column <= _HEX and not column.isdisjoint(_DIGITS - {" "}))


def _literal(character: str) -> str:
    return "{{" if character == "{" else character


def _units(cuts: list[_Cut], names: list[str], lines: Sequence[MarkedLine]) -> Mapping[str, str]:
    if "unit" not in names:
        if len({one.unit for one in lines}) > 1:
            raise DescriptionError("unit", "it changes: mark it on each line")
        return {}
    place = names.index("unit")
    return {cut.fields[place]: one.unit for cut, one in zip(cuts, lines, strict=True)}


def _meanings(
    cuts: list[_Cut], names: list[str], lines: Sequence[MarkedLine]
) -> tuple[dict[str, dict[str, Meanings]], dict[str, Meanings]]:
    """Return what each flag says for what it holds, and what words in place of a value say.

    A flag's text says what was so on every line with it, but not what was so on all lines alike,
    unless no other text of the flag was seen.
    """
    value = names.index("value")
    words = {
        cut.fields[value].strip(" "): (one.says & _OF_WORDS) or frozenset({Meaning.ERROR})
        for cut, one in zip(cuts, lines, strict=True)
        if one.value is None
    }
    told = [one.says - words.get(cut.fields[value].strip(" "), frozenset())
            for cut, one in zip(cuts, lines, strict=True)]  # fmt: skip
    flags: dict[str, dict[str, Meanings]] = {}
    spoken: Meanings = frozenset()
    for place, name in enumerate(names):
        if name in PLAIN:
            continue
        seen: dict[str, Meanings] = {}
        for cut, says in zip(cuts, told, strict=True):
            token = cut.fields[place]
            seen[token] = seen.get(token, says) & says
        always = frozenset.intersection(*seen.values()) & spoken if len(seen) > 1 else spoken
        flags[name] = {token: (says - always) or frozenset({Meaning.NOTHING})
                       for token, says in seen.items()}  # fmt: skip
        spoken |= frozenset().union(*seen.values())
    return flags, words


def _value_forms(words: Mapping[str, Meanings]) -> Iterator[ValueForm]:
    for apart, implied, point in itertools.product((False, True), (None, 1, 2, 3, 4), ".,"):
        if implied is None or point == ".":
            yield ValueForm(point, implied, apart, words)


def _checksums(
    cuts: list[_Cut],
    names: list[str],
    lines: Sequence[MarkedLine],
    start: bytes,
    end: bytes,
    tail: int,
) -> Iterator[Checksum | None]:
    """The checksums that agree on all lines; None where none was marked."""
    marked = "check" in names
    if not marked and not tail:
        yield None
        return
    for kind, form, with_start, with_end in itertools.product(
        KINDS, FORMS, (False, True), (False, True)
    ):
        checksum = Checksum(kind, form, with_start, with_end)
        if checksum.tail != tail or (form == "tail") is marked or (with_end and marked):
            continue
        pairs = (_covered(cut, one.line, start, end, checksum)
                 for cut, one in zip(cuts, lines, strict=True))  # fmt: skip
        if all(checksum.agrees(covered, written) for covered, written in pairs):
            yield checksum


def _covered(
    cut: _Cut, line: bytes, start: bytes, end: bytes, checksum: Checksum
) -> tuple[bytes, bytes]:
    """Return the bytes a checksum is made of, and the checksum itself, of one line."""
    body = line[len(start) : len(line) - len(end) - checksum.tail]
    written = line[len(line) - checksum.tail :] if checksum.tail else cut.fields[-1].encode()
    covered = body if checksum.tail else body[: len(body) - len(written)]
    return (
        (start if checksum.with_start else b"") + covered + (end if checksum.with_end else b""),
        written,
    )
