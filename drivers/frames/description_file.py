r"""Descriptions as TOML text, read strictly and written so that they read back the same.

name = "what people call it"
start = "\u0002"                  # may be left out
end = "\r\n"
pattern = "{rest:1}{value:8}{unit:2}"
[value]                           # point, implied_decimals, sign_apart, words = { text = [...] }
[units]                           # "as sent" = "as the station names it"; or unit = "g" above
[flags.rest]                      # "as sent" = ["stable", ...]
[[bits.status]]                   # bit = 0 to 7, set = [...], clear = [...]
[checksum]                        # kind, form, with_start, with_end
[limits]                          # interval, low, high, in quotes
[poll]                            # request, every_ms
[commands]                        # zero, tare, units = { g = "..." }: what the scale can be told
[[example]]                       # line (or hex), value, unit, says = [...]
"""

from __future__ import annotations

import json
import tomllib
from collections.abc import Iterator, Mapping
from decimal import Decimal, InvalidOperation
from pathlib import Path
from typing import Any, TypeVar

from drivers.errors import DescriptionError
from drivers.frames.checksum import FORMS, KINDS, Checksum
from drivers.frames.described import DescribedParser
from drivers.frames.description import (
    Bit,
    Description,
    Example,
    Meaning,
    Meanings,
    Poll,
    ValueForm,
)
from drivers.frames.plain_commands import PlainCommands

MOST_BYTES = 64_000
LONGEST_NAME = 60
_MEANINGS = ", ".join(Meaning)
Kept = TypeVar("Kept")


def load_description(path: Path) -> Description:
    """Read a description; it has read all of its own examples right.

    Raises:
        DescriptionError: names the file, the key, what is wrong and what is allowed.
    """
    try:
        with path.open("rb") as file:
            raw = file.read(MOST_BYTES + 1)
    except OSError as fault:
        raise DescriptionError(f"description {path}", (fault.strerror or "").lower()) from fault
    if len(raw) > MOST_BYTES:
        raise DescriptionError(f"description {path}", f"is longer than {MOST_BYTES} bytes")
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as fault:
        raise DescriptionError(f"description {path}", "is not UTF-8 text") from fault
    try:
        return read_description(text)
    except DescriptionError as fault:
        raise DescriptionError(f"description {path}, {fault.title}", fault.detail) from fault


def read_description(text: str) -> Description:
    """Read a description from TOML text; it has read all of its own examples right.

    Raises:
        DescriptionError: names the key, what is wrong and what is allowed.
    """
    if len(text) > MOST_BYTES:
        raise DescriptionError("text", f"is longer than {MOST_BYTES} characters")
    try:
        top = _Table(tomllib.loads(text), "")
    except (ValueError, RecursionError) as fault:
        # a TOML error is a ValueError, and so is a number of thousands of digits
        raise DescriptionError("text", f"is no TOML: {fault}") from fault
    described = Description(
        name=_name(top.take("name", str)),
        start=_bytes(top.take("start", str, ""), "start"),
        end=_bytes(top.take("end", str), "end"),
        pattern=top.take("pattern", str),
        value=_value(top.table("value")),
        units=_units(top.table("units")),
        unit=top.take("unit", str, ""),
        flags=_flags(top.table("flags")),
        bits=_bits(top.table("bits")),
        checksum=_checksum(top.table("checksum")),
        poll=_poll(top.table("poll")),
        commands=_commands(top.table("commands")),
        examples=tuple(_example(row) for row in top.rows("example")),
        **_limits(top.table("limits")),
    )
    top.done()
    DescribedParser(described)
    return described


def write_description(given: Description) -> str:
    """Return a description as TOML text, ASCII only."""
    return "\n".join(_lines(given)) + "\n"


# --- reading ------------------------------------------------------------------------------------


class _Table:
    """One table, of which every key must be taken."""

    def __init__(self, table: Mapping[str, Any], path: str) -> None:
        self._left = dict(table)
        self._path = path

    def __iter__(self) -> Iterator[str]:
        return iter(tuple(self._left))

    def __bool__(self) -> bool:
        return bool(self._left)

    def key(self, key: str) -> str:
        return f"{self._path}.{key}" if self._path else key

    def take(self, key: str, kind: type[Kept], default: Kept | None = None) -> Kept:
        if key not in self._left:
            if default is None:
                raise DescriptionError(self.key(key), "is missing")
            return default
        value = self._left.pop(key)
        if not isinstance(value, kind) or (isinstance(value, bool) and kind is not bool):
            words = {str: "text in quotes", int: "a whole number", bool: "true or false"}
            allowed = words.get(kind, "a table" if kind is dict else "a list in brackets")
            raise DescriptionError(self.key(key), f"is {value!r}, allowed is {allowed}")
        return value

    def table(self, key: str) -> _Table:
        return _Table(self.take(key, dict, {}), self.key(key))

    def rows(self, key: str) -> list[_Table]:
        rows = self.take(key, list, [])
        if not all(isinstance(row, dict) for row in rows):
            raise DescriptionError(self.key(key), f"write each as [[{self.key(key)}]]")
        return [_Table(row, f"{self.key(key)}[{n}]") for n, row in enumerate(rows, start=1)]

    def done(self) -> None:
        for key in self._left:
            raise DescriptionError(self.key(key), "is no key of a description")


