"""What a described line says and where: a format as data, with its own examples. Pure."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from enum import StrEnum

from drivers.errors import DescriptionError
from drivers.frames.checksum import Checksum
from drivers.frames.pattern import PLAIN, Part, parts_of
from drivers.frames.plain_commands import PlainCommands

MAX_LINE = 64
"""Longest line, its start and end included; longer ones are no weights."""


class Meaning(StrEnum):
    """What a flag may say."""

    STABLE = "stable"
    MOTION = "motion"
    GROSS = "gross"
    NET = "net"
    TARE = "tare"
    ZERO = "zero"
    """Centre of zero."""
    OVER = "over"
    UNDER = "under"
    ERROR = "error"
    MINUS = "minus"
    NOTHING = "nothing"
    """The flag is known and says nothing of interest."""


Meanings = frozenset[Meaning]


@dataclass(frozen=True, slots=True)
class Bit:
    """One bit of a status byte, 0 the lowest, and what it says set and clear."""

    number: int
    when_set: Meanings = frozenset()
    when_clear: Meanings = frozenset()


@dataclass(frozen=True, slots=True)
class ValueForm:
    """How a value is written.

    Args:
        point: the decimal sign, ``.`` or ``,``.
        implied_decimals: how many of the digits are decimals where no decimal sign is sent; None
            where one is.
        sign_apart: spaces may stand between sign and digits.
        words: what may stand for a value, such as dashes, and what it says.
    """

    point: str = "."
    implied_decimals: int | None = None
    sign_apart: bool = False
    words: Mapping[str, Meanings] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Poll:
    """How a scale that sends nothing by itself is asked."""

    request: bytes
    every_ms: int = 100


@dataclass(frozen=True, slots=True)
class Example:
    """One line and what it must be read as.

    Args:
        line: all bytes, start and end included.
        value: the digits; None where the line carries none.
        unit: as the station names it.
        says: everything its flags say, without ``nothing``.
    """

    line: bytes
    value: str | None
    unit: str
    says: Meanings


@dataclass(frozen=True, slots=True)
class Description:
    """A format of lines.

    Args:
        name: what people call it.
        start: bytes before each line; may be empty.
        end: bytes after each line.
        pattern: what stands between them; see drivers.frames.pattern.
        value: how the value is written.
        units: what a unit is sent as → the station's name for it.
        unit: the unit where none is sent.
        flags: field → what it holds → what that says. Anything else there means motion.
        bits: field → bits of that status byte.
        checksum: None where there is none.
        interval: a value that is no multiple is no weight; None to leave that to the scale's.
        low, high: values outside are no weights.
        poll: None for a scale that sends by itself.
        commands: what the scale can be told.
        examples: lines that the description must read as they say; at least one.

    Raises:
        DescriptionError: the parts do not fit each other.
    """

    name: str
    end: bytes
    pattern: str
    examples: tuple[Example, ...]
    start: bytes = b""
    value: ValueForm = field(default_factory=ValueForm)
    units: Mapping[str, str] = field(default_factory=dict)
    unit: str = ""
    flags: Mapping[str, Mapping[str, Meanings]] = field(default_factory=dict)
    bits: Mapping[str, tuple[Bit, ...]] = field(default_factory=dict)
    checksum: Checksum | None = None
    interval: Decimal | None = None
    low: Decimal | None = None
    high: Decimal | None = None
    poll: Poll | None = None
    commands: PlainCommands = field(default_factory=PlainCommands)

    def __post_init__(self) -> None:
        if not self.end:
            raise DescriptionError("end", "is empty: a line needs an end to be told from the next")
        parts = self.parts
        if (self.start and self.start in self.end) or self.end in self.start:
            raise DescriptionError("start and end", "must differ")
        longest = sum(part.most for part in parts) + len(self.start) + len(self.end) + self.tail
        if longest > MAX_LINE:
            raise DescriptionError("pattern", f"lines of {longest} bytes; allowed are {MAX_LINE}")
        self._check_flags(parts)
        self._check_unit(parts)
        self._check_words(parts)
        self._check_checksum(parts)
        for unit in self.commands.units:
            if unit not in (self.unit, *self.units.values()):
                raise DescriptionError(f"commands.units: {unit!r}", "is no unit of this line")
        if not self.examples:
            raise DescriptionError(
                "example", "is missing: give one or more real lines and what each says"
            )

    @property
    def parts(self) -> tuple[Part, ...]:
        """The pattern, read."""
        return parts_of(self.pattern, frozenset(self.bits))

    @property
    def tail(self) -> int:
        """How many bytes follow the end of a line."""
        return self.checksum.tail if self.checksum else 0

    @property
    def tells_rest(self) -> bool:
        """Whether a line says that the load is at rest; else only equal lines can."""
        tokens = [says for flag in self.flags.values() for says in flag.values()]
        bits = [bit.when_set | bit.when_clear for row in self.bits.values() for bit in row]
        return any(says & {Meaning.STABLE, Meaning.MOTION} for says in (*tokens, *bits))

    @property
    def agree_frames(self) -> int:
        """How many equal lines in a row make a steady weight."""
        return 2 if self.tells_rest else 6

    def _check_flags(self, parts: tuple[Part, ...]) -> None:
        widths = {part.name: part.least for part in parts if part.name not in PLAIN | {""}}
        described = {**self.flags, **self.bits}
        for name in widths.keys() - described.keys():
            raise DescriptionError(
                f"pattern: field {name}",
                f"is not described: add [flags.{name}] or [[bits.{name}]], or name it _",
            )
        for name in described.keys() - widths.keys():
            raise DescriptionError(f"flags or bits: {name}", "the pattern has no such field")
        for name, tokens in self.flags.items():
            for token in tokens:
                if len(token) != widths[name]:
                    raise DescriptionError(
                        f"flags.{name}: {token!r}",
                        f"the field is {widths[name]} characters wide, this is {len(token)}",
                    )
        for name in self.bits:
            if widths[name] != 1:
                raise DescriptionError(f"bits.{name}", "a status byte is one character wide")

    def _check_unit(self, parts: tuple[Part, ...]) -> None:
        sends = any(part.name == "unit" for part in parts)
        if sends is not bool(self.units) or sends is bool(self.unit):
            raise DescriptionError(
                "units",
                "give [units] for a pattern with {unit:…}, else unit = the one the scale shows",
            )
        for part in parts:
            for sent, name in self.units.items() if part.name == "unit" else ():
                if not part.least <= len(sent) <= part.most:
                    raise DescriptionError(
                        f"units: {sent!r}",
                        f"the field is {part.width} characters wide, this is {len(sent)}",
                    )
                if not name:
                    raise DescriptionError(f"units: {sent!r}", 'name the unit, as in "g"')

    def _check_words(self, parts: tuple[Part, ...]) -> None:
        most = max(part.most for part in parts if part.name == "value")
        for word in self.value.words:
            if len(word) > most or word != word.strip(" "):
                raise DescriptionError(
                    f"value.words: {word!r}",
                    f"the field is {most} characters wide; spaces around a word are left out",
                )

    def _check_checksum(self, parts: tuple[Part, ...]) -> None:
        found = [part for part in parts if part.name == "check"]
        width = self.checksum.width if self.checksum else 0
        if [part.most for part in found] != ([width] if width else []):
            due = f"{{check:{width}}} as the pattern's last field" if width else "no field check"
            raise DescriptionError("pattern", f"this checksum needs {due}")
        if found and parts[-1].name != "check":
            raise DescriptionError("pattern", "nothing may follow the field check")