def _name(text: str) -> str:
    if not text.strip() or len(text) > LONGEST_NAME or not text.isprintable():
        allowed = f"allowed are 1 to {LONGEST_NAME} printable characters"
        raise DescriptionError("name", f"is {text[:LONGEST_NAME]!r}, {allowed}")
    return text


def _bytes(text: str, key: str) -> bytes:
    try:
        return text.encode("ascii")
    except UnicodeEncodeError:
        raise DescriptionError(key, f"{text!r} holds what is no ASCII character") from None


def _says(table: _Table, key: str) -> Meanings:
    said = table.take(key, list, [])
    for one in said:
        if one not in tuple(Meaning):
            raise DescriptionError(table.key(key), f"{one!r} is not known, allowed: {_MEANINGS}")
    return frozenset(Meaning(one) for one in said)


def _value(table: _Table) -> ValueForm:
    words = table.table("words")
    read = {word: _says(words, word) for word in words}
    point = table.take("point", str, ".")
    if point not in (".", ","):
        raise DescriptionError(table.key("point"), f"is {point!r}, allowed are . and ,")
    implied = table.take("implied_decimals", int, -1)
    if not -1 <= implied <= 6:
        raise DescriptionError(table.key("implied_decimals"), f"is {implied}, allowed is 0 to 6")
    apart = table.take("sign_apart", bool, False)
    table.done()
    return ValueForm(point, None if implied < 0 else implied, apart, read)


def _units(table: _Table) -> dict[str, str]:
    return {sent: table.take(sent, str) for sent in table}


def _flags(table: _Table) -> dict[str, dict[str, Meanings]]:
    read = {}
    for name in table:
        tokens = table.table(name)
        read[name] = {token: _says(tokens, token) for token in tokens}
    return read


def _bits(table: _Table) -> dict[str, tuple[Bit, ...]]:
    return {name: tuple(_bit(row) for row in table.rows(name)) for name in table}


def _bit(row: _Table) -> Bit:
    number = row.take("bit", int)
    if not 0 <= number <= 7:
        raise DescriptionError(row.key("bit"), f"is {number}, allowed is 0 to 7, 0 the lowest")
    bit = Bit(number, _says(row, "set"), _says(row, "clear"))
    row.done()
    return bit


def _checksum(table: _Table) -> Checksum | None:
    if not table:
        return None
    chosen = {}
    for key, allowed in (("kind", tuple(KINDS)), ("form", FORMS)):
        chosen[key] = table.take(key, str, "hex" if key == "form" else None)
        if chosen[key] not in allowed:
            listed = ", ".join(allowed)
            raise DescriptionError(table.key(key), f"is {chosen[key]!r}, allowed are {listed}")
    checksum = Checksum(
        chosen["kind"],
        chosen["form"],
        table.take("with_start", bool, False),
        table.take("with_end", bool, False),
    )
    table.done()
    if checksum.with_end and not checksum.tail:
        raise DescriptionError(table.key("with_end"), 'goes with form = "tail" only')
    return checksum


def _poll(table: _Table) -> Poll | None:
    if not table:
        return None
    request = _bytes(table.take("request", str), table.key("request"))
    if not request:
        raise DescriptionError(table.key("request"), "is empty: give what asks the scale")
    every_ms = table.take("every_ms", int, 100)
    if not 20 <= every_ms <= 400:
        raise DescriptionError(
            table.key("every_ms"), f"is {every_ms}, allowed is 20 to 400 milliseconds"
        )
    table.done()
    return Poll(request, every_ms)


def _commands(table: _Table) -> PlainCommands:
    units = table.table("units")
    told = PlainCommands(
        _bytes(table.take("zero", str, ""), table.key("zero")),
        _bytes(table.take("tare", str, ""), table.key("tare")),
        {unit: _bytes(units.take(unit, str), units.key(unit)) for unit in units},
    )
    table.done()
    return told


def _limits(table: _Table) -> dict[str, Decimal | None]:
    read = {key: _decimal(table, key) for key in ("interval", "low", "high")}
    interval = read["interval"]
    if interval is not None and interval <= 0:
        raise DescriptionError(table.key("interval"), f"is {interval}, it must be above 0")
    table.done()
    return read


def _decimal(table: _Table, key: str) -> Decimal | None:
    text = table.take(key, str, "")
    try:
        number = Decimal(text) if text else None
    except InvalidOperation:
        number = Decimal("NaN")
    if number is not None and not (number.is_finite() and _is_of_scale(number)):
        raise DescriptionError(table.key(key), f'is {text!r}, allowed is a number as in "0.002"')
    return number


def _is_of_scale(number: Decimal) -> bool:
    """Whether a scale can mean it: beyond, exact arithmetic ends and a text of it fills memory."""
    return number == 0 or (-9 <= number.adjusted() <= 9 and len(number.as_tuple().digits) <= 18)


def _example(row: _Table) -> Example:
    line, digits = row.take("line", str, ""), row.take("hex", str, "")
    if bool(line) is bool(digits):
        raise DescriptionError(row.key("line"), "give either line or hex")
    try:
        raw = _bytes(line, row.key("line")) if line else bytes.fromhex(digits)
    except ValueError:
        raise DescriptionError(row.key("hex"), f"{digits!r} is not hexadecimal") from None
    example = Example(
        raw, row.take("value", str, "") or None, row.take("unit", str), _says(row, "says")
    )
    row.done()
    return example


# --- writing ------------------------------------------------------------------------------------


def _text(text: str) -> str:
    """A basic string of TOML; every JSON string of ASCII is one."""
    return json.dumps(text).replace("\x7f", "\\u007f")


def _list(says: Meanings) -> str:
    return "[" + ", ".join(_text(one) for one in sorted(says)) + "]"


def _lines(given: Description) -> Iterator[str]:
    yield f"name = {_text(given.name)}"
    if given.start:
        yield f"start = {_text(given.start.decode('ascii'))}"
    yield f"end = {_text(given.end.decode('ascii'))}"
    yield f"pattern = {_text(given.pattern)}"
    if given.unit:
        yield f"unit = {_text(given.unit)}"
    yield from _value_lines(given.value)
    if given.units:
        yield from ("", "[units]")
        yield from (f"{_text(sent)} = {_text(name)}" for sent, name in given.units.items())
    for name, tokens in given.flags.items():
        yield from ("", f"[flags.{name}]")
        yield from (f"{_text(token)} = {_list(says)}" for token, says in tokens.items())
    for name, bits in given.bits.items():
        for bit in bits:
            yield from ("", f"[[bits.{name}]]", f"bit = {bit.number}")
            yield from (f"set = {_list(bit.when_set)}", f"clear = {_list(bit.when_clear)}")
    yield from _other_lines(given)
    for example in given.examples:
        yield from ("", "[[example]]", f'hex = "{example.line.hex(" ")}"')
        if example.value is not None:
            yield f"value = {_text(example.value)}"
        yield from (f"unit = {_text(example.unit)}", f"says = {_list(example.says)}")


def _value_lines(form: ValueForm) -> Iterator[str]:
    if form == ValueForm():
        return
    yield from ("", "[value]", f"point = {_text(form.point)}")
    if form.implied_decimals is not None:
        yield f"implied_decimals = {form.implied_decimals}"
    if form.sign_apart:
        yield "sign_apart = true"
    if form.words:
        yield from ("", "[value.words]")
        yield from (f"{_text(word)} = {_list(says)}" for word, says in form.words.items())


def _other_lines(given: Description) -> Iterator[str]:
    if (checksum := given.checksum) is not None:
        yield from ("", "[checksum]", f"kind = {_text(checksum.kind)}")
        yield f"form = {_text(checksum.form)}"
        yield f"with_start = {str(checksum.with_start).lower()}"
        yield f"with_end = {str(checksum.with_end).lower()}"
    limits = {"interval": given.interval, "low": given.low, "high": given.high}
    known = {key: number for key, number in limits.items() if number is not None}
    if known:
        yield from ("", "[limits]")
        yield from (f'{key} = "{number:f}"' for key, number in known.items())
    if given.poll is not None:
        yield from ("", "[poll]", f"request = {_text(given.poll.request.decode('ascii'))}")
        yield f"every_ms = {given.poll.every_ms}"
    yield from _command_lines(given.commands)


def _command_lines(told: PlainCommands) -> Iterator[str]:
    given = {key: text for key, text in (("zero", told.zero), ("tare", told.tare)) if text}
    if given:
        yield from ("", "[commands]")
        yield from (f"{key} = {_text(text.decode('ascii'))}" for key, text in given.items())
    if told.units:
        yield from ("", "[commands.units]")
        yield from (f"{_text(u)} = {_text(text.decode('ascii'))}" for u, text in told.units.items())
